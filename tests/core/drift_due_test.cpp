// SPDX-License-Identifier: MPL-2.0
//
// When a valve is due. Expected distances: the equations of due.hpp and prediction.hpp solved by
// halving in another program, with Student's t for two degrees of freedom in closed form,
// t = (2 p - 1) / sqrt(2 p (1 - p)).
#include "core/drift/due.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

// Clearance + shim in mm, over a shim of 2.70.
History history_of(const std::vector<double>& distance, const std::vector<double>& followed) {
  History history;
  for (std::size_t i = 0; i < distance.size(); ++i)
    history.add(distance[i], followed.at(i) - 2.7, 2.7);
  return history;
}

const History closing_up = history_of({0, 12e3, 24e3, 36e3}, {2.90, 2.89, 2.88, 2.85});
const History opening = history_of({0, 12e3, 24e3, 36e3}, {2.85, 2.865, 2.87, 2.89});
const History level = history_of({0, 12e3, 24e3, 36e3}, {2.86, 2.87, 2.85, 2.862});

void expect_due(const std::optional<Due>& due, std::optional<double> distance,
                std::optional<double> cautious, std::string_view word) {
  ASSERT_TRUE(due);
  EXPECT_EQ(word_for(due->course), word);
  ASSERT_EQ(due->distance.has_value(), distance.has_value());
  EXPECT_NEAR(due->distance.value_or(0), distance.value_or(0), 1e-9 * distance.value_or(1));
  ASSERT_EQ(due->cautious.has_value(), cautious.has_value());
  EXPECT_NEAR(due->cautious.value_or(0), cautious.value_or(0), 1e-9 * cautious.value_or(1));
}

