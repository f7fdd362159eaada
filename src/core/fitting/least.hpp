// SPDX-License-Identifier: MPL-2.0
//
// The schedule with the fewest visits to the stops, then the fewest stand-ins, then the shortest
// way of the crank. Used by the steps alone.
#pragma once

#include <optional>

#include "core/fitting/work.hpp"

namespace shimwright::fitting {

struct Least {
  std::optional<Schedule> schedule;  // none: there is none of so many visits, or none was found
  bool proved = true;                // false: the effort was spent before all was looked at
};

// Looks for schedules of at most so many visits.
Least least_schedule(const Work& work, std::size_t most_visits, Effort& effort);

}  // namespace shimwright::fitting
