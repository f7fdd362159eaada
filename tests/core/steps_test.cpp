// SPDX-License-Identifier: MPL-2.0
//
// The order to fit: literal cases, told as rows. That the crank is not turned over a valve without
// a shim, nor over one that might be held open, is common practice, no source.
#include "core/fitting/steps.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/values/bad_input.hpp"
#include "model_engine.hpp"
#include "steps_questions.hpp"

namespace shimwright {
namespace {

std::string note_of(const Step& step) { return in_words(step.notes, Teller()); }

using Supply = FittingValve::Supply;

FittingValve kept(std::string name, Length shim, std::vector<int> stops) {
  return {.name = std::move(name), .series = "", .shim = shim, .fit = {}, .stops = stops};
}

FittingValve moved(std::string name, Length shim, std::size_t giver, Length fit,
                   std::vector<int> stops) {
  return {.name = std::move(name),
          .series = "",
          .shim = shim,
          .supply = Supply::valve,
          .giver = giver,
          .fit = fit,
          .stops = stops};
}

FittingValve bought(std::string name, Length shim, Length fit, std::vector<int> stops) {
  return {.name = std::move(name),
          .series = "",
          .shim = shim,
          .supply = Supply::bought,
          .fit = fit,
          .stops = stops};
}

// One word a row: `turn 2`, `A 2.60 > 2.70 B`, `A 2.60 >`, `A > 2.70 B`, `wait A`, `finish`.
std::vector<std::string> told(const FittingQuestion& question, const FittingSteps& result) {
  const auto number = [](std::optional<Length> size) {
    const std::string text = size ? text_of(*size) : std::string();
    return text.substr(0, text.find(' '));
  };
  std::vector<std::string> rows;
  for (const Step& step : result.steps) {
    const std::string name = step.valve ? question.valves[*step.valve].name : std::string();
    switch (step.kind) {
      case Step::Kind::wait:
        rows.push_back("wait " + name);
        break;
      case Step::Kind::turn:
        rows.push_back("turn " + std::to_string(*step.stop));
        break;
      case Step::Kind::take_out:
        rows.push_back(name + " " + number(step.out) + " >");
        break;
      case Step::Kind::change:
        rows.push_back(name + " " + number(step.out) + " > " + number(step.in) + " " + step.from);
        break;
      case Step::Kind::fit:
        rows.push_back(name + " > " + number(step.in) + " " + step.from);
        break;
      case Step::Kind::finish:
        rows.push_back("finish");
        break;
    }
  }
  return rows;
}

using Rows = std::vector<std::string>;

void expect_rows(const FittingQuestion& question, const Rows& rows) {
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(told(question, result), rows);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_TRUE(result.least);
}

// Two valves at two stops that change places.
FittingQuestion pair_across_stops() {
  return {.valves = {moved("A", 2.70_mm, 1, 2.80_mm, {1}), moved("B", 2.80_mm, 0, 2.70_mm, {2})},
          .spares = {}};
}

TEST(Steps, a_plan_that_opens_no_valve_has_no_steps) {
  expect_rows({.valves = {kept("A", 2.70_mm, {1})}, .spares = {}}, {});
}

TEST(Steps, one_purchase_is_a_turn_a_change_and_the_end) {
  expect_rows({.valves = {bought("A", 2.70_mm, 2.60_mm, {3})}, .spares = {}},
              {"turn 3", "A 2.70 > 2.60 bought", "finish"});
}

TEST(Steps, a_shim_comes_out_before_it_goes_in_elsewhere) {
  expect_rows({.valves = {moved("A", 2.70_mm, 1, 2.60_mm, {1}), bought("B", 2.60_mm, 2.50_mm, {1})},
               .spares = {}},
              {"turn 1", "B 2.60 > 2.50 bought", "A 2.70 > 2.60 B", "finish"});
}

TEST(Steps, a_ring_at_one_stop_leaves_one_valve_empty_and_needs_no_stand_in) {
  expect_rows(
      {.valves = {moved("A", 2.70_mm, 1, 2.80_mm, {1}), moved("B", 2.80_mm, 2, 2.90_mm, {1}),
                  moved("C", 2.90_mm, 0, 2.70_mm, {1})},
       .spares = {}},
      {"turn 1", "A 2.70 >", "C 2.90 > 2.70 A", "B 2.80 > 2.90 C", "A > 2.80 B", "finish"});
}

TEST(Steps, a_chain_across_stops_begins_where_its_first_shim_goes) {
  expect_rows({.valves = {moved("A", 2.70_mm, 1, 2.60_mm, {1}), bought("B", 2.60_mm, 2.50_mm, {2})},
               .spares = {}},
              {"turn 2", "B 2.60 > 2.50 bought", "turn 1", "A 2.70 > 2.60 B", "finish"});
}

TEST(Steps, with_the_camshafts_out_the_crank_is_not_turned_until_the_end) {
  FittingQuestion question = pair_across_stops();
  question.camshafts_out = true;
  expect_rows(question, {"A 2.70 >", "B 2.80 > 2.70 A", "A > 2.80 B", "finish"});
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.turns, 0U);
  EXPECT_NE(note_of(result.steps.back()).find("put the camshafts back"), std::string::npos);
}

TEST(Steps, a_ring_across_stops_borrows_a_spare_that_is_not_thicker) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.75_mm}, {"", 2.65_mm}};
  expect_rows(question, {"turn 1", "A 2.70 > 2.65 stand-in", "turn 2", "B 2.80 > 2.70 A", "turn 1",
                         "A 2.65 > 2.80 B", "finish"});
}

