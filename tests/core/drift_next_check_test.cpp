// SPDX-License-Identifier: MPL-2.0
#include "core/drift/next_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace shimwright {
namespace {

TEST(NextCheck, is_a_distance_that_a_person_would_write) {
  EXPECT_EQ(rounded_down(60'244, 36'000), 60'000);
  EXPECT_EQ(rounded_down(60'244, 60'000), 60'240);  // little way to go, so a finer step
  EXPECT_EQ(rounded_down(118'770, 98'000), 118'000);
  EXPECT_EQ(rounded_down(412.7, 300), 410);
  EXPECT_EQ(rounded_down(1.37, 0), 1.3);
  EXPECT_EQ(rounded_down(-244, -1'000), -250);
}

TEST(NextCheck, is_never_before_the_last_one_and_gives_away_a_tenth_of_the_way_at_most) {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> power(-1, 6);
  for (int i = 0; i < 2000; ++i) {
    const double from = std::pow(10, power(random));
    const double to = from + std::pow(10, power(random));
    const double at = rounded_down(to, from);
    ASSERT_GE(at, from);
    ASSERT_LE(at, to * (1 + 1e-12));
    ASSERT_GE(at - from, 0.9 * (to - from) - 1e-9 * to) << from << " " << to;
  }
  EXPECT_EQ(rounded_down(36'000, 36'000), 36'000);
  EXPECT_EQ(rounded_down(20'000, 36'000), 36'000);
  EXPECT_EQ(next_check(36'000, 20'000, {})->at, 36'000);
}

TEST(NextCheck, is_the_manuals_where_its_interval_ends_first) {
  const auto by_drift = next_check(36'000, 60'244, 25'000);
  EXPECT_EQ(by_drift->at, 60'000);
  EXPECT_FALSE(by_drift->by_manual);
  const auto by_manual = next_check(36'000, 60'244, 12'000);
  EXPECT_EQ(by_manual->at, 48'000);
  EXPECT_TRUE(by_manual->by_manual);
  EXPECT_EQ(next_check(36'000, {}, 12'000)->at, 48'000);
  EXPECT_TRUE(next_check(36'000, {}, 12'000)->by_manual);
  EXPECT_FALSE(next_check(36'000, {}, {}));
}

}  // namespace
}  // namespace shimwright
