// SPDX-License-Identifier: MPL-2.0
//
// Take to the bench and Clear the bench at the desk: by menu, by button and by keys, with Undo.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/accessibility/XAccessible.hpp>
#include <com/sun/star/accessibility/XAccessibleAction.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/drawing/XControlShape.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <com/sun/star/view/XControlAccess.hpp>
#include <vector>

#include "book/command_urls.hpp"
#include "book/fit_map.hpp"
#include "book/places.hpp"
#include "core/engine/layout.hpp"
#include "new_book_desk.hpp"
#include "sheet_view.hpp"

namespace shimwright::tests {
namespace {

using book::At;
using book::FitMap;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::to_office;

constexpr auto on_fit = book::sheet_name::fit;
constexpr auto on_head = book::sheet_name::head;
constexpr const char* take_title = "Take to the bench";
constexpr const char* clear_title = "Clear the bench";

class BenchAtTheDesk : public NewBook {
 protected:
  void SetUp() override {
    const Window window = ask();
    fill_in(window);
    document_ = make(window);
    screen_->focus(title_of(document_));
  }
  void TearDown() override {
    for (const char* title : {take_title, clear_title})
      while (const auto box = window_titled(*office_, title)) {
        box->press(box->has_button("No") ? "No" : "OK");
        wait_for_turn();
      }
    document_.clear();
    NewBook::TearDown();
  }

  const book::Card& card(std::string_view valve) const {
    return *std::ranges::find_if(places.head.cards, [&](const book::Card& one) {
      return name_of(one.valve, places.layout) == valve;
    });
  }
  Reference<css::table::XCell> cell(std::string_view sheet, At at) const {
    return Reference<css::table::XCellRange>(document_->getSheets()->getByName(to_office(sheet)),
                                             UNO_QUERY_THROW)
        ->getCellByPosition(at.column, at.row);
  }
  void read(std::string_view valve, double gap, double shim) {
    cell(on_head, card(valve).value(book::card::gap))->setValue(gap);
    cell(on_head, card(valve).value(book::card::micrometer))->setValue(shim);
  }
  void tick(int row) {
    Reference<css::text::XText>(cell(on_fit, fit.at(row, FitMap::done)), UNO_QUERY_THROW)
        ->setString(to_office("x"));
  }
  std::string at_valve(std::string_view valve, book::card::Row what) const {
    return text_in(document_, on_head, card(valve).value(what));
  }
  std::string in_row(int row, FitMap::Column column) const {
    return text_in(document_, on_fit, fit.at(row, column));
  }
  bool is_taken() const { return !text_in(document_, on_fit, FitMap::taken).empty(); }
  bool comes_to_the_bench() const {
    return comes_true([this] { return is_taken(); });
  }

  std::vector<std::string> contents(std::string_view sheet, const book::Area& area) const {
    std::vector<std::string> all;
    for (int row = area.from.row; row <= area.to.row; ++row)
      for (int column = area.from.column; column <= area.to.column; ++column)
        all.push_back(office::from_office(cell(sheet, {column, row})->getFormula()));
    return all;
  }
  std::vector<std::string> bench() const {
    return contents(on_fit, {{FitMap::kind, FitMap::head_row}, fit.at(fit.rows - 1, FitMap::done)});
  }
  bool is_protected() const {
    return Reference<css::util::XProtectable>(document_->getSheets()->getByName(to_office(on_fit)),
                                              UNO_QUERY_THROW)
        ->isProtected();
  }

  Window box(const char* title) {
    std::optional<Window> found;
    comes_true([&] { return (found = window_titled(*office_, title)).has_value(); });
    if (!found) throw std::runtime_error(std::string("no box ") + title);
    return *found;
  }
  void answer(const char* title, const char* button) {
    box(title).press(button);
    wait_for_turn();
  }

  // One valve that gets a bought shim of 2.60.
  void take_one() {
    read("1 EX L", 0.15, 2.7);
    dispatch(document_, book::command::take_to_bench);
    ASSERT_TRUE(comes_to_the_bench());
  }

  // As a click or a screen reader does it; its place on the screen is the office's own guess.
  void press_on_fit(std::string_view words) const {
    const auto sheet = Reference<css::sheet::XCellRangeAddressable>(
                           document_->getSheets()->getByName(to_office(on_fit)), UNO_QUERY_THROW)
                           ->getRangeAddress()
                           .Sheet;
    const Reference<css::container::XIndexAccess> page(
        Reference<css::drawing::XDrawPagesSupplier>(document_, UNO_QUERY_THROW)
            ->getDrawPages()
            ->getByIndex(sheet),
        UNO_QUERY_THROW);
    const Reference<css::view::XControlAccess> controls(
        Reference<css::frame::XModel>(document_, UNO_QUERY_THROW)->getCurrentController(),
        UNO_QUERY_THROW);
    for (sal_Int32 i = 0; i < page->getCount(); ++i) {
      const Reference<css::drawing::XControlShape> shape(page->getByIndex(i), UNO_QUERY);
      if (!shape.is()) continue;
      rtl::OUString label;
      Reference<css::beans::XPropertySet>(shape->getControl(), UNO_QUERY_THROW)
          ->getPropertyValue("Label") >>= label;
      if (office::from_office(label) != words) continue;
      const Reference<css::accessibility::XAccessible> seen(
          controls->getControl(shape->getControl()), UNO_QUERY_THROW);
      Reference<css::accessibility::XAccessibleAction>(seen->getAccessibleContext(),
                                                       UNO_QUERY_THROW)
          ->doAccessibleAction(0);
      return;
    }
    throw std::runtime_error("no button " + std::string(words));
  }

