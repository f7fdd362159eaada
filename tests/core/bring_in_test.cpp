// SPDX-License-Identifier: MPL-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/lines.hpp"
#include "core/log/bring_in/preview.hpp"
#include "owner_log.hpp"

namespace shimwright {
namespace {

using Columns = std::vector<std::optional<LogColumn>>;

Columns meanings(const Mapping& mapping) {
  Columns all;
  for (const ColumnMapping& column : mapping.columns) all.push_back(column.what);
  return all;
}

Preview preview_of(const OwnerTable& table, const BringInBook& book = invented_log_book()) {
  return previewed(table, guessed(table, book), book);
}

std::string why(const Reading& reading) {
  return in_words(reading.why, Teller(Language::english, Unit::mm, ".", Terms::book));
}

std::vector<LogRow> taken(const OwnerTable& table, const BringInBook& book = invented_log_book()) {
  const Preview preview = preview_of(table, book);
  return rows_taken(preview, usual_ticks(preview), book);
}

TEST(BringIn, a_table_with_headings_in_any_order_is_understood) {
  const OwnerTable table =
      sheet({{"Remarks", "Gap", "Valve", "Old shim", "Odometer", "When", "New shim"},
             {"", "0,15", "ex1l", 270, "12 500", "4.5.2019", ""},
             {"dull", 0.21, "1 EX R", 2.65, "12 500", day(2019, 5, 4), "2,60"}});
  const BringInBook book = invented_log_book();
  const Mapping mapping = guessed(table, book);
  using enum LogColumn;
  EXPECT_EQ(mapping.heading_rows, 1U);
  EXPECT_EQ(mapping.form, LogForm::row_a_valve);
  EXPECT_EQ(meanings(mapping),
            (Columns{note, gap_found, valve, shim_found, distance, date, shim_fitted}));
  const auto rows = taken(table);
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].valve, "1 EX L");
  EXPECT_EQ(rows[0].gap_found, 0.15_mm);
  EXPECT_EQ(rows[0].shim_found, 2.70_mm) << "270 is a mark";
  EXPECT_EQ(rows[0].shim_fitted, std::nullopt);
  EXPECT_EQ(rows[0].distance, 12500);
  EXPECT_EQ(rows[0].date, day_number(2019, 5, 4));
  EXPECT_EQ(rows[1].shim_fitted, 2.60_mm);
  EXPECT_EQ(rows[1].note, "dull");
  EXPECT_EQ(rows[1].check, 1);
  EXPECT_EQ(rows[1].round, 1);
}

TEST(BringIn, headings_in_other_languages_are_understood) {
  using enum LogColumn;
  const std::initializer_list<std::initializer_list<Typed>> tables[] = {
      {{"Datum", "Kilometerstand", "Ventil", "Spiel", "Pl\u00e4ttchen", "Neues Pl\u00e4ttchen",
        "Bemerkungen"},
       {"4.5.2019", "12 500", "1 EX L", 0.15, 2.70, 2.65, "Nocken matt"}},
      {{"Tag", "Betriebsstunden", "Zylinder", "Ventilspiel in mm", "Shim alt", "Shim neu",
        "Bemerkung"},
       {"4.5.2019", 12500, "1 EX L", 0.15, 2.70, 2.65, "x"}},
      {{"Jour", "Kilom\u00e9trage", "Soupape", "Jeu", "Pastille", "Nouvelle pastille", "Remarques"},
       {"04/05/2019", "12 500", "1 EX L", 0.15, 2.70, 2.65, "x"}},
      {{"Fecha", "Kil\u00f3metros", "V\u00e1lvula", "Holgura", "Pastilla", "Pastilla nueva",
        "Observaciones"},
       {"04/05/2019", "12 500", "1 EX L", 0.15, 2.70, 2.65, "x"}},
      {{"DATA", "Chilometri", "Valvola", "Gioco", "Spessore", "Spessore nuovo", "Note"},
       {"04/05/2019", "12 500", "1 EX L", 0.15, 2.70, 2.65, "x"}},
  };
  for (const auto& rows : tables) {
    const OwnerTable table = sheet(rows);
    EXPECT_EQ(meanings(guessed(table, invented_log_book())),
              (Columns{date, distance, valve, gap_found, shim_found, shim_fitted, note}))
        << word_in(table.at(0, 0).value);
    if (word_in(table.at(0, 1).value) == "Betriebsstunden") continue;  // the book counts km
    const auto read = taken(table);
    ASSERT_EQ(read.size(), 1U) << word_in(table.at(0, 0).value);
    EXPECT_EQ(read[0].gap_found, 0.15_mm);
    EXPECT_EQ(read[0].distance, 12500);
  }
}

