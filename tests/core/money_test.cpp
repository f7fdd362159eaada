// SPDX-License-Identifier: MPL-2.0
#include "core/values/money.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

std::string refused_amount(double amount) {
  try {
    Money::of(amount);
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "";
}

TEST(Money, every_cent_up_to_fifty_comes_out_as_it_went_in) {
  for (int cents = 0; cents <= 5000; ++cents) {
    ASSERT_EQ(Money::of(cents / 100.0).thousandths(), cents * 10);
    ASSERT_EQ(Money::of(cents / 100.0).amount(), cents / 100.0);
  }
}

TEST(Money, has_three_decimals_for_the_currencies_that_do) {
  EXPECT_EQ(Money::of(1.234).thousandths(), 1234);
  EXPECT_EQ(Money::of(1.2344).thousandths(), 1234);
  EXPECT_EQ(Money::of(1.2346).thousandths(), 1235);
}

TEST(Money, sums_are_exact) {
  Money sum;
  for (int i = 0; i < 10; ++i) sum += Money::of(0.1);
  EXPECT_EQ(sum, Money::of(1));
  EXPECT_EQ(Money::of(0.1) + Money::of(0.2), Money::of(0.3));
  EXPECT_EQ(3 * Money::of(4.35), Money::of(13.05));
  EXPECT_LT(Money::of(4.35), Money::of(4.36));
}

TEST(Money, refuses_sums_that_cannot_be_in_a_sentence) {
  EXPECT_EQ(refused_amount(-3), "a price of -3 is negative");
  EXPECT_EQ(refused_amount(-0.001), "a price of -0.001 is negative");
  EXPECT_EQ(refused_amount(1'000'001), "a price of 1000001 is more than a million");
  EXPECT_EQ(refused_amount(std::nan("")), "a price is not a finite number");
  EXPECT_EQ(refused_amount(std::numeric_limits<double>::infinity()),
            "a price is not a finite number");
  EXPECT_EQ(refused_amount(0), "");
  EXPECT_EQ(refused_amount(-0.0), "");
  EXPECT_EQ(refused_amount(1'000'000), "");
}

}  // namespace
}  // namespace shimwright
