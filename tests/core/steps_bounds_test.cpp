// SPDX-License-Identifier: MPL-2.0
//
// Questions far beyond an engine, as a pasted drawer or a table can pose them: the steps come soon
// (how soon, bench_steps tells), are safe, and are none the worse for more spares.
#include <gtest/gtest.h>

#include <string>
#include <tuple>
#include <vector>

#include "model_engine.hpp"
#include "steps_questions.hpp"

namespace shimwright {
namespace {

FittingSteps played(const FittingQuestion& question) {
  FittingSteps result = fitting_steps(question);
  EXPECT_EQ(model::play(question, result), "");
  return result;
}

auto worth(const FittingSteps& result) {
  return std::tuple(result.waiting, result.turns, result.stand_ins);
}

TEST(StepsBounds, pairs_that_change_places_take_three_turns_however_many_spares_there_are) {
  for (const std::int64_t rows : {100, 1'000, 20'000}) {
    const FittingSteps result = played(questions::pairs(48, rows, 48));
    EXPECT_EQ(worth(result), std::tuple(0U, 3U, 24U)) << rows;
    EXPECT_TRUE(result.least) << rows;
  }
}

TEST(StepsBounds, a_thousand_valves_are_fitted_in_the_fewest_turns_where_spares_are_enough) {
  const FittingSteps result = played(questions::pairs(1'000, 20'000, 1'000'000'000));
  EXPECT_EQ(worth(result), std::tuple(0U, 3U, 500U));
  EXPECT_TRUE(result.least);
}

TEST(StepsBounds, a_long_ring_is_fitted_with_one_spare_and_sooner_with_more) {
  EXPECT_EQ(played(questions::long_ring(96, 0)).waiting, 96U);
  // One shim more than valves, so one a turn can come from the other stop.
  EXPECT_EQ(worth(played(questions::long_ring(96, 1))), std::tuple(0U, 97U, 1U));
  EXPECT_LE(played(questions::long_ring(96, 5)).turns, 22U);
  EXPECT_EQ(worth(played(questions::long_ring(96, 48))), std::tuple(0U, 3U, 48U));
}

TEST(StepsBounds, spares_of_no_use_change_nothing) {
  const questions::FittingShape shape{.valves = 24, .stops = 5, .spares = 3, .sizes = 20};
  std::size_t unproved = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    FittingQuestion question = questions::shuffled(shape, seed);
    const FittingSteps before = played(question);
    unproved += !before.least;
    for (FittingQuestion::Spare& spare : question.spares) spare.count += 1'000;
    const auto many = worth(fitting_steps(question));
    question.spares.push_back({"A", 9.00_mm, 50});  // too thick for any valve
    question.spares.push_back({"C", 2.00_mm, 50});  // of no valve's series
    for (FittingQuestion::Spare& spare : question.spares) spare.count += 1'000'000;
    EXPECT_EQ(worth(fitting_steps(question)), many) << "seed " << seed;
    EXPECT_LE(many, worth(before)) << "seed " << seed;
  }
  EXPECT_GT(unproved, 0U);  // so it holds where the search is cut short as well
}

TEST(StepsBounds, one_spare_more_is_never_worse) {
  const questions::FittingShape shape{.valves = 9, .stops = 4, .spares = 2, .several = 4};
  std::size_t better = 0;
  for (std::uint64_t seed = 1; seed <= 2'000; ++seed) {
    questions::Dice dice(seed);
    FittingQuestion question = questions::shuffled(shape, seed);
    const auto before = worth(fitting_steps(question));
    question.spares.push_back(
        {"A", questions::micrometres(2500 + 5 * dice.between(0, 25)), dice.between(1, 3)});
    const auto after = worth(played(question));
    EXPECT_LE(after, before) << "seed " << seed;
    better += after < before;
  }
  EXPECT_GT(better, 50U);
}

// Where the search is cut short on its way with more spares, it may miss what it found with fewer:
// seldom, and as safely. Of 2 000 such questions 41 were worse when this was written.
TEST(StepsBounds, more_spares_are_seldom_worse_where_the_search_is_cut_short_and_else_never) {
  const questions::FittingShape shape{.valves = 48, .stops = 6, .spares = 3, .sizes = 20};
  std::size_t cut = 0;
  std::size_t worse = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    questions::Dice dice(seed);
    FittingQuestion question = questions::shuffled(shape, seed);
    if (question.valves.size() < 36) continue;
    const auto before = worth(fitting_steps(question));
    for (FittingQuestion::Spare& spare : question.spares) spare.count += 1'000;
    question.spares.push_back({"A", questions::micrometres(2500 + 5 * dice.between(0, 90)), 1});
    const FittingSteps after = played(question);
    cut += !after.least;
    worse += worth(after) > before;
    if (after.least) {
      EXPECT_LE(worth(after), before) << "seed " << seed;
    }
  }
  EXPECT_GT(cut, 3U);
  EXPECT_LE(worse, 1U);
}

TEST(StepsBounds, large_heads_at_many_stops_are_fitted_safely) {
  for (const std::int64_t stops : {2, 12, 64})
    for (const std::int64_t spares : {0, 3, 300}) {
      const questions::FittingShape shape{
          .valves = 1'000, .stops = stops, .spares = spares, .several = 4, .sizes = 400};
      played(questions::shuffled(shape, static_cast<std::uint64_t>(stops + spares)));
    }
}

}  // namespace
}  // namespace shimwright
