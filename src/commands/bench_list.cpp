// SPDX-License-Identifier: MPL-2.0
#include "commands/bench_list.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

namespace shimwright::commands {

using book::as;
using book::FitMap;

void BenchList::empty(UndoStep& step) const {
  step.clear(fit_, {map_.at(0, FitMap::kind), map_.at(map_.rows - 1, FitMap::done)});
  step.put({fit_, FitMap::taken}, Entry());
  step.put({fit_, FitMap::gaps_taken}, Entry());
  height({map_.at(0, FitMap::kind), map_.at(map_.rows - 1, FitMap::kind)}, book::bench_row_mm);
}

void BenchList::height(const book::Area& rows, double mm) const {
  book::set(as<css::table::XColumnRowRange>(range(rows))->getRows(), "Height",
            book::hundredths(mm));
}

void BenchList::print(int steps) const {
  css::uno::Sequence<css::table::CellRangeAddress> areas(1);
  areas.getArray()[0] =
      as<css::sheet::XCellRangeAddressable>(range(FitMap::printed(steps)))->getRangeAddress();
  as<css::sheet::XPrintAreas>(fit_)->setPrintAreas(areas);
}

Ref<css::table::XCellRange> BenchList::range(const book::Area& area) const {
  return fit_->getCellRangeByPosition(area.from.column, area.from.row, area.to.column, area.to.row);
}

}  // namespace shimwright::commands