// Engine may have had other limits then, and another doubt of a reading.
TEST(BringIn, the_state_of_a_row_is_the_owners_own_word_and_never_judged_by_the_limits_of_now) {
  BringInBook book = invented_log_book();
  book.limits.assign(book.valves.size(), Limits{0.10_mm, 0.20_mm});
  const auto without =
      taken(sheet({{"Date", "Valve", "Gap"}, {"2019-05-04", "1 EX L", 0.08}}), book);
  ASSERT_EQ(without.size(), 1U);
  EXPECT_EQ(without[0].state, "");
  const auto with =
      taken(sheet({{"Date", "Valve", "Gap", "State"}, {"2019-05-04", "1 EX L", 0.08, "ok"}}), book);
  ASSERT_EQ(with.size(), 1U);
  EXPECT_EQ(with[0].state, "ok");
}

TEST(BringIn, in_is_a_unit_only_where_no_other_is_named) {
  const auto unit = [](const char* heading) {
    return guessed(sheet({{"Date", "Valve", heading}, {"2019-05-04", "1 EX L", 0.15}}),
                   invented_log_book())
        .columns[2]
        .unit;
  };
  EXPECT_EQ(unit("Gap in mm"), ColumnUnit::mm);
  EXPECT_EQ(unit("Gap in thou"), ColumnUnit::thou);
  EXPECT_EQ(unit("Gap (in)"), ColumnUnit::inch);
  EXPECT_EQ(unit("Gap mm in"), ColumnUnit::mm);
}

TEST(BringIn, a_table_without_headings_is_told_apart_by_what_stands_in_it) {
  const OwnerTable table = sheet({{day(2019, 5, 4), 12500, "1 EX L", 0.15, 2.70, 0.20, 2.65, ""},
                                  {day(2019, 5, 4), 12500, "1 EX R", 0.21, 2.65, "", "", "dull"}});
  const Mapping mapping = guessed(table, invented_log_book());
  using enum LogColumn;
  EXPECT_EQ(mapping.heading_rows, 0U);
  EXPECT_EQ(meanings(mapping),
            (Columns{date, distance, valve, gap_found, shim_found, gap_left, shim_fitted, note}));
  EXPECT_EQ(taken(table).size(), 2U);
}

TEST(BringIn, one_row_a_check_gives_a_row_a_valve) {
  const OwnerTable table =
      sheet({{"Date", "km", "1 EX L gap", "1 EX L shim", "1ExR gap", "1ExR shim", "Note"},
             {"2019-05-04", 12500, 0.15, 2.7, 0.21, 2.65, "cold"},
             {"2020-06-01", 24500, 0.14, 2.7, "", "", ""}});
  const Mapping mapping = guessed(table, invented_log_book());
  EXPECT_EQ(mapping.form, LogForm::row_a_check);
  EXPECT_EQ(mapping.columns[4].valve, 1U);
  const auto rows = taken(table);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[1].valve, "1 EX R");
  EXPECT_EQ(rows[1].shim_found, 2.65_mm);
  EXPECT_EQ(rows[1].note, "cold");
  EXPECT_EQ(rows[1].check, 1);
  EXPECT_EQ(rows[2].valve, "1 EX L");
  EXPECT_EQ(rows[2].check, 2);
}

