// SPDX-License-Identifier: MPL-2.0
//
// The whole office under a locale with a decimal comma, not the cells' language alone: the C
// library inside it then writes and reads a comma as well.
#include <gtest/gtest.h>

#include <chrono>
#include <clocale>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <string_view>
#include <thread>

#include "book/places.hpp"
#include "core/engine/layout.hpp"
#include "new_book_desk.hpp"
#include "sheet_view.hpp"

namespace shimwright::tests {
namespace {

using book::At;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

constexpr const char* locale = "de_DE.UTF-8";

class CommaLocale : public NewBook {
 protected:
  static void SetUpTestSuite() {
    office::Settings settings;
    settings.locale = "de-DE";
    settings.process_locale = locale;
    start(settings);
  }

  // What the cell shows once the keys are typed and any refusal is closed.
  std::string typed(std::string_view sheet, book::At at, const char* keys, const char* expected) {
    go_to(*office_, document_, sheet, at);
    screen_->type(keys);
    screen_->press("Return");
    std::this_thread::sleep_for(std::chrono::milliseconds(300));
    screen_->press("Escape");
    comes_true([&] { return text_in(document_, sheet, at) == expected; }, std::chrono::seconds(3));
    return text_in(document_, sheet, at);
  }

  void TearDown() override {
    document_.clear();
    NewBook::TearDown();
  }

  Document document_;
};

TEST_F(CommaLocale, a_book_from_the_menu_takes_its_entries_and_refuses_slips) {
  ASSERT_NE(std::setlocale(LC_NUMERIC, locale), nullptr) << locale << " is not installed";
  std::setlocale(LC_NUMERIC, "C");
  const Window window = ask();
  fill_in(window);
  window.enter("Smallest clearance", 0, "0,16");
  document_ = make(window);
  screen_->focus(title_of(document_));

  const book::Places places(inline_four());
  const book::Card& card = places.head.cards.front();
  namespace engine = book::engine_place;
  struct Entry {
    std::string_view sheet;
    book::At at;
    const char* keys;
    const char* shown;  // empty: refused
  };
  const auto spare = right_of(book::shims_place::first_spare);
  for (const Entry& entry : {
           Entry{book::sheet_name::engine, engine::of(Side::exhaust, engine::min_row), "0,23",
                 "0,230"},
           Entry{book::sheet_name::engine, engine::of(Side::inlet, engine::bias_row), "0,5",
                 "0,50"},
           Entry{book::sheet_name::head, card.value(book::card::gap), "77", ""},
           Entry{book::sheet_name::head, card.value(book::card::gap), "0,15", "0,150"},
           Entry{book::sheet_name::head, card.value(book::card::mark), "265", "265"},
           Entry{book::sheet_name::head, card.value(book::card::micrometer), "26,51", ""},
           Entry{book::sheet_name::head, card.value(book::card::micrometer), "2,651", "2,651"},
           Entry{book::sheet_name::shims, spare, "2,70", "2,700"},
       })
    EXPECT_EQ(typed(entry.sheet, entry.at, entry.keys, entry.shown), entry.shown)
        << entry.sheet << ", typed " << entry.keys;
  // What a refusal says, too.
  rtl::OUString refusal;
  const At gap = card.value(book::card::gap);
  const Reference<css::beans::XPropertySet> of_cell(
      Reference<css::table::XCellRange>(
          document_->getSheets()->getByName(office::to_office(book::sheet_name::head)),
          UNO_QUERY_THROW)
          ->getCellByPosition(gap.column, gap.row),
      UNO_QUERY_THROW);
  Reference<css::beans::XPropertySet>(of_cell->getPropertyValue("Validation"), UNO_QUERY_THROW)
      ->getPropertyValue("ErrorMessage") >>= refusal;
  EXPECT_NE(office::from_office(refusal).find("decimal mark (0,24)."), std::string::npos)
      << office::from_office(refusal);
  screen_->picture(PICTURES "/comma-locale.png");
}

}  // namespace
}  // namespace shimwright::tests
