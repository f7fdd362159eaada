// SPDX-License-Identifier: MPL-2.0
//
// The plan against every plan there is: up to six valves, each shim a thing of its own.
#include <gtest/gtest.h>

#include <optional>
#include <vector>

#include "core/plan/plan.hpp"
#include "plan_audit.hpp"
#include "plan_questions.hpp"

namespace shimwright {
namespace {

using audit::Score;

// Tries, valve by valve, keeping, every row of the stock and every other valve's shim; a shim may
// be taken from a valve only if that valve is opened as well.
class EveryPlan {
 public:
  explicit EveryPlan(const PlanQuestion& question) : question_(question) {
    for (const Valve& valve : question.valves) {
      if (audit::may_be_opened(question, valve))
        playing_.push_back(&valve);
      else if (audit::reads(valve))
        start_ = plus(start_, audit::score_of(question, valve, *valve.shim, false, Money()));
    }
    for (const Stock& stock : question.stock)
      left_.push_back(
          stock.count.value_or(stock.kind == Stock::Kind::spare ? 1 : std::int64_t{1'000'000}));
    opened_.assign(playing_.size(), false);
    given_.assign(playing_.size(), false);
  }

  Score best() {
    try_from(0, start_);
    return *best_;
  }

 private:
  static Score plus(Score sum, const Score& part) {
    audit::operator+=(sum, part);
    return sum;
  }

  void try_from(std::size_t i, const Score& so_far) {
    if (best_ && so_far >= *best_) return;  // no part of a score is negative
    if (i == playing_.size()) {
      for (std::size_t k = 0; k < i; ++k)
        if (given_[k] && !opened_[k]) return;
      best_ = so_far;
      return;
    }
    const Valve& valve = *playing_[i];
    const auto fits = [&](const std::string& series, Length size) {
      return series == valve.series && audit::may_be_fitted(question_, valve, size);
    };
    const auto with = [&](Length size, bool opened, Money price) {
      return plus(so_far, audit::score_of(question_, valve, size, opened, price));
    };
    try_from(i + 1, with(*valve.shim, false, Money()));
    opened_[i] = true;
    for (std::size_t k = 0; k < question_.stock.size(); ++k) {
      const Stock& stock = question_.stock[k];
      if (left_[k] == 0 || !fits(stock.series, stock.size)) continue;
      --left_[k];
      try_from(i + 1, with(stock.size, true, stock.price));
      ++left_[k];
    }
    for (std::size_t k = 0; k < playing_.size(); ++k) {
      if (k == i || given_[k] || !fits(playing_[k]->series, *playing_[k]->shim)) continue;
      given_[k] = true;
      try_from(i + 1, with(*playing_[k]->shim, true, Money()));
      given_[k] = false;
    }
    opened_[i] = false;
  }

  const PlanQuestion& question_;
  std::vector<const Valve*> playing_;
  std::vector<std::int64_t> left_;
  std::vector<bool> opened_;
  std::vector<bool> given_;
  Score start_{};
  std::optional<Score> best_;
};

TEST(PlanBruteForce, no_plan_is_better_for_up_to_six_valves) {
  int moves = 0, spares = 0, buys = 0, nones = 0, nearest = 0;
  for (std::uint64_t seed = 1; seed <= 100'000; ++seed) {
    const PlanQuestion question = questions::crowded(6, seed);
    const Plan plan = best_plan(question);
    const auto report = audit::look_over(question, plan);
    ASSERT_TRUE(report.faults.empty()) << "seed " << seed << ": " << report.faults.front();
    ASSERT_EQ(report.score, EveryPlan(question).best()) << "seed " << seed;
    for (const PlanLine& line : plan.lines) {
      moves += line.action == Action::move;
      spares += line.action == Action::spare;
      buys += line.action == Action::buy;
      nones += line.action == Action::none;
      nearest += line.action != Action::none && line.action != Action::keep && line.margin &&
                 *line.margin < Length();
    }
  }
  // The questions are worth asking: every action comes up in plenty.
  EXPECT_GT(moves, 5000);
  EXPECT_GT(spares, 5000);
  EXPECT_GT(buys, 5000);
  EXPECT_GT(nones, 5000);
  EXPECT_GT(nearest, 5000);
}

}  // namespace
}  // namespace shimwright
