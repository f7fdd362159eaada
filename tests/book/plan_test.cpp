// SPDX-License-Identifier: MPL-2.0
//
// The way from readings to an order list, walked in the book: what it shows is what the plan says
// when asked without any book.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/plan.hpp"
#include "job.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

class FilledBook : public ::testing::TestWithParam<int> {};

TEST_P(FilledBook, shows_the_best_plan) {
  const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  expect_plan(book, job, the_places());
}

TEST_P(FilledBook, shows_the_same_plan_in_inches) {
  const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places(), Unit::inch);
  expect_plan(book, job, the_places(), Unit::inch);
}

constexpr int engines = 6;
INSTANTIATE_TEST_SUITE_P(of_made_up_engines, FilledBook, ::testing::Range(0, engines));

// Or the tests above would show little.
TEST(MadeUpEngines, need_everything_that_a_plan_can_say) {
  std::set<Action> said;
  for (int seed = 0; seed < engines; ++seed) {
    const Job job = made_up_job(static_cast<std::uint64_t>(seed), the_places().layout);
    for (const PlanLine& line : best_plan(question_of(job, the_places().layout)).lines)
      said.insert(line.action);
  }
  EXPECT_EQ(said, (std::set{Action::keep, Action::move, Action::spare, Action::buy, Action::none,
                            Action::unread}));
}

}  // namespace
}  // namespace shimwright::tests
