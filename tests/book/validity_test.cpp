// SPDX-License-Identifier: MPL-2.0
//
// What the entry cells let pass when a person types, and what they say.
#include <gtest/gtest.h>

#include <cmath>
#include <com/sun/star/sheet/ValidationAlertStyle.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <sstream>
#include <tuple>
#include <variant>

#include "book/book.hpp"
#include "core/entries/entries.hpp"
#include "core/values/mark.hpp"
#include "entry_cells.hpp"
#include "on_sheets.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;
using book::as;
using office::from_office;

class Rule {
 public:
  Rule(const OpenBook& book, std::string_view sheet, At at)
      : rule_(as<css::beans::XPropertySet>(
            as<css::beans::XPropertySet>(book.cell(sheet, at))->getPropertyValue("Validation"))) {}

  css::sheet::ValidationType type() const {
    return rule_->getPropertyValue("Type").get<css::sheet::ValidationType>();
  }
  bool is_there() const { return type() != css::sheet::ValidationType_ANY; }
  bool is_a_choice() const { return type() == css::sheet::ValidationType_LIST; }
  bool stops() const {
    return rule_->getPropertyValue("ErrorAlertStyle").get<css::sheet::ValidationAlertStyle>() ==
           css::sheet::ValidationAlertStyle_STOP;
  }
  bool speaks() const { return rule_->getPropertyValue("ShowErrorMessage").get<bool>(); }
  std::string title() const { return text("ErrorTitle"); }
  std::string message() const { return text("ErrorMessage"); }
  std::string help() const { return text("InputMessage"); }
  std::string formula() const {
    return from_office(as<css::sheet::XSheetCondition>(rule_)->getFormula1());
  }
  std::string most() const {
    return from_office(as<css::sheet::XSheetCondition>(rule_)->getFormula2());
  }
  // What stands in that cell, as a person would have typed it.
  bool lets_pass(OpenBook& book, std::string_view sheet, At at) const {
    if (type() == css::sheet::ValidationType_CUSTOM)
      return book.value_of(sheet, "=" + formula()) != 0;
    const auto between = [&](double value) {
      return book.value_of(sheet, "=" + formula()) <= value &&
             value <= book.value_of(sheet, "=" + most());
    };
    if (type() == css::sheet::ValidationType_TEXT_LEN)
      return between(static_cast<double>(book.shown(sheet, at).size()));
    const double value = book.number(sheet, at);
    return book.cell(sheet, at)->getType() == css::table::CellContentType_VALUE && between(value) &&
           (type() != css::sheet::ValidationType_WHOLE || value == std::floor(value));
  }
  // Words listed in the rule itself: "yes";"no".
  std::vector<std::string> choices() const {
    std::vector<std::string> words;
    std::istringstream all(formula());
    for (std::string word; std::getline(all, word, ';');)
      words.push_back(word.substr(1, word.size() - 2));
    return words;
  }

 private:
  std::string text(const char* name) const {
    return from_office(
        rule_->getPropertyValue(rtl::OUString::createFromAscii(name)).get<rtl::OUString>());
  }

  Ref<css::beans::XPropertySet> rule_;
};

TEST(Validity, is_on_every_entry_that_is_not_free_text_and_says_what_is_due) {
  OpenBook book(the_office(), template_file());
  for (const auto& [sheet, at, free_text] : entry_cells(the_places())) {
    if (free_text) continue;
    const ::testing::ScopedTrace place(__FILE__, __LINE__, book::on(sheet, at));
    const Rule rule(book, sheet, at);
    EXPECT_TRUE(rule.is_there());
    EXPECT_TRUE(rule.speaks());
    EXPECT_FALSE(rule.title().empty());
    EXPECT_FALSE(rule.message().empty());
  }
}

// In the words that one reads when 275 or 27.5 was typed for a size.
TEST(Validity, says_that_275_is_a_mark) {
  OpenBook book(the_office(), template_file());
  for (const At at : {right_of(shims::first_spare), right_of(shims::first_ladder),
                      right_of(shims::first_single)}) {
    const std::string refusal = Rule(book, book::sheet_name::shims, at).message();
    EXPECT_NE(refusal.find("275 is a mark: its size is 2.75 mm"), std::string::npos) << refusal;
  }
}

