// SPDX-License-Identifier: MPL-2.0
//
// A schedule told row by row, as the hand at the bench goes through it. Used by the steps alone.
#pragma once

#include <vector>

#include "core/fitting/steps.hpp"
#include "core/fitting/work.hpp"

namespace shimwright::fitting {

std::vector<Step> rows_of(const FittingQuestion& question, const Work& work,
                          const Schedule& schedule);

// For a ring that cannot be done; `work` holds it.
Step waiting_row(const FittingQuestion& question, const Work& work, const Chain& ring);

}  // namespace shimwright::fitting
