// SPDX-License-Identifier: MPL-2.0
//
// A model of the engine and the bench, on which fitting steps are played row by row. It knows the
// valves, the shims as things of their own and where the crank stands, and nothing of how the
// steps were found; it stops at the first thing that would wreck a real engine or cannot be done.
#pragma once

#include <string>

#include "core/fitting/steps.hpp"

namespace shimwright::model {

// The first fault, with the number of its row; empty where all went well and, at the end, every
// valve has what the plan says, but for the rings that wait.
std::string play(const FittingQuestion& question, const FittingSteps& result);

}  // namespace shimwright::model
