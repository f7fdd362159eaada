// SPDX-License-Identifier: MPL-2.0
#include "core/plan/plan.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "core/plan/nearest.hpp"
#include "core/values/choice.hpp"
#include "plan_audit.hpp"
#include "plan_questions.hpp"

namespace shimwright {
namespace {

using questions::sale;
using questions::spare;

constexpr Limits usual{0.16_mm, 0.20_mm};
constexpr Length usual_aim = 0.18_mm;  // clang 14 takes no consteval literal as a default
const Money five = Money::of(5);

Valve valve(std::string name, Length clearance, Length shim, Limits limits = usual,
            Length aim = usual_aim) {
  Valve v;
  v.name = std::move(name);
  v.clearance = clearance;
  v.shim = shim;
  v.limits = limits;
  v.aim = aim;
  return v;
}

// The plan, once it has been found to hold water.
Plan sound_plan(const PlanQuestion& question) {
  const Plan plan = best_plan(question);
  for (const std::string& fault : audit::look_over(question, plan).faults) ADD_FAILURE() << fault;
  return plan;
}

// `move keep`: what is said of each valve, in their order.
std::string actions(const Plan& plan) {
  std::string words;
  for (const PlanLine& line : plan.lines)
    words += (words.empty() ? "" : " ") + std::string(word_for(line.action));
  return words;
}

std::ptrdiff_t times(const Plan& plan, Action action) {
  return std::ranges::count(plan.lines, action, &PlanLine::action);
}

TEST(Plan, agrees_with_the_worked_example_of_the_trade) {
  // Common practice, no source.
  struct Case {
    Length gap, shim;
    Limits limits;
    Length aim, fit, after;
  };
  const Case cases[] = {
      {0.10_mm, 2.85_mm, {0.16_mm, 0.20_mm}, 0.20_mm, 2.75_mm, 0.20_mm},
      {0.10_mm, 2.84_mm, {0.16_mm, 0.20_mm}, 0.20_mm, 2.75_mm, 0.19_mm},
      {0.05_mm, 2.75_mm, {0.13_mm, 0.17_mm}, 0.15_mm, 2.65_mm, 0.15_mm},
  };
  for (const Case& c : cases) {
    PlanQuestion question;
    question.valves = {valve("1", c.gap, c.shim, c.limits, c.aim)};
    for (const Length size : ladder(2.00_mm, 3.20_mm, 0.05_mm))
      question.stock.push_back(sale("", size, five));
    const Plan plan = sound_plan(question);
    EXPECT_EQ(plan.lines[0].action, Action::buy);
    EXPECT_EQ(plan.lines[0].size, c.fit);
    EXPECT_EQ(plan.lines[0].after, c.after);
    EXPECT_EQ(plan.lines[0].state, State::good);
    EXPECT_EQ(plan.lines[0].cost, five);
    ASSERT_EQ(plan.order.size(), 1u);
    EXPECT_EQ(plan.order[0].size, c.fit);
    EXPECT_EQ(plan.order[0].count, 1);
    ASSERT_EQ(plan.surplus.size(), 1u);
    EXPECT_EQ(plan.surplus[0].size, c.shim);
  }
}

TEST(Plan, of_no_valves_is_empty) {
  const Plan plan = sound_plan({});
  EXPECT_TRUE(plan.lines.empty());
  EXPECT_TRUE(plan.order.empty());
  EXPECT_TRUE(plan.surplus.empty());
}

TEST(Plan, a_good_head_stays_shut) {
  PlanQuestion question;
  question.valves = {valve("1", 0.16_mm, 2.80_mm), valve("2", 0.20_mm, 2.75_mm)};
  question.stock = {spare("", 2.78_mm), spare("", 2.77_mm)};
  for (const bool touch_good : {false, true}) {
    question.rules.touch_good = touch_good;
    EXPECT_EQ(actions(sound_plan(question)), "keep keep");
  }
}

TEST(Plan, a_chain_of_moves_saves_buying) {
  // 1 wants 2's shim, 2 wants 3's, 3 wants the spare.
  PlanQuestion question;
  question.valves = {valve("1", 0.13_mm, 2.80_mm), valve("2", 0.13_mm, 2.75_mm),
                     valve("3", 0.13_mm, 2.70_mm)};
  question.stock = {spare("", 2.65_mm), sale("", 2.75_mm, five), sale("", 2.70_mm, five),
                    sale("", 2.65_mm, five)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "move move spare");
  EXPECT_EQ(plan.lines[0].from, 1u);
  EXPECT_EQ(plan.lines[1].from, 2u);
  EXPECT_TRUE(plan.order.empty());
  ASSERT_EQ(plan.surplus.size(), 1u);
  EXPECT_EQ(plan.surplus[0].size, 2.80_mm);
}

TEST(Plan, two_valves_change_shims) {
  PlanQuestion question;
  question.valves = {valve("1", 0.13_mm, 2.80_mm), valve("2", 0.23_mm, 2.75_mm)};
  question.stock = {sale("", 2.75_mm, five), sale("", 2.80_mm, five)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "move move");
  EXPECT_EQ(plan.lines[0].from, 1u);
  EXPECT_EQ(plan.lines[1].from, 0u);
  EXPECT_TRUE(plan.order.empty());
  EXPECT_TRUE(plan.surplus.empty());
}

TEST(Plan, of_two_that_want_one_spare_one_buys) {
  PlanQuestion question;
  question.valves = {valve("1", 0.12_mm, 2.80_mm), valve("2", 0.13_mm, 2.80_mm)};
  question.stock = {spare("", 2.75_mm), sale("", 2.75_mm, five)};
  Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "spare buy");
  ASSERT_EQ(plan.order.size(), 1u);
  EXPECT_EQ(plan.order[0].count, 1);
  ASSERT_EQ(plan.surplus.size(), 1u);
  EXPECT_EQ(plan.surplus[0].count, 2);

