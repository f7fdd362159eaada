// SPDX-License-Identifier: MPL-2.0
//
// Arrivals: what was ordered, a row a shim, and what came of it. Order placed writes the order as
// values; what has arrived, its mark and its size are typed here, and each row has its verdict.
#include <string>
#include <utility>

#include "book/command_urls.hpp"
#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace arrivals_sheet {
namespace {

namespace place = arrivals_place;
using place::Column::arrived;
using place::Column::verdict;

constexpr int last_column = verdict;
constexpr int edge_column = last_column + 1;
constexpr int most_letters_of_a_mark = 20;
constexpr double row_mm = 6.2;
constexpr Number shim_mm{0.3, 20, true};
constexpr Number etched{0, 99'999};

Holds held(int value) { return {.kind = "arrival", .value = value}; }

Wears look(std::string word, std::string_view style) {
  return {.piece = {"arrivals", "look"}, .words = {std::move(word)}, .style = std::string(style)};
}

Column column(Say heading, std::string_view style, Content content,
              std::string_view heading_style = style::table_head_centre) {
  Column made{.name = said(heading),
              .heading = said(heading),
              .style = std::string(style),
              .content = std::move(content),
              .heading_style = std::string(heading_style)};
  if (style == style::table_length || style == style::entry_length) made.grades = {in_inches()};
  return made;
}

Takes entry(int value, Check check, Say title, Say help, Say due) {
  return {.kind = "arrival",
          .value = value,
          .check = std::move(check),
          .title = said(title),
          .help = said(help),
          .due = said(due),
          .place = said(Say::arrivals_row, {"{0}"})};
}

// The office shows help to the right of the cell, where the verdict stands. So it is no wider than
// mark and micrometer, which are blank at that time; and those have none: Head has the same help.
Takes narrow(Takes entry) {
  entry.help_letters = 16;
  return entry;
}
Takes silent(Takes entry) {
  entry.help.clear();
  return entry;
}

Column verdicts() {
  Column made = column(Say::arrivals_verdict, style::table_text, Shows{"arrivals", "verdict"},
                       style::table_head_left);
  made.grades = {look("look here", style::remark_found), look("gone", style::faint)};
  return made;
}

Table shims(int rows) {
  using enum entry_value::Arrival;
  Table table{.name = "arrivals", .first = place::first, .row_mm = row_mm};
  for (int i = 1; i <= rows; ++i) table.rows.push_back(std::to_string(i));
  table.columns = {
      {.name = "row", .style = std::string(style::row_number), .content = Fixed{"{0}"}},
      column(Say::shims_series, style::entry_choice,
             entry(arrival_series, SeriesChoice{}, Say::shims_series_title, Say::shims_series_help,
                   Say::shims_series_due)),
      column(Say::arrivals_ordered, style::table_length, held(arrival_ordered), style::table_head),
      column(Say::shims_price, style::table_money, held(arrival_price), style::table_head),
      column(Say::arrivals_when, style::table_centre, held(arrival_when)),
      column(Say::arrivals_arrived, style::entry_words,
             narrow(entry(arrival_arrived, Letters{most_letters_of_a_mark},
                          Say::arrivals_arrived_title, Say::arrivals_arrived_help,
                          Say::arrivals_arrived_due))),
      column(Say::name_of_mark, style::entry_mark,
             silent(entry(arrival_mark, etched, Say::arrivals_mark_title, Say::head_mark_help,
                          Say::head_mark_due)),
             style::table_head),
      column(Say::name_of_micrometer, style::entry_length,
             silent(entry(arrival_micrometer, shim_mm, Say::arrivals_micrometer_title,
                          Say::head_micrometer_help, Say::head_micrometer_due)),
             style::table_head),
      column(Say::arrivals_for, style::table_strong_centre, Shows{"arrivals", "valve"}),
      verdicts()};
  return table;
}

}  // namespace
}  // namespace arrivals_sheet

SheetDescription describe_arrivals(const Places& places) {
  using namespace arrivals_sheet;
  const int rows = place::rows(places.count());
  const int note_row = place::first.row + rows;
  SheetDescription sheet;
  sheet.name = sheet_name::arrivals;
  sheet.column_mm = {2, 8, 18, 18, 21, 24, 22, 17, 22, 18, 46, 2};
  sheet.row_mm = 5;  // of the box's lines, too
  sheet.row_heights = {{0, 10},
                       {place::heading_row - 1, 2.5},
                       {place::heading_row, 7},
                       {place::first.row - 1, 6},
                       {note_row, 13}};
  sheet.last_row = note_row;
  sheet.frozen_rows = place::first.row;
  sheet.cursor = place::at(0, arrived);
  sheet.printed = Area({0, 0}, {edge_column, note_row});
  sheet.page_style = style::portrait;
  const auto line = [](int row, int from, int to) { return Area({from, row}, {to, row}); };
  const int button_column = last_column;
  sheet.fields = {title_field("arrivals", line(0, 1, button_column - 1)),
                  banner_field(line(1, 1, last_column))};
  sheet.add("take", At{button_column, 0}, style::label,
            Button{said(Say::bench_take), std::string(command::take_to_bench)});
  add_box(sheet, "arrivals", block({1, place::box_row}, last_column, place::box_lines));
  sheet.add("heading", line(place::heading_row, 1, place::micrometer), style::heading,
            Shows{"book", "arrivals heading"});
  sheet.add("tally", line(place::heading_row, place::valve, last_column), style::heading_tally,
            Shows{"book", "arrivals tally"});
  sheet.add("note", line(note_row, 1, last_column), style::note, Fixed{said(Say::arrivals_note)});
  sheet.tables.push_back(shims(rows));
  return sheet;
}

}  // namespace shimwright::book