TEST(BringIn, a_valve_may_stand_over_two_columns_or_a_kind_over_many) {
  const BringInBook book = invented_log_book();
  const OwnerTable by_valve = sheet({{"", "", "1 EX L", "", "1 EX R", "", ""},
                                     {"Date", "km", "gap", "shim", "gap", "shim", "Note"},
                                     {"2019-05-04", 12500, 0.15, 2.7, 0.21, 2.65, "cold"}});
  const OwnerTable by_kind = sheet({{"", "", "Gap", "", "Shim", "", ""},
                                    {"Date", "km", "1 EX L", "1 EX R", "1 EX L", "1 EX R", "Note"},
                                    {"2019-05-04", 12500, 0.15, 0.21, 2.7, 2.65, "cold"}});
  for (const OwnerTable& table : {by_valve, by_kind}) {
    const Mapping mapping = guessed(table, book);
    EXPECT_EQ(mapping.heading_rows, 2U);
    EXPECT_EQ(mapping.form, LogForm::row_a_check);
    const auto rows = taken(table);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].gap_found, 0.21_mm);
    EXPECT_EQ(rows[1].shim_found, 2.65_mm);
    EXPECT_EQ(rows[0].note, "cold");
  }
}

TEST(BringIn, columns_named_by_valve_alone_are_gaps_or_shims_by_their_size) {
  const OwnerTable table =
      sheet({{"Date", "1 EX L", "1 EX L", "1 EX R"}, {"2019-05-04", 0.15, 2.7, 0.2}});
  const Mapping mapping = guessed(table, invented_log_book());
  EXPECT_EQ(mapping.columns[1].what, LogColumn::gap_found);
  EXPECT_EQ(mapping.columns[2].what, LogColumn::shim_found);
  EXPECT_EQ(mapping.columns[3].what, LogColumn::gap_found);
}

TEST(BringIn, units_follow_the_heading_else_the_size) {
  struct Case {
    const char* heading;
    double number;
    ColumnUnit unit;
    Length length;
  };
  for (const Case& one :
       {Case{"Shim", 2.7, ColumnUnit::mm, 2.7_mm}, Case{"Shim", 0.106, ColumnUnit::inch, 2.6924_mm},
        Case{"Shim", 275, ColumnUnit::mark, 2.75_mm},
        Case{"Shim", 2755, ColumnUnit::mark, 2.755_mm},
        Case{"Shim thou", 106, ColumnUnit::thou, 2.6924_mm},
        Case{"Gap", 0.15, ColumnUnit::mm, 0.15_mm}, Case{"Gap", 0.006, ColumnUnit::inch, 0.1524_mm},
        Case{"Gap", 15, ColumnUnit::hundredths, 0.15_mm},
        Case{"Gap (thou)", 6, ColumnUnit::thou, 0.1524_mm}}) {
    const OwnerTable table =
        sheet({{"Date", "Valve", one.heading}, {"2019-05-04", "1 EX L", one.number}});
    EXPECT_EQ(guessed(table, invented_log_book()).columns[2].unit, one.unit) << one.number;
    const auto rows = taken(table);
    ASSERT_EQ(rows.size(), 1U) << one.number;
    EXPECT_EQ(is_gap(*guessed(table, invented_log_book()).columns[2].what) ? rows[0].gap_found
                                                                           : rows[0].shim_found,
              one.length)
        << one.number;
  }
  BringInBook inches = invented_log_book();
  inches.unit = Unit::inch;
  const OwnerTable table =
      sheet({{"Date", "Valve", "Gap", "Shim"}, {"2019-05-04", "1 EX L", 6, 106}});
  EXPECT_EQ(guessed(table, inches).columns[2].unit, ColumnUnit::thou);
  EXPECT_EQ(guessed(table, inches).columns[3].unit, ColumnUnit::thou);
}

