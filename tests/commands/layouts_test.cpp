// SPDX-License-Identifier: MPL-2.0
//
// Every kind of layout a book can be built for, from one cylinder to sixteen. A PDF of each Head
// stays under build/screens/layouts, to be looked at.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <filesystem>
#include <memory>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "../book/printed_pages.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"
#include "builder/builder.hpp"
#include "commands/request.hpp"
#include "core/engine/presets.hpp"
#include "office/office.hpp"

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using book::to_office;
using tests::PrintedPage;
using tests::PrintedWord;
using Document = Ref<css::sheet::XSpreadsheetDocument>;

EngineLayout layout(Arrangement arrangement, int cylinders, int exhaust, int inlet) {
  EngineLayout made{.name = {},
                    .arrangement = arrangement,
                    .banks = usual_banks(arrangement, cylinders),
                    .exhaust_valves = exhaust,
                    .inlet_valves = inlet,
                    .firing = {}};
  for (int cylinder = 1; cylinder <= cylinders; ++cylinder)
    made.firing += (cylinder == 1 ? "" : "-") + std::to_string(cylinder);
  made.name = full_name(made);
  return made;
}

std::vector<EngineLayout> all_layouts() {
  using enum Arrangement;
  std::vector<EngineLayout> all;
  std::set<std::pair<std::size_t, int>> shapes;  // of one shape, other valves are tried once
  for (const Preset& preset : presets()) {
    all.push_back(preset.layout);
    if (!shapes.insert({preset.layout.banks.size(), cylinders_of(preset.layout)}).second) continue;
    for (const auto& [exhaust, inlet] : {std::pair{1, 1}, {2, 3}}) {
      if (cylinders_of(preset.layout) * (exhaust + inlet) > 48) continue;
      EngineLayout other = preset.layout;
      other.exhaust_valves = exhaust;
      other.inlet_valves = inlet;
      other.name = full_name(other);
      all.push_back(other);
    }
  }
  for (const EngineLayout& other :
       {layout(in_line, 5, 2, 2), layout(in_line, 8, 2, 2), layout(in_line, 12, 2, 2),
        layout(in_line, 16, 1, 2), layout(vee, 10, 2, 2), layout(vee, 12, 2, 2),
        layout(vee, 16, 1, 2), layout(flat, 2, 2, 2), layout(flat, 12, 2, 2),
        layout(in_line, 3, 1, 3), layout(in_line, 4, 3, 1), layout(vee, 12, 1, 3),
        layout(vee, 14, 2, 1), layout(in_line, 2, 2, 1)})
    all.push_back(other);
  return all;
}

class BuiltBooks : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    office::Settings settings;
    settings.extension = PACKAGE;
    settings.sparing = true;
    office_ = std::make_unique<office::Office>(settings);
    builder_ = std::make_unique<builder::Builder>(*office_);
  }
  static void TearDownTestSuite() {
    builder_.reset();
    office_.reset();
  }

  static Document book_of(const EngineLayout& layout, const std::string& entries) {
    return builder_->build(layout, layout.name, entries);
  }

  static std::unique_ptr<office::Office> office_;
  static std::unique_ptr<builder::Builder> builder_;
};

std::unique_ptr<office::Office> BuiltBooks::office_;
std::unique_ptr<builder::Builder> BuiltBooks::builder_;

class Layouts : public BuiltBooks, public testing::WithParamInterface<EngineLayout> {};

// Readings that fill every card: all states in turn.
std::string readings_for(const EngineLayout& layout) {
  std::ostringstream text;
  text << "[engine]\nunit = mm\nexhaust = 0.22 | 0.28 | 0.75 | A\ninlet = 0.16 | 0.22 | 0.75 | A\n"
          "doubt = 0.01\n[valves]\n";
  const char* const gaps[] = {"0.25", "0.14", "0.22", "0.18", "0.31", "0.28", "0.20"};
  std::size_t i = 0;
  for (const ValveId& valve : valves_of(layout))
    text << name_of(valve, layout) << " | " << gaps[i++ % std::size(gaps)] << " | 270 | 2.702\n";
  text << "[rows of sizes]\nA | 2.20 | 3.20 | 0.05 | 6.90\n";
  return text.str();
}

// Cells with a formula that came to an error, on the sheets a person looks at.
std::vector<std::string> errors_in(const Document& document) {
  std::vector<std::string> errors;
  const auto sheets = as<css::container::XNameAccess>(document->getSheets());
  for (const rtl::OUString& name : sheets->getElementNames()) {
    if (office::from_office(name) == book::sheet_name::workings) continue;
    const auto found = as<css::sheet::XCellRangesQuery>(sheets->getByName(name))
                           ->queryFormulaCells(css::sheet::FormulaResult::ERROR)
                           ->getRangeAddressesAsString();
    if (!found.isEmpty()) errors.push_back(office::from_office(found));
  }
  return errors;
}

