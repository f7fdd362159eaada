// SPDX-License-Identifier: MPL-2.0
#include "core/entries/entries.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "blank.hpp"
#include "core/entries/entry_row.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

using TypedRow = std::vector<Entry>;

const TypedRow valves_header{"valve", "series", "clearance", "shim", "min", "max"};
const TypedRow shims_header{"kind", "series", "size", "count", "price"};

TypedRow sound_valve(const std::string& name) { return {name, "A", 0.12, 2.75, 0.16, 0.20}; }

std::string told(const Trouble& trouble) {
  return trouble.table + "|" + std::to_string(trouble.row) + "|" + trouble.column + "|" +
         sentence(trouble) + (trouble.grave ? "|grave" : "|note");
}

std::vector<std::string> told(const Entries& entries) {
  std::vector<std::string> all;
  for (const Trouble& trouble : entries.troubles) all.push_back(told(trouble));
  return all;
}

using Sentences = std::vector<std::string>;

Sentences troubles_of_valve(const TypedRow& row) { return told(read_entries({row}, {}, {})); }

// One row of shims beside a sound valve of series A.
Sentences troubles_of_shim(const TypedRow& row) {
  return told(read_entries({sound_valve("V")}, {row}, {}));
}

Sentences troubles_of_rule(const TypedRow& row) { return told(read_entries({}, {}, {row})); }

std::string no_blade_goes(const std::string& row, const std::string& valve) {
  return row + "|clearance|" + valve +
         ": the clearance is 0, no blade goes: the valve may even be held open, so the clearance "
         "after fitting is only the most it can be|note";
}

TEST(Entries, sound_tables_make_a_question_without_grave_trouble) {
  const Entries entries =
      read_entries({valves_header,
                    {"1 inlet", "A", 0.12, 2.75, 0.16, 0.20},
                    {"2 inlet", "a ", blank, 2.80, 0.16, 0.20},
                    {"3 inlet", 9.5, 0.0, 2.70, 0.16, 0.20, 0.18, 0.01, "yes"}},
                   {shims_header,
                    {"spare", "A", 2.70, blank, blank},
                    {"Sale", "A", 2.65, blank, 4.5},
                    {"sale", 9.5, 2.60, 3.0, 4.25}},
                   {{"touch good", "yes"}, {"work", 2.5}, {"doubt", "no"}, {"first", "aim"}});
  EXPECT_EQ(told(entries), Sentences{no_blade_goes("valves|4", "valve 3 inlet")});
  const PlanQuestion& question = sound_question(entries);
  ASSERT_EQ(question.valves.size(), 3U);
  const Valve& first = question.valves[0];
  EXPECT_EQ(first.name, "1 inlet");
  EXPECT_EQ(first.series, "A");
  EXPECT_EQ(first.clearance, 0.12_mm);
  EXPECT_EQ(first.shim, 2.75_mm);
  EXPECT_EQ(first.limits.min, 0.16_mm);
  EXPECT_EQ(first.limits.max, 0.20_mm);
  EXPECT_EQ(first.aim, 0.19_mm) << "the default bias of 0.75";
  EXPECT_EQ(first.doubt, Length());
  EXPECT_FALSE(first.locked);
  EXPECT_EQ(question.valves[1].series, "A") << "one spelling for one series";
  EXPECT_EQ(question.valves[1].clearance, std::nullopt);
  const Valve& third = question.valves[2];
  EXPECT_EQ(third.series, "9.5");
  EXPECT_EQ(third.clearance, Length()) << "zero is a reading: no blade goes";
  EXPECT_EQ(third.aim, 0.18_mm);
  EXPECT_EQ(third.doubt, 0.01_mm);
  EXPECT_TRUE(third.locked);

  ASSERT_EQ(question.stock.size(), 3U);
  EXPECT_EQ(question.stock[0].kind, Stock::Kind::spare);
  EXPECT_EQ(question.stock[0].size, 2.70_mm);
  EXPECT_EQ(question.stock[0].count, std::nullopt);
  EXPECT_EQ(question.stock[1].kind, Stock::Kind::sale);
  EXPECT_EQ(question.stock[1].price, Money::of(4.5));
  EXPECT_EQ(question.stock[2].series, "9.5");
  EXPECT_EQ(question.stock[2].count, 3);

  EXPECT_TRUE(question.rules.touch_good);
  EXPECT_EQ(question.rules.work, Money::of(2.5));
  EXPECT_FALSE(question.rules.use_doubt);
  EXPECT_TRUE(question.rules.aim_first);
}

TEST(Entries, tables_not_given_are_an_empty_question) {
  for (const EntryTable& table :
       {EntryTable(), EntryTable{{blank}}, EntryTable{{0.0}}, EntryTable{{""}},
        EntryTable{{"  ", blank, "\u00a0"}, {"", "", ""}}}) {
    const Entries entries = read_entries(table, table, table);
    EXPECT_EQ(told(entries), Sentences());
    EXPECT_TRUE(entries.question.valves.empty());
    EXPECT_TRUE(entries.question.stock.empty());
    EXPECT_TRUE(entries.valve_rows.empty());
    EXPECT_FALSE(entries.question.rules.touch_good);
    EXPECT_TRUE(entries.question.rules.use_doubt);
    EXPECT_FALSE(entries.question.rules.aim_first);
  }
}

TEST(Entries, blank_rows_inside_keep_their_place_and_trailing_ones_are_left_off) {
  const TypedRow nothing{blank, blank, blank, blank, blank, blank};
  const TypedRow limits_only{blank, "A", "", 0.0, 0.16, 0.20};  // laid out, not yet filled in
  const Entries entries = read_entries({valves_header, nothing, sound_valve("V"), limits_only,
                                        sound_valve("W"), limits_only, nothing},
                                       {}, {});
  EXPECT_EQ(told(entries), Sentences());
  const std::vector<std::optional<std::size_t>> expected{std::nullopt, 0, std::nullopt, 1};
  EXPECT_EQ(entries.valve_rows, expected);
}

TEST(Entries, a_heading_is_known_by_text_in_every_number_column) {
  EXPECT_EQ(read_entries({valves_header}, {shims_header}, {}).question.valves.size(), 0U);
  EXPECT_EQ(read_entries({sound_valve("V")}, {}, {}).question.valves.size(), 1U);
  EXPECT_EQ(told(read_entries({valves_header, sound_valve("V")}, {shims_header}, {})), Sentences());
}