  const book::Places places{inline_four()};
  const FitMap fit{places.count()};
  Document document_;
};

TEST_F(BenchAtTheDesk, takes_the_steps_by_the_menu_and_gives_them_back_by_undo) {
  read("1 EX L", 0.15, 2.7);
  const auto before = bench();
  screen_->press("alt+l");
  screen_->press("t");
  ASSERT_TRUE(comes_to_the_bench());
  EXPECT_EQ(in_row(1, FitMap::valve), "1 EX L");
  EXPECT_EQ(in_row(1, FitMap::out), "2.700");
  EXPECT_EQ(in_row(1, FitMap::from), "bought");
  EXPECT_EQ(in_row(0, FitMap::valve), "turn");
  EXPECT_TRUE(is_protected());
  screen_->picture(PICTURES "/bench-taken.png");
  const auto after = bench();
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return bench() == before; }));
  EXPECT_TRUE(is_protected());
  screen_->press("ctrl+y");
  EXPECT_TRUE(comes_true([&] { return bench() == after; }));
}

TEST_F(BenchAtTheDesk, takes_the_steps_by_the_button_on_fit) {
  read("1 EX L", 0.15, 2.7);
  show_sheet(document_, on_fit);
  wait_for_turn();
  press_on_fit(take_title);
  EXPECT_TRUE(comes_to_the_bench());
}

TEST_F(BenchAtTheDesk, ticks_a_step_by_keys) {
  take_one();
  go_to(*office_, document_, on_fit, fit.at(0, FitMap::done));
  screen_->type("x");
  screen_->press("Return");
  EXPECT_TRUE(comes_true([&] { return in_row(0, FitMap::done) == "x"; }));
  screen_->picture(PICTURES "/bench-ticked.png");
}

TEST_F(BenchAtTheDesk, says_why_there_is_nothing_to_take) {
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("Nothing to fit yet: 16 valves"));
  answer(take_title, "OK");
  EXPECT_FALSE(is_taken());
}

TEST_F(BenchAtTheDesk, asks_before_it_replaces_a_list_with_ticks) {
  take_one();
  tick(0);
  const auto before = bench();
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("1 of 3 steps on the bench are ticked."));
  answer(take_title, "No");
  EXPECT_EQ(bench(), before);
  dispatch(document_, book::command::take_to_bench);
  answer(take_title, "Yes");
  EXPECT_TRUE(comes_true([&] { return in_row(0, FitMap::done).empty(); }));
  EXPECT_TRUE(is_taken());
}

TEST_F(BenchAtTheDesk, clears_the_bench_and_enters_the_new_shims_on_head) {
  take_one();
  const std::string in = in_row(1, FitMap::in);
  for (int row = 0; row < 3; ++row) tick(row);
  const auto list = bench();
  screen_->press("alt+l");
  screen_->press("c");
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("By the ticks 1 EX L ("));
  screen_->picture(PICTURES "/bench-clear.png");
  answer(clear_title, "Yes");
  ASSERT_TRUE(comes_true([&] { return !is_taken(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::micrometer), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), in.substr(0, 1) + in.substr(2, 2));
  screen_->focus(title_of(document_));
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return bench() == list; }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.150");
  EXPECT_EQ(at_valve("1 EX L", book::card::micrometer), "2.700");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), "");
}

TEST_F(BenchAtTheDesk, clears_the_bench_alone_or_not_at_all) {
  take_one();
  for (int row = 0; row < 3; ++row) tick(row);
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "Cancel");
  EXPECT_TRUE(is_taken());
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "No");
  EXPECT_TRUE(comes_true([&] { return !is_taken(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.150");
  dispatch(document_, book::command::clear_bench);
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("Nothing is on the bench."));
  answer(clear_title, "OK");
}

TEST_F(BenchAtTheDesk, cautions_first_where_a_valve_stands_empty) {
  read("1 IN L", 0.40, 2.45);
  read("1 IN R", 0.0, 2.65);
  dispatch(document_, book::command::take_to_bench);
  ASSERT_TRUE(comes_to_the_bench());
  ASSERT_EQ(in_row(1, FitMap::in), "") << "one valve is left empty first";
  tick(0);
  tick(1);
  dispatch(document_, book::command::clear_bench);
  EXPECT_THAT(box(clear_title).words(),
              testing::HasSubstr("Do not turn the crank, refit camshafts or clear ticks yet. First "
                                 "fill 1 IN "));
  answer(clear_title, "No");
  EXPECT_TRUE(is_taken());
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "Yes");
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("Clear the bench?"));
  answer(clear_title, "Yes");
  EXPECT_TRUE(comes_true([&] { return !is_taken(); }));
}

TEST_F(BenchAtTheDesk, of_another_document_says_that_it_is_no_service_book) {
  dispatch(sheet_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("This document is no service book."));
  answer(take_title, "OK");
}

}  // namespace
}  // namespace shimwright::tests
