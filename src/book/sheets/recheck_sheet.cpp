// SPDX-License-Identifier: MPL-2.0
//
// Recheck: the new gap of every valve, typed here beside what it should be, and what is to be
// thought of it.
#include <string>
#include <utility>
#include <vector>

#include "book/command_urls.hpp"
#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"
#include "core/service/view_parts.hpp"
#include "core/values/palette.hpp"

namespace shimwright::book {
namespace recheck_sheet {
namespace {

namespace place = recheck_place;

constexpr int last_column = place::left;
constexpr int edge_column = last_column + 1;
constexpr int most_letters_of_a_reason = 80;
constexpr double row_mm = 7.2;  // two lines of small letters
constexpr double most_gap_mm = 5;

Column column(Say heading, std::string_view style, Content content,
              std::string_view heading_style = style::table_head) {
  Column made{.name = said(heading),
              .heading = said(heading),
              .style = std::string(style),
              .content = std::move(content),
              .heading_style = std::string(heading_style)};
  if (style == style::entry_length) made.grades = {in_inches()};
  return made;
}

Column told(Say heading, const char* piece) {
  return column(heading, style::table_length, Shows{"recheck", piece});
}

// All that asks for something: a valve that is off, or an entry that is no gap.
Column verdicts() {
  const Shows piece{"recheck", "verdict"};
  Column made = column(Say::arrivals_verdict, style::table_verdict, piece, style::table_head_left);
  const Wears faint{
      .piece = piece, .words = {said(Say::recheck_asked)}, .style = std::string(style::faint)};
  const Wears look_here{.piece = piece,
                        .words = {"", said(Say::recheck_due), said(Say::recheck_as_predicted),
                                  said(Say::recheck_unpredicted)},
                        .style = std::string(style::remark_found),
                        .unless = true};
  made.grades = {faint, look_here};
  return made;
}

Column states() {
  const Shows piece{"recheck", "state"};
  Column made = column(Say::recheck_state, style::table_centre, piece, style::table_head_centre);
  for (const State state : all_states)
    if (state != State::unread)
      made.grades.push_back({.piece = piece,
                             .words = {state_in_words(state, Teller())},
                             .style = style::worn(style::Wear::told, state)});
  return made;
}

Column new_gaps() {
  return column(Say::recheck_new_gap, style::entry_length,
                Takes{.kind = "recheck",
                      .value = entry_value::recheck_gap,
                      .check = Number{0, most_gap_mm, true},
                      .title = said(Say::recheck_new_gap),
                      .help = said(Say::head_gap_help),
                      .due = said(Say::head_gap_due),
                      .place = said(Say::recheck_gap_place, {"{0}"})});
}

Column reasons() {
  return column(Say::recheck_why, style::entry_note,
                Takes{.kind = "recheck",
                      .value = entry_value::recheck_left,
                      .check = Letters{most_letters_of_a_reason},
                      .title = said(Say::recheck_why_title),
                      .help = said(Say::recheck_why_help),
                      .due = said(Say::recheck_why_due),
                      .place = said(Say::recheck_why_place, {"{0}"})},
                style::table_head_left);
}

Table valves(const Places& places) {
  Table table{.name = "recheck", .first = place::first, .row_mm = row_mm};
  for (const ValveId& valve : places.valves) table.rows.push_back(name_of(valve, places.layout));
  table.columns = {
      column(Say::plan_valve, style::table_strong, Fixed{"{0}"}, style::table_head_left),
      told(Say::recheck_gap_found, "gap found"),
      told(Say::recheck_shim_found, "shim found"),
      told(Say::recheck_shim_fitted, "shim fitted"),
      told(Say::recheck_predicted, "predicted"),
      new_gaps(),
      told(Say::recheck_differs, "difference"),
      verdicts(),
      states(),
      reasons()};
  return table;
}

}  // namespace
}  // namespace recheck_sheet

SheetDescription describe_recheck(const Places& places) {
  using namespace recheck_sheet;
  const int note_row = place::first.row + places.count();
  SheetDescription sheet;
  sheet.name = sheet_name::recheck;
  sheet.column_mm = {2, 17, 14, 14, 14, 18, 15, 15, 60, 22, 31, 2};
  sheet.row_mm = 5;  // of the box's lines, too
  sheet.row_heights = {{0, 10},
                       {place::caution_row, 10},
                       {place::heading_row - 1, 2.5},
                       {place::heading_row, 7},
                       {place::first.row - 1, 9},
                       {note_row, 10}};
  sheet.last_row = note_row;
  sheet.frozen_rows = place::first.row;
  sheet.cursor = place::at(0, place::gap);
  sheet.printed = Area({0, 0}, {edge_column, note_row});
  sheet.page_style = style::portrait;
  const auto line = [](int row, int from, int to) { return Area({from, row}, {to, row}); };
  sheet.fields = {title_field("recheck", line(0, 1, place::verdict)),
                  banner_field(line(1, 1, last_column))};
  sheet.add("close", line(0, place::state, place::left), style::label,
            Button{said(Say::check_close), std::string(command::close_check)});
  sheet.add("caution", line(place::caution_row, 1, last_column), style::caution,
            Fixed{said(Say::recheck_caution)});
  add_box(sheet, "recheck", block({1, place::box_row}, last_column, place::box_lines));
  sheet.add("heading", line(place::heading_row, 1, place::difference), style::heading,
            Shows{"book", "recheck heading"});
  sheet.add("tally", line(place::heading_row, place::verdict, last_column), style::heading_tally,
            Shows{"book", "recheck tally"});
  sheet.add("check", place::check, style::bench_kind, Holds{"setting", "check", 0});
  sheet.add("round", place::round, style::bench_kind, Holds{"setting", "round", 0});
  sheet.add("readings off", place::readings_off, style::bench_kind,
            Holds{"setting", "readings off", 0});
  sheet.tables.push_back(valves(places));
  sheet.add("note", line(note_row, 1, last_column), style::note, Shows{"book", "recheck note"});
  return sheet;
}

}  // namespace shimwright::book