TEST(Entries, a_first_row_that_holds_data_is_no_header_whatever_its_text) {
  EXPECT_EQ(
      troubles_of_valve({"V", "A", "stuck", 2.75, 0.16, 0.20}),
      Sentences{
          "valves|1|clearance|valve V: the clearance, \"stuck\", is text where a number is due: "
          "it does not count|note"});
  EXPECT_EQ(read_entries({{"V", "A", "0.10 mm", "", "", ""}}, {}, {}).valve_rows.size(), 1U);
  EXPECT_EQ(read_entries({{"V", "A", "900 mm", "", "", ""}}, {}, {}).valve_rows.size(), 1U);
  EXPECT_EQ(read_entries({{"V", "A", "0,10", "2,75", "0,16", "0,20"}}, {}, {}).valve_rows.size(),
            1U)
      << "numbers typed as text";
  EXPECT_EQ(read_entries({{1.0, "", "gap", "shim", "min", "max"}}, {}, {}).valve_rows.size(), 1U)
      << "no heading begins with a number";
}

// A row too few in the plan would tell each valve what the one below it is to get.
TEST(Entries, text_in_the_first_gap_leaves_every_valve_in_its_row) {
  const Entries entries = read_entries({{"v1", blank, "abc", blank, blank, blank},
                                        {"v2", blank, 0.10, 2.80, 0.16, 0.20},
                                        {"v3", blank, 0.25, 2.75, 0.16, 0.20}},
                                       {{"sale", blank, 2.70}, {"sale", blank, 2.80}}, {});
  EXPECT_EQ(told(entries),
            Sentences{"valves|1|clearance|valve v1: the clearance, \"abc\", is text where a "
                      "number is due: it does not count|note"});
  const std::vector<std::optional<std::size_t>> rows{0, 1, 2};
  EXPECT_EQ(entries.valve_rows, rows);
  const Plan plan = best_plan(sound_question(entries));
  ASSERT_EQ(plan.lines.size(), 3U);
  EXPECT_EQ(plan.lines[0].action, Action::unread);
  EXPECT_EQ(plan.lines[1].action, Action::buy);
  EXPECT_EQ(plan.lines[1].size, 2.70_mm);
  EXPECT_EQ(plan.lines[2].action, Action::move);
  EXPECT_EQ(plan.lines[2].size, 2.80_mm);
}

TEST(Entries, one_number_column_without_text_makes_the_first_row_a_valve) {
  for (std::size_t column = 2; column < valves_header.size(); ++column) {
    TypedRow row = valves_header;
    row[column] = blank;
    EXPECT_EQ(read_entries({row}, {}, {}).question.valves.size(), 1U) << "column " << column;
  }
}

TEST(Entries, a_heading_of_shims_has_text_over_count_and_price_where_they_are_given) {
  EXPECT_EQ(told(read_entries({sound_valve("V")}, {{"kind", "series", "size"}}, {})), Sentences());
  EXPECT_EQ(told(read_entries({sound_valve("V")}, {{"kind", "series", "size", "count"}}, {})),
            Sentences());
  EXPECT_EQ(told(read_entries({sound_valve("V")}, {{"spare", "A", "thin", blank, blank}}, {})),
            Sentences{"shims|1|size|the size, \"thin\", is text where a number is due: it does not "
                      "count|note"});
}

TEST(Entries, a_first_row_that_says_spare_or_sale_is_a_shim_whatever_its_text) {
  for (const std::string kind : {"spare", " Sale "}) {
    EXPECT_EQ(
        told(read_entries({sound_valve("V")}, {{kind, "A", "thin"}, {"spare", "A", 2.7}}, {})),
        Sentences{"shims|1|size|the size, \"thin\", is text where a number is due: it does not "
                  "count|note"});
    EXPECT_EQ(
        told(read_entries({sound_valve("V")}, {{kind, "A", "thin", "some", "cheap"}}, {})).size(),
        3U);
  }
}

TEST(Entries, text_counts_as_not_given_and_is_told_of) {
  const std::string is_text = ", is text where a number is due: it does not count|note";
  const Entries entries =
      read_entries({valves_header, {"V", "A", "abc", "2,75", "x", "y", "z", "w"}}, {}, {});
  EXPECT_EQ(told(entries),
            (Sentences{"valves|2|clearance|valve V: the clearance, \"abc\"" + is_text,
                       "valves|2|shim|valve V: the shim, \"2,75\"" + is_text,
                       "valves|2|min|valve V: the minimum clearance, \"x\"" + is_text,
                       "valves|2|max|valve V: the maximum clearance, \"y\"" + is_text,
                       "valves|2|aim|valve V: the aim, \"z\"" + is_text,
                       "valves|2|doubt|valve V: the doubt, \"w\"" + is_text}));
  ASSERT_EQ(entries.question.valves.size(), 1U);
  EXPECT_EQ(entries.question.valves[0].clearance, std::nullopt);
  EXPECT_EQ(entries.question.valves[0].shim, std::nullopt);
}

TEST(Entries, a_trouble_is_a_value) {
  const Entries entries =
      read_entries({{"1 EX L", "A", -0.12, 2425.0, 0.16, 0.20}}, {{"spare", "B", 2.70}}, {});
  const About valve{About::Kind::valve, "1 EX L"};
  EXPECT_EQ(entries.troubles,
            (std::vector<Trouble>{{.table = "valves",
                                   .row = 1,
                                   .column = "clearance",
                                   .grave = true,
                                   .about = valve,
                                   .what = Say::negative,
                                   .words = {Say::the_clearance, TypedLength{-0.12}}},
                                  {.table = "valves",
                                   .row = 1,
                                   .column = "shim",
                                   .grave = true,
                                   .about = valve,
                                   .what = Say::no_shim_size_but_mark,
                                   .words = {TypedLength{2425}, LengthToType{2.425_mm}}},
                                  {.table = "shims",
                                   .row = 1,
                                   .column = "series",
                                   .about = {.kind = About::Kind::spare, .size = 2.7_mm},
                                   .what = Say::series_unknown,
                                   .words = {"B", Names{"\"A\""}}}}));
}

