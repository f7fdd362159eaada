// SPDX-License-Identifier: MPL-2.0
//
// Tens of thousands of made-up engines, whose steps are all played on the model engine.
#include <gtest/gtest.h>

#include <cstdint>

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

TEST(StepsRandom, the_same_question_gets_the_same_steps) {
  const questions::FittingShape shape{.valves = 12, .stops = 3};
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    const FittingQuestion question = questions::shuffled(shape, seed);
    const FittingSteps once = fitting_steps(question);
    const FittingSteps again = fitting_steps(question);
    ASSERT_EQ(once.steps.size(), again.steps.size());
    for (std::size_t i = 0; i < once.steps.size(); ++i) {
      ASSERT_EQ(in_words(once.steps[i].notes, Teller()), in_words(again.steps[i].notes, Teller()));
      ASSERT_EQ(once.steps[i].shim, again.steps[i].shim);
    }
  }
}

}  // namespace
}  // namespace shimwright
