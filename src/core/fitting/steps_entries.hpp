// SPDX-License-Identifier: MPL-2.0
//
// The fitting as a person asks for it: at which stop of the crank each valve is open to work, in a
// small table beside that of the valves, or word that the camshafts are out.
#pragma once

#include <vector>

#include "core/entries/entries.hpp"
#include "core/fitting/steps.hpp"

namespace shimwright {

// The question that the plan asks with these stops: rows {valve, stop}, several for a valve where
// it is open at several, the valve's name in any case; a heading (a first row with text
// in the stop column that names no valve) and rows without a stop are skipped. Nothing at all, or
// one number, means that the camshafts are out and every valve is open at once; rows that hold only
// blanks do not. Throws BadInput with the place for a valve that is not among the plan's, for a
// stop that is not a whole number from 1 on, and for a single text.
FittingQuestion read_fitting(const PlanQuestion& question, const Plan& plan,
                             const EntryTable& stops);

// The steps as they are told. Where the search was cut short, the last one says that there may be
// a shorter way.
std::vector<Step> told_steps(FittingSteps found);

}  // namespace shimwright
