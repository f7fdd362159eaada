// SPDX-License-Identifier: MPL-2.0
#include "core/crank/crank.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <string>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<double> angles_of(const std::vector<CrankStop>& stops) {
  std::vector<double> angles;
  for (const CrankStop& stop : stops) angles.push_back(stop.angle.degrees());
  return angles;
}

std::vector<double> stops_for(const char* order) {
  return angles_of(crank_stops(Firing::in_order(order)));
}

std::vector<double> stops_for(const std::vector<FiringRow>& rows) {
  return angles_of(crank_stops(Firing::at_angles(rows)));
}

std::string trouble_with(const ValveTiming& timing, CrankAngle margin = usual_margin) {
  try {
    crank_stops(Firing::in_order("1-3-4-2"), timing, margin);
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

// ---- One cylinder ----

TEST(BaseCircle, runs_from_closing_with_the_margin_to_opening_with_the_margin) {
  // By hand: the inlet valve closes at 540 + 60 and opens at 720 + 360 - 20.
  const BaseCircle inlet = base_circle(Side::inlet);
  EXPECT_EQ(inlet.from, 610_deg);
  EXPECT_EQ(inlet.length, 440_deg);
  // The exhaust valve closes at 360 + 20 and opens at 720 + 180 - 60.
  const BaseCircle exhaust = base_circle(Side::exhaust);
  EXPECT_EQ(exhaust.from, 390_deg);
  EXPECT_EQ(exhaust.length, 440_deg);
}

TEST(BaseCircle, both_ends_belong_to_it) {
  const BaseCircle inlet = base_circle(Side::inlet);
  const CrankAngle part = CrankAngle::parts(1);
  EXPECT_TRUE(inlet.holds(610_deg));
  EXPECT_FALSE(inlet.holds(610_deg - part));
  EXPECT_TRUE(inlet.holds(330_deg));
  EXPECT_FALSE(inlet.holds(330_deg + part));
  EXPECT_TRUE(inlet.holds(CrankAngle()));
  EXPECT_FALSE(inlet.holds(360_deg));
}

TEST(BaseCircle, may_be_a_single_place) {
  // Open for 90 + 180 + 90, with 180 of margin twice: 720.
  const ValveTiming wild{90_deg, 90_deg, 60_deg, 20_deg};
  const BaseCircle inlet = base_circle(Side::inlet, wild, 180_deg);
  EXPECT_EQ(inlet.length, CrankAngle());
  EXPECT_EQ(inlet.from, 90_deg);
  EXPECT_TRUE(inlet.holds(90_deg));
}

// ---- Common practice ----

TEST(CrankStops, an_inline_four_is_done_in_two_stops_one_full_turn_apart) {
  // Common practice, no source.
  EXPECT_THAT(stops_for("1-3-4-2"), ElementsAre(0, 360));
  EXPECT_THAT(stops_for("1-2-4-3"), ElementsAre(0, 360));
}

TEST(CrankStops, an_inline_six_is_done_in_two_stops_one_full_turn_apart) {
  // Common practice, no source.
  EXPECT_THAT(stops_for("1-5-3-6-2-4"), ElementsAre(0, 360));
}

TEST(CrankStops, a_single_is_done_at_its_firing_dead_centre) {
  // Common practice, no source.
  EXPECT_THAT(stops_for("1"), ElementsAre(0));
}

TEST(CrankStops, in_a_four_each_stop_opens_two_inlets_and_two_exhausts) {
  // By hand, order 1-3-4-2 with cylinder 1 firing: 3, next to fire, begins its compression with the
  // inlet valve still closing; 2, which fired before, begins its exhaust with that valve open; 4
  // has both valves off their seats.
  const auto stops = crank_stops(Firing::in_order("1-3-4-2"));
  ASSERT_EQ(stops.size(), 2U);
  EXPECT_THAT(stops[0].reachable,
              ElementsAre(ValvePlace{1, Side::inlet}, ValvePlace{1, Side::exhaust},
                          ValvePlace{2, Side::inlet}, ValvePlace{3, Side::exhaust}));
  EXPECT_THAT(stops[1].reachable,
              ElementsAre(ValvePlace{2, Side::exhaust}, ValvePlace{3, Side::inlet},
                          ValvePlace{4, Side::inlet}, ValvePlace{4, Side::exhaust}));
}

// ---- Other engines; orders as sourced, stops by hand from the two base circles ----

TEST(CrankStops, a_v8_and_a_twelve_are_done_in_two_stops_one_full_turn_apart) {
  // Orders: Wikipedia, "Firing order", table; the V8 also Auto Engine Repair (Goodheart-Willcox
  // 2021), fig. 6-2. Other pairs of dead centres serve too, but nearer to a lobe.
  EXPECT_THAT(stops_for("1-8-4-3-6-5-7-2"), ElementsAre(0, 360));
  EXPECT_THAT(stops_for("1-7-5-11-3-9-6-12-2-8-4-10"), ElementsAre(0, 360));
}

TEST(CrankStops, odd_numbers_of_cylinders_stop_at_two_dead_centres) {
  // Orders: Wikipedia, "Firing order", table.
  EXPECT_THAT(stops_for("1-2-3"), ElementsAre(0, 240));
  EXPECT_THAT(stops_for("1-2-4-5-3"), ElementsAre(0, 288));
  const auto seven = stops_for("1-3-5-7-2-4-6");
  ASSERT_EQ(seven.size(), 2U);
  EXPECT_EQ(seven[0], 0);
  EXPECT_DOUBLE_EQ(seven[1], 3 * 720.0 / 7);
}

TEST(CrankStops, v_twins_stop_at_each_cylinders_dead_centre) {
  // A V-twin on one crankpin fires at 360 less the angle of the V, or that much more: with 45
  // degrees at 315 and 405 (kids.net.au encyclopedia, "V-twin"); the others follow likewise.
  for (const double angle : {315.0, 270.0, 300.0, 405.0, 450.0, 412.5})
    EXPECT_THAT(stops_for({{1, 0}, {2, angle}}), ElementsAre(0, angle));
}

TEST(CrankStops, a_cross_plane_four_stops_at_two_dead_centres) {
  // Intervals 270, 180, 90, 180 in the order 1-3-2-4: common practice, no source.
  EXPECT_THAT(stops_for({{1, 0}, {3, 270}, {2, 450}, {4, 540}}), ElementsAre(0, 270));
}

TEST(CrankStops, cylinders_that_fire_close_together_are_done_in_one_stop) {
  // An invented big-bang four in two pairs, and a twin whose pistons rise together.
  EXPECT_THAT(stops_for({{1, 0}, {2, 70}, {3, 0}, {4, 70}}), ElementsAre(0));
  EXPECT_THAT(stops_for({{1, 0}, {2, 0}}), ElementsAre(0));
}

TEST(CrankStops, a_stop_off_dead_centre_stands_midway_between_the_lobes) {
  // A twin that fires 180 apart: all four valves are open to the gauge from 70 to 110 only.
  EXPECT_THAT(stops_for({{1, 0}, {2, 180}}), ElementsAre(90));
}

TEST(CrankStops, a_wide_margin_needs_more_stops) {
  // 120 at each end leaves the inlet 720 - 260 - 240 = 220, so a four needs more than two stops.
  const Firing four = Firing::in_order("1-3-4-2");
  std::size_t last = 2;
  for (int margin = 10; margin <= 180; margin += 10) {
    const auto count = crank_stops(four, {}, CrankAngle::of(margin)).size();
    EXPECT_GE(count, last) << margin;
    last = count;
  }
  EXPECT_GT(last, 2U);
}

// ---- Bad input ----

TEST(CrankStops, timing_that_leaves_no_base_circle_is_told_with_its_side) {
  EXPECT_EQ(trouble_with({170_deg, 170_deg, 60_deg, 20_deg}, 110_deg),
            "the inlet valve leaves no base circle to measure on: it is open for 520\u00b0 of "
            "720\u00b0, and the margin takes 110\u00b0 at each end");
  EXPECT_THAT(trouble_with({20_deg, 60_deg, 170_deg, 170_deg}, 110_deg),
              HasSubstr("the exhaust valve leaves no base circle"));
}

TEST(CrankStops, timing_and_margin_that_cannot_be_are_told) {
  const CrankAngle none;
  EXPECT_EQ(trouble_with({none - 90_deg, none - 90_deg, 60_deg, 20_deg}),
            "the inlet valve would never open: by its timing it is open for 0\u00b0");
  EXPECT_EQ(trouble_with({200_deg, 60_deg, 60_deg, 20_deg}),
            "the inlet valve is said to open 200\u00b0 before top dead centre: that must lie "
            "within 180\u00b0 of it");
  EXPECT_THAT(trouble_with({20_deg, 60_deg, 60_deg, none - 181_deg}),
              HasSubstr("the exhaust valve is said to close -181\u00b0 after top dead centre"));
  EXPECT_EQ(trouble_with({}, none - 1_deg),
            "a margin of -1\u00b0: it lies between 0\u00b0 and 180\u00b0");
  EXPECT_THAT(trouble_with({}, 181_deg), HasSubstr("a margin of 181\u00b0"));
}

}  // namespace
}  // namespace shimwright