// One column's numbers alone might be thousandths of an inch.
TEST(BringIn, columns_of_one_kind_are_read_alike) {
  BringInBook inches = invented_log_book();
  inches.unit = Unit::inch;
  const OwnerTable table =
      sheet({{"Date", "1 EX L shim", "1 EX R shim", "1 IN L shim"}, {"2019-05-04", 245, 155, 165}});
  const Mapping mapping = guessed(table, inches);
  for (const std::size_t column : {1U, 2U, 3U})
    EXPECT_EQ(mapping.columns[column].unit, ColumnUnit::mark) << column;
  const OwnerTable marked = sheet({{"Date", "Valve", "Shim"}, {"2019-05-04", "1 EX L", 245}});
  EXPECT_EQ(guessed(marked, inches).columns[2].unit, ColumnUnit::mark) << "0.245 inch is no shim";
  const OwnerTable both =
      sheet({{"Date", "Valve", "Shim found", "Shim fitted"}, {"2019-05-04", "1 EX L", 2.70, 265}});
  EXPECT_EQ(guessed(both, invented_log_book()).columns[2].unit, ColumnUnit::mm);
  EXPECT_EQ(guessed(both, invented_log_book()).columns[3].unit, ColumnUnit::mark);
}

TEST(BringIn, a_unit_in_the_cell_counts_before_that_of_the_column) {
  const auto rows = taken(sheet({{"Date", "Valve", "Gap", "Odometer"},
                                 {"2019-05-04", "1 EX L", "0.006 in", "7 800 mi"},
                                 {"2019-05-04", "1 EX R", 0.15, 12500}}));
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[1].gap_found, 0.1524_mm);
  EXPECT_DOUBLE_EQ(*rows[1].distance, 7800 * 1.609344);
}

struct Bad {
  OwnerTable table;
  const char* why;
};

TEST(BringIn, a_row_that_makes_no_sense_says_why) {
  const auto with = [](Typed date, Typed valve, Typed gap, Typed shim, Typed distance) {
    return sheet({{"Date", "Valve", "Gap (mm)", "Shim (mm)", "Distance"},
                  {date, valve, gap, shim, distance}});
  };
  const Typed d("2019-05-04");
  const Typed v("1 EX L");
  for (const Bad& one : {
           Bad{with(d, "", 0.15, 2.7, 1), "no valve is named"},
           Bad{with(d, "5 EX L", 0.15, 2.7, 1), "the engine has no valve \"5 EX L\""},
           Bad{with(d, "1 EX", 0.15, 2.7, 1), "\"1 EX\" may be 1 EX L and 1 EX R"},
           Bad{with("", v, 0.15, 2.7, ""), "neither date nor distance"},
           Bad{with("spring", v, 0.15, 2.7, 1), "\"spring\" is no date"},
           Bad{with(2019, v, 0.15, 2.7, 1), "\"2019\" is no date"},
           Bad{with("05/13/2019", v, 0.15, 2.7, 1), ""},
           Bad{with(d, v, "ok", 2.7, 1), "gap found: \"ok\" is no size"},
           Bad{with(d, v, 15, 2.7, 1), "gap found: 15 cannot be, in this unit"},
           Bad{with(d, v, -0.1, 2.7, 1), "gap found: -0.1 cannot be, in this unit"},
           Bad{with(d, v, 0.15, 27, 1), "shim found: 27 cannot be, in this unit"},
           Bad{with(d, v, 0.15, "X7", 1), "shim found: \"X7\" is no size"},
           Bad{with(d, v, day(2015, 2, 1), 2.7, 1), "gap found: this is a date, 2015-02-01"},
           Bad{with(d, v, "#error", 2.7, 1), "gap found: its formula has failed"},
           Bad{with(d, v, "", "-", 1), "neither gap nor shim"},
           Bad{with(d, v, 0.15, 2.7, "310 h"), "hours cannot be turned into km"},
           Bad{with(d, v, 0.15, 2.7, "far"), "\"far\" is no distance"},
           Bad{with(d, v, 0.15, 2.7, -5), "\"-5\" is no distance"},
           Bad{with(d, "Valve", "Gap (mm)", "Shim (mm)", "Distance"), "no valve"},
       }) {
    const Preview preview = preview_of(one.table);
    ASSERT_EQ(preview.readings.size(), 1U) << one.why;
    if (std::string(one.why) == "no valve") continue;
    EXPECT_EQ(why(preview.readings[0]), one.why);
    EXPECT_EQ(preview.readings[0].can_be_taken(), *one.why == '\0') << one.why;
    EXPECT_EQ(preview.readings[0].source_row, 2);
  }
}

