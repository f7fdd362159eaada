// SPDX-License-Identifier: MPL-2.0
//
// The history of a valve as entered, odd ones too, and its drift as figures to show.
#include "core/drift/drift.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

using Readings = std::vector<std::optional<double>>;

constexpr std::nullopt_t not_read = std::nullopt;

// A column of one stands for every check.
History read_history(const Readings& distance, const Readings& clearance, const Readings& shim) {
  const auto entry = [](const Readings& column, std::size_t check) {
    return column.size() == 1 ? column[0] : column.at(check);
  };
  History history;
  for (std::size_t check = 0; check < std::max({distance.size(), clearance.size(), shim.size()});
       ++check)
    history.add(entry(distance, check), entry(clearance, check), entry(shim, check));
  return history;
}

std::string refusal(const Readings& distance, const Readings& clearance, const Readings& shim) {
  try {
    read_history(distance, clearance, shim);
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "none";
}

const Readings distances{0, 12e3, 24e3, 36e3};
const Readings gaps{0.20, 0.19, 0.20, 0.17};
const Readings shims{2.70, 2.70, 2.68, 2.68};

TEST(History, follows_clearance_and_shim_together) {
  const History history = read_history(distances, gaps, shims);
  ASSERT_EQ(history.checks().size(), 4U);
  const std::array followed{2'900'000.0, 2'890'000.0, 2'880'000.0, 2'850'000.0};
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(history.checks()[i].x, distances[i]);
    EXPECT_EQ(history.checks()[i].y, followed[i]);
  }
}

TEST(History, leaves_out_a_check_with_a_blank) {
  const History history =
      read_history({0, not_read, 2, 3, 4}, {0.2, 0.2, not_read, 0.2, 0.2}, {2, 2, 2, not_read, 2});
  ASSERT_EQ(history.checks().size(), 2U);
  EXPECT_EQ(history.checks()[0].x, 0);
  EXPECT_EQ(history.checks()[1].x, 4);
}

TEST(History, of_blanks_alone_is_empty) {
  EXPECT_TRUE(History().checks().empty());
  EXPECT_TRUE(read_history({not_read, not_read}, {not_read, not_read}, {not_read, not_read})
                  .checks()
                  .empty());
}

TEST(History, keeps_checks_whose_distance_goes_backwards_or_stands_still) {
  const History history = read_history({12e3, 0, 12e3}, {0.2, 0.2, 0.2}, {2.7});
  ASSERT_EQ(history.checks().size(), 3U);
  EXPECT_EQ(history.checks()[1].x, 0);
  EXPECT_EQ(history.last_distance(), 12e3);
}

TEST(History, takes_a_gap_of_nothing_and_a_distance_below_zero) {
  EXPECT_EQ(read_history({-5}, {0}, {2.7}).checks().size(), 1U);
  EXPECT_EQ(read_history({1e11}, {-0.1}, {2.7}).checks().size(), 1U);
}

TEST(History, refuses_what_cannot_be_with_the_check_s_number) {
  const double none = std::numeric_limits<double>::quiet_NaN();
  const double endless = std::numeric_limits<double>::infinity();
  EXPECT_EQ(refusal({0, none}, {0.2, 0.2}, {2.7}), "check 2: a distance is not a finite number");
  EXPECT_EQ(refusal({0, 1}, {0.2, endless}, {2.7}), "check 2: a length is not a finite number");
  EXPECT_EQ(refusal({2e11, 1}, {0.2, 0.2}, {2.7}),
            "check 1: a distance of 200000000000 is beyond 100000000000");
  EXPECT_EQ(refusal({-2e11}, {0.2}, {2.7}),
            "check 1: a distance of -200000000000 is beyond 100000000000");
  EXPECT_EQ(refusal({0, 1}, {0.2, 0.2}, {2.7, -2.7}),
            "check 2: a shim of -2.70 mm cannot be: a thickness is above zero");
  EXPECT_NE(refusal({0, 1}, {150, 0.2}, {2.7}).find("check 1: a length of 150 mm"),
            std::string::npos);
  EXPECT_EQ(refusal({0, not_read, 2}, {0.2, 0.2, 0.2}, {2.7, 2.7, -1}),
            "check 3: a shim of -1.00 mm cannot be: a thickness is above zero");
}

