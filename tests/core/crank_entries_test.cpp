// SPDX-License-Identifier: MPL-2.0
#include "core/crank/crank_entries.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <string>
#include <vector>

#include "blank.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

std::vector<double> angles_of(const EntryTable& table) {
  const auto firing = read_firing(table);
  std::vector<double> angles;
  for (int cylinder = 1; firing && cylinder <= firing->cylinders(); ++cylinder)
    angles.push_back(firing->angle_of(cylinder).degrees());
  return angles;
}

using Angles = std::vector<double>;

std::string refusal(const std::function<void()>& question) {
  try {
    question();
  } catch (const BadInput& trouble) {
    return trouble.what();
  }
  return "none";
}

std::string firing_refusal(const EntryTable& table) {
  return refusal([&] { read_firing(table); });
}

TEST(FiringEntries, one_cell_is_the_firing_in_a_line) {
  EXPECT_EQ(angles_of({{"1-3-4-2"}}), (Angles{0, 540, 180, 360}));
  EXPECT_EQ(angles_of({{"1 at 0, 2 at 270"}}), (Angles{0, 270}));
}

TEST(FiringEntries, a_bare_one_is_a_single) { EXPECT_EQ(angles_of({{1.0}}), Angles{0}); }

TEST(FiringEntries, rows_are_cylinders_and_their_angles_in_any_order) {
  EXPECT_EQ(angles_of({{2.0, 270.0}, {1.0, 0.0}}), (Angles{0, 270}));
  EXPECT_EQ(angles_of({{1.0, 0.0}}), Angles{0});
}

TEST(FiringEntries, a_header_and_blank_rows_are_skipped) {
  EXPECT_EQ(angles_of({{"cylinder", "fires at"},
                       {1.0, 0.0},
                       {blank, ""},
                       {2.0, 412.5},
                       {"", " "},
                       {blank, blank}}),
            (Angles{0, 412.5}));
}

TEST(FiringEntries, nothing_given_is_no_engine) {
  for (const EntryTable& table :
       {EntryTable(), EntryTable{{blank}}, EntryTable{{0.0}}, EntryTable{{" "}},
        EntryTable{{"", blank}, {blank, ""}}, EntryTable{{"cylinder", "angle"}, {blank, blank}}})
    EXPECT_FALSE(read_firing(table).has_value());
}

TEST(FiringEntries, what_is_missing_is_told_with_its_place) {
  EXPECT_EQ(firing_refusal({{"cylinder", "angle"}, {1.0, 0.0}, {2.0, ""}}),
            "firing, row 3, firing angle: it is missing");
  EXPECT_EQ(firing_refusal({{1.0, 0.0}, {blank, 270.0}}), "firing, row 2, cylinder: it is missing");
  EXPECT_EQ(firing_refusal({{1.0, 0.0}, {2.0, "270 deg"}}),
            "firing, row 2, firing angle: \"270 deg\" is not a number");
  EXPECT_EQ(firing_refusal({{blank, "0 deg"}, {2.0, 270.0}}),
            "firing, row 1, cylinder: it is missing")
      << "no heading: one of its columns is blank";
  EXPECT_EQ(firing_refusal({{1.0}, {3.0}, {2.0}}),
            "firing: the table has 1 column; at least 2 are due: cylinder and firing angle");
}

TEST(FiringEntries, what_cannot_be_is_told) {
  EXPECT_EQ(firing_refusal({{"1-3-4"}}), "the firing order leaves out cylinder 2");
  EXPECT_EQ(firing_refusal({{4.0}}), "the firing order leaves out cylinders 1, 2 and 3");
  EXPECT_EQ(firing_refusal({{1.0, 0.0}, {1.0, 360.0}}),
            "the firing order names cylinder 1 more than once");
  EXPECT_NE(firing_refusal({{1.0, 0.0}, {2.0, 721.0}}), "none");
  EXPECT_NE(firing_refusal({{1.0, 0.0}, {17.0, 90.0}}), "none");
  EXPECT_NE(firing_refusal({{1.0, 0.0}, {2.5, 90.0}}), "none");
  EXPECT_NE(firing_refusal({{1.0, std::numeric_limits<double>::quiet_NaN()}}), "none");
}

