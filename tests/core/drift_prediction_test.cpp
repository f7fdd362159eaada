// SPDX-License-Identifier: MPL-2.0
//
// Bounds of a line and where they meet a level, on published examples and against a search.
#include "core/drift/prediction.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "core/drift/student_t.hpp"
#include "points.hpp"

namespace shimwright {
namespace {

// NIST TN 1297, table B.1, two-sided: 90, 95 and 99 %.
TEST(StudentT, is_that_of_nist_s_table) {
  struct Row {
    double degrees, of_90, of_95, of_99;
  };
  for (const Row& row : {Row{1, 6.31, 12.71, 63.66},
                         {2, 2.92, 4.30, 9.92},
                         {5, 2.02, 2.57, 4.03},
                         {10, 1.81, 2.23, 3.17},
                         {16, 1.75, 2.12, 2.92},
                         {20, 1.72, 2.09, 2.85},
                         {50, 1.68, 2.01, 2.68}}) {
    EXPECT_NEAR(student_t(0.05, row.degrees), row.of_90, 0.005);
    EXPECT_NEAR(student_t(0.025, row.degrees), row.of_95, 0.005);
    EXPECT_NEAR(student_t(0.005, row.degrees), row.of_99, 0.005);
  }
  EXPECT_NEAR(student_t(0.025, 5), 2.570581836, 5e-10);   // GTC's tests of reporting
  EXPECT_NEAR(student_t(0.025, 50), 2.008559112, 5e-10);  // the same
  EXPECT_EQ(student_t(0.5, 7), 0);
}

// JCGM 100:2008, H.3.4: the correction at 30 degrees, its uncertainty as printed; of one more
// reading recomputed (GUM does not print it).
TEST(Prediction, is_that_of_gum_h3) {
  const auto line = fit_line(
      points_of({1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.010, 6.511},
                {-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160}));
  ASSERT_TRUE(line);
  EXPECT_NEAR(line->at(10), -0.1494, 5e-5);
  EXPECT_NEAR(distance_from_line(*line, {Bound::Side::below, 1, Scatter::of_the_line}, 10), 0.0041,
              5e-5);
  EXPECT_NEAR(distance_from_line(*line, {Bound::Side::above, 1}, 10), .0054186, 5e-8);
  EXPECT_EQ(line->degrees(), 9);
}

// Walpole & Myers: uncertainty by R, from the tests of GTC; intervals recomputed, as the book's t
// is wrong.
TEST(Prediction, is_that_of_walpole_and_myers) {
  const auto line =
      fit_line(points_of({3,  7,  11, 15, 18, 27, 29, 30, 30, 31, 31, 32, 33, 33, 34, 36, 36,
                          36, 37, 38, 39, 39, 39, 40, 41, 42, 42, 43, 44, 45, 46, 47, 50},
                         {5,  11, 21, 16, 16, 28, 27, 25, 35, 30, 40, 32, 34, 32, 34, 37, 38,
                          34, 36, 38, 37, 36, 45, 39, 41, 40, 44, 37, 44, 46, 46, 49, 51}));
  ASSERT_TRUE(line);
  const double t = student_t(0.025, line->degrees());
  EXPECT_NEAR(distance_from_line(*line, {Bound::Side::below, 1, Scatter::of_the_line}, 20), .877939,
              5e-7);
  EXPECT_NEAR(bound_at(*line, {Bound::Side::below, t, Scatter::of_the_line}, 20), 20.1119, 5e-5);
  EXPECT_NEAR(bound_at(*line, {Bound::Side::above, t, Scatter::of_the_line}, 20), 23.6931, 5e-5);
  EXPECT_NEAR(bound_at(*line, {Bound::Side::below, t}, 20), 15.0768, 5e-5);
  EXPECT_NEAR(bound_at(*line, {Bound::Side::above, t}, 20), 28.7282, 5e-5);
}

struct Interval {
  double low = 0;
  double high = 0;
};

// Between which x a line that rises may meet the level: from below with its upper bound, and, seen
// from the other end, with its lower one.
Interval inverse(std::vector<Point> points, double level, double confidence, Scatter scatter) {
  const auto meeting = [&](Bound::Side side) {
    const auto line = fit_line(points);
    const double t = student_t((1 - confidence) / 2, line->degrees());
    return first_meeting(*line, {side, t, scatter}, level, -1000).value();
  };
  const double low = meeting(Bound::Side::above);
  for (Point& point : points) point.x = -point.x;
  return {low, -meeting(Bound::Side::below)};
}

// Graybill & Iyer, Regression Analysis, chapter 6; answers as in the tests of investr (R).
TEST(InversePrediction, is_that_of_graybill_and_iyer) {
  const auto thermostat = points_of({96, 98, 100, 102, 104, 106, 108, 110},
                                    {95.71, 98.16, 99.52, 102.09, 103.79, 106.18, 108.14, 110.21});
  const auto chamber = points_of(
      {0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100},
      {206.36, 225.52, 252.18, 289.33, 318.11, 349.49, 383.03, 410.70, 444.40, 469.14, 501.16});
  const auto crystal = points_of(
      {2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28},
      {.08, 1.12, 4.43, 4.98, 4.92, 7.18, 5.57, 8.4, 8.81, 10.81, 11.16, 10.12, 13.12, 15.04});
  std::vector<double> dose;
  for (int x = 0; x < 8; ++x) dose.insert(dose.end(), 4, x);
  const auto arsenic =
      points_of(dose, {.17,  .25,  .01,  .12,  1.25, .86,  1.25, 1.1,  2.01, 2.03, 2.14,
                       1.74, 3.18, 2.99, 3.23, 3.37, 3.91, 3.9,  3.61, 4.27, 4.88, 5.33,
                       4.96, 4.98, 6.09, 6.17, 6.07, 5.97, 6.67, 7.02, 7.14, 7.3});
  struct Case {
    const char* name;
    const std::vector<Point>& points;
    double level, confidence;
    Scatter scatter;
    double estimate, low, high, within;
  };
  constexpr auto reading = Scatter::of_a_reading;
  constexpr auto itself = Scatter::of_the_line;
  for (const Case& c :
       {Case{"thermostat, p. 431", thermostat, 104, .95, reading, 103.995, 103.4, 104.6, .05},
        Case{"thermostat, more digits", thermostat, 104, .95, reading, 103.99492, 103.40405,
             104.58946, 5e-6},
        Case{"thermostat, p. 431", thermostat, 100, .90, reading, 100.1, 99.63, 100.59, .05},
        Case{"chamber, p. 433", chamber, 400, .99, itself, 66.5, 65.07, 68.03, .05},
        Case{"crystal, p. 434", crystal, 5, .90, itself, 9.93, 8.65, 11.05, .005},
        Case{"crystal, more digits", crystal, 8, .95, itself, 15.8882, 14.6590, 17.1596, 5e-5},
        Case{"arsenic", arsenic, 3, .90, reading, 2.9314, 2.6035, 3.2587, 5e-5}}) {
    const auto line = fit_line(c.points);
    EXPECT_NEAR(line->mean_x + (c.level - line->mean_y) / line->slope, c.estimate, c.within)
        << c.name;
    const Interval found = inverse(c.points, c.level, c.confidence, c.scatter);
    EXPECT_NEAR(found.low, c.low, c.within) << c.name;
    EXPECT_NEAR(found.high, c.high, c.within) << c.name;
  }
}

// A line whose slope is `of_errors` times its error, falling where negative.
Line line_of(double slope, double of_errors) {
  Line line;
  line.n = 12;
  line.slope = slope;
  line.slope_error = std::abs(slope / of_errors);
  line.mean_x = 50'000;
  line.mean_y = 2'900'000;
  line.sxx = 1e9;
  line.residual_sd = line.slope_error * std::sqrt(line.sxx);
  return line;
}

// Where |slope| is t errors of itself, Fieller's g is 1 and the equation of the second degree is
// none; beyond, the bound bends back, or meets a level that the line itself never does.
TEST(Meeting, is_on_the_bound_for_any_certainty_of_the_slope) {
  std::mt19937 random(431);
  int met = 0;
  int never = 0;
  for (const double of_errors : {0.01, 0.5, 1.9, 1.999999, 2.0, 2.000001, 2.1, 5.0, 1e3, 1e9})
    for (const double slope : {-0.8, 0.8, -0.001, 1e-9})
      for (int round = 0; round < 50; ++round) {
        const Line line = line_of(slope, of_errors);
        const double from = std::uniform_real_distribution(0.0, 1e5)(random);
        const double level = line.mean_y + std::uniform_real_distribution(-1e5, 1e5)(random);
        for (const Bound::Side side : {Bound::Side::below, Bound::Side::above}) {
          const Bound bound{side, 2};
          const double sign = side == Bound::Side::below ? 1 : -1;
          const auto room = [&](double x) { return sign * (bound_at(line, bound, x) - level); };
          const auto x = first_meeting(line, bound, level, from);
          if (!x) {
            ++never;
            for (double far = from; far < 1e15; far = 2 * far + 1) ASSERT_GT(room(far), 0);
            continue;
          }
          ASSERT_GE(*x, from);
          if (*x == from) {
            ASSERT_LE(room(from), 0);
            continue;
          }
          ++met;
          ASSERT_GT(room(from), 0);
          // Within rounding of the bound there, for x as far away as it is.
          ASSERT_NEAR(room(*x), 0, 1e-8 * (1e5 + std::abs(line.slope * *x)))
              << slope << " of " << of_errors << " errors, at " << *x;
          ASSERT_GT(room(from + (*x - from) * 0.999), 0);
          // From just before it, it is no earlier than that.
          const double before = std::nextafter(*x, from);
          ASSERT_GE(first_meeting(line, bound, level, before).value(), before);
        }
      }
  EXPECT_GT(met, 300);
  EXPECT_GT(never, 300);
}

// The equation in long double, by the form whose terms have one sign: a level below the line that
// the bound of a slope which is barely uncertain meets far out.
TEST(Meeting, keeps_its_digits_where_the_slope_is_barely_uncertain) {
  for (const double slope : {0.8, -0.8})
    for (const double of_errors : {1.9999, 1.99999999, 2.00000001, 2.0001}) {
      const Line line = line_of(slope, of_errors);
      const double level = line.mean_y - 60'000;
      const auto x = first_meeting(line, {Bound::Side::below, 2}, level, line.mean_x);
      if (slope > 0 && of_errors > 2) {
        EXPECT_FALSE(x);
        continue;
      }
      const long double a = 60'000;
      const long double b = slope;
      const long double q = 2 * static_cast<long double>(line.residual_sd) /
                            std::sqrt(static_cast<long double>(line.sxx));
      const long double k_sxx = (1 + 1.0L / 12) * line.sxx;
      const long double opening = (b - q) * (b + q);
      const long double w = q * std::sqrt(a * a + k_sxx * opening);
      const long double d =
          slope > 0 ? -(a * b + w) / opening : (a * a - q * q * k_sxx) / (w - a * b);
      EXPECT_NEAR((x.value() - line.mean_x) / static_cast<double>(d), 1,
                  1e-15 / std::abs(of_errors - 2) + 1e-13)
          << slope << " of " << of_errors;
    }
}

// Where a bound only just touches the level, rounding decides whether it does; the answer is never
// before where it was asked from, nor far from there.
TEST(Meeting, at_a_mere_touch_is_there_or_nowhere) {
  std::mt19937 random(1954);
  int there = 0;
  for (int round = 0; round < 2000; ++round) {
    const Line line = line_of(std::uniform_real_distribution(-1.0, 1.0)(random), 1.5);
    const double q = 2 * line.slope_error;
    const double opening = (q - line.slope) * (q + line.slope);
    const double k_sxx = (1 + 1.0 / 12) * line.sxx;
    const double a = std::sqrt(k_sxx * opening) * (1 + 1e-15 * (round % 20 - 3));
    const double from = line.mean_x + a * line.slope / opening * (1 + 1e-9 * (round % 3 - 1));
    const auto x = first_meeting(line, {Bound::Side::below, 2}, line.mean_y - a, from);
    ASSERT_TRUE(x);  // it widens beyond
    ASSERT_GE(*x, from);
    ASSERT_NEAR(*x, from, 0.5);
    if (*x == from) ++there;
  }
  EXPECT_GT(there, 0);
}

// By hand: the line falls from 30 by 1 at each x, and meets 10 at 20.
TEST(Meeting, of_the_line_itself_is_where_it_crosses) {
  const auto line = fit_line(points_of({0, 1, 2, 3}, {30, 29, 28, 27}));
  ASSERT_TRUE(line);
  EXPECT_DOUBLE_EQ(first_meeting(*line, {Bound::Side::below, 0}, 10, 3).value(), 20);
  EXPECT_DOUBLE_EQ(first_meeting(*line, {Bound::Side::below, 2.92}, 10, 3).value(),
                   20);  // no scatter
  EXPECT_FALSE(first_meeting(*line, {Bound::Side::above, 0}, 40, 3));
  EXPECT_EQ(first_meeting(*line, {Bound::Side::below, 0}, 28, 3), 3);  // it was there at 2
  EXPECT_EQ(first_meeting(*line, {Bound::Side::below, 0}, 27, 3), 3);
}

// One reading in twenty falls below the bound of 95 %, wherever it is taken: simulated.
TEST(Prediction, leaves_one_reading_in_twenty_beyond_its_bound) {
  std::mt19937 random(95);
  std::normal_distribution<double> noise(0, 5000);
  constexpr int rounds = 20'000;
  int beyond = 0;
  for (int round = 0; round < rounds; ++round) {
    std::vector<Point> points;
    for (int i = 0; i < 6; ++i) points.push_back({12e3 * i, 2.9e6 - 9e3 * i + noise(random)});
    const auto line = fit_line(points);
    const Bound bound{Bound::Side::below, student_t(0.05, line->degrees())};
    if (2.9e6 - 9e3 * 10 + noise(random) < bound_at(*line, bound, 12e4)) ++beyond;
  }
  EXPECT_NEAR(beyond, rounds / 20, 5 * std::sqrt(rounds * 0.05 * 0.95));
}

}  // namespace
}  // namespace shimwright
