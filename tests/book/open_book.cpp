// SPDX-License-Identifier: MPL-2.0
#include "open_book.hpp"

#include <unistd.h>

#include <algorithm>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include "book/gathered.hpp"
#include "builder/builder.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using css::uno::Any;
using office::from_office;
using office::to_office;

constexpr At scratch{60, 900};  // beyond every sheet's paper

css::beans::PropertyValue property(std::string_view name, const Any& value) {
  css::beans::PropertyValue made;
  made.Name = to_office(name);
  made.Value = value;
  return made;
}

// The filled cells of a text with commas, row by row.
std::vector<std::pair<At, std::string>> cells_in(std::string_view csv) {
  std::vector<std::pair<At, std::string>> cells;
  At at{0, 0};
  std::string text;
  bool quoted = false;
  const auto ends = [&] {
    if (!text.empty()) cells.emplace_back(at, std::move(text));
    text.clear();
  };
  for (std::size_t i = 0; i < csv.size(); ++i) {
    const char c = csv[i];
    if (c == '"' && quoted && csv.substr(i + 1).starts_with('"')) {
      text += csv[++i];
    } else if (c == '"') {
      quoted = !quoted;
    } else if (quoted || (c != ',' && c != '\n')) {
      text += c;
    } else {
      ends();
      at = c == ',' ? At{at.column + 1, at.row} : At{0, at.row + 1};
    }
  }
  ends();
  return cells;
}

std::string place_of(std::string_view sheet, At at) { return book::on(sheet, at); }

}  // namespace

OpenBook::OpenBook(const office::Office& office, const std::filesystem::path& file) {
  const css::beans::PropertyValue hidden = property("Hidden", Any(true));
  const auto loaded = office.desktop()->loadComponentFromURL(
      to_office(office::url_of(own_copy(office, file))), to_office("_blank"), 0,
      css::uno::Sequence<css::beans::PropertyValue>(&hidden, 1));
  if (!loaded.is()) throw std::runtime_error("cannot open " + file.string());
  document_ = as<css::sheet::XSpreadsheetDocument>(loaded);
}

OpenBook::OpenBook(const office::Office& office, const EngineLayout& layout)
    : document_(builder::Builder(office).build(layout, layout.name)) {}

OpenBook::~OpenBook() {
  try {
    as<css::util::XCloseable>(document_)->close(true);
  } catch (const css::uno::Exception&) {
    // the test has its verdict already
  }
}

Ref<css::sheet::XSpreadsheet> OpenBook::sheet(std::string_view name) const {
  const auto known = sheets_.find(name);
  if (known != sheets_.end()) return known->second;
  const auto sheet =
      as<css::sheet::XSpreadsheet>(document_->getSheets()->getByName(to_office(name)));
  sheets_.emplace(name, sheet);
  return sheet;
}

Ref<css::table::XCell> OpenBook::cell(std::string_view name, At at) const {
  return sheet(name)->getCellByPosition(at.column, at.row);
}

Ref<css::table::XCell> OpenBook::unlocked_cell(std::string_view name, At at) const {
  if (locked(name, at)) throw std::logic_error("locked: " + place_of(name, at));
  return cell(name, at);
}

void OpenBook::type(std::string_view name, At at, double number) {
  unlocked_cell(name, at)->setValue(number);
}

void OpenBook::type(std::string_view name, At at, std::string_view text) {
  as<css::text::XText>(unlocked_cell(name, at))->setString(to_office(text));
}

void OpenBook::strike(std::string_view name, At at, std::string_view keys) {
  book::set(unlocked_cell(name, at), "FormulaLocal", to_office(keys));
}

void OpenBook::clear(std::string_view name, At at) {
  unlocked_cell(name, at)->setFormula(rtl::OUString());
}

bool OpenBook::locked(std::string_view name, At at) const {
  const auto properties = as<css::beans::XPropertySet>(cell(name, at));
  return properties->getPropertyValue("CellProtection").get<css::util::CellProtection>().IsLocked;
}

std::string OpenBook::shown(std::string_view name, At at) const {
  return from_office(as<css::text::XText>(cell(name, at))->getString());
}

double OpenBook::number(std::string_view name, At at) const { return cell(name, at)->getValue(); }

int OpenBook::error(std::string_view name, At at) const { return cell(name, at)->getError(); }

std::string OpenBook::formula(std::string_view name, At at) const {
  return from_office(cell(name, at)->getFormula());
}