TEST(Steps, of_spares_that_fit_the_nearest_in_thickness_stands_in) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.60_mm}, {"", 2.65_mm}, {"", 2.40_mm}};
  expect_rows(question, {"turn 1", "A 2.70 > 2.65 stand-in", "turn 2", "B 2.80 > 2.70 A", "turn 1",
                         "A 2.65 > 2.80 B", "finish"});
}

// C's shim lies between the spares, so that they are not alike: 2.65 would fit under C's as well.
TEST(Steps, the_nearest_stands_in_though_a_thinner_one_fits_more_valves) {
  FittingQuestion question{
      .valves = {moved("A", 2.80_mm, 1, 2.90_mm, {1}), moved("B", 2.90_mm, 0, 2.80_mm, {2}),
                 bought("C", 2.70_mm, 2.95_mm, {2})},
      .spares = {{"", 2.65_mm}, {"", 2.75_mm}}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.steps.at(1).in, 2.75_mm);
  EXPECT_EQ(model::play(question, result), "");
}

// Two rings, so that both spares of 2.65 are needed at once; each stands in a row of its own.
TEST(Steps, spares_alike_in_two_rows_are_each_taken_once) {
  FittingQuestion question = pair_across_stops();
  question.valves.push_back(moved("C", 2.70_mm, 3, 2.80_mm, {1}));
  question.valves.push_back(moved("D", 2.80_mm, 2, 2.70_mm, {2}));
  question.spares = {{"", 2.65_mm}, {"", 2.90_mm}, {"", 2.65_mm}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.turns, 3U);
  EXPECT_EQ(result.steps.at(1).shim, (ShimAtBench{ShimAtBench::Origin::spare, 0}));
  EXPECT_EQ(result.steps.at(2).shim, (ShimAtBench{ShimAtBench::Origin::spare, 2}));
}

TEST(Steps, a_spare_of_which_there_are_none_does_not_stand_in) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.65_mm, 0}, {"", 2.60_mm, -1}};
  EXPECT_EQ(fitting_steps(question).waiting, 2U);
}

