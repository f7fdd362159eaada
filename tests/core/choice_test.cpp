// SPDX-License-Identifier: MPL-2.0
#include "core/values/choice.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <random>
#include <string>
#include <tuple>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

constexpr Limits limits{0.16_mm, 0.20_mm};

template <typename Action>
std::string refusal_by(const Action& action) {
  try {
    action();
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "";
}

std::vector<Length> stepped(double step) { return ladder(1.20_mm, 3.50_mm, Length::of(step)); }

// The four facts below are common practice, no source.
TEST(Choice, a_marked_shim_gives_the_ideal_and_the_pick_of_common_practice) {
  const auto sizes = stepped(0.05);
  EXPECT_EQ(ideal_shim(0.10_mm, 2.85_mm, 0.20_mm), 2.75_mm);
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.20_mm, sizes), 2.75_mm);
  EXPECT_EQ(clearance_after(0.10_mm, 2.85_mm, 2.75_mm), 0.20_mm);
}

TEST(Choice, a_measured_shim_gives_the_ideal_and_the_pick_of_common_practice) {
  const auto sizes = stepped(0.05);
  EXPECT_EQ(ideal_shim(0.10_mm, 2.84_mm, 0.20_mm), 2.74_mm);
  EXPECT_EQ(pick_shim(0.10_mm, 2.84_mm, limits, 0.20_mm, sizes), 2.75_mm);
  EXPECT_EQ(clearance_after(0.10_mm, 2.84_mm, 2.75_mm), 0.19_mm);
}

TEST(Choice, a_gap_of_five_hundredths_wanting_fifteen_takes_a_tenth_off_the_shim) {
  EXPECT_EQ(ideal_shim(0.05_mm, 2.75_mm, 0.15_mm), 2.65_mm);
}

TEST(Choice, a_thicker_shim_makes_the_clearance_smaller) {
  Length last = 1.0_mm;
  for (const Length size : stepped(0.05)) {
    const Length after = clearance_after(0.15_mm, 2.00_mm, size);
    EXPECT_LT(after, last);
    last = after;
  }
  EXPECT_LT(clearance_after(0.10_mm, 2.0_mm, 2.2_mm), Length()) << "the valve would be held open";
}

TEST(Choice, the_ideal_shim_meets_the_aim_exactly) {
  for (std::int64_t clearance = 0; clearance <= 400; clearance += 7) {
    for (std::int64_t aim = 50; aim <= 300; aim += 11) {
      const Length c = Length::nanometres(clearance * 1000);
      const Length wanted = Length::nanometres(aim * 1000);
      ASSERT_EQ(clearance_after(c, 2.75_mm, ideal_shim(c, 2.75_mm, wanted)), wanted);
    }
  }
}

TEST(Aim, lies_between_the_limits_by_the_bias) {
  EXPECT_EQ(aim_between(limits), 0.19_mm) << "0.75 unless said";
  EXPECT_EQ(aim_between(limits, 0), 0.16_mm);
  EXPECT_EQ(aim_between(limits, 1), 0.20_mm);
  EXPECT_EQ(aim_between(limits, 0.5), 0.18_mm);
  EXPECT_EQ(aim_between({0.2_mm, 0.2_mm}), 0.2_mm);
  EXPECT_EQ(aim_between({Length(), Length::nanometres(3)}, 0.5), Length::nanometres(2))
      << "to the nearest nanometre, halves up";
}

TEST(Aim, grows_with_the_bias_and_stays_inside) {
  Length last = limits.min;
  for (int i = 0; i <= 1000; ++i) {
    const Length aim = aim_between(limits, i / 1000.0);
    ASSERT_GE(aim, last);
    ASSERT_NO_THROW(check_aim(aim, limits));
    last = aim;
  }
}

TEST(Aim, what_cannot_be_is_refused) {
  EXPECT_EQ(refusal_by([] { aim_between(limits, 1.5); }), "a bias of 1.5 is not between 0 and 1");
  EXPECT_EQ(refusal_by([] { aim_between(limits, -0.1); }), "a bias of -0.1 is not between 0 and 1");
  EXPECT_THROW(aim_between(limits, std::numeric_limits<double>::quiet_NaN()), BadInput);
  EXPECT_THROW(aim_between({0.3_mm, 0.2_mm}), BadInput);
  EXPECT_EQ(refusal_by([] { check_aim(0.21_mm, limits); }),
            "the aim, 0.21 mm, is outside the limits 0.16 mm to 0.20 mm");
  EXPECT_EQ(refusal_by([] { check_aim(0.16_mm, limits); }), "");
  EXPECT_EQ(refusal_by([] { check_aim(0.20_mm, limits); }), "");
}

