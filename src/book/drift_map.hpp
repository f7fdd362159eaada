// SPDX-License-Identifier: MPL-2.0
//
// Where the table and the charts stand on the Drift sheet, and on the hidden sheet what the charts
// are drawn from. The command that draws them and the description of the sheet go by these places.
#pragma once

#include "book/area.hpp"

namespace shimwright::book {

struct DriftMap {
  enum Column { valve = 1, course, rate, meets, cautious, words, edge };

  int valves = 0;
  int cylinders = 0;

  static constexpr int next_row = 2;
  static constexpr int why_row = 3;
  static constexpr int box_row = 4;
  static constexpr int box_lines = 5;
  static constexpr int heading_row = box_row + box_lines + 1;
  static constexpr int first_row = heading_row + 2;

  static constexpr int chart_rows = 11;
  static constexpr double chart_row_mm = 6;
  static constexpr int charts_beside = 2;

  // Far to the right on the hidden sheet: its own columns never come so far.
  static constexpr At data{150, 3};
  static constexpr int data_columns = 400;
  static constexpr int data_rows = 600;

  constexpr int note_row() const { return first_row + valves; }
  constexpr int first_chart_row() const { return note_row() + 2; }
  constexpr int lines_of_charts() const { return (cylinders + charts_beside - 1) / charts_beside; }
  constexpr int last_row() const {
    return first_chart_row() + lines_of_charts() * (chart_rows + 1);
  }
  constexpr int row_of_charts(int line) const {
    return first_chart_row() + line * (chart_rows + 1);
  }
  constexpr Area chart(int cylinder) const {
    const int row = row_of_charts(cylinder / charts_beside);
    return cylinder % charts_beside == 0 ? Area({valve, row}, {meets, row + chart_rows - 1})
                                         : Area({cautious, row}, {words, row + chart_rows - 1});
  }
};

}  // namespace shimwright::book
