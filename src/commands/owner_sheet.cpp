// SPDX-License-Identifier: MPL-2.0
#include "commands/owner_sheet.hpp"

#include <algorithm>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellFormatRangesSupplier.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/NumberFormat.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include "book/area.hpp"
#include "commands/service_book.hpp"
#include "core/service/service.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;
using css::table::CellRangeAddress;

CellRangeAddress address_of(const Ref<css::uno::XInterface>& range) {
  return as<css::sheet::XCellRangeAddressable>(range)->getRangeAddress();
}

CellRangeAddress used_area(const Ref<css::sheet::XSpreadsheet>& sheet) {
  const auto cursor = as<css::sheet::XSheetCellCursor>(sheet->createCursor());
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoStartOfUsedArea(false);
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoEndOfUsedArea(true);
  return address_of(cursor);
}

// Those of `cells` that lie in the table.
template <class Each>
void for_each_cell(OwnerTable& table, const CellRangeAddress& whole, const CellRangeAddress& cells,
                   Each each) {
  for (sal_Int32 row = std::max(cells.StartRow, whole.StartRow);
       row <= std::min(cells.EndRow, whole.EndRow); ++row)
    for (sal_Int32 column = std::max(cells.StartColumn, whole.StartColumn);
         column <= std::min(cells.EndColumn, whole.EndColumn); ++column)
      each(table.rows[static_cast<std::size_t>(row - whole.StartRow)]
                     [static_cast<std::size_t>(column - whole.StartColumn)]);
}

void mark_dates(OwnerTable& table, const Ref<css::uno::XInterface>& range,
                const Ref<css::uno::XInterface>& document) {
  const auto formats = as<css::util::XNumberFormatsSupplier>(document)->getNumberFormats();
  const auto alike = as<css::container::XIndexAccess>(
      as<css::sheet::XCellFormatRangesSupplier>(range)->getCellFormatRanges());
  const CellRangeAddress whole = address_of(range);
  for (sal_Int32 i = 0; i < alike->getCount(); ++i) {
    const Ref<css::uno::XInterface> cells(alike->getByIndex(i), css::uno::UNO_QUERY);
    sal_Int32 key = 0;
    as<css::beans::XPropertySet>(cells)->getPropertyValue("NumberFormat") >>= key;
    sal_Int16 type = 0;
    formats->getByKey(key)->getPropertyValue("Type") >>= type;
    if ((type & css::util::NumberFormat::DATE) == 0) continue;
    for_each_cell(table, whole, address_of(cells), [](OwnerCell& cell) {
      cell.is_date = std::holds_alternative<double>(cell.value);
    });
  }
}

void mark_failed(OwnerTable& table, const Ref<css::uno::XInterface>& range) {
  const auto failed =
      as<css::sheet::XCellRangesQuery>(range)->queryFormulaCells(css::sheet::FormulaResult::ERROR);
  for (const CellRangeAddress& cells : failed->getRangeAddresses())
    for_each_cell(table, address_of(range), cells,
                  [](OwnerCell& cell) { cell.value = std::string(failed_entry); });
}

}  // namespace

std::optional<Selected> selected_in(const Ref<css::frame::XController>& controller) {
  const Ref<css::frame::XModel> model = controller->getModel();
  Ref<css::sheet::XSheetCellRange> range(model->getCurrentSelection(), css::uno::UNO_QUERY);
  if (!range.is()) return std::nullopt;
  const auto sheet = range->getSpreadsheet();
  CellRangeAddress area = address_of(range);
  if (area.StartColumn == area.EndColumn && area.StartRow == area.EndRow) {
    const auto cursor = sheet->createCursorByRange(range);
    cursor->collapseToCurrentRegion();
    area = address_of(cursor);
  }
  const CellRangeAddress used = used_area(sheet);
  area.EndColumn = std::min(area.EndColumn, used.EndColumn);
  area.EndRow = std::min(area.EndRow, used.EndRow);
  if (area.EndColumn < area.StartColumn || area.EndRow < area.StartRow) return std::nullopt;
  Selected selected;
  selected.range = as<css::sheet::XCellRangeAddressable>(
      sheet->getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow));
  selected.rows = area.EndRow - area.StartRow + 1;
  selected.sheet = office::from_office(as<css::container::XNamed>(sheet)->getName());
  return selected;
}

OwnerSheet read_sheet(const Selected& selected, const Ref<css::uno::XInterface>& document) {
  const CellRangeAddress area = selected.range->getRangeAddress();
  OwnerSheet read;
  read.sheet = selected.sheet;
  read.range =
      book::relative({static_cast<int>(area.StartColumn), static_cast<int>(area.StartRow)}) + ":" +
      book::relative({static_cast<int>(area.EndColumn), static_cast<int>(area.EndRow)});
  read.table.first_row = area.StartRow + 1;
  read.table.first_column = area.StartColumn;
  for (auto& cells : table_in(as<css::table::XCellRange>(selected.range))) {
    auto& row = read.table.rows.emplace_back();
    for (Entry& cell : cells) row.push_back({std::move(cell), false});
  }
  mark_dates(read.table, selected.range, document);
  mark_failed(read.table, selected.range);
  return read;
}

}  // namespace shimwright::commands
