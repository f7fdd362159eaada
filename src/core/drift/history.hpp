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

#include <cstddef>
#include <optional>
#include <vector>

#include "core/drift/line.hpp"

namespace shimwright {

class History {
 public:
  // The next check, lengths in mm; one that lacks anything is passed over. Throws BadInput, with
  // the number of the check, for a length that cannot be, a shim of zero or less, and a distance
  // that is no finite number or beyond `largest_distance` either way.
  void add(std::optional<double> distance, std::optional<double> clearance,
           std::optional<double> shim);

  void reserve(std::size_t checks) { checks_.reserve(checks); }

  // x: distance in the user's unit; y: clearance + shim in whole nanometres. In order of entry.
  const std::vector<Point>& checks() const { return checks_; }

  double last_distance() const;  // the largest; not of an empty history

 private:
  std::size_t entered_ = 0;
  std::vector<Point> checks_;
};

}  // namespace shimwright
