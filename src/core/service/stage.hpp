// SPDX-License-Identifier: MPL-2.0
//
// The stages that a check goes through, from the first gap to its record. Each has its sheet and
// its next step.
#pragma once

#include "core/service/findings.hpp"

namespace shimwright {

enum class Stage {
  measuring,  // gaps and shims as found; the plan is live
  waiting,    // for a shim that is on order and gets a valve, while nothing is on the bench
  bench,      // a list is on the bench and not done
  recheck,    // it is done, and a valve that must be measured again is not
  record      // all of these are, or nothing is to be fitted: the check can be closed
};

// With a list on the bench, its ticks decide, whatever the plan says by now.
Stage stage_of(const Service& service, const Findings& found);

// Every valve is read, and none is to get a shim: it is good, it is left alone, or none serves and
// Recheck says why it may stay as it is.
bool is_nothing_to_fit(const Service& service, const Findings& found);

}  // namespace shimwright