TEST(Entries, a_shim_of_neither_kind_is_called_a_shim) {
  EXPECT_EQ(
      troubles_of_shim({"used", "B", 2.70}),
      (Sentences{"shims|1|kind|the row is left out: \"used\" is neither spare nor sale|note",
                 "shims|1|series|shim 2.70 mm: no valve takes series \"B\", so it is passed over: "
                 "the valves have \"A\"|note"}));
}

TEST(Entries, in_the_book_troubles_are_told_in_its_nouns_and_unit) {
  const Teller book(Language::english, Unit::inch, ",", Terms::book);
  const Entries entries =
      read_entries({{"1 EX L", "A", 0.90, 2.75, 0.18, 0.23}, {"W", "A", 0.1, 2.75, 0.23, 0.18}},
                   {{"spare", "A", 2.54, 1.5}}, {{"touch good", "often"}});
  std::vector<std::string> sentences;
  for (const Trouble& trouble : entries.troubles) sentences.push_back(sentence(trouble, book));
  EXPECT_EQ(
      sentences,
      (Sentences{"Valve 1 EX L: the gap, 0,0354 in, is at least twice the largest allowed, 0,0091 "
                 "in: measure it again",
                 "Valve W: the smallest gap allowed, 0,0091 in, is above the largest, 0,0071 in",
                 "spare 0,1000 in is left out: the quantity, 1,5, is not a whole number",
                 "Change shims of good valves too: \"often\" is neither yes nor no"}));
}

TEST(Entries, a_valve_not_fully_read_is_no_trouble) {
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, blank, blank, blank}), Sentences());
  EXPECT_EQ(troubles_of_valve({"V", "A", blank, 2.75, blank, blank}), Sentences());
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 0.0, blank, 0.20}), Sentences());
  EXPECT_EQ(troubles_of_valve({"V", "", "", "", "", ""}), Sentences());
}

TEST(Entries, a_number_that_cannot_be_is_grave) {
  const double infinite = std::numeric_limits<double>::infinity();
  EXPECT_EQ(troubles_of_valve({"V", "A", -0.12, 2.75, 0.16, 0.20}),
            Sentences{"valves|1|clearance|valve V: the clearance, -0.12 mm, is negative|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 275.0, 0.16, 0.20}),
            Sentences{"valves|1|shim|valve V: 275 mm is no shim size. Did you mean 2.75?|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2425.0, 0.16, 0.20}),
            Sentences{"valves|1|shim|valve V: 2425 mm is no shim size. Did you mean 2.425?|grave"});
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 0.12, 275.5, 0.16, 0.20}),
      Sentences{"valves|1|shim|valve V: 275.5 mm is no shim size: check the unit and the decimal "
                "mark|grave"});
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 275.0, 2.75, 0.16, 0.20}),
      Sentences{"valves|1|clearance|valve V: the clearance, 275 mm, is too large to be true: check "
                "the unit and the decimal mark|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", -1e300, 2.75, 0.16, 0.20}),
            Sentences{"valves|1|clearance|valve V: the clearance, -1e+300 mm, is negative|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2.75, -0.16, 0.20}),
            Sentences{"valves|1|min|valve V: the minimum clearance, -0.16 mm, is negative|grave"});
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 0.12, 2.75, 0.16, -infinite}),
      Sentences{"valves|1|max|valve V: the maximum clearance is no number that can be|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2.75, 0.16, 0.20, std::nan("")}),
            Sentences{"valves|1|aim|valve V: the aim is no number that can be|grave"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2.75, 0.16, 0.20, blank, -0.01}),
            Sentences{"valves|1|doubt|valve V: the doubt, -0.01 mm, is negative|grave"});
}

TEST(Entries, the_dust_of_binary_fractions_is_zero_not_negative) {
  const double dust = 0.3 - 0.2 - 0.1;
  ASSERT_LT(dust, 0);
  const Entries entries = read_entries({{"V", "A", dust, 2.75, 0.16, 0.20}}, {}, {});
  EXPECT_EQ(told(entries), Sentences{no_blade_goes("valves|1", "valve V")});
  EXPECT_EQ(entries.question.valves[0].clearance, Length());
}

TEST(Entries, limits_must_be_there_and_in_order) {
  EXPECT_EQ(
      troubles_of_valve({"2 inlet left", "A", 0.12, 2.75, 0.3, 0.2}),
      Sentences{"valves|1|min|valve 2 inlet left: the minimum clearance, 0.30 mm, is above the "
                "maximum, 0.20 mm|grave"});
  EXPECT_EQ(troubles_of_valve({"Valve 2", "A", blank, blank, 0.3, 0.2}),
            Sentences{"valves|1|min|Valve 2: the minimum clearance, 0.30 mm, is above the maximum, "
                      "0.20 mm|grave"})
      << "before the valve is read, too";
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 0.12, 2.75, blank, 0.0}),
      (Sentences{"valves|1|min|valve V: it is measured, but has no minimum clearance to be judged "
                 "by|grave",
                 "valves|1|max|valve V: it is measured, but has no maximum clearance to be judged "
                 "by|grave"}));
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2.75, 0.0, 0.2}), Sentences()) << "min may be zero";
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.12, 2.75, 0.2, 0.2}), Sentences());
}

TEST(Entries, an_aim_outside_the_limits_is_grave_and_a_zero_is_not_given) {
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 0.12, 2.75, 0.16, 0.20, 0.21}),
      Sentences{"valves|1|aim|valve V: the aim, 0.21 mm, is outside the limits 0.16 mm to 0.20 "
                "mm|grave"});
  const Entries entries = read_entries({{"V", "A", 0.12, 2.75, 0.16, 0.20, 0.0}}, {}, {});
  EXPECT_EQ(told(entries), Sentences());
  EXPECT_EQ(entries.question.valves[0].aim, 0.19_mm);
}