TEST(Validity, offers_what_the_functions_take) {
  OpenBook book(the_office(), template_file());
  const auto offered = [&book](std::string_view sheet, At at) {
    const Rule rule(book, sheet, at);
    EXPECT_TRUE(rule.is_a_choice()) << book::on(sheet, at);
    return rule.choices();
  };
  using Words = std::vector<std::string>;
  EXPECT_EQ(offered(on_engine, engine::unit), (Words{"mm", "inch"}));
  EXPECT_EQ(offered(on_engine, engine::first), (Words{"cost", "aim"}));
  EXPECT_EQ(offered(on_engine, engine::use_doubt), (Words{"yes", "no"}));
  EXPECT_EQ(offered(on_engine, engine::touch_good), (Words{"yes", "no"}));
  const Words schemes = offered(on_engine, engine::scheme);
  EXPECT_EQ(schemes.size(), 6);
  for (const std::string& word : schemes) EXPECT_NO_THROW(mark_scheme_named(word)) << word;
  for (const book::Card& one : the_places().head.cards)
    EXPECT_EQ(offered(book::sheet_name::head, one.value(card::exception)),
              (Words{"leave", "nearest"}));
}

// The office draws the button of a choice over the column to the right of its cell, and no wider
// than that column is (found by trying).
TEST(Validity, leaves_room_for_the_button_of_a_choice) {
  constexpr double least_mm = 4.2;  // about 16 pixels
  OpenBook book(the_office(), template_file());
  for (const auto& [sheet, at, free_text] : entry_cells(the_places())) {
    if (free_text || !Rule(book, sheet, at).is_a_choice()) continue;
    const auto cursor = book.sheet(sheet)->createCursorByRange(as<css::sheet::XSheetCellRange>(
        book.sheet(sheet)->getCellRangeByPosition(at.column, at.row, at.column, at.row)));
    cursor->collapseToMergedArea();
    const int beside =
        as<css::sheet::XCellRangeAddressable>(cursor)->getRangeAddress().EndColumn + 1;
    const auto width =
        as<css::beans::XPropertySet>(
            as<css::table::XColumnRowRange>(book.sheet(sheet))->getColumns()->getByIndex(beside))
            ->getPropertyValue("Width")
            .get<sal_Int32>();
    EXPECT_GE(width / 100.0, least_mm) << book::on(sheet, at);
  }
}

TEST(Validity, offers_the_series_named_on_engine) {
  OpenBook book(the_office(), template_file());
  for (const At at : {shims::first_spare, shims::first_ladder, shims::first_single}) {
    const Rule rule(book, book::sheet_name::shims, at);
    EXPECT_TRUE(rule.is_a_choice());
    const std::string offered = rule.formula();
    const auto count = [&] {
      return book.value_of(book::sheet_name::shims,
                           "=ROWS(" + offered + ")*COLUMNS(" + offered + ")");
    };
    // Both sides come with the same.
    EXPECT_EQ(count(), 1);
    book.type(on_engine, engine::of(Side::exhaust, engine::series_row), "small");
    EXPECT_EQ(count(), 2);
    EXPECT_EQ(book.value_of(book::sheet_name::shims, "=MATCH(\"small\";" + offered + ";0)"), 1);
    book.type(on_engine, engine::of(Side::exhaust, engine::series_row), "A");
  }
}

using TypedEntry = std::variant<double, const char*>;

struct Typed {
  const char* what;
  std::string_view sheet;
  At at;
  TypedEntry entry;
  bool passes;
};

const At first_gap = the_places().head.cards.front().value(card::gap);
const At last_gap = the_places().head.cards.back().value(card::gap);
const At micrometer = the_places().head.cards.front().value(card::micrometer);
const At mark = the_places().head.cards.front().value(card::mark);
const At bias = engine::of(Side::inlet, engine::bias_row);
constexpr auto head = book::sheet_name::head;

