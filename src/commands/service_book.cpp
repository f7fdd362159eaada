// SPDX-License-Identifier: MPL-2.0
#include "commands/service_book.hpp"

#include <algorithm>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/sheet/FormulaToken.hpp>
#include <com/sun/star/sheet/SingleReference.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XFormulaTokens.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include "core/entries/entry_row.hpp"
#include "core/service/entry_value.hpp"
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
  auto [own_kind, own_value] = held_as(kind, value);
  auto row = row_of(entries_, own_kind, name);
  // In an earlier book a gap stands beside the other values of its valve.
  if (!row) {
    own_value = value;
    row = row_of(entries_, kind, name);
  }
  if (!row) throw css::uno::RuntimeException(to_office("the book has no such entry."));
  const auto copy = gathered_->getCellByPosition(2 + own_value, *row);
  css::sheet::SingleReference at;
  for (const css::sheet::FormulaToken& token : as<css::sheet::XFormulaTokens>(copy)->getTokens()) {
    if (!(token.Data >>= at)) continue;
    const auto sheets = as<css::container::XIndexAccess>(document_->getSheets());
    return {as<css::sheet::XSpreadsheet>(sheets->getByIndex(at.Sheet)),
            {static_cast<int>(at.Column), static_cast<int>(at.Row)}};
  }
  throw css::uno::RuntimeException(to_office("an entry of the book refers to no cell."));
}

void print_down_to(const Ref<css::sheet::XSpreadsheet>& sheet, int row) {
  const auto areas = as<css::sheet::XPrintAreas>(sheet);
  auto printed = areas->getPrintAreas();
  if (printed.getLength() != 1) return;
  printed.getArray()[0].EndRow = row;
  areas->setPrintAreas(printed);
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
