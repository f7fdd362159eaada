// SPDX-License-Identifier: MPL-2.0
//
// The table functions in the real office: whole tables, single columns, blanks, trouble. What the
// best plan is, the tests of the core prove.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using Texts = std::vector<std::string>;

// Four valves in A1:F6 with a header and a blank row; sizes on sale in H1:L4.
class Tables : public ::testing::Test {
 protected:
  Tables() {
    sheet.put_row("A1", {"name", "series", "clearance", "shim", "min", "max"});
    sheet.put_row("A2", {"Ex 1", "", "0.10", "2.80", "0.16", "0.20"});
    sheet.put_row("A3", {"Ex 2", "", "0.25", "2.75", "0.16", "0.20"});
    sheet.put_row("A5", {"Ex 3", "", "0.18", "2.90", "0.16", "0.20"});
    sheet.put_row("A6", {"Ex 4", "", "", "2.85", "0.16", "0.20"});
    sheet.put_row("H1", {"kind", "series", "size", "count", "price"});
    sheet.put_row("H2", {"sale", "", "2.70", "", "6.5"});
    sheet.put_row("H3", {"sale", "", "2.75", "", "6.5"});
    sheet.put_row("H4", {"sale", "", "2.80", "", "6.5"});
  }

  // A column of the answer, in N1:N5.
  Texts part(const std::string& function, const std::string& name) {
    const std::string formula = function + "(A1:F6;H1:L4;;\"" + name + "\")";
    sheet.put_matrix("N1:N5", formula);
    const Texts found = sheet.texts("N1:N5");
    sheet.put_matrix("N1:N5", "");
    return found;
  }

  Sheet sheet;
};

TEST_F(Tables, the_plan_has_a_row_for_each_row_of_valves) {
  EXPECT_EQ(part("=SHIM.PLAN", "valve"), (Texts{"Ex 1", "Ex 2", "", "Ex 3", "Ex 4"}));
  EXPECT_EQ(part("=SHIM.PLAN", "action"), (Texts{"buy", "move", "", "keep", "unread"}));
  EXPECT_EQ(part("=SHIM.PLAN", "from"), (Texts{"", "Ex 1", "", "", ""}));
  EXPECT_EQ(part("=SHIM.PLAN", "size"), (Texts{"2.7", "2.8", "", "2.9", "2.85"}));
  EXPECT_EQ(part("=SHIM.PLAN", "after"), (Texts{"0.2", "0.2", "", "0.18", ""}));
  EXPECT_EQ(part("=SHIM.PLAN", "state"), (Texts{"good", "good", "", "good", "unread"}));
  EXPECT_EQ(part("=SHIM.PLAN", "margin"), (Texts{"0", "0", "", "0.02", ""}));
  EXPECT_EQ(part("=SHIM.PLAN", "cost"), (Texts{"6.5", "0", "", "0", "0"}));
}

TEST_F(Tables, a_blank_tail_is_not_read) {
  EXPECT_EQ(sheet.number_of("=ROWS(SHIM.PLAN(A1:F9000;H1:L9000))"), 5);
  EXPECT_EQ(sheet.text_of("=INDEX(SHIM.PLAN(A1:F9000;H1:L9000;;\"action\");4)"), "keep");
}

TEST_F(Tables, words_of_a_part_compare_equal) {
  sheet.put_matrix("N1:N5", "=SHIM.PLAN(A1:F6;H1:L4;;\"action\")");
  EXPECT_EQ(sheet.number_of("=N1=\"buy\""), 1);
  EXPECT_EQ(sheet.number_of("=COUNTIF(N1:N5;\"keep\")"), 1);
  EXPECT_EQ(sheet.number_of("=MATCH(\"unread\";N1:N5;0)"), 5);
}

TEST_F(Tables, a_part_is_named_in_any_case) {
  EXPECT_EQ(sheet.text_of("=SHIM.PLAN(A1:F6;H1:L4;;\" Action \")"), "buy");
}

TEST_F(Tables, an_unknown_part_is_an_error) {
  EXPECT_EQ(sheet.error_of("=SHIM.PLAN(A1:F6;H1:L4;;\"colour\")"), bad_argument);
  EXPECT_EQ(sheet.error_of("=SHIM.ORDER(A1:F6;H1:L4;;\"valve\")"), bad_argument);
}

TEST_F(Tables, without_a_part_the_whole_plan_comes) {
  sheet.put_matrix("N1:U5", "=SHIM.PLAN(A1:F6;H1:L4)");
  EXPECT_EQ(sheet.texts("N2:U2"), (Texts{"Ex 2", "move", "Ex 1", "2.8", "0.2", "good", "0", "0"}));
}

TEST_F(Tables, the_order_and_the_surplus_have_as_many_rows_as_they_need) {
  sheet.put_matrix("N1:R1", "=SHIM.ORDER(A1:F6;H1:L4)");
  EXPECT_EQ(sheet.texts("N1:R1"), (Texts{"", "2.7", "1", "6.5", "6.5"}));
  EXPECT_EQ(sheet.number_of("=ROWS(SHIM.ORDER(A1:F6;H1:L4))"), 1);
  EXPECT_EQ(sheet.number_of("=SHIM.SURPLUS(A1:F6;H1:L4;;\"size\")"), 2.75);
  EXPECT_EQ(sheet.number_of("=SHIM.SURPLUS(A1:F6;H1:L4;;\"count\")"), 1);
}

