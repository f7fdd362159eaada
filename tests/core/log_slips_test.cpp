// SPDX-License-Identifier: MPL-2.0
//
// Slips that stand in the log, and rows that lack a part: what Drift makes of them.
#include "core/service/log_slips.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/service/view_drift.hpp"
#include "invented_log.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

constexpr const char* slipped = "2 IN R";

// Twelve valves, each with a gap found at every check and none left, as owners write them down.
class LogSlips : public testing::Test {
 protected:
  void SetUp() override {
    std::vector<std::string> valves = entries.valves();
    valves.resize(12);
    if (std::ranges::find(valves, slipped) == valves.end()) valves.back() = slipped;
    rows = invented_log(valves, 5);
    for (LogRow& row : rows) row.gap_left.reset();
    const auto one = std::ranges::find_if(
        rows, [](const LogRow& row) { return row.check == 3 && row.valve == slipped; });
    at = static_cast<std::size_t>(one - rows.begin());
  }

  View shown() const { return drift_view_of(entries.service(), table_of(rows)); }

  std::string box(const View& view) const {
    std::string all;
    for (std::size_t row = 1; row <= view["next check"].rows.size(); ++row)
      all += view["next check"].at("box", row) + "\n";
    return all;
  }

  // Of every valve but the one that has the slip.
  std::vector<std::vector<std::string>> others(const View& view) const {
    auto all = view["drift"].rows;
    std::erase_if(all, [](const auto& row) { return row.front() == slipped; });
    return all;
  }

  std::string words_of(const View& view, std::string_view valve) const {
    const auto index = std::ranges::find(entries.valves(), valve) - entries.valves().begin();
    return view["drift"].at("words", static_cast<std::size_t>(index) + 1);
  }

  ServiceEntries entries = driven_engine();
  std::vector<LogRow> rows;
  std::size_t at = 0;  // the row in which the decimal mark may slip
};

TEST_F(LogSlips, one_gap_ten_times_too_large_is_named_first_and_counts_as_blank) {
  const Length right = *rows[at].gap_found;
  rows[at].gap_found.reset();
  const View blank = shown();
  rows[at].gap_found = 10 * right;
  const View slip = shown();
  EXPECT_EQ(slip["drift"].rows, blank["drift"].rows);
  EXPECT_EQ(slip["next check"].at("line"), blank["next check"].at("line"));
  EXPECT_EQ(slip["next check"].at("mood"), "loud");
  EXPECT_THAT(box(slip),
              StartsWith("\u2022 Log, row " + std::to_string(at + 1) + ": 2 IN R, a gap of "));
  EXPECT_THAT(box(slip), HasSubstr(" cannot be right where at most 0.22 mm is allowed. Put it "
                                   "right in Log, or the limits on Engine"));
  EXPECT_THAT(box(blank), Not(HasSubstr("cannot be right")));
}

TEST_F(LogSlips, of_one_valve_leave_what_is_said_of_the_eleven_others) {
  const auto right = drift_findings_in(entries.service(), table_of(rows));
  const View sound = shown();
  rows[at].gap_found = 10 * *rows[at].gap_found;
  const auto found = drift_findings_in(entries.service(), table_of(rows));
  const View slip = shown();
  int seen = 0;
  for (std::size_t i = 0; i < right.valves.size(); ++i) {
    const std::string& valve = entries.valves()[i];
    if (valve == slipped || right.drift.valves[i].checks == 0) continue;
    ++seen;
    EXPECT_EQ(found.drift.valves[i].line->slope, right.drift.valves[i].line->slope) << valve;
    EXPECT_EQ(found.drift.valves[i].kinship, right.drift.valves[i].kinship) << valve;
    // The scatter that all share has lost one reading of sixty.
    EXPECT_NEAR(*found.drift.valves[i].due->cautious, *right.drift.valves[i].due->cautious,
                0.03 * *right.drift.valves[i].due->cautious)
        << valve;
    EXPECT_EQ(words_of(slip, valve), words_of(sound, valve));
  }
  EXPECT_EQ(seen, 11);
}

