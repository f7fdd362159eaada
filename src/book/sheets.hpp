// SPDX-License-Identifier: MPL-2.0
//
// Each sheet is described by one function, in a file of its own; what is drawn on it comes from
// another. Sheets that are still laid out by a function of their own: make_...
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "book/description.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"
#include "book/workings.hpp"

namespace shimwright::book {

SheetDescription describe_read_me(const Places& places);
SheetDescription describe_engine(const Places& places);
SheetDescription describe_shims(const Places& places);
SheetDescription describe_head(const Places& places);
SheetDescription describe_plan(const Places& places);
SheetDescription describe_fit(const Places& places);

// What is drawn over the cells of Head, and how small they are printed, once they are laid out.
void draw_head(Sheet& sheet, const Places& places);

// Where one begins to type on these.
At top(const Places& places);

// A sheet that is described, or one that still lays itself out.
struct SheetPlan {
  std::string_view name;
  SheetDescription (*describe)(const Places&) = nullptr;
  void (*make)(Sheet&, const Places&) = nullptr;
  At (*cursor)(const Places&) = nullptr;  // where one begins to type
  int frozen_rows = 0;
  void (*draw)(Sheet&, const Places&) = nullptr;  // over the cells of a sheet that is described
};

// Left to right.
inline constexpr SheetPlan sheet_plans[] = {
    {sheet_name::read_me, describe_read_me},
    {sheet_name::engine, describe_engine},
    {.name = sheet_name::head, .describe = describe_head, .draw = draw_head},
    {sheet_name::shims, describe_shims},
    {sheet_name::plan, describe_plan},
    {sheet_name::fit, describe_fit},
    {sheet_name::workings, nullptr, make_workings, top, 0},
};

// `"Quillfen 1.4 · Head"`, or the sheet's own name until the engine has one.
std::string titled(std::string_view sheet);

// Where to read what a box has no room for.
inline constexpr std::string_view words_of_the_rest = "more: all stand on Read me first";

struct TroubleBox {
  std::string told;         // the cell whose lines it shows
  bool may_shrink = false;  // its letters, where there is much to tell
};

// Shows what of the entries makes no sense, as many lines as it has room for: widths and heights
// are to be set before.
void make_trouble_box(Sheet& sheet, const Area& area, const TroubleBox& box);

// The lines of that cell's text, counted.
std::string lines_in(const std::string& cell);

// The version of the add-in, or in plain words what to do where it is missing.
void make_banner(Sheet& sheet, const Area& area);

// What is told below the stops.
inline constexpr std::string_view words_of_manual_first =
    "The manual\u2019s procedure comes first.";
inline constexpr std::string_view words_of_usual_timing =
    " These stops assume usual valve timing where Engine leaves it blank.";

// The lines that the stops of the engine as it comes take when told in words, with so many letters
// to a line. A person may enter another firing order, but hardly one with more stops.
int lines_of_stops(const EngineLayout& layout, int letters);

// What the mark in that cell stands for, in mm, in a formula; an error where it stands for nothing.
// Where the scheme is left to the book and the book is in inches, a mark with a decimal mark is in
// inches too: `.108`. Longer than any shim it was meant otherwise.
std::string size_marked(const std::string& cell);

// A rule for lengths typed in the book's unit: from `least` to `most` mm, both ends in. Text with
// a unit, as `4 thou`, is welcome.
EntryCheck length_check(At first, double least_mm, double most_mm, std::string_view title,
                        std::string_view help, std::string_view refusal);

EntryCheck money_check(At first);

}  // namespace shimwright::book
