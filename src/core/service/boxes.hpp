// SPDX-License-Identifier: MPL-2.0
//
// What each sheet says at its top: what must not be overlooked, remarks, or that all is well.
#pragma once

#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

enum class Mood { calm, remark, loud };

// `calm`, `remark`, `loud`: how the line is to look.
std::string_view word_for(Mood mood);

struct BoxLine {
  std::string words;
  Mood mood = Mood::calm;
  bool is_of_entry = false;  // a remark on an entry, which a list of all remarks has already
};

// A sentence each.
std::vector<BoxLine> box_of_engine(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_head(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_shims(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_plan(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_fit(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_arrivals(const Service& service, const Findings& found);
std::vector<BoxLine> box_of_recheck(const Service& service, const Findings& found);

// By name as long as they are few.
Word named(const std::vector<std::string>& names, const Teller& teller);

// The gaps that were changed on Head since the list was taken, and where new ones belong, as a
// sentence that begins with what not to do. Blank where none was.
std::string changed_gaps_in_words(const Service& service, const Findings& found);

// The bought shims that are not in hand, with the valves that wait for them, as a sentence or two
// that begin with what not to do. Blank where none is missing.
std::string missing_in_words(const Service& service, const Findings& found);

// What to do about the step left out; there is to be one (step_left_out).
Told left_out_in_words(const Service& service);

// All remarks on the entries.
std::vector<std::string> all_remarks(const Findings& found);

// Broken into lines of at most so many letters; where they are more than `room.lines`, the last
// says how many more there are, in these words.
std::vector<BoxLine> fitted_into(const Service::Room& room, const std::vector<BoxLine>& sentences,
                                 const Teller& teller, Say more_words = Say::more_remarks);

}  // namespace shimwright
