// SPDX-License-Identifier: MPL-2.0
//
// CLEARANCE.DRIFT and CLEARANCE.DUE in cells of the real office: the worked example, blanks,
// headings, odd histories, refusals, and long ones beside Calc's own line.
#include <gtest/gtest.h>

#include <cmath>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

constexpr int err_argument = 502;
constexpr int not_available = 32767;

// Distance, clearance and shim of four checks under a row of headings, in A1:C5.
void put_example(Sheet& sheet) {
  sheet.put_row("A1", {"km", "gap", "shim"});
  sheet.put_column("A2", {0, 12000, 24000, 36000});
  sheet.put_column("B2", {0.20, 0.19, 0.20, 0.17});
  sheet.put_column("C2", {2.70, 2.70, 2.68, 2.68});
}

// By hand in fractions, as in the tests of core.
TEST(Drift, of_the_worked_example_is_the_one_by_hand) {
  Sheet sheet;
  put_example(sheet);
  sheet.put_matrix("E1:J1", "=CLEARANCE.DRIFT(A2:A5;B2:B5;C2:C5)");
  EXPECT_DOUBLE_EQ(sheet.number("E1"), -0.004 / 3);
  EXPECT_DOUBLE_EQ(sheet.number("F1"), .0002886751345948129);
  EXPECT_DOUBLE_EQ(sheet.number("G1"), 2.904);
  EXPECT_DOUBLE_EQ(sheet.number("H1"), .007745966692414834);
  EXPECT_EQ(sheet.number("I1"), 4);
  EXPECT_DOUBLE_EQ(sheet.number("J1"), 1 - 3.0 / 35);
}

TEST(Drift, is_the_line_that_calc_draws) {
  Sheet sheet;
  put_example(sheet);
  sheet.put_matrix("E1:J1", "=CLEARANCE.DRIFT(A2:A5;B2:B5;C2:C5)");
  sheet.put_matrix("E3:F7", "=LINEST(B2:B5+C2:C5;A2:A5;1;1)");
  EXPECT_NEAR(sheet.number("E1") / (1000 * sheet.number("E3")), 1, 1e-9);
  EXPECT_NEAR(sheet.number("F1") / (1000 * sheet.number("E4")), 1, 1e-9);
  EXPECT_NEAR(sheet.number("G1"), sheet.number("F3"), 1e-9);
  EXPECT_NEAR(sheet.number("H1"), sheet.number("F5"), 1e-9);
  EXPECT_NEAR(sheet.number("J1"), sheet.number("E5"), 1e-9);
}

TEST(Drift, leaves_out_headings_and_checks_with_a_blank) {
  Sheet sheet;
  put_example(sheet);
  const double rate = sheet.number_of("=INDEX(CLEARANCE.DRIFT(A2:A5;B2:B5;C2:C5);1;1)");
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(A1:A9;B1:B9;C1:C9);1;1)"), rate);
  sheet.put("A6", 48000);
  sheet.put("C6", 2.68);
  sheet.put("A7", 50000);
  sheet.put("B7", 0.15);
  sheet.put("A8", 52000);
  sheet.put("B8", 0.15);
  sheet.put("C8", 0);  // no shim is of nothing
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(A1:A9;B1:B9;C1:C9);1;1)"), rate);
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(A1:A9;B1:B9;C1:C9);1;5)"), 4);
}

TEST(Drift, takes_a_gap_of_nothing_and_a_distance_of_nothing_for_values) {
  Sheet sheet;
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT({0;1000;2000};{0.02;0.01;0};2.7);1;5)"), 3);
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT({0;1000;2000};{0.02;0.01;0};2.7);1;1)"), -0.01);
}

TEST(Drift, takes_checks_beside_each_other_as_well) {
  Sheet sheet;
  sheet.put_row("A1", {"0", "12000", "24000", "36000"});
  sheet.put_row("A2", {"0.2", "0.19", "0.2", "0.17"});
  sheet.put_row("A3", {"2.7", "2.7", "2.68", "2.68"});
  EXPECT_DOUBLE_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(A1:D1;A2:D2;A3:D3);1;1)"), -0.004 / 3);
}

TEST(Drift, of_a_valve_that_never_moves_has_no_share_that_a_line_explains) {
  Sheet sheet;
  sheet.put_matrix("E1:J1", "=CLEARANCE.DRIFT({0;1000;2000};{0.15;0.15;0.15};2.8)");
  EXPECT_EQ(sheet.number("E1"), 0);
  EXPECT_EQ(sheet.number("F1"), 0);
  EXPECT_EQ(sheet.number("G1"), 2.95);
  EXPECT_EQ(sheet.text("J1"), "");
}

TEST(Drift, by_medians_passes_over_a_slip) {
  Sheet sheet;
  const std::string of = "{0;10000;20000;30000;40000};{0.2;0.19;0.18;0.17;0.06};2.7";
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(" + of + ";\"median\");1;1)"), -0.001);
  EXPECT_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(" + of + ";\"Median\");1;3)"), 2.9);
  // By hand: heights less 2.86 are 4, 3, 2, 1, -10 hundredths; Sxy is -30, Sxx 10.
  EXPECT_DOUBLE_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(" + of + ";\"least\");1;1)"), -0.003);
  EXPECT_DOUBLE_EQ(sheet.number_of("=INDEX(CLEARANCE.DRIFT(" + of + ");1;1)"), -0.003);
}

class TooLittle : public ::testing::TestWithParam<const char*> {};

TEST_P(TooLittle, is_not_available) {
  Sheet sheet;
  put_example(sheet);
  EXPECT_EQ(sheet.error_of(GetParam()), not_available);
}