TEST(Entries, locked_is_yes_or_no) {
  const auto locked = [](const Entry& entry) {
    return read_entries({{"V", "A", 0.12, 2.75, 0.16, 0.20, blank, blank, entry}}, {}, {});
  };
  for (const Entry& entry : {Entry("yes"), Entry(" X "), Entry("True"), Entry(1.0)}) {
    EXPECT_EQ(told(locked(entry)), Sentences());
    EXPECT_TRUE(locked(entry).question.valves[0].locked);
  }
  for (const Entry& entry : {Entry("No"), Entry(" "), Entry("FALSE"), Entry(0.0), Entry()}) {
    EXPECT_EQ(told(locked(entry)), Sentences());
    EXPECT_FALSE(locked(entry).question.valves[0].locked);
  }
  for (const Entry& entry : {Entry("perhaps"), Entry(2.0)}) {
    EXPECT_EQ(told(locked(entry)), Sentences{"valves|1|locked|valve V: \"" + word_in(entry) +
                                             "\" is neither yes nor no: it counts as yes|note"});
    EXPECT_TRUE(locked(entry).question.valves[0].locked) << "no shim is changed by mistake";
  }
}

TEST(Entries, nearest_is_yes_or_no) {
  const auto nearest = [](const Entry& entry) {
    return read_entries({{"V", "A", 0.12, 2.75, 0.16, 0.20, blank, blank, blank, entry}}, {}, {});
  };
  EXPECT_EQ(told(nearest("x")), Sentences());
  EXPECT_TRUE(nearest("x").question.valves[0].nearest);
  EXPECT_FALSE(nearest("x").question.valves[0].locked);
  EXPECT_FALSE(nearest(blank).question.valves[0].nearest);
  EXPECT_FALSE(nearest(0.0).question.valves[0].nearest);
  EXPECT_EQ(
      told(nearest("far")),
      Sentences{"valves|1|nearest|valve V: \"far\" is neither yes nor no: it counts as no|note"});
  EXPECT_FALSE(nearest("far").question.valves[0].nearest);
}

TEST(Entries, each_valve_has_a_name_of_its_own) {
  EXPECT_EQ(
      told(read_entries({valves_header, sound_valve("In 1"), sound_valve(" in 1 ")}, {}, {})),
      Sentences{"valves|3|name|valve in 1: the name stands in row 2 too: give each valve a name "
                "of its own|grave"});
  EXPECT_EQ(troubles_of_valve({blank, "A", 0.12, 2.75, 0.16, 0.20}),
            Sentences{"valves|1|name|the valve has no name: give it one of its own|grave"});
}

TEST(Entries, a_kind_is_spare_or_sale) {
  EXPECT_EQ(troubles_of_shim({"used", "A", 2.70}),
            Sentences{"shims|1|kind|the row is left out: \"used\" is neither spare nor sale|note"});
  EXPECT_EQ(
      troubles_of_shim({"", "A", 2.70}),
      Sentences{"shims|1|kind|the row is left out: the kind is missing: enter spare or sale|note"});
  EXPECT_EQ(troubles_of_shim({" SPARE ", "a", 2.70, 0.0}), Sentences());
}

TEST(Entries, a_shim_listed_twice_is_told) {
  const EntryTable shims{shims_header,
                         {"spare", "A", 2.70, 1.0, blank},
                         {"sale", "A", 2.70, blank, blank},
                         {"Spare", " a", 2.70, 2.0, blank},
                         {"sale", "A", 2.7000001, blank, blank},
                         {"sale", "A", 2.71, blank, blank}};
  EXPECT_EQ(
      told(read_entries({sound_valve("V")}, shims, {})),
      (Sentences{"shims|4|size|spare 2.70 mm: it stands in row 2 too: counted as one more|note",
                 "shims|5|size|sale 2.70 mm: it is on sale in row 3 already|note"}))
      << "2.7000001 is 2.70 to the nanometre";
}

// Say new at the dealer's, and one used shim for less.
TEST(Entries, a_size_may_be_on_sale_twice_at_two_prices_or_in_two_numbers) {
  const EntryTable shims{shims_header,
                         {"sale", "A", 2.70, blank, 6.90},
                         {"sale", "A", 2.70, 1.0, 4.50},
                         {"sale", "A", 2.70, 2.0, 6.90}};
  const Entries entries = read_entries({sound_valve("V")}, shims, {});
  EXPECT_EQ(told(entries), Sentences());
  EXPECT_EQ(entries.question.stock.size(), 3);
}

TEST(Entries, a_series_that_no_valve_takes_is_passed_over_and_those_there_are_named) {
  EXPECT_EQ(
      troubles_of_shim({"spare", "B", 2.70}),
      Sentences{"shims|1|series|spare 2.70 mm: no valve takes series \"B\", so it is passed over: "
                "the valves have \"A\"|note"});
  EXPECT_EQ(troubles_of_shim({"spare", blank, 2.70}),
            Sentences{"shims|1|series|spare 2.70 mm: no series is given, so it is passed over: the "
                      "valves have \"A\"|note"});
  const TypedRow no_series{"W", blank, 0.12, 2.75, 0.16, 0.20};
  EXPECT_EQ(
      told(read_entries({sound_valve("V"), no_series}, {{"sale", 9.5, 2.70}}, {})),
      Sentences{"shims|1|series|sale 2.70 mm: no valve takes series \"9.5\", so it is passed over: "
                "the valves have no series and \"A\"|note"});
  EXPECT_EQ(told(read_entries({no_series}, {{"sale", "", 2.70}}, {})), Sentences());
  EntryTable seven;
  for (const std::string series : {"A", "B", "C", "D", "E", "F", "G"})
    seven.push_back({"V" + series, series, 0.12, 2.75, 0.16, 0.20});
  EXPECT_EQ(
      told(read_entries(seven, {{"sale", "H", 2.70}}, {})),
      Sentences{"shims|1|series|sale 2.70 mm: no valve takes series \"H\", so it is passed over: "
                "the valves have \"A\", \"B\", \"C\", \"D\", \"E\", \"F\" and others|note"});
  seven.pop_back();
  EXPECT_TRUE(told(read_entries(seven, {{"sale", "H", 2.70}}, {}))
                  .front()
                  .ends_with("\"E\" and \"F\"|note"));
  EXPECT_EQ(told(read_entries({}, {{"sale", "B", 2.70}}, {})), Sentences())
      << "no valve to tell by";
}

