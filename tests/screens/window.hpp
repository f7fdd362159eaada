// SPDX-License-Identifier: MPL-2.0
//
// A book in the office's real window, filling a screen without a monitor.
#pragma once

#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "../commands/screen.hpp"
#include "book/area.hpp"
#include "book/office/uno.hpp"
#include "office/office.hpp"
#include "picture.hpp"

namespace shimwright::tests {

namespace css = com::sun::star;
using book::Ref;

class BookWindow {
 public:
  BookWindow(const office::Office& office, const Screen& screen, const std::filesystem::path& book);
  ~BookWindow();
  BookWindow(const BookWindow&) = delete;
  BookWindow& operator=(const BookWindow&) = delete;

  const Ref<css::sheet::XSpreadsheetDocument>& document() const { return document_; }

  void show(std::string_view sheet) const;
  void zoom(int percent) const;
  void go_to(std::string_view sheet, book::At at) const;
  // Where the cell cursor stands on the sheet that is shown.
  book::At cursor() const;

  // The background of a cell style.
  Rgb fill_of(std::string_view style) const;

  // The screen as soon as it has stopped changing, kept as a PNG too. Throws std::runtime_error
  // where it does not come to rest.
  Picture picture(const std::filesystem::path& png) const;
  // Titles of all windows on the screen that can be seen.
  std::vector<std::string> titles() const;

 private:
  const office::Office& office_;
  const Screen& screen_;
  Ref<css::sheet::XSpreadsheetDocument> document_;
  Ref<css::frame::XController> controller_;
};

}  // namespace shimwright::tests
