// SPDX-License-Identifier: MPL-2.0
//
// What meets the eye: what is amiss stands in sight of the entries, and what to buy beside the
// plan. What the boxes say: core/service_head_test.cpp.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "book/book.hpp"
#include "box_lines.hpp"
#include "job.hpp"
#include "on_sheets.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;

void type_limits(OpenBook& book, double min, double max) {
  for (const Side side : {Side::exhaust, Side::inlet}) {
    book.type(on_engine, engine::of(side, engine::min_row), min);
    book.type(on_engine, engine::of(side, engine::max_row), max);
  }
}

TEST(Boxes, stand_in_the_rows_that_stay_in_sight) {
  for (const book::SheetDescription& one : book::descriptions(the_places()))
    for (const book::Table& table : one.tables)
      if (table.name == "box") {
        EXPECT_LE(table.first.row + static_cast<int>(table.rows.size()), one.frozen_rows)
            << one.name;
      }
}

TEST(Engine, tells_its_troubles_in_its_box) {
  OpenBook book(the_office(), template_file());
  book.type(on_engine, engine::of(Side::exhaust, engine::max_row), "wide");
  book.type(on_engine, engine::touch_good, "maybe");
  book.recalculate();
  const std::string told = told_by_box(book, on_engine);
  EXPECT_NE(told.find("\"wide\""), std::string::npos) << told;
  EXPECT_NE(told.find("\"maybe\""), std::string::npos) << told;
}

TEST(Engine, counts_the_lines_there_is_no_room_for) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.3, 0.2);
  book.type(on_engine, engine::doubt, -0.01);
  book.type(on_engine, engine::touch_good, "maybe");
  book.type(on_engine, engine::of(Side::inlet, engine::bias_row), 7.0);
  book.type(on_engine, engine::firing, "1-3-3-2");
  book.recalculate();
  const auto lines = lines_of_box(book, on_engine);
  EXPECT_EQ(static_cast<int>(lines.size()), box_on(on_engine).rows());
  EXPECT_TRUE(lines.back().ends_with(" more lines: all stand on Read me first."))
      << ::testing::PrintToString(lines);
  for (const char* words : {"0.30 mm", "-0.01 mm", "maybe", "Where to aim", "Firing order"})
    EXPECT_TRUE(book.tells(book::sheet_name::read_me, words)) << words;
}

TEST(Engine, shows_the_aim_that_is_taken_in_place_of_an_impossible_one) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.16, 0.20);
  book.type(on_engine, engine::of(Side::inlet, engine::bias_row), 7.0);
  book.recalculate();
  EXPECT_EQ(book.shown(on_engine, engine::of(Side::inlet, engine::aim_row)), "0.190");
}

TEST(Plan, shows_what_to_buy_beside_the_valves_and_counts_every_valve_once) {
  OpenBook demo(the_office(), demo_file());
  const At valves = demo.find(on_plan, "Valve by valve; lengths in mm");
  EXPECT_EQ(demo.find(on_plan, "To order; sums in EUR").row, valves.row);
  EXPECT_EQ(demo.find(on_plan, "Left over").row, valves.row);
  int counted = 0;
  for (const char* words :
       {"keep", "move", "spare", "buy", "none fits", "left outside", "to measure"}) {
    const At figure = below(demo.find(on_plan, words));
    EXPECT_LT(figure.row, valves.row) << words;
    counted += std::stoi(demo.shown(on_plan, figure));
  }
  EXPECT_EQ(counted, the_places().count());
  EXPECT_EQ(demo.shown(on_plan, below(demo.find(on_plan, "to pay"))), "11.40 EUR");
}

// Rows of spares of which there are fewer than none.
void type_bad_counts(OpenBook& book, int rows) {
  for (int row = 0; row < rows; ++row) {
    const At first = below(shims::first_spare, row);
    book.type(on_shims, first, "28 mm");
    book.type(on_shims, right_of(first), 2.3 + 0.01 * row);
    book.type(on_shims, right_of(first, 2), -1.0);
  }
}

TEST(Boxes, show_as_many_lines_as_they_have_room_for_and_say_where_all_stand) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places());
  for (const book::Card& one : the_places().head.cards)
    book.type(on_head, one.value(card::gap), -0.1);
  type_bad_counts(book, 12);
  book.recalculate();
  for (const std::string_view sheet : {on_head, on_shims, on_plan}) {
    const auto lines = lines_of_box(book, sheet);
    EXPECT_EQ(static_cast<int>(lines.size()), box_on(sheet).rows()) << sheet;
    EXPECT_TRUE(lines.back().ends_with(" more lines: all stand on Read me first."))
        << ::testing::PrintToString(lines);
  }
  int listed = 0;
  for (const auto& [at, text] : book.texts(book::sheet_name::read_me))
    listed += text.find("is negative") != std::string::npos ? 1 : 0;
  EXPECT_EQ(listed, 28);
}

TEST(EmptyBook, says_where_to_begin_and_has_a_dash_where_an_answer_will_stand) {
  OpenBook book(the_office(), template_file());
  for (const Side side : {Side::exhaust, Side::inlet})
    EXPECT_EQ(book.shown(on_engine, engine::of(side, engine::aim_row)), "\u2013");
  EXPECT_TRUE(told_by_box(book, on_engine).starts_with("Begin here: "));
  EXPECT_EQ(told_by_box(book, on_head), "Begin on Engine: the limits are not entered yet.");
  EXPECT_THROW(book.find(book::sheet_name::read_me, "0 of 0"), std::logic_error);
}

}  // namespace
}  // namespace shimwright::tests
