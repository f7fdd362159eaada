// SPDX-License-Identifier: MPL-2.0
//
// Shims: the spares in the drawer, and the sizes that can be bought, as whole rows of sizes (from,
// to, step) or singly.
#include <utility>

#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace shims_sheet {
namespace {

namespace place = shims_place;

constexpr int last_column = 13;
constexpr int last_row = place::first_single.row + 12;
constexpr Number size_mm{0.3, 20, true};
constexpr Number step_mm{0.001, 5, true};
constexpr Number quantity{.least = 0, .most = 1000, .whole = true};
constexpr Number price{0, 1'000'000};

std::vector<std::string> numbered(int from, int rows) {
  std::vector<std::string> names;
  for (int i = 0; i < rows; ++i) names.push_back(std::to_string(from + i));
  return names;
}

// What is taken in one column of a table of shims: what its rows are called as entries, and where
// one is to go back to.
class Entries {
 public:
  Entries(std::string kind, Say place) : kind_(std::move(kind)), place_(place) {}

  Column column(Say heading, std::string_view look, int value, Check check, Say title, Say help,
                Say due) const {
    Column column{.name = said(heading),
                  .heading = said(heading),
                  .style = std::string(look),
                  .content = Takes{.kind = kind_,
                                   .value = value,
                                   .check = std::move(check),
                                   .title = said(title),
                                   .help = said(help),
                                   .due = said(due),
                                   .place = said(place_, {"{0}"})}};
    if (look == style::entry_length) column.grades = {in_inches()};
    return column;
  }

  Column series(int value) const {
    Column made = column(Say::shims_series, style::entry_choice, value, SeriesChoice{},
                         Say::shims_series_title, Say::shims_series_help, Say::shims_series_due);
    made.heading_style = style::table_head_centre;
    return made;
  }
  Column size(int value) const {
    return column(Say::shims_size, style::entry_length, value, size_mm, Say::shims_size_title,
                  Say::shims_size_help, Say::shims_size_due);
  }
  Column count(int value, Say help) const {
    return column(Say::shims_count, style::entry_count, value, quantity, Say::shims_count_title,
                  help, Say::shims_count_due);
  }
  Column price_each(int value) const {
    return column(Say::shims_price, style::entry_money, value, price, Say::shims_price_title,
                  Say::shims_price_help, Say::engine_money_due);
  }

 private:
  std::string kind_;
  Say place_;
};

Column row_number() {
  return {.name = "row", .style = std::string(style::row_number), .content = Fixed{"{0}"}};
}

Table spares() {
  using enum entry_value::Spare;
  const Entries entries("spare", Say::shims_spare_row);
  // Nothing is worked out from it.
  Column note = Entries("note", Say::shims_spare_row)
                    .column(Say::shims_note, style::entry_text, 0, Letters{80},
                            Say::shims_note_title, Say::shims_note_help, Say::shims_note_due);
  note.heading_style = style::table_head_left;
  return {.name = "spares",
          .first = right_of(place::first_spare, -1),
          .rows = numbered(1, place::spares),
          .columns = {row_number(), entries.series(spare_series), entries.size(spare_size),
                      entries.count(spare_count, Say::shims_spare_count_help), std::move(note)}};
}

Table rows_of_sizes() {
  using enum entry_value::Sizes;
  const Entries entries("sizes", Say::shims_sizes_row);
  const auto length = [&](Say heading, int value, Say help) {
    return entries.column(heading, style::entry_length, value, size_mm, Say::shims_size_title, help,
                          Say::shims_size_due);
  };
  return {
      .name = "sizes",
      .first = right_of(place::first_ladder, -1),
      .rows = numbered(1, place::ladders),
      .columns = {row_number(),
                  entries.series(sizes_series),
                  length(Say::shims_from, from, Say::shims_from_help),
                  length(Say::shims_to, to, Say::shims_to_help),
                  entries.column(Say::shims_step, style::entry_length, step, step_mm,
                                 Say::shims_step_title, Say::shims_step_help, Say::shims_step_due),
                  entries.price_each(sizes_price),
                  {.name = "comes to",
                   .heading = said(Say::shims_comes_to),
                   .style = std::string(style::table_tally),
                   .content = Shows{"sizes", "comes to"},
                   .heading_style = std::string(style::table_head_left)}}};
}

// What each row of sizes offers to the plan, a line each.
Table offered() {
  Table lines{.name = "offered", .first = below(place::first_ladder, place::ladders)};
  lines.rows = numbered(1, place::ladders);
  lines.columns = {{.name = "words",
                    .style = std::string(style::list),
                    .content = Shows{"sizes", "offered"},
                    .cells = last_column - place::first_ladder.column + 1}};
  return lines;
}

// Numbered on from the spares, as remarks number them.
Table singles() {
  using enum entry_value::Single;
  const Entries entries("single", Say::shims_single_row);
  return {.name = "singles",
          .first = right_of(place::first_single, -1),
          .rows = numbered(place::spares + 1, place::singles),
          .columns = {row_number(), entries.series(single_series), entries.size(single_size),
                      entries.count(single_count, Say::shims_single_count_help),
                      entries.price_each(single_price)}};
}

}  // namespace
}  // namespace shims_sheet

SheetDescription describe_shims(const Places&) {
  using namespace shims_sheet;
  SheetDescription sheet;
  sheet.name = sheet_name::shims;
  sheet.column_mm = {2, 7, 20, 20, 18, 48, 2, 6, 22, 21, 21, 21, 21, 44};
  sheet.row_mm = 6.2;
  sheet.row_heights = {{0, 6}, {1, 6}, {2, 5}, {3, 5}, {4, 5}, {place::first_row, 3}};
  sheet.last_row = last_row;
  sheet.frozen_rows = place::first_row;
  sheet.cursor = place::first_spare;
  sheet.printed = Area({0, 0}, {last_column, last_row});
  sheet.page_style = style::landscape;
  sheet.tables = {spares(), rows_of_sizes(), offered(), singles()};

  const auto heading = [&sheet](const std::string& name, At from, int last, Say words) {
    for (Field& field : heading_fields(name, {from, {last, from.row}}, said(words)))
      sheet.fields.push_back(std::move(field));
  };
  sheet.fields = {title_field("shims", {{1, 0}, {7, 1}})};
  add_box(sheet, "shims", {{8, 0}, {last_column, place::box_lines - 1}});
  sheet.add("unit", {{1, 2}, {4, 2}}, style::list, Shows{"book", "sizes in"});
  sheet.fields.push_back(next_sheet_field(sheet_name::plan, At{5, 2}));
  sheet.add("paste", {{1, 3}, {7, 4}}, style::list, Fixed{said(Say::shims_paste)});
  const At spare = place::first_spare;
  heading("spares.heading", {spare.column - 1, spare.row - 2}, spare.column + 3, Say::shims_spares);
  heading("sizes.heading", below(place::first_ladder, -2), last_column, Say::shims_sizes);
  heading("singles.heading", below(place::first_single, -2), last_column, Say::shims_singles);
  const int beside = place::first_single.row;
  sheet.add("about counts", {{last_column, beside}, {last_column, beside + 6}}, style::list,
            Fixed{said(Say::shims_about_counts)});
  return sheet;
}

}  // namespace shimwright::book
