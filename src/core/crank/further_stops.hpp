// SPDX-License-Identifier: MPL-2.0
//
// Where else to stop the crank for work on certain valves. The fewest stops that reach every valve
// are enough to measure; but valves that change shims with one another may be off their lobes
// together at none of them, and then a shim has to stand in while the crank is turned. Often there
// is another place at which all of them can be worked on at once: the two valves of one cylinder
// are clear of their lobes at its own TDC on compression.
#pragma once

#include <set>
#include <span>
#include <vector>

#include "core/crank/crank.hpp"

namespace shimwright {

// Every stop that is of use beyond `stops`: wherever the crank stands, those of these valves that
// are clear of their lobes there are clear at one of these stops or of those too. None that has not
// a set of them which no other stop has. As the engine turns; each on a firing dead centre where
// its valves are all clear at one, else as far from their lobes as can be, at a whole degree where
// that serves. Time n² for n valves. Throws BadInput as base_circle does.
std::vector<CrankStop> further_stops(const Firing& firing, const ValveTiming& timing,
                                     CrankAngle margin, std::span<const CrankStop> stops,
                                     const std::set<ValvePlace>& valves);

}  // namespace shimwright