TEST(Steps, a_note_says_the_stop_to_which_the_stand_in_goes_back) {
  FittingQuestion question = pair_across_stops();
  question.valves[0].stops = {1, 3};
  question.spares = {{"", 2.65_mm}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(told(question, result),
            (Rows{"turn 1", "A 2.70 > 2.65 stand-in", "turn 2", "B 2.80 > 2.70 A", "turn 3",
                  "A 2.65 > 2.80 B", "finish"}));
  EXPECT_EQ(note_of(result.steps.at(1)),
            "Stand-in: a spare. It comes out again at stop 3. Set the shim taken out aside for B.");
  EXPECT_EQ(model::play(question, result), "");
}

TEST(Steps, stops_that_do_not_depend_on_each_other_are_come_to_in_the_crank_s_order) {
  expect_rows({.valves = {bought("A", 2.70_mm, 2.60_mm, {3}), bought("B", 2.70_mm, 2.60_mm, {1}),
                          bought("C", 2.70_mm, 2.60_mm, {4}), bought("D", 2.70_mm, 2.60_mm, {2})},
               .spares = {}},
              {"turn 1", "B 2.70 > 2.60 bought", "turn 2", "D 2.70 > 2.60 bought", "turn 3",
               "A 2.70 > 2.60 bought", "turn 4", "C 2.70 > 2.60 bought", "finish"});
}

TEST(Steps, a_valve_open_at_several_stops_is_done_at_the_one_said_first) {
  FittingQuestion question{
      .valves = {bought("A", 2.70_mm, 2.60_mm, {1}), bought("B", 2.70_mm, 2.60_mm, {2}),
                 bought("C", 2.70_mm, 2.60_mm, {2, 1})},
      .spares = {}};
  expect_rows(question, {"turn 1", "A 2.70 > 2.60 bought", "turn 2", "B 2.70 > 2.60 bought",
                         "C 2.70 > 2.60 bought", "finish"});
  question.valves[2].stops = {1, 2};
  expect_rows(question, {"turn 1", "A 2.70 > 2.60 bought", "C 2.70 > 2.60 bought", "turn 2",
                         "B 2.70 > 2.60 bought", "finish"});
}

// D takes C's shim at stop 2, so C is done no later, though it likes stop 3 best.
TEST(Steps, the_stop_said_first_never_costs_a_turn) {
  expect_rows(
      {.valves = {bought("A", 2.60_mm, 2.50_mm, {1}), bought("B", 2.90_mm, 2.60_mm, {3}),
                  moved("C", 2.70_mm, 0, 2.60_mm, {3, 2, 1}), moved("D", 2.80_mm, 2, 2.70_mm, {2})},
       .spares = {}},
      {"turn 1", "A 2.60 > 2.50 bought", "turn 2", "C 2.70 > 2.60 A", "D 2.80 > 2.70 C", "turn 3",
       "B 2.90 > 2.60 bought", "finish"});
}

TEST(Steps, a_ring_open_at_several_stops_is_done_at_the_one_its_valves_like_best) {
  expect_rows(
      {.valves = {moved("A", 2.70_mm, 1, 2.80_mm, {1, 2}), moved("B", 2.80_mm, 0, 2.70_mm, {2, 1}),
                  bought("C", 2.70_mm, 2.60_mm, {1}), bought("D", 2.70_mm, 2.60_mm, {2})},
       .spares = {}},
      {"turn 1", "A 2.70 >", "B 2.80 > 2.70 A", "A > 2.80 B", "C 2.70 > 2.60 bought", "turn 2",
       "D 2.70 > 2.60 bought", "finish"});
  expect_rows({.valves = {moved("A", 2.70_mm, 1, 2.80_mm, {3, 2, 1}),
                          moved("B", 2.80_mm, 0, 2.70_mm, {2, 1}),
                          bought("C", 2.70_mm, 2.60_mm, {1}), bought("D", 2.70_mm, 2.60_mm, {2})},
               .spares = {}},
              {"turn 1", "C 2.70 > 2.60 bought", "turn 2", "A 2.70 >", "B 2.80 > 2.70 A",
               "A > 2.80 B", "D 2.70 > 2.60 bought", "finish"});
}

TEST(Steps, a_spare_as_thick_as_the_old_shim_may_stand_in) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.80_mm}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.stand_ins, 1U);
  EXPECT_EQ(result.waiting, 0U);
}

TEST(Steps, without_a_stand_in_the_ring_waits_and_the_rest_is_done) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.80_mm + Length::nanometres(1)}};
  question.valves.push_back(bought("C", 2.90_mm, 2.85_mm, {2}));
  expect_rows(question, {"wait B", "turn 2", "C 2.90 > 2.85 bought", "finish"});
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.waiting, 2U);
  EXPECT_EQ(
      note_of(result.steps.front()),
      "No stand-in is there: borrow or buy a shim no thicker than 2.80 mm. Until then A and B "
      "keep their shims.");
}

TEST(Steps, a_shim_of_another_series_does_not_stand_in) {
  FittingQuestion question = pair_across_stops();
  for (FittingValve& valve : question.valves) valve.series = "inlet";
  question.spares = {{"exhaust", 2.60_mm}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.waiting, 2U);
  EXPECT_NE(note_of(result.steps.front()).find("no thicker than 2.80 mm, series inlet."),
            std::string::npos);
}

TEST(Steps, a_purchase_for_a_later_stop_stands_in_until_then) {
  FittingQuestion question = pair_across_stops();
  question.valves.push_back(bought("C", 2.90_mm, 2.65_mm, {2}));
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.turns, 3U);
  EXPECT_EQ(result.stand_ins, 1U);
  EXPECT_EQ(result.waiting, 0U);
}

