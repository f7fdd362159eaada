// SPDX-License-Identifier: MPL-2.0
//
// A new service book at the desk, for the tests of the commands that write into it: its cells, its
// buttons, and the boxes that the commands show.
#pragma once

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
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <com/sun/star/view/XControlAccess.hpp>
#include <utility>
#include <vector>

#include "../book/on_sheets.hpp"
#include "book/command_urls.hpp"
#include "book/fit_map.hpp"
#include "book/places.hpp"
#include "core/engine/layout.hpp"
#include "new_book_desk.hpp"
#include "sheet_view.hpp"

namespace shimwright::tests {

using book::At;
using book::FitMap;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::to_office;

inline constexpr const char* take_title = "Take to the bench";
inline constexpr const char* clear_title = "Clear the bench";
inline constexpr const char* order_title = "Order placed";
inline constexpr const char* close_title = "Close this check";
inline constexpr const char* close_button = "Put on record";

class BenchAtTheDesk : public NewBook {
 protected:
  explicit BenchAtTheDesk(EngineLayout layout = inline_four()) : places(std::move(layout)) {}

  void SetUp() override { document_ = usual_book(); }
  void TearDown() override {
    for (const char* title : {take_title, clear_title, order_title})
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
  Reference<css::table::XCellRange> range(std::string_view sheet, const book::Area& area) const {
    return Reference<css::table::XCellRange>(document_->getSheets()->getByName(to_office(sheet)),
                                             UNO_QUERY_THROW)
        ->getCellRangeByPosition(area.from.column, area.from.row, area.to.column, area.to.row);
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
    for (const auto& row :
         Reference<css::sheet::XCellRangeFormula>(range(sheet, area), UNO_QUERY_THROW)
             ->getFormulaArray())
      for (const rtl::OUString& content : row) all.push_back(office::from_office(content));
    return all;
  }
  std::vector<std::string> bench() const {
    return contents(on_fit, {{FitMap::kind, FitMap::head_row}, fit.at(fit.rows - 1, FitMap::done)});
  }
  bool is_protected(std::string_view sheet = on_fit) const {
    return Reference<css::util::XProtectable>(document_->getSheets()->getByName(to_office(sheet)),
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
  void press_on(std::string_view on, std::string_view words) const {
    const auto sheet = Reference<css::sheet::XCellRangeAddressable>(
                           document_->getSheets()->getByName(to_office(on)), UNO_QUERY_THROW)
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

  const book::Places places;
  const FitMap fit{places.count()};
  Document document_;
};

}  // namespace shimwright::tests
