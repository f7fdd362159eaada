// SPDX-License-Identifier: MPL-2.0
//
// The value functions over ranges: element by element, blanks and text in them, shapes.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using Texts = std::vector<std::string>;

// Readings in A1:A4: 0.10, blank, 0.18, text.
void put_readings(Sheet& sheet) {
  sheet.put("A1", 0.10);
  sheet.put("A3", 0.18);
  sheet.put_text("A4", "later");
}

TEST(Range, gives_a_state_for_each_reading) {
  Sheet sheet;
  put_readings(sheet);
  sheet.put_matrix("B1:B4", "=CLEARANCE.STATE(A1:A4;0.16;0.2)");
  EXPECT_EQ(sheet.texts("B1:B4"), (Texts{"tight", "unread", "good", "unread"}));
  EXPECT_EQ(sheet.number_of("=COUNTIF(B1:B4;\"good\")"), 1);
  EXPECT_EQ(sheet.number_of("=B1=\"tight\""), 1);
  EXPECT_EQ(sheet.number_of("=MATCH(\"good\";B1:B4;0)"), 3);
}

TEST(Range, leaves_the_cell_empty_where_a_number_is_not_given) {
  Sheet sheet;
  put_readings(sheet);
  sheet.put_matrix("B1:B4", "=CLEARANCE.MARGIN(A1:A4;0.16;0.2)");
  EXPECT_EQ(sheet.number("B1"), -0.06);
  EXPECT_EQ(sheet.text("B2"), "");
  EXPECT_EQ(sheet.error("B2"), 0);
  EXPECT_EQ(sheet.number("B3"), 0.02);
  EXPECT_EQ(sheet.text("B4"), "");
  EXPECT_EQ(sheet.number_of("=COUNT(B1:B4)"), 2);
  EXPECT_EQ(sheet.number_of("=B2=\"\""), 1);
  EXPECT_EQ(sheet.number_of("=SUMPRODUCT(CLEARANCE.MARGIN(A1:A4;0.16;0.2)<0.01)"), 1);
}

TEST(Range, hands_on_what_is_not_given_as_not_given) {
  Sheet sheet;
  put_readings(sheet);
  sheet.put_matrix("B1:B4", "=CLEARANCE.AFTER(A1:A4;2.85;2.75)");
  sheet.put_matrix("C1:C4", "=CLEARANCE.STATE(B1:B4;0.16;0.2)");
  EXPECT_EQ(sheet.texts("C1:C4"), (Texts{"good", "unread", "loose", "unread"}));
  EXPECT_EQ(sheet.text_of("=CLEARANCE.STATE(B2;0.16;0.2)"), "unread");
}

TEST(Range, gives_empty_text_where_a_word_is_not_to_be_had) {
  Sheet sheet;
  put_readings(sheet);
  sheet.put_column("C1", {0.16, 0.16, 0.16});  // no limits in the last row
  sheet.put_column("D1", {0.2, 0.2, 0.2});
  sheet.put_matrix("B1:B4", "=CLEARANCE.STATE(A1:A4;C1:C4;D1:D4)");
  EXPECT_EQ(sheet.texts("B1:B4"), (Texts{"tight", "unread", "good", ""}));
}

TEST(Range, of_one_row_works_as_one_of_one_column) {
  Sheet sheet;
  sheet.put("A1", 0.1);
  sheet.put("B1", 0.21);
  sheet.put_matrix("A2:B2", "=CLEARANCE.STATE(A1:B1;0.16;0.2)");
  EXPECT_EQ(sheet.texts("A2:B2"), (Texts{"tight", "loose"}));
}

TEST(Range, of_one_cell_is_a_single_value) {
  Sheet sheet;
  sheet.put("A1", 0.1);
  EXPECT_EQ(sheet.text_of("=CLEARANCE.STATE(A1:A1;0.16;0.2)"), "tight");
}

TEST(Range, works_in_arithmetic_around_it) {
  Sheet sheet;
  put_readings(sheet);
  EXPECT_EQ(sheet.number_of("=SUMPRODUCT(CLEARANCE.STATE(A1:A4;0.16;0.2)=\"unread\")"), 2);
}

TEST(Range, of_another_shape_is_an_error) {
  Sheet sheet;
  sheet.put_column("A1", {0.1, 0.1, 0.1});
  sheet.put_column("B1", {2.7, 2.7});
  EXPECT_EQ(sheet.error_of("=SHIM.IDEAL(A1:A3;B1:B2;0.2)"), bad_argument);
  EXPECT_EQ(sheet.error_of("=SHIM.IDEAL(A1:A3;B1:D1;0.2)"), bad_argument);
  EXPECT_EQ(sheet.error_of("=SHIM.LADDER(A1:A3;3;0.05)"), bad_argument);
}

