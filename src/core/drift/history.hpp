// SPDX-License-Identifier: MPL-2.0
//
// The checks of one valve over the years. What is followed is clearance + shim: a change of shim
// leaves it as it is, wear alone changes it. It falls where the valve sinks into its seat and the
// gap closes up, and rises where cam, shim and tip wear (common practice, no source).
//
// Odd histories:
// - A check without distance, clearance or shim is left out.
// - Checks count in any order, also where the distance goes backwards: a distance counted anew from
//   a replaced instrument must be entered with what the old one had counted.
// - Two checks at one distance are two readings there.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/drift/line.hpp"
#include "core/values/length.hpp"

namespace shimwright {

struct History {
  // x: distance in the user's unit; y: clearance + shim in whole nanometres. In order of entry.
  std::vector<Point> checks;

  double last_distance() const;  // the largest; none of an empty history
};

// An entry for each check, or one that stands for all.
using Entered = std::span<const std::optional<double>>;

// Lengths in mm. Throws BadInput, with the number of the check, for a length that cannot be, a shim
// of zero or less, and a distance that is no finite number or beyond `largest_distance` either way;
// and where the columns are of different lengths.
History read_history(Entered distance, Entered clearance, Entered shim);

}  // namespace shimwright