TEST(BringIn, a_heading_in_the_midst_a_sum_and_blank_rows_are_no_readings) {
  const Preview preview = preview_of(sheet({{"Date", "Valve", "Gap"},
                                            {"2019-05-04", "1 EX L", 0.15},
                                            {"", "", ""},
                                            {"Date", "Valve", "Gap"},
                                            {"2020-05-04", "1 EX L", 0.14},
                                            {"Average", "", 0.145}}));
  ASSERT_EQ(preview.readings.size(), 4U);
  EXPECT_EQ(preview.readings[0].standing, Standing::sound);
  EXPECT_EQ(why(preview.readings[1]), "the heading again");
  EXPECT_EQ(preview.readings[1].source_row, 4);
  EXPECT_EQ(preview.readings[2].standing, Standing::sound);
  EXPECT_EQ(why(preview.readings[3]), "no valve is named \"Average\" is no date");
}

TEST(BringIn, a_date_that_stands_beside_the_first_valve_only_holds_for_those_below) {
  const Preview preview = preview_of(sheet({{"Date", "km", "Valve", "Gap"},
                                            {"2019-05-04", 12500, "1 EX L", 0.15},
                                            {"", "", "1 EX R", 0.16},
                                            {"2020-05-04", "", "1 EX L", 0.14},
                                            {"", "", "1 EX R", 0.15},
                                            {"", "", "1 EX R", 0.13}}));
  ASSERT_EQ(preview.readings.size(), 5U);
  EXPECT_EQ(preview.readings[1].row.date, day_number(2019, 5, 4));
  EXPECT_EQ(preview.readings[1].row.distance, 12500);
  EXPECT_EQ(preview.readings[3].row.date, day_number(2020, 5, 4));
  EXPECT_EQ(preview.readings[3].row.distance, std::nullopt) << "not that of another check";
  EXPECT_EQ(why(preview.readings[4]), "neither date nor distance")
      << "the same valve again is another check";
}

TEST(BringIn, below_a_date_that_cannot_be_read_nothing_is_carried_on) {
  const Preview preview = preview_of(sheet({{"Date", "Valve", "Gap"},
                                            {"2019-05-04", "1 EX L", 0.15},
                                            {"spring", "1 EX L", 0.14},
                                            {"", "1 EX R", 0.15}}));
  ASSERT_EQ(preview.readings.size(), 3U);
  EXPECT_EQ(why(preview.readings[1]), "\"spring\" is no date");
  EXPECT_EQ(why(preview.readings[2]), "neither date nor distance") << "not of the check of 2019";
}

TEST(BringIn, the_order_of_day_and_month_can_be_changed) {
  const OwnerTable table = sheet(
      {{"Date", "Valve", "Gap"}, {"04/05/2019", "1 EX L", 0.15}, {"04/13/2019", "1 EX R", 0.15}});
  const BringInBook book = invented_log_book();
  Mapping mapping = guessed(table, book);
  EXPECT_EQ(mapping.order, DateOrder::month_first);
  EXPECT_FALSE(mapping.order_asked);
  EXPECT_EQ(previewed(table, mapping, book).readings[0].row.date, day_number(2019, 4, 5));
  mapping.order = DateOrder::day_first;
  const Preview changed = previewed(table, mapping, book);
  EXPECT_EQ(changed.readings[0].row.date, day_number(2019, 5, 4));
  EXPECT_EQ(why(changed.readings[1]), "\"04/13/2019\" is no date with the day first");
}

