// SPDX-License-Identifier: MPL-2.0
//
// What the list on the bench comes to by the entries of now. It stands still, but a shim may turn
// out to be of another size once it is out and measured: then the list's shims may leave a valve
// out of its limits, or with no gap at all, which holds it open.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

struct ListedGap {
  std::size_t valve = 0;  // index
  // gap + shim - new shim, the shims as Head has them now, else as listed.
  Length predicted;
  bool is_in = false;    // the new shim, by the ticks
  bool outside = false;  // beyond a limit, and no valve that may stay so with the nearest shim
};

// The valves that get a shim by the list and whose gap is known, in the order of the valves. Time
// grows with valves times steps.
std::vector<ListedGap> listed_gaps(const Service& service, const Findings& found);

// Valves that have no gap over the shim that is in: what not to do, and which shim serves, as a
// sentence. Blank where there is none.
std::string no_gap_in_words(const Service& service, const Findings& found);

// Valves still to get a shim that would leave them outside; valves over whose new shim the gap will
// be outside.
std::vector<std::string> valves_spoiled_by_list(const Service& service, const Findings& found);
std::vector<std::string> valves_outside_by_list(const Service& service, const Findings& found);

}  // namespace shimwright