  // With none on sale the spare still helps one of them, and the other says so.
  question.stock.pop_back();
  plan = sound_plan(question);
  EXPECT_EQ(times(plan, Action::spare), 1);
  EXPECT_EQ(times(plan, Action::none), 1);

  question.stock[0].count = 2;
  EXPECT_EQ(actions(sound_plan(question)), "spare spare");
}

TEST(Plan, spares_go_before_shims_out_of_other_valves) {
  PlanQuestion question;
  question.valves = {valve("1", 0.13_mm, 2.80_mm), valve("2", 0.13_mm, 2.80_mm),
                     valve("3", 0.13_mm, 2.75_mm)};
  question.stock = {spare("", 2.75_mm), spare("", 2.70_mm)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "spare move spare");
  EXPECT_EQ(plan.lines[1].from, 2u);
}

TEST(Plan, series_never_mix) {
  PlanQuestion question;
  question.valves = {valve("1", 0.13_mm, 2.80_mm)};
  question.valves[0].series = "wide";
  question.stock = {spare("narrow", 2.75_mm), sale("narrow", 2.75_mm, Money()), spare("", 2.75_mm)};
  EXPECT_EQ(sound_plan(question).lines[0].action, Action::none);
  question.stock.push_back(sale("wide", 2.75_mm, five));
  EXPECT_EQ(sound_plan(question).lines[0].action, Action::buy);
}

TEST(Plan, where_nothing_fits_the_old_shim_stays_and_the_state_says_so) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.26_mm, 2.80_mm)};
  question.stock = {sale("", 2.95_mm, five), spare("", 2.76_mm)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "none none");
  EXPECT_EQ(plan.lines[0].state, State::tight);
  EXPECT_EQ(plan.lines[1].state, State::loose);
  EXPECT_EQ(plan.lines[0].margin, -0.06_mm);
  EXPECT_EQ(plan.lines[0].size, 2.80_mm);
}

TEST(Plan, the_ends_of_the_limits_fit) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm)};
  for (const Length size : {2.70_mm, 2.74_mm}) {
    question.stock = {spare("", size)};
    EXPECT_EQ(sound_plan(question).lines[0].action, Action::spare);
  }
  for (const Length size : {2.699999_mm, 2.740001_mm}) {
    question.stock = {spare("", size)};
    EXPECT_EQ(sound_plan(question).lines[0].action, Action::none);
  }
}

