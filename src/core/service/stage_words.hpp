// SPDX-License-Identifier: MPL-2.0
//
// The stage of a check and its next step, a line each, as Read me first tells them.
#pragma once

#include <string>

#include "core/service/findings.hpp"

namespace shimwright {

// `Fitting: 3 of 12 steps done`; of a further round led by `Round 2 of check 5`.
std::string stage_in_words(const Service& service, const Findings& found);

// What to do now, and on which sheet.
std::string next_step_in_words(const Service& service, const Findings& found);

// `Round 2 of check 5`; blank where the book does not say.
std::string round_in_words(const Service& service, const Teller& teller);

}  // namespace shimwright
