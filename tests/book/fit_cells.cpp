// SPDX-License-Identifier: MPL-2.0
#include "fit_cells.hpp"

#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntries.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntry.hpp>

#include "bench_list.hpp"

namespace shimwright::tests {

using book::as;
using book::FitMap;

int take_to_bench(const OpenBook& book) { return take_to_bench(the_office(), book); }

std::string shown(const OpenBook& book, int row, FitMap::Column column) {
  return book.shown(on_fit, fit.at(row, column));
}

int steps_on(const OpenBook& book) {
  int steps = 0;
  while (steps < fit.rows && !shown(book, steps, FitMap::step).empty()) ++steps;
  return steps;
}

void tick(OpenBook& book, int row) {
  book.type(on_fit, fit.at(row, FitMap::done), "x");
  book.recalculate();
}

int tick_throughout(OpenBook& book) {
  const int count = steps_on(book);
  for (int row = 0; row < count; ++row) book.type(on_fit, fit.at(row, FitMap::done), "x");
  book.recalculate();
  return count;
}

std::string box_of_fit(const OpenBook& book) {
  std::string told;
  for (int line = 0; line < FitMap::box_lines; ++line) {
    const std::string words = book.shown(on_fit, {FitMap::kind, FitMap::box_row + line});
    if (!words.empty()) told += (told.empty() ? "" : " ") + words;
  }
  return told;
}

std::string laid_over(OpenBook& book, At at) {
  const auto entries = as<css::sheet::XSheetConditionalEntries>(
      as<css::beans::XPropertySet>(book.cell(on_fit, at))->getPropertyValue("ConditionalFormat"));
  for (sal_Int32 i = 0; i < entries->getCount(); ++i) {
    const auto entry = entries->getByIndex(i);
    // It is given for the first row.
    const auto condition = as<css::sheet::XSheetCondition>(entry);
    std::string formula = office::from_office(condition->getFormula1());
    if (book.value_of(on_fit, "=" + formula) != 0)
      return office::from_office(as<css::sheet::XSheetConditionalEntry>(entry)->getStyleName());
  }
  return {};
}

}  // namespace shimwright::tests
