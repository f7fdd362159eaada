// SPDX-License-Identifier: MPL-2.0
//
// A valve that moves unlike the others of its side. Valves of a side wear alike, though never quite
// alike: so a valve's rate is held against the mean rate of its siblings and against how far these
// spread among themselves,
//   t = (own rate - mean of the others) / (spread of the others sqrt(1 + 1 / their number))
// with Student's t for their number less one degrees of freedom (the externally studentized
// residual, the test of F. E. Grubbs 1969 in another form), where the spread counts no less than
// what the errors of the rates alone make of it. All valves are judged at once, so each has its
// share of the risk only (Bonferroni).
//
// Simulated for engines of 8 to 48 valves that move alike (tests/core/drift_siblings_test.cpp): at
// a risk of 0.05 fewer than one engine in twenty has any valve called unlike.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/drift/line.hpp"
#include "core/engine/side.hpp"

namespace shimwright {

struct Sibling {
  Side side = Side::exhaust;
  std::optional<Line> line;  // none: its rate is not known
};

inline constexpr double risk_of_false_alarm = 0.05;  // for a whole engine
inline constexpr std::size_t least_siblings = 3;     // beside the valve itself

// How the valve moves beside its siblings; also alike where these are too few to tell.
enum class Kinship { alike, closes_faster, opens_faster };

// As many as given. Time grows with their square.
std::vector<Kinship> kinship_of(std::span<const Sibling> valves, double risk = risk_of_false_alarm);

}  // namespace shimwright
