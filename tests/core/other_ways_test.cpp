// SPDX-License-Identifier: MPL-2.0
#include "core/plan/other_ways.hpp"

#include <gtest/gtest.h>

#include <string>

#include "plan_questions.hpp"

namespace shimwright {
namespace {

using questions::sale;
using questions::spare;

Valve valve_aimed_at(std::string name, Length clearance, Length shim, Limits limits, Length aim) {
  Valve made;
  made.name = std::move(name);
  made.clearance = clearance;
  made.shim = shim;
  made.limits = limits;
  made.aim = aim;
  return made;
}

PlanSum sum_by(const PlanQuestion& question, WayKind kind) {
  for (const Way& way : other_ways(question, best_plan(question)))
    if (way.kind == kind) return way.sum;
  return {};
}

bool is_chosen(const PlanQuestion& question, WayKind kind) {
  for (const Way& way : other_ways(question, best_plan(question)))
    if (way.kind == kind) return way.chosen;
  return false;
}

// One valve tight by 0.06, whose own aim takes a shim that costs more than another that serves.
PlanQuestion dear_and_cheap() {
  PlanQuestion question;
  question.valves = {valve_aimed_at("1", 0.10_mm, 2.80_mm, {0.16_mm, 0.22_mm}, 0.20_mm)};
  question.stock = {sale("", 2.70_mm, Money::of(9)), sale("", 2.72_mm, Money::of(5))};
  return question;
}

TEST(OtherWays, nearest_the_aim_tells_what_a_better_gap_costs) {
  const PlanQuestion question = dear_and_cheap();
  const PlanSum chosen = sum_by(question, WayKind::as_chosen);
  EXPECT_EQ(chosen.money, Money::of(5));
  EXPECT_EQ(chosen.from_aim, 0.02_mm);
  const PlanSum nearest = sum_by(question, WayKind::nearest_the_aim);
  EXPECT_EQ(nearest.money, Money::of(9));
  EXPECT_EQ(nearest.from_aim, 0.0_mm);
  EXPECT_EQ(nearest.bought, 1);
}

TEST(OtherWays, nothing_bought_leaves_outside_what_only_a_purchase_mends) {
  PlanQuestion question = dear_and_cheap();
  EXPECT_EQ(sum_by(question, WayKind::nothing_bought),
            (PlanSum{.outside = 1, .from_aim = 0.10_mm}));
  question.stock.push_back(spare("", 2.71_mm));
  EXPECT_EQ(sum_by(question, WayKind::nothing_bought),
            (PlanSum{.changed = 1, .from_aim = 0.01_mm}));
}

TEST(OtherWays, a_good_valve_may_give_its_shim) {
  PlanQuestion question;
  question.valves = {valve_aimed_at("tight", 0.10_mm, 2.80_mm, {0.16_mm, 0.22_mm}, 0.20_mm),
                     valve_aimed_at("good", 0.20_mm, 2.70_mm, {0.16_mm, 0.22_mm}, 0.20_mm)};
  question.stock = {sale("", 2.72_mm, Money::of(5)), spare("", 2.68_mm)};
  question.valves[0].limits = {0.19_mm, 0.21_mm};
  const PlanSum chosen = sum_by(question, WayKind::as_chosen);
  EXPECT_EQ(chosen.outside, 1u);
  const PlanSum opened = sum_by(question, WayKind::good_valves_opened);
  EXPECT_EQ(opened.outside, 0u);
  EXPECT_EQ(opened.changed, 2u);
  EXPECT_EQ(opened.bought, 0);
}

// The gap of A stays above its limits, and its old shim serves B.
TEST(OtherWays, the_nearest_shim_lets_a_valve_that_none_serves_give_its_own) {
  PlanQuestion question;
  const Limits limits{0.25_mm, 0.27_mm};
  question.valves = {valve_aimed_at("A", 0.10_mm, 2.48_mm, limits, 0.26_mm),
                     valve_aimed_at("B", 0.24_mm, 2.50_mm, limits, 0.26_mm)};
  for (Length size = 2.00_mm; size <= 3.50_mm; size += 0.05_mm)
    question.stock.push_back(sale("", size, Money()));
  EXPECT_EQ(sum_by(question, WayKind::as_chosen).outside, 2u);
  EXPECT_EQ(sum_by(question, WayKind::nearest_shims).outside, 1u);
}

TEST(OtherWays, a_rule_that_is_chosen_already_is_said_so) {
  PlanQuestion question = dear_and_cheap();
  EXPECT_TRUE(is_chosen(question, WayKind::as_chosen));
  for (const WayKind kind : {WayKind::nearest_the_aim, WayKind::nothing_bought,
                             WayKind::good_valves_opened, WayKind::nearest_shims})
    EXPECT_FALSE(is_chosen(question, kind)) << static_cast<int>(kind);
  question.rules.aim_first = question.rules.touch_good = question.rules.nearest = true;
  question.stock.clear();
  for (const WayKind kind : all_ways) EXPECT_TRUE(is_chosen(question, kind));
}

TEST(OtherWays, doubt_and_unread_valves_are_counted_apart) {
  PlanQuestion question;
  question.valves = {valve_aimed_at("doubtful", 0.165_mm, 2.80_mm, {0.16_mm, 0.22_mm}, 0.20_mm),
                     valve_aimed_at("unread", 0.20_mm, 2.80_mm, {0.16_mm, 0.22_mm}, 0.20_mm)};
  question.valves[0].doubt = 0.01_mm;
  question.valves[1].clearance.reset();
  EXPECT_EQ(sum_by(question, WayKind::as_chosen), (PlanSum{.in_doubt = 1, .from_aim = 0.035_mm}));
}

// 0.155 is outside, though with a doubt of 0.01 the gap may be inside: it counts as Plan's box and
// Recheck tell it, by the reading.
TEST(OtherWays, a_valve_that_reads_outside_is_outside_however_near_the_limit) {
  PlanQuestion question;
  question.valves = {valve_aimed_at("near", 0.155_mm, 2.80_mm, {0.16_mm, 0.22_mm}, 0.20_mm)};
  question.valves[0].doubt = 0.01_mm;
  EXPECT_EQ(sum_by(question, WayKind::as_chosen), (PlanSum{.outside = 1, .from_aim = 0.045_mm}));
}

// No way of the same order of aims is better than the one chosen; each is the optimum of its own.
TEST(OtherWays, none_with_the_same_sizes_and_fewer_outside_is_cheaper) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const PlanQuestion question = questions::service(8, seed);
    const auto ways = other_ways(question, best_plan(question));
    ASSERT_EQ(ways.size(), std::size(all_ways));
    const PlanSum& chosen = ways[0].sum;
    const PlanSum& aim = ways[1].sum;
    EXPECT_EQ(aim.outside, chosen.outside) << seed;
    EXPECT_GE(aim.money, chosen.money) << seed;
    EXPECT_LE(*aim.from_aim, *chosen.from_aim) << seed;
    EXPECT_GE(ways[2].sum.outside, chosen.outside) << seed;
    EXPECT_EQ(ways[2].sum.bought, 0) << seed;
    EXPECT_LE(ways[3].sum.outside, chosen.outside) << seed;
    EXPECT_LE(ways[4].sum.outside, chosen.outside) << seed;
  }
}

}  // namespace
}  // namespace shimwright
