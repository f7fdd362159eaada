// SPDX-License-Identifier: MPL-2.0
//
// Close this check: the end of a service, or of one round of it. A row a valve goes into the log;
// the shims that are in become those on Head; the drawer is brought up to date; Fit, Recheck and
// what has come on Arrivals are cleared. Where a valve is not in order yet, another round begins
// instead: the new gaps over the shims now fitted become what Head holds, and the plan is made
// anew.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/log/log_row.hpp"
#include "core/service/closing_entries.hpp"
#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

struct Closing {
  std::vector<Told> refusals;   // why not yet; where there is one, the rest is empty
  std::vector<Told> questions;  // to be answered with yes before anything is written
  std::vector<Told> deeds;      // what it will do
  std::vector<LogRow> rows;
  std::vector<EntryWrite> writes;  // all but the bench list itself, which is cleared
};

// `log` is what the log holds, without headings; `today` is `2026-11-26`. Every valve must be in
// order before the check is closed: measured, inside its limits, and where shims were changed as
// predicted. One that is not may stay so where Recheck says why. A valve whose shim or camshaft was
// touched and that was not measured again has no gap left; any other has the gap found.
Closing closing_of(const Service& service, const Findings& found, const EntryTable& log,
                   const ClosingEntries& entries, std::string_view today);

}  // namespace shimwright