// A drawer for two engines.
TEST(Entries, shims_of_another_series_are_told_once_for_each_series_and_the_plan_stands) {
  const Entries entries = read_entries({sound_valve("V")},
                                       {shims_header,
                                        {"spare", "B", 2.70, blank, blank},
                                        {"spare", "A", 2.70, blank, blank},
                                        {"sale", "b", 2.75, 1.5, -4.0},
                                        {"spare", blank, 2.65, blank, blank},
                                        {"spare", "B", 2.70, blank, blank},
                                        {"spare", blank, 2.60, blank, blank}},
                                       {});
  EXPECT_EQ(
      told(entries),
      (Sentences{"shims|2|series|spare 2.70 mm: no valve takes series \"B\", so it is passed over "
                 "with 2 more: the valves have \"A\"|note",
                 "shims|5|series|spare 2.65 mm: no series is given, so it is passed over with 1 "
                 "more: the valves have \"A\"|note"}));
  const PlanQuestion& question = sound_question(entries);
  ASSERT_EQ(question.stock.size(), 1U);
  EXPECT_EQ(best_plan(question).lines[0].action, Action::spare);
}

TEST(Entries, a_shim_that_cannot_be_is_left_out_and_the_plan_stands) {
  const TypedRow bad[] = {{"spare", "A", -2.70, blank, blank}, {"spare", "A", 270.0, blank, blank},
                          {"spare", "A", 2.70, 1.5, blank},    {"spare", "A", 2.70, -1.0, blank},
                          {"sale", "A", 2.70, blank, -3.0},    {"used", "A", 2.70, blank, blank},
                          {blank, "A", 2.70, blank, blank}};
  for (const TypedRow& row : bad) {
    const Entries entries =
        read_entries({sound_valve("V")}, {row, {"spare", "A", 2.69, blank, blank}}, {});
    ASSERT_EQ(entries.troubles.size(), 1U);
    EXPECT_TRUE(entries.troubles[0].left_out);
    EXPECT_FALSE(entries.troubles[0].grave);
    ASSERT_EQ(sound_question(entries).stock.size(), 1U) << told(entries.troubles[0]);
    EXPECT_EQ(sound_question(entries).stock[0].size, 2.69_mm);
  }
}

TEST(Entries, a_price_of_a_spare_that_cannot_be_is_told_and_no_matter) {
  const Entries entries = read_entries({sound_valve("V")}, {{"spare", "A", 2.70, blank, -3.0}}, {});
  EXPECT_EQ(told(entries),
            Sentences{"shims|1|price|spare 2.70 mm: the price, -3, is negative|note"});
  EXPECT_EQ(sound_question(entries).stock.size(), 1U);
}

TEST(Entries, a_table_of_one_valve_named_0_does_not_vanish) {
  const Entries entries = read_entries({{0.0, 0.0, 0.12, 2.75, 0.16, 0.20}}, {}, {});
  ASSERT_EQ(entries.question.valves.size(), 1U);
  EXPECT_EQ(entries.question.valves[0].name, "0");
  EXPECT_EQ(entries.valve_rows.size(), 1U);
}

TEST(Entries, counts_are_whole_and_not_negative) {
  EXPECT_EQ(
      troubles_of_shim({"spare", "A", 2.70, 1.5}),
      Sentences{
          "shims|1|count|spare 2.70 mm is left out: the count, 1.5, is not a whole number|note"});
  EXPECT_EQ(troubles_of_shim({"spare", "A", 2.70, -1.0}),
            Sentences{"shims|1|count|spare 2.70 mm is left out: the count, -1, is negative|note"});
  EXPECT_EQ(troubles_of_shim({"spare", "A", 2.70, 1e300}),
            Sentences{"shims|1|count|spare 2.70 mm is left out: the count, 1e+300, is more than a "
                      "million|note"});
  EXPECT_EQ(
      troubles_of_shim({"spare", "A", 2.70, std::nan("")}),
      Sentences{
          "shims|1|count|spare 2.70 mm is left out: the count is no number that can be|note"});
  EXPECT_EQ(
      troubles_of_shim({"spare", "A", 2.70, "two"}),
      Sentences{
          "shims|1|count|spare 2.70 mm: the count, \"two\", is text where a number is due: it "
          "does not count|note"});
}

TEST(Entries, prices_are_money) {
  EXPECT_EQ(troubles_of_shim({"sale", "A", 2.70, blank, -3.0}),
            Sentences{"shims|1|price|sale 2.70 mm is left out: the price, -3, is negative|note"});
  EXPECT_EQ(
      troubles_of_shim({"sale", "A", 2.70, blank, 1000000.5}),
      Sentences{"shims|1|price|sale 2.70 mm is left out: the price, 1000000.5, is more than a "
                "million|note"});
  EXPECT_EQ(
      troubles_of_shim({"sale", "A", 2.70, blank, std::nan("")}),
      Sentences{"shims|1|price|sale 2.70 mm is left out: the price is no number that can be|note"});
  EXPECT_EQ(troubles_of_shim({"sale", "A", 2.70, blank, blank}), Sentences()) << "no prices at all";
  EXPECT_EQ(troubles_of_shim({"sale", "A", 2.70, blank, 0.0}), Sentences());
  EXPECT_EQ(told(read_entries({sound_valve("V")},
                              {{"sale", "A", 2.70, blank, blank},
                               {"sale", "A", 2.75, blank, 4.0},
                               {"spare", "A", 2.75, blank, blank}},
                              {})),
            Sentences{"shims|1|price|sale 2.70 mm: no price is given: counted as free|note"});
}

TEST(Entries, missing_prices_are_told_in_one_line) {
  EXPECT_EQ(
      told(read_entries({sound_valve("V")},
                        {{"sale", "A", 2.65, blank, blank},
                         {"sale", "A", 2.70, blank, blank},
                         {"sale", "A", 2.75, blank, 4.0},
                         {"sale", "A", 2.80, blank, blank}},
                        {})),
      Sentences{"shims|1|price|sale 2.65 mm: no price is given here and in 2 more: counted as "
                "free|note"});
}

