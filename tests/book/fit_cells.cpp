// SPDX-License-Identifier: MPL-2.0
#include "fit_cells.hpp"

#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntries.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntry.hpp>

namespace shimwright::tests {

using book::as;
using book::FitMap;
using book::StepsMap;

std::string shown(const OpenBook& book, int row, FitMap::Column column) {
  return book.shown(on_fit, fit.at(row, column));
}

std::string said(const OpenBook& book, StepsMap::Fact which) {
  return book.worked(steps_map.fact(which));
}

void tick(OpenBook& book, int row) {
  book.type(on_fit, fit.at(row, FitMap::done), book.worked(steps_map.step_at(row, StepsMap::tick)));
}

int tick_throughout(OpenBook& book) {
  const auto count = static_cast<int>(
      book.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)));
  for (int row = 0; row < count; ++row) tick(book, row);
  book.recalculate();
  return count;
}

std::string laid_over(OpenBook& book, At at) {
  const auto entries = as<css::sheet::XSheetConditionalEntries>(
      as<css::beans::XPropertySet>(book.cell(on_fit, at))->getPropertyValue("ConditionalFormat"));
  for (sal_Int32 i = 0; i < entries->getCount(); ++i) {
    const auto entry = entries->getByIndex(i);
    const std::string condition =
        office::from_office(as<css::sheet::XSheetCondition>(entry)->getFormula1());
    if (book.value_of(on_fit, "=" + condition) != 0)
      return office::from_office(as<css::sheet::XSheetConditionalEntry>(entry)->getStyleName());
  }
  return {};
}

}  // namespace shimwright::tests