// Of all sheets, the hidden one too.
std::vector<std::string> formulas_in(const Document& document) {
  std::vector<std::string> formulas;
  const auto sheets = as<css::container::XNameAccess>(document->getSheets());
  for (const rtl::OUString& name : sheets->getElementNames()) {
    const auto sheet = as<css::sheet::XSpreadsheet>(sheets->getByName(name));
    const auto used = sheet->createCursor();
    as<css::sheet::XUsedAreaCursor>(used)->gotoEndOfUsedArea(true);
    for (const auto& row : as<css::sheet::XCellRangeFormula>(used)->getFormulaArray())
      for (const rtl::OUString& formula : row)
        if (formula.startsWith("=") || formula.startsWith("{="))
          formulas.push_back(office::from_office(formula));
  }
  return formulas;
}

// Head's pages, which stay to be looked at, and the one behind them.
std::vector<PrintedPage> print_head(const Document& document, const std::filesystem::path& file) {
  css::uno::Sequence<css::beans::PropertyValue> which(1);
  which.getArray()[0].Name = to_office("PageRange");
  which.getArray()[0].Value <<= to_office("3-4");
  css::uno::Sequence<css::beans::PropertyValue> how(2);
  how.getArray()[0].Name = to_office("FilterName");
  how.getArray()[0].Value <<= to_office("calc_pdf_Export");
  how.getArray()[1].Name = to_office("FilterData");
  how.getArray()[1].Value <<= which;
  std::filesystem::create_directories(file.parent_path());
  as<css::frame::XStorable>(document)->storeToURL(to_office(office::url_of(file)), how);
  return tests::printed_pages(file);
}

bool is_on(const std::vector<PrintedWord>& words, std::string_view word) {
  return std::ranges::find(words, word, &PrintedWord::text) != words.end();
}

// No page ends amid a card: each has its top and its foot there.
void expect_whole_cards(const std::vector<PrintedWord>& words, std::ptrdiff_t cards) {
  for (const char* word : {"limits", "then"})
    EXPECT_EQ(std::ranges::count(words, word, &PrintedWord::text), cards) << word;
}

std::string text_in(const book::Sheet& sheet, book::At at) {
  return office::from_office(
      as<css::text::XText>(sheet.range(at)->getCellByPosition(0, 0))->getString());
}

TEST_P(Layouts, a_book_is_built_and_answers_for_every_valve) {
  const EngineLayout& layout = GetParam();
  const Document document = book_of(layout, readings_for(layout));
  const book::Places places(layout);
  ASSERT_EQ(places.head.cards.size(), valves_of(layout).size());
  const book::Sheet head(document, book::sheet_name::head);
  for (const book::Card& card : places.head.cards) {
    const std::string after = text_in(head, card.value(book::card::after));
    EXPECT_TRUE(after.starts_with("0.") && after > "0.1")
        << name_of(card.valve, layout) << ": " << after;
  }
  EXPECT_EQ(errors_in(document), std::vector<std::string>());
  const auto pdf = std::filesystem::path(PICTURES) / "layouts" /
                   (layout.name + " (" + std::to_string(layout.exhaust_valves) + "+" +
                    std::to_string(layout.inlet_valves) + ").pdf");
  const std::vector<PrintedPage> pages = print_head(document, pdf);
  as<css::util::XCloseable>(document)->close(true);
  // The first of Head's pages has the key, the last the words about the crank, and no page follows.
  const bool two = places.head.second_page_row > 0;
  const auto cards_before = std::ranges::count_if(places.head.cards, [&](const book::Card& card) {
    return !two || card.corner.row < places.head.second_page_row;
  });
  expect_whole_cards(pages.at(0).words, cards_before);
  if (two) expect_whole_cards(pages.at(1).words, std::ssize(places.head.cards) - cards_before);
  EXPECT_TRUE(is_on(pages.at(0).words, "unread"));
  EXPECT_TRUE(is_on(pages.at(two ? 1 : 0).words, "unread"));
  EXPECT_TRUE(is_on(pages.at(two ? 1 : 0).words, "Turn"));
}

TEST_F(BuiltBooks, of_48_valves_hold_at_most_5000_formulas_and_no_matrix) {
  const EngineLayout largest = layout(Arrangement::vee, 12, 2, 2);
  const Document document = book_of(largest, readings_for(largest));
  const std::vector<std::string> formulas = formulas_in(document);
  as<css::util::XCloseable>(document)->close(true);
  EXPECT_GT(formulas.size(), 1000u);
  EXPECT_LE(formulas.size(), 5000u);
  for (const std::string& formula : formulas) EXPECT_FALSE(formula.starts_with("{")) << formula;
}

std::string name_of(const testing::TestParamInfo<EngineLayout>& info) {
  std::string name = info.param.name;
  for (char& c : name)
    if (!std::isalnum(static_cast<unsigned char>(c))) c = '_';
  return name + "_" + std::to_string(info.param.exhaust_valves) + "_" +
         std::to_string(info.param.inlet_valves);
}

std::string without_blanks(std::string text) {
  text = std::regex_replace(text, std::regex("&quot;"), "\"");
  std::erase_if(text, [](unsigned char c) { return std::isspace(c) != 0; });
  return text;
}