TEST(Range, with_an_error_in_a_cell_is_an_error) {
  Sheet sheet;
  sheet.put("A1", 0.1);
  sheet.put("A2", "=1/0");
  EXPECT_EQ(sheet.error_of("=CLEARANCE.STATE(A1:A2;0.16;0.2)"), argument_error);
}

TEST(Range, with_one_value_that_cannot_be_is_an_error) {
  Sheet sheet;
  sheet.put_column("A1", {0.1, 101});
  EXPECT_EQ(sheet.error_of("=CLEARANCE.STATE(A1:A2;0.16;0.2)"), bad_argument);
}

TEST(Range, of_marks_is_read_mark_by_mark) {
  Sheet sheet;
  sheet.put("A1", 275);
  sheet.put_text("A2", "2755");
  sheet.put_text("A3", "worn");
  sheet.put_matrix("B1:B3", "=SHIM.MM(A1:A3)");
  EXPECT_EQ(sheet.number("B1"), 2.75);
  EXPECT_EQ(sheet.number("B2"), 2.755);
  EXPECT_EQ(sheet.text("B3"), "");
}

TEST(Range, of_two_columns_is_a_table_of_own_marks) {
  Sheet sheet;
  sheet.put_text("A1", "M");
  sheet.put("B1", 2.6);
  sheet.put("A2", 7);
  sheet.put("B2", 2.65);
  sheet.put_text("A3", "Q");  // no size beside it
  EXPECT_EQ(sheet.number_of("=SHIM.MM(\"m \";A1:B3)"), 2.6);
  EXPECT_EQ(sheet.number_of("=SHIM.MM(7;A1:B3)"), 2.65);
  EXPECT_EQ(sheet.number_of("=SHIM.MM(\"M\";A1:B1)"), 2.6);
  EXPECT_EQ(sheet.error_of("=SHIM.MM(\"Q\";A1:B3)"), no_answer);
  EXPECT_EQ(sheet.error_of("=SHIM.MM(275;A1:B3)"), no_answer);
}

TEST(Range, of_readings_gives_two_columns_of_serving_shims) {
  Sheet sheet;
  sheet.put_column("A1", {0.1, 0.25});
  sheet.put_column("B1", {2.85});
  sheet.put_matrix("C1:D2", "=SHIM.RANGE(A1:A2;B1:B2;0.16;0.2)");
  EXPECT_EQ(sheet.number("C1"), 2.75);
  EXPECT_EQ(sheet.number("D1"), 2.79);
  EXPECT_EQ(sheet.text("C2") + sheet.text("D2"), "");
}

TEST(Sizes, may_hold_blanks_text_and_zeros) {
  Sheet sheet;
  sheet.put("A1", 2.7);
  sheet.put_text("A3", "2.75");
  sheet.put("A4", 0.0);
  sheet.put("A5", 2.8);
  EXPECT_EQ(sheet.number_of("=SHIM.PICK(0.1;2.85;0.14;0.3;0.19;A1:A5)"), 2.8);
  sheet.put("A5", "");
  EXPECT_EQ(sheet.number_of("=SHIM.PICK(0.1;2.85;0.14;0.3;0.19;A1:A5)"), 2.7);
}

TEST(Sizes, of_a_picked_range_of_valves_come_one_for_each) {
  Sheet sheet;
  sheet.put_column("A1", {0.1, 0.25, 0.18});
  sheet.put_column("B1", {2.85, 2.75, 2.9});
  sheet.put_matrix("C1:C3", "=SHIM.PICK(A1:A3;B1:B3;0.16;0.2;0.2;SHIM.LADDER(2.5;3;0.05))");
  EXPECT_EQ(sheet.number("C1"), 2.75);
  EXPECT_EQ(sheet.number("C2"), 2.8);
  EXPECT_EQ(sheet.number("C3"), 2.9);
}

TEST(Macros, get_whole_ranges_back) {
  css::uno::Sequence<css::uno::Sequence<rtl::OUString>> states;
  const css::uno::Any answer =
      call("CLEARANCE.STATE",
           {column({number(0.1), text(""), number(0.18)}), number(0.16), number(0.2)});
  css::uno::Sequence<css::uno::Sequence<css::uno::Any>> mixed;
  ASSERT_TRUE(answer >>= mixed);
  ASSERT_EQ(mixed.getLength(), 3);
  rtl::OUString middle;
  ASSERT_TRUE(mixed[1][0] >>= middle);
  EXPECT_EQ(office::from_office(middle), "unread");
}

}  // namespace
}  // namespace shimwright::tests
