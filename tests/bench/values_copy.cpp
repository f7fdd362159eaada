// SPDX-License-Identifier: MPL-2.0
#include "values_copy.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSheetOperation.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <filesystem>
#include <vector>

#include "book/area.hpp"

namespace shimwright::bench {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using book::to_office;
using office::from_office;
using Row = css::uno::Sequence<css::uno::Any>;
using Table = css::uno::Sequence<Row>;

struct Used {
  std::string name;
  Ref<css::sheet::XSpreadsheet> sheet;
  Ref<css::table::XCellRange> area;
};

std::vector<Used> used_areas(const Document& book) {
  std::vector<Used> areas;
  const auto sheets = as<css::container::XNameAccess>(book->getSheets());
  for (const rtl::OUString& name : sheets->getElementNames()) {
    const auto sheet = as<css::sheet::XSpreadsheet>(sheets->getByName(name));
    const auto cursor = sheet->createCursor();
    as<css::sheet::XUsedAreaCursor>(cursor)->gotoStartOfUsedArea(false);
    as<css::sheet::XUsedAreaCursor>(cursor)->gotoEndOfUsedArea(true);
    areas.push_back({from_office(name), sheet, as<css::table::XCellRange>(cursor)});
  }
  return areas;
}

// A blank is what a formula that came to empty text leaves behind.
bool same(const css::uno::Any& ours, const css::uno::Any& theirs) {
  const auto blank = [](const css::uno::Any& value) {
    return !value.hasValue() || value == css::uno::Any(rtl::OUString());
  };
  return ours == theirs || (blank(ours) && blank(theirs));
}

std::string told(const css::uno::Any& value) {
  double number = 0;
  rtl::OUString text;
  if (value >>= number) return std::to_string(number);
  value >>= text;
  return from_office(text);
}

}  // namespace

Document values_copy(const office::Office& office, const Document& book) {
  const std::string url = office::url_of(office.profile().folder() / "copy.ods");
  as<css::frame::XStorable>(book)->storeToURL(to_office(url), {});
  css::uno::Sequence<css::beans::PropertyValue> hidden(1);
  hidden.getArray()[0].Name = "Hidden";
  hidden.getArray()[0].Value <<= true;
  const auto copy = as<css::sheet::XSpreadsheetDocument>(
      office.desktop()->loadComponentFromURL(to_office(url), "_blank", 0, hidden));
  for (const Used& from : used_areas(book)) {
    const auto sheets = as<css::container::XNameAccess>(copy->getSheets());
    const auto sheet = as<css::sheet::XSpreadsheet>(sheets->getByName(to_office(from.name)));
    as<css::util::XProtectable>(sheet)->unprotect({});
    namespace flags = css::sheet::CellFlags;
    as<css::sheet::XSheetOperation>(sheet)->clearContents(flags::VALUE | flags::DATETIME |
                                                          flags::STRING | flags::FORMULA);
    const auto at = as<css::sheet::XCellRangeAddressable>(from.area)->getRangeAddress();
    const auto area =
        sheet->getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
    as<css::sheet::XCellRangeData>(area)->setDataArray(
        as<css::sheet::XCellRangeData>(from.area)->getDataArray());
    as<css::util::XProtectable>(sheet)->protect({});
  }
  return copy;
}

std::string difference(const Document& book, const Document& copy) {
  for (const Used& used : used_areas(book)) {
    const auto at = as<css::sheet::XCellRangeAddressable>(used.area)->getRangeAddress();
    const auto sheet = as<css::sheet::XSpreadsheet>(
        as<css::container::XNameAccess>(copy->getSheets())->getByName(to_office(used.name)));
    const Table ours = as<css::sheet::XCellRangeData>(used.area)->getDataArray();
    const Table theirs =
        as<css::sheet::XCellRangeData>(
            sheet->getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow))
            ->getDataArray();
    for (sal_Int32 r = 0; r < ours.getLength(); ++r)
      for (sal_Int32 c = 0; c < ours[r].getLength(); ++c)
        if (!same(ours[r][c], theirs[r][c]))
          return book::on(used.name, book::At{at.StartColumn + c, at.StartRow + r}) + ": \"" +
                 told(ours[r][c]) + "\" and \"" + told(theirs[r][c]) + "\"";
  }
  return {};
}

std::size_t formulas_in(const Document& book) {
  namespace result = css::sheet::FormulaResult;
  std::size_t count = 0;
  for (const Used& used : used_areas(book)) {
    const auto found = as<css::sheet::XCellRangesQuery>(used.sheet)
                           ->queryFormulaCells(result::VALUE | result::STRING | result::ERROR);
    for (const auto& area : found->getRangeAddresses())
      count += static_cast<std::size_t>((area.EndColumn - area.StartColumn + 1) *
                                        (area.EndRow - area.StartRow + 1));
  }
  return count;
}

}  // namespace shimwright::bench
