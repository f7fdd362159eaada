// SPDX-License-Identifier: MPL-2.0
//
// What closing a check does, in words, before it is done.
#pragma once

#include <string>
#include <vector>

#include "core/service/closing_rows.hpp"
#include "core/service/drawer_after.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

// What distances are in: `km` unless Engine says otherwise.
std::string distance_unit_of(const Service& service);

// `closes`: the check; else one round of it.
std::vector<Told> closing_in_words(const Service& service, const Findings& found,
                                   const std::vector<ValveAtClose>& valves,
                                   const DrawerAfter& drawer, const CheckFacts& facts, bool closes);

}  // namespace shimwright
