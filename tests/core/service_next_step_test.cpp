// SPDX-License-Identifier: MPL-2.0
//
// Read me first and Fit name one next step, whatever has happened since the list was taken.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "closing_book.hpp"
#include "core/service/bench.hpp"
#include "core/service/gaps_taken.hpp"

namespace shimwright::tests {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

// Two valves that each get a bought shim.
class NextStep : public ::testing::Test {
 protected:
  NextStep() {
    book.all_good();
    book.gap("1 EX L", 0.10).gap("3 IN L", 0.30);
    book.sizes(1, "A", 2.00, 3.50, 0.05, 5);
    const Service service = book.service();
    book.set("taken", "list", 1, gaps_as_taken(findings_in(service)));
    book.take_to_bench();
  }
  std::string next_step() const { return book.view()["book"].at("next step"); }
  std::string fit_says_first() const { return book.view()["boxes"].at("fit", 1); }
  // Of the list, counted from 1: the first at that valve.
  int step_at(const std::string& valve) const {
    const auto steps = book.service().bench;
    for (std::size_t i = 0; i < steps.size(); ++i)
      if (steps[i].valve == valve) return static_cast<int>(i) + 1;
    return 0;
  }
  void expect_as_fit_says(const std::string& words) const {
    EXPECT_THAT(fit_says_first(), HasSubstr(words));
    EXPECT_THAT("\u2022 " + next_step().substr(std::string("As Fit says: ").size()),
                fit_says_first());
    EXPECT_THAT(next_step(), StartsWith("As Fit says: "));
  }

  ClosingBook book;
};

TEST_F(NextStep, is_the_next_of_the_list_while_nothing_speaks_against_it) {
  EXPECT_EQ(next_step(), "On Fit, go on with step 1.");
  book.tick(1);
  EXPECT_EQ(next_step(), "On Fit, go on with step 2.");
}

TEST_F(NextStep, of_a_list_that_is_not_begun_and_no_longer_the_plan_is_to_take_the_new_one) {
  book.gap("3 IN L", 0.20);
  expect_as_fit_says("clear the bench and take the new steps");
}

TEST_F(NextStep, of_a_list_that_is_begun_and_no_longer_the_plan_is_to_finish_it) {
  for (int step = 1; step <= step_at("1 EX L"); ++step) book.tick(step);
  book.sizes(1, "A", 2.00, 3.50, 0.04, 5);
  expect_as_fit_says("The list stands: finish it");
}

TEST_F(NextStep, of_a_list_that_would_spoil_a_valve_is_not_to_finish_it) {
  book.gap("3 IN L", 0.10);
  expect_as_fit_says("Do not finish this list");
}

TEST_F(NextStep, after_a_step_left_out_is_to_see_to_that) {
  book.tick(2);
  expect_as_fit_says("Step 1 is not ticked and a later one is");
}

TEST_F(NextStep, is_not_a_new_gap_on_head_over_the_old_shim) {
  for (int step = 1; step <= step_at("1 EX L"); ++step) book.tick(step);
  book.gap("1 EX L", 0.21);
  expect_as_fit_says("Enter no new gap on Head");
  book.tick_all();
  expect_as_fit_says("Enter no new gap on Head");
}

// Shims that change places: the first valve stands empty until the second has given its shim.
TEST_F(NextStep, beside_a_valve_that_stands_empty_is_to_fill_it) {
  ClosingBook swap;
  swap.all_good();
  swap.gap("1 EX L", 0.10).micrometer("1 EX L", 2.80).gap("1 EX R", 0.30);
  swap.micrometer("1 EX R", 2.70);
  swap.take_to_bench();
  book = swap;
  for (int step = 1; valves_standing_empty(book.service()).empty(); ++step) {
    ASSERT_LT(step, 10);
    book.tick(step);
  }
  expect_as_fit_says("empty: do not turn the crank. Go on with step");
}

}  // namespace
}  // namespace shimwright::tests