INSTANTIATE_TEST_SUITE_P(
    of_checks, TooLittle,
    ::testing::Values("=CLEARANCE.DRIFT(A2:A3;B2:B3;C2:C3)", "=CLEARANCE.DRIFT(A2;B2;C2)",
                      "=CLEARANCE.DRIFT(E2:E9;B2:B9;C2:C9)",
                      "=CLEARANCE.DRIFT({5;5;5};{0.2;0.19;0.18};2.7)",
                      "=CLEARANCE.DRIFT({5;5;5};{0.2;0.19;0.18};2.7;\"median\")",
                      "=CLEARANCE.DRIFT(A2:A5;B2:B5;E2)",
                      "=CLEARANCE.DUE(A2:A3;B2:B3;C2:C3;2.68;0.1;0.2)",
                      "=CLEARANCE.DUE({5;5;5};{0.2;0.19;0.18};2.7;2.68;0.1;0.2)",
                      "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;E2;0.1;0.2)",
                      "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;E2)",
                      "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;\"later\";0.2)"));

class CannotBe : public ::testing::TestWithParam<const char*> {};

TEST_P(CannotBe, is_refused) {
  Sheet sheet;
  put_example(sheet);
  EXPECT_EQ(sheet.error_of(GetParam()), err_argument);
}

INSTANTIATE_TEST_SUITE_P(in_a_history, CannotBe,
                         ::testing::Values("=CLEARANCE.DRIFT(A2:A5;B2:B4;C2:C5)",
                                           "=CLEARANCE.DRIFT(A2:A5;B2:B5;C2:C4)",
                                           "=CLEARANCE.DRIFT(A2:A5;B2:B5;C2:C5;\"mean\")",
                                           "=CLEARANCE.DRIFT(A2:A5;B2:B5;-2.7)",
                                           "=CLEARANCE.DRIFT(A2:A5;A2:A5;C2:C5)",
                                           "=CLEARANCE.DRIFT({1E12;2;3};{0.2;0.19;0.18};2.7)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.2;0.1)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;-2.68;0.1;0.2)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;C2:C5;0.1;0.2)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2;95)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2;1)",
                                           "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2;0.4)"));

// Expected: core's tests of when a valve is due.
TEST(Due, of_the_worked_example_is_the_one_worked_out_elsewhere) {
  Sheet sheet;
  put_example(sheet);
  sheet.put_matrix("E1:G1", "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2)");
  EXPECT_NEAR(sheet.number("E1"), 93'000, 1e-6);
  EXPECT_NEAR(sheet.number("F1"), 60244.16518123619, 1e-6);
  EXPECT_EQ(sheet.text("G1"), "tight");
  sheet.put_matrix("E2:G2", "=CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2;90%)");
  EXPECT_NEAR(sheet.number("F2"), 68884.7855687841, 1e-6);
}

// A blank cell arrives as 0: not given, so 95 %.
TEST(Due, takes_a_blank_confidence_for_none_given) {
  Sheet sheet;
  put_example(sheet);
  EXPECT_NEAR(sheet.number_of("=INDEX(CLEARANCE.DUE(A2:A5;B2:B5;C2:C5;2.68;0.1;0.2;H9);1;2)"),
              60244.16518123619, 1e-6);
}

TEST(Due, of_a_steady_valve_leaves_its_first_entry_empty) {
  Sheet sheet;
  sheet.put_column("A1", {0, 12000, 24000, 36000});
  sheet.put_column("B1", {0.16, 0.17, 0.15, 0.162});
  sheet.put_matrix("E1:G1", "=CLEARANCE.DUE(A1:A4;B1:B4;2.7;2.7;0.1;0.22)");
  EXPECT_EQ(sheet.text("E1"), "");
  EXPECT_EQ(sheet.number_of("=COUNT(E1:G1)"), 1);
  EXPECT_NEAR(sheet.number("F1"), 60400.70375401646, 1e-6);
  EXPECT_EQ(sheet.text("G1"), "steady");
}

TEST(Due, of_a_valve_that_never_moves_leaves_both_empty) {
  Sheet sheet;
  sheet.put_matrix("E1:G1", "=CLEARANCE.DUE({0;1000;2000};{0.15;0.15;0.15};2.8;2.8;0.1;0.2)");
  EXPECT_EQ(sheet.number_of("=COUNT(E1:G1)"), 0);
  EXPECT_EQ(sheet.text("G1"), "steady");
}

// The office's own cells, ten thousand rows, filled down; the last is blank.
TEST(Drift, of_a_long_log_is_the_line_that_calc_draws) {
  Sheet sheet;
  sheet.put_matrix("A1:A10000", "=1000000000+ROW(A1:A10000)*10");
  sheet.put_matrix("B1:B10000", "=0.2-ROW(A1:A10000)/1000000+MOD(ROW(A1:A10000)*7;11)/1000");
  sheet.put_matrix("E1:J1", "=CLEARANCE.DRIFT(A1:A10001;B1:B10001;2.7)");
  sheet.put_matrix("E3:F7", "=LINEST(B1:B10000+2.7;A1:A10000;1;1)");
  EXPECT_EQ(sheet.number("I1"), 10000);
  EXPECT_NEAR(sheet.number("E1") / (1000 * sheet.number("E3")), 1, 1e-6);
  EXPECT_NEAR(sheet.number("F1") / (1000 * sheet.number("E4")), 1, 1e-6);
  sheet.put_matrix("E2:J2", "=CLEARANCE.DRIFT(A1:A10001;B1:B10001;2.7;\"median\")");
  EXPECT_NEAR(sheet.number("E2") / sheet.number("E1"), 1, 1e-3);
}

}  // namespace
}  // namespace shimwright::tests