// Common practice, no source: gaps are tenths of a millimetre, shims a few millimetres.
TEST(Entries, an_unlikely_size_is_asked_about_but_stands) {
  EXPECT_EQ(troubles_of_valve({"V", "A", 5.0, 20.0, 0.16, 3.0}), Sentences());
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 6.35, 27.5, 0.16, 0.20}),
      (Sentences{"valves|1|clearance|valve V: the clearance, 6.35 mm, is unlikely: are unit and "
                 "decimal mark right?|note",
                 "valves|1|shim|valve V: the shim, 27.50 mm, is unlikely: are unit and decimal "
                 "mark right?|note"}));
  EXPECT_EQ(
      troubles_of_valve({"V", "A", 5.0, 100.0, 0.16, 0.20}),
      (Sentences{"valves|1|clearance|valve V: the clearance, 5.00 mm, is at least twice the "
                 "largest allowed, 0.20 mm: measure it again|note",
                 "valves|1|shim|valve V: the shim, 100.00 mm, is unlikely: are unit and decimal "
                 "mark right?|note"}));
  const Entries entries = read_entries({{"V", "A", 6.35, 27.5, 0.16, 0.20}}, {}, {});
  EXPECT_EQ(sound_question(entries).valves[0].shim, 27.5_mm);
}

// Common practice, no source: 0.9 typed for 0.09 would put in a shim that holds the valve open.
TEST(Entries, a_clearance_of_twice_the_largest_is_asked_about_but_stands) {
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.459, 2.75, 0.18, 0.23}), Sentences());
  EXPECT_EQ(troubles_of_valve({"1 EX L", "A", 0.90, 2.75, 0.18, 0.23}),
            Sentences{"valves|1|clearance|valve 1 EX L: the clearance, 0.90 mm, is at least twice "
                      "the largest allowed, 0.23 mm: measure it again|note"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.46, blank, 0.18, 0.23}).size(), 1U)
      << "before the shim is read, too";
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.90, blank, blank, blank}), Sentences())
      << "no limits to hold it against";
  const Entries entries = read_entries({{"V", "A", 0.90, 2.75, 0.18, 0.23}}, {}, {});
  EXPECT_EQ(sound_question(entries).valves[0].clearance, 0.9_mm);
}

// Common practice, no source: 0.024 typed for 0.24 would put in a shim far too thin.
TEST(Entries, a_clearance_of_a_fifth_of_the_smallest_is_asked_about_but_stands) {
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.049, 2.75, 0.24, 0.30}), Sentences());
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.048, 2.75, 0.24, 0.30}).size(), 1U);
  EXPECT_EQ(
      troubles_of_valve({"1 EX L", "A", 0.024, 2.75, 0.24, 0.30}),
      Sentences{"valves|1|clearance|valve 1 EX L: the clearance, 0.024 mm, is at most a fifth of "
                "the smallest allowed, 0.24 mm: measure it again|note"});
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.024, blank, 0.24, 0.30}).size(), 1U)
      << "before the shim is read, too";
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.024, blank, blank, blank}), Sentences())
      << "no limits to hold it against";
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.001, 2.75, 0.0, 0.30}), Sentences());
  const Entries entries = read_entries({{"V", "A", 0.024, 2.75, 0.24, 0.30}}, {}, {});
  EXPECT_EQ(sound_question(entries).valves[0].clearance, 0.024_mm);
}

TEST(Entries, a_clearance_of_zero_is_told_once_as_the_most_it_can_be) {
  EXPECT_EQ(told(read_entries(
                {{"V", "A", 0.0, 2.75, 0.16, 0.20}, {"W", "A", 0.0, 2.75, 0.16, 0.20}}, {}, {})),
            Sentences{no_blade_goes("valves|1", "valve V")});
}

TEST(Entries, a_doubt_that_fills_the_limits_is_told_once) {
  EXPECT_EQ(troubles_of_valve({"V", "A", 0.18, 2.75, 0.16, 0.20, blank, 0.02}), Sentences())
      << "one reading, the middle, can still prove it";
  EXPECT_EQ(
      told(read_entries({{"V", "A", 0.18, 2.75, 0.16, 0.20, blank, 0.05},
                         {"W", "A", 0.18, 2.75, 0.16, 0.20, blank, 0.05}},
                        {}, {})),
      Sentences{"valves|1|doubt|valve V: a doubt of 0.05 mm either way is too much for limits only "
                "0.04 mm apart: no reading can prove the clearance good|note"});
}

TEST(Entries, a_spare_costs_nothing_whatever_its_price_says) {
  const Entries entries = read_entries({sound_valve("V")}, {{"spare", "A", 2.70, blank, 4.0}}, {});
  EXPECT_EQ(entries.question.stock[0].price, Money());
}

TEST(Entries, sizes_are_thicknesses) {
  EXPECT_EQ(troubles_of_shim({"spare", "A", -2.70}),
            Sentences{"shims|1|size|the row is left out: the size, -2.7 mm, is negative|note"});
  EXPECT_EQ(
      troubles_of_shim({"spare", "A", 270.0}),
      Sentences{
          "shims|1|size|the row is left out: 270 mm is no shim size. Did you mean 2.70?|note"});
  EXPECT_EQ(troubles_of_shim({"spare", "A", 0.0}),
            Sentences{"shims|1|size|no size is given: the row does not count|note"});
  EXPECT_EQ(troubles_of_shim({"spare", "A", blank, 2.0}),
            Sentences{"shims|1|size|no size is given: the row does not count|note"});
  EXPECT_EQ(troubles_of_shim({"", "", 0.0, blank, ""}), Sentences()) << "a blank row";
}

EntryTable many_sizes(std::size_t count) {
  EntryTable shims{shims_header};
  for (std::size_t i = 0; i < count; ++i)
    shims.push_back({"sale", "A", 1.0 + 0.0005 * static_cast<double>(i), blank, blank});
  return shims;
}

