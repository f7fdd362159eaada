// SPDX-License-Identifier: MPL-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <random>
#include <set>
#include <vector>

#include "core/crank/further_stops.hpp"
#include "plan_questions.hpp"

namespace shimwright {
namespace {

constexpr ValvePlace inlet(int cylinder) { return {cylinder, Side::inlet}; }
constexpr ValvePlace exhaust(int cylinder) { return {cylinder, Side::exhaust}; }

std::vector<CrankStop> further_of_four(const std::set<ValvePlace>& valves) {
  const Firing firing = Firing::in_order("1-3-4-2");
  const auto stops = crank_stops(firing);
  return further_stops(firing, {}, usual_margin, stops, valves);
}

TEST(FurtherStops, a_cylinder_s_own_valves_are_clear_together_at_its_tdc_on_compression) {
  const auto further = further_of_four({inlet(3), exhaust(3)});
  ASSERT_EQ(further.size(), 1U);
  EXPECT_EQ(further[0].angle, 180_deg);
  EXPECT_EQ(further[0].clear_of(inlet(3)), 120_deg);    // it closed 60 past bottom dead centre
  EXPECT_EQ(further[0].clear_of(exhaust(3)), 120_deg);  // it opens 60 before the next
}

TEST(FurtherStops, where_no_dead_centre_serves_all_valves_they_are_clear_by_most) {
  // Cylinder 1's inlet may be worked on from 630 to 1030 degrees, cylinder 4's 360 later: they meet
  // from 270 to 310, and from 630 to 670. Both are as good: the first is taken.
  const auto further = further_of_four({inlet(1), inlet(4)});
  ASSERT_EQ(further.size(), 1U);
  EXPECT_EQ(further[0].angle, 290_deg);
  EXPECT_EQ(further[0].clear_of(inlet(1)), 50_deg);
  EXPECT_EQ(further[0].clear_of(inlet(4)), 50_deg);
}

TEST(FurtherStops, none_is_of_use_where_the_valves_are_clear_together_at_a_stop_of_measuring) {
  EXPECT_TRUE(further_of_four({inlet(1), exhaust(1)}).empty());
  EXPECT_TRUE(further_of_four({inlet(2)}).empty());
  EXPECT_TRUE(further_of_four({}).empty());
}

// All angles below are whole tens of degrees, so that nothing changes between two of them but at
// the five between.
TEST(FurtherStops, at_every_angle_of_made_up_engines_what_is_clear_is_clear_at_a_stop) {
  std::size_t stops_in_all = 0;
  std::size_t off_dead_centre = 0;
  for (std::uint64_t seed = 1; seed <= 2'000; ++seed) {
    questions::Dice dice(seed);
    const auto tens = [&](std::int64_t low, std::int64_t high) {
      return CrankAngle::of(10.0 * static_cast<double>(dice.between(low, high)));
    };
    std::vector<FiringRow> rows{{1, 0}};
    for (std::int64_t c = dice.between(1, 8); c > 1; --c)
      rows.push_back({static_cast<double>(rows.size() + 1), tens(0, 71).degrees()});
    const Firing firing = Firing::at_angles(rows);
    const ValveTiming timing{tens(-2, 6), tens(2, 8), tens(2, 8), tens(-2, 6)};
    const CrankAngle margin = tens(0, 8);
    std::set<ValvePlace> valves;
    for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
      for (const ValvePlace& place : {inlet(cylinder), exhaust(cylinder)})
        if (!dice.one_in(3)) valves.insert(place);
    const auto clear_at = [&](CrankAngle angle) {
      std::set<ValvePlace> clear;
      for (const auto& valve : crank_stop_at(angle, firing, timing, margin).reachable)
        if (valves.contains(valve.place)) clear.insert(valve.place);
      return clear;
    };
    const auto least = crank_stops(firing, timing, margin);
    const auto further = further_stops(firing, timing, margin, least, valves);
    std::vector<std::set<ValvePlace>> sets;
    for (const CrankStop& stop : least) sets.push_back(clear_at(stop.angle));
    for (const CrankStop& stop : further) {
      ++stops_in_all;
      const auto clear = clear_at(stop.angle);
      for (const auto& known : sets)
        ASSERT_FALSE(std::ranges::includes(known, clear)) << "seed " << seed;
      sets.push_back(clear);
      bool on_dead_centre = false;
      for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
        on_dead_centre = on_dead_centre || firing.angle_of(cylinder) == stop.angle;
      if (on_dead_centre) continue;
      ++off_dead_centre;
      for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
        ASSERT_FALSE(std::ranges::includes(clear_at(firing.angle_of(cylinder)), clear))
            << "seed " << seed << ": they are clear at a dead centre as well";
    }
    ASSERT_TRUE(std::ranges::is_sorted(further, {}, &CrankStop::angle));
    for (int angle = 0; angle < 720; angle += 5) {
      const auto clear = clear_at(CrankAngle::of(angle));
      ASSERT_TRUE(std::ranges::any_of(
          sets, [&](const auto& known) { return std::ranges::includes(known, clear); }))
          << "seed " << seed << " at " << angle;
    }
  }
  EXPECT_GT(stops_in_all, 4'000U);
  EXPECT_GT(off_dead_centre, 1'000U);
}

}  // namespace
}  // namespace shimwright