// Of a valve whose gap is no length, one below zero, marks that stand for nothing, a micrometer
// that reads hundredths, and marks far from what was measured.
std::string slips_for(const EngineLayout& layout) {
  std::ostringstream text;
  text << "[engine]\nunit = mm\nexhaust = 0.22 | 0.28 | 7 | A\ninlet = 0.16 | 0.22 | 0.75 | A\n"
          "[valves]\n";
  const char* const slips[] = {"0.25 | Q9 |", "0.14 | 290 | 2.702", "tight | 270 | 2.702",
                               "-0.1 | 270 | 275"};
  std::size_t i = 0;
  for (const ValveId& valve : valves_of(layout))
    text << name_of(valve, layout) << " | " << slips[i++ % std::size(slips)] << "\n";
  return text.str();
}

class Slips : public Layouts {};

TEST_P(Slips, are_told_on_head_in_full_above_the_key) {
  const EngineLayout& layout = GetParam();
  const Document document = book_of(layout, slips_for(layout));
  const auto pdf = std::filesystem::path(PICTURES) / "layouts" / ("slips, " + layout.name + ".pdf");
  const auto words = print_head(document, pdf).at(0).words;
  const book::Places places(layout);
  const book::Area box = places.head.box();
  std::string told;
  int lines = 0;
  {
    const book::Sheet head(document, book::sheet_name::head);
    for (int row = 0; row < box.rows(); ++row) {
      const std::string line = text_in(head, below(box.from, row));
      lines += line.empty() ? 0 : 1;
      told += line + "\n";
    }
  }
  as<css::util::XCloseable>(document)->close(true);
  // What finds no room is counted, and stands on Read me first.
  EXPECT_GE(lines, 5) << told;

  const auto key = std::ranges::find(words, "unread", &PrintedWord::text);
  ASSERT_NE(key, words.end());
  const auto first = std::ranges::find(words, "\u2022", &PrintedWord::text);
  ASSERT_NE(first, words.end()) << told;
  std::string printed;
  for (const PrintedWord& word : words)
    if (word.left > first->left - 1 && word.top > 0 && word.bottom < key->top + 1)
      printed += word.text;
  EXPECT_NE(without_blanks(printed).find(without_blanks(told)), std::string::npos)
      << told << "\n  was printed as\n"
      << printed;
}

css::uno::Sequence<css::uno::Sequence<css::uno::Any>> all_values(const Document& document,
                                                                 std::string_view sheet) {
  const auto cursor = book::Sheet(document, sheet).sheet()->createCursor();
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoStartOfUsedArea(false);
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoEndOfUsedArea(true);
  return as<css::sheet::XCellRangeData>(cursor)->getDataArray();
}

class Readings : public Layouts {};

// Of a large book's columns of formulas the office once left some as they were.
TEST_P(Readings, typed_one_by_one_leave_no_answer_behind) {
  const EngineLayout& layout = GetParam();
  const Document document = book_of(layout, readings_for(layout));
  const book::Places places(layout);
  book::Sheet head(document, book::sheet_name::head);
  const auto calculation = as<css::sheet::XCalculatable>(document);
  for (std::size_t i = 0; i < 8; ++i) {
    const book::Card& card = places.head.cards[i * 5 % places.head.cards.size()];
    head.number(card.value(book::card::gap), i % 2 == 0 ? 0.09 : 0.33);
    std::vector<css::uno::Sequence<css::uno::Sequence<css::uno::Any>>> typed;
    calculation->calculate();
    for (const std::string_view sheet : {book::sheet_name::head, book::sheet_name::workings})
      typed.push_back(all_values(document, sheet));
    calculation->calculateAll();
    for (const std::string_view sheet : {book::sheet_name::head, book::sheet_name::workings}) {
      const auto whole = all_values(document, sheet);
      const auto& before = typed[sheet == book::sheet_name::head ? 0 : 1];
      ASSERT_EQ(before.getLength(), whole.getLength());
      for (sal_Int32 row = 0; row < whole.getLength(); ++row)
        EXPECT_TRUE(before[row] == whole[row]) << sheet << ", row " << row + 1 << ", reading " << i;
    }
  }
  as<css::util::XCloseable>(document)->close(true);
}

INSTANTIATE_TEST_SUITE_P(Large, Readings,
                         testing::Values(inline_four(), layout(Arrangement::vee, 12, 2, 2),
                                         layout(Arrangement::in_line, 16, 1, 2)),
                         name_of);

INSTANTIATE_TEST_SUITE_P(Narrow, Slips,
                         testing::Values(layout(Arrangement::in_line, 1, 2, 3),
                                         layout(Arrangement::vee, 2, 2, 2),
                                         layout(Arrangement::in_line, 4, 1, 1)),
                         name_of);
INSTANTIATE_TEST_SUITE_P(Wide, Slips,
                         testing::Values(inline_four(), layout(Arrangement::vee, 12, 2, 2),
                                         layout(Arrangement::in_line, 16, 1, 2)),
                         name_of);

INSTANTIATE_TEST_SUITE_P(Any, Layouts, testing::ValuesIn(all_layouts()), name_of);

}  // namespace
}  // namespace shimwright::commands
