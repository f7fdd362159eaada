// SPDX-License-Identifier: MPL-2.0
//
// SHIM.STEPS in the real office. That the steps are safe and the fewest, the tests of the core
// prove.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using Texts = std::vector<std::string>;

// Three valves in A1:F4, of which the first takes a bought shim and gives its own to the second;
// sizes on sale in H1:L4; stops in N1:O3.
class Steps : public ::testing::Test {
 protected:
  Steps() {
    sheet.put_row("A1", {"name", "series", "clearance", "shim", "min", "max"});
    sheet.put_row("A2", {"Ex 1", "", "0.10", "2.80", "0.16", "0.20"});
    sheet.put_row("A3", {"Ex 2", "", "0.25", "2.75", "0.16", "0.20"});
    sheet.put_row("A4", {"In 1", "", "0.18", "2.90", "0.16", "0.20"});
    sheet.put_row("H1", {"kind", "series", "size", "count", "price"});
    sheet.put_row("H2", {"sale", "", "2.70", "", "6.5"});
    sheet.put_row("H3", {"sale", "", "2.75", "", "6.5"});
    sheet.put_row("H4", {"sale", "", "2.80", "", "6.5"});
    sheet.put_row("N1", {"valve", "stop"});
    sheet.put_row("N2", {"Ex 1", "1"});
    sheet.put_row("N3", {"ex 2", "2"});
  }

  static std::string steps(const std::string& stops, const std::string& part) {
    return "SHIM.STEPS(A1:F4;H1:L4;" + stops + ";;\"" + part + "\")";
  }

  // A column of the answer, whole.
  Texts part(const std::string& stops, const std::string& name) {
    const auto rows = static_cast<int>(sheet.number_of("=ROWS(" + steps(stops, name) + ")"));
    const std::string range = "Z1:Z" + std::to_string(rows);
    sheet.put_matrix(range, "=" + steps(stops, name));
    const Texts found = sheet.texts(range);
    sheet.put_matrix(range, "");
    return found;
  }

  Sheet sheet;
};

TEST_F(Steps, turn_the_crank_from_stop_to_stop) {
  EXPECT_EQ(part("N1:O3", "step"), (Texts{"1", "2", "3", "4", "5"}));
  EXPECT_EQ(part("N1:O3", "stop"), (Texts{"1", "1", "2", "2", ""}));
  EXPECT_EQ(part("N1:O3", "valve"), (Texts{"", "Ex 1", "", "Ex 2", ""}));
  EXPECT_EQ(part("N1:O3", "out"), (Texts{"", "2.8", "", "2.75", ""}));
  EXPECT_EQ(part("N1:O3", "in"), (Texts{"", "2.7", "", "2.8", ""}));
  EXPECT_EQ(part("N1:O3", "from"), (Texts{"", "bought", "", "Ex 1", ""}));
  const Texts notes = part("N1:O3", "note");
  ASSERT_EQ(notes.size(), 5U);
  EXPECT_NE(notes[2].find("turn the crank by hand, forwards only, to stop 2"), std::string::npos)
      << notes[2];
  EXPECT_NE(notes[4].find("two full turns"), std::string::npos) << notes[4];
}

TEST_F(Steps, with_the_camshafts_out_need_no_stop) {
  for (const char* stops : {"", "1", "Z99"}) {
    EXPECT_EQ(part(stops, "stop"), (Texts{"", "", ""})) << stops;
    EXPECT_EQ(part(stops, "valve"), (Texts{"Ex 1", "Ex 2", ""})) << stops;
    EXPECT_EQ(part(stops, "from"), (Texts{"bought", "Ex 1", ""})) << stops;
  }
  EXPECT_EQ(sheet.number_of("=ROWS(SHIM.STEPS(A1:F4;H1:L4))"), 3);
}

TEST_F(Steps, as_a_whole_table_have_seven_columns) {
  sheet.put_matrix("Z1:AE5", "=SHIM.STEPS(A1:F4;H1:L4;N1:O3)");
  EXPECT_EQ(sheet.texts("Z4:AE4"), (Texts{"4", "2", "Ex 2", "2.75", "2.8", "Ex 1"}));
  EXPECT_EQ(sheet.number_of("=COLUMNS(SHIM.STEPS(A1:F4;H1:L4;N1:O3))"), 7);
}

TEST_F(Steps, words_of_a_part_compare_equal) {
  sheet.put_matrix("Z1:Z5", "=" + steps("N1:O3", "from"));
  EXPECT_EQ(sheet.number_of("=Z2=\"bought\""), 1);
  EXPECT_EQ(sheet.number_of("=COUNTIF(Z1:Z5;\"Ex 1\")"), 1);
  sheet.put_matrix("AA1:AA5", "=" + steps("N1:O3", "valve"));
  EXPECT_EQ(sheet.number_of("=MATCH(\"Ex 2\";AA1:AA5;0)"), 4);
  EXPECT_EQ(sheet.number_of("=COUNT(" + steps("N1:O3", "in") + ")"), 2);
}

// A shim that moves to a valve open at an earlier stop settles that the crank goes there later.
TEST_F(Steps, take_the_stops_in_the_order_that_the_moves_allow) {
  sheet.put("O2", 2);
  sheet.put("O3", 1);
  EXPECT_EQ(part("N1:O3", "stop"), (Texts{"2", "2", "1", "1", ""}));
}

