// SPDX-License-Identifier: MPL-2.0
//
// What Drift shows of a log.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/drift/drift.hpp"
#include "core/drift/due.hpp"
#include "core/service/drift_chart.hpp"
#include "core/service/view_drift.hpp"
#include "invented_log.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

View view(const ServiceEntries& entries, const EntryTable& log) {
  return drift_view_of(entries.service(), log);
}

std::string once(const View& view, std::string_view column) {
  return view["next check"].at(column);
}

std::string box(const View& view) {
  std::string all;
  for (std::size_t row = 1; row <= view["next check"].rows.size(); ++row)
    all += view["next check"].at("box", row) + "\n";
  return all;
}

std::string of(const ServiceEntries& entries, const View& view, const std::string& valve,
               std::string_view column) {
  const auto at = std::ranges::find(entries.valves(), valve) - entries.valves().begin();
  return view["drift"].at(column, static_cast<std::size_t>(at) + 1);
}

// One valve's rows: distance, gap found, shim found, shim fitted; gap left as it follows.
EntryTable log_of(const std::string& valve, const std::vector<std::array<double, 4>>& checks) {
  std::vector<LogRow> rows;
  std::int64_t number = 0;
  for (const auto& [distance, gap, found, fitted] : checks) {
    ++number;
    rows.push_back({.check = number,
                    .round = 1,
                    .date = first_invented_day + 400.0 * static_cast<double>(number),
                    .distance = distance,
                    .valve = valve,
                    .gap_found = Length::of(gap),
                    .shim_found = Length::of(found),
                    .shim_fitted = Length::of(fitted),
                    .gap_left = Length::of(gap + found - fitted)});
  }
  return table_of(rows);
}

TEST(DriftShown, of_an_empty_log_is_calm_and_blank) {
  const auto entries = driven_engine();
  const View shown = view(entries, EntryTable(200, std::vector<Entry>(log_columns)));
  EXPECT_EQ(shown["drift"].rows.size(), entries.valves().size());
  EXPECT_EQ(of(entries, shown, "1 EX L", "words"), "");
  EXPECT_EQ(once(shown, "line"),
            "Next check: not known yet. The log is still empty. Go by the manual.");
  EXPECT_THAT(box(shown), StartsWith("Nothing to show yet: the log is empty."));
  EXPECT_EQ(shown["next check"].at("mood"), "calm");
  EXPECT_FALSE(drift_charts(entries.service(), drift_findings_in(entries.service(), {})));
}

// The worked example of README: a change of shim hides no wear.
TEST(DriftShown, has_the_figures_of_the_functions) {
  auto entries = driven_engine();
  entries.set("side", "exhaust", 0, 0.10).set("side", "exhaust", 1, 0.20);
  const View shown = view(entries, log_of("1 EX L", {{0, 0.20, 2.70, 2.70},
                                                     {12000, 0.19, 2.70, 2.68},
                                                     {24000, 0.20, 2.68, 2.68},
                                                     {36000, 0.17, 2.68, 2.68}}));
  EXPECT_EQ(of(entries, shown, "1 EX L", "course"), "closing up");
  EXPECT_EQ(of(entries, shown, "1 EX L", "rate"), "\u22120.00133 \u00b1 0.00029");
  EXPECT_EQ(of(entries, shown, "1 EX L", "meets"), "tight at 93\u00a0000");
  EXPECT_EQ(of(entries, shown, "1 EX L", "cautious"), "60\u00a0244");
  EXPECT_EQ(of(entries, shown, "1 EX L", "words"), "Closes up, as most valves do with use.");
  EXPECT_EQ(of(entries, shown, "2 EX L", "words"), "Not in the log.");
  EXPECT_EQ(once(shown, "at"), "at 60\u00a0000 km");
  EXPECT_EQ(once(shown, "why"),
            "1 EX L may be at its smallest gap from 60\u00a0244 km on, as its checks go; rounded "
            "down.");
  EXPECT_EQ(once(shown, "tally"), "4 checks, the last at 36\u00a0000 km");
}

