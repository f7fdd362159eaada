// SPDX-License-Identifier: MPL-2.0
//
// Where a service's engine stops: its firing order and valve timing read, the stops, and which
// valve can be measured at which; or what keeps them from being known.
#pragma once

#include "core/service/findings.hpp"

namespace shimwright {

// Fills firing, stops, usual_timing, measured_at and camshafts_out of `found`; remarks go to the
// page Engine.
void find_stops(const Service& service, Findings& found);

// For each valve the stops at which it can be worked on, as the fitting takes them: where it is
// clear of its lobe by most comes first.
std::vector<OpenAt> valves_at_stops(const Service& service, const Findings& found);

}  // namespace shimwright
