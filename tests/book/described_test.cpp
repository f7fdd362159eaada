// SPDX-License-Identifier: MPL-2.0
//
// The descriptions of the sheets, walked without an office: what every entry says, what is gathered
// of it, and which formulas come of it.
#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "book/book.hpp"
#include "book/drift_map.hpp"
#include "book/gathered.hpp"
#include "book/layouter.hpp"
#include "core/engine/layout.hpp"
#include "core/engine/presets.hpp"
#include "core/service/view.hpp"
#include "core/service/view_drift.hpp"

namespace shimwright::tests {
namespace {

using book::At;
using book::Copies;
using book::Field;
using book::Fixed;
using book::Gathered;
using book::SheetDescription;
using book::Shows;
using book::Takes;

const std::vector<SheetDescription>& sheets() {
  static const std::vector<SheetDescription> made = book::descriptions(book::Places(inline_four()));
  return made;
}

const Gathered& gathered() {
  static const Gathered made(sheets());
  return made;
}

// Calls `with` for every entry of every sheet.
template <typename With>
int for_each_entry(With with) {
  int count = 0;
  for (const SheetDescription& sheet : sheets())
    for (const Field& field : all_fields(sheet))
      if (const auto* entry = std::get_if<Takes>(&field.content)) {
        const ::testing::ScopedTrace place(__FILE__, __LINE__, sheet.name + ": " + field.name);
        with(sheet, field, *entry);
        ++count;
      }
  return count;
}

Field field_named(std::string_view sheet, std::string_view name) {
  for (const SheetDescription& one : sheets())
    if (one.name == sheet)
      for (Field& field : all_fields(one))
        if (field.name == name) return field;
  throw std::out_of_range("no field " + std::string(name));
}

std::size_t letters(std::string_view words) {
  return static_cast<std::size_t>(std::ranges::count_if(
      words, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

// As long as .xlsx holds them.
TEST(Entries, have_a_title_a_help_and_a_refusal_no_longer_than_a_file_holds) {
  const int count = for_each_entry([](const auto& sheet, const Field& field, const Takes& entry) {
    EXPECT_FALSE(entry.title.empty());
    EXPECT_LE(letters(entry.title), 32U) << entry.title;
    // There it would cover the verdict.
    const bool covers =
        field.name.starts_with("arrivals.mark.") || field.name.starts_with("arrivals.micrometer.");
    EXPECT_EQ(entry.help.empty(), covers) << sheet.name << " " << field.name;
    EXPECT_LE(letters(entry.help), 255U) << entry.help;
    EXPECT_FALSE(entry.due.empty());
    EXPECT_LE(letters(refusal_of(entry)), 255U) << refusal_of(entry);
  });
  EXPECT_GT(count, 100);
}

TEST(Refusals, say_that_the_cell_keeps_what_it_held_and_where_to_go_back_to) {
  for_each_entry([](const auto&, const Field&, const Takes& entry) {
    const std::string refusal = refusal_of(entry);
    EXPECT_FALSE(entry.place.empty());
    EXPECT_TRUE(refusal.starts_with(entry.due)) << refusal;
    EXPECT_NE(refusal.find("The cell keeps what it held: go back to " + entry.place),
              std::string::npos)
        << refusal;
  });
}

TEST(Refusals, name_the_row_or_the_side) {
  const auto refusal = [](std::string_view sheet, std::string_view name) {
    return refusal_of(std::get<Takes>(field_named(sheet, name).content));
  };
  EXPECT_EQ(refusal("Engine", "inlet.max"),
            "A gap allowed is a number from 0 to 5 mm (0.197 in), in the unit chosen above. Type "
            "the number alone, with your office\u2019s decimal mark (0.24 or 0,24). The cell keeps "
            "what it held: go back to Largest gap allowed, inlet side.");
  EXPECT_EQ(refusal("Head", "1 EX L.gap"),
            "A gap is 0 (no blade goes) to 5 mm (0.197 in), in the unit chosen on Engine. Type the "
            "number alone, with your office\u2019s decimal mark (0.24 or 0,24). The cell keeps "
            "what it held: go back to the gap of 1 EX L.");
  EXPECT_NE(refusal("Shims", "spares.size.7").find("go back to row 7 of the spares."),
            std::string::npos);
  EXPECT_NE(refusal("Shims", "singles.quantity.22").find("go back to row 22 of the single sizes."),
            std::string::npos);
}

TEST(Refusals, name_the_decimal_mark_of_the_office_where_that_is_known) {
  const auto entry = std::get<Takes>(field_named("Head", "1 EX L.gap").content);
  EXPECT_NE(refusal_of(entry, "0,24").find("with your office\u2019s decimal mark (0,24). The cell"),
            std::string::npos)
      << refusal_of(entry, "0,24");
}

// As wide as the columns between it and the verdict, in the office's own letters, of 1.8 mm.
TEST(Help, of_what_has_arrived_covers_no_verdict) {
  const auto entry = std::get<Takes>(field_named("Arrivals", "arrivals.arrived.1").content);
  std::string line;
  for (const char c : help_of(entry) + "\n") {
    if (c == '\n') {
      EXPECT_LE(1.8 * static_cast<double>(letters(line)), 17.0 + 22.0) << line;
      line.clear();
    } else {
      line += c;
    }
  }
}

TEST(Fields, have_each_a_name_of_their_own_and_cells_of_their_own) {
  for (const SheetDescription& sheet : sheets()) {
    std::set<std::string> names;
    std::set<std::pair<int, int>> cells;
    for (const Field& field : all_fields(sheet)) {
      EXPECT_TRUE(names.insert(field.name).second) << sheet.name << ": " << field.name;
      for (int row = field.where.from.row; row <= field.where.to.row; ++row)
        for (int column = field.where.from.column; column <= field.where.to.column; ++column)
          EXPECT_TRUE(cells.emplace(column, row).second)
              << sheet.name << ": " << field.name << " lies over another field";
    }
  }
}

// So that the largest book stays quick.
TEST(Head, shows_nine_pieces_a_card) {
  EngineLayout layout = inline_four();
  const book::Places places(layout);
  for (const SheetDescription& sheet : sheets()) {
    if (sheet.name != "Head") continue;
    const auto shown_of = [&sheet](std::string_view valve) {
      return std::ranges::count_if(sheet.fields, [valve](const Field& field) {
        return field.name.starts_with(std::string(valve) + ".") &&
               std::holds_alternative<Shows>(field.content);
      });
    };
    for (const ValveId& valve : places.valves) EXPECT_EQ(shown_of(name_of(valve, layout)), 9);
  }
}

// The gap of a valve is judged by its side's limits, and measured where its cylinder stops.
TEST(Head, tells_of_each_valve_its_cylinder_and_side) {
  for (const SheetDescription& sheet : sheets()) {
    if (sheet.name != "Head") continue;
    const auto constant = [&sheet](std::string_view valve, int value) -> std::string {
      for (const book::Constant& one : sheet.constants)
        if (one.kind == "valve" && one.name == valve && one.value == value) return one.what;
      return {};
    };
    EXPECT_EQ(constant("1 EX L", entry_value::cylinder), "1");
    EXPECT_EQ(constant("1 EX L", entry_value::side), "exhaust");
    EXPECT_EQ(constant("4 IN R", entry_value::cylinder), "4");
    EXPECT_EQ(constant("4 IN R", entry_value::side), "inlet");
  }
}

SheetDescription plan_of(int cylinders) {
  const EngineLayout layout{.name = "V",
                            .arrangement = Arrangement::vee,
                            .banks = usual_banks(Arrangement::vee, cylinders),
                            .firing = "1"};
  for (SheetDescription& sheet : book::descriptions(book::Places(layout)))
    if (sheet.name == "Plan") return sheet;
  throw std::out_of_range("no Plan");
}

TEST(Plan, of_24_valves_goes_on_one_page) {
  EXPECT_EQ(plan_of(6).page_style, "Book landscape");
  EXPECT_FALSE(plan_of(6).repeated_rows);
  EXPECT_TRUE(plan_of(6).page_breaks.empty());
}

// The lists of 48 valves take two, with their heads on both; the picture has a page of its own.
TEST(Plan, of_32_valves_has_its_lists_on_one_page_and_of_48_on_two) {
  const SheetDescription middle = plan_of(8);
  EXPECT_EQ(middle.page_style, "Book landscape parted");
  EXPECT_FALSE(middle.repeated_rows);
  ASSERT_EQ(middle.page_breaks.size(), 1u);
  EXPECT_GT(middle.page_breaks[0], book::plan_place::first_row + 32);
  const SheetDescription large = plan_of(12);
  EXPECT_EQ(large.page_style, "Book landscape parted");
  EXPECT_EQ(large.page_breaks.size(), 1u);
  ASSERT_TRUE(large.repeated_rows);
  EXPECT_EQ(large.repeated_rows->second + 1, book::plan_place::first_row);
}

TEST(Plan, heads_its_columns_in_the_words_of_the_trade) {
  const auto headings = [](std::string_view table) {
    std::vector<std::string> words;
    for (const SheetDescription& sheet : sheets())
      if (sheet.name == "Plan")
        for (const book::Table& one : sheet.tables)
          if (one.name == table)
            for (const book::Column& column : one.columns) words.push_back(column.heading);
    return words;
  };
  using Words = std::vector<std::string>;
  EXPECT_EQ(headings("valves"), (Words{"valve", "gap", "shim now", "action", "from", "new shim",
                                       "gap after", "inside limits by", "result", "cost"}));
  EXPECT_EQ(headings("order"), (Words{"series", "size", "qty", "price each", "cost"}));
  EXPECT_EQ(headings("left over"), (Words{"series", "size", "qty"}));
}

TEST(Gathered, holds_every_entry_once) {
  const SheetDescription workings = gathered().sheet();
  std::map<std::pair<int, int>, Copies> copies;
  for (const Field& cell : workings.fields)
    if (const auto* copy = std::get_if<Copies>(&cell.content))
      copies.emplace(std::pair(cell.where.from.column, cell.where.from.row), *copy);
  std::set<std::tuple<std::string, std::string, int>> known;
  for_each_entry([&](const auto& sheet, const Field& field, const Takes& entry) {
    EXPECT_TRUE(known.emplace(entry.kind, entry.name, entry.value).second);
    const At at = gathered().entry(entry.kind, entry.name, entry.value);
    const auto copy = copies.find({at.column, at.row});
    ASSERT_NE(copy, copies.end());
    EXPECT_EQ(copy->second.sheet, sheet.name);
    EXPECT_EQ(copy->second.at, field.where.from);
  });
}

TEST(Gathered, refers_plainly_to_each_entry_and_lets_no_error_through) {
  EXPECT_EQ(book::formula_of(Copies{"Shims", {3, 6}}),
            "=IFERROR(IF($'Shims'.$D$7=\"\";\"\";$'Shims'.$D$7);\"#error\")");
}

TEST(Gathered, knows_a_choice_by_what_it_stands_for) {
  EXPECT_EQ(book::formula_of(Copies{"Engine", {2, 35}, {{"in place", "no"}, {"mm", ""}}}),
            "=IFERROR(IF($'Engine'.$C$36=\"in place\";\"no\";IF($'Engine'.$C$36=\"\";\"\";"
            "$'Engine'.$C$36));\"#error\")");
}

// A book made in an English office and filled in in a German one changes its decimal mark with the
// first entry.
TEST(Gathered, works_the_decimal_mark_out_anew_with_every_entry) {
  std::vector<book::Area> with;
  for (const Field& cell : gathered().sheet().fields) {
    const auto* half = std::get_if<book::Half>(&cell.content);
    if (half == nullptr) continue;
    EXPECT_TRUE(book::formula_of(*half).starts_with("=1/2+0*COUNTA($C$")) << cell.name;
    with.push_back(half->with);
  }
  ASSERT_EQ(with.size(), 3U) << "of what lasts, of the gaps, of the log";
  for_each_entry([&with](const auto&, const Field&, const Takes& entry) {
    const At at = gathered().entry(entry.kind, entry.name, entry.value);
    EXPECT_TRUE(std::any_of(with.begin(), with.begin() + 2,
                            [at](const book::Area& area) {
                              return area.from.row <= at.row && at.row <= area.to.row &&
                                     area.from.column <= at.column && at.column <= area.to.column;
                            }))
        << entry.kind << " " << entry.name;
  });
}

// So that a table told of it need not be told anew with every reading.
TEST(Gathered, what_lasts_holds_every_entry_but_the_gaps) {
  const auto fields = gathered().sheet().fields;
  const auto first = std::ranges::find_if(
      fields, [](const Field& field) { return std::holds_alternative<book::Half>(field.content); });
  ASSERT_NE(first, fields.end());
  const book::Area half = std::get<book::Half>(first->content).with;
  const auto names = gathered().names();
  const auto lasting = std::ranges::find(names, book::lasting_entries_name,
                                         &std::pair<std::string, std::string>::first);
  ASSERT_NE(lasting, names.end());
  for_each_entry([&](const auto&, const Field&, const Takes& entry) {
    const At at = gathered().entry(entry.kind, entry.name, entry.value);
    const bool is_gap = entry.kind == "valve" && entry.value == entry_value::gap;
    const int last = std::stoi(lasting->second.substr(lasting->second.rfind('$') + 1));
    EXPECT_EQ(at.row + 1 > last, is_gap) << entry.kind << " " << entry.name;
    EXPECT_EQ(at.row > half.to.row, is_gap) << entry.kind << " " << entry.name;
  });
}

// The charts' points are written there.
TEST(Workings, never_come_so_far_as_what_the_charts_are_drawn_from) {
  for (const Preset& preset : presets()) {
    const std::vector<SheetDescription> all = book::descriptions(book::Places(preset.layout));
    EXPECT_LT(Gathered(all).sheet().column_mm.size(),
              static_cast<std::size_t>(book::DriftMap::data.column))
        << preset.name;
  }
}

TEST(Shown, is_one_piece_of_an_answer) {
  EXPECT_EQ(book::formula_of(Shows{"valves", "gap", 3}),
            "=IFERROR(BOOK.SHOWS(tells_valves;\"gap\";3);\"\")");
  EXPECT_EQ(book::formula_of(Shows{"left over", "size", 1, true}),
            "=IFERROR(VALUE(BOOK.SHOWS(tells_surplus;\"size\";1));\"\")");
}

TEST(Shown, comes_from_a_table_that_is_asked_for) {
  std::set<std::string> asked;
  for (const Field& field : gathered().sheet().fields)
    if (const auto* answer = std::get_if<book::Tells>(&field.content)) asked.insert(answer->table);
  EXPECT_GE(asked.size(), 7U);
  for (const SheetDescription& sheet : sheets())
    for (const Field& field : all_fields(sheet)) {
      if (const auto* piece = std::get_if<Shows>(&field.content)) {
        EXPECT_TRUE(asked.contains(piece->table)) << field.name;
      }
      for (const book::Wears& grade : field.grades)
        EXPECT_TRUE(asked.contains(grade.piece.table)) << field.name;
    }
}

// Each is worked out anew with every entry, and the office holds it in memory.
TEST(Formulas, of_a_book_for_48_valves_are_fewer_than_5000) {
  const EngineLayout layout{.name = "V, 12 cylinders, 48 valves",
                            .arrangement = Arrangement::vee,
                            .banks = usual_banks(Arrangement::vee, 12),
                            .exhaust_valves = 2,
                            .inlet_valves = 2,
                            .firing = "1-12-5-8-3-10-6-7-2-11-4-9"};
  std::vector<SheetDescription> all = book::descriptions(book::Places(layout));
  all.push_back(Gathered(all).sheet());
  int count = 0;
  for (const SheetDescription& sheet : all) {
    int here = 0;
    for (const Field& field : all_fields(sheet))
      if (book::formula_of(field.content).starts_with('=')) ++here;
    std::cout << "  " << sheet.name << ": " << here << " formulas\n";
    count += here;
  }
  EXPECT_LT(count, 5000);
}

// An unknown column would stay blank without a word.
TEST(Shown, is_a_column_that_the_view_has) {
  const View view = view_of(
      service_of({{"valve", "1 EX L", "", "", "", "", 1.0, "exhaust"}, {"sizes", "1", "A"}}));
  const View of_log = drift_view_of({}, {});
  const auto expect_known = [&](const Shows& piece, const std::string& name) {
    const ShownTable* table = (is_told_of_log(piece.table) ? of_log : view).table(piece.table);
    ASSERT_NE(table, nullptr) << name;
    EXPECT_NE(std::ranges::find(table->columns, piece.column), table->columns.end())
        << name << ": " << piece.column;
  };
  for (const SheetDescription& sheet : sheets())
    for (const Field& field : all_fields(sheet)) {
      if (const auto* piece = std::get_if<Shows>(&field.content)) expect_known(*piece, field.name);
      if (const auto* bar = std::get_if<book::Progress>(&field.content))
        expect_known(bar->share, field.name);
      for (const book::Wears& grade : field.grades) expect_known(grade.piece, field.name);
    }
  for (const SheetDescription& sheet : sheets())
    for (const book::BandChart& chart : sheet.charts)
      for (const Shows& piece : chart.pieces()) expect_known(piece, chart.name);
}

TEST(Formulas, parse_no_sentence) {
  std::vector<SheetDescription> all = sheets();
  all.push_back(gathered().sheet());
  int count = 0;
  for (const SheetDescription& sheet : all)
    for (const Field& field : all_fields(sheet)) {
      const std::string formula = book::formula_of(field.content);
      if (!formula.starts_with('=')) continue;
      ++count;
      for (const char* word : {"TEXTJOIN", "REGEX", "SUBSTITUTE", "MID(", "FIND("})
        EXPECT_EQ(formula.find(word), std::string::npos) << field.name << ": " << formula;
    }
  EXPECT_GT(count, 200);
}

TEST(Checks, need_no_add_in) {
  const auto check = [](std::string_view sheet, std::string_view name) {
    return entry_check(std::get<Takes>(field_named(sheet, name).content), gathered());
  };
  EXPECT_EQ(check("Engine", "exhaust.max").rule, "0");
  EXPECT_EQ(check("Engine", "exhaust.max").most, "5*IF($'Engine'.$C$9=\"inch\";1/25.4;1)");
  EXPECT_EQ(check("Engine", "inlet.bias").most, "1");
  EXPECT_EQ(check("Shims", "sizes.step.2").rule, "0.001*IF($'Engine'.$C$9=\"inch\";1/25.4;1)");
  EXPECT_EQ(check("Engine", "touch good").rule, "\"yes\";\"no\"");
  for_each_entry([](const auto&, const Field&, const Takes& entry) {
    const book::EntryCheck made = entry_check(entry, gathered());
    EXPECT_NE(made.kind, book::EntryCheck::Kind::condition);
    if (std::holds_alternative<book::Choice>(entry.check)) return;  // words, no formula
    for (const std::string& formula : {made.rule, made.most})
      for (const char* word : {"SHIM.", "LENGTH.", "CRANK.", "BOOK.", ","})
        EXPECT_EQ(formula.find(word), std::string::npos) << formula;
  });
}

// It stood in the midst of a formula once.
TEST(Formulas, keep_a_quotation_mark_in_the_name_of_a_bank) {
  EngineLayout layout{
      .name = "V-twin",
      .arrangement = Arrangement::vee,
      .banks = {{.name = "le\"ft", .cylinders = {1}}, {.name = "right", .cylinders = {2}}},
      .firing = "1-2"};
  const std::vector<SheetDescription> described = book::descriptions(book::Places(layout));
  int told = 0;
  for (const SheetDescription& sheet : described)
    for (const Field& field : all_fields(sheet)) {
      const std::string content = book::formula_of(field.content);
      if (content.find("le\"ft") == std::string::npos) continue;
      EXPECT_FALSE(content.starts_with('=')) << field.name;
      ++told;
    }
  EXPECT_GE(told, 1);
}

TEST(Headings, stand_on_every_described_sheet) {
  for (const SheetDescription& sheet : sheets())
    EXPECT_EQ(std::ranges::count(all_fields(sheet), "title", &Field::name), 1) << sheet.name;
}

}  // namespace
}  // namespace shimwright::tests