TEST(DriftShown, takes_the_shim_of_the_last_check_whatever_the_order_of_the_rows) {
  auto entries = driven_engine();
  entries.set("side", "exhaust", 0, 0.10).set("side", "exhaust", 1, 0.20);
  auto log = log_of("1 EX L", {{0, 0.20, 2.70, 2.70},
                               {12000, 0.19, 2.70, 2.68},
                               {24000, 0.20, 2.68, 2.68},
                               {36000, 0.17, 2.68, 2.66}});
  const std::string meets = of(entries, view(entries, log), "1 EX L", "meets");
  EXPECT_EQ(meets, "tight at 108\u00a0000");  // 0.02 thinner: 15 000 further
  std::ranges::reverse(log);
  EXPECT_EQ(of(entries, view(entries, log), "1 EX L", "meets"), meets);
}

TEST(DriftShown, never_goes_beyond_the_manuals_interval) {
  auto entries = driven_engine();
  entries.setting("interval", 12'000.0);
  const View shown = view(entries, table_of(invented_log(entries.valves(), 3)));
  EXPECT_EQ(once(shown, "at"), "at 48\u00a0000 km");
  EXPECT_EQ(once(shown, "why"),
            "By the manual: 12\u00a0000 km after the last check at 36\u00a0000 km.");
}

TEST(DriftShown, of_one_and_two_checks_says_what_it_can_and_what_it_cannot) {
  auto entries = driven_engine();
  const View one = view(entries, table_of(invented_log(entries.valves(), 1)));
  EXPECT_EQ(of(entries, one, "1 EX L", "course"), "1 of 3 checks");
  EXPECT_EQ(of(entries, one, "1 EX L", "words"), "One check: nothing to hold it against yet.");
  EXPECT_EQ(once(one, "why"),
            "By the manual: 24\u00a0000 km after the last check at 12\u00a0000 km. 1 check in the "
            "log: the drift is reckoned from three on.");
  const View two = view(entries, table_of(invented_log(entries.valves(), 2)));
  EXPECT_EQ(of(entries, two, "1 EX L", "course"), "2 of 3 checks");
  EXPECT_THAT(of(entries, two, "1 EX L", "words"),
              testing::MatchesRegex("Moved by -?0.0[0-9] mm; a third check shows more."));
  EXPECT_EQ(of(entries, two, "1 EX L", "cautious"), "");
  entries.setting("interval", Entry());
  const View none = view(entries, table_of(invented_log(entries.valves(), 2)));
  EXPECT_EQ(once(none, "line"),
            "Next check: not known yet. Go by the manual, and enter its interval on Engine. 2 "
            "checks in the log: the drift is reckoned from three on.");
}

TEST(DriftShown, finds_a_valve_that_moves_unlike_its_siblings) {
  const auto entries = driven_engine();
  const View shown = view(entries, table_of(invented_log(entries.valves(), 6, "2 EX L")));
  EXPECT_EQ(of(entries, shown, "2 EX L", "words"), "Unlike its siblings: see to valve and seat.");
  EXPECT_THAT(
      box(shown),
      HasSubstr("2 EX L moves unlike the other valves of that side: have valve and seat looked "
                "at where the gap closes"));
  EXPECT_THAT(box(shown), HasSubstr("See the engine\u2019s manual, or ask a licensed mechanic"));
  for (const std::string& valve : entries.valves())
    if (valve != "2 EX L") {
      EXPECT_THAT(of(entries, shown, valve, "words"), testing::Not(HasSubstr("siblings"))) << valve;
    }
}

TEST(DriftShown, of_a_valve_that_may_be_at_its_limit_says_so_aloud) {
  const auto entries = driven_engine();
  const View shown = view(entries, log_of("1 EX L", {{0, 0.26, 2.70, 2.70},
                                                     {12000, 0.25, 2.70, 2.70},
                                                     {24000, 0.22, 2.70, 2.70},
                                                     {36000, 0.20, 2.70, 2.70}}));
  EXPECT_EQ(once(shown, "at"), "now");
  EXPECT_EQ(of(entries, shown, "1 EX L", "words"), "May be tight already: measure it again first.");
  EXPECT_EQ(once(shown, "why"),
            "1 EX L may be at a limit already: the checks cannot prove otherwise.");
  EXPECT_THAT(box(shown), HasSubstr("Do not rely on the distance for 1 EX L"));
  EXPECT_EQ(shown["next check"].at("mood", 1), "loud");
}

// So that the office need not make their letters smaller: 90 mm less the edge, at most 1.85 mm
// each.
TEST(DriftShown, has_no_words_on_a_valve_that_are_wider_than_their_column) {
  constexpr double most_letters = 86 / 1.85;
  const Teller teller(Language::english, Unit::inch, ".", Terms::book);
  for (const Say words :
       {Say::drift_no_check, Say::drift_one_check, Say::drift_two_checks, Say::drift_no_limits,
        Say::drift_no_shim, Say::drift_still, Say::drift_now_tight, Say::drift_now_loose,
        Say::drift_means_closing, Say::drift_means_opening, Say::drift_means_steady,
        Say::drift_unlike_closing, Say::drift_unlike_opening, Say::drift_wrong_gap,
        Say::drift_lacks_gap, Say::drift_lacks_distance, Say::drift_lacks_shim}) {
    const std::string said = teller.say(words, {Length::nanometres(30'480)});
    EXPECT_LE(static_cast<double>(said.size()), most_letters) << said;
  }
}

TEST(DriftShown, of_gaps_that_are_all_equal_asks_whether_they_were_measured) {
  const auto entries = driven_engine();
  const View shown =
      view(entries,
           log_of("1 IN L",
                  {{0, 0.18, 2.70, 2.70}, {12000, 0.18, 2.70, 2.70}, {24000, 0.18, 2.70, 2.70}}));
  EXPECT_EQ(of(entries, shown, "1 IN L", "course"), "steady");
  EXPECT_EQ(of(entries, shown, "1 IN L", "words"), "The same at every check: was it measured?");
  EXPECT_THAT(box(shown), HasSubstr("1 IN L: gap and shim come to the same at every check."));
}

TEST(DriftShown, tells_of_each_odd_history_and_loses_no_other_row) {
  auto entries = driven_engine();
  EntryTable log = table_of(invented_log(entries.valves(), 4));
  const auto at = [&log](std::size_t row, LogColumn column) -> Entry& {
    return log[row][static_cast<std::size_t>(column)];
  };
  at(0, LogColumn::valve) = "9 EX";
  at(1, LogColumn::distance) = Entry();
  at(2, LogColumn::gap_found) = "tight";
  at(3, LogColumn::gap_found) = -1.0;
  at(4, LogColumn::date) = Entry();
  const View shown = view(entries, log);
  for (const char* words : {"called \"9 EX\" (row 1 of Log)", "Row 2 of Log has no distance",
                            "Log, gap found, row 3: words stand", "Log, row 4: a gap below 0",
                            "Row 5 of Log has no date"})
    EXPECT_THAT(box(shown), HasSubstr(words));
  // Read me first tells nothing of Drift.
  entries.set("box", "drift", 1, 3.0);
  EXPECT_THAT(box(view(entries, log)), testing::EndsWith("once what stands above is seen to.\n"));
  // A check without a date counts by its distance, and a gap that does not leaves the gap left.
  const auto found = drift_findings_in(entries.service(), log);
  for (std::size_t i = 0; i < found.valves.size(); ++i)
    EXPECT_EQ(found.valves[i].points.size(), i < 2 ? 3U : 4U) << entries.valves()[i];
}

TEST(DriftShown, counts_a_further_round_of_a_check_with_the_first) {
  const auto entries = driven_engine();
  auto rows = invented_log(entries.valves(), 3);
  LogRow again = rows.back();
  again.round = 2;
  rows.push_back(again);
  const auto found = drift_findings_in(entries.service(), table_of(rows));
  EXPECT_EQ(found.valves.back().points.size(), 3U);
  EXPECT_EQ(found.checks, 3U);
}

TEST(DriftShown, speaks_of_hours_and_inches_and_with_a_comma) {
  auto entries = driven_engine();
  entries.setting("unit", "inch").setting("half", "0,5").setting("distance unit", "hours");
  entries.setting("interval", 200.0);
  entries.set("side", "exhaust", 0, 0.004).set("side", "exhaust", 1, 0.008);
  std::vector<LogRow> rows;
  for (const auto& [hours, gap] : {std::pair{0.0, 0.0078}, {150.0, 0.0074}, {290.5, 0.0071}})
    rows.push_back({.distance = hours,
                    .valve = "1 EX L",
                    .gap_found = Length::of(gap, Unit::inch),
                    .shim_found = Length::of(0.106, Unit::inch)});
  const View shown = view(entries, table_of(rows, Unit::inch));
  EXPECT_THAT(once(shown, "heading"), HasSubstr("lengths in inches, distance in hours"));
  EXPECT_THAT(of(entries, shown, "1 EX L", "rate"), StartsWith("\u22120,002"));
  EXPECT_EQ(once(shown, "tally"), "3 checks, the last at 290 hours");
}

TEST(DriftShown, says_when_the_charts_are_not_those_of_the_log) {
  auto entries = driven_engine();
  const auto log = table_of(invented_log(entries.valves(), 4));
  EXPECT_THAT(box(view(entries, log)), HasSubstr("For the charts press Draw the drift."));
  entries.set("drawn", "drift", 0, once(view(entries, log), "mark"));
  EXPECT_THAT(box(view(entries, log)), testing::Not(HasSubstr("press Draw the drift")));
  EXPECT_THAT(box(view(entries, table_of(invented_log(entries.valves(), 5)))),
              HasSubstr("have changed since the charts were drawn"));
  entries.set("side", "inlet", 1, 0.23);
  EXPECT_THAT(box(view(entries, log)), HasSubstr("have changed since the charts were drawn"));
}

TEST(DriftCharts, show_every_check_with_the_shim_now_in_place_and_mark_the_changes) {
  const auto entries = driven_engine();
  const auto service = entries.service();
  const auto found = drift_findings_in(service, table_of(invented_log(entries.valves(), 6)));
  const auto charts = drift_charts(service, found);
  ASSERT_TRUE(charts);
  EXPECT_EQ(charts->charts.size(), 4U);
  EXPECT_EQ(charts->bands.size(), 2U);
  EXPECT_EQ(charts->foot.from, 0);
  EXPECT_GE(charts->foot.to, found.next->at);
  EXPECT_NEAR(std::remainder(charts->side.from, charts->side.step), 0, 1e-9);
  std::size_t changed = 0;
  for (std::size_t c = 0; c < charts->charts.size(); ++c)
    for (const ChartSeries& series : charts->charts[c].series) {
      if (series.kind == ChartSeries::Kind::changed) changed += series.points.size();
      if (series.kind != ChartSeries::Kind::checks) continue;
      ASSERT_EQ(series.points.size(), 6U) << series.name;
      const auto at = std::ranges::find(entries.valves(), series.name) - entries.valves().begin();
      const ValveToJudge& valve = found.valves[static_cast<std::size_t>(at)];
      for (std::size_t i = 0; i < 6; ++i) {
        EXPECT_EQ(series.points[i]->x, valve.points[i].x);
        EXPECT_NEAR(series.points[i]->y, valve.points[i].y / 1e6 - valve.fitted->mm(), 1e-9);
        EXPECT_GT(series.points[i]->y, charts->side.from);
        EXPECT_LT(series.points[i]->y, charts->side.to);
      }
    }
  std::size_t due = 0;
  for (const auto& of_valve : found.changes) due += of_valve.size();
  EXPECT_EQ(changed, due);
  EXPECT_GT(due, 0U);
}

// The line of a chart meets the limit where the table says, and so does its bound.
// The gap that sent the valve into another round was no reading of its wear.
TEST(DriftShown, of_a_check_with_rounds_only_the_first_gap_found_and_the_last_one_left_count) {
  const auto service = driven_engine().service();
  const auto row = [](std::int64_t check, std::int64_t round, double distance, double found,
                      double shim, double fitted, double left) {
    return LogRow{.check = check,
                  .round = round,
                  .date = first_invented_day + 400.0 * static_cast<double>(check),
                  .distance = distance,
                  .valve = "1 EX L",
                  .gap_found = Length::of(found),
                  .shim_found = Length::of(shim),
                  .shim_fitted = Length::of(fitted),
                  .gap_left = Length::of(left)};
  };
  std::vector<LogRow> rows{row(1, 1, 0, 0.26, 2.70, 2.70, 0.26),
                           row(2, 1, 12000, 0.25, 2.70, 2.70, 0.25)};
  auto plain = rows;
  plain.push_back(row(3, 1, 24010, 0.19, 2.70, 2.65, 0.24));
  for (const double slip : {0.15, 0.33}) {
    auto with_rounds = rows;
    with_rounds.push_back(row(3, 1, 24000, 0.19, 2.70, 2.65, slip));
    with_rounds.push_back(row(3, 2, 24010, slip, 2.65, 2.65, 0.24));
    const auto found = drift_findings_in(service, table_of(with_rounds));
    const auto expected = drift_findings_in(service, table_of(plain));
    EXPECT_EQ(found.checks, 3U);
    ASSERT_TRUE(found.drift.valves.front().line && expected.drift.valves.front().line);
    EXPECT_EQ(found.drift.valves.front().line->slope, expected.drift.valves.front().line->slope);
    EXPECT_EQ(found.last, expected.last);
  }
}

// Until then nobody knows whether the shim sat askew or the gauge slipped.
TEST(DriftShown, of_a_check_in_another_round_a_gap_that_is_not_as_predicted_waits_for_it) {
  auto entries = driven_engine();
  EntryTable log = log_of(
      "1 EX L", {{0, 0.26, 2.70, 2.70}, {12000, 0.25, 2.70, 2.70}, {24000, 0.19, 2.70, 2.65}});
  const auto write = [&log](LogColumn column, double value) {
    log.back()[static_cast<std::size_t>(column)] = value;
  };
  const auto drift = [&] { return drift_findings_in(entries.service(), log); };
  write(LogColumn::predicted, 0.24);
  write(LogColumn::gap_left, 0.27);
  const auto points = [](const DriftFindings& found) { return found.valves.front().points; };
  const auto closed = drift();
  ASSERT_EQ(points(closed).size(), 3U);
  EXPECT_EQ(points(closed).back().y, 2'905'000) << "the mean of what was found and left";
  entries.setting("check", 3.0);
  EXPECT_EQ(points(drift()).back().y, 2'890'000) << "what was found alone";
  entries.setting("check", 2.0);
  EXPECT_EQ(points(drift()).back().y, 2'905'000) << "another check's";
  // Within the doubt of both readings it is as predicted: 0.02 each where none is entered.
  entries.setting("check", 3.0);
  write(LogColumn::gap_left, 0.26);
  EXPECT_EQ(points(drift()).back().y, 2'900'000);
  write(LogColumn::gap_left, 0.27);
  entries.setting("doubt", 0.03);
  EXPECT_EQ(points(drift()).back().y, 2'905'000);
}

TEST(DriftCharts, draw_the_lines_of_the_table) {
  auto entries = driven_engine();
  entries.set("side", "exhaust", 0, 0.10).set("side", "exhaust", 1, 0.20);
  const auto service = entries.service();
  const auto found = drift_findings_in(service, log_of("1 EX L", {{0, 0.20, 2.70, 2.70},
                                                                  {12000, 0.19, 2.70, 2.68},
                                                                  {24000, 0.20, 2.68, 2.68},
                                                                  {36000, 0.17, 2.68, 2.68}}));
  const auto charts = drift_charts(service, found);
  ASSERT_TRUE(charts);
  for (const ChartSeries& series : charts->charts.front().series) {
    if (series.side != Side::exhaust ||
        (series.kind != ChartSeries::Kind::line && series.kind != ChartSeries::Kind::bound))
      continue;
    ASSERT_GE(series.points.size(), 2U);
    const auto& end = *series.points[series.points.size() - 2];
    const Line& line = *found.drift.valves.front().line;
    if (series.kind == ChartSeries::Kind::line) {
      EXPECT_NEAR(end.y, line.at(charts->foot.to) / 1e6 - 2.68, 1e-12);
    }
    if (series.kind == ChartSeries::Kind::bound) {
      EXPECT_LT(end.y, line.at(charts->foot.to) / 1e6 - 2.68);
      EXPECT_EQ(series.points.front()->x, 36'000);
    }
  }
}

}  // namespace
}  // namespace shimwright::tests
