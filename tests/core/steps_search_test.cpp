// SPDX-License-Identifier: MPL-2.0
//
// The steps against every way there is, on small engines.
#include <gtest/gtest.h>

#include <optional>
#include <vector>

#include "model_engine.hpp"
#include "steps_questions.hpp"
#include "steps_search.hpp"

namespace shimwright {
namespace {

// The valves that the rows leave as they are though the plan opens them.
std::vector<bool> waiting_in(const FittingQuestion& question, const FittingSteps& result) {
  std::vector<bool> waits;
  for (const FittingValve& valve : question.valves)
    waits.push_back(valve.supply != FittingValve::Supply::keep);
  for (const Step& step : result.steps)
    if (step.kind != Step::Kind::wait && step.valve) waits[*step.valve] = false;
  return waits;
}

struct Tally {
  std::size_t turns = 0, stand_ins = 0, waiting = 0, unproved = 0;
};

void hold_against_every_way(const questions::FittingShape& shape, std::uint64_t first,
                            std::uint64_t last, Tally& tally) {
  for (std::uint64_t seed = first; seed <= last; ++seed) {
    const FittingQuestion question = questions::shuffled(shape, seed);
    const FittingSteps result = fitting_steps(question);
    ASSERT_EQ(model::play(question, result), "") << "seed " << seed;
    const std::vector<bool> waits = waiting_in(question, result);
    const auto least = search::every_way(question, waits);
    ASSERT_TRUE(least) << "seed " << seed;
    ASSERT_EQ(result.turns, least->turns) << "seed " << seed;
    ASSERT_EQ(result.stand_ins, least->stand_ins) << "seed " << seed;
    // Nothing waits that need not: each waiting ring, were it not left out, could not be done.
    for (const Step& step : result.steps) {
      if (step.kind != Step::Kind::wait) continue;
      std::vector<bool> others = waits;
      for (std::size_t i = *step.valve; others[i]; i = question.valves[i].giver) others[i] = false;
      ASSERT_FALSE(search::every_way(question, others)) << "seed " << seed;
    }
    tally.turns += result.turns;
    tally.stand_ins += result.stand_ins;
    tally.waiting += result.waiting;
    tally.unproved += !result.least;
  }
}

TEST(StepsSearch, no_way_has_fewer_turns_or_stand_ins_for_up_to_five_valves) {
  Tally tally;
  hold_against_every_way({.valves = 5, .stops = 3, .spares = 2, .series = 6}, 1, 20'000, tally);
  EXPECT_GT(tally.stand_ins, 1000U);
  EXPECT_GT(tally.waiting, 1000U);
  EXPECT_EQ(tally.unproved, 0U);
}

}  // namespace
}  // namespace shimwright
