// SPDX-License-Identifier: MPL-2.0
#include "core/values/length.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

static_assert(0.16_mm == Length::nanometres(160'000));
static_assert(2.755_mm == Length::nanometres(2'755'000));
static_assert(-(0.05_mm) == Length::nanometres(-50'000));
static_assert(0.12_mm + 2.75_mm - 0.19_mm == 2.68_mm);
static_assert(3 * 0.05_mm == 0.15_mm);
static_assert(abs(0.10_mm - 0.16_mm) == 0.06_mm);
static_assert(0.16_mm < 0.17_mm);
static_assert(Length() == Length::nanometres(0));

std::string refusal(double value, Unit unit = Unit::mm) {
  try {
    Length::of(value, unit);
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "";
}

// NIST SP 811 (2008), appendix B.8: 1 in = 25.4 mm exactly.
TEST(Length, an_inch_is_25_4_mm_exactly) {
  EXPECT_EQ(Length::of(1, Unit::inch).nanometres(), 25'400'000);
  EXPECT_EQ(Length::of(1, Unit::inch), 25.4_mm);
  EXPECT_EQ(Length::of(0.001, Unit::inch), Length::of(1, Unit::thou));
}

TEST(Length, units_agree_with_the_millimetre) {
  EXPECT_EQ(Length::of(0.1), 0.1_mm);
  EXPECT_EQ(Length::of(250, Unit::um), 0.25_mm);
  EXPECT_EQ(Length::of(4, Unit::thou), 0.1016_mm);
  EXPECT_EQ(Length::of(0.108, Unit::inch), 2.7432_mm);
}

TEST(Length, every_micrometre_up_to_5_mm_comes_out_as_it_went_in) {
  for (int um = -5000; um <= 5000; ++um) {
    const double mm = um / 1000.0;
    const Length length = Length::of(mm);
    ASSERT_EQ(length.nanometres(), um * 1000) << mm;
    ASSERT_EQ(length.mm(), mm);
    ASSERT_EQ(Length::of(length.mm()), length);
    ASSERT_EQ(Length::of(um, Unit::um), length);
  }
}

TEST(Length, every_tenth_of_a_thou_up_to_half_an_inch_is_whole_nanometres) {
  for (int tenths = 0; tenths <= 5000; ++tenths) {
    ASSERT_EQ(Length::of(tenths / 1e4, Unit::inch).nanometres(), tenths * 2540) << tenths;
    ASSERT_EQ(Length::of(tenths / 10.0, Unit::thou).nanometres(), tenths * 2540) << tenths;
  }
}

TEST(Length, sums_that_are_inexact_in_binary_are_exact) {
  EXPECT_NE(0.1 + 0.2, 0.3);
  EXPECT_EQ(Length::of(0.1) + Length::of(0.2), Length::of(0.3));
  EXPECT_EQ(Length::of(0.1 + 0.2), Length::of(0.3));
  EXPECT_EQ(Length::of(2.9 - 2.75), Length::of(0.15));
}

TEST(Length, is_the_nearest_whole_nanometre) {
  EXPECT_EQ(Length::of(0.0000004).nanometres(), 0);
  EXPECT_EQ(Length::of(0.0000006).nanometres(), 1);
  EXPECT_EQ(Length::of(-0.0000006).nanometres(), -1);
  EXPECT_EQ(Length::of(1.2345674).nanometres(), 1'234'567);
  EXPECT_EQ(Length::of(1.2345676).nanometres(), 1'234'568);
}

TEST(Length, grows_with_the_number) {
  Length last = Length::of(-100);
  for (int i = -99'999; i <= 100'000; i += 7) {
    const Length length = Length::of(i / 1000.0);
    ASSERT_GT(length, last) << i;
    last = length;
  }
}

TEST(Length, a_hundred_mm_is_the_most_either_way) {
  EXPECT_EQ(Length::of(100).mm(), 100);
  EXPECT_EQ(Length::of(-100).mm(), -100);
  EXPECT_EQ(refusal(100.001),
            "a length of 100.001 mm is beyond the 100 mm that any shim or clearance could have");
  EXPECT_EQ(refusal(-275),
            "a length of -275 mm is beyond the 100 mm that any shim or clearance could have");
  EXPECT_EQ(refusal(4, Unit::inch),
            "a length of 101.6 mm is beyond the 100 mm that any shim or clearance could have");
  EXPECT_NE(refusal(std::numeric_limits<double>::max(), Unit::inch), "");
}

TEST(Length, what_is_not_finite_is_no_length) {
  const std::string sentence = "a length is not a finite number";
  EXPECT_EQ(refusal(std::nan("")), sentence);
  EXPECT_EQ(refusal(std::numeric_limits<double>::infinity()), sentence);
  EXPECT_EQ(refusal(-std::numeric_limits<double>::infinity(), Unit::um), sentence);
}

TEST(UnitNamed, knows_the_ways_a_unit_is_written) {
  for (const char* name : {"mm", "MM", " mm ", "\u00a0mm"}) EXPECT_EQ(unit_named(name), Unit::mm);
  for (const char* name : {"in", "in.", "inch", "\"", "\u2033", "IN"})
    EXPECT_EQ(unit_named(name), Unit::inch) << name;
  EXPECT_EQ(unit_named("Thou"), Unit::thou);
  for (const char* name : {"um", "\u00b5m", "\u03bcm", "UM"})
    EXPECT_EQ(unit_named(name), Unit::um) << name;
  for (const char* name : {"", "m", "cm", "millimetre", "\u00b5", "mm mm", "in in"})
    EXPECT_EQ(unit_named(name), std::nullopt) << name;
}

TEST(NumberWritten, takes_a_plain_decimal_with_comma_or_point) {
  struct Case {
    const char* text;
    double number;
  };
  for (const Case& c : {Case{"275", 275},
                        {"2.75", 2.75},
                        {"2,75", 2.75},
                        {" 0,10 ", 0.1},
                        {".108", 0.108},
                        {",5", 0.5},
                        {"5.", 5},
                        {"+1.5", 1.5},
                        {"+,5", 0.5},
                        {"-0.05", -0.05},
                        {"-,05", -0.05},
                        {"007", 7},
                        {"\u00a00.2\u00a0", 0.2}})
    EXPECT_EQ(number_written(c.text), c.number) << c.text;
}

TEST(NumberWritten, takes_nothing_else) {
  for (const char* text :
       {"",      " ",      ".",  ",",      "-",          "+",       "-.",      "+-1",       "-+1",
        "--1",   "++1",    "1-", "1+",     "1-2",        "1,234.5", "1.234,5", "1,234,567", "1..2",
        "1e3",   "1E3",    "1e", "inf",    "nan",        "NaN",     "0x10",    "1 2",       "1'000",
        "1_000", "2.75mm", "a",  "\u2212", "1\u00a0000", "\u0661"})
    EXPECT_EQ(number_written(text), std::nullopt) << text;
}

TEST(LengthWritten, takes_a_number_with_a_unit) {
  struct Case {
    const char* text;
    Length length;
  };
  for (const Case& c : {Case{"0.004 in", 0.1016_mm},
                        {"4 thou", 0.1016_mm},
                        {"4thou", 0.1016_mm},
                        {"0,10 mm", 0.1_mm},
                        {"0.10mm", 0.1_mm},
                        {".108\"", 2.7432_mm},
                        {".108 \"", 2.7432_mm},
                        {"250 \u00b5m", 0.25_mm},
                        {"250 \u03bcm", 0.25_mm},
                        {"250um", 0.25_mm},
                        {"0,1\u00a0MM", 0.1_mm},
                        {"-4 THOU", -(0.1016_mm)},
                        {"2.75", 2.75_mm},
                        {" 2,75 ", 2.75_mm}})
    EXPECT_EQ(length_written(c.text), c.length) << c.text;
}

TEST(LengthWritten, takes_a_bare_number_in_the_unit_said) {
  EXPECT_EQ(length_written("4", Unit::thou), 0.1016_mm);
  EXPECT_EQ(length_written("0,108", Unit::inch), 2.7432_mm);
  EXPECT_EQ(length_written("250", Unit::um), 0.25_mm);
  EXPECT_EQ(length_written("0.1 mm", Unit::inch), 0.1_mm) << "its own unit comes first";
}

TEST(LengthWritten, is_empty_where_the_text_is_no_length) {
  for (const char* text :
       {"", " ", "mm", "\"", "abc", "0.1 m", "1/8 in", "0.1 mm 0.2", "0.1 0.2 mm", "1,234.5 mm",
        "--1 mm", "1e3 um", "0.1-0.2 mm", "~0.1 mm", "<0.05"})
    EXPECT_EQ(length_written(text), std::nullopt) << text;
}

TEST(LengthWritten, refuses_a_length_that_cannot_be) {
  EXPECT_THROW(length_written("275"), BadInput);
  EXPECT_THROW(length_written("4 in"), BadInput);
  EXPECT_THROW(length_written("-100.1 mm"), BadInput);
}

TEST(TextOf, a_length_shows_at_least_two_decimals_and_no_idle_ones) {
  EXPECT_EQ(text_of(0.16_mm), "0.16 mm");
  EXPECT_EQ(text_of(0.2_mm), "0.20 mm");
  EXPECT_EQ(text_of(2.755_mm), "2.755 mm");
  EXPECT_EQ(text_of(Length()), "0.00 mm");
  EXPECT_EQ(text_of(-(0.05_mm)), "-0.05 mm");
  EXPECT_EQ(text_of(Length::nanometres(1)), "0.000001 mm");
  EXPECT_EQ(text_of(Length::nanometres(-1)), "-0.000001 mm");
  EXPECT_EQ(text_of(25.4_mm), "25.40 mm");
  EXPECT_EQ(text_of(100.0_mm), "100.00 mm");
}

TEST(TextOf, a_length_reads_back_as_itself) {
  for (std::int64_t nm = -3'000'000; nm <= 3'000'000; nm += 997) {
    const Length length = Length::nanometres(nm);
    ASSERT_EQ(length_written(text_of(length)), length) << nm;
  }
}

}  // namespace
}  // namespace shimwright
