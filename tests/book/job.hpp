// SPDX-License-Identifier: MPL-2.0
//
// One job at the bench, for tests: what an owner has measured and listed, to be typed into a book
// and, apart from any book, asked of the plan itself.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/engine/layout.hpp"
#include "core/plan/plan.hpp"
#include "open_book.hpp"

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

// Types everything into its place, in mm or in inches.
void type_job(OpenBook& book, const Job& job, const book::Places& places, Unit unit = Unit::mm);

// Holds every row of the book's answers, on Workings, Head and Plan, against this plan.
void expect_plan(const OpenBook& book, const Job& job, const book::Places& places,
                 Unit unit = Unit::mm);

}  // namespace shimwright::tests
