// SPDX-License-Identifier: MPL-2.0
//
// What Drift shows: the tables of a View of their own, since they hang on the log and on what
// Engine says, and not on the readings of the check that is under way.
#pragma once

#include <string_view>

#include "core/service/drift_findings.hpp"
#include "core/service/view.hpp"

namespace shimwright {

// Whether that table is told of the log.
bool is_told_of_log(std::string_view table);

// `drift`: a row for each valve. `next check`: said once, and the lines of the box on Drift.
View drift_view_of(const Service& service, const EntryTable& log);

// A whole number, in groups of three from five figures on: `60 000`.
std::string distance_in_words(double distance, const Teller& teller);

}  // namespace shimwright
