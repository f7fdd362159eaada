// SPDX-License-Identifier: MPL-2.0
//
// The plan against GLPK, an independent solver, on a formulation of its own: a linear program with
// a variable for every valve and every shim, each shim by itself; one aim after another, the
// optima of the aims before it held. (The vertices are whole: the constraints are those of a
// bipartite assignment, and holding an optimum leaves a face of the same polytope.)
#include <glpk.h>
#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <vector>

#include "core/plan/plan.hpp"
#include "plan_audit.hpp"
#include "plan_questions.hpp"

namespace shimwright {
namespace {

using audit::Score;

class LinearProgram {
 public:
  explicit LinearProgram(const PlanQuestion& question) : problem_(glp_create_prob()) {
    glp_set_obj_dir(problem_.get(), GLP_MIN);
    for (std::size_t i = 0; i < question.valves.size(); ++i) {
      const Valve& valve = question.valves[i];
      if (audit::may_be_opened(question, valve))
        playing_.push_back(&valve);
      else if (audit::reads(valve))
        audit::operator+=(fixed_, audit::score_of(question, valve, *valve.shim, false, Money()));
    }
    // A row for each valve (it has one shim), one for each valve's own shim (it is in one valve at
    // most), one for each row of the stock (no more than there are).
    const auto one_each = add_rows(playing_.size(), GLP_FX, 1);
    const auto once = add_rows(playing_.size(), GLP_UP, 1);
    std::vector<int> stock_row;
    for (const Stock& stock : question.stock) {
      const bool is_spare = stock.kind == Stock::Kind::spare;
      if (stock.count || is_spare)
        stock_row.push_back(add_rows(1, GLP_UP, static_cast<double>(stock.count.value_or(1))));
      else
        stock_row.push_back(0);
    }
    for (std::size_t v = 0; v < playing_.size(); ++v) {
      const Valve& valve = *playing_[v];
      const int valve_row = one_each + static_cast<int>(v);
      const auto may_have = [&](const std::string& series, Length size) {
        return series == valve.series && audit::may_be_fitted(question, valve, size);
      };
      for (std::size_t w = 0; w < playing_.size(); ++w) {
        const Length size = *playing_[w]->shim;
        if (v == w || may_have(playing_[w]->series, size))
          add_column(valve_row, once + static_cast<int>(w),
                     audit::score_of(question, valve, size, v != w, Money()));
      }
      for (std::size_t s = 0; s < question.stock.size(); ++s) {
        const Stock& stock = question.stock[s];
        if (may_have(stock.series, stock.size))
          add_column(valve_row, stock_row[s],
                     audit::score_of(question, valve, stock.size, true, stock.price));
      }
    }
  }

  Score best() {
    Score best = fixed_;
    for (std::size_t aim = 0; aim < best.size(); ++aim) {
      for (std::size_t c = 0; c < columns_.size(); ++c)
        glp_set_obj_coef(problem_.get(), static_cast<int>(c) + 1, scaled(columns_[c][aim]));
      glp_smcp settings;
      glp_init_smcp(&settings);
      settings.msg_lev = GLP_MSG_OFF;
      EXPECT_EQ(glp_simplex(problem_.get(), &settings), 0);
      EXPECT_EQ(glp_get_status(problem_.get()), GLP_OPT);
      const auto least =
          static_cast<std::int64_t>(std::llround(glp_get_obj_val(problem_.get()) * scale));
      best[aim] += least;
      hold_optimum();
    }
    return best;
  }

 private:
  // Micrometres and whole units of money, so that all coefficients are of like size.
  static constexpr double scale = 1000;
  static double scaled(std::int64_t value) { return static_cast<double>(value) / scale; }

  int add_rows(std::size_t count, int kind, double bound) {
    if (count == 0) return 0;
    const int first = glp_add_rows(problem_.get(), static_cast<int>(count));
    for (int i = 0; i < static_cast<int>(count); ++i)
      glp_set_row_bnds(problem_.get(), first + i, kind, bound, bound);
    return first;
  }

  void add_column(int row, int other_row, const Score& score) {
    const int column = glp_add_cols(problem_.get(), 1);
    glp_set_col_bnds(problem_.get(), column, GLP_LO, 0, 0);
    const int rows[] = {0, row, other_row};
    const double ones[] = {0, 1, 1};
    glp_set_mat_col(problem_.get(), column, other_row == 0 ? 1 : 2, rows, ones);
    columns_.push_back(score);
  }

  // Only what no optimum needs goes: columns that cost more than their rows are worth are shut, and
  // rows that are worth something stay full (complementary slackness).
  void hold_optimum() {
    constexpr double zero = 1e-6;  // a single step of any aim, in its scale, is a thousandth
    for (int column = 1; column <= glp_get_num_cols(problem_.get()); ++column)
      if (glp_get_col_dual(problem_.get(), column) > zero)
        glp_set_col_bnds(problem_.get(), column, GLP_FX, 0, 0);
    for (int row = 1; row <= glp_get_num_rows(problem_.get()); ++row) {
      const double bound = glp_get_row_ub(problem_.get(), row);
      if (std::abs(glp_get_row_dual(problem_.get(), row)) > zero)
        glp_set_row_bnds(problem_.get(), row, GLP_FX, bound, bound);
    }
  }

  struct Deleter {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
  };
  std::unique_ptr<glp_prob, Deleter> problem_;
  std::vector<const Valve*> playing_;
  std::vector<Score> columns_;
  Score fixed_{};
};

void expect_same_optimum(const PlanQuestion& question, const std::string& which) {
  const audit::Report report = audit::look_over(question, best_plan(question));
  EXPECT_TRUE(report.faults.empty()) << which << ": " << report.faults.front();
  EXPECT_EQ(report.score, LinearProgram(question).best()) << which;
}

void expect_same_optimum(std::size_t valves, std::uint64_t seeds) {
  for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
    const std::string which = std::to_string(valves) + " valves, seed " + std::to_string(seed);
    PlanQuestion question = questions::service(valves, seed);
    expect_same_optimum(question, "service, " + which);
    question.rules.aim_first = true;
    expect_same_optimum(question, "service, aim first, " + which);
    expect_same_optimum(questions::scattered(valves, seed), "scattered, " + which);
    expect_same_optimum(questions::narrow(valves, seed), "narrow, " + which);
  }
}

TEST(PlanAgainstGlpk, the_optimum_is_the_same_for_small_crowded_questions) {
  for (std::uint64_t seed = 1; seed <= 500; ++seed)
    expect_same_optimum(questions::crowded(12, seed), "crowded, seed " + std::to_string(seed));
}

TEST(PlanAgainstGlpk, the_optimum_is_the_same_for_16_valves) { expect_same_optimum(16, 200); }

TEST(PlanAgainstGlpk, the_optimum_is_the_same_for_48_valves) { expect_same_optimum(48, 60); }

TEST(PlanAgainstGlpk, the_optimum_is_the_same_for_200_valves) { expect_same_optimum(200, 8); }

}  // namespace
}  // namespace shimwright
