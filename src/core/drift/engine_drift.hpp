// SPDX-License-Identifier: MPL-2.0
//
// The drift of all valves of an engine, judged together.
//
// What is followed of each valve is clearance + shim (history.hpp). A check may give it more than
// once: the gap found over the shim found, the gap left over the shim fitted, another round. These
// are readings of one quantity by one hand with one gauge on one day, and what disturbs the day
// disturbs them all, so that they are not independent: their mean counts as one point at that
// distance. That claims less than each reading by itself would, never more.
//
// Three checks leave a line one degree of freedom, and Student's t then gives it no say. Yet every
// valve of the engine is read by the same gauge and hand: the scatter about the lines is pooled
// over the valves, with the sum of their degrees of freedom. A valve whose own scatter is larger
// keeps its own. And no scatter counts for less than the doubt of one reading: a few readings on a
// gauge's steps may lie on a line by chance. It is half the doubt U of the book (U = 2u), and no
// less than what blades in steps of 0.01 mm leave (0.01 / sqrt 12, rectangular; GUM F.2.2.1; steps
// of 0.01 mm are common practice, no source).
//
// Simulated (tests/core/drift_engine_test.cpp): of valves that wear along a line, read by a gauge
// in steps, at least 95 in 100 cautious distances come before the valve is at its limit.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/drift/due.hpp"
#include "core/drift/line.hpp"
#include "core/drift/siblings.hpp"
#include "core/engine/side.hpp"
#include "core/values/length.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

inline constexpr Length least_scatter = Length::nanometres(2'887);

// Of one valve: what was followed at each distance.
class Followed {
 public:
  void add(double distance, Length clearance, Length shim) {
    readings_[distance].push_back(clearance + shim);
  }

  // The means, by distance; y in nanometres.
  std::vector<Point> points() const;
  std::size_t checks() const { return readings_.size(); }

 private:
  std::map<double, std::vector<Length>> readings_;
};

struct ValveToJudge {
  Side side = Side::exhaust;
  std::vector<Point> points = {};     // y: clearance + shim in nanometres; by distance
  std::optional<Length> fitted = {};  // the shim in place now
  std::optional<Limits> limits = {};
};

struct ValveDrift {
  std::size_t checks = 0;
  std::optional<Line> line;  // with the scatter that counts; none for fewer than three checks
  std::optional<Due> due;    // where limits and shim are known too
  double moved = 0;          // from the first check to the last, in nanometres
  bool stood_still = false;  // the same to the nanometre at three checks or more
  Kinship kinship = Kinship::alike;
};

struct EngineDrift {
  std::vector<ValveDrift> valves;  // as many as given
  double degrees = 0;              // of freedom, of all lines together
};

// Limits and shims are to be sound (verdict.hpp, choice.hpp).
EngineDrift judge_together(std::span<const ValveToJudge> valves, Length doubt,
                           double confidence = default_confidence);

}  // namespace shimwright