TEST(Plan, a_locked_valve_keeps_its_shim_whatever_its_state) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.72_mm), valve("2", 0.10_mm, 2.80_mm)};
  question.valves[0].locked = true;
  question.stock = {spare("", 2.65_mm)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "keep none");
  EXPECT_EQ(plan.lines[0].state, State::tight);
}

TEST(Plan, an_unread_valve_is_left_alone_and_gives_nothing) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.72_mm), valve("2", 0.10_mm, 2.80_mm),
                     valve("3", 0.10_mm, 2.72_mm)};
  question.valves[0].clearance.reset();
  question.valves[2].shim.reset();
  question.stock = {spare("", 2.65_mm)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "unread none unread");
  EXPECT_EQ(plan.lines[0].size, 2.72_mm);
  EXPECT_EQ(plan.lines[2].size, std::nullopt);
}

TEST(Plan, a_good_valve_gives_its_shim_only_if_it_may_be_touched) {
  // 1 would be served by the shim of 2, which is good and would still be with the spare.
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.18_mm, 2.72_mm)};
  question.stock = {spare("", 2.735_mm), sale("", 2.70_mm, five)};
  question.valves[0].limits = {0.175_mm, 0.20_mm};
  EXPECT_EQ(actions(sound_plan(question)), "buy keep");
  question.rules.touch_good = true;
  EXPECT_EQ(actions(sound_plan(question)), "move spare");
  // Opening it costs its work too: dearer than buying.
  question.rules.work = Money::of(6);
  EXPECT_EQ(actions(sound_plan(question)), "buy keep");
}

TEST(Plan, a_valve_in_doubt_keeps_its_shim_only_if_nothing_reachable_brings_it_inside_the_band) {
  PlanQuestion question;
  question.valves = {valve("1", 0.165_mm, 2.80_mm)};
  question.valves[0].doubt = 0.01_mm;  // the band is 0.17 to 0.19
  question.rules.work = Money::of(50);
  question.stock = {sale("", 2.79_mm, five)};  // 0.175: inside the band, whatever it costs
  Plan plan = sound_plan(question);
  EXPECT_EQ(plan.lines[0].action, Action::buy);
  EXPECT_EQ(plan.lines[0].state, State::good);
  EXPECT_EQ(plan.lines[0].cost, Money::of(55));

  question.stock = {sale("", 2.77_mm, five)};  // 0.195: as doubtful on the other side
  plan = sound_plan(question);
  EXPECT_EQ(plan.lines[0].action, Action::keep);
  EXPECT_EQ(plan.lines[0].state, State::tight_doubtful);

  question.stock = {sale("", 2.79_mm, five)};
  question.rules.use_doubt = false;
  plan = sound_plan(question);
  EXPECT_EQ(plan.lines[0].action, Action::keep);
  EXPECT_EQ(plan.lines[0].state, State::good);
}

TEST(Plan, a_reading_beyond_a_limit_within_its_doubt_that_nothing_serves_is_none) {
  PlanQuestion question;
  question.valves = {valve("1", 0.155_mm, 2.80_mm)};
  question.valves[0].doubt = 0.01_mm;
  const Plan plan = sound_plan(question);
  EXPECT_EQ(plan.lines[0].action, Action::none);
  EXPECT_EQ(plan.lines[0].state, State::tight_doubtful);
  EXPECT_EQ(plan.lines[0].margin, -0.005_mm);
}

TEST(Plan, inside_the_limits_comes_before_inside_the_band) {
  // The one spare brings 1 inside its limits, though in doubt, or 2 inside its band.
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm),
                     valve("2", 0.305_mm, 2.76_mm, {0.30_mm, 0.40_mm}, 0.35_mm)};
  question.valves[0].doubt = question.valves[1].doubt = 0.01_mm;
  question.stock = {spare("", 2.705_mm)};
  EXPECT_EQ(actions(sound_plan(question)), "spare keep");
}

TEST(Plan, money_comes_before_the_aim_unless_the_aim_is_first) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm)};
  question.stock = {sale("", 2.72_mm, Money::of(9)), sale("", 2.73_mm, five)};
  EXPECT_EQ(sound_plan(question).lines[0].size, 2.73_mm);
  question.rules.aim_first = true;
  EXPECT_EQ(sound_plan(question).lines[0].size, 2.72_mm);
}

