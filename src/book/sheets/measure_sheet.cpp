// SPDX-License-Identifier: MPL-2.0
//
// Measure: one page to print and write on at the engine. In the order of the crank's stops it has a
// box for each reading, and is typed into Head afterwards; nothing is typed here.
#include <algorithm>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace measure_sheet {
namespace {

// What A4 and Letter both have room for, inside the margins and above the foot, so that neither
// makes the letters smaller.
struct PaperSize {
  double width;
  double height;
};
constexpr PaperSize upright{188, 248};
constexpr PaperSize lying{257, 180};

// On the screen only: the paper has its own margin.
constexpr double edge_mm = 2;
constexpr int first_column = 1;

constexpr double come_mm = 6.5;
constexpr double note_mm = 8;  // a line to write on
constexpr double least_row_mm = 5.6;
constexpr double most_row_mm = 14;
constexpr int fewest_notes = 2;
constexpr int most_notes = 14;

enum Row { title_row, banner_row, caution_row, blanks_row = caution_row + 2, come_row = 6 };

// What stands for one valve in a row, from the left: name, shim, gap, mark, micrometer; as shares
// of its width.
constexpr double shares[] = {0.2, 0.165, 0.2, 0.155, 0.28};
constexpr double between_mm = 3;  // before the next valve

class MeasureDescription {
 public:
  explicit MeasureDescription(const Places& places)
      : across_(std::max(places.layout.exhaust_valves, places.layout.inlet_valves)),
        rows_(2 * cylinders_of(places.layout)),
        come_rows_(stops_of(places.layout) + 1),
        paper_(across_ > 2 ? lying : upright) {}

  SheetDescription made() && {
    sheet_.name = sheet_name::measure;
    sheet_.page_style = across_ > 2 ? style::landscape : style::portrait;
    set_widths();
    set_heights();
    head();
    come();
    valves();
    notes();
    sheet_.last_row = last_row();
    sheet_.printed = Area({first_column, 0}, {last_column(), last_row()});
    return std::move(sheet_);
  }

 private:
  int heads_row() const { return come_row + come_rows_ + 1; }
  int first_row() const { return heads_row() + 1; }
  int notes_row() const { return first_row() + rows_ + 1; }
  int last_row() const { return notes_row() + notes_ + 1; }
  int last_column() const { return static_cast<int>(sheet_.column_mm.size()) - 1; }

  void set_widths() {
    constexpr double stop_mm = 11;
    constexpr double limits_mm = 26;  // in inches too
    sheet_.column_mm = {edge_mm, stop_mm, limits_mm};
    const double valve_mm =
        (paper_.width - stop_mm - limits_mm - between_mm * (across_ - 1)) / across_;
    for (int i = 0; i < across_; ++i) {
      if (i > 0) sheet_.column_mm.push_back(between_mm);
      for (const double share : shares) sheet_.column_mm.push_back(share * valve_mm);
    }
  }

  // The valves take what is left, the notes the rest.
  void set_heights() {
    const std::vector<std::pair<int, double>> fixed = {
        {title_row, 12},      {banner_row, 8.5},   {caution_row, 11},      {caution_row + 1, 2},
        {blanks_row, 11},     {blanks_row + 1, 3}, {heads_row() - 1, 1.5}, {heads_row(), 8},
        {notes_row() - 1, 3}, {notes_row(), 7.5}};
    constexpr double hint_mm = 9;
    double left = paper_.height - hint_mm - come_mm * come_rows_;
    for (const auto& [row, mm] : fixed) left -= mm;
    row_mm_ = std::clamp((left - fewest_notes * note_mm) / rows_, least_row_mm, most_row_mm);
    notes_ =
        std::clamp(static_cast<int>((left - row_mm_ * rows_) / note_mm), fewest_notes, most_notes);
    sheet_.row_mm = note_mm;
    sheet_.row_heights = fixed;
    sheet_.row_heights.emplace_back(last_row(), hint_mm);
  }

  // From and to as shares of the paper's width, to the nearest columns.
  Area across(double from, double to, int row) const {
    const auto edge = [this](double share) {
      const double width =
          std::accumulate(sheet_.column_mm.begin() + first_column, sheet_.column_mm.end(), 0.0);
      double at = 0;
      int column = first_column;
      for (; column <= last_column(); ++column) {
        const double mm = sheet_.column_mm[static_cast<std::size_t>(column)];
        if (at + mm / 2 >= share * width) break;
        at += mm;
      }
      return column;
    };
    return {{edge(from), row}, {edge(to) - 1, row}};
  }

  void add(std::string field, const Area& where, std::string_view look, Content content) {
    sheet_.fields.push_back({.name = std::move(field),
                             .where = where,
                             .style = std::string(look),
                             .content = std::move(content)});
  }

