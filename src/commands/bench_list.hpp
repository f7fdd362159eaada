// SPDX-License-Identifier: MPL-2.0
//
// The rows of the bench list on Fit, as commands clear, lay out and print them.
#pragma once

#include <com/sun/star/table/XCellRange.hpp>

#include "book/area.hpp"
#include "book/fit_map.hpp"
#include "commands/service_book.hpp"
#include "commands/undo_step.hpp"

namespace shimwright::commands {

class BenchList {
 public:
  BenchList(const Ref<css::sheet::XSpreadsheet>& fit, int valves) : fit_(fit), map_(valves) {}

  const book::FitMap& map() const { return map_; }
  const Ref<css::sheet::XSpreadsheet>& sheet() const { return fit_; }

  // Contents and heights of all rows, and when and over which gaps the list was taken; the looks
  // stay.
  void empty(UndoStep& step) const;
  void height(const book::Area& rows, double mm) const;
  // So many steps, and what stands above them.
  void print(int steps) const;

 private:
  Ref<css::table::XCellRange> range(const book::Area& area) const;

  Ref<css::sheet::XSpreadsheet> fit_;
  book::FitMap map_;
};

}  // namespace shimwright::commands
