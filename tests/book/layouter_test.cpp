// SPDX-License-Identifier: MPL-2.0
//
// The described sheets as the office shows them: every text has room, nothing is an error, and no
// formula parses a sentence.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/drawing/XControlShape.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/form/FormButtonType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <utility>

#include "book/book.hpp"
#include "book/office/sheet.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using book::Field;
using book::SheetDescription;

constexpr double mm_each_pt = 25.4 / 72;

// In letters of this cell, as wide as they come on the average: about half their height.
class Room {
 public:
  Room(const OpenBook& book, std::string_view sheet, const Area& area)
      : cell_(as<css::beans::XPropertySet>(book.cell(sheet, area.from))) {
    const auto range = as<css::beans::XPropertySet>(book.sheet(sheet)->getCellRangeByPosition(
        area.from.column, area.from.row, area.to.column, area.to.row));
    const auto size = range->getPropertyValue("Size").get<css::awt::Size>();
    width_ = size.Width / 100.0;
    height_ = size.Height / 100.0;
    if (of<sal_Int32>("RotateAngle") != 0) std::swap(width_, height_);  // upright
  }

  bool holds(std::string_view words) const {
    if (of<bool>("ShrinkToFit")) return true;
    const double letter_mm = of<float>("CharHeight") * mm_each_pt;
    const bool bold = of<float>("CharWeight") > css::awt::FontWeight::NORMAL;
    const double length = static_cast<double>(words.size()) * letter_mm * (bold ? 0.54 : 0.49);
    const double lines = std::ceil(length / (width_ - 2));
    if (lines > 1 && !of<bool>("IsTextWrapped")) return false;
    return lines * letter_mm * 1.15 <= height_ + 0.3;
  }

 private:
  template <typename Value>
  Value of(const char* property) const {
    return cell_->getPropertyValue(rtl::OUString::createFromAscii(property)).get<Value>();
  }

  Ref<css::beans::XPropertySet> cell_;
  double width_ = 0;
  double height_ = 0;
};

// A heading is not merged: its words go on over the blank cells of its line.
Area with_blanks_to_its_right(const SheetDescription& sheet, const Field& field) {
  Area area = field.where;
  for (const Field& next : all_fields(sheet))
    if (next.where.from == right_of(area.to) &&
        std::holds_alternative<std::monostate>(next.content))
      area.to = next.where.to;
  return area;
}

TEST(DescribedSheets, have_room_for_every_text) {
  OpenBook book(the_office(), template_file());
  int count = 0;
  for (const SheetDescription& sheet : book::descriptions(the_places()))
    for (const Field& field : all_fields(sheet)) {
      const auto* fixed = std::get_if<book::Fixed>(&field.content);
      if (fixed == nullptr || fixed->words.empty()) continue;
      ++count;
      EXPECT_TRUE(
          Room(book, sheet.name, with_blanks_to_its_right(sheet, field)).holds(fixed->words))
          << sheet.name << ": " << field.name << ": " << fixed->words;
    }
  EXPECT_GT(count, 100);
}

TEST(DescribedSheets, show_no_error) {
  for (const auto& file : {template_file(), demo_file()}) {
    OpenBook book(the_office(), file);
    book.recalculate();
    for (const SheetDescription& sheet : book::descriptions(the_places()))
      EXPECT_EQ(book.errors(sheet.name), "") << file << ", " << sheet.name;
  }
}

// Not even where an entry is one.
TEST(DescribedSheets, show_no_error_where_an_entry_holds_one) {
  for (const SheetDescription& sheet : book::descriptions(the_places())) {
    OpenBook book(the_office(), template_file());
    for (const Field& field : all_fields(sheet)) {
      if (!std::holds_alternative<book::Takes>(field.content)) continue;
      const auto cell = book.cell(sheet.name, field.where.from);
      const rtl::OUString before = cell->getFormula();
      cell->setFormula("=1/0");
      for (const SheetDescription& other : book::descriptions(the_places()))
        EXPECT_EQ(book.errors(other.name), other.name == sheet.name
                                               ? sheet.name + "." + book::relative(field.where.from)
                                               : "")
            << field.name << " on " << other.name;
      cell->setFormula(before);
    }
  }
}

