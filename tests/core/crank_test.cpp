// SPDX-License-Identifier: MPL-2.0
#include "core/crank/crank.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <iterator>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "core/crank/firing_written.hpp"
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
  const BaseCircle inlet = base_circle(Side::inlet, {}, 10_deg);
  EXPECT_EQ(inlet.from, 610_deg);
  EXPECT_EQ(inlet.length, 440_deg);
  // The exhaust valve closes at 360 + 20 and opens at 720 + 180 - 60.
  const BaseCircle exhaust = base_circle(Side::exhaust, {}, 10_deg);
  EXPECT_EQ(exhaust.from, 390_deg);
  EXPECT_EQ(exhaust.length, 440_deg);
}

TEST(BaseCircle, both_ends_belong_to_it) {
  const BaseCircle inlet = base_circle(Side::inlet, {}, 10_deg);
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

TEST(BaseCircle, keeps_thirty_degrees_off_the_lobe_unless_told_otherwise) {
  EXPECT_EQ(base_circle(Side::inlet).from, 630_deg);
  EXPECT_EQ(base_circle(Side::inlet).length, 400_deg);
}

TEST(BaseCircle, takes_a_margin_of_half_a_turn) {
  // Open for 180: 720 - 180 - 360 are left. By hand, a single is then done at TDC alone.
  const CrankAngle none;
  EXPECT_EQ(base_circle(Side::inlet, {none, none, none, none}, 180_deg).length, 180_deg);
  EXPECT_THAT(angles_of(crank_stops(Firing::in_order("1"), {none, none, none, none}, 180_deg)),
              ElementsAre(0));
}

TEST(BaseCircle, is_measured_from_its_nearer_end) {
  const BaseCircle inlet = base_circle(Side::inlet, {}, 10_deg);  // 610 to 1050
  EXPECT_EQ(inlet.inside(610_deg), CrankAngle());
  EXPECT_EQ(inlet.inside(330_deg), CrankAngle());
  EXPECT_EQ(inlet.inside(620_deg), 10_deg);
  EXPECT_EQ(inlet.inside(CrankAngle()), 110_deg);
  EXPECT_EQ(inlet.inside(110_deg), 220_deg);
  EXPECT_EQ(inlet.inside(111_deg), 219_deg);
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
  // Clear, in usual timing: at TDC on compression 120 to where either lobe begins (exhaust opens at
  // 120, inlet closed at 600); half a turn on the inlet has 340 - 180 left, half a turn before it
  // the exhaust, at 540, is 160 past its closing at 380.
  ASSERT_EQ(stops.size(), 2U);
  using Valve = ReachableValve;
  EXPECT_THAT(stops[0].reachable,
              ElementsAre(Valve{{1, Side::inlet}, 120_deg}, Valve{{1, Side::exhaust}, 120_deg},
                          Valve{{2, Side::inlet}, 160_deg}, Valve{{3, Side::exhaust}, 160_deg}));
  EXPECT_THAT(stops[1].reachable,
              ElementsAre(Valve{{2, Side::exhaust}, 160_deg}, Valve{{3, Side::inlet}, 160_deg},
                          Valve{{4, Side::inlet}, 120_deg}, Valve{{4, Side::exhaust}, 120_deg}));
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
  // A twin that fires 180 apart: all four valves are off their lobes from 60 to 120 only.
  const std::vector<FiringRow> twin{{1, 0}, {2, 180}};
  for (const CrankAngle margin : {10_deg, 29_deg, 30_deg})
    EXPECT_THAT(angles_of(crank_stops(Firing::at_angles(twin), {}, margin)), ElementsAre(90));
}

// Hard ones, where few stops serve all aims together. Common practice, no source.
TEST(CrankStops, off_dead_centre_keep_the_narrowest_base_circle_in_its_middle) {
  // The exhaust's runs from 520 to 700, the inlet's, 20 to 280, is left with as much at one end.
  EXPECT_THAT(angles_of(crank_stops(Firing::in_order("1"),
                                    {CrankAngle() - 20_deg, 100_deg, 100_deg, 60_deg}, 100_deg)),
              ElementsAre(190, 610));
  const std::vector<FiringRow> four{{1, 0}, {2, 420}, {3, 660}, {4, 90}};
  EXPECT_THAT(
      angles_of(crank_stops(Firing::at_angles(four), {20_deg, 25_deg, 50_deg, 5_deg}, 85_deg)),
      ElementsAre(180, 660));
}

// ---- The margin ----

// What the default costs: nothing. Orders as sourced above; those of the flat four, the ten and the
// second six, three and four are common practice, no source, as are the twins' intervals.
TEST(CrankStops, of_seventeen_usual_engines_are_no_more_at_a_margin_of_thirty_or_sixty) {
  const char* const engines[] = {"1",
                                 "1-2",
                                 "1 at 0, 2 at 270",
                                 "1 at 0, 2 at 315",
                                 "1-2-3",
                                 "1-3-2",
                                 "1-3-4-2",
                                 "1-2-4-3",
                                 "1-3-2-4",
                                 "1 at 0, 3 at 270, 2 at 450, 4 at 540",
                                 "1-2-4-5-3",
                                 "1-5-3-6-2-4",
                                 "1-6-5-4-3-2",
                                 "1-3-5-7-2-4-6",
                                 "1-8-4-3-6-5-7-2",
                                 "1-6-5-10-2-7-3-8-4-9",
                                 "1-7-5-11-3-9-6-12-2-8-4-10"};
  ASSERT_EQ(std::size(engines), 17U);
  for (const char* engine : engines) {
    const Firing firing = firing_written(engine);
    const auto fewest = crank_stops(firing, {}, CrankAngle()).size();
    EXPECT_LE(fewest, 2U) << engine;
    EXPECT_EQ(crank_stops(firing).size(), fewest) << engine;
    EXPECT_EQ(crank_stops(firing, {}, 60_deg).size(), fewest) << engine;
  }
}

// ---- Where a valve is clear by most ----

TEST(ClearestStop, of_a_v_twin_is_each_valves_own_dead_centre) {
  // Cylinder 2 of a V-twin at 45 degrees on one pin fires at 315. At cylinder 1's TDC its exhaust
  // valve is 45 past overlap and 25 past its closing: within ten degrees of margin, but near.
  const std::vector<FiringRow> rows{{1, 0}, {2, 315}};
  const auto stops = crank_stops(Firing::at_angles(rows), {}, 10_deg);
  EXPECT_THAT(angles_of(stops), ElementsAre(0, 315));
  const ValvePlace exhaust{2, Side::exhaust};
  EXPECT_EQ(stops[0].clear_of(exhaust), 25_deg);
  EXPECT_EQ(stops[1].clear_of(exhaust), 120_deg);
  EXPECT_EQ(clearest_stop(stops, exhaust), 1U);
  EXPECT_THAT(stops_by_clear(stops, exhaust), ElementsAre(1, 0));
  EXPECT_EQ(crank_stops(Firing::at_angles(rows))[0].clear_of(exhaust), std::nullopt)
      << "with the usual margin it is not measured there at all";
}

TEST(ClearestStop, of_equals_is_the_earlier_and_of_none_is_none) {
  const ValvePlace inlet{1, Side::inlet};
  const std::vector<CrankStop> stops{{0_deg, {{inlet, 40_deg}}},
                                     {90_deg, {}},
                                     {180_deg, {{inlet, 70_deg}}},
                                     {400_deg, {{{2, Side::inlet}, 99_deg}, {inlet, 70_deg}}}};
  EXPECT_THAT(stops_by_clear(stops, inlet), ElementsAre(2, 3, 0));
  EXPECT_EQ(clearest_stop(stops, inlet), 2U);
  EXPECT_EQ(clearest_stop(stops, ValvePlace{1, Side::exhaust}), std::nullopt);
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
