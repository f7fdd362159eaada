// SPDX-License-Identifier: MPL-2.0
#include "commands/cell_changes.hpp"

#include <algorithm>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XText.hpp>
#include <ranges>

namespace shimwright::commands {
namespace {

using book::as;
using book::At;
using book::to_office;

// A comment in the cell stays.
constexpr sal_Int32 contents = css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME |
                               css::sheet::CellFlags::STRING | css::sheet::CellFlags::FORMULA;

Ref<css::table::XCellRange> range_of(const Ref<css::sheet::XSpreadsheet>& sheet,
                                     const book::Area& area) {
  return sheet->getCellRangeByPosition(area.from.column, area.from.row, area.to.column,
                                       area.to.row);
}

css::uno::Any cell_of(const Entry& entry) {
  if (const auto* number = std::get_if<double>(&entry)) return css::uno::Any(*number);
  if (const auto* text = std::get_if<std::string>(&entry)) return css::uno::Any(to_office(*text));
  return css::uno::Any(rtl::OUString());  // leaves the cell blank; a void would be #N/A
}

}  // namespace

CellChanges::Content CellChanges::content_of(const Ref<css::table::XCell>& cell) {
  switch (cell->getType()) {
    case css::table::CellContentType_VALUE:
      return cell->getValue();
    case css::table::CellContentType_TEXT:
      return as<css::text::XText>(cell)->getString();
    case css::table::CellContentType_FORMULA:
      return Formula{cell->getFormula()};
    default:
      return {};
  }
}

void CellChanges::write(const Ref<css::sheet::XSpreadsheet>& sheet, At at, const Content& what) {
  const auto cell = sheet->getCellByPosition(at.column, at.row);
  if (const auto* number = std::get_if<double>(&what))
    cell->setValue(*number);
  else if (const auto* text = std::get_if<rtl::OUString>(&what))
    as<css::text::XText>(cell)->setString(*text);
  else if (const auto* formula = std::get_if<Formula>(&what))
    cell->setFormula(formula->written);
  else
    // Leaves it blank, and is sooner done than clearing it.
    as<css::text::XText>(cell)->setString(rtl::OUString());
}

void CellChanges::write(const Ref<css::sheet::XSpreadsheet>& sheet, const Filled& rows) {
  as<css::sheet::XCellRangeData>(range_of(sheet, rows.area))->setDataArray(rows.rows);
}

std::size_t CellChanges::numbered(const Ref<css::sheet::XSpreadsheet>& sheet) {
  const rtl::OUString name = as<css::container::XNamed>(sheet)->getName();
  const auto known = std::ranges::find(sheets_, name);
  const auto number = static_cast<std::size_t>(known - sheets_.begin());
  if (known == sheets_.end()) sheets_.push_back(name);
  return number;
}

void CellChanges::change(const Ref<css::sheet::XSpreadsheet>& sheet, At at, Content what) {
  Content before = content_of(sheet->getCellByPosition(at.column, at.row));
  if (before == what) return;
  write(sheet, at, what);
  changes_.emplace_back(Change{numbered(sheet), at, std::move(before), std::move(what)});
}

void CellChanges::put(const ServiceBook::Place& place, const Entry& what) {
  Content content;
  if (const auto* number = std::get_if<double>(&what))
    content = *number;
  else if (const auto* text = std::get_if<std::string>(&what); text != nullptr && !text->empty())
    content = to_office(*text);
  change(place.sheet, place.at, std::move(content));
}

void CellChanges::clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area) {
  const auto filled =
      as<css::sheet::XCellRangesQuery>(range_of(sheet, area))->queryContentCells(contents);
  for (const auto& cells : filled->getRangeAddresses())
    for (sal_Int32 row = cells.StartRow; row <= cells.EndRow; ++row)
      for (sal_Int32 column = cells.StartColumn; column <= cells.EndColumn; ++column)
        change(sheet, {static_cast<int>(column), static_cast<int>(row)}, {});
}

void CellChanges::fill(const ServiceBook::Place& first, const EntryTable& rows) {
  if (rows.empty()) return;
  Filled filled{.sheet = numbered(first.sheet),
                .area = book::block(first.at, static_cast<int>(rows.front().size()),
                                    static_cast<int>(rows.size())),
                .rows = {}};
  filled.rows.realloc(static_cast<sal_Int32>(rows.size()));
  auto* row = filled.rows.getArray();
  for (const auto& entries : rows) {
    row->realloc(static_cast<sal_Int32>(entries.size()));
    std::ranges::transform(entries, row->getArray(), cell_of);
    ++row;
  }
  write(first.sheet, filled);
  changes_.emplace_back(std::move(filled));
}

void CellChanges::undo(const ServiceBook::Document& document) const {
  std::vector<Ref<css::sheet::XSpreadsheet>> sheets;
  for (const rtl::OUString& name : sheets_)
    sheets.emplace_back(document->getSheets()->getByName(name), css::uno::UNO_QUERY_THROW);
  for (const One& one : std::views::reverse(changes_)) {
    if (const auto* filled = std::get_if<Filled>(&one)) {
      const auto range = range_of(sheets[filled->sheet], filled->area);
      as<css::sheet::XSheetOperation>(range)->clearContents(contents);
    } else {
      const Change& change = std::get<Change>(one);
      write(sheets[change.sheet], change.at, change.before);
    }
  }
}

void CellChanges::redo(const ServiceBook::Document& document) const {
  std::vector<Ref<css::sheet::XSpreadsheet>> sheets;
  for (const rtl::OUString& name : sheets_)
    sheets.emplace_back(document->getSheets()->getByName(name), css::uno::UNO_QUERY_THROW);
  for (const One& one : changes_) {
    if (const auto* filled = std::get_if<Filled>(&one)) {
      write(sheets[filled->sheet], *filled);
    } else {
      const Change& change = std::get<Change>(one);
      write(sheets[change.sheet], change.at, change.after);
    }
  }
}

}  // namespace shimwright::commands
