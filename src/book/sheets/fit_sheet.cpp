// SPDX-License-Identifier: MPL-2.0
//
// Fit: the bench list. It holds values that Take to the bench writes and Clear the bench removes,
// so that nothing changes under the hands of whoever works by it; only `done` is typed here.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "book/command_urls.hpp"
#include "book/fit_map.hpp"
#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace fit_sheet {
namespace {

constexpr int most_rows_on_a_page = 40;
constexpr int most_letters_of_a_tick = 20;

Wears look(std::vector<std::string> words, std::string_view style) {
  return {.piece = {"bench", "look"}, .words = std::move(words), .style = std::string(style)};
}

// In a book in inches.
Wears look_in_inches(std::vector<std::string> words, std::string_view style) {
  Wears made = look(std::move(words), style);
  const Wears inches = in_inches();
  made.also = Wears::Also{inches.piece, inches.words.front()};
  return made;
}

Holds held(int value) { return {.kind = "bench", .value = value}; }

// Rows without a step look like bare paper: their lines come with the step.
Column column(std::string_view name, Say heading, std::string_view style, Content content,
              std::string_view heading_style) {
  return {.name = std::string(name),
          .heading = said(heading),
          .style = std::string(style),
          .content = std::move(content),
          .grades = {look({"done"}, style::fit_done), look({"turn"}, style::fit_turn),
                     look({"wait"}, style::fit_borrow), look({"step", "stand-in"}, style::fit_row)},
          .heading_style = std::string(heading_style)};
}

Column size_column(std::string_view name, Say heading, int value) {
  Column made = column(name, heading, style::bench_size, held(value), style::table_head_centre);
  made.grades.insert(made.grades.begin(),
                     {look_in_inches({"done"}, style::fit_done_inches),
                      look_in_inches({"step", "stand-in"}, style::fit_row_inches)});
  return made;
}

Column text_column(std::string_view name, Say heading, std::string_view style, Content content) {
  Column made = column(name, heading, style, std::move(content), style::table_head_left);
  made.grades.insert(made.grades.begin(), look({"stand-in"}, style::fit_stand_in));
  return made;
}

Column tick_column(int value) {
  return {.name = "done",
          .heading = said(Say::done_heading),
          .style = std::string(style::bench_tick),
          .content = Takes{.kind = "bench",
                           .value = value,
                           .check = Letters{most_letters_of_a_tick},
                           .title = said(Say::bench_done_title),
                           .help = said(Say::bench_done_help),
                           .due = said(Say::bench_done_due),
                           .place = said(Say::bench_row, {"{0}"})},
          .grades = {look({"done"}, style::fit_done),
                     look({"turn", "wait", "step", "stand-in"}, style::fit_tick)},
          .heading_style = std::string(style::table_head_centre)};
}

Table bench(const FitMap& map) {
  using enum entry_value::Bench;
  Table table{.name = "bench", .first = map.at(0, FitMap::kind), .row_mm = bench_row_mm};
  for (int i = 1; i <= map.rows; ++i) table.rows.push_back(std::to_string(i));
  table.columns = {
      {.name = "kind", .style = std::string(style::bench_kind), .content = held(bench_kind)},
      column("step", Say::bench_step, style::bench_centre, {}, style::table_head_centre),
      column("stop", Say::bench_stop, style::bench_centre, held(bench_stop),
             style::table_head_centre),
      column("valve", Say::bench_valve, style::bench_strong, held(bench_valve),
             style::table_head_left),
      size_column("take out", Say::bench_out, bench_out),
      size_column("put in", Say::bench_in, bench_in),
      text_column("from", Say::bench_from, style::bench_text, held(bench_from)),
      text_column("note", Say::bench_note, style::bench_note, {}),
      tick_column(bench_done)};
  table.columns[table.columns.size() - 2].cells = 2;
  return table;
}

}  // namespace
}  // namespace fit_sheet

SheetDescription describe_fit(const Places& places) {
  using namespace fit_sheet;
  const FitMap map(places.count());
  constexpr double none = 0.1;
  SheetDescription sheet;
  sheet.name = sheet_name::fit;
  sheet.column_mm = {2, none, 9, 9, 17, 17, 17, 18, 54, 74, 22, 5};
  sheet.row_mm = 5;  // of the box's lines, too
  sheet.row_heights = {{0, 10},
                       {FitMap::caution_row, 10},
                       {FitMap::heading_row - 1, 2.5},
                       {FitMap::heading_row, 7},
                       {FitMap::head_row, 6}};
  sheet.last_row = map.at(map.rows - 1, FitMap::done).row;
  sheet.frozen_rows = FitMap::first_row;
  sheet.cursor = map.at(0, FitMap::done);
  sheet.printed = FitMap::printed(0);
  sheet.page_style = style::portrait;
  if (map.rows > most_rows_on_a_page) {
    sheet.page_style = style::portrait_long;
    sheet.repeated_rows = {FitMap::head_row, FitMap::head_row};
  }
  const auto line = [](int row, int from, int to) { return Area({from, row}, {to, row}); };
  sheet.fields = {title_field("fit", line(0, FitMap::kind, FitMap::from)),
                  banner_field(line(1, FitMap::kind, FitMap::done))};
  const auto button = [&](std::string_view name, FitMap::Column where, Say words,
                          std::string_view command, bool at_left) {
    sheet.add(std::string(name), At{where, 0}, style::label,
              Button{said(words), std::string(command), at_left});
  };
  button("take", FitMap::note, Say::bench_take, command::take_to_bench, false);
  button("clear", FitMap::note_end, Say::bench_clear, command::clear_bench, true);
  sheet.add("caution", line(FitMap::caution_row, FitMap::kind, FitMap::done), style::caution,
            Fixed{said(Say::caution_crank)});
  add_box(
      sheet, "fit",
      block({FitMap::kind, FitMap::box_row}, FitMap::done - FitMap::kind + 1, FitMap::box_lines));
  sheet.add("heading", line(FitMap::heading_row, FitMap::kind, FitMap::note), style::heading,
            Shows{"book", "fit heading"});
  sheet.add("tally", line(FitMap::heading_row, FitMap::note_end, FitMap::done),
            style::heading_tally, Shows{"book", "fit tally"});
  sheet.add("taken", FitMap::taken, style::bench_kind, Holds{"taken", "list", 0});
  sheet.add("gaps taken", FitMap::gaps_taken, style::bench_kind, Holds{"taken", "list", 1});
  sheet.fields.push_back(next_sheet_field(sheet_name::recheck, At{FitMap::done, 0}));
  sheet.fields.back().style = style::next_sheet_right;
  sheet.tables.push_back(bench(map));
  return sheet;
}

double bench_row_height(std::string_view note) {
  constexpr int letters_on_a_line = 70;
  constexpr double line_mm = 3.9;
  const auto letters = static_cast<int>(std::ranges::count_if(
      note, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
  const int lines = (letters + letters_on_a_line - 1) / letters_on_a_line;
  return std::max(bench_row_mm, 1 + line_mm * lines);
}

}  // namespace shimwright::book