TEST(BringIn, what_the_log_has_is_told_and_left_out_and_can_be_taken) {
  BringInBook book = invented_log_book();
  book.log = invented_log();
  const OwnerTable table = sheet({{"Date", "Valve", "Gap"},
                                  {shown({book.log[0].date.value(), true}), "1 ex l", 0.15},
                                  {"2021-01-01", "1 EX L", 0.15},
                                  {"2021-01-01", "1 EX L", 0.17}});
  const Preview preview = preview_of(table, book);
  EXPECT_EQ(preview.readings[0].standing, Standing::in_log);
  EXPECT_EQ(preview.readings[1].standing, Standing::sound);
  EXPECT_EQ(preview.readings[2].standing, Standing::twice);
  EXPECT_EQ(why(preview.readings[2]), "the same valve and date as row 3");
  EXPECT_EQ(usual_ticks(preview), (std::vector{false, true, false}));
  const auto rows = rows_taken(preview, {true, true, true}, book);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].check, 1) << "of the check that the log has at this date";
  EXPECT_EQ(rows[1].check, 5) << "after the largest";
  EXPECT_EQ(rows[2].check, 5);
}

BringInBook book_with_limits() {
  BringInBook book = invented_log_book();
  book.limits.assign(book.valves.size(), Limits{0.10_mm, 0.20_mm});
  return book;
}

TEST(BringIn, a_gap_ten_times_too_large_gets_no_tick_and_can_be_taken_all_the_same) {
  const BringInBook book = book_with_limits();
  const OwnerTable table = sheet({{"Date", "Valve", "Gap", "Shim"},
                                  {"2021-01-01", "1 EX L", 0.15, 2.70},
                                  {"2021-01-01", "2 IN R", 2.4, 2.70},
                                  {"2021-01-01", "3 IN R", 0.25, 2.70}});
  const Preview preview = preview_of(table, book);
  EXPECT_EQ(preview.readings[1].standing, Standing::unlikely);
  EXPECT_EQ(why(preview.readings[1]), "gap found: ten times too much? The limit is 0.20 mm");
  EXPECT_EQ(usual_ticks(preview), (std::vector{true, false, true}));
  const auto rows = rows_taken(preview, {true, true, true}, book);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[1].gap_found, 2.40_mm) << "as the owner has it";
}

TEST(BringIn, a_gap_ten_times_too_small_or_left_so_gets_no_tick) {
  const OwnerTable table =
      sheet({{"Date", "Valve", "Gap found mm", "Shim", "New shim", "Gap left mm"},
             {"2021-01-01", "1 EX L", 0.015, 2.70, 2.70, 0.15},
             {"2021-01-01", "1 EX R", 0.15, 2.70, 2.70, 1.5},
             {"2021-01-01", "2 EX L", 0, 2.70, 2.70, 0.15}});
  const Preview preview = preview_of(table, book_with_limits());
  EXPECT_EQ(usual_ticks(preview), (std::vector{false, false, true}));
  EXPECT_EQ(why(preview.readings[0]), "gap found: ten times too little? The limit is 0.10 mm");
  EXPECT_EQ(why(preview.readings[1]), "gap left: ten times too much? The limit is 0.20 mm");
}

TEST(BringIn, gaps_are_not_doubted_where_the_limits_are_not_known) {
  const OwnerTable table = sheet({{"Date", "Valve", "Gap", "Shim"},
                                  {"2021-01-01", "1 EX L", 0.15, 2.70},
                                  {"2021-01-01", "2 IN R", 2.4, 2.70}});
  EXPECT_EQ(usual_ticks(preview_of(table)), (std::vector{true, true}));
}

