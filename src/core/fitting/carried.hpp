// SPDX-License-Identifier: MPL-2.0
//
// Rings for which there is no stand-in. A valve that is open at several stops may carry shims from
// stop to stop, with a shim of the ring itself in it meanwhile, and so even these may be done. Used
// by the steps alone.
#pragma once

#include <vector>

#include "core/fitting/greedy.hpp"
#include "core/fitting/work.hpp"

namespace shimwright::fitting {

// Rings done by themselves.
struct Carried {
  Work work;
  Schedule schedule;
};

// No shim fits such a ring but its own and those of other rings without a stand-in. So each is
// looked at alone, and then with all of these that can be done. Takes what it finds out of
// `lending.has_none`; complete for each number of visits up to twice the stops and two, unless the
// effort is spent.
std::vector<Carried> carried_rings(const FittingQuestion& question, const Work& all,
                                   Lending& lending, Effort& effort);

// Does them after all else in the schedule of a work that holds them.
void append(const Carried& rings, const Work& work, Schedule& schedule);

}  // namespace shimwright::fitting
