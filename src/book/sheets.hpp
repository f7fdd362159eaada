// SPDX-License-Identifier: MPL-2.0
//
// Each sheet is described by one function, in a file of its own; what is drawn on it comes from
// another.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "book/description.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"

namespace shimwright::book {

SheetDescription describe_read_me(const Places& places);
SheetDescription describe_engine(const Places& places);
SheetDescription describe_shims(const Places& places);
SheetDescription describe_head(const Places& places);
SheetDescription describe_measure(const Places& places);
SheetDescription describe_plan(const Places& places);
SheetDescription describe_arrivals(const Places& places);
SheetDescription describe_fit(const Places& places);
SheetDescription describe_recheck(const Places& places);
SheetDescription describe_log(const Places& places);
SheetDescription describe_drift(const Places& places);

// What is drawn over the cells of Head, and how small they are printed, once they are laid out.
void draw_head(Sheet& sheet, const Places& places);

struct SheetPlan {
  SheetDescription (*describe)(const Places&);
  void (*draw)(Sheet&, const Places&) = nullptr;  // over its cells
};

// Left to right; the hidden sheet comes last.
inline constexpr SheetPlan sheet_plans[] = {
    {describe_read_me}, {describe_engine}, {describe_head, draw_head}, {describe_measure},
    {describe_shims},   {describe_plan},   {describe_arrivals},        {describe_fit},
    {describe_recheck}, {describe_log},    {describe_drift},
};

// How many stops the engine as it comes has; 2 where its firing is still to be entered.
int stops_of(const EngineLayout& layout);

// The lines that the stops of the engine as it comes take when told in words, with so many letters
// to a line. A person may enter another firing order, but hardly one with more stops.
int lines_of_stops(const EngineLayout& layout, int letters);

}  // namespace shimwright::book
