// SPDX-License-Identifier: MPL-2.0
#include "core/values/gap_slip.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

constexpr Limits wide{0.10_mm, 0.20_mm};

TEST(GapSlip, is_likely_from_twice_the_largest_and_to_a_fifth_of_the_smallest) {
  EXPECT_EQ(likely_slip(0.40_mm, wide), GapSlip::too_large);
  EXPECT_EQ(likely_slip(0.399_mm, wide), GapSlip::none);
  EXPECT_EQ(likely_slip(0.02_mm, wide), GapSlip::too_small);
  EXPECT_EQ(likely_slip(0.021_mm, wide), GapSlip::none);
}

TEST(GapSlip, of_a_gap_of_nothing_or_without_limits_is_none) {
  EXPECT_EQ(likely_slip(Length(), wide), GapSlip::none);
  EXPECT_EQ(likely_slip(2.40_mm, {}), GapSlip::none);
  EXPECT_FALSE(cannot_be_right(2.40_mm, {}));
}

TEST(GapSlip, of_ten_times_a_gap_inside_its_limits_cannot_be_right) {
  for (Length gap = wide.min; gap <= wide.max; gap = gap + 0.01_mm)
    EXPECT_TRUE(cannot_be_right(10 * gap, wide)) << text_of(gap);
}

TEST(GapSlip, never_hides_a_valve_that_is_worn) {
  for (Length gap; gap < 0.60_mm; gap = gap + 0.01_mm)
    EXPECT_FALSE(cannot_be_right(gap, wide)) << text_of(gap);
  EXPECT_TRUE(cannot_be_right(0.60_mm, wide));
}

}  // namespace
}  // namespace shimwright
