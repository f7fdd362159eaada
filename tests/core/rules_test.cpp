// SPDX-License-Identifier: MPL-2.0
//
// The rules of the book, one by one. Limits 0.16 to 0.22 where nothing else is said.
#include "core/service/rules.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

const SideFindings side{.limits = Limits{0.16_mm, 0.22_mm}, .aim = 0.205_mm, .series = ""};

ValvePlan planned(Action action, std::optional<std::size_t> from = std::nullopt) {
  ValvePlan plan;
  plan.action = action;
  plan.from = from;
  return plan;
}

ValveFindings read(std::optional<Length> gap, std::optional<Length> shim = std::nullopt) {
  ValveFindings valve;
  valve.gap = gap;
  valve.shim = valve.marked = shim;
  return valve;
}

TEST(KeptUnseen, a_good_valve_keeps_a_shim_nobody_has_seen) {
  EXPECT_EQ(kept_unseen(read(0.20_mm), side, false, {}), State::good);
}

TEST(KeptUnseen, where_good_valves_are_opened_too_every_shim_matters) {
  EXPECT_EQ(kept_unseen(read(0.20_mm), side, true, {}), std::nullopt);
}

TEST(KeptUnseen, a_valve_left_alone_keeps_it_whatever_its_state) {
  ValveFindings valve = read(0.10_mm);
  EXPECT_EQ(kept_unseen(valve, side, false, {}), std::nullopt);
  valve.alone = true;
  EXPECT_EQ(kept_unseen(valve, side, false, {}), State::tight);
  EXPECT_EQ(kept_unseen(valve, side, true, {}), State::tight);
}

TEST(KeptUnseen, a_doubtful_valve_is_not_good_unless_the_plan_ignores_the_doubt) {
  EXPECT_EQ(kept_unseen(read(0.165_mm), side, false, 0.01_mm), std::nullopt);
  EXPECT_EQ(kept_unseen(read(0.165_mm), side, false, {}), State::good);
}

TEST(KeptUnseen, a_known_shim_a_missing_gap_or_missing_limits_are_another_matter) {
  EXPECT_EQ(kept_unseen(read(0.20_mm, 2.70_mm), side, false, {}), std::nullopt);
  EXPECT_EQ(kept_unseen(read(std::nullopt), side, false, {}), std::nullopt);
  EXPECT_EQ(kept_unseen(read(0.20_mm), SideFindings(), false, {}), std::nullopt);
}

TEST(AnException, is_leave_or_nearest_and_yes_is_leave) {
  for (const Entry& entry : {Entry("leave"), Entry(" LEAVE"), Entry("yes"), Entry("X"), Entry(1.0)})
    EXPECT_EQ(exception_named(entry), Exception::leave);
  EXPECT_EQ(exception_named("Nearest "), Exception::nearest);
  for (const Entry& entry : {Entry(), Entry(" "), Entry("no"), Entry(0.0), Entry("#error")})
    EXPECT_EQ(exception_named(entry), Exception::none);
  EXPECT_EQ(exception_named("leaves"), std::nullopt);
  EXPECT_EQ(exception_named(2.0), std::nullopt);
}

TEST(MeasuredAgain, where_no_blade_goes_what_comes_out_is_only_the_most_it_can_be) {
  EXPECT_TRUE(is_to_be_measured_again(read(Length()), State::good));
  EXPECT_TRUE(is_to_be_measured_again(read(Length()), State::loose));
  EXPECT_FALSE(is_to_be_measured_again(read(Length()), State::tight));
  EXPECT_FALSE(is_to_be_measured_again(read(0.01_mm), State::good));
}

