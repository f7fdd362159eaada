// SPDX-License-Identifier: MPL-2.0
#include "commands/service_book.hpp"

#include <algorithm>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaToken.hpp>
#include <com/sun/star/sheet/SingleReference.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XFormulaTokens.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include "core/entries/entry_row.hpp"
#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;

constexpr std::string_view gathered_in = "entries";

Entry entry_in(const css::uno::Any& cell) {
  double number = 0;
  rtl::OUString text;
  if (cell >>= number) return number;
  if ((cell >>= text) && !text.isEmpty()) return office::from_office(text);
  return {};
}

std::optional<sal_Int32> row_of(const EntryTable& table, std::string_view kind,
                                std::string_view name) {
  const auto found = std::ranges::find_if(table, [&](const std::vector<Entry>& row) {
    return row.size() > 2 && same_word(word_in(row[0]), kind) && same_word(word_in(row[1]), name);
  });
  if (found == table.end()) return std::nullopt;
  return static_cast<sal_Int32>(found - table.begin());
}

}  // namespace

EntryTable table_in(const Ref<css::table::XCellRange>& range) {
  EntryTable table;
  for (const auto& cells : as<css::sheet::XCellRangeData>(range)->getDataArray()) {
    auto& row = table.emplace_back();
    for (const css::uno::Any& cell : cells) row.push_back(entry_in(cell));
  }
  return table;
}

std::optional<ServiceBook> ServiceBook::in(const Document& document) {
  if (!document.is()) return std::nullopt;
  const auto names = as<css::container::XNameAccess>(
      as<css::beans::XPropertySet>(document)->getPropertyValue("NamedRanges"));
  const rtl::OUString name = to_office(gathered_in);
  if (!names->hasByName(name)) return std::nullopt;
  const auto range = as<css::sheet::XCellRangeReferrer>(names->getByName(name))->getReferredCells();
  if (!range.is()) return std::nullopt;
  EntryTable table = table_in(range);
  // Another document may use that name for something of its own.
  if (!row_of(table, "taken", "list")) return std::nullopt;
  return ServiceBook(document, range, std::move(table));
}

// The gathered cell is a formula that refers to one cell, that of the entry, by absolute
// references.
ServiceBook::Place ServiceBook::place_of(std::string_view kind, std::string_view name,
                                         int value) const {
  const auto row = row_of(entries_, kind, name);
  if (!row) throw css::uno::RuntimeException(to_office("the book has no such entry."));
  const auto copy = gathered_->getCellByPosition(2 + value, *row);
  css::sheet::SingleReference at;
  for (const css::sheet::FormulaToken& token : as<css::sheet::XFormulaTokens>(copy)->getTokens()) {
    if (!(token.Data >>= at)) continue;
    const auto sheets = as<css::container::XIndexAccess>(document_->getSheets());
    return {as<css::sheet::XSpreadsheet>(sheets->getByIndex(at.Sheet)),
            {static_cast<int>(at.Column), static_cast<int>(at.Row)}};
  }
  throw css::uno::RuntimeException(to_office("an entry of the book refers to no cell."));
}

void write(const ServiceBook::Place& place, const Entry& what) {
  const auto cell = place.sheet->getCellByPosition(place.at.column, place.at.row);
  if (const auto* number = std::get_if<double>(&what))
    cell->setValue(*number);
  else if (const auto* text = std::get_if<std::string>(&what); text != nullptr && !text->empty())
    as<css::text::XText>(cell)->setString(to_office(*text));
  else if (cell->getType() != css::table::CellContentType_EMPTY)
    clear(place.sheet, place.at);
}

void clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area) {
  namespace flag = css::sheet::CellFlags;
  as<css::sheet::XSheetOperation>(
      sheet->getCellRangeByPosition(area.from.column, area.from.row, area.to.column, area.to.row))
      ->clearContents(flag::VALUE | flag::DATETIME | flag::STRING | flag::FORMULA);
}

void print_down_to(const Ref<css::sheet::XSpreadsheet>& sheet, int row) {
  const auto areas = as<css::sheet::XPrintAreas>(sheet);
  auto printed = areas->getPrintAreas();
  if (printed.getLength() != 1) return;
  printed.getArray()[0].EndRow = row;
  areas->setPrintAreas(printed);
}

UndoStep::UndoStep(const ServiceBook::Document& document, std::string_view title)
    : manager_(as<css::document::XUndoManagerSupplier>(document)->getUndoManager()) {
  manager_->enterUndoContext(to_office(title));
}

UndoStep::~UndoStep() {
  if (!open_) return;
  try {
    manager_->leaveUndoContext();
    manager_->undo();
  } catch (const css::uno::Exception&) {
    // Nothing was written yet.
  }
}

void UndoStep::done() {
  open_ = false;
  manager_->leaveUndoContext();
}

bool Lock::unlock() {
  const auto protection = as<css::util::XProtectable>(sheet_);
  was_locked_ = protection->isProtected();
  if (!was_locked_) return true;
  try {
    protection->unprotect(rtl::OUString());
  } catch (const css::lang::IllegalArgumentException&) {
    return false;
  }
  return !protection->isProtected();
}

void Lock::relock() {
  if (was_locked_) as<css::util::XProtectable>(sheet_)->protect(rtl::OUString());
}

}  // namespace shimwright::commands