TEST(Plan, with_the_aim_first_money_still_comes_before_valves_opened) {
  // As near to the aims either way: 1 takes the shim of 2, which takes the spare (two opened,
  // nothing spent), or 1 buys (one opened).
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.175_mm, 2.72_mm)};
  question.stock = {spare("", 2.71_mm), sale("", 2.72_mm, five)};
  question.valves[0].limits = {0.175_mm, 0.185_mm};
  question.rules.touch_good = true;
  question.rules.aim_first = true;
  EXPECT_EQ(actions(sound_plan(question)), "move spare");
}

TEST(Plan, of_two_shims_equally_near_the_aim_the_thinner_is_fitted) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm)};
  question.stock = {sale("", 2.73_mm, five), sale("", 2.71_mm, five)};
  EXPECT_EQ(sound_plan(question).lines[0].size, 2.71_mm);
  std::ranges::reverse(question.stock);
  EXPECT_EQ(sound_plan(question).lines[0].size, 2.71_mm);
}

TEST(Plan, a_shim_is_not_bought_that_the_owner_has) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm)};
  question.stock = {sale("", 2.72_mm, Money()), spare("", 2.72_mm)};
  question.rules.work = five;
  EXPECT_EQ(sound_plan(question).lines[0].action, Action::spare);
}

TEST(Plan, buys_no_more_than_is_on_sale_and_the_cheap_ones_first) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.10_mm, 2.80_mm),
                     valve("3", 0.10_mm, 2.80_mm), valve("4", 0.10_mm, 2.80_mm)};
  question.stock = {sale("", 2.72_mm, Money::of(7), 2), sale("", 2.72_mm, five, 1)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(times(plan, Action::buy), 3);
  EXPECT_EQ(times(plan, Action::none), 1);
  ASSERT_EQ(plan.order.size(), 2u);
  EXPECT_EQ(plan.order[0].price, five);
  EXPECT_EQ(plan.order[0].count, 1);
  EXPECT_EQ(plan.order[1].price, Money::of(7));
  EXPECT_EQ(plan.order[1].count, 2);
}

TEST(Plan, the_order_is_by_series_then_size) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.10_mm, 2.70_mm),
                     valve("3", 0.10_mm, 2.60_mm)};
  question.valves[0].series = "b";
  question.valves[1].series = "a";
  question.valves[2].series = "b";
  question.stock = {sale("b", 2.72_mm, five), sale("b", 2.52_mm, five), sale("a", 2.62_mm, five)};
  const Plan plan = sound_plan(question);
  ASSERT_EQ(plan.order.size(), 3u);
  EXPECT_EQ(plan.order[0].series, "a");
  EXPECT_EQ(plan.order[1].size, 2.52_mm);
  EXPECT_EQ(plan.order[2].size, 2.72_mm);
}

// What it gave when this was written: whoever changes it means to.
TEST(Plan, of_a_known_question_is_the_known_answer) {
  const PlanQuestion question = questions::scattered(16, 7);
  const Plan plan = sound_plan(question);
  std::vector<std::string> lines;
  for (const PlanLine& line : plan.lines)
    lines.push_back(std::string(word_for(line.action)) + " " +
                    (line.from ? question.valves[*line.from].name + " " : "") +
                    (line.size ? text_of(*line.size) : "none"));
  EXPECT_EQ(lines, (std::vector<std::string>{
                       "keep 2.868 mm", "buy 2.95 mm", "keep 3.005 mm", "move v9 2.431 mm",
                       "buy 2.90 mm", "move v2 3.005 mm", "buy 2.30 mm", "keep 2.647 mm",
                       "move v11 2.37 mm", "keep 2.383 mm", "buy 2.35 mm", "buy 2.25 mm",
                       "buy 2.95 mm", "keep 2.909 mm", "keep 2.384 mm", "keep 3.077 mm"}));
}

// 0.10 over 2.48 fills 2.58: limits 0.25 to 0.27 want 2.31 to 2.33, and sizes step by 0.05.
PlanQuestion between_two_sizes() {
  constexpr Limits narrow{0.25_mm, 0.27_mm};
  PlanQuestion question;
  question.valves = {valve("A", 0.10_mm, 2.48_mm, narrow, 0.265_mm),
                     valve("B", 0.24_mm, 2.50_mm, narrow, 0.265_mm)};
  for (const Length size : ladder(2.00_mm, 3.50_mm, 0.05_mm))
    question.stock.push_back(sale("", size, five));
  return question;
}

