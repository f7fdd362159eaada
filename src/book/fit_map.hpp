// SPDX-License-Identifier: MPL-2.0
//
// Where the steps stand on the Fit sheet, a row each.
#pragma once

#include "book/cells.hpp"
#include "book/places.hpp"

namespace shimwright::book {

struct FitMap {
  enum Column { step = 1, stop, valve, out, in, from, note, done };

  int rows = 0;

  static constexpr int head_row = 7;
  static constexpr int first_row = head_row + 1;

  // One step for each valve, one more for each ring of shims that change places, a turn for each
  // stop, and room to spare: no engine in ten thousand needs more. If ever one does, the sheet
  // says so.
  explicit FitMap(const Places& places) : rows(2 * places.count() + 4) {}

  At at(int row, Column column) const { return {column, first_row + row}; }
  Area all(Column column) const { return {at(0, column), at(rows - 1, column)}; }
};

}  // namespace shimwright::book