Angles timing_of(const EntryTable& table) {
  const ValveTiming timing = read_timing(table);
  return {timing.inlet_opens_before_tdc.degrees(), timing.inlet_closes_after_bdc.degrees(),
          timing.exhaust_opens_before_bdc.degrees(), timing.exhaust_closes_after_tdc.degrees()};
}

std::string timing_refusal(const EntryTable& table) {
  return refusal([&] { read_timing(table); });
}

TEST(TimingEntries, are_a_row_or_a_column_of_four) {
  EXPECT_EQ(timing_of({{15.0, 55.0, 50.0, -5.0}}), (Angles{15, 55, 50, -5}));
  EXPECT_EQ(timing_of({{15.0}, {55.0}, {50.0}, {-5.0}}), (Angles{15, 55, 50, -5}));
}

TEST(TimingEntries, a_blank_takes_its_default_and_zero_is_a_timing) {
  EXPECT_EQ(timing_of({{blank, 0.0, "", 12.5}}), (Angles{20, 0, 60, 12.5}));
  for (const EntryTable& table :
       {EntryTable(), EntryTable{{blank}}, EntryTable{{0.0}}, EntryTable{{blank, "", blank, " "}}})
    EXPECT_EQ(timing_of(table), (Angles{20, 60, 60, 20}));
}

TEST(TimingEntries, text_is_refused_not_replaced_by_the_default) {
  EXPECT_EQ(timing_refusal({{20.0}, {"60 ABDC"}, {60.0}, {20.0}}),
            "timing, inlet closes after BDC: \"60 ABDC\" is not a number of degrees");
}

TEST(TimingEntries, of_another_shape_are_refused) {
  EXPECT_EQ(timing_refusal({{20.0, 60.0}, {60.0, 20.0}}),
            "timing is a row or a column of four numbers of degrees, not 2 by 2 cells");
  EXPECT_EQ(timing_refusal({{20.0, 60.0, 60.0, 20.0, 5.0}}),
            "timing is a row or a column of four numbers of degrees, not 1 by 5 cells");
  EXPECT_NE(timing_refusal({{20.0}, {60.0}, {60.0}, {20.0}, {blank}}), "none");
  EXPECT_NE(timing_refusal({{20.0, 60.0, 60.0}}), "none");
  EXPECT_NE(timing_refusal({{20.0}}), "none");
}

TEST(TimingEntries, beyond_two_turns_are_refused_with_their_place) {
  EXPECT_EQ(timing_refusal({{20.0, 60.0, 60.0, 1000.0}}),
            "timing, exhaust closes after TDC: a crank angle of 1000\u00b0 is beyond the 720\u00b0 "
            "of two turns");
  EXPECT_NE(timing_refusal({{std::numeric_limits<double>::infinity(), 60.0, 60.0, 20.0}}), "none");
}

TEST(MarginEntry, is_a_number_of_degrees) {
  EXPECT_EQ(read_margin(25.0), 25_deg);
  EXPECT_EQ(read_margin(-5.0), CrankAngle() - 5_deg) << "told apart where the stops are sought";
}

TEST(MarginEntry, not_given_or_zero_is_the_usual_one) {
  EXPECT_EQ(read_margin(blank), usual_margin);
  EXPECT_EQ(read_margin(" "), usual_margin);
  EXPECT_EQ(read_margin(0.0), usual_margin);
}

TEST(MarginEntry, as_text_is_refused) {
  EXPECT_EQ(refusal([] { read_margin("15 deg"); }),
            "margin: \"15 deg\" is not a number of degrees");
}

}  // namespace
}  // namespace shimwright
