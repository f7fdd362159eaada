// SPDX-License-Identifier: MPL-2.0
//
// Log: a row for each valve at each check, as values. Nothing on it is worked out, so that it reads
// the same anywhere; and nothing is locked, so that it can be sorted and filtered.
#include <string>
#include <string_view>

#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"
#include "core/log/log_row.hpp"

namespace shimwright::book {
namespace log_sheet {
namespace {

namespace place = log_place;

struct LogColumnLook {
  Say heading;
  std::string_view style;
  std::string_view heading_style;
  double width_mm;
};

// In the order of LogColumn.
constexpr LogColumnLook looks[] = {
    {Say::log_check, style::log_centre, style::table_head_centre, 15},
    {Say::log_round, style::log_centre, style::table_head_centre, 15},
    {Say::log_date, style::log_date, style::table_head_centre, 22},
    {Say::log_distance, style::log_number, style::table_head, 21},
    {Say::log_valve, style::log_strong, style::log_head_left, 20},
    {Say::log_gap_found, style::log_length, style::table_head, 21},
    {Say::log_state, style::log_text, style::log_head_left, 17},
    {Say::log_shim_found, style::log_length, style::table_head, 21},
    {Say::log_shim_fitted, style::log_length, style::table_head, 21},
    {Say::log_gap_left, style::log_length, style::table_head, 21},
    {Say::log_predicted, style::log_length, style::table_head, 21},
    {Say::log_temperature, style::log_number, style::table_head, 13},
    {Say::log_who, style::log_text, style::log_head_left, 28},
    {Say::log_remark, style::log_text, style::log_head_left, 79},
};
static_assert(std::size(looks) == log_columns);

}  // namespace
}  // namespace log_sheet

SheetDescription describe_log(const Places&) {
  using namespace log_sheet;
  constexpr int last_column = place::first.column + log_columns - 1;
  SheetDescription sheet;
  sheet.name = sheet_name::log;
  sheet.column_mm = {9};
  sheet.row_mm = 5.5;
  sheet.row_heights = {{0, 10}, {1, 5}, {place::note_row, 7}, {place::first.row - 1, 8}};
  sheet.last_row = place::first.row + place::ruled_rows - 1;
  sheet.frozen_rows = place::first.row;
  sheet.cursor = place::first;
  sheet.printed = Area({0, 0}, {last_column, place::first.row + place::printed_rows - 1});
  sheet.page_style = style::landscape_long;
  sheet.repeated_rows = {place::first.row - 1, place::first.row - 1};
  sheet.is_protected = false;
  const auto line = [](int row) { return Area({place::first.column, row}, {last_column, row}); };
  sheet.fields = {title_field("log", {line(0).from, {last_column - 1, 0}}), banner_field(line(1)),
                  next_sheet_field(sheet_name::drift, At{last_column, 0})};
  sheet.fields.push_back({.name = "about",
                          .where = line(place::note_row),
                          .style = std::string(style::note),
                          .content = Fixed{said(Say::log_note)}});
  for (int i = 0; i < log_columns; ++i) {
    const LogColumnLook& look = looks[i];
    const At top = right_of(place::first, i);
    sheet.column_mm.push_back(look.width_mm);
    sheet.fields.push_back({.name = said(look.heading),
                            .where = below(top, -1),
                            .style = std::string(look.heading_style),
                            .content = Fixed{said(look.heading)}});
    Ground ground{.where = block(top, 1, place::ruled_rows), .style = std::string(look.style)};
    if (look.style == style::log_length) ground.grades = {in_inches()};
    sheet.grounds.push_back(std::move(ground));
  }
  Table numbers{.name = "rows", .first = {place::number_column, place::first.row}};
  for (int i = 1; i <= place::rows; ++i) numbers.rows.push_back(std::to_string(i));
  numbers.columns = {
      {.name = "row", .style = std::string(style::row_number), .content = Typed{"{0}"}}};
  sheet.tables.push_back(std::move(numbers));
  sheet.names = {{std::string(place::range_name), block(place::first, log_columns, place::rows)}};
  return sheet;
}

}  // namespace shimwright::book
