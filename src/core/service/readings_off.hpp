// SPDX-License-Identifier: MPL-2.0
//
// Readings that were off in the last round of this check: the gap left was not as predicted, so a
// shim is not seated, is another than it is taken for, or the gauge slipped. Another round begins
// with just that gap and that shim on Head. No shim is to be ordered or fitted by them before both
// are measured again: for the plan the valve is unread, and while there is such a valve good valves
// keep their shims, whatever the rules. A valve is none of these any more once its gap or its shim
// on Head is another than that round left, or when a person says that both were measured again and
// read the same. A new gap on Recheck is judged by what that round predicted.
#pragma once

#include <string>
#include <vector>

#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"
#include "core/service/recheck.hpp"

namespace shimwright {

// What another round keeps of the one before, in the order of the valves: of each `-`, or the gap
// left, the shim that is in (`-`: not known) and the gap less what was predicted, in whole
// nanometres: `330000/2600000/80000`. Blank where no reading was off, or Recheck says why each may
// stay so.
std::string readings_off_written(const std::vector<ValveRecheck>& valves);

// Sets ValveFindings::off of those that still stand on Head; of none where what the book keeps is
// not of its valves.
void find_readings_off(const Service& service, Findings& found);

bool is_any_reading_off(const Findings& found);

// What must not be done by them, and what to do instead; blank where no reading is off.
std::string readings_off_in_words(const Service& service, const Findings& found);

// What is asked before a shim is ordered or fitted; blank where no reading is off. With yes,
// readings_off_to_clear() is to be written.
std::string question_on_readings_off(const Service& service, const Findings& found);

// Where the book keeps any.
std::vector<EntryWrite> readings_off_to_clear(const Service& service);

}  // namespace shimwright