const Typed typed[] = {
    {"a gap", head, first_gap, 0.18, true},
    {"a gap no blade goes into", head, first_gap, 0.0, true},
    {"a gap with its unit", head, first_gap, "4 thou", false},
    {"a gap as text", head, first_gap, "0.15", false},
    {"a negative gap", head, first_gap, -0.01, false},
    {"a gap wider than 5 mm", head, last_gap, 5.1, false},
    {"words for a gap", head, last_gap, "tight", false},
    {"a shim", head, micrometer, 2.752, true},
    {"a mark in the micrometer's cell", head, micrometer, 275.0, false},
    {"a mark", head, mark, 275.0, true},
    {"a mark that stands for nothing", head, mark, "Q9", false},
    {"a limit of 5 mm", on_engine, engine::of(Side::inlet, engine::max_row), 5.0, true},
    {"a limit above 5 mm", on_engine, engine::of(Side::inlet, engine::max_row), 5.001, false},
    {"a limit as text", on_engine, engine::of(Side::inlet, engine::max_row), "0.24", false},
    {"a currency", on_engine, engine::currency, "EUR", true},
    {"a novel for a currency", on_engine, engine::currency, "a handful of coins", false},
    {"where to aim", on_engine, bias, 1.0, true},
    {"an aim beyond the limits", on_engine, bias, 1.1, false},
    {"a negative limit", on_engine, engine::of(Side::inlet, engine::min_row), -0.1, false},
    {"work for nothing", on_engine, engine::work, 0.0, true},
    {"negative money", on_engine, engine::work, -1.0, false},
    {"a whole count", on_shims, right_of(shims::first_spare, 2), 2.0, true},
    {"half a shim", on_shims, right_of(shims::first_spare, 2), 1.5, false},
    {"a size", on_shims, right_of(shims::first_single), 2.75, true},
    {"a size of 275 mm", on_shims, right_of(shims::first_single), 275.0, false},
    {"a step of nothing", on_shims, right_of(shims::first_ladder, 3), 0.0, false},
    {"a price in words", on_shims, right_of(shims::first_ladder, 4), "dear", false},
};

void type(OpenBook& book, std::string_view sheet, At at, const TypedEntry& entry) {
  std::visit([&](const auto& value) { book.type(sheet, at, value); }, entry);
}

TEST(Validity, lets_sound_entries_pass_and_stops_others) {
  OpenBook book(the_office(), template_file());
  for (const auto& [what, sheet, at, entry, passes] : typed) {
    const Rule rule(book, sheet, at);
    type(book, sheet, at, entry);
    EXPECT_EQ(rule.lets_pass(book, sheet, at), passes) << what;
    book.clear(sheet, at);
  }
}

// The bounds are told in mm and hold in the unit chosen.
TEST(Validity, takes_bounds_in_inches_in_a_book_in_inches) {
  OpenBook book(the_office(), template_file());
  book.type(on_engine, engine::unit, "inch");
  const At max = engine::of(Side::inlet, engine::max_row);
  const At size = right_of(shims::first_spare);
  for (const auto& [sheet, at, inches, passes] :
       {std::tuple{on_engine, max, 0.196, true}, std::tuple{on_engine, max, 0.198, false},
        std::tuple{on_shims, size, 0.108, true}, std::tuple{on_shims, size, 2.75, false},
        std::tuple{on_shims, size, 0.0117, false}}) {
    book.type(sheet, at, inches);
    EXPECT_EQ(Rule(book, sheet, at).lets_pass(book, sheet, at), passes) << inches;
  }
}

TEST(Validity, holds_in_a_book_saved_as_xlsx_and_opened_again) {
  const auto file = the_office().profile().folder() / "checks.xlsx";
  OpenBook(the_office(), template_file()).save(file, xlsx);
  OpenBook book(the_office(), file);
  for (const auto& [what, sheet, at, entry, passes] : typed) {
    if (sheet == head) continue;  // until its checks are plain
    const Rule rule(book, sheet, at);
    ASSERT_TRUE(rule.is_there()) << what;
    type(book, sheet, at, entry);
    EXPECT_EQ(rule.lets_pass(book, sheet, at), passes) << what << ": " << rule.formula();
    book.clear(sheet, at);
  }
}

TEST(Validity, tells_what_is_due_while_an_entry_is_selected) {
  OpenBook book(the_office(), template_file());
  for (const book::SheetDescription& sheet : book::descriptions(the_places()))
    for (const book::Field& field : all_fields(sheet))
      if (const auto* entry = std::get_if<book::Takes>(&field.content)) {
        const ::testing::ScopedTrace place(__FILE__, __LINE__, sheet.name + ": " + field.name);
        const Rule rule(book, sheet.name, field.where.from);
        EXPECT_TRUE(rule.is_there());
        EXPECT_EQ(rule.title(), entry->title);
        EXPECT_EQ(rule.help(), help_of(*entry));
        EXPECT_EQ(rule.message(), refusal_of(*entry));
        EXPECT_TRUE(rule.stops());
        EXPECT_FALSE(book.locked(sheet.name, field.where.from));
      }
}

}  // namespace
}  // namespace shimwright::tests
