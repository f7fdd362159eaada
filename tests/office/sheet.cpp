// SPDX-License-Identifier: MPL-2.0
#include "sheet.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XFunctionAccess.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <optional>

namespace shimwright::tests {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

std::optional<office::Office>& slot() {
  static std::optional<office::Office> office;
  return office;
}

css::beans::PropertyValue property(std::string_view name, const Any& value) {
  css::beans::PropertyValue made;
  made.Name = to_office(name);
  made.Value = value;
  return made;
}

Reference<css::lang::XComponent> open(std::string_view url) {
  const css::beans::PropertyValue hidden = property("Hidden", Any(true));
  Reference<css::lang::XComponent> document = the_office().desktop()->loadComponentFromURL(
      to_office(url), to_office("_blank"), 0, Sequence<css::beans::PropertyValue>(&hidden, 1));
  if (!document.is()) throw std::runtime_error("cannot open " + std::string(url));
  return document;
}

Reference<css::sheet::XSpreadsheet> first_sheet(const Reference<css::lang::XComponent>& document) {
  const Reference<css::sheet::XSpreadsheetDocument> book(document, UNO_QUERY_THROW);
  const Reference<css::container::XIndexAccess> sheets(book->getSheets(), UNO_QUERY_THROW);
  return Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(0), UNO_QUERY_THROW);
}

}  // namespace

office::Office& the_office() { return slot().value(); }
void start_office(const office::Settings& settings) { slot().emplace(settings); }
void end_office() { slot().reset(); }

Sheet::Sheet() : document_(open("private:factory/scalc")), sheet_(first_sheet(document_)) {}

Sheet::Sheet(const std::filesystem::path& book)
    : document_(open(office::url_of(book))), sheet_(first_sheet(document_)) {}

Sheet::~Sheet() {
  try {
    Reference<css::util::XCloseable>(document_, UNO_QUERY_THROW)->close(true);
  } catch (const css::uno::Exception&) {
    // the test has its verdict already
  }
}

Reference<css::table::XCell> Sheet::cell(std::string_view place) const {
  return sheet_->getCellRangeByName(to_office(place))->getCellByPosition(0, 0);
}

void Sheet::put(std::string_view place, double value) { cell(place)->setValue(value); }

void Sheet::put(std::string_view place, std::string_view text_or_formula) {
  cell(place)->setFormula(to_office(text_or_formula));
}

void Sheet::put_text(std::string_view place, std::string_view text) {
  Reference<css::text::XText>(cell(place), UNO_QUERY_THROW)->setString(to_office(text));
}

void Sheet::put_local(std::string_view place, std::string_view formula) {
  Reference<css::beans::XPropertySet>(cell(place), UNO_QUERY_THROW)
      ->setPropertyValue(to_office("FormulaLocal"), Any(to_office(formula)));
}

void Sheet::put_row(std::string_view first, const std::vector<std::string>& cells) {
  char column = first[0];
  for (const std::string& cell : cells) put(column++ + std::string(first.substr(1)), cell);
}

void Sheet::put_column(std::string_view first, const std::vector<double>& numbers) {
  const std::string column(first.substr(0, 1));
  int row = std::stoi(std::string(first.substr(1)));
  for (const double value : numbers) put(column + std::to_string(row++), value);
}

void Sheet::put_matrix(std::string_view range, std::string_view formula) {
  Reference<css::sheet::XArrayFormulaRange>(sheet_->getCellRangeByName(to_office(range)),
                                            UNO_QUERY_THROW)
      ->setArrayFormula(to_office(formula));
}

double Sheet::number(std::string_view place) const { return cell(place)->getValue(); }

std::string Sheet::text(std::string_view place) const {
  return from_office(Reference<css::text::XText>(cell(place), UNO_QUERY_THROW)->getString());
}

int Sheet::error(std::string_view place) const { return cell(place)->getError(); }

std::string Sheet::formula(std::string_view place) const {
  return from_office(cell(place)->getFormula());
}

std::vector<std::string> Sheet::texts(std::string_view range) const {
  const Reference<css::sheet::XCellRangeData> cells(sheet_->getCellRangeByName(to_office(range)),
                                                    UNO_QUERY_THROW);
  std::vector<std::string> found;
  for (const Sequence<Any>& row : cells->getDataArray())
    for (const Any& value : row) {
      rtl::OUString words;
      double figure = 0;
      if (value >>= words)
        found.push_back(from_office(words));
      else if (value >>= figure)
        found.push_back(from_office(rtl::OUString::number(figure)));
      else
        found.push_back("error");
    }
  return found;
}

std::string Sheet::scratch(std::string_view formula) {
  const std::string place = "ZZ" + std::to_string(++scratches_);
  put(place, formula);
  return place;
}

double Sheet::number_of(std::string_view formula) { return number(scratch(formula)); }

std::string Sheet::text_of(std::string_view formula) { return text(scratch(formula)); }

int Sheet::error_of(std::string_view formula) { return error(scratch(formula)); }

void Sheet::save(const std::filesystem::path& file, std::string_view filter) const {
  const css::beans::PropertyValue name = property("FilterName", Any(to_office(filter)));
  Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)
      ->storeToURL(to_office(office::url_of(file)), Sequence<css::beans::PropertyValue>(&name, 1));
}

void Sheet::recalculate() const {
  Reference<css::sheet::XCalculatable>(document_, UNO_QUERY_THROW)->calculateAll();
}

Any call(std::string_view name, const std::vector<Any>& arguments) {
  const Reference<css::sheet::XFunctionAccess> functions(
      the_office().service("com.sun.star.sheet.FunctionAccess"), UNO_QUERY_THROW);
  return functions->callFunction(
      to_office(name), Sequence<Any>(arguments.data(), static_cast<sal_Int32>(arguments.size())));
}

Any number(double value) { return Any(value); }
Any text(std::string_view value) { return Any(to_office(value)); }

Any column(const std::vector<Any>& values) {
  Sequence<Sequence<Any>> rows(static_cast<sal_Int32>(values.size()));
  auto* row = rows.getArray();
  for (const Any& value : values) *row++ = Sequence<Any>(&value, 1);
  return Any(rows);
}

}  // namespace shimwright::tests