TEST(Steps, a_shim_that_is_left_over_stands_in) {
  FittingQuestion question = pair_across_stops();
  question.valves.push_back(bought("C", 2.65_mm, 2.90_mm, {1}));
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.stand_ins, 1U);
  EXPECT_EQ(result.waiting, 0U);
}

// The spare fits under B's old shim only; with B's ring open, C's 2.50 lies on the bench and
// stands in for the ring of D and E, all of whose shims are thinner than the spare.
TEST(Steps, one_ring_lends_a_stand_in_to_another) {
  const FittingQuestion question{
      .valves = {moved("B", 2.80_mm, 1, 2.50_mm, {1}), moved("C", 2.50_mm, 0, 2.80_mm, {2}),
                 moved("D", 2.60_mm, 3, 2.55_mm, {1}), moved("E", 2.55_mm, 2, 2.60_mm, {2})},
      .spares = {{"", 2.70_mm}}};
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.waiting, 0U);
  EXPECT_EQ(result.stand_ins, 2U);
}

// B is open at both stops: it takes C's shim along.
TEST(Steps, a_valve_open_at_two_stops_carries_a_shim_round_a_ring) {
  expect_rows(
      {.valves = {moved("A", 2.70_mm, 2, 2.60_mm, {1}), moved("B", 2.80_mm, 0, 2.70_mm, {1, 2}),
                  moved("C", 2.60_mm, 1, 2.80_mm, {2})},
       .spares = {}},
      {"turn 2", "B 2.80 >", "C 2.60 > 2.80 B", "B > 2.60 stand-in", "turn 1", "A 2.70 >",
       "B 2.60 > 2.70 A", "A > 2.60 C", "finish"});
}

TEST(Steps, stand_ins_are_worth_a_turn_less) {
  // Four valves in a chain, stop after stop: four turns, or three with one stand-in.
  FittingQuestion question{
      .valves = {bought("A", 2.60_mm, 2.50_mm, {1}), moved("B", 2.70_mm, 0, 2.60_mm, {2}),
                 moved("C", 2.80_mm, 1, 2.70_mm, {1}), moved("D", 2.90_mm, 2, 2.80_mm, {2})},
      .spares = {}};
  FittingSteps result = fitting_steps(question);
  EXPECT_EQ(result.turns, 4U);
  EXPECT_EQ(result.stand_ins, 0U);
  question.spares = {{"", 2.40_mm}};
  result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.turns, 3U);
  EXPECT_EQ(result.stand_ins, 1U);
}

TEST(Steps, each_turn_and_the_end_carry_a_caution) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.75_mm}};
  for (const Step& step : fitting_steps(question).steps) {
    if (step.kind != Step::Kind::turn && step.kind != Step::Kind::finish) continue;
    EXPECT_EQ(note_of(step).find("See that every valve has a shim"), 0U) << note_of(step);
    EXPECT_NE(note_of(step).find("by hand, forwards only"), std::string::npos) << note_of(step);
  }
  const std::string last = note_of(fitting_steps(question).steps.back());
  EXPECT_NE(last.find("two full turns"), std::string::npos);
  EXPECT_NE(last.find("measure every gap again"), std::string::npos);
}

TEST(Steps, a_row_says_what_becomes_of_the_shim_that_comes_out) {
  FittingQuestion question = pair_across_stops();
  question.spares = {{"", 2.65_mm}};
  const std::vector<Step> steps = fitting_steps(question).steps;
  EXPECT_EQ(note_of(steps.at(1)),
            "Stand-in: a spare. It comes out again at stop 1. Set the shim taken out aside for B.");
  EXPECT_EQ(note_of(steps.at(3)), "Set the shim taken out aside for A.");
  EXPECT_EQ(note_of(steps.at(5)), "Put the shim taken out back with the spares.");
}

