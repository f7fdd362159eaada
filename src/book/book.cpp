// SPDX-License-Identifier: MPL-2.0
#include "book/book.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/XComponentLoader.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/util/XModifiable.hpp>

#include <functional>
#include <utility>
#include <vector>

#include "book/gathered.hpp"
#include "book/layouter.hpp"
#include "book/look/styles.hpp"
#include "book/office/chart.hpp"
#include "book/office/views.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {

namespace {

using Document = Ref<css::sheet::XSpreadsheetDocument>;

Document new_document(const Ref<css::uno::XComponentContext>& context) {
  const auto desktop =
      as<css::frame::XComponentLoader>(context->getServiceManager()->createInstanceWithContext(
          "com.sun.star.frame.Desktop", context));
  css::uno::Sequence<css::beans::PropertyValue> how(2);
  how.getArray()[0].Name = "Hidden";
  how.getArray()[0].Value <<= true;
  // As the user's settings say; by default a program's documents may run none, and LibreOffice 25.2
  // tells so in a bar over every new book.
  how.getArray()[1].Name = "MacroExecutionMode";
  how.getArray()[1].Value <<= css::document::MacroExecMode::USE_CONFIG;
  return as<css::sheet::XSpreadsheetDocument>(
      desktop->loadComponentFromURL("private:factory/scalc", "_blank", 0, how));
}

void make_sheets(const Document& book, const std::vector<SheetDescription>& described) {
  const auto sheets = book->getSheets();
  // The user's own template for new spreadsheets may have a sheet of one of our names.
  auto old = sheets->getElementNames();
  for (rtl::OUString& name : old) {
    const auto sheet = as<css::container::XNamed>(sheets->getByName(name));
    sheet->setName("old " + name);
    name = sheet->getName();
  }
  sal_Int16 position = 0;
  for (const SheetDescription& each : described)
    sheets->insertNewByName(to_office(each.name), position++);
  sheets->insertNewByName(to_office(sheet_name::workings), position);
  for (const rtl::OUString& name : old) sheets->removeByName(name);
}

// A gap as this office writes it, of a document that is still blank.
std::string number_here(const Document& blank) {
  const auto sheets = as<css::container::XIndexAccess>(blank->getSheets());
  const auto cell = as<css::table::XCellRange>(sheets->getByIndex(0))->getCellByPosition(0, 0);
  cell->setFormula("=24/100&\"\"");
  return office::from_office(as<css::text::XText>(cell)->getString());
}

using Names = std::vector<std::pair<std::string, std::string>>;

void name_ranges(const Document& book, const Names& ranges) {
  const auto names = as<css::sheet::XNamedRanges>(
      as<css::beans::XPropertySet>(book)->getPropertyValue("NamedRanges"));
  for (const auto& [name, range] : ranges)
    names->addNewByName(to_office(name), to_office(range), css::table::CellAddress(), 0);
}

void set_properties(const Document& book, std::string_view title) {
  const auto properties =
      as<css::document::XDocumentPropertiesSupplier>(book)->getDocumentProperties();
  properties->setTitle(to_office(title));
  properties->setSubject("Valve clearances and shims");
  properties->setAuthor(rtl::OUString());
  properties->setModifiedBy(rtl::OUString());
}

void lay_out_sheet(const Ref<css::uno::XComponentContext>& context, const Document& book,
                   const SheetDescription& description, const Gathered& gathered,
                   std::string_view number, const std::function<void(Sheet&)>& draw) {
  Sheet sheet(book, description.name);
  sheet.paper();
  lay_out(sheet, description, gathered, number);
  draw(sheet);
  for (const BandChart& chart : description.charts) add_chart(context, sheet, chart, gathered);
  finish(sheet, description);
}

void lay_out_book(const Ref<css::uno::XComponentContext>& context, const Document& book,
                  const EngineLayout& layout, std::string_view title, std::string_view number) {
  const Places places(layout);
  const auto calculation = as<css::sheet::XCalculatable>(book);
  calculation->enableAutomaticCalculation(false);
  as<css::frame::XModel>(book)->lockControllers();
  // For Undo the office would copy every conditional format each time one is added; and it would
  // fit the height of a row at each cell set there, though the descriptions give all heights.
  set(book, "IsUndoEnabled", false);
  set(book, "IsAdjustHeightEnabled", false);
  style::make_styles(book);
  const std::vector<SheetDescription> described = descriptions(places);
  make_sheets(book, described);
  const Gathered gathered(described);
  const SheetDescription entries = gathered.sheet();
  name_ranges(book, gathered.names());
  for (const SheetDescription& each : described)
    for (const NamedArea& named : each.names)
      name_ranges(book, {{named.name, on(each.name, named.where)}});
  for (std::size_t i = 0; i < described.size(); ++i)
    lay_out_sheet(context, book, described[i], gathered, number, [&](Sheet& sheet) {
      if (sheet_plans[i].draw != nullptr) sheet_plans[i].draw(sheet, places);
    });
  lay_out_sheet(context, book, entries, gathered, number, [](Sheet&) {});
  as<css::frame::XModel>(book)->unlockControllers();
  std::vector<SheetView> views;
  for (const SheetDescription& each : described)
    views.push_back({each.name, each.cursor, each.frozen_rows});
  views.push_back({sheet_name::workings, entries.cursor, entries.frozen_rows});
  set_views(book, views);
  Sheet(book, entries.name).hide();
  set_properties(book, title);
  calculation->enableAutomaticCalculation(true);
  calculation->calculateAll();
  set(book, "IsAdjustHeightEnabled", true);
  set(book, "IsUndoEnabled", true);
  as<css::util::XModifiable>(book)->setModified(false);
}

}  // namespace

std::vector<SheetDescription> descriptions(const Places& places) {
  std::vector<SheetDescription> described;
  for (const SheetPlan& plan : sheet_plans) described.push_back(plan.describe(places));
  return described;
}

Document build_book(const Ref<css::uno::XComponentContext>& context, const EngineLayout& layout,
                    std::string_view title, For whom) {
  const Document book = new_document(context);
  try {
    const std::string number = whom == For::this_office ? number_here(book) : std::string();
    lay_out_book(context, book, layout, title, number);
  } catch (...) {
    discard(book);
    throw;
  }
  return book;
}

void discard(const Document& book) noexcept {
  try {
    as<css::util::XModifiable>(book)->setModified(false);
    as<css::util::XCloseable>(book)->close(true);
  } catch (const css::uno::Exception&) {
    // It is closed already.
  }
}

}  // namespace shimwright::book
