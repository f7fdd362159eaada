// SPDX-License-Identifier: MPL-2.0
//
// Where the bench list stands on the Fit sheet, a row a step. The command that writes it (Take to
// the bench) and the description of the sheet go by these places.
#pragma once

#include "book/area.hpp"

namespace shimwright::book {

struct FitMap {
  // `kind` is for the book alone and has no width; the note takes two columns.
  enum Column { kind = 1, step, stop, valve, out, in, from, note, note_end, done, edge };

  int rows = 0;

  static constexpr int caution_row = 2;
  static constexpr int box_row = 3;
  static constexpr int box_lines = 5;
  static constexpr int heading_row = box_row + box_lines + 1;
  static constexpr int head_row = heading_row + 1;
  static constexpr int first_row = head_row + 1;
  static constexpr At taken{kind, head_row};              // when the list was taken to the bench
  static constexpr At gaps_taken{kind, heading_row - 1};  // the gaps on Head then

  // One step for each valve, a turn for each arrival at a stop, and one more for each ring of shims
  // that change places: of thousands of invented engines none needed so many. Where one does, the
  // command says so.
  explicit FitMap(int valves) : rows(3 * valves / 2 + 6) {}

  At at(int row, Column column) const { return {column, first_row + row}; }
  Area all(Column column) const { return {at(0, column), at(rows - 1, column)}; }
  // What is printed of so many steps.
  static Area printed(int steps) {
    return {{0, 0}, {edge, first_row + (steps > 0 ? steps : 1) - 1}};
  }
};

// A row as high as its note takes, in mm.
inline constexpr double bench_row_mm = 8;
double bench_row_height(std::string_view note);

}  // namespace shimwright::book
