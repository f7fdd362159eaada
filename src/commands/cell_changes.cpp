// SPDX-License-Identifier: MPL-2.0
#include "commands/cell_changes.hpp"

#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XText.hpp>
#include <optional>
#include <variant>

namespace shimwright::commands {
namespace {

using book::as;
using book::At;
using book::to_office;

constexpr sal_Int32 contents = css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME |
                               css::sheet::CellFlags::STRING | css::sheet::CellFlags::FORMULA;

Ref<css::table::XCellRange> range_of(const Ref<css::sheet::XSpreadsheet>& sheet,
                                     const book::Area& area) {
  return sheet->getCellRangeByPosition(area.from.column, area.from.row, area.to.column,
                                       area.to.row);
}

using Content = std::variant<std::monostate, double, rtl::OUString>;

// None of a formula, which is never what is to be written.
std::optional<Content> content_of(const Ref<css::table::XCell>& cell) {
  switch (cell->getType()) {
    case css::table::CellContentType_VALUE:
      return cell->getValue();
    case css::table::CellContentType_TEXT:
      return as<css::text::XText>(cell)->getString();
    case css::table::CellContentType_FORMULA:
      return std::nullopt;
    default:
      return Content();
  }
}

void write(const Ref<css::sheet::XSpreadsheet>& sheet, At at, const Content& what) {
  const auto cell = sheet->getCellByPosition(at.column, at.row);
  if (const auto* number = std::get_if<double>(&what))
    cell->setValue(*number);
  else if (const auto* text = std::get_if<rtl::OUString>(&what))
    as<css::text::XText>(cell)->setString(*text);
  else
    // Leaves it blank, and is sooner done than clearing it.
    as<css::text::XText>(cell)->setString(rtl::OUString());
}

void change(const Ref<css::sheet::XSpreadsheet>& sheet, At at, const Content& what) {
  if (content_of(sheet->getCellByPosition(at.column, at.row)) != what) write(sheet, at, what);
}

}  // namespace

void put_entry(const ServiceBook::Place& place, const Entry& what) {
  Content content;
  if (const auto* number = std::get_if<double>(&what))
    content = *number;
  else if (const auto* text = std::get_if<std::string>(&what); text != nullptr && !text->empty())
    content = to_office(*text);
  change(place.sheet, place.at, content);
}

void clear_entries(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area) {
  const auto filled =
      as<css::sheet::XCellRangesQuery>(range_of(sheet, area))->queryContentCells(contents);
  for (const auto& cells : filled->getRangeAddresses())
    for (sal_Int32 row = cells.StartRow; row <= cells.EndRow; ++row)
      for (sal_Int32 column = cells.StartColumn; column <= cells.EndColumn; ++column)
        change(sheet, {static_cast<int>(column), static_cast<int>(row)}, {});
}

void fill_entries(const ServiceBook::Place& first, const EntryTable& rows) {
  At at = first.at;
  for (const auto& entries : rows) {
    At cell = at;
    for (const Entry& entry : entries) {
      put_entry({first.sheet, cell}, entry);
      cell = book::right_of(cell);
    }
    at = book::below(at);
  }
}

}  // namespace shimwright::commands
