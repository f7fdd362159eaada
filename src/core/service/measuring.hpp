// SPDX-License-Identifier: MPL-2.0
//
// The order in which the valves are measured: stop by stop as the crank comes to them, so that it
// is turned no more than it must be, and at each stop cylinder by cylinder.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// Valves of one side of a cylinder: they open together, so they are measured together.
struct MeasuringRow {
  std::optional<int> stop;          // none where the stops are not known
  bool first_of_stop = false;       // of all rows, where no stop is known
  std::vector<std::size_t> valves;  // indices, at most `most_in_a_measuring_row`
};

inline constexpr std::size_t most_in_a_measuring_row = 3;

// Every valve once. Those of one stop, and of one side, in the order given.
std::vector<MeasuringRow> measuring_order(const Service& service, const Findings& found);

}  // namespace shimwright
