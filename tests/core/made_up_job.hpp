// SPDX-License-Identifier: MPL-2.0
//
// Jobs as a workshop might have them, made up: limits, readings, spares and sizes on sale. What the
// book makes of one is held against the plan of the same question, asked without any book.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/engine/layout.hpp"
#include "core/plan/plan.hpp"

namespace shimwright::tests {

struct Job {
  struct SideLimits {
    Limits limits;
    double bias = 0.75;
    std::string series;
  };
  struct Reading {
    std::optional<Length> gap;
    std::string mark;  // as etched: 275; empty: worn off
    std::optional<Length> micrometer;
    bool alone = false;
  };
  struct Spare {
    std::string series;
    Length size;
    std::optional<int> count;
  };
  struct Ladder {
    std::string series;
    Length from;
    Length to;
    Length step;
    std::optional<Money> price;
  };
  struct Single {
    std::string series;
    Length size;
    std::optional<int> count;
    std::optional<Money> price;
  };

  SideLimits exhaust;
  SideLimits inlet;
  Length doubt;
  PlanRules rules;
  std::vector<Reading> readings;  // in the order of valves_of(layout)
  std::vector<Spare> spares;
  std::vector<Ladder> ladders;
  std::vector<Single> singles;

  const SideLimits& of(Side side) const { return side == Side::exhaust ? exhaust : inlet; }
};

// As a workshop might have it, all of it sound: the same seed, the same job.
Job made_up_job(std::uint64_t seed, const EngineLayout& layout);

PlanQuestion question_of(const Job& job, const EngineLayout& layout);

// Where a piece of the View is shown: in the View itself, or in a cell of a book.
using Piece = std::function<std::string(std::string_view table, std::string_view column, int row)>;

// Holds every valve's row, the figures and the lists of what is shown against the plan of this job.
void expect_plan_shown(const Piece& shown, const Job& job, const EngineLayout& layout,
                       Unit unit = Unit::mm, std::string_view decimal_mark = ".");

}  // namespace shimwright::tests
