// SPDX-License-Identifier: MPL-2.0
//
// The tables of the View, each put into words by a function of its own.
#pragma once

#include "core/service/findings.hpp"
#include "core/service/shown_table.hpp"

namespace shimwright {

ShownTable show_book(const Service& service, const Findings& found);
ShownTable show_valves(const Service& service, const Findings& found);
ShownTable show_order(const Findings& found);
ShownTable show_surplus(const Findings& found);
ShownTable show_steps(const Service& service, const Findings& found);
ShownTable show_bench(const Service& service, const Findings& found);
ShownTable show_stops(const Findings& found);
ShownTable show_sizes(const Findings& found);
ShownTable show_boxes(const Service& service, const Findings& found);
ShownTable show_remarks(const Findings& found);

// The stable word `yes`, or nothing.
inline std::string yes_if(bool holds) { return holds ? "yes" : ""; }

Say say_of(State state);

// `▼ tight`.
std::string state_in_words(State state, const Teller& teller);

}  // namespace shimwright