// By one export of the sheet: asked one by one, cells cost most of the time of many a test.
std::vector<std::pair<At, std::string>> OpenBook::texts(std::string_view name) const {
  const auto number = as<css::sheet::XCellRangeAddressable>(sheet(name))->getRangeAddress().Sheet;
  const std::string stem = "shimwright-texts-" + std::to_string(getpid());
  const auto folder = std::filesystem::temp_directory_path();
  // Commas, quotes, UTF-8, and numbers as they are displayed; the sheet counts from 1.
  css::uno::Sequence<css::beans::PropertyValue> how(2);
  how[0] = property("FilterName", Any(to_office("Text - txt - csv (StarCalc)")));
  how[1] = property("FilterOptions", Any(to_office("44,34,76,1,,0,false,true,true,false,false," +
                                                   std::to_string(number + 1))));
  as<css::frame::XStorable>(document_)->storeToURL(
      to_office(office::url_of(folder / (stem + ".csv"))), how);
  // The office adds the sheet's name to the file's.
  const auto file = folder / (stem + "-" + std::string(name) + ".csv");
  std::ifstream in(file, std::ios::binary);
  if (!in) throw std::runtime_error("no texts of " + std::string(name));
  const std::string all(std::istreambuf_iterator<char>(in), {});
  in.close();
  std::filesystem::remove(file);
  return cells_in(all);
}

std::vector<std::string> OpenBook::contents(std::string_view name) const {
  const auto cursor = sheet(name)->createCursor();
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoStartOfUsedArea(false);
  as<css::sheet::XUsedAreaCursor>(cursor)->gotoEndOfUsedArea(true);
  std::vector<std::string> found;
  for (const auto& row : as<css::sheet::XCellRangeFormula>(cursor)->getFormulaArray())
    for (const rtl::OUString& content : row) found.push_back(from_office(content));
  return found;
}

std::string OpenBook::errors(std::string_view name) const {
  const auto found = as<css::sheet::XCellRangesQuery>(sheet(name))
                         ->queryFormulaCells(css::sheet::FormulaResult::ERROR);
  return from_office(found->getRangeAddressesAsString());
}

bool OpenBook::tells(std::string_view name, std::string_view words) const {
  return std::ranges::any_of(texts(name), [words](const auto& cell) {
    return cell.second.find(words) != std::string::npos;
  });
}

At OpenBook::find(std::string_view name, std::string_view text) const {
  for (const auto& [at, shown] : texts(name))
    if (shown == text) return at;
  throw std::logic_error("no cell of " + std::string(name) + " shows " + std::string(text));
}

double OpenBook::value_of(std::string_view name, std::string_view formula) const {
  const auto one = cell(name, scratch);
  one->setFormula(to_office(formula));
  const double value = one->getValue();
  one->setFormula(rtl::OUString());
  return value;
}

std::string OpenBook::text_of(std::string_view name, std::string_view formula) const {
  const auto one = cell(name, scratch);
  one->setFormula(to_office(formula));
  const std::string text = from_office(as<css::text::XText>(one)->getString());
  one->setFormula(rtl::OUString());
  return text;
}

std::string OpenBook::piece(std::string_view table, std::string_view column, int row) const {
  return text_of(book::sheet_name::workings, "=BOOK.SHOWS(" + book::tells_name(table) + ";\"" +
                                                 std::string(column) + "\";" + std::to_string(row) +
                                                 ")");
}

void OpenBook::recalculate() const { as<css::sheet::XCalculatable>(document_)->calculateAll(); }

void OpenBook::save(const std::filesystem::path& file, std::string_view filter) const {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how[0] = property("FilterName", Any(to_office(filter)));
  as<css::frame::XStorable>(document_)->storeToURL(to_office(office::url_of(file)), how);
}

std::filesystem::path own_copy(const office::Office& office, const std::filesystem::path& file) {
  const auto copy = office.profile().folder() / file.filename();
  std::error_code same;
  if (!std::filesystem::equivalent(file, copy, same))
    std::filesystem::copy_file(file, copy, std::filesystem::copy_options::overwrite_existing);
  return copy;
}

std::filesystem::path demo_file() {
  return std::filesystem::path(BOOKS_FOLDER) / "Valve service, demo.ods";
}

std::filesystem::path template_file() {
  return std::filesystem::path(BOOKS_FOLDER) / "Valve service, inline four, 16 valves.ots";
}

}  // namespace shimwright::tests
