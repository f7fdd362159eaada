// SPDX-License-Identifier: MPL-2.0
//
// Drift: how each valve moves over the years by the log, when to look again, and for each cylinder
// a chart, which the command Draw the drift makes: a book without a log has none.
#include <string>
#include <utility>

#include "book/command_urls.hpp"
#include "book/drift_map.hpp"
#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace drift_sheet {
namespace {

constexpr double valve_row_mm = 6;

Column column(std::string_view name, Say heading, std::string_view style,
              std::string_view heading_style = style::table_head_left) {
  return {.name = std::string(name),
          .heading = said(heading),
          .style = std::string(style),
          .content = Shows{"drift", std::string(name)},
          .heading_style = std::string(heading_style)};
}

Column words_column() {
  Column made = column("words", Say::drift_column_words, style::table_text);
  std::vector<std::string> to_see_to;
  for (const Say words : {Say::drift_now_tight, Say::drift_now_loose, Say::drift_unlike_closing,
                          Say::drift_unlike_opening, Say::drift_still})
    to_see_to.push_back(said(words));
  made.grades = {{{"drift", "words"}, std::move(to_see_to), std::string(style::remark_found)}};
  return made;
}

Column course_column() {
  Column made = column("course", Say::drift_column_course, style::table_text);
  made.grades = {{{"drift", "course"},
                  {said(Say::drift_closing), said(Say::drift_opening)},
                  std::string(style::faint),
                  true}};
  return made;
}

Table valves(const Places& places) {
  Table table{
      .name = "drift", .first = {DriftMap::valve, DriftMap::first_row}, .row_mm = valve_row_mm};
  for (const ValveId& valve : places.valves) table.rows.push_back(name_of(valve, places.layout));
  table.columns = {
      {.name = "valve",
       .heading = said(Say::log_valve),
       .style = std::string(style::table_strong),
       .content = Fixed{"{0}"},
       .heading_style = std::string(style::table_head_left)},
      course_column(),
      column("rate", Say::drift_column_rate, style::table_centre, style::table_head_centre),
      column("meets", Say::drift_column_meets, style::table_centre, style::table_head_centre),
      column("cautious", Say::drift_column_cautious, style::table_strong_centre,
             style::table_head_centre),
      words_column()};
  return table;
}

// No page ends amid a chart.
void part_pages(SheetDescription& sheet, const DriftMap& map) {
  constexpr double paper_mm = 297 - 2 * 10 - 8;  // without margins and footer
  const double page_mm = paper_mm / sheet.page_scale;
  constexpr double charts_mm = DriftMap::chart_rows * DriftMap::chart_row_mm;
  double used_mm = 0;
  for (int row = 0; row < map.first_chart_row(); ++row) {
    double mm = row >= DriftMap::first_row && row < map.note_row() ? valve_row_mm : sheet.row_mm;
    for (const auto& [own, height] : sheet.row_heights)
      if (own == row) mm = height;
    used_mm += mm;
  }
  for (int line = 0; line < map.lines_of_charts(); ++line) {
    if (used_mm + charts_mm > page_mm) {
      sheet.page_breaks.push_back(map.row_of_charts(line));
      used_mm = 0;
    }
    used_mm += charts_mm + sheet.row_mm;
  }
}

}  // namespace
}  // namespace drift_sheet

SheetDescription describe_drift(const Places& places) {
  using namespace drift_sheet;
  const DriftMap map{places.count(), cylinders_of(places.layout)};
  SheetDescription sheet;
  sheet.name = sheet_name::drift;
  sheet.column_mm = {2, 18, 28, 38, 34, 28, 90, 2};
  sheet.row_mm = 5;  // of the box's lines, too
  sheet.row_heights = {{0, 10},
                       {DriftMap::next_row, 11},
                       {DriftMap::why_row, 7},
                       {DriftMap::heading_row - 1, 2.5},
                       {DriftMap::heading_row, 7},
                       {DriftMap::first_row - 1, 6},
                       {map.note_row(), 18},
                       {map.note_row() + 1, 4}};
  for (int line = 0; line < map.lines_of_charts(); ++line)
    for (int row = 0; row < DriftMap::chart_rows; ++row)
      sheet.row_heights.emplace_back(map.row_of_charts(line) + row, DriftMap::chart_row_mm);
  sheet.last_row = map.last_row();
  sheet.frozen_rows = DriftMap::box_row + DriftMap::box_lines;
  sheet.cursor = {DriftMap::valve, DriftMap::first_row};
  // The charts go on paper once they are drawn.
  sheet.printed = Area({0, 0}, {DriftMap::edge, map.note_row()});
  sheet.page_style = style::portrait_charts;
  sheet.page_scale = 0.79;
  part_pages(sheet, map);
  const auto line = [](int row, int from, int to) { return Area({from, row}, {to, row}); };
  sheet.fields = {title_field("drift", line(0, DriftMap::valve, DriftMap::cautious)),
                  banner_field(line(1, DriftMap::valve, DriftMap::words))};
  sheet.add("draw", At{DriftMap::words, 0}, style::label,
            Button{said(Say::drift_draw), std::string(command::draw_drift)});
  sheet.add("next.label", line(DriftMap::next_row, DriftMap::valve, DriftMap::course), style::label,
            Fixed{said(Say::drift_next)});
  sheet.add("next", line(DriftMap::next_row, DriftMap::rate, DriftMap::words), style::figure,
            Shows{"next check", "at"});
  sheet.add("why", line(DriftMap::why_row, DriftMap::valve, DriftMap::words), style::text,
            Shows{"next check", "why"});
  add_box(sheet, "drift", block({DriftMap::valve, DriftMap::box_row}, 6, DriftMap::box_lines),
          {"next check", "box"}, {"next check", "mood"});
  sheet.add("heading", line(DriftMap::heading_row, DriftMap::valve, DriftMap::cautious),
            style::heading, Shows{"next check", "heading"});
  sheet.add("tally", At{DriftMap::words, DriftMap::heading_row}, style::heading_tally,
            Shows{"next check", "tally"});
  sheet.tables.push_back(valves(places));
  sheet.add("drawn", At{DriftMap::edge, DriftMap::first_row - 1}, style::bench_kind,
            Holds{"drawn", "drift", 0});
  sheet.add("about", line(map.note_row(), DriftMap::valve, DriftMap::words), style::note,
            Fixed{said(Say::drift_about)});
  return sheet;
}

}  // namespace shimwright::book
