// SPDX-License-Identifier: MPL-2.0
#include "core/crank/firing.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <string>
#include <vector>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

std::vector<double> degrees_of(const Firing& firing) {
  std::vector<double> degrees;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
    degrees.push_back(firing.angle_of(cylinder).degrees());
  return degrees;
}

std::string trouble_with(const char* order) {
  try {
    Firing::in_order(order);
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

std::string trouble_with(std::vector<FiringRow> rows) {
  try {
    Firing::at_angles(rows);
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

// Every even interval and every thousandth of a degree is a whole number of parts.
static_assert([] {
  for (std::int64_t n = 1; n <= Firing::most_cylinders; ++n)
    if (whole_cycle.parts() % n != 0) return false;
  return CrankAngle::parts_in_degree % 1000 == 0;
}());
static_assert((CrankAngle() - 90_deg).in_cycle() == 630_deg);
static_assert(whole_cycle.in_cycle() == CrankAngle());

TEST(Firing, cylinders_fire_evenly_within_two_turns) {
  // Order: Wikipedia, "Firing order", table. A four fires every 180 degrees of crank.
  EXPECT_EQ(degrees_of(Firing::in_order("1-3-4-2")), (std::vector<double>{0, 540, 180, 360}));
  EXPECT_EQ(degrees_of(Firing::in_order("1-2-3")), (std::vector<double>{0, 240, 480}));
  EXPECT_EQ(degrees_of(Firing::in_order("1")), (std::vector<double>{0}));
}

TEST(Firing, in_an_inline_four_or_six_the_cylinders_that_rise_together_add_up_to_one_more) {
  // Orders: Wikipedia, "Firing order", table; the six also Auto Engine Repair (Goodheart-Willcox
  // 2021), fig. 6-2. Cylinders a full turn apart share a throw: 1 and 4, 2 and 3; 1 and 6 and so
  // on.
  for (const auto* order : {"1-3-4-2", "1-2-4-3", "1-5-3-6-2-4"}) {
    const Firing firing = Firing::in_order(order);
    for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
      EXPECT_EQ((firing.angle_of(firing.cylinders() + 1 - cylinder) - firing.angle_of(cylinder))
                    .in_cycle(),
                360_deg)
          << order;
  }
}

TEST(Firing, an_order_may_begin_with_any_cylinder) {
  EXPECT_EQ(degrees_of(Firing::in_order("4-2-1-3")), degrees_of(Firing::in_order("1-3-4-2")));
}

TEST(Firing, an_order_may_be_written_with_other_separators) {
  const auto plain = degrees_of(Firing::in_order("1-3-4-2"));
  for (const auto* written :
       {" 1 - 3 - 4 - 2 ", "1,3,4,2", "1, 3, 4, 2", "1 3 4 2", "1/3/4/2", "1;3;4;2",
        "1\u20133\u20134\u20132", "1\u22123\u22124\u22122", "1\u00a03\u00a04\u00a02", "1  3\t4 2"})
    EXPECT_EQ(degrees_of(Firing::in_order(written)), plain) << written;
}

TEST(Firing, a_wrong_order_is_told_by_its_cylinders) {
  EXPECT_EQ(trouble_with("1-3-4"), "the firing order leaves out cylinder 2");
  EXPECT_EQ(trouble_with("1-3-4-4"),
            "the firing order names cylinder 4 more than once and leaves out cylinder 2");
  EXPECT_EQ(trouble_with("1-2-2-3-3"), "the firing order names cylinders 2 and 3 more than once");
  EXPECT_EQ(trouble_with("1-6-4"), "the firing order leaves out cylinders 2, 3 and 5");
  EXPECT_EQ(trouble_with("1-0-2"),
            "the firing order names cylinder 0: cylinders count 1, 2, 3 and so on");
  EXPECT_EQ(trouble_with("1-2-17"),
            "the firing order names cylinder 17: an engine may have 1 to 16 cylinders");
  EXPECT_EQ(trouble_with(""), "the firing order is empty");
  EXPECT_EQ(trouble_with("  "), "the firing order is empty");
  EXPECT_EQ(trouble_with("1-3-4-2-"),
            "the firing order \"1-3-4-2-\" breaks off after its last hyphen");
  for (const auto* text : {"one", "1-x-2", "1--2", "-1-2", "1.3.4.2", "1-99999999999", "1-3-4-2a"})
    EXPECT_THAT(trouble_with(text), testing::HasSubstr("is not numbers of cylinders with a hyphen"))
        << text;
}

TEST(Firing, an_order_of_a_known_engine_names_its_cylinders_and_no_others) {
  const auto trouble_of = [](int cylinders, const char* order) -> std::string {
    try {
      Firing::in_order(order, cylinders);
    } catch (const BadInput& trouble) {
      return trouble.what();
    }
    return "none";
  };
  EXPECT_EQ(trouble_of(2, "2-1"), "none");
  EXPECT_EQ(trouble_of(2, "1-2-3"),
            "the firing order names cylinder 3: the engine has cylinders 1 and 2");
  EXPECT_EQ(trouble_of(2, "1-3"),
            "the firing order names cylinder 3 and leaves out cylinder 2: the engine has cylinders "
            "1 and 2");
  EXPECT_EQ(trouble_of(2, "3-1-3-5-1"),
            "the firing order names cylinders 3 and 5, names cylinder 1 more than once and leaves "
            "out cylinder 2: the engine has cylinders 1 and 2");
  EXPECT_EQ(trouble_of(1, "1-2"),
            "the firing order names cylinder 2: the engine has cylinder 1 only");
  EXPECT_EQ(trouble_of(6, "1-5-3"), "the firing order leaves out cylinders 2, 4 and 6");
  EXPECT_EQ(trouble_of(6, "1-5-3-6-2-4-7"),
            "the firing order names cylinder 7: the engine has cylinders 1 to 6");
  const std::vector<FiringRow> rows{{1, 0}, {2, 270}, {3, 400}};
  EXPECT_EQ(Firing::at_angles(rows, 3).cylinders(), 3);
  EXPECT_THROW(Firing::at_angles(rows, 2), BadInput);
  EXPECT_THROW(Firing::at_angles(rows, 4), BadInput);
}

TEST(Firing, up_to_sixteen_cylinders) {
  EXPECT_EQ(Firing::in_order("1-2-3-4-5-6-7-8-9-10-11-12-13-14-15-16").cylinders(), 16);
  std::string long_order = "1";
  for (int i = 0; i < 5000; ++i) long_order += "-1";
  EXPECT_EQ(trouble_with(long_order.c_str()), "the firing order names cylinder 1 more than once");
}

TEST(Firing, uneven_firing_is_given_by_angles_in_any_order) {
  const std::vector<FiringRow> rows{{2, 270}, {1, 0}};
  EXPECT_EQ(degrees_of(Firing::at_angles(rows)), (std::vector<double>{0, 270}));
  const std::vector<FiringRow> ends{{1, 720}, {2, 720}};
  EXPECT_EQ(degrees_of(Firing::at_angles(ends)), (std::vector<double>{0, 0}));
}

TEST(Firing, even_angles_typed_with_nine_decimals_are_the_even_intervals) {
  const std::vector<FiringRow> typed{{1, 0},
                                     {2, 102.857142857},
                                     {3, 205.714285714},
                                     {4, 308.571428571},
                                     {5, 411.428571429},
                                     {6, 514.285714286},
                                     {7, 617.142857143}};
  EXPECT_EQ(degrees_of(Firing::at_angles(typed)), degrees_of(Firing::in_order("1-2-3-4-5-6-7")));
}

TEST(Firing, wrong_angles_are_told) {
  EXPECT_EQ(trouble_with(std::vector<FiringRow>{{1, 0}, {2, 720.5}}),
            "cylinder 2 is said to fire at 720.5\u00b0: a firing angle lies between 0\u00b0 and "
            "720\u00b0");
  EXPECT_THAT(trouble_with(std::vector<FiringRow>{{1, 0}, {2, -90}}),
              testing::StartsWith("cylinder 2 is said to fire at -90\u00b0"));
  EXPECT_EQ(trouble_with(std::vector<FiringRow>{{1, 30}, {2, 300}}),
            "cylinder 1 is said to fire at 30\u00b0: the angles count from its own firing dead "
            "centre, so its own is 0\u00b0");
  EXPECT_EQ(trouble_with(std::vector<FiringRow>{{1, 0}, {3, 300}}),
            "the firing order leaves out cylinder 2");
  EXPECT_EQ(trouble_with(std::vector<FiringRow>{{1, 0}, {1.5, 300}}),
            "the firing order names cylinder 1.5: cylinders count 1, 2, 3 and so on");
  EXPECT_EQ(trouble_with(std::vector<FiringRow>{}), "the firing order is empty");
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_NE(trouble_with(std::vector<FiringRow>{{1, nan}}), "none");
  EXPECT_NE(trouble_with(std::vector<FiringRow>{{nan, 0}}), "none");
  EXPECT_NE(trouble_with(std::vector<FiringRow>{{1e300, 0}}), "none");
}

TEST(CrankAngle, an_angle_beyond_two_turns_or_not_finite_is_refused) {
  EXPECT_EQ(CrankAngle::of(-720).in_cycle(), CrankAngle());
  EXPECT_THROW(CrankAngle::of(720.001), BadInput);
  EXPECT_THROW(CrankAngle::of(std::numeric_limits<double>::infinity()), BadInput);
  EXPECT_THROW(CrankAngle::of(std::numeric_limits<double>::quiet_NaN()), BadInput);
}

}  // namespace
}  // namespace shimwright
