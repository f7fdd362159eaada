// SPDX-License-Identifier: MPL-2.0
#include "core/values/share.hpp"

#include <gtest/gtest.h>

#include <string>

#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"

namespace shimwright {
namespace {

// By hand: width of the limits over the step.
TEST(Share, of_gaps_served_is_the_width_of_the_limits_over_the_step) {
  struct Case {
    Limits limits;
    Length step;
    Length doubt;
    Share share;
    const char* told;
  };
  const Case cases[] = {
      {{0.16_mm, 0.20_mm}, 0.05_mm, {}, {4, 5}, "4 of 5"},
      {{0.16_mm, 0.20_mm}, 0.05_mm, 0.01_mm, {2, 5}, "2 of 5"},
      {{0.16_mm, 0.20_mm}, 0.05_mm, 0.02_mm, {0, 1}, "none"},
      {{0.16_mm, 0.20_mm}, 0.05_mm, 0.03_mm, {0, 1}, "none"},
      {{0.16_mm, 0.20_mm}, 0.04_mm, {}, {1, 1}, "1 of 1"},
      {{0.16_mm, 0.20_mm}, 0.025_mm, {}, {1, 1}, "1 of 1"},
      {{0.16_mm, 0.20_mm}, 0.06_mm, {}, {2, 3}, "2 of 3"},
      {{0.10_mm, 0.14_mm}, 0.07_mm, {}, {4, 7}, "4 of 7"},
      {{0.15_mm, 0.15_mm}, 0.05_mm, {}, {0, 1}, "none"},
      {{0.16_mm, 0.20_mm}, 0.0508_mm, {}, {100, 127}, "about 78 of 100"},  // two thou
      {{0.00_mm, 0.0499_mm}, 0.05_mm, {}, {499, 500}, "about 99 of 100"},
  };
  for (const Case& c : cases) {
    const Share share = gaps_served(c.limits, c.step, c.doubt);
    EXPECT_EQ(share, c.share) << c.told;
    EXPECT_EQ(share.is_all(), c.share.served == c.share.of) << c.told;
    EXPECT_EQ(text_of(share), c.told);
  }
}

// Every gap of a whole step, micrometre by micrometre, over one shim, tried with the sizes.
TEST(Share, of_gaps_served_is_what_trying_every_gap_gives) {
  const auto sizes = ladder(2.00_mm, 3.20_mm, 0.05_mm);
  for (const Limits& limits : {Limits{0.16_mm, 0.20_mm}, Limits{0.16_mm, 0.19_mm},
                               Limits{0.16_mm, 0.21_mm}, Limits{0.16_mm, 0.17_mm}}) {
    constexpr std::int64_t finest = 1000;
    std::int64_t served = 0;
    std::int64_t tried = 0;
    for (Length gap = 0.10_mm; gap < 0.15_mm; gap += Length::nanometres(finest), ++tried)
      // A gap between two micrometres, so that none lies on the very edge.
      if (pick_shim(gap + Length::nanometres(finest / 2), 2.75_mm, limits, limits.max, sizes))
        ++served;
    const Share share = gaps_served(limits, 0.05_mm);
    EXPECT_EQ(served * share.of, share.served * tried) << text_of(share);
  }
}

TEST(Share, of_gaps_served_refuses_what_cannot_be) {
  const Limits limits{0.16_mm, 0.20_mm};
  EXPECT_THROW(gaps_served(limits, Length()), BadInput);
  EXPECT_THROW(gaps_served(limits, -(0.05_mm)), BadInput);
  EXPECT_THROW(gaps_served(limits, 0.05_mm, -(0.01_mm)), BadInput);
  EXPECT_THROW(gaps_served({0.20_mm, 0.16_mm}, 0.05_mm), BadInput);
}

}  // namespace
}  // namespace shimwright
