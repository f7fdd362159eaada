// SPDX-License-Identifier: MPL-2.0
//
// The parts of the Workings sheet that lie in files of their own.
#pragma once

#include <string>
#include <vector>

#include "book/places.hpp"
#include "book/workings.hpp"

namespace shimwright::book::workings {

// In mm. Text that is no length stays as it is, so that the check can tell of it.
std::string entered_length(const std::string& cell);

std::string entered(const std::string& cell);

// A cell of the sheet Engine, in a formula of another.
std::string on_engine(At at);

void heads(Sheet& sheet, At from, const std::vector<std::string>& words);

// What is said once: its name before it, and a cell behind it at which a long text ends.
void write_fact(Sheet& sheet, At at, std::string_view name, std::string_view formula);
// Worked out of whole ranges, cell by cell.
void write_matrix_fact(Sheet& sheet, At at, std::string_view name, std::string_view formula);

// In the words that the functions take for yes. No comparison looks at the case, as a book may be
// set to mind it.
std::string said_yes(At at);

// Which of the valves, by name as long as they are few: `1 EX L, 3 IN R`, or `12 valves`; and one
// word for a single valve, another for several. To be entered as a matrix.
std::string named(const std::string& which, const WorkingsMap& map);
std::string one_or_more(const std::string& which, std::string_view one, std::string_view more);

// The limits of either side, the rules of the plan, and what is told of the plan as one.
void make_facts(Sheet& sheet, const WorkingsMap& map);

// The spares, the single sizes on sale, and the rows of sizes on sale, one row a size.
void make_stock(Sheet& sheet, const WorkingsMap& map);

// What to buy, what is left over, and what makes no sense. `crank_wrong` holds what is amiss with
// the entries about the crank.
void make_answers(Sheet& sheet, const WorkingsMap& map, At crank_wrong);

// Where to stop the crank, and the steps of fitting.
void make_steps(Sheet& sheet, const Places& places);

}  // namespace shimwright::book::workings