TEST(Ladder, has_both_ends_and_no_drift) {
  const auto sizes = ladder(1.20_mm, 3.50_mm, 0.05_mm);
  ASSERT_EQ(sizes.size(), 47U);
  for (std::size_t i = 0; i < sizes.size(); ++i)
    EXPECT_EQ(sizes[i].nanometres(), 1'200'000 + 50'000 * static_cast<std::int64_t>(i));
}

TEST(Ladder, a_top_that_no_step_reaches_is_left_out) {
  EXPECT_EQ(ladder(1.0_mm, 1.12_mm, 0.05_mm), (std::vector<Length>{1.0_mm, 1.05_mm, 1.10_mm}));
  EXPECT_EQ(ladder(1.0_mm, 1.0_mm, 0.05_mm), std::vector<Length>{1.0_mm});
}

TEST(Ladder, ten_thousand_sizes_are_the_most) {
  EXPECT_EQ(ladder(1.0_mm, 10.999_mm, 0.001_mm).size(), longest_ladder);
  EXPECT_EQ(refusal_by([] { ladder(1.0_mm, 11.0_mm, 0.001_mm); }),
            "from 1.00 mm to 11.00 mm by 0.001 mm makes 10001 sizes; at most 10000 are allowed");
  EXPECT_EQ(refusal_by([] { ladder(0.000001_mm, 100.0_mm, 0.000001_mm); }),
            "from 0.000001 mm to 100.00 mm by 0.000001 mm makes 100000000 sizes; at most 10000 are "
            "allowed");
}

TEST(Ladder, what_leads_nowhere_is_refused) {
  EXPECT_EQ(refusal_by([] { ladder(1.0_mm, 2.0_mm, Length()); }),
            "a step of 0.00 mm leads nowhere: it must be above zero");
  EXPECT_THROW(ladder(1.0_mm, 2.0_mm, -(0.05_mm)), BadInput);
  EXPECT_EQ(refusal_by([] { ladder(2.0_mm, 1.0_mm, 0.05_mm); }),
            "the smallest size, 2.00 mm, is above the largest, 1.00 mm");
  EXPECT_THROW(ladder(Length(), 1.0_mm, 0.05_mm), BadInput);
}

TEST(ServingShims, reach_from_limit_to_limit) {
  const auto range = serving_shims(0.10_mm, 2.85_mm, limits);
  ASSERT_TRUE(range);
  EXPECT_EQ(range->thinnest, 2.75_mm);
  EXPECT_EQ(range->thickest, 2.79_mm);
  const auto guarded = serving_shims(0.10_mm, 2.85_mm, limits, 0.01_mm);
  ASSERT_TRUE(guarded);
  EXPECT_EQ(guarded->thinnest, 2.76_mm);
  EXPECT_EQ(guarded->thickest, 2.78_mm);
}

TEST(ServingShims, are_none_where_the_doubt_leaves_no_room) {
  const auto one = serving_shims(0.10_mm, 2.85_mm, limits, 0.02_mm);
  ASSERT_TRUE(one);
  EXPECT_EQ(one->thinnest, one->thickest);
  EXPECT_FALSE(serving_shims(0.10_mm, 2.85_mm, limits, 0.020001_mm));
}

TEST(ServingShims, are_never_thinner_than_something) {
  const auto range = serving_shims(Length(), 0.18_mm, limits);  // 0.18 + 0 - 0.20 would be negative
  ASSERT_TRUE(range);
  EXPECT_EQ(range->thinnest, Length::nanometres(1));
  EXPECT_EQ(range->thickest, 0.02_mm);
  EXPECT_FALSE(serving_shims(Length(), 0.10_mm, limits));
}

TEST(ServingShims, are_exactly_those_that_make_the_valve_good) {
  for (const Length doubt : {Length(), 0.005_mm, 0.02_mm, 0.03_mm}) {
    for (const Length clearance : {Length(), 0.07_mm, 0.18_mm, 0.31_mm}) {
      const auto range = serving_shims(clearance, 2.50_mm, limits, doubt);
      for (const Length size : ladder(2.20_mm, 2.80_mm, 0.001_mm)) {
        const bool good =
            state_of(clearance_after(clearance, 2.50_mm, size), limits, doubt) == State::good;
        ASSERT_EQ(range && range->thinnest <= size && size <= range->thickest, good)
            << text_of(clearance) << ", " << text_of(size) << ", " << text_of(doubt);
      }
    }
  }
}

TEST(PickShim, takes_the_size_nearest_to_the_aim_and_on_a_tie_the_thinner) {
  const std::vector<Length> around{2.78_mm, 2.76_mm};  // ideal 2.77
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.18_mm, around), 2.76_mm);
  const std::vector<Length> near{2.79_mm, 2.771_mm, 2.75_mm};
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.18_mm, near), 2.771_mm);
}

