// SPDX-License-Identifier: MPL-2.0
//
// An office with a window and an empty sheet in it, from which New service book is called; what a
// test opened is closed after it.
#pragma once

#include <gtest/gtest.h>

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "book/area.hpp"
#include "desk.hpp"
#include "office/office.hpp"
#include "screen.hpp"

namespace shimwright::tests {

constexpr const char* dialog_title = "New service book";
constexpr const char* make_button = "Make the book";

class NewBook : public testing::Test {
 protected:
  using Document = css::uno::Reference<css::sheet::XSpreadsheetDocument>;

  static void SetUpTestSuite();
  // The screen, the office with the package installed, and the empty sheet.
  static void start(office::Settings settings);
  static void TearDownTestSuite();
  void TearDown() override;

  static void close(const Document& document);

  // Until the office has run what it was asked to run so far, or has a dialog open for it.
  static void wait_for_turn();

  // As the menu does it.
  static void dispatch();
  // Any command, in the window of that document.
  static void dispatch(const Document& document, std::string_view name);

  // The dialog, as soon as it is there. Throws std::runtime_error where it does not come.
  static Window dialog();
  // The same, called anew.
  static Window ask();
  static bool dialog_closes();

  // Every document but the one that was there first.
  static std::vector<Document> new_documents();
  // The only one, once the command has done with it: shown, and its entries remembered.
  static Document new_document();
  // By the dialog's button.
  static Document make(const Window& dialog);

  // A book of what fill_in() enters, by the dialog, in a window with the focus.
  static Document make_usual_book();
  // The same, but a copy of the one that this office made first, which is sooner there.
  static Document usual_book();

  // Of its window.
  static std::string title_of(const Document& document);
  static std::string text_in(const Document& document, std::string_view sheet, book::At at);

  static void fill_in(const Window& dialog);
  static std::string sentence(const Window& dialog);
  static std::string remarks(const Window& dialog);

  static std::optional<Screen> screen_;
  static std::optional<office::Office> office_;
  static Document sheet_;
};

}  // namespace shimwright::tests
