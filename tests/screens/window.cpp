// SPDX-License-Identifier: MPL-2.0
#include "window.hpp"

#include <chrono>
#include <com/sun/star/container/XEnumeration.hpp>
#include <com/sun/star/frame/XDesktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <sstream>
#include <stdexcept>
#include <thread>

#include "../book/open_book.hpp"
#include "../commands/sheet_view.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using office::to_office;
using std::chrono_literals::operator""ms;
using std::chrono_literals::operator""s;

std::string output_of(const Screen& screen, const std::vector<std::string>& command,
                      const std::filesystem::path& log) {
  std::filesystem::remove(log);
  office::Process process(command, {{"DISPLAY", screen.display()}}, log);
  process.wait_for(20s);
  return process.output();
}

// As a double click does. A window made through the API, on another thread than the office's own,
// now and then waits for the clipboard for ever.
void ask_to_open(const office::Office& office, const Screen& screen,
                 const std::filesystem::path& book) {
  auto environment = office.profile().environment();
  environment["DISPLAY"] = screen.display();
  environment["WAYLAND_DISPLAY"] = "";
  environment["DBUS_SESSION_BUS_ADDRESS"] = "";
  office::Process opener({SOFFICE, office.profile().argument(), "--nologo", book.string()},
                         environment, office.profile().folder() / "opener.log");
  if (opener.wait_for(30s) != 0) throw std::runtime_error("cannot open: " + opener.output());
}

// The only one that is open, once it is.
Ref<css::sheet::XSpreadsheetDocument> open_book_of(const office::Office& office) {
  const auto all = as<css::frame::XDesktop>(office.desktop())->getComponents()->createEnumeration();
  while (all->hasMoreElements()) {
    const Ref<css::sheet::XSpreadsheetDocument> book(all->nextElement(), css::uno::UNO_QUERY);
    if (book.is()) return book;
  }
  return {};
}

}  // namespace

BookWindow::BookWindow(const office::Office& office, const Screen& screen,
                       const std::filesystem::path& book)
    : office_(office), screen_(screen) {
  ask_to_open(office, screen, own_copy(office, book));
  const auto deadline = std::chrono::steady_clock::now() + 60s;
  while (!(document_ = open_book_of(office)).is() ||
         !(controller_ = as<css::frame::XModel>(document_)->getCurrentController()).is() ||
         titles().empty()) {
    if (std::chrono::steady_clock::now() > deadline)
      throw std::runtime_error("no window of " + book.string());
    std::this_thread::sleep_for(100ms);
  }
  screen.maximize("LibreOffice");
  screen.focus("LibreOffice");
}

BookWindow::~BookWindow() {
  try {
    as<css::util::XCloseable>(document_)->close(true);
  } catch (const css::uno::Exception&) {
    // the test has its verdict already
  }
}

void BookWindow::show(std::string_view sheet) const { show_sheet(document_, sheet); }

void BookWindow::zoom(int percent) const {
  book::set(controller_, "ZoomType", sal_Int16{3});  // by value
  book::set(controller_, "ZoomValue", static_cast<sal_Int16>(percent));
}

void BookWindow::go_to(std::string_view sheet, book::At at) const {
  tests::go_to(office_, document_, sheet, at);
}

book::At BookWindow::cursor() const {
  const auto selected = as<css::sheet::XCellRangeAddressable>(
      as<css::view::XSelectionSupplier>(controller_)->getSelection());
  const auto address = selected->getRangeAddress();
  return {address.StartColumn, address.StartRow};
}

Rgb BookWindow::fill_of(std::string_view style) const {
  const auto families =
      as<css::style::XStyleFamiliesSupplier>(document_)->getStyleFamilies()->getByName(
          "CellStyles");
  const auto found = as<css::container::XNameAccess>(families)->getByName(to_office(style));
  const auto colour = static_cast<std::uint32_t>(
      as<css::beans::XPropertySet>(found)->getPropertyValue("CellBackColor").get<sal_Int32>());
  return {static_cast<std::uint8_t>(colour >> 16), static_cast<std::uint8_t>(colour >> 8),
          static_cast<std::uint8_t>(colour)};
}

Picture BookWindow::picture(const std::filesystem::path& png) const {
  const auto look = [&] { return Picture::read(screen_.pixels()); };
  const auto deadline = std::chrono::steady_clock::now() + 60s;
  for (Picture before = look();;) {
    std::this_thread::sleep_for(500ms);
    Picture now = look();
    if (now == before) {
      screen_.picture(png);
      return now;
    }
    if (std::chrono::steady_clock::now() > deadline)
      throw std::runtime_error("the screen does not come to rest for " + png.string());
    before = std::move(now);
  }
}

std::vector<std::string> BookWindow::titles() const {
  const auto log = std::filesystem::temp_directory_path() / "shimwright-titles.log";
  std::istringstream ids(
      output_of(screen_, {"xdotool", "search", "--onlyvisible", "--name", "."}, log));
  std::vector<std::string> found;
  for (std::string id; std::getline(ids, id);) {
    std::string title = output_of(screen_, {"xdotool", "getwindowname", id}, log);
    while (title.ends_with('\n')) title.pop_back();
    found.push_back(title);
  }
  return found;
}

}  // namespace shimwright::tests
