// SPDX-License-Identifier: MPL-2.0
#include "core/crank/firing_written.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<double> degrees_in(std::string_view text) {
  const Firing firing = firing_written(text);
  std::vector<double> degrees;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
    degrees.push_back(firing.angle_of(cylinder).degrees());
  return degrees;
}

std::string refusal_of_order(std::string_view text) {
  try {
    firing_written(text);
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

TEST(FiringWritten, an_order_is_read_as_an_even_firing) {
  EXPECT_THAT(degrees_in("1-3-4-2"), ElementsAre(0, 540, 180, 360));
  EXPECT_THAT(degrees_in("1; 2; 3"), ElementsAre(0, 240, 480));
}

TEST(FiringWritten, cylinders_at_degrees_are_read_as_an_uneven_firing) {
  for (const auto* text : {"1 at 0, 2 at 270", "1 AT 0 2 AT 270", "1:0 2:270", "1: 0, 2: 270",
                           "2=270;1=0", "1 @ 0\u00b0, 2 @ 270\u00b0", " 1 at 0 deg,  2 at 270 deg ",
                           "1 at 0\u00ba, 2 at 270\u00ba", "1\u00a0at\u00a00, 2\u00a0at\u00a0270"})
    EXPECT_THAT(degrees_in(text), ElementsAre(0, 270)) << text;
}

TEST(FiringWritten, degrees_may_have_a_decimal_comma_or_point) {
  EXPECT_THAT(degrees_in("1 at 0, 2 at 67,5, 3 at 300.25"), ElementsAre(0, 67.5, 300.25));
}

// A slip of the finger, or fields left blank in what was pasted: nothing else can be meant.
TEST(FiringWritten, commas_too_many_between_cylinders_part_them_as_one_does) {
  EXPECT_THAT(degrees_in("1 at 0,,, 2 at 270"), ElementsAre(0, 270));
  EXPECT_THAT(degrees_in("1 at 0, , 2 at 270,,"), ElementsAre(0, 270));
}

TEST(FiringWritten, what_makes_no_sense_is_told_in_words) {
  EXPECT_THAT(refusal_of_order("1 at 0, 2 at 900"), HasSubstr("between 0\u00b0 and 720\u00b0"));
  EXPECT_THAT(refusal_of_order("1 at 0, 2 at -90"), HasSubstr("between 0\u00b0 and 720\u00b0"));
  EXPECT_THAT(refusal_of_order("1 at 0, 3 at 270"), HasSubstr("leaves out cylinder 2"));
  EXPECT_THAT(refusal_of_order("1 at 0, 1 at 270"), HasSubstr("names cylinder 1 more than once"));
  EXPECT_THAT(refusal_of_order("1 at 90, 2 at 270"), HasSubstr("its own is 0"));
  EXPECT_THAT(refusal_of_order("1 at 0, 2.5 at 270"), HasSubstr("cylinder 2.5"));
  EXPECT_THAT(refusal_of_order("1-3-2-4-2"), HasSubstr("names cylinder 2 more than once"));
  EXPECT_THAT(refusal_of_order(""), HasSubstr("the firing order is empty"));
}

TEST(FiringWritten, of_a_known_engine_either_form_names_its_cylinders_alone) {
  EXPECT_EQ(firing_written("1-2", 2).cylinders(), 2);
  EXPECT_EQ(firing_written("1 at 0, 2 at 270", 2).cylinders(), 2);
  for (const auto* text : {"1", "1-2-3", "1 at 0", "1 at 0, 2 at 270, 3 at 400"})
    EXPECT_THROW(firing_written(text, 2), BadInput) << text;
}

TEST(FiringWritten, a_line_that_is_neither_form_is_told_how_to_be_one) {
  for (const auto* text :
       {"1 at", "at", ":", "1 at 0, 2", "1 at 0 2 270", "1 at zero", "1::0", "1 at 0, at 270",
        "1 at 0,2 at 270", "one at 0", "1 at 0,,2", "1 at 1e3", "1 at 0-2 at 9"})
    EXPECT_THAT(refusal_of_order(text), HasSubstr("such as 1 at 0, 2 at 270")) << text;
}

}  // namespace
}  // namespace shimwright
