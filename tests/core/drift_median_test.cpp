// SPDX-License-Identifier: MPL-2.0
//
// The line through medians on published examples and hand-made ones, and its two ways to rank
// slopes against each other.
#include "core/drift/median_line.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <vector>

#include "core/drift/pair_slopes.hpp"
#include "core/values/bad_input.hpp"
#include "points.hpp"

namespace shimwright {
namespace {

// P. K. Sen 1968, example: slope 4, 93 % interval from 3.71 to 4.38, that is 26/7 and 35/8; the
// intercept by his text. z for 93 % by the normal table.
TEST(MedianLine, is_that_of_sen) {
  const auto points = points_of({1, 2, 3, 4, 10, 12, 18}, {9, 15, 19, 20, 45, 55, 78});
  const auto line = fit_median_line(points);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->n, 7U);
  EXPECT_EQ(line->slope, 4);
  EXPECT_EQ(line->intercept, 4);
  const auto interval = slope_interval(points, 1.8119);
  ASSERT_TRUE(interval);
  EXPECT_DOUBLE_EQ(interval->low, 26.0 / 7);
  EXPECT_DOUBLE_EQ(interval->high, 35.0 / 8);
  // By hand, residuals from the line 4 + 4 t: 1, 3, 3, 0, 1, 3, 2; their median is 2, the
  // deviations from it 1, 1, 1, 2, 1, 1, 0.
  EXPECT_DOUBLE_EQ(line->residual_sd, 1.4826);
  // By hand: sigma is the root of 7*6*19/18, so one error apart are ranks 7 and 15 of 21.
  EXPECT_NEAR(line->slope_error, (29.0 / 7 - 59.0 / 15) / 2, 1e-15);
}

// The example of statpsych's ci.theil (after Hollander & Wolfe 1999): two groups of equal x.
TEST(MedianLine, is_that_of_hollander_and_wolfe_s_method) {
  const auto points = points_of({67, 28, 30, 28, 52, 40, 25, 37, 44, 10, 14, 20, 28, 40, 51},
                                {21, 4, 9, 12, 35, 18, 10, 22, 24, 1, 6, 8, 13, 16, 19});
  EXPECT_EQ(PairSlopes(points).count(), 101);
  const auto line = fit_median_line(points);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 0.5);
  const auto interval = slope_interval(points, 1.959964);
  ASSERT_TRUE(interval);
  EXPECT_NEAR(interval->low, 0.3243243, 5e-8);
  EXPECT_EQ(interval->high, 0.75);
  EXPECT_NEAR((interval->high - interval->low) / (2 * 1.959964), .1085927, 5e-8);
}

// By hand, ten readings at two distances: 25 slopes, sigma^2 = (10*9*25 - 2*5*4*15) / 18 = 91.67,
// so ranks round((25 - 9.57) / 2) = 8 and 18. Were the distances all different, sigma would
// be 11.18, and the ranks 7 and 19.
TEST(MedianLine, has_a_narrower_interval_where_distances_are_equal) {
  std::vector<Point> points;
  for (int i = 0; i < 5; ++i) points.push_back({0, i / 100.0});
  for (int i = 0; i < 5; ++i) points.push_back({1, static_cast<double>(i)});
  const auto interval = slope_interval(points, 1);
  std::vector<double> all;
  for (int j = 0; j < 5; ++j)
    for (int i = 0; i < 5; ++i) all.push_back(j - i / 100.0);
  std::ranges::sort(all);
  EXPECT_EQ(interval->low, all[7]);
  EXPECT_EQ(interval->high, all[17]);
}

// By hand: the six slopes are -1/4, -1/6, -5/36 and three times -1/12.
TEST(MedianLine, of_an_even_count_is_between_the_middle_two) {
  const auto line = fit_median_line(points_of({0, 12, 24, 36}, {290, 289, 288, 285}));
  ASSERT_TRUE(line);
  EXPECT_DOUBLE_EQ(line->slope, (-5.0 / 36 - 1.0 / 12) / 2);
  EXPECT_DOUBLE_EQ(line->intercept, 288.5 + 18 * (5.0 / 36 + 1.0 / 12) / 2);
}

TEST(MedianLine, is_hardly_moved_by_a_slip) {
  std::vector<Point> points;
  for (int i = 0; i < 9; ++i) points.push_back({1000.0 * i, 2900.0 - i});
  EXPECT_DOUBLE_EQ(fit_median_line(points)->slope, -0.001);
  points[4].y = 2500;
  EXPECT_DOUBLE_EQ(fit_median_line(points)->slope, -0.001);
  EXPECT_DOUBLE_EQ(fit_median_line(points)->intercept, 2899);  // 2895 is the middle height
}

