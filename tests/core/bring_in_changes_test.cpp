// SPDX-License-Identifier: MPL-2.0
//
// What an owner changes between the first guess and the rows that are taken.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/log/bring_in/bring_in.hpp"
#include "owner_log.hpp"

namespace shimwright {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

BringIn brought(const OwnerTable& table, BringInBook book = invented_log_book()) {
  return {table, std::move(book), Teller(Language::english, Unit::mm, ".", Terms::book)};
}

BringIn three_rows() {
  return brought(sheet({{"Date", "Valve", "Gap", "Fuel"},
                        {"2019-05-04", "1 EX L", 0.15, 95},
                        {"2019-05-04", "1 EX R", 0.16, 95},
                        {"2019-05-04", "none", 0.16, 95}}));
}

TEST(BringInChanges, another_meaning_gets_its_unit_guessed_and_every_row_is_read_anew) {
  BringIn log = three_rows();
  log.set_what(2, LogColumn::shim_found);
  EXPECT_EQ(log.mapping().columns[2].unit, ColumnUnit::inch);
  EXPECT_EQ(log.preview().readings[0].row.shim_found, 3.81_mm);
  EXPECT_EQ(log.preview().readings[0].row.gap_found, std::nullopt);
  log.set_unit(2, ColumnUnit::mm);
  EXPECT_FALSE(log.preview().readings[0].can_be_taken()) << "no shim is 0.15 mm";
  log.set_what(2, LogColumn::gap_left);
  EXPECT_EQ(log.preview().readings[0].row.gap_left, 0.15_mm);
}

TEST(BringInChanges, a_tick_set_by_hand_stays_through_other_changes) {
  BringIn log = three_rows();
  log.turn_tick(0);
  EXPECT_EQ(log.rows().size(), 1U);
  log.set_what(3, LogColumn::note);
  ASSERT_EQ(log.rows().size(), 1U);
  EXPECT_EQ(log.rows()[0].valve, "1 EX R");
  EXPECT_EQ(log.rows()[0].note, "95");
  log.turn_tick(0);
  EXPECT_EQ(log.rows().size(), 2U);
}

TEST(BringInChanges, a_row_that_makes_no_sense_gets_no_tick) {
  BringIn log = three_rows();
  log.turn_tick(2);
  EXPECT_EQ(log.rows().size(), 2U);
  log.tick_all(true);
  EXPECT_EQ(log.rows().size(), 2U);
  EXPECT_THAT(log.row_line(2), StartsWith("\u2715 row 4"));
  log.tick_all(false);
  EXPECT_TRUE(log.rows().empty());
  EXPECT_THAT(log.row_line(0), StartsWith("\u2610 row 2"));
}

TEST(BringInChanges,
     a_gap_that_can_hardly_be_right_is_shown_with_its_reason_and_is_ticked_by_hand) {
  BringInBook book = invented_log_book();
  book.limits.assign(book.valves.size(), Limits{0.10_mm, 0.20_mm});
  BringIn log = brought(sheet({{"Date", "Valve", "Gap in mm"},
                               {"2019-05-04", "1 EX L", 0.15},
                               {"2019-05-04", "1 EX R", 2.4}}),
                        book);
  EXPECT_EQ(log.rows().size(), 1U);
  EXPECT_THAT(log.row_line(1), StartsWith("\u2610 row 3"));
  EXPECT_THAT(log.row_line(1), HasSubstr("2.400"));
  EXPECT_THAT(log.row_line(1), HasSubstr("gap found: ten times too much? The limit is 0.20 mm"));
  EXPECT_EQ(
      log.outcome(),
      "1 row goes into Log, of 1 check. 1 row has a gap that can hardly be right: look at it, "
      "and tick what is right.");
  log.turn_tick(1);
  EXPECT_EQ(log.rows().size(), 2U);
  EXPECT_EQ(log.outcome(), "2 rows go into Log, of 1 check.");
}

TEST(BringInChanges, rows_without_a_tick_can_be_shown_alone) {
  BringIn log = three_rows();
  log.show(false);
  ASSERT_EQ(log.row_lines().size(), 1U);
  EXPECT_THAT(log.row_line(0), HasSubstr("row 4"));
  log.show(true);
  EXPECT_EQ(log.row_lines().size(), 3U);
}

TEST(BringInChanges, a_column_can_be_given_to_a_valve) {
  BringIn log = brought(sheet({{"Date", "A", "B"}, {"2019-05-04", 0.15, 0.16}}));
  log.set_form(LogForm::row_a_check);
  log.set_what(1, LogColumn::gap_found);
  EXPECT_TRUE(log.rows().empty());
  log.set_valve(1, 5);
  ASSERT_EQ(log.rows().size(), 1U);
  EXPECT_EQ(log.rows()[0].valve, log.book().valves[5]);
  EXPECT_THAT(log.column_lines()[1], HasSubstr(log.book().valves[5] + ": gap found, mm"));
}

TEST(BringInChanges, rows_of_the_heading_and_the_order_of_dates_can_be_changed) {
  BringIn log = brought(sheet({{"Date", "Valve", "Gap"}, {"04/05/2019", "1 EX L", 0.15}}));
  EXPECT_THAT(log.outcome(), HasSubstr("can be read either way"));
  log.set_order(DateOrder::month_first);
  EXPECT_THAT(log.outcome(), Not(HasSubstr("can be read either way"))) << "it is settled";
  EXPECT_EQ(log.rows().at(0).date, day_number(2019, 4, 5));
  log.set_heading_rows(0);
  EXPECT_EQ(log.preview().readings.size(), 2U);
  log.set_heading_rows(2);
  EXPECT_TRUE(log.preview().readings.empty());
}

TEST(BringInChanges, a_title_above_the_table_and_blank_rows_around_it_do_not_count) {
  OwnerTable table = sheet({{"", "", ""},
                            {"My old log", "", ""},
                            {"", "", ""},
                            {"Date", "Valve", "Gap"},
                            {"2019-05-04", "1 EX L", 0.15},
                            {"", "", ""}});
  table.first_row = 3;
  const BringIn log = brought(table);
  EXPECT_EQ(log.mapping().heading_rows, 1U);
  ASSERT_EQ(log.preview().readings.size(), 1U);
  EXPECT_EQ(log.preview().readings[0].source_row, 7);
}

TEST(BringInChanges, the_log_in_the_book_is_read_as_far_as_rows_are_told_apart_by) {
  std::vector<LogRow> log = invented_log();
  EntryTable cells;
  for (const LogRow& row : log) cells.push_back(cells_of(row, Unit::inch));
  cells.insert(cells.begin() + 2, std::vector<Entry>(log_columns));
  const std::vector<LogRow> read = present_rows(cells);
  ASSERT_EQ(read.size(), log.size());
  for (std::size_t i = 0; i < log.size(); ++i) {
    EXPECT_EQ(read[i].check, log[i].check);
    EXPECT_EQ(read[i].round, log[i].round);
    EXPECT_EQ(read[i].date, log[i].date);
    EXPECT_EQ(read[i].distance, log[i].distance);
    EXPECT_EQ(read[i].valve, log[i].valve);
  }
}

TEST(BringInChanges, two_columns_of_one_kind_are_told) {
  BringIn log = three_rows();
  log.set_what(3, LogColumn::gap_found);
  EXPECT_THAT(log.outcome(), HasSubstr("Two columns hold the same (gap found)"));
  EXPECT_EQ(log.preview().readings[0].row.gap_found, 0.15_mm);
}

TEST(BringInChanges, a_book_that_counts_hours_takes_no_km) {
  BringInBook book = invented_log_book();
  book.distance = DistanceUnit::hours;
  BringIn log =
      brought(sheet({{"Date", "km", "Valve", "Gap"}, {"2019-05-04", 12500, "1 EX L", 0.15}}), book);
  EXPECT_TRUE(log.rows().empty());
  EXPECT_THAT(log.row_line(0), HasSubstr("km cannot be turned into hours"));
  log.set_what(1, std::nullopt);
  EXPECT_EQ(log.rows().size(), 1U) << "without its distance";
}

}  // namespace
}  // namespace shimwright
