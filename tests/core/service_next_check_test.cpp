// SPDX-License-Identifier: MPL-2.0
//
// What is said of the next check before a check is closed.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "closing_book.hpp"
#include "core/service/drift_findings.hpp"
#include "core/service/next_check_words.hpp"
#include "core/service/view_drift.hpp"
#include "invented_log.hpp"

namespace shimwright::tests {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

// All valves good, of which 1 EX L has closed up by 0.01 a check: 0.20, 0.19, 0.18 so far.
class NextCheckAtClose : public ::testing::Test {
 protected:
  NextCheckAtClose() {
    book.all_good();
    book.setting("distance unit", "km").setting("doubt", 0.003);
    book.gap("1 EX L", 0.17);
    for (int check = 1; check <= 3; ++check)
      for (const std::string& valve : book.valves()) {
        const Length gap = Length::of(valve == "1 EX L" ? 0.21 - 0.01 * check : 0.20);
        rows.push_back({.check = check,
                        .round = 1,
                        .date = first_invented_day + 400.0 * check,
                        .distance = 12'000.0 * check,
                        .valve = valve,
                        .gap_found = gap,
                        .shim_found = Length::of(2.70),
                        .shim_fitted = Length::of(2.70),
                        .gap_left = gap});
      }
  }
  std::string deeds() const { return book.deeds(said, table_of(rows)); }

  ClosingBook book;
  std::vector<LogRow> rows;
  ClosingEntries said{.date = "2026-11-26",
                      .distance = "48000",
                      .temperature = "",
                      .who = "",
                      .note = "",
                      .another_round = false};
};

TEST_F(NextCheckAtClose, is_that_of_the_log_with_this_check_in_it) {
  const std::string before = deeds();
  EXPECT_THAT(before, AllOf(HasSubstr("Next check: at "),
                            HasSubstr("1 EX L may be at its smallest gap from")));
  EntryTable log = table_of(rows);
  for (const LogRow& row : book.closing(said, log).rows) log.push_back(cells_of(row, Unit::mm));
  const Service service = book.service();
  const NextCheckWords after = next_check_in_words(service, drift_findings_in(service, log));
  EXPECT_THAT(before, HasSubstr("Next check: " + after.at + ". " + after.why));
}

TEST_F(NextCheckAtClose, sooner_than_the_interval_says_how_a_longer_run_is_had) {
  EXPECT_THAT(deeds(), Not(HasSubstr("too soon"))) << "nobody said how far it is to run";
  book.setting("interval", 24'000.0);
  EXPECT_THAT(deeds(),
              AllOf(HasSubstr("If that is too soon, do not close the check yet. For a longer run "
                              "1 EX L wants a thinner shim: on Engine choose yes for Change shims "
                              "of good valves too."),
                    HasSubstr("nearer to 1"), HasSubstr("licensed mechanic")));
  book.setting("interval", 2'000.0);
  EXPECT_THAT(deeds(), AllOf(HasSubstr("Next check: at 50\u00a0000 km. By the manual"),
                             Not(HasSubstr("too soon"))));
}

TEST_F(NextCheckAtClose, that_is_due_now_says_so_without_an_interval_too) {
  book.gap("1 EX L", 0.155);
  EXPECT_THAT(deeds(), AllOf(HasSubstr("Next check: now. 1 EX L may be at a limit already"),
                             HasSubstr("For a longer run 1 EX L wants a thinner shim")));
}

TEST_F(NextCheckAtClose, of_a_valve_that_opens_up_wants_a_thicker_shim) {
  for (LogRow& row : rows)
    if (row.valve == "1 EX L")
      row.gap_found = row.gap_left = Length::of(0.19 + 0.01 * static_cast<double>(row.check));
  book.gap("1 EX L", 0.23).setting("interval", 24'000.0);
  EXPECT_THAT(deeds(), AllOf(HasSubstr("1 EX L may be at its largest gap"),
                             HasSubstr("1 EX L wants a thicker shim"), HasSubstr("nearer to 0")));
}

TEST_F(NextCheckAtClose, after_fitting_is_put_off_by_another_round) {
  book.setting("interval", 24'000.0);
  book.gap("3 IN L", 0.30).sizes(1, "A", 2.00, 3.50, 0.05, 5);
  book.drawer_rows(20);
  book.take_to_bench();
  book.tick_all();
  book.recheck_as_predicted();
  EXPECT_THAT(deeds(), HasSubstr("If that is too soon, begin another round instead of closing."));
  said.another_round = true;
  EXPECT_THAT(deeds(), Not(HasSubstr("Next check")));
}

TEST_F(NextCheckAtClose, is_put_off_by_what_a_person_is_told_to_choose) {
  book.setting("interval", 24'000.0).sizes(1, "A", 2.00, 3.50, 0.05, 5);
  ASSERT_EQ(book.of_valve("1 EX L", "action"), "keep");
  const auto at = [this] { return book.closing(said, table_of(rows)).deeds; };
  const auto words = [&at](std::size_t from_last) {
    const auto deeds = at();
    return in_words(deeds.at(deeds.size() - from_last), Teller());
  };
  EXPECT_THAT(words(2), HasSubstr("Next check: at 62\u00a0000 km"));
  book.setting("touch good", "yes").setting("first", "aim").set("side", "exhaust", 2, 0.9);
  EXPECT_EQ(book.of_valve("1 EX L", "fit"), "2.650");
  book.drawer_rows(20);
  book.take_to_bench();
  book.tick_all();
  book.recheck_as_predicted();
  EXPECT_THAT(words(1), HasSubstr("Next check: at 72\u00a0000 km. By the manual"));
}

// Drift says the same, once it is so.
TEST_F(NextCheckAtClose, is_told_on_drift_too) {
  book.set("box", "drift", 0, 1000.0).set("box", "drift", 1, 60.0);
  const auto box = [this] {
    const View view = drift_view_of(book.service(), table_of(rows));
    std::string all;
    for (std::size_t row = 1; row <= view["next check"].rows.size(); ++row)
      all += view["next check"].at("box", row) + "\n";
    return all;
  };
  EXPECT_THAT(box(), Not(HasSubstr("For a longer run")));
  book.setting("interval", 24'000.0);
  EXPECT_THAT(box(), HasSubstr("For a longer run 1 EX L wants a thinner shim"));
}

TEST_F(NextCheckAtClose, of_a_first_check_is_not_known_yet) {
  rows.clear();
  EXPECT_THAT(deeds(), HasSubstr("Next check: not known yet. Go by the manual"));
}

}  // namespace
}  // namespace shimwright::tests
