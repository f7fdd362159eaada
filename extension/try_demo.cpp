// SPDX-License-Identifier: MPL-2.0
//
// Works the demo book out in a real office with the built extension, for the `try` command: prints
// the plan and the order list, and leaves the book, a PDF and a profile that has the extension.
//   try_demo EXTENSION.oxt DEMO.ods FOLDER
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cstdlib>
#include <filesystem>
#include <iomanip>
#include <iostream>
#include <string>
#include <vector>

#include "book/book.hpp"
#include "book/gathered.hpp"
#include "book/office/uno.hpp"
#include "book/office/views.hpp"
#include "book/places.hpp"
#include "core/service/shown_table.hpp"
#include "office/office.hpp"

namespace {

namespace fs = std::filesystem;
namespace css = com::sun::star;
namespace book = shimwright::book;
namespace office = shimwright::office;
using book::as;
using book::Ref;
using office::from_office;
using office::to_office;

css::beans::PropertyValue property(std::string_view name, const css::uno::Any& value) {
  css::beans::PropertyValue one;
  one.Name = to_office(name);
  one.Value = value;
  return one;
}

// A table of what the book shows, as its hidden sheet holds it.
shimwright::ShownTable table_told(const Ref<css::sheet::XSpreadsheetDocument>& document,
                                  const book::Places& places, std::string_view table) {
  const auto sheet = as<css::table::XCellRange>(
      document->getSheets()->getByName(to_office(book::sheet_name::workings)));
  const book::At at = book::Gathered(book::descriptions(places)).tells(table);
  const auto cell = sheet->getCellByPosition(at.column, at.row);
  return shimwright::table_in(from_office(as<css::text::XText>(cell)->getString()));
}

std::string padded(std::string text, std::size_t width) {
  if (text.size() < width) text.append(width - text.size(), ' ');
  return text;
}

void print_plan(const shimwright::ShownTable& valves) {
  struct Column {
    std::string_view title;
    std::string_view name;
    std::size_t width;
  };
  constexpr Column columns[] = {
      {"valve", "name", 9}, {"gap", "gap", 8},     {"shim", "shim", 8},
      {"is", "state", 8},   {"do", "do", 9},       {"from", "from", 21},
      {"fit", "fit", 8},    {"after", "after", 8}, {"will be", "then state", 8}};
  std::cout << "\nThe plan (lengths in mm)\n  ";
  for (const Column& column : columns) std::cout << padded(std::string(column.title), column.width);
  for (std::size_t row = 1; row <= valves.rows.size(); ++row) {
    std::cout << "\n  ";
    for (const Column& column : columns)
      std::cout << padded(valves.at(column.name, row), column.width);
  }
  std::cout << '\n';
}

void print_order(const shimwright::ShownTable& order) {
  std::cout << "\nTo order\n";
  for (std::size_t row = 1; row <= order.rows.size() && !order.at("count", row).empty(); ++row) {
    const std::string& series = order.at("series", row);
    std::cout << "  " << order.at("count", row) << " of " << order.at("size", row) << " mm"
              << (series.empty() ? "" : ", series " + series) << ", at " << order.at("price", row)
              << " each: " << order.at("cost", row) << '\n';
  }
}

void save(const Ref<css::sheet::XSpreadsheetDocument>& document, const fs::path& file,
          std::string_view filter) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how[0] = property("FilterName", css::uno::Any(to_office(filter)));
  as<css::frame::XStorable>(document)->storeToURL(to_office(office::url_of(file)), how);
}

void try_demo(const fs::path& extension, const fs::path& demo, const fs::path& folder) {
  office::Profile profile("");  // it opens as its user's own LibreOffice does
  profile.install(extension);
  fs::copy(profile.folder() / "profile", folder / "profile", fs::copy_options::recursive);

  std::cout << "Starting LibreOffice with the extension installed ..." << std::endl;
  office::Settings settings;
  settings.extension = extension;
  const office::Office office(settings);
  css::uno::Sequence<css::beans::PropertyValue> hidden(1);
  hidden[0] = property("Hidden", css::uno::Any(true));
  const auto document = as<css::sheet::XSpreadsheetDocument>(office.desktop()->loadComponentFromURL(
      to_office(office::url_of(demo)), to_office("_blank"), 0, hidden));
  as<css::sheet::XCalculatable>(document)->calculateAll();

  const book::Places places(shimwright::inline_four());
  print_plan(table_told(document, places, "valves"));
  print_order(table_told(document, places, "order"));

  book::show(document);
  save(document, folder / "demo.ods", "calc8");
  save(document, folder / "demo.pdf", "calc_pdf_Export");
  as<css::util::XCloseable>(document)->close(true);
}

}  // namespace

int main(int count, char** arguments) try {
  if (count != 4) {
    std::cerr << "usage: try_demo EXTENSION.oxt DEMO.ods FOLDER\n";
    return EXIT_FAILURE;
  }
  try_demo(arguments[1], arguments[2], arguments[3]);
  return EXIT_SUCCESS;
} catch (const css::uno::Exception& trouble) {
  std::cerr << "LibreOffice: " << from_office(trouble.Message) << '\n';
  return EXIT_FAILURE;
} catch (const std::exception& trouble) {
  std::cerr << trouble.what() << '\n';
  return EXIT_FAILURE;
}
