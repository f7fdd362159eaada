// SPDX-License-Identifier: MPL-2.0
#include "commands/log_range.hpp"

#include <algorithm>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>

#include "book/places.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;

namespace place = book::log_place;

Ref<css::sheet::XNamedRange> named_in(const ServiceBook::Document& document) {
  const auto names = as<css::container::XNameAccess>(
      as<css::beans::XPropertySet>(document)->getPropertyValue("NamedRanges"));
  const rtl::OUString name = to_office(place::range_name);
  if (!names->hasByName(name)) return {};
  return as<css::sheet::XNamedRange>(names->getByName(name));
}

bool is_blank(const std::vector<Entry>& row) {
  return std::ranges::all_of(
      row, [](const Entry& entry) { return std::holds_alternative<std::monostate>(entry); });
}

}  // namespace

std::optional<LogRange> LogRange::in(const ServiceBook::Document& document) {
  if (!document.is()) return std::nullopt;
  const auto named = named_in(document);
  if (!named.is()) return std::nullopt;
  const auto range = as<css::sheet::XCellRangeReferrer>(named)->getReferredCells();
  if (!range.is()) return std::nullopt;
  const auto address = as<css::sheet::XCellRangeAddressable>(range)->getRangeAddress();
  const auto sheets = as<css::container::XIndexAccess>(document->getSheets());
  return LogRange(document, as<css::sheet::XSpreadsheet>(sheets->getByIndex(address.Sheet)),
                  {static_cast<int>(address.StartColumn), static_cast<int>(address.StartRow)},
                  static_cast<int>(address.EndRow - address.StartRow + 1));
}

// The office's own answer goes by looks too: blank rows at its end do not count.
int LogRange::last_used_row() const { return first_.row + static_cast<int>(rows().size()) - 1; }

EntryTable LogRange::rows() const {
  const auto cursor = as<css::sheet::XSheetCellCursor>(sheet_->createCursor());
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoEndOfUsedArea(false);
  const int used = as<css::sheet::XCellRangeAddressable>(cursor)->getRangeAddress().EndRow;
  const int last = std::max(used, first_.row);
  EntryTable table = table_in(sheet_->getCellRangeByPosition(
      first_.column, first_.row, first_.column + log_columns - 1, last));
  while (!table.empty() && is_blank(table.back())) table.pop_back();
  return table;
}

void LogRange::append(UndoStep& step, std::span<const LogRow> rows, Unit unit) const {
  const int first = last_used_row() + 1;
  EntryTable cells;
  for (const LogRow& one : rows) cells.push_back(cells_of(one, unit));
  step.fill({sheet_, {first_.column, first}}, cells);
  const int used = first + static_cast<int>(rows.size()) - first_.row;
  if (used + place::least_blank > rows_) grow_to(step, used + place::rows);
  print(std::max(used, place::printed_rows));
}

void LogRange::print_used() const {
  print(std::max(last_used_row() + 1 - first_.row, place::printed_rows));
}

void LogRange::grow_to(UndoStep& step, int rows) const {
  const book::Area area = book::block(first_, log_columns, rows);
  const auto name = office::from_office(as<css::container::XNamed>(sheet_)->getName());
  named_in(document_)->setContent(to_office(book::on(name, area)));
  for (int row = 0; row < rows; ++row)
    step.put({sheet_, {place::number_column, first_.row + row}}, static_cast<double>(row + 1));
}

void LogRange::print(int rows) const { print_down_to(sheet_, first_.row + rows - 1); }

}  // namespace shimwright::commands
