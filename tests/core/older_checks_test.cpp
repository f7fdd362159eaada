// SPDX-License-Identifier: MPL-2.0
//
// Checks brought in that are older than those in the log. Rows of the log are never rewritten, so
// the older checks get larger numbers; nothing else may come out otherwise.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/log/bring_in/bring_in.hpp"
#include "core/service/closing_rows.hpp"
#include "core/service/drift_findings.hpp"
#include "core/service/view_drift.hpp"
#include "invented_log.hpp"
#include "owner_log.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

constexpr int checks = 8;
constexpr int brought_in = 5;  // of them, the oldest

// Its rows are given from the newest check to the oldest, without numbers.
OwnerTable owners_table_of(const std::vector<LogRow>& rows) {
  OwnerTable table = sheet({{"Date", "km", "Valve", "Gap", "Shim", "New shim", "New gap"}});
  const auto mm = [](const std::optional<Length>& length) {
    return length ? OwnerCell{length->mm(), false} : OwnerCell{};
  };
  for (auto row = rows.rbegin(); row != rows.rend(); ++row)
    table.rows.push_back({row->date ? OwnerCell{*row->date, true} : OwnerCell{},
                          {*row->distance, false},
                          {row->valve, false},
                          mm(row->gap_found),
                          mm(row->shim_found),
                          mm(row->shim_fitted),
                          mm(row->gap_left)});
  return table;
}

class OlderChecks : public testing::TestWithParam<bool> {
 protected:
  OlderChecks() : whole(invented_log(entries.valves(), checks, "2 EX L")) {
    const bool has_dates = GetParam();
    std::vector<LogRow> older;
    for (LogRow& row : whole) {
      if (!has_dates) row.date.reset();
      if (row.check <= brought_in) {
        older.push_back(row);
      } else {
        in_log.push_back(row);
        in_log.back().check -= brought_in;
      }
    }
    BringInBook book = invented_log_book();
    book.log = in_log;
    brought = std::make_unique<BringIn>(owners_table_of(older), book,
                                        Teller(Language::english, Unit::mm, ".", Terms::book));
  }

  EntryTable log_then() const {
    std::vector<LogRow> all = in_log;
    for (const LogRow& row : brought->rows()) all.push_back(row);
    return table_of(all);
  }

  ServiceEntries entries = driven_engine();
  std::vector<LogRow> whole;
  std::vector<LogRow> in_log;  // the newest, numbered from 1 on
  std::unique_ptr<BringIn> brought;
};

TEST_P(OlderChecks, get_the_next_numbers_in_the_order_of_their_dates) {
  const auto rows = brought->rows();
  ASSERT_EQ(rows.size(), brought_in * entries.valves().size());
  std::int64_t number = checks - brought_in;
  double before = 0;
  for (const LogRow& row : rows) {
    if (*row.distance > before) ++number;
    EXPECT_GE(*row.distance, before);
    EXPECT_EQ(row.check, number);
    before = *row.distance;
  }
  EXPECT_EQ(number, checks);
}

TEST_P(OlderChecks, drift_as_if_all_had_been_written_in_order) {
  const Service service = entries.service();
  const EntryTable in_order = table_of(whole);
  const View expected = drift_view_of(service, in_order);
  const View shown = drift_view_of(service, log_then());
  EXPECT_NE(expected["drift"].at("rate"), "");
  EXPECT_EQ(shown["drift"], expected["drift"]);
  for (const char* column : {"at", "why", "line", "tally", "mark"})
    EXPECT_EQ(shown["next check"].at(column), expected["next check"].at(column)) << column;
  const DriftFindings in_turn = drift_findings_in(service, in_order);
  const DriftFindings found = drift_findings_in(service, log_then());
  EXPECT_EQ(found.last, in_turn.last);
  for (std::size_t i = 0; i < found.valves.size(); ++i)
    EXPECT_EQ(found.valves[i].fitted, in_turn.valves[i].fitted) << "the shim of the newest check";
}

TEST_P(OlderChecks, leave_the_next_checks_number_and_bounds_as_they_are) {
  const LogSoFar expected = log_so_far(table_of(whole));
  const LogSoFar found = log_so_far(log_then());
  EXPECT_EQ(found.last_check, checks) << "so the next check is the ninth";
  EXPECT_EQ(found.last_day, expected.last_day);
  EXPECT_EQ(found.longest_distance, expected.longest_distance);
}

INSTANTIATE_TEST_SUITE_P(WithAndWithoutDates, OlderChecks, testing::Bool());

TEST(BringInOlder, is_said_in_the_dialog_and_only_where_it_is_so) {
  using testing::HasSubstr;
  using testing::Not;
  constexpr const char* said = "Some checks are older than those in Log";
  const auto outcome = [](double logged, int number, const char* brought) {
    BringInBook book = invented_log_book();
    book.log = {{.check = number, .date = logged, .valve = "1 EX R"}};
    return BringIn(sheet({{"Date", "Valve", "Gap"}, {brought, "1 EX L", 0.15}}), book,
                   Teller(Language::english, Unit::mm, ".", Terms::book))
        .outcome();
  };
  const double may_2020 = 43'952;
  EXPECT_THAT(outcome(may_2020, 3, "2019-05-04"), HasSubstr(said));
  EXPECT_THAT(outcome(may_2020, 3, "2021-05-04"), Not(HasSubstr(said))) << "it is newer";
  EXPECT_THAT(outcome(may_2020, 3, "2020-05-01"), Not(HasSubstr(said))) << "it is that check";
  EXPECT_THAT(outcome(may_2020, 0, "2019-05-04"), Not(HasSubstr(said))) << "that has no number";
}

}  // namespace
}  // namespace shimwright::tests
