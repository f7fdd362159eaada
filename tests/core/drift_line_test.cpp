// SPDX-License-Identifier: MPL-2.0
//
// The least squares line against published lines, and against itself far from the origin.
#include "core/drift/line.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <random>
#include <string>
#include <vector>

#include "core/drift/sum.hpp"
#include "nist_data.hpp"
#include "points.hpp"

namespace shimwright {
namespace {

constexpr double digits_wanted = 9;

std::vector<Point> points_from(const NistData& data) {
  std::vector<Point> points;
  for (const auto& row : data.rows) points.push_back({row.at(1), row.at(0)});
  return points;
}

double intercept_error(const Line& line) {
  return line.residual_sd *
         std::sqrt(1 / static_cast<double>(line.n) + line.mean_x * line.mean_x / line.sxx);
}

// The digits are printed in the report of the test, as properties.
void expect_digits(const std::string& what, double value, double certified) {
  const double digits = digits_right(value, certified);
  ::testing::Test::RecordProperty(what, std::to_string(digits));
  EXPECT_GE(digits, digits_wanted) << what << ": " << value << ", certified " << certified;
}

TEST(DriftLine, has_nine_digits_of_nist_norris) {
  const NistData data = nist_data("Norris");
  ASSERT_EQ(data.rows.size(), 36U);
  const auto line = fit_line(points_from(data));
  ASSERT_TRUE(line);
  EXPECT_EQ(line->n, 36U);
  expect_digits("intercept", line->intercept(), data.certified.at(0).estimate);
  expect_digits("intercept_error", intercept_error(*line), data.certified[0].standard_deviation);
  expect_digits("slope", line->slope, data.certified.at(1).estimate);
  expect_digits("slope_error", line->slope_error, data.certified[1].standard_deviation);
  expect_digits("residual_sd", line->residual_sd, data.residual_sd);
  expect_digits("r2", line->r2.value(), data.r2);
}

// NoInt1 has no intercept. With each point mirrored in the origin the means are 0, and the line
// through all is that line; squares double while n - 2 is twice its n - 1.
TEST(DriftLine, through_mirrored_points_has_nine_digits_of_nist_noint1) {
  const NistData data = nist_data("NoInt1");
  ASSERT_EQ(data.rows.size(), 11U);
  auto points = points_from(data);
  for (const Point& point : points_from(data)) points.push_back({-point.x, -point.y});
  const auto line = fit_line(points);
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->intercept(), 0, 1e-12);
  expect_digits("slope", line->slope, data.certified.at(0).estimate);
  expect_digits("slope_error", line->slope_error * std::sqrt(2.0),
                data.certified[0].standard_deviation);
  expect_digits("residual_sd", line->residual_sd, data.residual_sd);
  expect_digits("r2", line->r2.value(), data.r2);
}

using NistColumn = std::vector<double>;

// What of y the line on x leaves.
NistColumn residuals(const NistColumn& y, const NistColumn& x) {
  const Line line = fit_line(points_of(x, y)).value();
  NistColumn left;
  for (std::size_t i = 0; i < y.size(); ++i) left.push_back(y[i] - line.at(x[i]));
  return left;
}

struct Partial {
  Line line;          // of what the others leave of y on what they leave of the one
  double factor = 1;  // its n - 2 over the n - p that the whole model has, rooted
};

// A coefficient of a model with several predictors is the slope of a straight line: of what the
// others leave of y on what they leave of its own (R. Frisch & F. V. Waugh, Econometrica 1, 1933).
// Each column is swept out of all that follow it; `last` is the coefficient's.
Partial partial_line(NistColumn y, std::vector<NistColumn> predictors, std::size_t last) {
  std::swap(predictors.at(last), predictors.back());
  const auto n = static_cast<double>(y.size());
  const auto parameters = static_cast<double>(predictors.size()) + 1;
  for (std::size_t i = 0; i + 1 < predictors.size(); ++i) {
    for (std::size_t j = i + 1; j < predictors.size(); ++j)
      predictors[j] = residuals(predictors[j], predictors[i]);
    y = residuals(y, predictors[i]);
  }
  return {fit_line(points_of(predictors.back(), y)).value(), std::sqrt((n - 2) / (n - parameters))};
}

void expect_model(const NistData& data, const NistColumn& y,
                  const std::vector<NistColumn>& predictors) {
  const auto mean = [](const NistColumn& column) {
    return std::accumulate(column.begin(), column.end(), 0.0) / static_cast<double>(column.size());
  };
  double intercept = mean(y);
  for (std::size_t i = 0; i < predictors.size(); ++i) {
    const auto [line, factor] = partial_line(y, predictors, i);
    const std::string name = "b" + std::to_string(i + 1);
    expect_digits(name, line.slope, data.certified.at(i + 1).estimate);
    expect_digits(name + "_error", line.slope_error * factor,
                  data.certified[i + 1].standard_deviation);
    expect_digits(name + "_residual_sd", line.residual_sd * factor, data.residual_sd);
    intercept -= line.slope * mean(predictors[i]);
  }
  expect_digits("b0", intercept, data.certified.at(0).estimate);
}

NistColumn column_of(const NistData& data, std::size_t index) {
  NistColumn column;
  for (const auto& row : data.rows) column.push_back(row.at(index));
  return column;
}

// Pontius is a parabola: two predictors, x and x^2.
TEST(DriftLine, of_what_other_predictors_leave_has_nine_digits_of_nist_pontius) {
  const NistData data = nist_data("Pontius");
  ASSERT_EQ(data.rows.size(), 40U);
  const NistColumn x = column_of(data, 1);
  NistColumn squares;
  for (const double value : x) squares.push_back(value * value);
  expect_model(data, column_of(data, 0), {x, squares});
}

// Longley has six predictors, each almost a combination of the others.
TEST(DriftLine, of_what_other_predictors_leave_has_nine_digits_of_nist_longley) {
  const NistData data = nist_data("Longley");
  ASSERT_EQ(data.rows.size(), 16U);
  std::vector<NistColumn> predictors;
  for (std::size_t i = 1; i <= 6; ++i) predictors.push_back(column_of(data, i));
  expect_model(data, column_of(data, 0), predictors);
}

// JCGM 100:2008, H.3: calibration of a thermometer; the long figures from the documentation of GTC.
TEST(DriftLine, is_that_of_gum_h3) {
  NistColumn x{21.521, 22.012, 22.512, 23.003, 23.507, 23.999,
               24.513, 25.002, 25.503, 26.010, 26.511};
  for (double& t : x) t -= 20;
  const auto line = fit_line(
      points_of(x, {-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->intercept(), -0.171203790131350, 1e-14);
  EXPECT_NEAR(line->slope, 0.0021826977398873, 1e-15);
  EXPECT_NEAR(line->slope_error, 0.000667938773228, 1e-14);
  EXPECT_NEAR(line->residual_sd * line->residual_sd * 9, 1.10096583e-4, 5e-13);
  EXPECT_NEAR(line->residual_sd, 0.0035, 5e-5);       // as GUM prints it
  EXPECT_NEAR(intercept_error(*line), 0.0029, 5e-5);  // as GUM prints it
}

// Bevington, Data Reduction and Error Analysis, table 6.1; figures by R, from the tests of GTC.
TEST(DriftLine, is_that_of_bevington) {
  const auto line = fit_line(points_of({4, 8, 12.5, 16, 20, 25, 31, 36, 40, 40},
                                       {3.7, 7.8, 12.1, 15.6, 19.8, 24.5, 30.7, 35.5, 39.4, 39.5}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->intercept(), -.222142, 5e-7);
  EXPECT_NEAR(intercept_error(*line), .06962967, 5e-9);
  EXPECT_NEAR(line->slope, .992780, 5e-7);
  EXPECT_NEAR(line->slope_error, .002636608, 5e-10);
}

// Figures by R (lm), from the tests of GTC.
TEST(DriftLine, is_that_of_walpole_and_myers) {
  const auto line =
      fit_line(points_of({3,  7,  11, 15, 18, 27, 29, 30, 30, 31, 31, 32, 33, 33, 34, 36, 36,
                          36, 37, 38, 39, 39, 39, 40, 41, 42, 42, 43, 44, 45, 46, 47, 50},
                         {5,  11, 21, 16, 16, 28, 27, 25, 35, 30, 40, 32, 34, 32, 34, 37, 38,
                          34, 36, 38, 37, 36, 45, 39, 41, 40, 44, 37, 44, 46, 46, 49, 51}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->intercept(), 3.82963, 5e-6);
  EXPECT_NEAR(intercept_error(*line), 1.768447, 5e-7);
  EXPECT_NEAR(line->slope, .90364, 5e-6);
  EXPECT_NEAR(line->slope_error, .05011898, 1e-8);  // its last digit is one too high
  EXPECT_NEAR(line->at(20), 21.9025, 5e-5);
}

// Distances from a thousand million on, a thousand apart, whole numbers all; heights that differ by
// parts of a million. By hand: slope -0.5, residuals 1, -1, -1, 1 about the line, Sxx 5.
TEST(DriftLine, is_as_exact_a_thousand_million_away) {
  for (const double from : {0.0, 1e9, -1e9, 1e11}) {
    std::vector<Point> points;
    const double heights[] = {1, -1.5, -2, -0.5};
    for (int i = 0; i < 4; ++i) points.push_back({from + 1000 * i, 2.5e6 + heights[i]});
    const auto line = fit_line(points);
    ASSERT_TRUE(line);
    EXPECT_DOUBLE_EQ(line->slope, -0.0005) << from;
    EXPECT_DOUBLE_EQ(line->residual_sd, std::sqrt(2.0)) << from;
    EXPECT_DOUBLE_EQ(line->slope_error, std::sqrt(2.0 / 5) / 1000) << from;
    EXPECT_DOUBLE_EQ(line->r2.value(), 1 - 4 / 5.25) << from;
    EXPECT_DOUBLE_EQ(line->at(from + 1500), 2.5e6 - 0.75) << from;
  }
}

// A hundred thousand readings that rise by a millionth each, on 2.5 million: rounding of a plain
// sum would show in the sixth digit.
TEST(DriftLine, loses_no_digit_over_a_hundred_thousand_points) {
  std::vector<Point> points;
  for (int i = 0; i < 100'000; ++i)
    points.push_back({1e9 + i, 2.5e6 + (i % 2 == 0 ? 1 : -1) + i / 1024.0});
  const auto line = fit_line(points);
  ASSERT_TRUE(line);
  // By hand: 1/1024, and the slope of +1, -1, ... which is -6 / (n^2 - 1).
  EXPECT_NEAR(line->slope, 1 / 1024.0 - 6 / (1e10 - 1), 1e-18);
  EXPECT_NEAR(line->mean_x, 1e9 + 49'999.5, 1e-6);
}

// Whole numbers below 10 000, so that n Sxy and n Sxx are known exactly: the slope is right to the
// last digits, which sums that drop what is small would not be.
TEST(DriftLine, is_exact_over_a_hundred_thousand_whole_numbers) {
  std::mt19937 random(36);
  std::uniform_int_distribution<std::int64_t> below(0, 9999);
  std::vector<Point> points;
  std::int64_t x_sum = 0;
  std::int64_t y_sum = 0;
  std::int64_t xx = 0;
  std::int64_t xy = 0;
  constexpr std::int64_t n = 100'000;
  for (std::int64_t i = 0; i < n; ++i) {
    const std::int64_t x = below(random);
    const std::int64_t y = x / 3 + below(random);
    points.push_back({static_cast<double>(x), static_cast<double>(y)});
    x_sum += x;
    y_sum += y;
    xx += x * x;
    xy += x * y;
  }
  const auto line = fit_line(points);
  ASSERT_TRUE(line);
  const auto n_sxy = static_cast<double>(n * xy - x_sum * y_sum);
  const auto n_sxx = static_cast<double>(n * xx - x_sum * x_sum);
  EXPECT_DOUBLE_EQ(line->slope, n_sxy / n_sxx);
  EXPECT_DOUBLE_EQ(line->sxx, n_sxx / n);
}

// By hand: the mean of 0, 1, 0 is no binary fraction, and less so beside 1e15.
TEST(DriftLine, keeps_the_scatter_beside_heights_without_end) {
  const auto line = fit_line(points_of({0, 1, 2}, {1e15, 1e15 + 1, 1e15}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->slope, 0, 1e-15);
  EXPECT_DOUBLE_EQ(line->residual_sd, std::sqrt(2.0 / 3));
}

// Neumaier's own example.
TEST(Sum, keeps_what_is_small_beside_what_is_large) {
  Sum sum;
  for (const double term : {1.0, 1e100, 1.0, -1e100}) sum.add(term);
  EXPECT_EQ(sum.value(), 2);
}

TEST(DriftLine, does_not_depend_on_the_order_of_the_points) {
  std::mt19937 random(15);
  std::normal_distribution<double> noise(0, 3);
  std::vector<Point> points;
  for (int i = 0; i < 50; ++i) points.push_back({1e6 + 700.5 * i, 2.9e6 - 2 * i + noise(random)});
  const auto line = fit_line(points);
  std::shuffle(points.begin(), points.end(), random);
  const auto shuffled = fit_line(points);
  EXPECT_NEAR(shuffled->slope / line->slope, 1, 1e-12);
  EXPECT_NEAR(shuffled->slope_error / line->slope_error, 1, 1e-12);
  EXPECT_NEAR(shuffled->intercept() / line->intercept(), 1, 1e-12);
}

TEST(DriftLine, needs_three_points_at_two_places) {
  EXPECT_FALSE(fit_line({}));
  EXPECT_FALSE(fit_line(points_of({1, 2}, {1, 2})));
  EXPECT_FALSE(fit_line(points_of({7, 7, 7}, {1, 2, 3})));
  EXPECT_FALSE(fit_line(points_of({1e9, 1e9, 1e9, 1e9}, {1, 2, 3, 4})));
  EXPECT_TRUE(fit_line(points_of({7, 7, 8}, {1, 2, 3})));
}

// By hand: the first two at one place count as their mean, twice.
TEST(DriftLine, takes_two_readings_at_one_place_as_two) {
  const auto line = fit_line(points_of({0, 0, 10}, {1, 3, 12}));
  ASSERT_TRUE(line);
  EXPECT_DOUBLE_EQ(line->slope, 1);
  EXPECT_DOUBLE_EQ(line->residual_sd, std::sqrt(2.0));
}

// 2.95 is no whole binary fraction: its mean over some counts is not 2.95 again.
TEST(DriftLine, through_equal_heights_is_exactly_level) {
  for (int n = 3; n < 60; ++n) {
    std::vector<Point> points;
    for (int i = 0; i < n; ++i) points.push_back({0.1 * i, 2.95});
    const auto line = fit_line(points);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->slope, 0);
    EXPECT_EQ(line->slope_error, 0);
    EXPECT_EQ(line->intercept(), 2.95);
    EXPECT_FALSE(line->r2);
  }
}

}  // namespace
}  // namespace shimwright
