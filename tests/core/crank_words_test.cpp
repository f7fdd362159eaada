// SPDX-License-Identifier: MPL-2.0
#include "core/service/words/crank_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <vector>

namespace shimwright {
namespace {

using ::testing::HasSubstr;

std::string turned(const Firing& firing, const std::vector<CrankStop>& stops, std::size_t index,
                   std::optional<std::size_t> from = std::nullopt) {
  return turn_in_words(firing, stops, index, from, Teller());
}

TEST(CrankWords, a_stop_at_dead_centre) {
  const Firing four = Firing::in_order("1-3-4-2");
  const auto stops = crank_stops(four);
  EXPECT_EQ(turned(four, stops, 0), "turn the crank forwards to TDC on compression of cylinder 1");
  EXPECT_EQ(
      turned(four, stops, 1, 0),
      "turn the crank forwards to TDC on compression of cylinder 4, 360\u00b0 on from stop 1");
  EXPECT_EQ(measured_in_words(stops, 0, Teller()),
            "cylinder 1: inlet and exhaust; cylinder 2: inlet; cylinder 3: exhaust");
}

// From stop 2 to stop 1 the crank goes on forwards through the rest of the cycle.
TEST(CrankWords, a_turn_is_told_from_where_the_crank_stands) {
  const Firing three = Firing::in_order("1-2-3");
  const std::vector<CrankStop> stops{{0_deg, {}}, {480_deg, {}}};
  EXPECT_THAT(turned(three, stops, 0, 1), HasSubstr(", 240\u00b0 on from stop 2"));
}

TEST(CrankWords, a_stop_past_dead_centre_is_told_from_the_cylinder_that_fired_last) {
  const Firing four = Firing::in_order("1-3-4-2");
  const std::vector<CrankStop> stops{{0_deg, {}}, {570_deg, {}}};
  EXPECT_EQ(turned(four, stops, 1, 0),
            "turn the crank forwards to 30\u00b0 past TDC on compression of cylinder 2, 570\u00b0 "
            "on from stop 1");
}

// Cylinders 2 and 3 fired together: the first of them is named.
TEST(CrankWords, past_cylinders_that_fired_together_the_first_is_named) {
  const std::vector<FiringRow> rows{{1, 0}, {2, 120}, {3, 120}};
  const Firing firing = Firing::at_angles(rows);
  const auto stops = crank_stops(firing, {160_deg, 85_deg, 80_deg, 80_deg}, 100_deg);
  ASSERT_EQ(stops.size(), 3U);
  EXPECT_EQ(turned(firing, stops, 2),
            "turn the crank forwards to 100\u00b0 past TDC on compression of cylinder 2");
}

TEST(CrankWords, a_valve_is_to_be_measured_only_where_it_is_clear_of_its_lobe_by_most) {
  const std::vector<FiringRow> rows{{1, 0}, {2, 315}};  // a V-twin at 45 degrees on one pin
  const auto stops = crank_stops(Firing::at_angles(rows), {}, 10_deg);
  ASSERT_TRUE(stops[0].clear_of({2, Side::exhaust}));
  EXPECT_EQ(measured_in_words(stops, 0, Teller()), "cylinder 1: inlet and exhaust");
  EXPECT_EQ(measured_in_words(stops, 1, Teller()), "cylinder 2: inlet and exhaust");
}

TEST(CrankWords, cylinders_that_fire_together_are_all_named) {
  const std::vector<FiringRow> rows{{1, 0}, {2, 70}, {3, 0}, {4, 70}};
  const Firing firing = Firing::at_angles(rows);
  EXPECT_EQ(turned(firing, crank_stops(firing), 0),
            "turn the crank forwards to TDC on compression of cylinders 1 and 3");
}

TEST(CrankWords, angles_are_told_to_a_tenth_of_a_degree) {
  const Firing seven = Firing::in_order("1-3-5-7-2-4-6");
  EXPECT_THAT(turned(seven, crank_stops(seven), 1, 0), HasSubstr(", 308.6\u00b0 on from stop 1"));
}

TEST(CrankWords, a_stop_in_a_list_says_what_to_measure_there) {
  const Firing single = Firing::in_order("1");
  EXPECT_EQ(stop_in_words(single, crank_stops(single), 0, Teller()),
            "Stop 1: turn the crank forwards to TDC on compression of cylinder 1; measure here: "
            "cylinder 1: inlet and exhaust.");
}

}  // namespace
}  // namespace shimwright
