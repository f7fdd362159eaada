// SPDX-License-Identifier: MPL-2.0
//
// When to check the engine next, as the log has it, in words: on Drift, on Read me first, and
// before a check is closed.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/service/drift_findings.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

struct NextCheckWords {
  std::string at;   // `at 60 000 km`, `now`, `not known yet`
  std::string why;  // a sentence or two
  // How a longer run may be had; blank where the check is as late as the manual allows.
  std::string longer;
  // Which end of the limits to aim nearer to for that: 0, the smallest gap, or 1, the largest.
  std::int64_t aim_nearer_to = 1;
};

NextCheckWords next_check_in_words(const Service& service, const DriftFindings& found);

// The same, as the log will be with these rows in it: what a person is told before they are
// written. While shims were changed in this round, a longer run takes another one. Takes as long as
// drift_findings_in() for the whole log.
std::vector<Told> next_check_after(const Service& service, EntryTable log,
                                   const std::vector<LogRow>& rows);

}  // namespace shimwright
