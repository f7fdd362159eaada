// SPDX-License-Identifier: MPL-2.0
//
// The steps of fitting in a service: over the stops at which the valves are measured, since the
// hand knows them by then; and where a shim would have to stand in, or to be borrowed, over further
// stops as well, if that way is the better.
#pragma once

#include <span>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// For each valve the stops, by their places from 1, at which it can be worked on, as the fitting
// takes them: where it is clear of its lobe by most comes first.
std::vector<OpenAt> valves_at_stops(const Service& service, std::span<const CrankStop> stops);

// Fills steps, all_stops and no_stop_for_work of `found`, in which the plan and the stops are
// found. Takes no longer than two fittings (fitting_steps).
void find_steps(const Service& service, Findings& found);

}  // namespace shimwright