  void head() {
    constexpr double words = 0.75;
    sheet_.fields = {title_field("measure", across(0, words, title_row)),
                     banner_field(across(0, 1, banner_row))};
    add("lengths in", across(words, 1, title_row), style::aside, Shows{"book", "lengths in"});
    add("caution", across(0, 1, caution_row), style::caution, Fixed{said(Say::measure_caution)});
    add("date", across(0, 0.3, blanks_row), style::measure_field, Fixed{said(Say::measure_date)});
    add("distance", across(0.3, 0.65, blanks_row), style::measure_field,
        Fixed{said(Say::measure_distance)});
    add("who", across(0.65, 1, blanks_row), style::measure_field, Fixed{said(Say::measure_who)});
  }

  static std::vector<std::string> numbers(int rows) {
    std::vector<std::string> names;
    for (int i = 1; i <= rows; ++i) names.push_back(std::to_string(i));
    return names;
  }

  void come() {
    constexpr double letter_mm = 2;
    const auto letters = static_cast<int>(paper_.width / letter_mm);
    sheet_.constants.push_back({"box", "measure", 0, std::to_string(letters)});
    sheet_.constants.push_back({"box", "measure", 1, std::to_string(come_rows_)});
    sheet_.tables.push_back({.name = "come",
                             .first = {first_column, come_row},
                             .rows = numbers(come_rows_),
                             .columns = {{.name = "words",
                                          .style = std::string(style::measure_come),
                                          .content = Shows{"measure", "come"},
                                          .grades = {{.piece = {"measure", "come look"},
                                                      .words = {"note"},
                                                      .style = std::string(style::faint)}},
                                          .cells = last_column() - first_column + 1}},
                             .row_mm = come_mm});
  }

  // A line stands above the first row of each stop.
  Column column(std::string field, Say heading, std::string_view look, Content content) const {
    return {.name = std::move(field),
            .heading = said(heading),
            .style = std::string(look),
            .content = std::move(content),
            .grades = {{{"measure", "look"}, {"first"}, std::string(style::measure_first)}},
            .heading_style = std::string(style::table_head_centre)};
  }

  void valves() {
    Table table{.name = "valves",
                .first = {first_column, first_row()},
                .rows = numbers(rows_),
                .row_mm = row_mm_};
    table.columns = {
        column("stop", Say::bench_stop, style::measure_stop, Shows{"measure", "stop"}),
        column("limits", Say::measure_limits, style::measure_known, Shows{"measure", "limits"})};
    for (int place = 1; place <= across_; ++place) {
      if (place > 1)
        table.columns.push_back(
            {.name = "before " + std::to_string(place),
             .style = std::string(style::measure_row),
             .grades = {{{"measure", "look"}, {"first"}, std::string(style::measure_first)}}});
      add_valve(table, std::to_string(place));
    }
    sheet_.tables.push_back(std::move(table));
  }

  void add_valve(Table& table, const std::string& place) const {
    const auto known = [&place](const char* piece) { return Shows{"measure", piece + place}; };
    Column valve = column("name " + place, Say::plan_valve, style::measure_valve, known("name "));
    valve.heading_style = style::table_head_left;
    table.columns.push_back(std::move(valve));
    table.columns.push_back(
        column("shim " + place, Say::plan_shim_now, style::measure_known, known("shim ")));
    const std::pair<const char*, Say> boxes[] = {
        {"gap ", Say::gap}, {"mark ", Say::name_of_mark}, {"micrometer ", Say::name_of_micrometer}};
    for (const auto& [what, heading] : boxes) {
      Column box = column(what + place, heading, style::measure_row, {});
      box.grades.insert(box.grades.begin(),
                        {{known("box "), {"first"}, std::string(style::measure_box_first)},
                         {known("box "), {"row"}, std::string(style::measure_box)}});
      table.columns.push_back(std::move(box));
    }
  }

  void notes() {
    add("notes heading", across(0, 1, notes_row()), style::heading,
        Fixed{said(Say::measure_notes)});
    for (int i = 1; i <= notes_; ++i)
      add("notes." + std::to_string(i), across(0, 1, notes_row() + i), style::measure_blank, {});
    add("hint", across(0, 1, last_row()), style::note, Fixed{said(Say::measure_hint)});
  }

  int across_;     // valves in a row
  int rows_;       // a side of a cylinder each
  int come_rows_;  // for the stops
  PaperSize paper_;
  double row_mm_ = 0;
  int notes_ = 0;
  SheetDescription sheet_;
};

}  // namespace
}  // namespace measure_sheet

SheetDescription describe_measure(const Places& places) {
  using namespace measure_sheet;
  return MeasureDescription(places).made();
}

}  // namespace shimwright::book
