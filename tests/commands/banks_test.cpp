// SPDX-License-Identifier: MPL-2.0
#include "commands/banks.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "commands/entries.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright::commands {
namespace {

using testing::HasSubstr;

std::string trouble_with(std::string_view text, Arrangement arrangement, int cylinders) {
  try {
    banks_in(text, arrangement, cylinders);
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

TEST(Banks, two_are_read_with_their_names_the_upper_one_first) {
  const auto banks = banks_in("front 1-3 / rear 2-4", Arrangement::vee, 4);
  ASSERT_EQ(banks.size(), 2U);
  EXPECT_EQ(banks[0].name, "front");
  EXPECT_THAT(banks[0].cylinders, testing::ElementsAre(1, 3));
  EXPECT_TRUE(banks[0].exhaust_above);
  EXPECT_EQ(banks[1].name, "rear");
  EXPECT_THAT(banks[1].cylinders, testing::ElementsAre(2, 4));
  EXPECT_FALSE(banks[1].exhaust_above);
}

TEST(Banks, are_written_as_they_are_read) {
  for (const char* text : {"right 2-4 / left 1-3", "1-2 / 3-4", "lower row 4-3 / upper 2-1"})
    EXPECT_EQ(banks_written(banks_in(text, Arrangement::flat, 4)), text);
  EXPECT_EQ(banks_written(banks_in("4, 3, 2, 1", Arrangement::in_line, 4)), "4-3-2-1");
}

TEST(Banks, none_given_are_the_usual_ones) {
  EXPECT_EQ(banks_written(banks_in(" ", Arrangement::vee, 6)), "right 2-4-6 / left 1-3-5");
  EXPECT_EQ(banks_written(banks_in("", Arrangement::in_line, 3)), "1-2-3");
}

TEST(Banks, a_v_or_flat_engine_has_an_even_number_of_cylinders) {
  EXPECT_EQ(trouble_with("1-3-5 / 2-4", Arrangement::vee, 5),
            "a V engine has as many cylinders in one bank as in the other: 5 do not come out even");
  EXPECT_THAT(trouble_with("", Arrangement::flat, 1), HasSubstr("even"));
}

TEST(Banks, both_hold_as_many) {
  EXPECT_EQ(trouble_with("1-2-3 / 4", Arrangement::vee, 4),
            "one bank has 3 cylinders and the other 1: a V engine has as many in each");
}

TEST(Banks, hold_each_cylinder_once) {
  EXPECT_EQ(trouble_with("1-2-3", Arrangement::in_line, 4), "the banks leave out cylinder 4");
  EXPECT_EQ(trouble_with("1-2 / 2-4", Arrangement::vee, 4),
            "the banks name cylinder 2 more than once and leave out cylinder 3");
  EXPECT_EQ(trouble_with("1-2-3-4-4", Arrangement::in_line, 4),
            "the banks name cylinder 4 more than once");
  EXPECT_EQ(trouble_with("0-1", Arrangement::in_line, 1),
            "the banks name cylinder 0: the engine has cylinder 1 only");
  EXPECT_EQ(trouble_with("0-1", Arrangement::in_line, 2),
            "the banks name cylinder 0 and leave out cylinder 2: the engine has cylinders 1 and 2");
  EXPECT_EQ(trouble_with("1-2-3-9", Arrangement::in_line, 4),
            "the banks name cylinder 9 and leave out cylinder 4: the engine has cylinders 1 to "
            "4");
}

TEST(Banks, a_novel_of_cylinders_is_cut_short) {
  std::string novel = "1";
  for (int cylinder = 3; cylinder < 2000; ++cylinder) novel += "-" + std::to_string(cylinder);
  EXPECT_LT(trouble_with(novel, Arrangement::in_line, 2).size(), 160U);
}

TEST(Banks, are_as_many_as_the_arrangement_has) {
  EXPECT_THAT(trouble_with("1-2 / 3-4", Arrangement::in_line, 4), HasSubstr("one bank"));
  EXPECT_THAT(trouble_with("1-2-3-4", Arrangement::vee, 4), HasSubstr("two banks"));
  EXPECT_THAT(trouble_with("1 / 2 / 3-4", Arrangement::flat, 4), HasSubstr("two banks"));
}

TEST(Banks, have_no_quotation_mark_in_their_names) {
  const char* told =
      "a bank's name is a plain word, such as left: leave the quotation mark (\") out";
  for (const char* text : {"\"left\" 1 / right 2", "left 1 / \" 2", "l\"&A1&\" 1 / r 2"})
    EXPECT_EQ(trouble_with(text, Arrangement::vee, 2), told) << text;
}

TEST(Banks, what_is_no_bank_is_told) {
  EXPECT_THAT(trouble_with("left / right", Arrangement::vee, 2), HasSubstr("no cylinders in it"));
  EXPECT_THAT(trouble_with("1-two", Arrangement::in_line, 2), HasSubstr("\"1-two\" is none"));
  EXPECT_THAT(trouble_with("an uncommonly long name 1-2", Arrangement::in_line, 2),
              HasSubstr("too long"));
  EXPECT_THAT(trouble_with("99999999999", Arrangement::in_line, 1), HasSubstr("is none"));
}

}  // namespace
}  // namespace shimwright::commands
