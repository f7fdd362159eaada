// SPDX-License-Identifier: MPL-2.0
//
// Rings for which there is no stand-in: a valve of theirs that is open at several stops may carry
// another's shim from stop to stop, so that they are done with their own shims alone. Used by the
// steps alone.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/fitting/work.hpp"

namespace shimwright::fitting {

struct Carried {
  std::optional<Schedule> schedule;  // of the rings; jobs of others: no_index
  bool proved = true;                // false: the effort was spent before all was looked at
};

// `helpers`: rings within one stop, whose valves may carry too; taken in only if it fails without.
// Every way, breadth first: what is in which valve at a turn of the crank, and at each stop every
// way to change shims between the valves open there. The fewest visits, not the fewest stand-ins.
Carried carried_among(const Work& work, const std::vector<std::size_t>& rings,
                      const std::vector<std::size_t>& helpers, Effort& effort);

}  // namespace shimwright::fitting
