// SPDX-License-Identifier: MPL-2.0
#include "core/log/read_log.hpp"

#include <gtest/gtest.h>

#include "core/log/day.hpp"

namespace shimwright {
namespace {

const std::vector<std::string> valves{"1 EX L", "1 EX R", "1 IN L"};

// A sound row, of which a test spoils what it is about.
std::vector<Entry> row(double check, double date, double distance, const std::string& valve,
                       Entry gap = 0.20) {
  std::vector<Entry> cells(log_columns);
  const auto put = [&cells](LogColumn column, Entry what) {
    cells[static_cast<std::size_t>(column)] = std::move(what);
  };
  put(LogColumn::check, check);
  put(LogColumn::round, 1.0);
  put(LogColumn::date, date);
  put(LogColumn::distance, distance);
  put(LogColumn::valve, valve);
  put(LogColumn::gap_found, std::move(gap));
  put(LogColumn::shim_found, 2.70);
  put(LogColumn::shim_fitted, 2.65);
  put(LogColumn::gap_left, 0.25);
  return cells;
}

std::vector<Entry> with(std::vector<Entry> cells, LogColumn column, Entry what) {
  cells[static_cast<std::size_t>(column)] = std::move(what);
  return cells;
}

// What is odd, a sentence each.
std::vector<std::string> odd_in(const EntryTable& log) {
  std::vector<std::string> told;
  for (const Told& odd : read_log(log, Unit::mm, valves).odd)
    told.push_back(in_words(odd, Teller()));
  return told;
}

void expect_odd(const EntryTable& log, const std::string& words) {
  EXPECT_EQ(odd_in(log), std::vector{words});
}

TEST(ReadLog, takes_sound_rows_without_a_word) {
  const ReadLog read = read_log(
      {row(1, 44000, 12000, "1 EX L"), {}, row(2, 44400, 24000, "1 ex l")}, Unit::mm, valves);
  EXPECT_TRUE(read.odd.empty());
  ASSERT_EQ(read.rows.size(), 2U);
  EXPECT_EQ(read.rows[1].number, 3);
  EXPECT_EQ(read.rows[1].row.valve, "1 EX L");
  EXPECT_EQ(read.rows[1].row.check, 2);
  EXPECT_EQ(read.rows[1].row.distance, 24000);
  EXPECT_EQ(read.rows[1].row.gap_found, 0.20_mm);
  EXPECT_EQ(read.rows[1].row.shim_fitted, 2.65_mm);
}

TEST(ReadLog, takes_numbers_and_days_that_stand_as_text) {
  auto cells = with(row(1, 0, 0, "1 EX L", " 0,18 "), LogColumn::distance, "12 500,5");
  cells = with(with(cells, LogColumn::date, "2021-05-04"), LogColumn::shim_found, "2.70 mm");
  const ReadLog read = read_log({cells}, Unit::mm, valves);
  EXPECT_TRUE(read.odd.empty());
  EXPECT_EQ(read.rows[0].row.gap_found, 0.18_mm);
  EXPECT_EQ(read.rows[0].row.distance, 12500.5);
  EXPECT_EQ(day_in_figures(read.rows[0].row.date.value()), "2021-05-04");
}

TEST(ReadLog, reads_bare_numbers_in_the_books_unit) {
  const ReadLog read = read_log({row(1, 44000, 0, "1 EX L", 0.008)}, Unit::inch, valves);
  EXPECT_EQ(read.rows[0].row.gap_found, Length::of(0.2032));
}

TEST(ReadLog, tells_of_a_valve_that_the_engine_has_not) {
  expect_odd({row(1, 44000, 0, "5 EX"), row(1, 44000, 0, "1 EX L"), row(2, 44400, 9000, "5 EX")},
             "No valve of this engine is called \"5 EX\" (rows 1, 3 of Log). If it was given "
             "another name, put the present one there; until then those rows count for no valve.");
}

TEST(ReadLog, tells_of_a_row_without_valve_distance_or_date) {
  expect_odd({row(1, 44000, 0, "")}, "Row 1 of Log names no valve and counts for none.");
  expect_odd({with(row(1, 44000, 0, "1 EX L"), LogColumn::distance, {}),
              with(row(1, 44000, 0, "1 EX R"), LogColumn::distance, {}),
              with(row(1, 44000, 0, "1 IN L"), LogColumn::distance, {})},
             "Rows 1\u20133 of Log have no distance and tell nothing of drift.");
  expect_odd({with(row(1, 44000, 0, "1 EX L"), LogColumn::date, {})},
             "Row 1 of Log has no date: it counts by distance all the same.");
}

TEST(ReadLog, tells_of_words_where_a_number_or_a_day_is_due) {
  EXPECT_EQ(odd_in({with(row(1, 44000, 0, "1 EX L"), LogColumn::gap_left, "tight")}),
            std::vector<std::string>{"Log, gap left, row 1: words stand where a number is due, and "
                                     "count as blank."});
  EXPECT_EQ(odd_in({with(row(1, 44000, 0, "1 EX L"), LogColumn::date, "4 May")}).back(),
            "Log, date, row 1: this is no day. Write it as 2021-05-04.");
}

TEST(ReadLog, tells_of_a_gap_and_a_shim_that_cannot_be) {
  for (const double gap : {-0.1, 20.0, 1e300})
    expect_odd({row(1, 44000, 0, "1 EX L", gap)},
               "Log, row 1: a gap below 0 or above 5 mm (0.197 in) cannot be, and counts as "
               "blank.");
  for (const double shim : {-2.7, 270.0, 1e300, 0.0})
    expect_odd({with(row(1, 44000, 0, "1 EX L"), LogColumn::shim_found, shim)},
               "Log, row 1: a shim of 0 or less, or above 20 mm (0.787 in), cannot be, and counts "
               "as blank.");
  const ReadLog read = read_log({row(1, 44000, 0, "1 EX L", 20.0)}, Unit::mm, valves);
  EXPECT_FALSE(read.rows[0].row.gap_found);
  EXPECT_TRUE(read.rows[0].row.gap_left) << "the rest of the row counts";
}

TEST(ReadLog, tells_of_a_distance_that_goes_backwards) {
  const double may = *day_written("2021-05-04");
  expect_odd({row(1, may, 45000, "1 EX L"), row(2, may + 365, 3000, "1 EX L"),
              row(2, may + 365, 3000, "1 EX R")},
             "Log: the distance goes backwards, from 45000 on 2021-05-04 to 3000 on 2022-05-04. If "
             "the instrument was replaced, add to every later distance what the old one had "
             "counted.");
}

TEST(ReadLog, tells_of_two_checks_on_one_day) {
  const double may = *day_written("2021-05-04");
  expect_odd({row(1, may, 45000, "1 EX L"), row(2, may, 45010, "1 EX L")},
             "Log: 2 checks on one day, 2021-05-04. They count each at its own distance; if they "
             "are one check, give them one number.");
  auto second_round = with(row(1, may, 45000, "1 EX L"), LogColumn::round, 2.0);
  EXPECT_TRUE(odd_in({row(1, may, 45000, "1 EX L"), second_round}).empty());
}

TEST(ReadLog, tells_of_a_valve_that_stands_twice_in_a_round) {
  expect_odd({row(1, 44000, 0, "1 EX L"), row(1, 44000, 0, "1 EX R"), row(1, 44000, 0, "1 EX L")},
             "Log: 1 EX L stands more than once in a round (rows 1, 3). What is read twice at one "
             "distance counts as its mean.");
}

TEST(ReadLog, makes_what_it_can_of_anything) {
  EXPECT_TRUE(read_log({}, Unit::mm, valves).rows.empty());
  EXPECT_EQ(read_log({{1.0}, {"x", "y"}}, Unit::mm, valves).rows.size(), 2U);
  EXPECT_EQ(read_log({std::vector<Entry>(40, Entry(-1.0))}, Unit::mm, {}).rows.size(), 1U);
}

}  // namespace
}  // namespace shimwright