TEST(Due, is_where_the_line_with_the_present_shim_meets_its_limit) {
  expect_due(due_after(closing_up, 2.68_mm, {0.10_mm, 0.20_mm}), 93'000, 60244.16518123619,
             "tight");
  expect_due(due_after(closing_up, 2.68_mm, {0.10_mm, 0.20_mm}, 0.9), 93'000, 68884.7855687841,
             "tight");
  expect_due(due_after(opening, 2.70_mm, {0.16_mm, 0.24_mm}), 86'400, 62225.50267477355, "loose");
}

TEST(Due, moves_with_the_shim_that_is_fitted) {
  // 0.02 thinner: 15 000 further, as the rate is 0.01 in 7 500.
  const auto due = due_after(closing_up, 2.66_mm, {0.10_mm, 0.20_mm});
  ASSERT_TRUE(due && due->distance);
  EXPECT_NEAR(*due->distance, 93'000 + 15'000, 1e-6);
}

TEST(Due, of_a_steady_valve_is_cautious_only_and_of_the_limit_met_first) {
  expect_due(due_after(level, 2.70_mm, {0.10_mm, 0.22_mm}), std::nullopt, 60400.70375401646,
             "steady");
  expect_due(due_after(level, 2.70_mm, {0.05_mm, 0.22_mm}), std::nullopt, 71669.2315467117,
             "steady");
}

TEST(Due, of_a_valve_that_never_moves_is_never) {
  expect_due(
      due_after(history_of({0, 12e3, 24e3}, {2.95, 2.95, 2.95}), 2.80_mm, {0.10_mm, 0.20_mm}),
      std::nullopt, std::nullopt, "steady");
}

TEST(Due, without_scatter_is_cautious_where_it_is_due) {
  const auto due = due_after(history_of({0, 12e3, 24e3, 36e3}, {2.90, 2.89, 2.88, 2.87}), 2.70_mm,
                             {0.15_mm, 0.20_mm});
  expect_due(due, 60'000, 60'000, "tight");
}

TEST(Due, of_a_valve_that_is_out_already_was_before_the_last_check) {
  const auto due = due_after(closing_up, 2.68_mm, {0.19_mm, 0.30_mm});
  ASSERT_TRUE(due && due->distance);
  EXPECT_EQ(due->course, Course::tight);
  EXPECT_NEAR(*due->distance, 25'500, 1e-6);  // 2.904 - 0.034 is 2.87
  EXPECT_EQ(due->cautious, 36'000);
}

TEST(Due, is_cautious_at_once_where_a_further_reading_might_be_out) {
  const auto due = due_after(closing_up, 2.68_mm, {0.15_mm, 0.20_mm});
  expect_due(due, 55'500, 36'000, "tight");
}

TEST(Due, counts_from_the_furthest_check_whatever_the_order) {
  const History backwards = history_of({36e3, 24e3, 0, 12e3}, {2.85, 2.88, 2.90, 2.89});
  expect_due(due_after(backwards, 2.68_mm, {0.10_mm, 0.20_mm}), 93'000, 60244.16518123619, "tight");
  EXPECT_EQ(due_after(backwards, 2.68_mm, {0.15_mm, 0.20_mm})->cautious, 36'000);
}

// The slope of `closing_up` is 4.6188 errors; that of 95 % is 4.3027, of 96 % 4.8487.
TEST(Due, is_of_a_drift_that_is_proven_at_the_confidence) {
  EXPECT_EQ(due_after(closing_up, 2.68_mm, {0.10_mm, 0.20_mm}, 0.95)->course, Course::tight);
  EXPECT_EQ(due_after(closing_up, 2.68_mm, {0.10_mm, 0.20_mm}, 0.96)->course, Course::steady);
  EXPECT_EQ(due_after(level, 2.70_mm, {0.10_mm, 0.22_mm}, 0.5)->course, Course::steady);
}

TEST(Due, is_the_same_in_any_unit_of_distance_and_far_from_zero) {
  for (const double unit : {1.0, 0.6213711922, 1 / 50.0})
    for (const double from : {0.0, 1e6, 1e9}) {
      History moved;
      for (const Point& check : closing_up.checks())
        moved.add(from + check.x * unit, check.y / 1e6 - 2.7, 2.7);
      const auto due = due_after(moved, 2.68_mm, {0.10_mm, 0.20_mm});
      ASSERT_TRUE(due && due->distance && due->cautious);
      EXPECT_NEAR((*due->distance - from) / unit, 93'000, 0.01);
      EXPECT_NEAR((*due->cautious - from) / unit, 60244.1652, 0.01);
    }
}

// Simulated: of valves that do not drift, one in twenty is called tight or loose at 95 %.
TEST(Due, calls_one_steady_valve_in_twenty_something_else) {
  std::mt19937 random(2026);
  std::normal_distribution<double> noise(0, 0.005);
  constexpr int rounds = 20'000;
  int tight = 0;
  int loose = 0;
  for (int round = 0; round < rounds; ++round) {
    History history;
    for (int i = 0; i < 7; ++i) history.add(12e3 * i, 0.2 + noise(random), 2.7);
    const auto due = due_after(history, 2.72_mm, {0.10_mm, 0.24_mm});
    if (due->course == Course::tight) ++tight;
    if (due->course == Course::loose) ++loose;
  }
  const double spread = 5 * std::sqrt(rounds * 0.025 * 0.975);
  EXPECT_NEAR(tight, rounds / 40, spread);
  EXPECT_NEAR(loose, rounds / 40, spread);
}

TEST(Due, needs_three_checks_at_two_distances) {
  const Limits limits{0.10_mm, 0.20_mm};
  EXPECT_FALSE(due_after({}, 2.7_mm, limits));
  EXPECT_FALSE(due_after(history_of({0, 12e3}, {2.9, 2.89}), 2.7_mm, limits));
  EXPECT_FALSE(due_after(history_of({7, 7, 7}, {2.9, 2.89, 2.88}), 2.7_mm, limits));
}

TEST(Due, refuses_what_cannot_be) {
  const Limits limits{0.10_mm, 0.20_mm};
  EXPECT_THROW(due_after(closing_up, Length(), limits), BadInput);
  EXPECT_THROW(due_after(closing_up, 2.7_mm, {0.20_mm, 0.10_mm}), BadInput);
  for (const double confidence :
       {-1.0, 0.0, 0.49, 1.0, 95.0, std::numeric_limits<double>::quiet_NaN(),
        std::numeric_limits<double>::infinity()})
    EXPECT_THROW(due_after(closing_up, 2.7_mm, limits, confidence), BadInput) << confidence;
  EXPECT_TRUE(due_after(closing_up, 2.7_mm, limits, 0.5));
  EXPECT_TRUE(due_after(closing_up, 2.7_mm, limits, std::nextafter(1.0, 0.0)));
  // Before there are checks enough, too.
  EXPECT_THROW(due_after({}, Length(), limits), BadInput);
}

}  // namespace
}  // namespace shimwright