TEST(BringIn, checks_are_numbered_by_date_and_the_owners_own_numbers_are_kept_where_they_can) {
  const BringInBook book = invented_log_book();
  const auto numbers = [](const std::vector<LogRow>& rows) {
    std::vector<std::int64_t> all;
    for (const LogRow& row : rows) all.push_back(row.check);
    return all;
  };
  using Numbers = std::vector<std::int64_t>;
  EXPECT_EQ(numbers(taken(sheet({{"Date", "Valve", "Gap"},
                                 {"2020-01-01", "1 EX L", 0.15},
                                 {"2019-01-01", "1 EX L", 0.15},
                                 {"2020-01-01", "1 EX R", 0.15}}))),
            (Numbers{1, 2, 2}))
      << "in the order of the checks";
  const OwnerTable own = sheet({{"Check", "Date", "Valve", "Gap"},
                                {7, "2019-01-01", "1 EX L", 0.15},
                                {7, "2019-01-01", "1 EX R", 0.15},
                                {9, "2020-01-01", "1 EX L", 0.15},
                                {"", "2021-01-01", "1 EX L", 0.15}});
  EXPECT_TRUE(preview_of(own).own_numbers);
  EXPECT_EQ(numbers(taken(own)), (Numbers{7, 7, 9, 10}));
  const OwnerTable count = sheet({{"No", "Date", "Valve", "Gap"},
                                  {1, "2019-01-01", "1 EX L", 0.15},
                                  {2, "2019-01-01", "1 EX R", 0.15},
                                  {3, "2020-01-01", "1 EX L", 0.15}});
  EXPECT_FALSE(preview_of(count).own_numbers) << "a mere count of the rows";
  EXPECT_EQ(numbers(taken(count)), (Numbers{1, 1, 2}));
  BringInBook full = invented_log_book();
  full.log = invented_log();
  const OwnerTable clash =
      sheet({{"Check", "Date", "Valve", "Gap"}, {3, "2001-01-01", "1 EX L", 0.15}});
  EXPECT_FALSE(preview_of(clash, full).own_numbers);
  EXPECT_EQ(numbers(taken(clash, full)), (Numbers{5}));
}

TEST(BringIn, parts_that_do_not_matter_are_left_out_and_told) {
  const Preview preview = preview_of(sheet({{"Date", "Valve", "Gap", "Temp", "Check"},
                                            {"2019-05-04", "1 EX L", 0.15, "cold", "first"},
                                            {"2019-05-04", "1 EX R", 0.15, "68 \u00b0F", ""}}));
  ASSERT_EQ(preview.readings.size(), 2U);
  EXPECT_EQ(preview.readings[0].standing, Standing::sound);
  EXPECT_EQ(preview.readings[0].notes.size(), 2U);
  EXPECT_EQ(in_words(preview.readings[0].notes, Teller()),
            "temperature \"cold\" is left out check \"first\" is left out");
  EXPECT_NEAR(*preview.readings[1].row.temperature, 20, 1e-9);
}

TEST(BringIn, a_column_and_a_row_have_a_line_each) {
  const OwnerTable table = sheet({{"Date", "Valve", "Gap"},
                                  {"2019-05-04", "1 EX L", "0,15"},
                                  {"2020-05-04", "no such", 0.14}});
  const BringInBook book = invented_log_book();
  const Teller teller(Language::english, Unit::mm, ".", Terms::book);
  const Mapping mapping = guessed(table, book);
  const Preview preview = previewed(table, mapping, book);
  EXPECT_EQ(column_line(table, mapping, 2, book, teller),
            "C    Gap                   0,15  0.14                          gap found, mm");
  EXPECT_EQ(reading_line(preview.readings[0], true, teller),
            "\u2611 row 2        2019-05-04  \u2013         1 EX L  0.150        \u2013            "
            "\u2013            \u2013            ");
  EXPECT_EQ(reading_line(preview.readings[1], false, teller),
            "\u2715 row 3        the engine has no valve \"no such\"");
  EXPECT_EQ(outcome_in_words(preview, usual_ticks(preview), mapping, book, teller),
            "1 row goes into Log, of 1 check. 1 makes no sense and cannot be taken.");
}

}  // namespace
}  // namespace shimwright
