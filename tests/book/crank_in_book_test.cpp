// SPDX-License-Identifier: MPL-2.0
//
// Where the book says to stop the crank.
#include <gtest/gtest.h>

#include <string>

#include "fit_cells.hpp"
#include "on_sheets.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;

// Common practice, no source: an inline four is measured at two stops one full turn apart.
TEST(CrankInTheBook, of_an_inline_four_stops_twice_one_full_turn_apart) {
  OpenBook book(the_office(), template_file());
  const std::string stops =
      "Stop 1: turn the crank forwards to TDC on compression of cylinder 1; measure here: cylinder "
      "1: inlet and exhaust; cylinder 2: inlet; cylinder 3: exhaust.\n"
      "Stop 2: turn the crank forwards to TDC on compression of cylinder 4, 360\u00b0 on from stop "
      "1; measure here: cylinder 2: exhaust; cylinder 3: inlet; cylinder 4: inlet and exhaust.\n"
      "The manual\u2019s procedure comes first. These stops assume usual valve timing where Engine "
      "leaves it blank.";
  for (const auto sheet : {book::sheet_name::read_me, book::sheet_name::head})
    EXPECT_NO_THROW(book.find(sheet, stops)) << sheet;
}

TEST(CrankInTheBook, is_told_on_each_card) {
  OpenBook book(the_office(), template_file());
  for (const book::Card& card : the_places().head.cards) {
    const bool inlet = card.valve.side == Side::inlet;
    const int cylinder = card.valve.cylinder;
    const bool second = cylinder == 4 || cylinder == (inlet ? 3 : 2);
    EXPECT_EQ(book.shown(book::sheet_name::head, card.at(book::card::gap)),
              second ? "gap, stop 2" : "gap, stop 1");
  }
}

TEST(CrankInTheBook, does_not_take_a_firing_order_for_a_date) {
  OpenBook book(the_office(), template_file());
  book.strike(on_engine, engine::firing, "1-2-3");
  // LibreOffice 25.2 sets an apostrophe before it, as one may type it.
  EXPECT_TRUE(book.formula(on_engine, engine::firing).ends_with("1-2-3"));
  EXPECT_EQ(book.shown(on_engine, engine::firing), "1-2-3");
}

struct CrankSlip {
  const char* what;
  At at;
  std::string entry;
  const char* said;
};

const CrankSlip crank_slips[] = {
    {"no firing order", engine::firing, "", "Firing order: not entered."},
    {"a cylinder twice", engine::firing, "1-3-3-2", "Firing order: name each cylinder once"},
    {"three cylinders of four", engine::firing, "1-2-3", "Firing order: this engine has 4"},
};

TEST(CrankInTheBook, refuses_in_a_sentence_and_tells_no_steps) {
  OpenBook demo(the_office(), demo_file());
  for (const auto& [what, at, entry, words] : crank_slips) {
    const ::testing::ScopedTrace place(__FILE__, __LINE__, what);
    const std::string before = demo.formula(on_engine, at);
    demo.strike(on_engine, at, entry);
    demo.recalculate();
    EXPECT_TRUE(demo.tells(on_engine, words));
    EXPECT_NE(box_of_fit(demo).find(words), std::string::npos) << box_of_fit(demo);
    EXPECT_EQ(box_of_fit(demo).find("are ready"), std::string::npos) << box_of_fit(demo);
    demo.type(on_engine, at, before);
  }
}

TEST(CrankInTheBook, tells_no_steps_where_a_margin_leaves_nothing) {
  OpenBook demo(the_office(), demo_file());
  for (const int row : {engine::opens_row, engine::closes_row})
    demo.type(on_engine, engine::of(Side::inlet, row), 170.0);
  demo.type(on_engine, engine::margin, 110.0);
  demo.recalculate();
  EXPECT_NE(box_of_fit(demo).find("Valve timing: with these degrees a valve never opens"),
            std::string::npos)
      << box_of_fit(demo);
  EXPECT_EQ(box_of_fit(demo).find("are ready"), std::string::npos) << box_of_fit(demo);
}

TEST(CrankInTheBook, takes_uneven_firing_and_other_timing) {
  OpenBook book(the_office(), template_file());
  book.type(on_engine, engine::firing, "1 at 0, 2 at 270, 3 at 180, 4 at 450");
  book.recalculate();
  EXPECT_FALSE(book.tells(on_engine, "Firing order:"));
  EXPECT_TRUE(book.tells(book::sheet_name::head, "Stop 1: "));
}

}  // namespace
}  // namespace shimwright::tests
