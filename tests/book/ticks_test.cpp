// SPDX-License-Identifier: MPL-2.0
//
// The ticks on Fit, as the book shows them. What they mean: core/service_bench_test.cpp.
#include <gtest/gtest.h>

#include "book/look/styles.hpp"
#include "fit_cells.hpp"

namespace shimwright::tests {
namespace {

namespace style = book::style;
using book::FitMap;

class Ticks : public ::testing::Test {
 protected:
  Ticks() { count = take_to_bench(demo); }
  OpenBook demo{the_office(), demo_file()};
  int count = 0;
};

TEST_F(Ticks, grey_their_row_and_are_counted) {
  ASSERT_GT(count, 2);
  const At first = fit.at(0, FitMap::valve);
  EXPECT_EQ(laid_over(demo, first), style::fit_turn);
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::done)), style::fit_tick);
  const std::string all = std::to_string(count);
  EXPECT_NO_THROW(demo.find(book::sheet_name::read_me, "0 of " + all));
  tick(demo, 0);
  for (const auto column : {FitMap::valve, FitMap::out, FitMap::done})
    EXPECT_EQ(laid_over(demo, fit.at(0, column)), style::fit_done);
  EXPECT_NO_THROW(demo.find(book::sheet_name::read_me, "1 of " + all));
  EXPECT_TRUE(demo.tells(on_fit, ": 1 of " + all + " done"));
}

TEST_F(Ticks, are_missed_where_a_later_step_has_one) {
  tick(demo, 0);
  tick(demo, 2);
  EXPECT_NE(box_of_fit(demo).find("Step 2 is not ticked and a later one is."), std::string::npos)
      << box_of_fit(demo);
  tick(demo, 1);
  EXPECT_EQ(box_of_fit(demo).find("is not ticked"), std::string::npos);
}

TEST_F(Ticks, of_all_steps_say_what_comes_then) {
  tick_throughout(demo);
  EXPECT_NE(box_of_fit(demo).find("All steps are done. Turn the crank by hand"), std::string::npos)
      << box_of_fit(demo);
}

TEST_F(Ticks, hold_whatever_is_entered_elsewhere) {
  tick(demo, 0);
  tick(demo, 1);
  demo.type(book::sheet_name::head, card_of("1 EX L").value(book::card::gap), 0.05);
  demo.recalculate();
  EXPECT_TRUE(demo.tells(on_fit, ": 2 of " + std::to_string(count) + " done"));
  EXPECT_NE(box_of_fit(demo).find("The list stands: finish it"), std::string::npos)
      << box_of_fit(demo);
}

}  // namespace
}  // namespace shimwright::tests