TEST(Steps, the_plan_s_spares_are_not_at_hand_as_stand_ins) {
  PlanQuestion head;
  head.valves.push_back({.name = "A",
                         .series = "",
                         .clearance = 0.10_mm,
                         .shim = 2.70_mm,
                         .limits = {0.15_mm, 0.25_mm},
                         .aim = 0.20_mm,
                         .doubt = {}});
  head.valves.push_back({.name = "B",
                         .series = "",
                         .clearance = {},
                         .shim = 2.80_mm,
                         .limits = {0.15_mm, 0.25_mm},
                         .aim = 0.20_mm,
                         .doubt = {}});
  head.stock = {questions::spare("", 2.60_mm, 2), questions::spare("", 2.40_mm),
                questions::sale("", 2.60_mm, Money())};
  const std::vector<OpenAt> open{{0, 1}, {0, 2}, {1, 2}};
  const FittingQuestion fitting = fitting_of(head, best_plan(head), open);
  ASSERT_EQ(fitting.valves.size(), 2U);
  EXPECT_EQ(fitting.valves[0].supply, Supply::spare);
  EXPECT_EQ(fitting.valves[0].fit, 2.60_mm);
  EXPECT_EQ(fitting.valves[0].stops, (std::vector<int>{1, 2}));
  EXPECT_EQ(fitting.valves[1].supply, Supply::keep);
  ASSERT_EQ(fitting.spares.size(), 2U);
  EXPECT_EQ(fitting.spares[0].count, 1);
  EXPECT_EQ(fitting.spares[1].count, 1);
  EXPECT_FALSE(fitting.camshafts_out);
  EXPECT_TRUE(fitting_of(head, best_plan(head), {}).camshafts_out);
}

TEST(Steps, of_two_rows_of_one_spare_the_one_not_used_is_at_hand) {
  PlanQuestion head;
  head.valves.push_back({.name = "A",
                         .series = "",
                         .clearance = 0.10_mm,
                         .shim = 2.70_mm,
                         .limits = {0.15_mm, 0.25_mm},
                         .aim = 0.20_mm,
                         .doubt = {}});
  head.stock = {questions::spare("", 2.60_mm), questions::spare("", 2.60_mm)};
  const FittingQuestion fitting = fitting_of(head, best_plan(head), {});
  ASSERT_EQ(fitting.valves[0].supply, Supply::spare);
  ASSERT_EQ(fitting.spares.size(), 1U);
  EXPECT_EQ(fitting.spares[0].size, 2.60_mm);
  EXPECT_EQ(fitting.spares[0].count, 1);
}

std::string refusal(const FittingQuestion& question) {
  try {
    fitting_steps(question);
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "none";
}

TEST(Steps, bad_input_is_refused_with_the_valve_s_name) {
  FittingQuestion question = pair_across_stops();
  question.valves[1].stops.clear();
  EXPECT_EQ(
      refusal(question),
      "valve \"B\": its shim is to be changed, but it can be worked on at no stop of the crank");
  question = pair_across_stops();
  question.valves[1].shim.reset();
  EXPECT_EQ(refusal(question), "valve \"B\": its shim is not known, so none can be fitted");
  question = pair_across_stops();
  question.valves[1].supply = Supply::keep;
  EXPECT_EQ(refusal(question), "valve \"A\": its shim is to come from \"B\", which keeps it");
  question = pair_across_stops();
  question.valves[0].fit = 2.75_mm;
  EXPECT_EQ(refusal(question),
            "valve \"A\": 2.75 mm is to come from \"B\", which has another size");
  question.valves[0].fit = 2.85_mm;
  EXPECT_EQ(refusal(question),
            "valve \"A\": 2.85 mm is to come from \"B\", which has another size");
  question = pair_across_stops();
  question.valves[0].giver = 2;
  EXPECT_EQ(refusal(question), "valve \"A\": the valve its shim is to come from does not exist");
  question = pair_across_stops();
  question.valves.push_back(moved("C", 2.90_mm, 0, 2.70_mm, {1}));
  EXPECT_EQ(refusal(question), "valve \"C\": the shim of \"A\" is given away twice");
}

TEST(Steps, there_are_at_most_64_stops) {
  FittingQuestion question{.valves = {}, .spares = {}};
  for (int stop = 1; stop <= 64; ++stop)
    question.valves.push_back(bought(std::to_string(stop), 2.70_mm, 2.60_mm, {stop}));
  const FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  EXPECT_EQ(result.turns, 64U);
  EXPECT_TRUE(result.least);
  question.valves[0].stops.push_back(65);
  EXPECT_EQ(refusal(question), "there are more than 64 stops of the crank");
}

TEST(Steps, there_are_at_most_1000_valves_and_20000_rows_of_spares) {
  FittingQuestion question = pair_across_stops();
  question.valves.resize(1000, kept("K", 2.70_mm, {1}));
  question.spares.resize(20'000, {"", 2.65_mm});
  EXPECT_EQ(refusal(question), "none");
  question.spares.push_back({"", 2.65_mm});
  EXPECT_EQ(refusal(question), "there are more than 20000 rows of spares");
  question.spares.pop_back();
  question.valves.push_back(kept("K", 2.70_mm, {1}));
  EXPECT_EQ(refusal(question), "there are more than 1000 valves");
}

}  // namespace
}  // namespace shimwright
