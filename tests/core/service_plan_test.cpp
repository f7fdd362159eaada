// SPDX-License-Identifier: MPL-2.0
//
// The plan as the View shows it: on made-up jobs it is the best plan, asked for without any book;
// and what Plan's box says.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "job_entries.hpp"

namespace shimwright::tests {
namespace {

class MadeUpJob : public ::testing::TestWithParam<int> {
 protected:
  const EngineLayout layout = inline_four();
  const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), layout);
};

TEST_P(MadeUpJob, is_shown_with_its_best_plan) { expect_best_plan(job, layout); }

TEST_P(MadeUpJob, is_shown_with_the_same_plan_in_inches) {
  expect_best_plan(job, layout, Unit::inch);
}

TEST_P(MadeUpJob, is_shown_with_the_decimal_mark_of_the_office) {
  expect_best_plan(job, layout, Unit::mm, "0,5");
}

constexpr int jobs = 40;
INSTANTIATE_TEST_SUITE_P(of_a_workshop, MadeUpJob, ::testing::Range(0, jobs));

// Or the tests above would show little.
TEST(MadeUpJobs, need_everything_that_a_plan_can_say) {
  std::set<Action> said;
  const EngineLayout layout = inline_four();
  for (int seed = 0; seed < jobs; ++seed) {
    const Job job = made_up_job(static_cast<std::uint64_t>(seed), layout);
    for (const PlanLine& line : best_plan(question_of(job, layout)).lines) said.insert(line.action);
  }
  EXPECT_EQ(said, (std::set{Action::keep, Action::move, Action::spare, Action::buy, Action::none,
                            Action::unread}));
}

class ShownPlan : public ::testing::Test {
 protected:
  ShownPlan() { book.limits(0.16, 0.22); }

  std::string figure(std::string_view column) const { return book.view()["book"].at(column); }
  std::string box() const { return box_of(book.view(), "plan"); }
  bool box_tells(std::string_view words) const { return box().find(words) != std::string::npos; }

  ServiceEntries book;
};

TEST_F(ShownPlan, counts_valves_left_out_of_limits_apart_and_names_them_in_its_box) {
  book.gap("1 EX L", 0.10).leave_alone("1 EX L");
  book.gap("3 EX R", 0.30).mark("3 EX R", 270.0).leave_alone("3 EX R");
  book.gap("4 EX L", 0.20).leave_alone("4 EX L");
  EXPECT_EQ(figure("count outside"), "2");
  EXPECT_EQ(figure("count keep"), "1");
  EXPECT_EQ(figure("outside count"), "2");
  EXPECT_TRUE(box_tells("Still reading out of limits: 1 EX L and 3 EX R, left alone, as entered."))
      << box();
  EXPECT_EQ(book.view()["boxes"].at("mood plan"), "loud");
}

TEST_F(ShownPlan, counts_the_valves_left_out_of_limits_where_there_are_too_many_to_name) {
  for (const std::string& valve : book.valves()) book.gap(valve, 0.10).leave_alone(valve);
  EXPECT_TRUE(box_tells("Still reading out of limits: 16 valves, left alone")) << box();
}

TEST_F(ShownPlan, says_that_no_listed_size_serves_a_valve) {
  book.gap("2 IN R", 0.10).micrometer("2 IN R", 2.85).spare(1, "A", 2.5);
  EXPECT_EQ(figure("count none"), "1");
  EXPECT_EQ(figure("label none"), "none fits");
  EXPECT_TRUE(box_tells("Still reading out of limits: 2 IN R, no size listed on Shims serves."))
      << box();
}

// Nobody has looked yet whether a shim fits.
TEST_F(ShownPlan, asks_for_the_shims_as_long_as_none_is_listed) {
  book.gap("2 IN R", 0.10).micrometer("2 IN R", 2.85);
  EXPECT_EQ(figure("to list"), "yes");
  EXPECT_EQ(figure("count none"), "1");
  EXPECT_EQ(figure("label none"), "list shims first");
  EXPECT_TRUE(box_tells("list the spares and the sizes on sale on Shims first")) << box();
  EXPECT_EQ(book.view()["boxes"].at("mood plan"), "remark");
}

// No doubt is entered, so such a gap is called good though nobody can know.
TEST_F(ShownPlan, says_how_many_gaps_come_out_near_a_limit_while_no_doubt_is_entered) {
  book.gap("1 IN L", 0.16).gap("2 IN L", 0.211).gap("3 IN L", 0.21).gap("4 IN L", 0.19);
  EXPECT_TRUE(
      box_tells("2 gaps come out nearer than 0.01 mm to a limit, and no doubt of the "
                "readings is entered"))
      << box();
  book.setting("doubt", 0.005);
  EXPECT_FALSE(box_tells("nearer than")) << box();
  book.setting("doubt", "").setting("unit", "inch").limits(0.006, 0.009);
  for (const char* valve : {"1 IN L", "2 IN L", "3 IN L"}) book.gap(valve, 0.008);
  book.gap("4 IN L", 0.006);
  EXPECT_TRUE(box_tells("1 gap comes out nearer than 0.0004 in to a limit")) << box();
}

TEST_F(ShownPlan, calls_a_gap_of_zero_a_remark) {
  book.gap("1 IN L", 0.0);
  EXPECT_EQ(figure("remarks count"), "1");
}

TEST_F(ShownPlan, has_a_dash_for_every_figure_until_the_entries_are_corrected) {
  book.gap("1 IN L", -0.1);
  for (const char* column : {"count keep", "count none", "count outside", "to pay", "total"})
    EXPECT_EQ(figure(column), "\u2013") << column;
  const View view = book.view();
  EXPECT_EQ(view["order"].at("series"), "\u2013");
  EXPECT_EQ(view["book"].at("plan heading"),
            "Correct the entries first: no plan can be trusted until then");
}

TEST_F(ShownPlan, names_the_currency_beside_its_sums) {
  EXPECT_EQ(figure("order heading"), "To order");
  book.setting("currency", "EUR");
  EXPECT_EQ(figure("order heading"), "To order; sums in EUR");
  EXPECT_EQ(figure("total label"), "total, EUR");
  EXPECT_EQ(figure("to pay"), "0.00 EUR");
}

}  // namespace
}  // namespace shimwright::tests
