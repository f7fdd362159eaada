// SPDX-License-Identifier: MPL-2.0
//
// The tables of the View, each put into words by a function of its own. A table more is a function
// here and a row of the list.
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/service/findings.hpp"
#include "core/service/shown_table.hpp"

namespace shimwright {

ShownTable show_book(const Service& service, const Findings& found);
ShownTable show_valves(const Service& service, const Findings& found);
ShownTable show_cards(const Service& service, const Findings& found);
ShownTable show_measure(const Service& service, const Findings& found);
ShownTable show_order(const Service& service, const Findings& found);
ShownTable show_surplus(const Service& service, const Findings& found);
ShownTable show_steps(const Service& service, const Findings& found);
ShownTable show_arrivals(const Service& service, const Findings& found);
ShownTable show_recheck(const Service& service, const Findings& found);
ShownTable show_bench(const Service& service, const Findings& found);
ShownTable show_stops(const Service& service, const Findings& found);
ShownTable show_sizes(const Service& service, const Findings& found);
ShownTable show_ways(const Service& service, const Findings& found);
ShownTable show_bands(const Service& service, const Findings& found);
ShownTable show_picture(const Service& service, const Findings& found);
ShownTable show_boxes(const Service& service, const Findings& found);
ShownTable show_remarks(const Service& service, const Findings& found);

struct ViewPart {
  std::string_view name;
  ShownTable (*show)(const Service&, const Findings&);
  bool without_gaps = false;  // it says the same whatever gaps are entered
};

// Every table of the View: the one list of them.
inline constexpr ViewPart view_parts[] = {
    {"book", show_book},         {"valves", show_valves},
    {"cards", show_cards, true}, {"measure", show_measure, true},
    {"order", show_order},       {"left over", show_surplus},
    {"steps", show_steps},       {"bench", show_bench, true},
    {"stops", show_stops, true}, {"sizes", show_sizes, true},
    {"boxes", show_boxes},       {"remarks", show_remarks},
    {"ways", show_ways},         {"bands", show_bands, true},
    {"picture", show_picture},   {"arrivals", show_arrivals},
    {"recheck", show_recheck},
};

// The columns of `book` that are titles of sheets, which name the engine besides.
inline constexpr std::pair<std::string_view, Say> sheet_titles[] = {
    {"title engine", Say::sheet_engine},   {"title head", Say::sheet_head},
    {"title measure", Say::sheet_measure}, {"title shims", Say::sheet_shims},
    {"title plan", Say::sheet_plan},       {"title arrivals", Say::sheet_arrivals},
    {"title fit", Say::sheet_fit},         {"title recheck", Say::sheet_recheck},
    {"title log", Say::sheet_log},         {"title drift", Say::sheet_drift},
};

// The stable word `yes`, or nothing.
inline std::string yes_if(bool holds) { return holds ? "yes" : ""; }

Say say_of(State state);

// `0.280, 0.010 too loose`: what the nearest listed size would leave. Expects that there is one.
std::string nearest_leaves(const ValvePlan& plan, const SideFindings& side, const Teller& teller);

// `12.50 EUR`, without a currency where none is entered.
std::string sum_in_currency(Money money, const Service& service, const Teller& teller);

// `▼ tight`.
std::string state_in_words(State state, const Teller& teller);

}  // namespace shimwright
