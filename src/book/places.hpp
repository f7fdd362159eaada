// SPDX-License-Identifier: MPL-2.0
//
// Which sheets the book has, and in which cells a person's entries stand. The sheets are laid out
// by these places, the workings read from them, and a filled book is filled by them.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "book/area.hpp"
#include "book/head/head_map.hpp"
#include "core/engine/layout.hpp"
#include "core/service/entry_value.hpp"

namespace shimwright::book {

namespace sheet_name {
inline constexpr std::string_view read_me = "Read me first";
inline constexpr std::string_view engine = "Engine";
inline constexpr std::string_view head = "Head";
inline constexpr std::string_view measure = "Measure";
inline constexpr std::string_view shims = "Shims";
inline constexpr std::string_view plan = "Plan";
inline constexpr std::string_view arrivals = "Arrivals";
inline constexpr std::string_view fit = "Fit";
inline constexpr std::string_view recheck = "Recheck";
inline constexpr std::string_view log = "Log";
inline constexpr std::string_view drift = "Drift";
inline constexpr std::string_view workings = "Workings";  // hidden: entries and answers
}  // namespace sheet_name

namespace engine_place {
inline constexpr int box_lines = 4;
inline constexpr int first_row = 2 + box_lines;  // above it: title, banner, what is amiss
// Words that a person chooses freely begin in columns of their own, of no width: Calc would
// complete other entries of the column from them.
inline constexpr int words_column = 2;
inline constexpr int inlet_series_column = 3;
inline constexpr int inlet_column = 4;  // also the column of all that is said once
inline constexpr int exhaust_series_column = 6;
inline constexpr int exhaust_column = 7;
inline constexpr At name{words_column, first_row + 1};
inline constexpr At unit{words_column, first_row + 2};  // below the name, where Enter leads
inline constexpr int min_row = first_row + 8;
inline constexpr int max_row = first_row + 9;
inline constexpr int bias_row = first_row + 10;
inline constexpr int aim_row = first_row + 11;
inline constexpr int series_row = first_row + 12;
inline constexpr At doubt{inlet_column, first_row + 15};
inline constexpr At allowed{inlet_column, first_row + 16};
inline constexpr At scheme{inlet_column, first_row + 17};
inline constexpr At use_doubt{inlet_column, first_row + 20};
inline constexpr At touch_good{inlet_column, first_row + 21};
inline constexpr At first{inlet_column, first_row + 22};
inline constexpr At nearest{inlet_column, first_row + 23};
inline constexpr At work{inlet_column, first_row + 24};
inline constexpr At currency{inlet_column, first_row + 25};
inline constexpr At firing{words_column, first_row + 28};
// Degrees before and after dead centre: the exhaust opens about the bottom, the inlet about the
// top.
inline constexpr int opens_row = first_row + 30;
inline constexpr int closes_row = first_row + 31;
inline constexpr At margin{inlet_column, first_row + 32};
inline constexpr At opened{words_column, first_row + 33};
inline constexpr At distance_unit{inlet_column, first_row + 36};
inline constexpr At interval{inlet_column, first_row + 37};
inline constexpr At earlier{inlet_column, first_row + 38};
inline constexpr std::string_view cams_in_place = "valve by valve, cams in place";
inline constexpr std::string_view cams_out = "camshafts out";
constexpr At of(Side side, int row) {
  if (row == series_row)
    return {side == Side::exhaust ? exhaust_series_column : inlet_series_column, row};
  return {side == Side::exhaust ? exhaust_column : inlet_column, row};
}
}  // namespace engine_place

namespace plan_place {
inline constexpr int first_row = 10;  // the valves, under their heads
}  // namespace plan_place

namespace shims_place {
inline constexpr int box_lines = 5;
inline constexpr int first_row = box_lines;  // below the title and the box
inline constexpr int spares = 20;
inline constexpr int ladders = 4;  // rows of sizes on sale
inline constexpr int singles = 10;
inline constexpr At first_spare{2, first_row + 3};    // series, size, count, note
inline constexpr At first_ladder{8, first_row + 3};   // series, from, to, step, price
inline constexpr At first_single{8, first_row + 14};  // series, size, count, price
}  // namespace shims_place

namespace arrivals_place {
inline constexpr int box_row = 2;
inline constexpr int box_lines = 5;
inline constexpr int heading_row = box_row + box_lines + 1;
inline constexpr At first{1, heading_row + 2};  // number, series, ordered, price, ordered on, ...
enum Column { number = 1, series, ordered, price, when, arrived, mark, micrometer, valve, verdict };
// An order has no more shims than there are valves; the others are for what comes beside it.
constexpr int rows(int valves) { return valves + 4; }
constexpr At at(int row, Column column) { return {column, first.row + row}; }
}  // namespace arrivals_place

namespace recheck_place {
inline constexpr int caution_row = 2;
inline constexpr int box_row = 3;
inline constexpr int box_lines = 6;
inline constexpr int heading_row = box_row + box_lines + 1;
inline constexpr At first{1, heading_row + 2};  // below the heads of the columns, a row a valve
enum Column {
  valve = 1,
  gap_found,
  shim_found,
  shim_fitted,
  predicted,
  gap,
  difference,
  verdict,
  state,
  left
};
// What Close this check writes; nobody sees it there.
inline constexpr At check{valve, heading_row - 1};
inline constexpr At round{gap_found, heading_row - 1};
inline constexpr At readings_off{shim_found, heading_row - 1};
constexpr At at(int row, Column column) { return {column, first.row + row}; }
}  // namespace recheck_place

// The columns are those of LogColumn, from the first on.
namespace log_place {
inline constexpr std::string_view range_name = "log";  // its rows, without the headings
inline constexpr int note_row = 2;
inline constexpr int number_column = 0;  // of the row, as remarks call it
inline constexpr At first{1, 4};
inline constexpr int rows = 200;         // of the range, as the book comes
inline constexpr int least_blank = 100;  // of them after a command has written
inline constexpr int ruled_rows = 10'000;
inline constexpr int printed_rows = 28;  // at least: a page of them
}  // namespace log_place

struct Places {
  EngineLayout layout;
  std::vector<ValveId> valves;
  HeadMap head;

  explicit Places(EngineLayout of)
      : layout(std::move(of)), valves(valves_of(layout)), head(head_map(layout)) {}
  int count() const { return static_cast<int>(valves.size()); }
};

}  // namespace shimwright::book