TEST(Plan, a_valve_with_nearest_gives_its_shim_to_one_that_it_serves) {
  PlanQuestion question = between_two_sizes();
  EXPECT_EQ(actions(sound_plan(question)), "none none");
  question.valves[0].nearest = true;
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "buy move");
  EXPECT_EQ(plan.lines[0].size, 2.30_mm);
  EXPECT_EQ(plan.lines[0].after, 0.28_mm);
  EXPECT_EQ(plan.lines[0].margin, -0.01_mm);
  EXPECT_EQ(plan.lines[0].state, State::loose);
  EXPECT_EQ(plan.lines[1].size, 2.48_mm);
  EXPECT_EQ(plan.lines[1].after, 0.26_mm);
  EXPECT_TRUE(plan.surplus.size() == 1 && plan.surplus[0].size == 2.50_mm);
}

TEST(Plan, the_rule_nearest_is_that_of_every_valve) {
  PlanQuestion question = between_two_sizes();
  question.rules.nearest = true;
  EXPECT_EQ(actions(sound_plan(question)), "buy move");
  question.valves[0].locked = true;
  EXPECT_EQ(actions(sound_plan(question)), "keep none") << "0.24 is nearer than 0.29 or 0.19";
}

TEST(Plan, a_shim_as_near_as_its_own_is_not_fitted_as_the_nearest) {
  PlanQuestion question;
  question.rules.nearest = true;
  question.valves = {valve("1", 0.14_mm, 2.80_mm)};  // 0.02 too tight
  question.stock = {spare("", 2.72_mm)};             // 0.02 too loose
  EXPECT_EQ(actions(sound_plan(question)), "none");
  question.stock = {spare("", 2.720001_mm)};
  EXPECT_EQ(actions(sound_plan(question)), "spare");
}

