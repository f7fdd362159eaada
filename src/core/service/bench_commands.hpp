// SPDX-License-Identifier: MPL-2.0
//
// What the two commands of the bench write into a book and say of it, as plain data: Take to the
// bench writes the steps of the present plan as values, Clear the bench removes them and may enter
// the shims that are in by their ticks.
#pragma once

#include <string>
#include <vector>

#include "core/service/bench.hpp"
#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"

namespace shimwright {

// A step as a row of the bench list shows it.
struct BenchRow {
  Service::BenchEntries step;
  std::string valve;  // for the eye: the valve's name, or that the crank is turned
  std::string note;
};

// The steps of the present plan; none where there is nothing to be taken.
std::vector<BenchRow> rows_for_bench(const Service& service, const Findings& found);

// Why there are none, as Fit's box says it, a sentence a line.
std::string why_nothing_to_take(const Service& service, const Findings& found);

// The shims that are in by the ticks, as entries of their valves. One that came out of another
// valve, or stands on Arrivals, brings mark and micrometer size along, unless what stands there by
// now is another shim: too far from the list's size (are_far_apart). Any other has the mark of
// its size, or, where the book's scheme has no mark for that size, is entered as measured. The
// valve's gap is cleared, since it was measured over the old shim, and so is the row of Arrivals,
// since the shim is no stock any more. New gaps on Recheck become those on Head.
std::vector<EntryWrite> shims_to_enter(const Service& service, const Findings& found);

// Clears the new gaps on Recheck: they belong to the list that is leaving the bench, and would be
// judged by the next.
std::vector<EntryWrite> new_gaps_to_clear(const Service& service);

// What is to be asked before the ticks of the list are lost. Blank: nothing.
struct BenchQuestion {
  std::string caution;  // a valve stands empty: said first, and asked by itself
  std::string words;
  bool offers_shims = false;  // yes enters them, no does not; else yes or no
};
BenchQuestion question_before_taking(const Service& service, const Findings& found);
BenchQuestion question_before_clearing(const Service& service, const Findings& found);

}  // namespace shimwright
