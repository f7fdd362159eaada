// SPDX-License-Identifier: MPL-2.0
//
// The functions for a user whose decimal mark is the comma.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

TEST(DecimalComma, is_shown_in_results) {
  Sheet sheet;
  EXPECT_EQ(sheet.text_of("=SHIM.IDEAL(0.1;2.85;0.2)"), "2,75");
}

TEST(DecimalComma, is_read_in_formulas_as_typed) {
  Sheet sheet;
  sheet.put_local("A1", "=CLEARANCE.MARGIN(0,17;0,16;0,2)");
  EXPECT_EQ(sheet.number("A1"), 0.01);
}

TEST(DecimalComma, is_read_in_text_with_a_unit) {
  Sheet sheet;
  EXPECT_EQ(sheet.number_of("=LENGTH.MM(\"0,10 mm\")"), 0.1);
  EXPECT_EQ(sheet.number_of("=LENGTH.MM(\"0.10 mm\")"), 0.1);
  EXPECT_EQ(sheet.number_of("=SHIM.MM(\"2,75\")"), 2.75);
  EXPECT_EQ(sheet.number_of("=SHIM.MM(\"2.75\")"), 2.75);
}

TEST(DecimalComma, in_a_text_cell_is_not_taken_for_a_reading) {
  Sheet sheet;
  sheet.put_text("A1", "0,10");
  EXPECT_EQ(sheet.text_of("=CLEARANCE.STATE(A1;0.16;0.2)"), "unread");
}

TEST(DecimalComma, of_a_mark_typed_as_a_number_is_read) {
  Sheet sheet;
  sheet.put_local("A1", "2,75");
  EXPECT_EQ(sheet.number_of("=SHIM.MM(A1)"), 2.75);
}

TEST(DecimalComma, in_firing_angles_is_a_decimal_mark) {
  Sheet sheet;
  EXPECT_EQ(sheet.number_of("=MAX(CRANK.STOPS(\"1 at 0, 2 at 412,5\";;;\"angle\"))"), 412.5);
  sheet.put_local("A1", "1");
  sheet.put_local("B1", "0");
  sheet.put_local("A2", "2");
  sheet.put_local("B2", "412,5");
  EXPECT_EQ(sheet.text_of("=MAX(CRANK.STOPS(A1:B2;;;\"angle\"))"), "412,5");
}

TEST(DecimalComma, leaves_the_words_of_parts_as_they_are) {
  Sheet sheet;
  EXPECT_EQ(sheet.text_of("=CRANK.STOPS(1;;;\"side\")"), "inlet");
  EXPECT_EQ(sheet.text_of("=INDEX(SHIM.STEPS({\"A\";\"\";0.1;2.8;0.16;0.2};{\"sale\";\"\";2.7};;;"
                          "\"in\");1)"),
            "2,7");
}

}  // namespace
}  // namespace shimwright::tests