TEST(Plan, of_two_shims_as_near_the_looser_is_fitted_whatever_it_costs) {
  PlanQuestion question;
  question.rules.nearest = true;
  question.valves = {valve("1", 0.10_mm, 2.80_mm)};
  // 0.15 and 0.21: either 0.01 outside.
  question.stock = {spare("", 2.75_mm), sale("", 2.69_mm, five)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(plan.lines[0].size, 2.69_mm);
  EXPECT_EQ(plan.lines[0].state, State::loose);
}

TEST(Plan, no_nearest_shim_leaves_a_valve_without_a_gap) {
  PlanQuestion question;
  question.rules.nearest = true;
  question.valves = {valve("1", 1.00_mm, 2.80_mm)};
  question.stock = {spare("", 3.80_mm)};  // 0: 0.16 outside, where it is 0.80 now
  EXPECT_EQ(actions(sound_plan(question)), "none");
  question.stock = {spare("", 3.79_mm)};
  EXPECT_EQ(actions(sound_plan(question)), "spare");
}

TEST(Plan, the_nearest_comes_before_the_band_and_money_and_after_the_fewest_outside) {
  PlanQuestion question;
  question.valves = {valve("1", 0.10_mm, 2.80_mm), valve("2", 0.10_mm, 2.785_mm)};
  question.valves[0].nearest = true;
  // For 1 the spare leaves 0.205 and is nearest, for 2 it leaves 0.19.
  question.stock = {spare("", 2.695_mm), sale("", 2.66_mm, five)};
  const Plan plan = sound_plan(question);
  EXPECT_EQ(actions(plan), "buy spare");
  EXPECT_EQ(plan.lines[0].after, 0.24_mm);
}

TEST(Plan, none_comes_nearer_where_the_clearance_is_inside) {
  EXPECT_EQ(nearer_shims(0.16_mm, 2.80_mm, usual), std::nullopt);
  EXPECT_EQ(nearer_shims(0.20_mm, 2.80_mm, usual), std::nullopt);
  const auto tight = nearer_shims(0.159999_mm, 2.80_mm, usual);
  ASSERT_TRUE(tight);  // by one nanometre: only those that serve come nearer
  EXPECT_EQ(tight->thinnest, 2.759999_mm);
  EXPECT_EQ(tight->thickest, 2.799999_mm);
  const auto loose = nearer_shims(1.00_mm, 2.80_mm, {Length(), 0.10_mm});
  ASSERT_TRUE(loose);
  EXPECT_EQ(loose->thickest, 3.80_mm) << "where no gap is allowed, that shim serves";
  EXPECT_EQ(outside_by(0.15_mm, usual), 0.01_mm);
  EXPECT_EQ(outside_by(0.22_mm, usual), 0.02_mm);
  EXPECT_EQ(outside_by(0.20_mm, usual), Length());
}

TEST(Plan, the_nearest_listed_size_is_that_of_its_series_and_to_be_had) {
  Valve one = valve("1", 0.10_mm, 2.48_mm, {0.25_mm, 0.27_mm}, 0.26_mm);
  const auto nearest = [&one](const std::vector<Stock>& stock) {
    return nearest_listed(one, stock);
  };
  EXPECT_EQ(nearest({}), std::nullopt);
  EXPECT_EQ(nearest({spare("", 2.34_mm), sale("", 2.30_mm, five)}), 2.30_mm) << "as near, thinner";
  EXPECT_EQ(nearest({sale("", 2.30_mm, five), spare("", 2.34_mm)}), 2.30_mm);
  EXPECT_EQ(nearest({sale("", 2.29_mm, five), spare("", 2.34_mm)}), 2.34_mm);
  EXPECT_EQ(nearest({spare("B", 2.34_mm), sale("", 2.29_mm, five)}), 2.29_mm);
  EXPECT_EQ(nearest({spare("", 2.34_mm, 0), sale("", 2.29_mm, five)}), 2.29_mm);
  EXPECT_EQ(nearest({spare("", 2.32_mm), sale("", 2.30_mm, five)}), std::nullopt) << "one serves";
  EXPECT_EQ(nearest({spare("", 2.48_mm), spare("", 2.60_mm)}), std::nullopt) << "none is nearer";
  one.shim.reset();
  EXPECT_EQ(nearest({sale("", 2.30_mm, five)}), std::nullopt);
}

TEST(Plan, of_all_valves_alike_buys_the_sizes_nearest_the_aim_of_one_price) {
  PlanQuestion question = questions::alike(40, 400, true);
  for (Stock& stock : question.stock) stock.price = five;
  const Plan plan = sound_plan(question);
  EXPECT_EQ(times(plan, Action::buy), 40);
  for (const PlanLine& line : plan.lines) EXPECT_LE(abs(*line.after - 2.0_mm), 0.2_mm);
}

TEST(Plan, the_order_of_the_rows_does_not_change_what_is_reached) {
  std::mt19937_64 numbers(1);
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    PlanQuestion question =
        seed % 10 == 0 ? questions::service(48, seed) : questions::crowded(12, seed);
    const auto score = audit::look_over(question, best_plan(question)).score;
    std::ranges::shuffle(question.valves, numbers);
    std::ranges::shuffle(question.stock, numbers);
    EXPECT_EQ(audit::look_over(question, sound_plan(question)).score, score) << "seed " << seed;
  }
}

TEST(Plan, holds_the_sums_of_the_largest_question) {
  // 10 000 valves, each as far off and each shim as dear as an entry may be.
  PlanQuestion question;
  for (int i = 0; i < 10'000; ++i)
    question.valves.push_back(
        valve(std::to_string(i), Length(), 100.0_mm, {50.0_mm, 100.0_mm}, 100.0_mm));
  question.rules.work = Money::of(1e6);
  question.stock = {sale("", 50.0_mm, Money::of(1e6)),
                    sale("", 0.000001_mm, Money::of(1e6), 5'000)};
  const Plan plan = sound_plan(question);
  const auto score = audit::look_over(question, plan).score;
  EXPECT_EQ(score[0], 0);
  EXPECT_EQ(score[4], 20'000'000'000'000);  // thousandths: two million for each
  EXPECT_EQ(score[6], 5'000 * (50.0_mm).nanometres() + 5'000);
  ASSERT_EQ(plan.order.size(), 2u);
  EXPECT_EQ(plan.order[0].count, 5'000);
  EXPECT_EQ(plan.order[1].count, 5'000);
}

}  // namespace
}  // namespace shimwright
