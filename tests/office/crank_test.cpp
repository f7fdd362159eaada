// SPDX-License-Identifier: MPL-2.0
//
// CRANK.STOPS in the real office. Which stops are the best, the tests of the core prove.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using Texts = std::vector<std::string>;

// The answer's column in Z1:Z9, one row more than a four has.
Texts part(Sheet& sheet, const std::string& arguments, const std::string& name) {
  sheet.put_matrix("Z1:Z8", "=CRANK.STOPS(" + arguments + ";\"" + name + "\")");
  const Texts found = sheet.texts("Z1:Z8");
  sheet.put_matrix("Z1:Z8", "");
  return found;
}

// Two stops one full turn apart: common practice, no source.
TEST(CrankStops, of_an_inline_four_are_two_a_full_turn_apart) {
  Sheet sheet;
  const std::string four = "\"1-3-4-2\";;";
  EXPECT_EQ(part(sheet, four, "stop"), (Texts{"1", "1", "1", "1", "2", "2", "2", "2"}));
  EXPECT_EQ(part(sheet, four, "angle"), (Texts{"0", "0", "0", "0", "360", "360", "360", "360"}));
  EXPECT_EQ(part(sheet, four, "cylinder"), (Texts{"1", "1", "2", "3", "2", "3", "4", "4"}));
  EXPECT_EQ(part(sheet, four, "side"), (Texts{"inlet", "exhaust", "inlet", "exhaust", "exhaust",
                                              "inlet", "inlet", "exhaust"}));
  EXPECT_EQ(part(sheet, four, "clear"),
            (Texts{"120", "120", "160", "160", "160", "160", "120", "120"}));
}

// A V-twin at 45 degrees on one pin: near its closing at cylinder 1's TDC, the exhaust valve of
// cylinder 2 is best measured at its own. By hand: closed 20 past overlap, stopped 45 past it.
TEST(CrankStops, tell_how_far_each_valve_is_clear_and_name_it_where_that_is_most) {
  Sheet sheet;
  const std::string twin = "\"1 at 0, 2 at 315\";;10";
  EXPECT_EQ(part(sheet, twin, "cylinder"), (Texts{"1", "1", "2", "1", "2", "2", "error", "error"}));
  EXPECT_EQ(part(sheet, twin, "side")[2], "exhaust");
  EXPECT_EQ(part(sheet, twin, "clear"),
            (Texts{"120", "120", "25", "25", "120", "120", "error", "error"}));
  const Texts words = part(sheet, twin, "words");
  EXPECT_TRUE(words[2].ends_with("measure here: cylinder 1: inlet and exhaust.")) << words[2];
  EXPECT_TRUE(words[4].ends_with("measure here: cylinder 2: inlet and exhaust.")) << words[4];
}

TEST(CrankStops, are_told_in_words_beside_each_row) {
  Sheet sheet;
  const Texts words = part(sheet, "\"1-3-4-2\";;", "words");
  EXPECT_EQ(words[0],
            "Stop 1: turn the crank forwards to TDC on compression of cylinder 1; measure here: "
            "cylinder 1: inlet and exhaust; cylinder 2: inlet; cylinder 3: exhaust.");
  EXPECT_EQ(words[3], words[0]);
  EXPECT_EQ(
      words[4],
      "Stop 2: turn the crank forwards to TDC on compression of cylinder 4, 360\u00b0 on from "
      "stop 1; measure here: cylinder 2: exhaust; cylinder 3: inlet; cylinder 4: inlet and "
      "exhaust.");
  EXPECT_EQ(words[7], words[4]);
}

TEST(CrankStops, as_a_whole_table_have_five_columns) {
  Sheet sheet;
  EXPECT_EQ(sheet.number_of("=COLUMNS(CRANK.STOPS(\"1-3-4-2\"))"), 5);
  EXPECT_EQ(sheet.number_of("=ROWS(CRANK.STOPS(\"1-3-4-2\"))"), 8);
  sheet.put_matrix("Z1:AD2", "=CRANK.STOPS(1)");
  EXPECT_EQ(sheet.texts("Z1:AD2"),
            (Texts{"1", "0", "1", "inlet", "120", "1", "0", "1", "exhaust", "120"}));
}

TEST(CrankStops, words_of_a_part_compare_equal) {
  Sheet sheet;
  sheet.put_matrix("A1:A8", "=CRANK.STOPS(\"1-3-4-2\";;;\"side\")");
  EXPECT_EQ(sheet.number_of("=A1=\"inlet\""), 1);
  EXPECT_EQ(sheet.number_of("=COUNTIF(A1:A8;\"exhaust\")"), 4);
  EXPECT_EQ(sheet.number_of("=MATCH(\"exhaust\";A1:A8;0)"), 2);
}