TEST(MedianLine, tells_how_much_of_the_scatter_it_explains) {
  // By hand: slope 1, intercept 0; residuals 0, 0, 0, 0, 5 of heights whose squares from
  // their mean add up to 50.
  const auto line = fit_median_line(points_of({0, 1, 2, 3, 4}, {0, 1, 2, 3, 9}));
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, 1);
  EXPECT_EQ(line->intercept, 0);
  EXPECT_DOUBLE_EQ(line->r2.value(), 1 - 25.0 / 50);
  EXPECT_FALSE(fit_median_line(points_of({0, 1, 2}, {2.95, 2.95, 2.95}))->r2);
}

TEST(MedianLine, needs_three_points_at_two_places) {
  EXPECT_FALSE(fit_median_line({}));
  EXPECT_FALSE(fit_median_line(points_of({1, 2}, {1, 2})));
  EXPECT_FALSE(fit_median_line(points_of({7, 7, 7}, {1, 2, 3})));
  EXPECT_TRUE(fit_median_line(points_of({7, 7, 8}, {1, 2, 3})));
}

TEST(MedianLine, refuses_more_points_than_it_takes_in_reasonable_time) {
  std::vector<Point> points(longest_median_line + 1);
  try {
    fit_median_line(points);
    FAIL();
  } catch (const BadInput& refusal) {
    EXPECT_STREQ(refusal.what(),
                 "100001 checks are too many for the method median: at most 100000; the method "
                 "least takes them");
  }
}

TEST(PairSlopes, leave_out_pairs_at_one_place) {
  const auto points = points_of({3, 1, 1, 3, 2}, {1, 1, 1, 5, 4});
  EXPECT_EQ(PairSlopes(points).count(), 8);
  for (const std::size_t listed : {PairSlopes::most_listed, std::size_t{0}}) {
    PairSlopes slopes(points, listed);
    const std::vector<std::int64_t> ranks{1, 2, 3, 4, 5, 6, 7, 8};
    EXPECT_EQ(slopes.of_ranks(ranks), (std::vector<double>{-3, 0, 0, 1, 2, 2, 3, 3}));
  }
}

// Readings on a grid, as of a gauge: most slopes come many times over.
class SlopesOfBoth : public ::testing::TestWithParam<double> {};

TEST_P(SlopesOfBoth, ways_are_the_same) {
  std::mt19937 random(1968);
  for (int round = 0; round < 60; ++round) {
    const int n = std::uniform_int_distribution(3, 40)(random);
    std::uniform_int_distribution distance(0, 30);
    std::uniform_int_distribution height(-4, 4);
    const double step = round % 2 == 0 ? 5000 : 5e7;
    std::vector<Point> points;
    for (int i = 0; i < n; ++i)
      points.push_back({GetParam() + 100.1 * distance(random), 2.5e6 + step * height(random)});
    PairSlopes listed(points);
    PairSlopes counted(points, 0);
    ASSERT_EQ(listed.count(), counted.count());
    std::vector<std::int64_t> ranks(static_cast<std::size_t>(listed.count()));
    std::iota(ranks.begin(), ranks.end(), 1);
    const auto one = listed.of_ranks(ranks);
    const auto other = counted.of_ranks(ranks);
    ASSERT_EQ(one.size(), ranks.size());
    ASSERT_EQ(other.size(), ranks.size());
    for (std::size_t i = 0; i < one.size(); ++i) ASSERT_DOUBLE_EQ(one[i], other[i]) << i;
  }
}

INSTANTIATE_TEST_SUITE_P(near_and_far, SlopesOfBoth, ::testing::Values(0.0, 1e9));

// More points than are listed: known by hand, as all lie on one line but for a tenth.
TEST(PairSlopes, of_many_points_are_counted) {
  std::vector<Point> points;
  for (int i = 0; i < 3000; ++i)
    points.push_back({10.0 * i, 2.9e6 - 20.0 * i + (i % 10 == 0 ? 1e5 : 0)});
  const auto line = fit_median_line(points);
  ASSERT_TRUE(line);
  EXPECT_EQ(line->slope, -2);
  EXPECT_EQ(line->slope_error, 0);
}

}  // namespace
}  // namespace shimwright
