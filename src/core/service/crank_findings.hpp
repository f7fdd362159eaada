// SPDX-License-Identifier: MPL-2.0
//
// Where a service's engine stops: its firing order and valve timing read, the stops, and which
// valve is measured at which; or what keeps them from being known.
#pragma once

#include "core/service/findings.hpp"

namespace shimwright {

// Fills firing, timing, margin, stops, usual_timing, measured_at and camshafts_out of `found`;
// remarks go to the page Engine.
void find_stops(const Service& service, Findings& found);

}  // namespace shimwright
