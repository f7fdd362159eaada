// SPDX-License-Identifier: MPL-2.0
//
// Works the demo book out in a real office with the built extension, for the `try` command: prints
// the plan and the order list, and leaves the book, a PDF and a profile that has the extension.
//   try_demo EXTENSION.oxt DEMO.ods FOLDER
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cstdlib>
#include <filesystem>
#include <iomanip>
#include <iostream>
#include <string>
#include <vector>

#include "book/office/uno.hpp"
#include "book/office/views.hpp"
#include "book/places.hpp"
#include "book/workings.hpp"
#include "office/office.hpp"

namespace {

namespace fs = std::filesystem;
namespace css = com::sun::star;
namespace book = shimwright::book;
namespace office = shimwright::office;
using book::as;
using book::Ref;
using book::WorkingsMap;
using office::from_office;
using office::to_office;

css::beans::PropertyValue property(std::string_view name, const css::uno::Any& value) {
  css::beans::PropertyValue one;
  one.Name = to_office(name);
  one.Value = value;
  return one;
}

// The answers of the book, as the Workings sheet shows them.
class Answers {
 public:
  explicit Answers(const Ref<css::sheet::XSpreadsheetDocument>& document)
      : sheet_(as<css::table::XCellRange>(
            document->getSheets()->getByName(to_office(book::sheet_name::workings)))) {}

  std::string at(book::At at) const {
    const auto cell = sheet_->getCellByPosition(at.column, at.row);
    return cell->getError() != 0 ? "" : from_office(as<css::text::XText>(cell)->getString());
  }

 private:
  Ref<css::table::XCellRange> sheet_;
};

std::string padded(std::string text, std::size_t width) {
  if (text.size() < width) text.append(width - text.size(), ' ');
  return text;
}

void print_plan(const Answers& answers, const book::Places& places, const WorkingsMap& map) {
  struct Column {
    std::string_view title;
    WorkingsMap::Valve column;
    std::size_t width;
  };
  const std::vector<Column> columns{
      {"valve", WorkingsMap::name, 9},   {"gap", WorkingsMap::clearance, 8},
      {"shim", WorkingsMap::shim, 8},    {"is", WorkingsMap::now, 8},
      {"do", WorkingsMap::action, 8},    {"from", WorkingsMap::from, 9},
      {"fit", WorkingsMap::size, 8},     {"after", WorkingsMap::after, 8},
      {"will be", WorkingsMap::then, 8},
  };
  std::cout << "\nThe plan (lengths in mm)\n  ";
  for (const Column& column : columns) std::cout << padded(std::string(column.title), column.width);
  for (int valve = 0; valve < places.count(); ++valve) {
    std::cout << "\n  ";
    for (const Column& column : columns)
      std::cout << padded(answers.at(map.at(valve, column.column)), column.width);
  }
  std::cout << '\n';
}

void print_order(const Answers& answers, const book::Places& places, const WorkingsMap& map) {
  const auto value = [&](int column, int row) {
    const book::At first = map.order(column).from;
    return answers.at({first.column, first.row + row});
  };
  std::cout << "\nTo order\n";
  for (int row = 0; row < places.count(); ++row) {
    if (value(WorkingsMap::order_count, row).empty()) break;
    const std::string series = value(WorkingsMap::order_series, row);
    std::cout << "  " << value(WorkingsMap::order_count, row) << " of "
              << value(WorkingsMap::order_size, row) << " mm"
              << (series.empty() ? "" : ", series " + series) << ", at "
              << value(WorkingsMap::order_price, row)
              << " each: " << value(WorkingsMap::order_cost, row) << '\n';
  }
}

void save(const Ref<css::sheet::XSpreadsheetDocument>& document, const fs::path& file,
          std::string_view filter) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how[0] = property("FilterName", css::uno::Any(to_office(filter)));
  as<css::frame::XStorable>(document)->storeToURL(to_office(office::url_of(file)), how);
}

void try_demo(const fs::path& extension, const fs::path& demo, const fs::path& folder) {
  office::Profile profile;
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
  const WorkingsMap map(places.count());
  const Answers answers(document);
  print_plan(answers, places, map);
  print_order(answers, places, map);

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
