// SPDX-License-Identifier: MPL-2.0
//
// What closing a check, or a round of it, writes among the entries.
#pragma once

#include <cstdint>
#include <vector>

#include "core/service/closing_valves.hpp"
#include "core/service/drawer_after.hpp"
#include "core/service/entry_write.hpp"

namespace shimwright {

// Of the check: Head without gaps and with the shims that are in, the drawer, no row of Arrivals
// but those still on order, Recheck blank, no check under way, no reading in question.
std::vector<EntryWrite> writes_to_close(const Service& service, const Findings& found,
                                        const std::vector<ValveAtClose>& valves,
                                        const DrawerAfter& drawer);

// Of a round: Head with the new gaps over those shims; a valve that was touched and not measured
// again has none, and one whose new gap was off is kept in mind (readings_off.hpp). What came and
// is not fitted stays on Arrivals, since the next plan may want it.
std::vector<EntryWrite> writes_for_round(const Service& service, const Findings& found,
                                         const std::vector<ValveAtClose>& valves,
                                         const DrawerAfter& drawer, std::int64_t check,
                                         std::int64_t next_round);

}  // namespace shimwright
