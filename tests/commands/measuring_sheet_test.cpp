// SPDX-License-Identifier: MPL-2.0
//
// Measuring sheet at the desk: by menu, in a book and where there is none.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>

#include "book/command_urls.hpp"
#include "book/places.hpp"
#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

constexpr const char* measuring_title = "Measuring sheet";

class MeasuringSheet : public NewBook {
 protected:
  void TearDown() override {
    while (const auto box = window_titled(*office_, measuring_title)) {
      box->press("OK");
      wait_for_turn();
    }
    close_print_dialog();
    NewBook::TearDown();
  }

  // The office's own dialog is none of its accessible windows: its title is seen on the screen.
  bool is_print_dialog_open() const { return screen_->title_of_focused() == "Print"; }
  void close_print_dialog() const {
    if (is_print_dialog_open()) screen_->press("Escape");
    EXPECT_TRUE(comes_true([this] { return !is_print_dialog_open(); }));
    wait_for_turn();
  }
  static bool is_undo_possible(const Document& document) {
    return Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)
        ->getUndoManager()
        ->isUndoPossible();
  }

  static std::string sheet_in_sight(const Document& document) {
    const Reference<css::sheet::XSpreadsheetView> view(
        Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController(),
        UNO_QUERY_THROW);
    return from_office(
        Reference<css::container::XNamed>(view->getActiveSheet(), UNO_QUERY_THROW)->getName());
  }
};

TEST_F(MeasuringSheet, comes_in_sight_by_the_menu_with_the_print_dialog_over_it) {
  const Window window = ask();
  fill_in(window);
  const Document document = make(window);
  screen_->focus(title_of(document));
  ASSERT_NE(sheet_in_sight(document), book::sheet_name::measure);
  screen_->press("alt+l");
  screen_->press("m");
  ASSERT_TRUE(comes_true([this] { return is_print_dialog_open(); }));
  EXPECT_EQ(sheet_in_sight(document), book::sheet_name::measure);
  screen_->picture(PICTURES "/measuring-sheet.png");
  close_print_dialog();
  EXPECT_FALSE(is_undo_possible(document)) << "it changed something";
}

TEST_F(MeasuringSheet, of_no_service_book_is_refused_in_a_sentence) {
  dispatch(sheet_, book::command::measuring_sheet);
  ASSERT_TRUE(comes_true([] { return window_titled(*office_, measuring_title).has_value(); }));
  EXPECT_EQ(window_titled(*office_, measuring_title)->words(),
            "This document is no service book. Valve service, New service book makes one.");
  EXPECT_FALSE(is_print_dialog_open());
}

TEST_F(MeasuringSheet, of_a_book_without_that_sheet_says_so) {
  const Window window = ask();
  fill_in(window);
  const Document document = make(window);
  Reference<css::container::XNamed>(
      document->getSheets()->getByName(to_office(book::sheet_name::measure)), UNO_QUERY_THROW)
      ->setName(to_office("Mine"));
  dispatch(document, book::command::measuring_sheet);
  ASSERT_TRUE(comes_true([] { return window_titled(*office_, measuring_title).has_value(); }));
  EXPECT_THAT(window_titled(*office_, measuring_title)->words(),
              testing::StartsWith("This book has no sheet of the name Measure:"));
  EXPECT_FALSE(is_print_dialog_open());
}

}  // namespace
}  // namespace shimwright::tests
