// SPDX-License-Identifier: MPL-2.0
#include "core/drift/siblings.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace shimwright {
namespace {

Sibling moving(Side side, double rate, double error = 0.1) {
  Line line;
  line.n = 6;
  line.slope = rate;
  line.slope_error = error;
  return {side, line};
}

TEST(Siblings, are_held_against_their_own_side_only) {
  std::vector<Sibling> valves;
  for (const double rate : {-1.0, -1.1, -0.9, -1.05, -0.95, -1.0, -1.0, -9.0})
    valves.push_back(moving(Side::exhaust, rate));
  for (int i = 0; i < 8; ++i) valves.push_back(moving(Side::inlet, 2.0 + 0.05 * i));
  const auto found = kinship_of(valves);
  EXPECT_EQ(std::ranges::count(found, Kinship::alike), 15);
  EXPECT_EQ(found[7], Kinship::closes_faster);
  valves[7] = moving(Side::exhaust, 9);
  EXPECT_EQ(kinship_of(valves)[7], Kinship::opens_faster);
}

TEST(Siblings, that_are_too_few_or_have_no_line_accuse_nobody) {
  std::vector<Sibling> few{moving(Side::exhaust, -1), moving(Side::exhaust, -1),
                           moving(Side::exhaust, -90)};
  EXPECT_EQ(std::ranges::count(kinship_of(few), Kinship::alike), 3);
  few.push_back({Side::exhaust, std::nullopt});
  EXPECT_EQ(std::ranges::count(kinship_of(few), Kinship::alike), 4);
  few.back() = moving(Side::exhaust, -1.001);
  EXPECT_EQ(std::ranges::count(kinship_of(few), Kinship::alike), 3) << "two others, exact";
}

// Rates that chance alone sets apart are not called unlike, however close the others lie together.
TEST(Siblings, spread_no_less_than_the_errors_of_their_rates) {
  std::vector<Sibling> valves;
  for (int i = 0; i < 7; ++i) valves.push_back(moving(Side::inlet, 1, 0.5));
  valves.push_back(moving(Side::inlet, 1.5, 0.5));
  EXPECT_EQ(kinship_of(valves)[7], Kinship::alike);
}

// Of engines whose valves move alike, the share in which any valve is called unlike; and that in
// which one is found that moves so many times as fast.
double share_called(std::size_t each_side, double natural_spread, double error, double times,
                    unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> normal(0, 1);
  constexpr int engines = 4000;
  int called = 0;
  for (int engine = 0; engine < engines; ++engine) {
    std::vector<Sibling> valves;
    for (const Side side : {Side::exhaust, Side::inlet})
      for (std::size_t i = 0; i < each_side; ++i) {
        const double rate = -1 + natural_spread * normal(random);
        const double own = valves.empty() ? times * rate : rate;
        valves.push_back(moving(side, own + error * normal(random), error));
      }
    const auto found = kinship_of(valves);
    called += times == 1
                  ? std::ranges::any_of(found, [](auto one) { return one != Kinship::alike; })
                  : found.front() == Kinship::closes_faster;
  }
  return static_cast<double>(called) / engines;
}

TEST(Siblings, that_move_alike_raise_a_false_alarm_in_fewer_than_one_engine_in_twenty) {
  unsigned seed = 1;
  for (const std::size_t each_side : {4U, 8U, 24U})
    for (const double natural : {0.0, 0.2, 0.5}) {
      const double share = share_called(each_side, natural, 0.2, 1, ++seed);
      RecordProperty("false_alarms_" + std::to_string(each_side) + "_" + std::to_string(seed),
                     std::to_string(share));
      std::printf("%zu valves a side, natural spread %.1f of the rate: %.4f false alarms\n",
                  each_side, natural, share);
      EXPECT_LE(share, 0.05 + 0.01) << each_side << ", " << natural;  // 3 sd of the simulation
    }
}

TEST(Siblings, find_a_valve_of_eight_that_moves_four_times_as_fast) {
  const double share = share_called(8, 0.2, 0.2, 4, 99);
  std::printf("8 valves a side, one moves 4 times as fast: found in %.3f\n", share);
  EXPECT_GT(share, 0.9);
}

}  // namespace
}  // namespace shimwright