TEST(StaysOutside, left_alone_or_no_size_serves_or_with_the_nearest) {
  ValvePlan left = planned(Action::keep);
  left.left_outside = true;
  EXPECT_TRUE(stays_outside(left));
  EXPECT_TRUE(stays_outside(planned(Action::none)));
  ValvePlan nearest = planned(Action::buy);
  nearest.fitted_outside = true;
  EXPECT_TRUE(stays_outside(nearest));
  EXPECT_FALSE(stays_outside(planned(Action::keep)));
  EXPECT_FALSE(stays_outside(planned(Action::buy)));
}

TEST(FarApart, beyond_wear_and_beyond_what_is_allowed) {
  ValveFindings valve;
  valve.marked = 2.70_mm;
  valve.measured = 2.65_mm;
  EXPECT_FALSE(is_far_apart(valve, default_allowed_difference)) << "0.05 may be wear";
  valve.measured = 2.649_mm;
  EXPECT_TRUE(is_far_apart(valve, default_allowed_difference));
  EXPECT_FALSE(is_far_apart(valve, 0.06_mm)) << "the owner allows more";
  valve.marked.reset();
  EXPECT_FALSE(is_far_apart(valve, default_allowed_difference));
}

// 0.108 in is 2.7432 mm; a mark 108 is that in thousandths of an inch, 1.08 mm in hundredths.
TEST(SchemeThatAgrees, is_named_where_mark_and_micrometer_disagree_many_times_over) {
  EXPECT_EQ(scheme_that_agrees("2743", 27.43_mm, 2.743_mm, default_allowed_difference),
            "thousandths");
  EXPECT_EQ(scheme_that_agrees("275", 0.275_mm, 2.751_mm, default_allowed_difference),
            "hundredths");
  EXPECT_EQ(scheme_that_agrees("0.108", 0.108_mm, 2.743_mm, default_allowed_difference), "in");
}

TEST(SchemeThatAgrees, a_worn_or_misread_shim_is_no_matter_of_the_scheme) {
  EXPECT_EQ(scheme_that_agrees("275", 2.75_mm, 2.60_mm, default_allowed_difference), std::nullopt);
  EXPECT_EQ(scheme_that_agrees("275", 0.275_mm, 9.00_mm, default_allowed_difference), std::nullopt);
}

Findings with_margins(std::initializer_list<Length> margins) {
  Findings found;
  for (const Length margin : margins)
    found.valve_plans.emplace_back(planned(Action::keep)).margin = margin;
  return found;
}

TEST(NearALimit, inside_by_less_than_an_ordinary_doubt) {
  EXPECT_EQ(gaps_near_a_limit(with_margins({Length(), 0.0099_mm, 0.01_mm, 0.02_mm})), 2U);
  EXPECT_EQ(gaps_near_a_limit(with_margins({-0.01_mm})), 0U) << "outside is told otherwise";
}

TEST(NearALimit, is_not_told_where_a_doubt_keeps_the_plan_off) {
  Findings found = with_margins({0.001_mm});
  found.doubt = 0.01_mm;
  EXPECT_EQ(gaps_near_a_limit(found), 0U);
}

TEST(MovedByMark, a_shim_that_goes_into_another_valve_is_to_be_measured) {
  Findings found;
  found.valves = {read(0.2_mm, 2.70_mm), read(0.1_mm, 2.80_mm), read(0.3_mm, 2.60_mm)};
  found.valves[1].measured = 2.801_mm;
  found.valve_plans = {planned(Action::move, 2), planned(Action::buy), planned(Action::move, 1)};
  EXPECT_EQ(moved_by_mark_alone(found), std::vector<std::size_t>{2});
}

TEST(ListedFirst, where_a_gap_wants_a_shim_and_none_are_listed) {
  Findings found;
  found.valve_plans = {planned(Action::none)};
  EXPECT_TRUE(shims_are_to_be_listed(found));
  found.nothing_listed = false;
  EXPECT_FALSE(shims_are_to_be_listed(found));
  EXPECT_FALSE(shims_are_to_be_listed(with_margins({0.02_mm})));
}

}  // namespace
}  // namespace shimwright