TEST_F(Steps, use_a_valve_that_is_open_at_several_stops_where_it_saves_a_turn) {
  sheet.put_row("N4", {"Ex 1", "2"});
  EXPECT_EQ(part("N1:O4", "stop"), (Texts{"2", "2", "2", ""}));
}

TEST_F(Steps, say_what_to_borrow_where_a_ring_of_moves_has_no_stand_in) {
  sheet.put_row("A2", {"Ex 1", "", "0.10", "2.80", "0.16", "0.20"});  // wants 2.70
  sheet.put_row("A3", {"Ex 2", "", "0.30", "2.70", "0.16", "0.20"});  // wants 2.80
  sheet.put("H2", "");
  sheet.put("J2", "");
  const Texts notes = [&] {
    sheet.put_matrix("Z1:Z1", "=SHIM.STEPS(A1:F4;Z99;N1:O3;;\"note\")");
    return sheet.texts("Z1:Z1");
  }();
  EXPECT_NE(notes[0].find("borrow or buy a shim no thicker than 2.80 mm"), std::string::npos)
      << notes[0];
}

TEST_F(Steps, of_a_plan_that_opens_no_valve_are_one_row_of_empty_text) {
  sheet.put_column("C2", {0.18, 0.18});
  EXPECT_EQ(sheet.number_of("=ROWS(SHIM.STEPS(A1:F4;H1:L4;N1:O3))"), 1);
  EXPECT_EQ(part("N1:O3", "note"), Texts{""});
  EXPECT_EQ(part("N1:O3", "in"), Texts{""});
  EXPECT_EQ(sheet.number_of("=COUNT(SHIM.STEPS(A1:F4;H1:L4;N1:O3))"), 0);
}

TEST_F(Steps, follow_every_entry_that_changes) {
  sheet.put_matrix("Z1:Z3", "=SHIM.STEPS(A1:F4;H1:L4;Q1;;\"valve\")");
  sheet.put_matrix("AA1:AA3", "=SHIM.STEPS(A1:F4;H1:L4;Q1;;\"in\")");
  EXPECT_EQ(sheet.texts("Z1:AA1"), (Texts{"Ex 1", "2.7"}));
  sheet.put("C2", 0.18);
  EXPECT_EQ(sheet.texts("Z1:AA1"), (Texts{"Ex 2", "2.8"}));
  sheet.put("Q1", 1.5);
  EXPECT_EQ(sheet.error("Z1"), bad_argument);
  sheet.put("Q1", "");
  EXPECT_EQ(sheet.texts("Z1:AA1"), (Texts{"Ex 2", "2.8"}));
}

TEST_F(Steps, heed_the_rules) {
  sheet.put_row("N10", {"touch good", "yes"});
  sheet.put_row("N11", {"first", "aim"});
  EXPECT_EQ(sheet.error_of("=SHIM.STEPS(A1:F4;H1:L4;;N10:O11)"), 0);
  sheet.put("N10", "touch");
  EXPECT_EQ(sheet.error_of("=SHIM.STEPS(A1:F4;H1:L4;;N10:O11)"), bad_argument);
}

TEST_F(Steps, refuse_stops_that_make_no_sense) {
  const auto refused = [&](const std::string& stops) {
    return sheet.error_of("=SHIM.STEPS(A1:F4;H1:L4;" + stops + ")");
  };
  EXPECT_EQ(refused("N1:O2"), bad_argument) << "Ex 2 is to be opened";
  EXPECT_EQ(refused("S1:T9"), bad_argument) << "laid out but blank is not camshafts out";
  EXPECT_EQ(refused("1.5"), bad_argument);
  EXPECT_EQ(refused("\"out\""), bad_argument);
  EXPECT_EQ(refused("N1:N3"), bad_argument);
  sheet.put_row("N4", {"Ex 9", "2"});
  EXPECT_EQ(refused("N1:O4"), bad_argument);
  sheet.put_row("N4", {"In 1", "0.5"});
  EXPECT_EQ(refused("N1:O4"), bad_argument);
  sheet.put_row("N4", {"In 1", "2"});
  EXPECT_EQ(refused("N1:O4"), 0);
}

TEST_F(Steps, take_long_columns_mostly_blank) {
  EXPECT_EQ(sheet.text_of("=INDEX(SHIM.STEPS(A1:F5000;H1:L5000;N1:O5000;;\"valve\");4)"), "Ex 2");
  EXPECT_EQ(sheet.error_of("=SHIM.STEPS(A1:F5000;H1:L5000;S1:T5000)"), bad_argument);
}

TEST_F(Steps, refuse_what_the_plan_refuses) {
  sheet.put("E3", 0.3);  // min above max
  EXPECT_EQ(sheet.error_of("=SHIM.STEPS(A1:F4;H1:L4;N1:O3)"), bad_argument);
  sheet.put("E3", "=1/0");
  EXPECT_EQ(sheet.error_of("=SHIM.STEPS(A1:F4;H1:L4;N1:O3)"), argument_error);
}

}  // namespace
}  // namespace shimwright::tests
