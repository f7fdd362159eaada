// SPDX-License-Identifier: MPL-2.0
//
// What the list on the bench comes to by the entries of now. It stands still, but a shim may turn
// out to be of another size once it is out and measured: then the list's shims may leave a valve
// out of its limits, or with no gap at all, which holds it open.
//
// A new gap on Recheck is no part of that. Nobody knows whether it was typed before or after the
// shim went in, so it never takes back the warning that a valve is held open.
#pragma once

#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// Fills listed_gaps of `found`, in which the valves are read. Time grows with valves times steps.
void find_listed_gaps(const Service& service, Findings& found);

// A valve has no gap over the shim that is in.
bool is_any_without_gap(const Findings& found);

// Such valves: what not to do, and which shim serves, as a sentence. Blank where there is none.
std::string no_gap_in_words(const Service& service, const Findings& found);

// Valves still to get a shim that would leave them outside; valves over whose new shim the gap will
// be outside.
std::vector<std::string> valves_spoiled_by_list(const Service& service, const Findings& found);
std::vector<std::string> valves_outside_by_list(const Service& service, const Findings& found);

}  // namespace shimwright