TEST(CrankStops, take_rows_of_cylinders_and_angles) {
  Sheet sheet;
  sheet.put("A1", "cylinder");
  sheet.put("B1", "fires at");
  sheet.put_column("A2", {1});
  sheet.put_column("B2", {0});
  sheet.put_column("A4", {2});  // row 3 is blank, and so is row 5
  sheet.put_column("B4", {270});
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1:B5;;;\"angle\"))"), 270);
  EXPECT_EQ(sheet.number_of("=ROWS(CRANK.STOPS(A1:B5))"),
            sheet.number_of("=ROWS(CRANK.STOPS(\"1 at 0, 2 at 270\"))"));
}

TEST(CrankStops, take_the_firing_out_of_a_cell) {
  Sheet sheet;
  sheet.put_text("A1", "1-3-4-2");
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;;;\"angle\"))"), 360);
  sheet.put_local("A1", "1-2-3");  // as typed: text in LibreOffice 7.4, a date in 25.2
  if (sheet.number_of("=ISTEXT(A1)") == 1) {
    EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;;;\"angle\"))"), 240);
  }
  sheet.put_text("A2", "1");
  EXPECT_EQ(sheet.number_of("=ROWS(CRANK.STOPS(A2))"), 2);
}

TEST(CrankStops, of_no_firing_are_one_row_of_empty_text) {
  Sheet sheet;
  for (const char* blank : {"A1", "A1:B5", "\"\""}) {
    const std::string stops = "CRANK.STOPS(" + std::string(blank);
    EXPECT_EQ(sheet.number_of("=ROWS(" + stops + "))"), 1);
    EXPECT_EQ(sheet.number_of("=" + stops + ";;;\"side\")=\"\""), 1);
    EXPECT_EQ(sheet.number_of("=COUNT(" + stops + "))"), 0);
  }
}

// A twin that fires 180 degrees apart is done in one stop from where cylinder 2's inlet valve has
// closed, 60, to where cylinder 1's exhaust valve opens, 180 - 60, each with the margin kept; by
// hand.
TEST(CrankStops, heed_timing_and_margin) {
  Sheet sheet;
  sheet.put("A1", "1 at 0, 2 at 180");
  EXPECT_EQ(sheet.number_of("=CRANK.STOPS(A1;;;\"angle\")"), 90);
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;;30;\"stop\"))"), 1);
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;;31;\"stop\"))"), 2);
  sheet.put("B3", 100);
  EXPECT_EQ(sheet.number_of("=CRANK.STOPS(A1;B1:B4;10;\"angle\")"), 70) << "blanks are defaults";
  sheet.put("B3", 101);
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;B1:B4;10;\"stop\"))"), 2);
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(A1;{20;60;101;20};10;\"stop\"))"), 2) << "as a row";
}

TEST(CrankStops, of_a_blank_or_zero_margin_are_those_of_thirty_degrees) {
  Sheet sheet;
  sheet.put("B3", 61);  // with a margin below 29.5 one stop would do
  const std::string stops = "=MAX(CRANK.STOPS(\"1 at 0, 2 at 180\";B1:B4;";
  EXPECT_EQ(sheet.number_of(stops + "29;\"stop\"))"), 1);
  for (const char* given : {"30", "", "0", "Z99", "\"\""})
    EXPECT_EQ(sheet.number_of(stops + given + ";\"stop\"))"), 2) << given;
}

TEST(CrankStops, refuse_what_cannot_be) {
  Sheet sheet;
  sheet.put_column("A1", {1, 1});
  sheet.put_column("B1", {0, 360});
  for (const char* call :
       {"\"1-3-3-2\"", "\"1-3-4\"", "\"four\"", "4", "-1", "A1:B2", "A1:A2", "1;90", "1;A1:B2",
        "1;;\"wide\"", "1;;-1", "1;;181", "1;;;\"colour\"", "1;{179|179|60|20};179"})
    EXPECT_EQ(sheet.error_of("=CRANK.STOPS(" + std::string(call) + ")"), bad_argument) << call;
}

TEST(CrankStops, of_sixteen_cylinders_reach_every_valve) {
  Sheet sheet;
  const std::string stops = "CRANK.STOPS(\"1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16\";;;";
  sheet.put_matrix("A1:A48", "=IFERROR(" + stops + "\"cylinder\");\"\")");
  sheet.put_matrix("B1:B48", "=IFERROR(" + stops + "\"side\");\"\")");
  EXPECT_EQ(sheet.number_of("=SUMPRODUCT(COUNTIFS(A1:A48;ROW(A1:A16);B1:B48;\"inlet\")>0)"), 16);
  EXPECT_EQ(sheet.number_of("=SUMPRODUCT(COUNTIFS(A1:A48;ROW(A1:A16);B1:B48;\"exhaust\")>0)"), 16);
}

}  // namespace
}  // namespace shimwright::tests
