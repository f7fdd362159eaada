// SPDX-License-Identifier: MPL-2.0
//
// Tens of thousands of made-up engines, whose steps are all played on the model engine.
#include <gtest/gtest.h>

#include <cstdint>
#include <string>
#include <vector>

#include "model_engine.hpp"
#include "steps_questions.hpp"

namespace shimwright {
namespace {

struct Tally {
  std::size_t turns = 0, stand_ins = 0, waiting = 0, unproved = 0;

  void add(const FittingSteps& result) {
    turns += result.turns;
    stand_ins += result.stand_ins;
    waiting += result.waiting;
    unproved += !result.least;
  }
};

void play(const FittingQuestion& question, std::uint64_t seed, Tally& tally) {
  const FittingSteps result = fitting_steps(question);
  ASSERT_EQ(model::play(question, result), "") << "seed " << seed;
  tally.add(result);
}

TEST(StepsRandom, best_plans_of_made_up_heads_are_fitted_safely) {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 20'000 && !HasFatalFailure(); ++seed) {
    const std::size_t valves = 4 + seed % 13;
    play(questions::serviced(valves, seed % 2 == 0, 4, 8, seed), seed, tally);
  }
  EXPECT_GT(tally.stand_ins, 500U);
  EXPECT_EQ(tally.unproved, 0U);
}

TEST(StepsRandom, best_plans_of_crowded_heads_are_fitted_safely) {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 20'000 && !HasFatalFailure(); ++seed)
    play(questions::planned(questions::crowded(16, seed), 4, 8, seed), seed, tally);
  EXPECT_GT(tally.stand_ins, 500U);
  EXPECT_GT(tally.waiting, 50U);
}

TEST(StepsRandom, any_moves_whatever_are_made_safely) {
  Tally tally;
  const questions::FittingShape shape{.valves = 12, .stops = 4, .spares = 3, .sizes = 10};
  for (std::uint64_t seed = 1; seed <= 10'000 && !HasFatalFailure(); ++seed)
    play(questions::shuffled(shape, seed), seed, tally);
  EXPECT_GT(tally.stand_ins, 2'000U);
  EXPECT_GT(tally.waiting, 1'000U);
}

TEST(StepsRandom, large_engines_are_fitted_safely_even_where_the_search_is_cut_short) {
  Tally tally;
  for (std::uint64_t seed = 1; seed <= 100 && !HasFatalFailure(); ++seed) {
    const std::int64_t stops = seed % 3 == 0 ? 12 : 3;
    play(questions::serviced(48, seed % 4 == 0, stops, 8, seed), seed, tally);
    const questions::FittingShape shape{
        .valves = 48, .stops = 4, .spares = 3, .sizes = 20, .series = 2};
    play(questions::shuffled(shape, seed), seed, tally);
  }
  EXPECT_GT(tally.unproved, 0U);  // the safe way out is gone through as well
}

TEST(StepsRandom, the_fewest_are_not_said_to_be_proved_unless_every_order_was_looked_at) {
  const questions::FittingShape shape{.valves = 16, .stops = 6, .spares = 3, .sizes = 20};
  EXPECT_FALSE(fitting_steps(questions::shuffled(shape, 13)).least);
}

TEST(StepsRandom, a_search_cut_short_comes_to_no_stop_for_nothing) {
  const questions::FittingShape shape{
      .valves = 24, .stops = 6, .spares = 3, .several = 8, .sizes = 20};
  Tally tally;
  play(questions::shuffled(shape, 18), 18, tally);
  EXPECT_LE(tally.turns, 10U);
}

// What they were when this was written: whoever changes them means to.
TEST(StepsRandom, of_a_known_question_are_the_known_steps) {
  const questions::FittingShape shape{.valves = 12, .stops = 3};
  const FittingQuestion question = questions::shuffled(shape, 26);
  std::vector<std::string> steps;
  for (const Step& step : fitting_steps(question).steps)
    steps.push_back((step.stop ? std::to_string(*step.stop) : "-") + "|" +
                    (step.valve ? question.valves[*step.valve].name : "") + "|" +
                    (step.out ? text_of(*step.out) : "") + "|" +
                    (step.in ? text_of(*step.in) : "") + "|" + step.from);
  EXPECT_EQ(steps, (std::vector<std::string>{
                       "1||||", "1|1|2.525 mm|2.575 mm|bought", "1|6|2.525 mm|2.55 mm|spare",
                       "1|7|2.55 mm|2.575 mm|bought", "3||||", "3|3|2.525 mm|2.55 mm|bought",
                       "3|2|2.525 mm|2.525 mm|3", "2||||", "2|5|2.625 mm|2.525 mm|2", "-||||"}));
}

}  // namespace
}  // namespace shimwright
