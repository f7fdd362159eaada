// SPDX-License-Identifier: MPL-2.0
//
// The model engine itself: good steps spoilt in each way it has to notice.
#include "model_engine.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <string>
#include <utility>

namespace shimwright {
namespace {

using Supply = FittingValve::Supply;
using Origin = ShimAtBench::Origin;

// A and B change places across two stops, with a stand-in; C gets a spare, D keeps its shim.
FittingQuestion head() {
  FittingQuestion question;
  question.valves = {{"A", "", 2.70_mm, Supply::valve, 1, 2.80_mm, {1}},
                     {"B", "", 2.80_mm, Supply::valve, 0, 2.70_mm, {2}},
                     {"C", "", 2.90_mm, Supply::spare, 0, 3.00_mm, {2}},
                     {"D", "", 2.50_mm, Supply::keep, 0, {}, {1, 2}}};
  question.spares = {{"", 2.65_mm, 1}, {"", 2.75_mm, 1}};
  return question;
}

// What the engine says to steps spoilt so; the good ones are
//   turn 1 / A 2.70 > 2.65 / turn 2 / B 2.80 > 2.70 / C 2.90 > 3.00 / turn 1 / A 2.65 > 2.80 / end.
std::string after(const std::function<void(FittingSteps&)>& spoil) {
  const FittingQuestion question = head();
  FittingSteps result = fitting_steps(question);
  spoil(result);
  return model::play(question, result);
}

void leave_out(FittingSteps& result, std::size_t row) {
  result.steps.erase(result.steps.begin() + static_cast<std::ptrdiff_t>(row));
}

TEST(ModelEngine, good_steps_are_played_to_the_end) {
  EXPECT_EQ(after([](FittingSteps&) {}), "");
}

TEST(ModelEngine, a_turn_over_an_empty_valve_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              Step& step = result.steps.at(1);
              step.kind = Step::Kind::take_out;
              step.in.reset();
              step.shim.reset();
              step.from.clear();
            }),
            "row 3: A: the crank is turned over an empty valve");
}

TEST(ModelEngine, the_last_turns_over_an_empty_valve_are_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              Step& step = result.steps.at(6);
              step.kind = Step::Kind::take_out;
              step.in.reset();
              step.shim.reset();
              step.from.clear();
            }),
            "row 8: A: the crank is turned over an empty valve");
}

TEST(ModelEngine, too_thick_a_stand_in_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              result.steps.at(1).in = 2.75_mm;
              result.steps.at(1).shim = ShimAtBench{Origin::spare, 1};
            }),
            "row 2: A: too thick a stand-in");
}

TEST(ModelEngine, a_shim_fitted_before_it_came_out_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              Step& step = result.steps.at(1);
              step.in = 2.80_mm;
              step.shim = ShimAtBench{Origin::out_of_valve, 1};
              step.from = std::string("B");
              step.stand_in = false;
            }),
            "row 2: A: its shim is not on the bench");
}

TEST(ModelEngine, a_shim_in_two_places_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              Step& step = result.steps.at(4);
              step.in = 2.65_mm;
              step.shim = ShimAtBench{Origin::spare, 0};
              step.from = std::string("stand-in");
              step.stand_in = true;
            }),
            "row 5: C: its shim is not on the bench");
}

TEST(ModelEngine, work_on_a_valve_that_is_not_open_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              Step step = result.steps.at(4);
              step.stop = 1;
              leave_out(result, 4);
              result.steps.insert(result.steps.begin() + 1, step);
            }),
            "row 2: C: not open at this stop");
  EXPECT_EQ(after([](FittingSteps& result) { std::swap(result.steps.at(2), result.steps.at(3)); }),
            "row 3: B: worked on at another stop than the crank's");
}

TEST(ModelEngine, an_end_that_is_not_the_plan_s_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) { leave_out(result, 4); }),
            "row 7: C: left undone, but is in no ring");
  EXPECT_EQ(after([](FittingSteps& result) {
              leave_out(result, 6);
              leave_out(result, 5);
              --result.turns;
            }),
            "row 6: A: not the shim of the plan");
}

TEST(ModelEngine, a_valve_that_keeps_its_shim_is_not_opened) {
  EXPECT_EQ(after([](FittingSteps& result) {
              result.steps.at(1).valve = 3;
              result.steps.at(1).out = 2.50_mm;
            }),
            "row 2: D: opened though it keeps its shim");
}

TEST(ModelEngine, a_note_that_says_the_wrong_stop_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              result.steps.at(1).notes.front().words.back() = std::int64_t{2};
            }),
            "row 7: A: its stand-in comes out at another stop than was said");
  EXPECT_EQ(after([](FittingSteps& result) {
              std::erase_if(result.steps.at(1).notes,
                            [](const Told& note) { return note.what == Say::step_stand_in_spare; });
            }),
            "row 2: nothing said of when a stand-in comes out");
}

TEST(ModelEngine, a_turn_for_nothing_is_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) {
              result.steps.insert(result.steps.begin(), result.steps.at(2));
              ++result.turns;
            }),
            "row 2: a turn to a stop where nothing was done");
}

TEST(ModelEngine, wrong_sums_are_noticed) {
  EXPECT_EQ(after([](FittingSteps& result) { --result.turns; }), "row 8: another number of turns");
  EXPECT_EQ(after([](FittingSteps& result) { ++result.stand_ins; }),
            "row 8: another number of stand-ins");
  EXPECT_EQ(after([](FittingSteps& result) { ++result.waiting; }),
            "row 8: another number of valves waits");
  EXPECT_EQ(after([](FittingSteps& result) { result.steps.pop_back(); }),
            "row 7: the last row is to turn and measure again");
}

}  // namespace
}  // namespace shimwright
