// SPDX-License-Identifier: MPL-2.0
//
// The described sheets as the office shows them: every text has room, nothing is an error, and no
// formula parses a sentence.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/awt/Size.hpp>

#include "book/book.hpp"
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
  std::vector<std::string> sheets{std::string(book::sheet_name::entries)};
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

TEST(HiddenSheet, is_hidden_and_not_printed) {
  OpenBook book(the_office(), template_file());
  const auto sheet = as<css::beans::XPropertySet>(book.sheet(book::sheet_name::entries));
  EXPECT_FALSE(sheet->getPropertyValue("IsVisible").get<bool>());
}

}  // namespace
}  // namespace shimwright::tests
