// SPDX-License-Identifier: MPL-2.0
//
// What a person says of a check when it is closed: when, how far the engine had run, how warm it
// was, who measured.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/service/closing_rows.hpp"
#include "core/service/findings.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

// What a person says of the check, as typed.
struct ClosingEntries {
  std::string date;         // `2026-11-26`
  std::string distance;     // as read now, in the unit that Engine names
  std::string temperature;  // of the engine
  std::string who;          // measured
  std::string note;
  bool another_round = false;
};

// What the dialog begins with: today; and, in a further round, the distance, temperature and name
// that the log has of the round before it, as typed. The person can change each.
ClosingEntries entries_to_begin_with(const Service& service, const Findings& found,
                                     const EntryTable& log, std::string_view today);

// The entries, read, with the numbers of check and round by the book and its log.
struct FactsRead {
  CheckFacts facts;
  std::vector<Told> refusals;   // what cannot be read, or cannot be
  std::vector<Told> questions;  // what may be a slip
};
FactsRead facts_in(const Service& service, const LogSoFar& so_far, const ClosingEntries& entries,
                   std::string_view today);

}  // namespace shimwright