TEST(DescribedSheets, parse_no_sentence_in_any_formula) {
  OpenBook book(the_office(), demo_file());
  std::vector<std::string> sheets{std::string(book::sheet_name::workings)};
  for (const SheetDescription& sheet : book::descriptions(the_places()))
    sheets.push_back(sheet.name);
  int count = 0;
  for (const std::string& sheet : sheets)
    for (const std::string& content : book.contents(sheet)) {
      if (!content.starts_with('=')) continue;
      ++count;
      for (const char* word : {"TEXTJOIN", "REGEX", "SUBSTITUTE", "MID(", "FIND("})
        EXPECT_EQ(content.find(word), std::string::npos) << sheet << ": " << content;
    }
  EXPECT_GT(count, 200);
}

TEST(DescribedSheets, lead_from_the_name_of_the_engine_to_the_unit_by_enter) {
  EXPECT_EQ(below(book::engine_place::name), book::engine_place::unit);
}

Ref<css::beans::XPropertySet> model_of_last_control(const OpenBook& book, std::string_view sheet) {
  const auto pages = as<css::drawing::XDrawPagesSupplier>(book.document())->getDrawPages();
  const auto own =
      as<css::sheet::XCellRangeAddressable>(book.sheet(sheet))->getRangeAddress().Sheet;
  const auto shapes = as<css::container::XIndexAccess>(pages->getByIndex(own));
  return as<css::beans::XPropertySet>(
      as<css::drawing::XControlShape>(shapes->getByIndex(shapes->getCount() - 1))->getControl());
}

TEST(Buttons, run_their_command_and_stay_off_paper_in_a_book_saved_and_opened_again) {
  const auto file = the_office().profile().folder() / "button.ods";
  {
    const OpenBook book(the_office(), the_places().layout);
    book::Sheet(book.document(), book::sheet_name::engine)
        .button({{1, 2}, {1, 3}}, "Go", "vnd.org.shimwright:new-book");
    book.save(file);
  }
  const OpenBook book(the_office(), file);
  const auto model = model_of_last_control(book, book::sheet_name::engine);
  EXPECT_EQ(office::from_office(model->getPropertyValue("Label").get<rtl::OUString>()), "Go");
  EXPECT_EQ(office::from_office(model->getPropertyValue("TargetURL").get<rtl::OUString>()),
            "vnd.org.shimwright:new-book");
  EXPECT_EQ(model->getPropertyValue("ButtonType").get<css::form::FormButtonType>(),
            css::form::FormButtonType_URL);
  EXPECT_FALSE(model->getPropertyValue("Printable").get<bool>());
  EXPECT_FALSE(as<css::beans::XPropertySet>(book.document())
                   ->getPropertyValue("ApplyFormDesignMode")
                   .get<bool>());
}

// In hundredths of a millimetre: room above, below and at the other end, and no wider than words
// need.
TEST(Buttons, leave_room_in_their_cells_and_are_no_wider_than_four_centimetres) {
  const OpenBook book(the_office(), the_places().layout);
  const auto sheet = book.sheet(book::sheet_name::fit);
  const auto pages = as<css::drawing::XDrawPagesSupplier>(book.document())->getDrawPages();
  const auto own = as<css::sheet::XCellRangeAddressable>(sheet)->getRangeAddress().Sheet;
  const auto shapes = as<css::container::XIndexAccess>(pages->getByIndex(own));
  const auto size_of = [](const auto& of) {
    return as<css::beans::XPropertySet>(of)
        ->getPropertyValue("Size")
        .template get<css::awt::Size>();
  };
  const auto row = size_of(sheet->getCellByPosition(0, 0)).Height;
  std::int32_t right_of_last = 0;
  ASSERT_EQ(shapes->getCount(), 2);
  for (std::int32_t i = 0; i < 2; ++i) {
    const auto shape = as<css::drawing::XShape>(shapes->getByIndex(i));
    EXPECT_GE(shape->getPosition().Y, 90) << i;
    EXPECT_LE(shape->getPosition().Y + shape->getSize().Height, row - 90) << i;
    EXPECT_NEAR(shape->getSize().Width, 4000, 30) << i;
    EXPECT_GE(shape->getPosition().X, right_of_last + 190) << i;
    right_of_last = shape->getPosition().X + shape->getSize().Width;
  }
}

TEST(HiddenSheet, is_hidden_and_not_printed) {
  OpenBook book(the_office(), template_file());
  const auto sheet = as<css::beans::XPropertySet>(book.sheet(book::sheet_name::workings));
  EXPECT_FALSE(sheet->getPropertyValue("IsVisible").get<bool>());
}

}  // namespace
}  // namespace shimwright::tests
