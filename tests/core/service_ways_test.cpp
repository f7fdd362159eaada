// SPDX-License-Identifier: MPL-2.0
//
// What Plan shows beside its lists: other ways for the same engine, and the numbers of its picture.
#include <gtest/gtest.h>

#include "core/plan/other_ways.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

class BesideThePlan : public ::testing::Test {
 protected:
  BesideThePlan() {
    book.limits(0.16, 0.22);
    for (const std::string& valve : book.valves()) book.gap(valve, 0.20).micrometer(valve, 2.60);
    book.gap("1 EX L", 0.10).sizes(1, "", 2.00, 3.00, 0.05, 6.90);
  }
  std::string way(std::size_t row, std::string_view column) const {
    return book.view()["ways"].at(column, row);
  }
  std::string mark(std::string_view column, std::size_t valve = 1) const {
    return book.view()["picture"].at(column, valve);
  }
  std::string band(std::string_view column) const { return book.view()["bands"].at(column); }

  ServiceEntries book;
};

TEST_F(BesideThePlan, other_ways_stand_in_a_line_each_the_chosen_first) {
  const View view = book.view();
  ASSERT_EQ(view["ways"].rows.size(), std::size(all_ways));
  EXPECT_EQ(way(1, "name"), "as chosen");
  EXPECT_EQ(way(1, "changed"), "1");
  EXPECT_EQ(way(1, "bought"), "1");
  EXPECT_EQ(way(1, "money"), "6.90");
  EXPECT_EQ(way(3, "name"), "nothing bought");
  EXPECT_EQ(way(3, "outside"), "1");
  EXPECT_EQ(way(3, "money"), "0.00");
}

// 15 gaps at 0.20 and one at 0.20 after fitting 2.50, each 0.005 from the aim of 0.205.
TEST_F(BesideThePlan, the_mean_distance_from_the_aim_is_told_in_the_books_unit) {
  EXPECT_EQ(way(1, "aim"), "0.005");
  EXPECT_EQ(way(3, "aim"), "0.011");  // (15 * 0.005 + 0.105) / 16
}

TEST_F(BesideThePlan, a_way_that_is_chosen_already_says_so) {
  EXPECT_EQ(way(2, "as chosen"), "");
  book.setting("first", "aim");
  EXPECT_EQ(way(2, "as chosen"), "yes");
  EXPECT_EQ(way(1, "as chosen"), "");
}

TEST_F(BesideThePlan, no_way_is_told_while_no_plan_stands) {
  book.limits(0.30, 0.20);
  EXPECT_TRUE(book.view()["ways"].rows.empty());
}

TEST_F(BesideThePlan, the_picture_has_each_gap_in_the_column_of_its_state) {
  EXPECT_EQ(band("name"), "1 EX L");
  EXPECT_EQ(band("least"), "0.160");
  EXPECT_EQ(band("room"), "0.060");
  EXPECT_EQ(mark("before tight"), "0.100");
  EXPECT_EQ(mark("before good"), "");
  EXPECT_EQ(mark("after good"), "0.200");
  EXPECT_EQ(mark("before good", 2), "0.200");
  EXPECT_EQ(mark("after good", 2), "0.200");
}

TEST_F(BesideThePlan, the_picture_leaves_out_what_is_not_known) {
  book.gap("1 EX L", "");
  for (const std::string_view column : {"before tight", "before good", "after good"})
    EXPECT_EQ(mark(column), "") << column;
  // No blade goes: what comes after is only the most it can be.
  book.gap("1 EX L", 0.0);
  EXPECT_EQ(mark("before tight"), "0.000");
  EXPECT_EQ(mark("after good"), "");
}

}  // namespace
}  // namespace shimwright::tests