TEST(PickShim, stays_in_the_guard_band_before_it_looks_at_the_aim) {
  const std::vector<Length> sizes{2.752_mm, 2.775_mm};  // after: 0.198 and 0.175
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.20_mm, sizes), 2.752_mm);
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.20_mm, sizes, 0.01_mm), 2.775_mm);
}

TEST(PickShim, falls_back_on_the_plain_limits_where_the_guard_band_is_out_of_reach) {
  const std::vector<Length> sizes{2.752_mm, 2.788_mm};
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.19_mm, sizes, 0.01_mm), 2.752_mm);
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.19_mm, sizes, 0.05_mm), 2.752_mm);
}

TEST(PickShim, finds_nothing_where_no_size_serves) {
  const std::vector<Length> sizes{2.70_mm, 2.80_mm};
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.19_mm, sizes), std::nullopt);
  EXPECT_EQ(pick_shim(0.10_mm, 2.85_mm, limits, 0.19_mm, {}), std::nullopt);
}

TEST(PickShim, agrees_with_trying_every_size) {
  std::mt19937 random(11);
  std::uniform_int_distribution<std::int64_t> um(0, 60);
  for (int i = 0; i < 20'000; ++i) {
    const auto length = [&](std::int64_t from) {
      return Length::nanometres(1000 * (from + um(random)));
    };
    const Limits wanted{length(50), length(111)};
    const Length clearance = length(0);
    const Length shim = length(2500);
    const Length doubt = Length::nanometres(500 * um(random));
    const Length aim = aim_between(wanted, static_cast<double>(um(random)) / 60);
    std::vector<Length> sizes;
    for (auto count = um(random) / 4; count > 0; --count) sizes.push_back(length(2380));
    using Rank = std::tuple<bool, Length, Length>;  // outside the guard band, off the aim, size
    std::optional<Rank> best;
    for (const Length size : sizes) {
      const Length after = clearance + shim - size;
      if (after < wanted.min || after > wanted.max) continue;
      const bool outside = after < wanted.min + doubt || after > wanted.max - doubt;
      const Rank rank{outside, abs(after - aim), size};
      if (!best || rank < *best) best = rank;
    }
    const auto picked = pick_shim(clearance, shim, wanted, aim, sizes, doubt);
    ASSERT_EQ(picked.has_value(), best.has_value()) << i;
    if (best) {
      ASSERT_EQ(*picked, std::get<2>(*best)) << i;
    }
  }
}

TEST(Choice, a_thickness_of_nothing_or_less_is_refused) {
  EXPECT_EQ(refusal_by([] { check_thickness(Length()); }),
            "a shim of 0.00 mm cannot be: a thickness is above zero");
  EXPECT_THROW(clearance_after(0.1_mm, Length(), 2.0_mm), BadInput);
  EXPECT_THROW(clearance_after(0.1_mm, 2.0_mm, -(2.0_mm)), BadInput);
  EXPECT_THROW(ideal_shim(0.1_mm, Length(), 0.2_mm), BadInput);
  EXPECT_THROW(serving_shims(0.1_mm, Length(), limits), BadInput);
  EXPECT_THROW(serving_shims(0.1_mm, 2.0_mm, limits, -(0.01_mm)), BadInput);
  EXPECT_THROW(serving_shims(0.1_mm, 2.0_mm, {0.3_mm, 0.2_mm}), BadInput);
  const std::vector<Length> sizes{2.0_mm, Length()};
  EXPECT_THROW(pick_shim(0.1_mm, 2.0_mm, limits, 0.18_mm, sizes), BadInput);
  EXPECT_THROW(pick_shim(0.1_mm, 2.0_mm, limits, 0.30_mm, {}), BadInput);
}

}  // namespace
}  // namespace shimwright