TEST(Entries, twenty_thousand_shims_are_taken_and_one_more_is_not) {
  EXPECT_EQ(told(read_entries({sound_valve("V")}, many_sizes(20'000), {})), Sentences());
  EXPECT_EQ(
      told(read_entries({sound_valve("V")}, many_sizes(20'001), {})),
      Sentences{
          "shims|0||there are more than 20000 rows: leave out sizes that cannot serve|grave"});
  EntryTable padded = many_sizes(3);
  padded.resize(30'000, TypedRow(5));
  EXPECT_EQ(told(read_entries({sound_valve("V")}, padded, {})), Sentences())
      << "blank rows are none";
}

TEST(Entries, a_thousand_valves_are_taken_and_one_more_is_not) {
  EntryTable valves{valves_header};
  for (int i = 1; i <= 1'000; ++i) valves.push_back(sound_valve(std::to_string(i)));
  EXPECT_EQ(told(read_entries(valves, {}, {})), Sentences());
  valves.push_back(TypedRow(6));
  EXPECT_EQ(told(read_entries(valves, {}, {})), Sentences()) << "a blank row is none";
  valves.push_back(sound_valve("one more"));
  valves.push_back(sound_valve("and another"));
  EXPECT_EQ(
      told(read_entries(valves, {}, {})),
      Sentences{"valves|0||there are more than 1000 valves: ask for one engine at a time|grave"});
}

TEST(Entries, a_table_too_narrow_is_told_what_is_due) {
  EXPECT_EQ(
      told(read_entries({{"V", "A", 0.12, 2.75}}, {{"spare", 2.7}}, {{"work"}})),
      (Sentences{"valves|0||the table has 4 columns; at least 6 are due: name, series, clearance, "
                 "shim, min and max|grave",
                 "shims|0||the table has 2 columns; at least 3 are due: kind, series and "
                 "size|grave",
                 "rules|0||the table has 1 column; at least 2 are due: name and value|grave"}));
}

TEST(Entries, columns_beyond_the_last_do_not_count) {
  TypedRow wide = sound_valve("V");
  wide.insert(wide.end(), {blank, blank, blank, blank, "a remark", -7.0});
  EXPECT_EQ(troubles_of_valve(wide), Sentences());
}

TEST(Entries, rules_are_known_by_name) {
  EXPECT_EQ(
      troubles_of_rule({"thrift", "yes"}),
      Sentences{"rules|1|name|rule \"thrift\": it is not known: the rules are touch good, work, "
                "doubt, first and nearest|grave"});
  EXPECT_EQ(
      troubles_of_rule({"", "yes"}),
      Sentences{"rules|1|name|there is a value without a rule: the rules are touch good, work, "
                "doubt, first and nearest|grave"});
  EXPECT_EQ(troubles_of_rule({" Touch Good", 1.0}), Sentences());
  EXPECT_EQ(troubles_of_rule({"nearest", "often"}),
            Sentences{"rules|1|value|rule \"nearest\": \"often\" is neither yes nor no|grave"});
  EXPECT_TRUE(read_entries({}, {}, {{"nearest", "yes"}}).question.rules.nearest);
  EXPECT_FALSE(read_entries({}, {}, {{"nearest", blank}}).question.rules.nearest);
  EXPECT_EQ(troubles_of_rule({"touch good", "often"}),
            Sentences{"rules|1|value|rule \"touch good\": \"often\" is neither yes nor no|grave"});
  EXPECT_EQ(troubles_of_rule({"first", "speed"}),
            Sentences{"rules|1|value|rule \"first\": \"speed\" is neither cost nor aim|grave"});
  EXPECT_EQ(troubles_of_rule({"first", 1.0}),
            Sentences{"rules|1|value|rule \"first\": \"1\" is neither cost nor aim|grave"});
  EXPECT_EQ(troubles_of_rule({"work", -1.0}),
            Sentences{"rules|1|value|rule \"work\": the price of work, -1, is negative|grave"});
  EXPECT_EQ(
      troubles_of_rule({"work", "dear"}),
      Sentences{
          "rules|1|value|rule \"work\": the price of work, \"dear\", is text where a number is "
          "due: it does not count|note"});
  EXPECT_EQ(told(read_entries({}, {}, {{"work", 1.0}, {"work", 2.0}})),
            Sentences{"rules|2|name|rule \"work\": it stands in row 1 too|grave"});
}

TEST(Entries, a_rule_without_a_value_takes_its_default) {
  const Entries entries =
      read_entries({}, {}, {{"touch good", ""}, {"work", blank}, {"doubt", blank}, {"first", " "}});
  EXPECT_EQ(told(entries), Sentences());
  EXPECT_FALSE(entries.question.rules.touch_good);
  EXPECT_EQ(entries.question.rules.work, Money());
  EXPECT_TRUE(entries.question.rules.use_doubt);
  EXPECT_FALSE(entries.question.rules.aim_first);
}

TEST(Entries, troubles_come_in_the_order_of_table_row_and_column) {
  const Entries entries = read_entries(
      {{"V", "A", 0.12, 2.75, 0.3, 0.2, blank, -1.0, "?"}, {"V", "A", -1.0, 2.75, 0.1, 0.2}},
      {{"none", "A", -1.0, -1.0, "?"}, {"spare", "B"}}, {{"work", -1.0}});
  std::vector<std::string> places;
  for (const Trouble& trouble : entries.troubles)
    places.push_back(trouble.table + std::to_string(trouble.row) + trouble.column);
  EXPECT_EQ(places, (Sentences{"valves1min", "valves1doubt", "valves1locked", "valves2name",
                               "valves2clearance", "shims1kind", "shims1size", "shims1count",
                               "shims1price", "shims2series", "rules1value"}));
}

TEST(SoundQuestion, throws_the_first_grave_trouble_with_its_place) {
  const auto refusal = [](const Entries& entries) -> std::string {
    try {
      sound_question(entries);
    } catch (const BadInput& bad) {
      return bad.what();
    }
    return "";
  };
  EXPECT_EQ(
      refusal(read_entries(
          {valves_header, {"V", "A", "abc", 2.75, 0.16, 0.20}, {"W", "A", 0.1, 2.75, 0.16, -0.20}},
          {}, {})),
      "valves, row 3, max: valve W: the maximum clearance, -0.2 mm, is negative");
  EXPECT_EQ(refusal(read_entries({{"W", "A", 0.1, 2.75, 0.16, -0.20}}, {}, {})),
            "valves, row 1, max: valve W: the maximum clearance, -0.2 mm, is negative");
  EXPECT_EQ(refusal(read_entries({}, {}, {{"work"}})),
            "rules: the table has 1 column; at least 2 are due: name and value");
  EXPECT_EQ(refusal(read_entries({valves_header, {"V", "A", "abc", 2.75, 0.16, 0.20}}, {}, {})), "")
      << "a note is not grave";
}

TEST(Entries, a_novel_in_a_cell_is_cut_short_between_characters) {
  std::string novel;
  for (int i = 0; i < 5000; ++i) novel += "\u00e4";
  const Entries entries =
      read_entries({sound_valve("V"), {novel, "A", novel, 2.75, 0.16, 0.20}}, {}, {});
  ASSERT_EQ(entries.troubles.size(), 1U);
  const std::string told = sentence(entries.troubles[0]);
  EXPECT_LT(told.size(), 250U);
  EXPECT_NE(told.find("\u00e4\u2026"), std::string::npos);
  EXPECT_EQ(entries.troubles[0].about.name, novel) << "the valve it is about";
  EXPECT_EQ(entries.question.valves[1].name, novel) << "nothing entered is lost";
}

// What the plan relies on where no grave trouble was found.
void expect_sound(const PlanQuestion& question) {
  std::set<std::string> names;
  std::set<std::string> series;
  for (const Valve& valve : question.valves) {
    EXPECT_TRUE(names.insert(lower_case(valve.name)).second);
    series.insert(valve.series);
    EXPECT_GE(valve.doubt, Length());
    if (valve.shim) {
      EXPECT_GT(*valve.shim, Length());
    }
    if (valve.clearance) {
      EXPECT_GE(*valve.clearance, Length());
    }
    if (!valve.clearance || !valve.shim) continue;
    EXPECT_NO_THROW(check_limits(valve.limits));
    EXPECT_NO_THROW(check_aim(valve.aim, valve.limits));
  }
  for (const Stock& stock : question.stock) {
    EXPECT_GT(stock.size, Length());
    EXPECT_GE(stock.price, Money());
    EXPECT_GE(stock.count.value_or(0), 0);
    EXPECT_TRUE(series.empty() || series.contains(stock.series));
  }
  EXPECT_GE(question.rules.work, Money());
}

class RandomTables {
 public:
  explicit RandomTables(unsigned seed) : random_(seed) {}

  // Mostly of the kind that is due in that column, so that sound tables come about too.
  EntryTable table(const std::vector<std::vector<Entry>>& due, double nonsense) {
    const std::size_t rows = below(7);
    const std::size_t columns = chance(nonsense) ? below(12) : due.size();
    EntryTable table;
    for (std::size_t i = 0; i < rows; ++i) {
      TypedRow row;
      for (std::size_t j = 0; j < columns; ++j)
        row.push_back(j < due.size() && !chance(nonsense) ? one_of(due[j]) : anything());
      table.push_back(std::move(row));
    }
    return table;
  }

 private:
  std::size_t below(std::size_t end) {
    return std::uniform_int_distribution<std::size_t>(0, end - 1)(random_);
  }
  bool chance(double odds) { return std::bernoulli_distribution(odds)(random_); }
  const Entry& one_of(const std::vector<Entry>& entries) { return entries[below(entries.size())]; }

  Entry anything() {
    static const std::vector<Entry> strange{Entry(),
                                            Entry(0.0),
                                            Entry(-0.0),
                                            Entry(-1e-9),
                                            Entry(1e-300),
                                            Entry(1e300),
                                            Entry(-1.0),
                                            Entry(1e18),
                                            Entry(100.0),
                                            Entry(100.1),
                                            Entry(0.5),
                                            Entry(1.0),
                                            Entry(""),
                                            Entry(" "),
                                            Entry("\u00a0"),
                                            Entry("yes"),
                                            Entry("spare"),
                                            Entry("work"),
                                            Entry("-1"),
                                            Entry("0.1"),
                                            Entry("900 mm"),
                                            Entry("\xC3"),
                                            Entry("\xFF\xFE"),
                                            Entry(std::string(3, '\0')),
                                            Entry(std::string(500, '\x80')),
                                            Entry(std::numeric_limits<double>::infinity()),
                                            Entry(-std::numeric_limits<double>::infinity()),
                                            Entry(std::numeric_limits<double>::quiet_NaN())};
    return one_of(strange);
  }

  std::mt19937 random_;
};

TEST(Entries, random_tables_never_throw_and_pass_only_sound_questions) {
  RandomTables random(20240607);
  int sound = 0;
  int refused = 0;
  for (int i = 0; i < 20'000; ++i) {
    const double nonsense = 0.1 * (i % 3);
    const EntryTable valves = random.table({{"1", "2", "3", "4", "5", "6", 7.0, 8.0, ""},
                                            {"A", "a", "B"},
                                            {0.1, 0.2, 0.0, blank, "gap"},
                                            {2.75, 2.8, blank},
                                            {0.1, 0.15, 0.0},
                                            {0.2, 0.25},
                                            {0.17, 0.2, blank},
                                            {0.01, blank, 0.0},
                                            {"yes", "", 0.0},
                                            {"", "yes", 1.0}},
                                           nonsense);
    const EntryTable shims = random.table({{"spare", "sale", "Sale"},
                                           {"A", "B"},
                                           {2.6, 2.65, 2.7, 2.75, 2.8, blank},
                                           {blank, 1.0, 4.0},
                                           {blank, 3.5}},
                                          nonsense);
    const EntryTable rules = random.table(
        {{"touch good", "work", "doubt", "first", "nearest"}, {"", blank, 0.0}}, nonsense);
    Entries entries;
    ASSERT_NO_THROW(entries = read_entries(valves, shims, rules));
    EXPECT_TRUE(entries.valve_rows.empty() || entries.valve_rows.back());
    EXPECT_LE(entries.valve_rows.size(), valves.size());
    try {
      const PlanQuestion& question = sound_question(entries);
      expect_sound(question);
      EXPECT_EQ(best_plan(question).lines.size(), question.valves.size());
      ++sound;
    } catch (const BadInput& bad) {
      EXPECT_NE(std::string(bad.what()), "");
      ++refused;
    }
    if (HasFailure()) FAIL() << "at table " << i;
  }
  EXPECT_GT(sound, 1000);
  EXPECT_GT(refused, 1000);
}

}  // namespace
}  // namespace shimwright
