// SPDX-License-Identifier: MPL-2.0
//
// A book just made, as its owner meets it: before it was ever saved and opened again.
#include <gtest/gtest.h>

#include <chrono>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XViewFreezable.hpp>
#include <com/sun/star/sheet/XViewPane.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <thread>
#include <vector>

#include "book/fit_map.hpp"
#include "book/places.hpp"
#include "core/engine/layout.hpp"
#include "new_book_desk.hpp"
#include "sheet_view.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using office::to_office;

class FreshBook : public NewBook {
 protected:
  void SetUp() override {
    document_ = make_usual_book();
    controller_ = Reference<css::frame::XModel>(document_, UNO_QUERY_THROW)->getCurrentController();
  }
  void TearDown() override {
    document_.clear();
    controller_.clear();
    NewBook::TearDown();
  }

  void go_to(std::string_view sheet, book::At at) { tests::go_to(*office_, document_, sheet, at); }

  struct Typed {
    std::string_view sheet;
    book::At at;
    const char* keys;
    const char* shown;  // in the end
  };
  void type(const Typed& typed) {
    go_to(typed.sheet, typed.at);
    screen_->type(typed.keys);
    screen_->press("Return");
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    screen_->press("Escape");  // out of a refusal
    EXPECT_TRUE(comes_true([&] { return text_in(document_, typed.sheet, typed.at) == typed.shown; },
                           std::chrono::seconds(3)))
        << typed.keys << " came to " << text_in(document_, typed.sheet, typed.at);
  }

  // What each pane of the sheet that is shown lets see, from the top.
  std::vector<css::table::CellRangeAddress> panes() const {
    const Reference<css::container::XIndexAccess> panes(controller_, UNO_QUERY_THROW);
    std::vector<css::table::CellRangeAddress> visible;
    for (sal_Int32 i = 0; i < panes->getCount(); ++i)
      visible.push_back(Reference<css::sheet::XViewPane>(panes->getByIndex(i), UNO_QUERY_THROW)
                            ->getVisibleRange());
    return visible;
  }

  Document document_;
  Reference<css::frame::XController> controller_;
};

TEST_F(FreshBook, takes_what_is_right_and_refuses_what_is_not) {
  const book::Places places(inline_four());
  const book::Card& card = places.head.cards.front();
  const Typed all[] = {
      {book::sheet_name::head, card.value(book::card::gap), "0.15", "0.150"},
      {book::sheet_name::head, card.value(book::card::mark), "265", "265"},
      {book::sheet_name::head, card.value(book::card::micrometer), "2.651", "2.651"},
      {book::sheet_name::shims, right_of(book::shims_place::first_spare), "2.70", "2.700"},
  };
  for (const Typed& typed : all) type(typed);
  screen_->picture(PICTURES "/fresh-book.png");
}

// The office completes what is typed from text in the same column, so no number may stay text.
TEST_F(FreshBook, completes_no_number_from_another_entry) {
  const book::Places places(inline_four());
  std::vector<book::Card> column;
  for (const book::Card& card : places.head.cards)
    if (card.value(book::card::gap).column ==
        places.head.cards.front().value(book::card::gap).column)
      column.push_back(card);
  ASSERT_GE(column.size(), 2U);
  namespace engine = book::engine_place;
  const Typed all[] = {
      {book::sheet_name::head, column[0].value(book::card::gap), "0,15", ""},  // refused
      {book::sheet_name::head, column[0].value(book::card::gap), "0.15", "0.150"},
      {book::sheet_name::head, column[1].value(book::card::gap), "0", "0.000"},
      {book::sheet_name::head, column[1].value(book::card::gap), "0.1", "0.100"},
      {book::sheet_name::head, column[0].value(book::card::mark), "2755", "2755"},
      {book::sheet_name::head, column[1].value(book::card::mark), "275", "275"},
      {book::sheet_name::head, column[0].value(book::card::micrometer), "2,751", ""},
      {book::sheet_name::head, column[1].value(book::card::micrometer), "2", "2.000"},
      {book::sheet_name::engine, engine::name, "1200 twin", "1200 twin"},
      {book::sheet_name::engine, engine::of(Side::inlet, engine::bias_row), "1", "1.00"},
      {book::sheet_name::engine, engine::margin, "12", "12"},
      {book::sheet_name::engine, engine::name, "Bravo", "Bravo"},
      {book::sheet_name::engine, engine::of(Side::exhaust, engine::series_row), "B", "B"},
      {book::sheet_name::engine, engine::of(Side::inlet, engine::series_row), "28 mm", "28 mm"},
      {book::sheet_name::engine, engine::of(Side::inlet, engine::opens_row), "28", "28"},
      {book::sheet_name::shims, right_of(book::shims_place::first_spare), "2,70", ""},
      {book::sheet_name::shims, right_of(below(book::shims_place::first_spare)), "2", "2.000"},
  };
  for (const Typed& typed : all) type(typed);
}

// Over a document without this mode LibreOffice 25.2 shows a bar: macros are disabled.
TEST_F(FreshBook, leaves_macros_to_the_settings_of_the_user) {
  sal_Int16 mode = -1;
  for (const css::beans::PropertyValue& argument :
       Reference<css::frame::XModel>(document_, UNO_QUERY_THROW)->getArgs())
    if (argument.Name == "MacroExecutionMode") argument.Value >>= mode;
  EXPECT_NE(mode, css::document::MacroExecMode::NEVER_EXECUTE);
}

// Rows that stay in sight when the rest is scrolled.
TEST_F(FreshBook, keeps_the_heads_of_its_sheets_in_sight) {
  struct Head {
    std::string_view sheet;
    sal_Int32 rows;
  };
  for (const Head& head : {Head{book::sheet_name::read_me, 0},
                           {book::sheet_name::engine, book::engine_place::first_row},
                           {book::sheet_name::head, book::Places(inline_four()).head.seen_row()},
                           {book::sheet_name::shims, book::shims_place::first_row},
                           {book::sheet_name::plan, book::plan_place::first_row},
                           {book::sheet_name::fit, book::FitMap::first_row}}) {
    show_sheet(document_, head.sheet);
    EXPECT_EQ(Reference<css::sheet::XViewFreezable>(controller_, UNO_QUERY_THROW)->hasFrozenPanes(),
              head.rows > 0)
        << head.sheet;
    if (head.rows == 0) continue;
    // The window is laid out a little after it is shown.
    EXPECT_TRUE(comes_true([&] { return panes().front().EndRow + 1 == head.rows; }))
        << head.sheet << " shows up to row " << panes().front().EndRow + 1;
  }
}

TEST_F(FreshBook, shows_every_sheet_from_its_top) {
  for (const std::string_view sheet :
       {book::sheet_name::read_me, book::sheet_name::engine, book::sheet_name::head,
        book::sheet_name::shims, book::sheet_name::plan, book::sheet_name::fit}) {
    show_sheet(document_, sheet);
    const auto from_the_top = [this] {
      sal_Int32 next = 0;
      for (const css::table::CellRangeAddress& pane : panes()) {
        if (pane.StartColumn != 0 || pane.StartRow != next) return false;
        next = pane.EndRow + 1;
      }
      return true;
    };
    EXPECT_TRUE(comes_true(from_the_top)) << sheet;
  }
}

}  // namespace
}  // namespace shimwright::tests