TEST_F(Tables, nothing_to_buy_is_one_row_of_empty_text) {
  sheet.put_column("C2", {0.18, 0.18});
  sheet.put_matrix("N1:R1", "=SHIM.ORDER(A1:F6;H1:L4)");
  EXPECT_EQ(sheet.texts("N1:R1"), Texts(5));
  EXPECT_EQ(sheet.error_of("=SHIM.ORDER(A1:F6;H1:L4;;\"size\")"), 0);
  EXPECT_EQ(sheet.number_of("=ROWS(SHIM.ORDER(A1:F6;H1:L4))"), 1);
  EXPECT_EQ(sheet.number_of("=SUM(SHIM.ORDER(A1:F6;H1:L4;;\"cost\"))"), 0);
}

TEST_F(Tables, rules_are_heard) {
  sheet.put_row("N10", {"work", "10"});
  sheet.put_row("N11", {"first", "cost"});
  sheet.put_matrix("P1:P5", "=SHIM.PLAN(A1:F6;H1:L4;N10:O11;\"cost\")");
  EXPECT_EQ(sheet.texts("P1:P2"), (Texts{"16.5", "10"}));
}

TEST_F(Tables, sizes_on_sale_may_be_one_blank_cell) {
  EXPECT_EQ(sheet.text_of("=SHIM.PLAN(A1:F6;Z99;;\"action\")"), "none");
}

TEST_F(Tables, the_check_finds_nothing_where_all_is_well) {
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"trouble\")"), "nothing found");
  EXPECT_EQ(sheet.number_of("=SHIM.CHECK(A1:F6;H1:L4;;\"trouble\")=\"nothing found\""), 1);
}

TEST_F(Tables, the_check_tells_in_words_what_the_plan_refuses) {
  sheet.put("E3", 0.3);  // min above max
  EXPECT_EQ(sheet.error_of("=SHIM.PLAN(A1:F6;H1:L4;;\"action\")"), bad_argument);
  EXPECT_EQ(sheet.error_of("=SHIM.ORDER(A1:F6;H1:L4)"), bad_argument);
  EXPECT_EQ(sheet.error_of("=SHIM.SURPLUS(A1:F6;H1:L4)"), bad_argument);
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"table\")"), "valves");
  EXPECT_EQ(sheet.number_of("=SHIM.CHECK(A1:F6;H1:L4;;\"row\")"), 3);
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"trouble\")"),
            "valve Ex 2: the minimum clearance, 0.30 mm, is above the maximum, 0.20 mm");
}

TEST_F(Tables, the_check_guesses_the_shim_meant_by_a_mark) {
  sheet.put("D3", 2425.0);
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"trouble\")"),
            "valve Ex 2: 2425 mm is no shim size. Did you mean 2.425?");
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"column\")"), "shim");
}

TEST_F(Tables, the_check_asks_about_a_clearance_a_tenth_of_the_limits) {
  sheet.put("C2", 0.016);
  EXPECT_EQ(sheet.text_of("=SHIM.CHECK(A1:F6;H1:L4;;\"trouble\")"),
            "valve Ex 1: the clearance, 0.016 mm, is at most a fifth of the smallest allowed, "
            "0.16 mm: measure it again");
  EXPECT_EQ(sheet.text_of("=INDEX(SHIM.PLAN(A1:F6;H1:L4;;\"action\");1)"), "none")
      << "it stands all the same, and wants a thinner shim than is on sale";
}

TEST_F(Tables, text_in_the_first_gap_leaves_every_valve_in_its_row) {
  sheet.put_row("A2", {"Ex 1", "", "abc", "", "", ""});
  sheet.put_matrix("N1:N5", "=SHIM.PLAN(A2:F6;H2:L4;;\"valve\")");
  EXPECT_EQ(sheet.texts("N1:N5"), (Texts{"Ex 1", "Ex 2", "", "Ex 3", "Ex 4"}));
  sheet.put_matrix("O1:O5", "=SHIM.PLAN(A2:F6;H2:L4;;\"action\")");
  EXPECT_EQ(sheet.texts("O1:O5"), (Texts{"unread", "buy", "", "keep", "unread"}));
  sheet.put_matrix("P1:S1", "=SHIM.CHECK(A2:F6;H2:L4)");
  EXPECT_EQ(
      sheet.texts("P1:S1"),
      (Texts{
          "valves", "1", "clearance",
          "valve Ex 1: the clearance, \"abc\", is text where a number is due: it does not count"}));
}

TEST_F(Tables, an_error_in_a_table_is_an_error) {
  sheet.put("C2", "=1/0");
  EXPECT_EQ(sheet.error_of("=SHIM.PLAN(A1:F6;H1:L4)"), argument_error);
}

}  // namespace
}  // namespace shimwright::tests
