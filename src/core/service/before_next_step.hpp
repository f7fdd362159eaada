// SPDX-License-Identifier: MPL-2.0
//
// What comes before the next step of the list on the bench. Fit says it at the top of its box, and
// Read me first names the first of it as the next step, so that the two never send a person two
// ways.
#pragma once

#include <vector>

#include "core/service/boxes.hpp"

namespace shimwright {

// In the order of doing: a valve that stands empty, a step left out, a gap changed on Head, a plan
// that is another by now. Nothing where the list may simply go on, or nothing is on the bench.
std::vector<BoxLine> before_next_step(const Service& service, const Findings& found);

}  // namespace shimwright