TEST_F(LogSlips, of_several_rows_are_told_once_in_full_and_then_by_their_rows) {
  for (const std::size_t row : {0U, 1U, 2U, 5U}) rows[row].gap_found = Length::of(2.4);
  const std::string all = box(shown());
  EXPECT_THAT(all,
              StartsWith("\u2022 Log, row 1: " + rows[0].valve + ", a gap of 2.40 mm cannot be"));
  EXPECT_THAT(all, HasSubstr("counts as blank. Likewise the gaps in rows 2, 3, 6 of Log."));
}

TEST_F(LogSlips, never_hide_a_small_gap_for_a_valve_may_well_come_to_it) {
  rows[at].gap_found = Length::of(0.01);
  const auto found = drift_findings_in(entries.service(), table_of(rows));
  EXPECT_TRUE(found.slips.empty());
  EXPECT_EQ(found.checks, 5U);
}

TEST_F(LogSlips, are_none_where_the_limits_are_not_known) {
  entries.set("side", "inlet", 1, Entry());
  rows[at].gap_found = Length::of(2.4);
  EXPECT_TRUE(drift_findings_in(entries.service(), table_of(rows)).slips.empty());
}

TEST_F(LogSlips, of_a_row_with_two_wrong_gaps_tell_the_one_found_and_blank_both) {
  ReadLog log{.rows = {{.number = 7,
                        .row = {.valve = slipped,
                                .gap_found = Length::of(2.4),
                                .gap_left = Length::of(1.8)}}},
              .odd = {}};
  const auto slips = blank_slips(log, [](const std::string&) {
    return std::optional(Limits{Length::of(0.1), Length::of(0.2)});
  });
  EXPECT_EQ(in_words(slips.told, Teller(Language::english, Unit::mm, ".", Terms::book)),
            "Log, row 7: 2 IN R, a gap of 2.40 mm cannot be right where at most 0.20 mm is "
            "allowed. Put it right in Log, or the limits on Engine; until then it counts as "
            "blank.");
  EXPECT_FALSE(log.rows[0].row.gap_found || log.rows[0].row.gap_left);
}

TEST_F(LogSlips, and_what_else_a_valve_without_a_check_lacks_is_said_of_it) {
  const auto words_without = [this](auto part) {
    std::vector<LogRow> whole = rows;
    for (LogRow& row : rows)
      if (row.valve == slipped) part(row);
    const std::string words = words_of(shown(), slipped);
    rows = std::move(whole);
    return words;
  };
  EXPECT_EQ(words_without([](LogRow& row) { row.shim_found.reset(); }),
            "In Log without its shim: no drift known.");
  EXPECT_EQ(words_without([](LogRow& row) { row.gap_found.reset(); }),
            "In Log without a gap: no drift known.");
  EXPECT_EQ(words_without([](LogRow& row) { row.distance.reset(); }),
            "In Log without a distance: no drift known.");
  EXPECT_EQ(words_without([](LogRow& row) { row.gap_found = Length::of(2.4); }),
            "Its gap in Log cannot be right: put it right.");
  EXPECT_EQ(words_without([](LogRow& row) { row.valve = "9 IN"; }), "Not in the log.");
}

// A gap found goes with the shim found, a gap left with the shim fitted.
TEST(LogLack, is_the_shim_where_each_gap_has_that_of_the_other) {
  const Length gap = Length::of(0.2);
  const Length shim = Length::of(2.7);
  EXPECT_EQ(lack_in({.distance = 1, .gap_found = gap, .shim_fitted = shim}), LogLack::no_shim);
  EXPECT_EQ(lack_in({.distance = 1, .shim_found = shim, .gap_left = gap}), LogLack::no_shim);
  EXPECT_EQ(lack_in({.distance = 1, .shim_fitted = shim, .gap_left = gap}), LogLack::no_row);
}

}  // namespace
}  // namespace shimwright::tests