// By hand in fractions: the followed lengths are 2.90, 2.89, 2.88 and 2.85.
TEST(Drift, is_told_in_mm_by_a_thousand) {
  const auto drift = drift_of(read_history(distances, gaps, shims), Method::least);
  ASSERT_TRUE(drift);
  EXPECT_DOUBLE_EQ(drift->rate, -0.004 / 3);
  EXPECT_DOUBLE_EQ(drift->rate_error, .0002886751345948129);
  EXPECT_DOUBLE_EQ(drift->intercept, 2.904);
  EXPECT_DOUBLE_EQ(drift->scatter, .007745966692414834);
  EXPECT_EQ(drift->checks, 4U);
  EXPECT_DOUBLE_EQ(drift->r2.value(), 1 - 3.0 / 35);
}

TEST(Drift, by_medians_is_told_the_same_way) {
  const auto drift = drift_of(
      read_history({0, 1e4, 2e4, 3e4, 4e4}, {0.20, 0.19, 0.08, 0.17, 0.16}, {2.7}), Method::median);
  ASSERT_TRUE(drift);
  EXPECT_EQ(drift->rate, -0.001);
  EXPECT_EQ(drift->checks, 5U);
  // By hand: heights 2.90, 2.89, 2.78, 2.87, 2.86; medians 2.87 and 20 000, so 2.89 at 0; residuals
  // 0.01, 0.01, -0.09, 0.01, 0.01 mm, whose deviations from their median are 0 but for one; ten
  // slopes, of which the third is -0.001 and so is the eighth.
  EXPECT_DOUBLE_EQ(drift->intercept, 2.89);
  EXPECT_EQ(drift->scatter, 0);
  EXPECT_EQ(drift->rate_error, 0);
  EXPECT_NEAR(drift->r2.value(), 1 - 0.0085 / 0.0090, 1e-12);
}

// Sen's example (drift_median_test.cpp) as hundredths of a millimetre over a shim of 2.
TEST(Drift, by_medians_has_each_figure_in_its_place) {
  const auto drift =
      drift_of(read_history({1, 2, 3, 4, 10, 12, 18}, {.09, .15, .19, .20, .45, .55, .78}, {2.0}),
               Method::median);
  ASSERT_TRUE(drift);
  EXPECT_DOUBLE_EQ(drift->rate, 40);
  EXPECT_NEAR(drift->rate_error, 10 * (29.0 / 7 - 59.0 / 15) / 2, 1e-13);
  EXPECT_DOUBLE_EQ(drift->intercept, 2.04);
  EXPECT_DOUBLE_EQ(drift->scatter, 0.014826);
  EXPECT_EQ(drift->checks, 7U);
  EXPECT_GT(drift->r2.value(), 0.98);
}

TEST(Drift, does_not_see_a_change_of_shim) {
  const Readings other_gaps{0.20, 0.24, 0.08, 0.17};
  const Readings other_shims{2.70, 2.65, 2.80, 2.68};
  for (const Method method : {Method::least, Method::median}) {
    const auto one = drift_of(read_history(distances, gaps, shims), method);
    const auto other = drift_of(read_history(distances, other_gaps, other_shims), method);
    EXPECT_EQ(one->rate, other->rate);
    EXPECT_EQ(one->intercept, other->intercept);
    EXPECT_EQ(one->scatter, other->scatter);
  }
}

TEST(Drift, needs_three_checks_at_two_distances) {
  for (const Method method : {Method::least, Method::median}) {
    EXPECT_FALSE(drift_of({}, method));
    EXPECT_FALSE(drift_of(read_history({0, 1, not_read}, {0.2, 0.2, 0.2}, {2.7}), method));
    EXPECT_FALSE(drift_of(read_history({5}, {0.2, 0.1, 0.2}, {2.7}), method));
    EXPECT_TRUE(drift_of(read_history({5, 5, 6}, {0.2, 0.1, 0.2}, {2.7}), method));
  }
}

TEST(Drift, of_a_valve_that_never_moves_is_none) {
  const History still = read_history({0, 12e3, 24e3}, {0.15}, {2.8});
  for (const Method method : {Method::least, Method::median}) {
    const auto drift = drift_of(still, method);
    ASSERT_TRUE(drift);
    EXPECT_EQ(drift->rate, 0);
    EXPECT_EQ(drift->rate_error, 0);
    EXPECT_EQ(drift->intercept, 2.95);
    EXPECT_EQ(drift->scatter, 0);
    EXPECT_FALSE(drift->r2);
  }
}

TEST(Method, is_known_by_its_word) {
  EXPECT_EQ(method_named(" Least "), Method::least);
  EXPECT_EQ(method_named("MEDIAN"), Method::median);
  EXPECT_THROW(method_named("mean"), BadInput);
}

}  // namespace
}  // namespace shimwright
