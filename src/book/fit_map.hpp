// SPDX-License-Identifier: MPL-2.0
//
// Where the steps stand on the Fit sheet, a row each.
#pragma once

#include "book/area.hpp"
#include "book/places.hpp"

namespace shimwright::book {

struct FitMap {
  enum Column { step = 1, stop, valve, out, in, from, note, done };

  int valves = 0;
  int rows = 0;

  static constexpr int head_row = 7;
  static constexpr int first_row = head_row + 1;

  // One step for each valve, a turn for each arrival at a stop, and one more for each ring of shims
  // that change places: of thousands of invented engines none needed so many. If ever one does, the
  // sheet says so.
  explicit FitMap(const Places& places)
      : valves(places.count()), rows(3 * places.count() / 2 + 6) {}

  At at(int row, Column column) const { return {column, first_row + row}; }
  Area all(Column column) const { return {at(0, column), at(rows - 1, column)}; }
};

}  // namespace shimwright::book
