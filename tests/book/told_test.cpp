// SPDX-License-Identifier: MPL-2.0
//
// What the sheets tell beside the plan: how to paste, what is on sale, what a mark stands for. The
// sentences themselves: core/service_*_test.cpp.
#include <gtest/gtest.h>

#include "book/layouter.hpp"
#include "job.hpp"
#include "on_sheets.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;

class ToldBook : public ::testing::Test {
 protected:
  std::string counted(std::string_view words) const {
    return book.shown(on_read_me, right_of(book.find(on_read_me, words), 2));
  }
  std::string shim_of_third_valve() const {
    return book.text_of(on_plan, book::formula_of(book::Shows{"valves", "shim", 3}));
  }

  OpenBook book{the_office(), template_file()};
};

TEST_F(ToldBook, counts_on_read_me_first_what_is_amiss_and_what_stays_out_of_limits) {
  for (const Side side : {Side::exhaust, Side::inlet}) {
    book.type(on_engine, engine::of(side, engine::min_row), 0.16);
    book.type(on_engine, engine::of(side, engine::max_row), 0.22);
  }
  book.type(on_head, card_of("1 EX L").value(card::gap), 0.10);
  book.type(on_head, card_of("1 EX L").value(card::exception), "yes");
  book.type(on_head, card_of("1 IN L").value(card::gap), 0.0);
  book.recalculate();
  EXPECT_EQ(counted("valves still out of limits"), "1");
  EXPECT_EQ(counted("remarks on the entries"), "1");
  EXPECT_TRUE(book.tells(on_plan, "Still reading out of limits: 1 EX L, left alone, as entered."));
}

TEST_F(ToldBook, says_where_columns_are_entered_how_to_paste) {
  EXPECT_TRUE(book.tells(on_shims, "with Ctrl+Shift+V, then Values Only"));
}

// An open valve is a lifted one.
TEST_F(ToldBook, calls_no_valve_open_that_only_can_be_reached) {
  for (const std::string_view sheet : {on_read_me, on_engine, on_head, on_plan})
    for (const char* words : {"valves are open", "valve opened", "valves opened", "to open"})
      EXPECT_FALSE(book.tells(sheet, words)) << sheet << ": " << words;
}

// No text: the office would complete 275 from a 2755 above it.
TEST_F(ToldBook, keeps_a_mark_as_a_number) {
  const At mark = card_of("1 IN L").value(card::mark);
  book.strike(on_head, mark, "2.70");
  book.recalculate();
  EXPECT_EQ(book.shown(on_head, mark), "2.7");
  EXPECT_EQ(shim_of_third_valve(), "2.700");
}

// 1 in is 25.4 mm exactly.
TEST_F(ToldBook, reads_a_mark_in_inches_where_the_book_is) {
  book.type(on_engine, engine::unit, "inch");
  book.type(on_head, card_of("1 IN L").value(card::mark), 0.108);
  book.recalculate();
  EXPECT_EQ(shim_of_third_valve(), "0.1080");
  EXPECT_TRUE(book.tells(on_engine, "auto: .108 is 0.108 in; 275 is 2.75 mm, 2755 is 2.755 mm."));
}

TEST_F(ToldBook, tells_each_row_of_sizes_apart_and_none_is_cut) {
  book.type(on_engine, engine::of(Side::inlet, engine::series_row), "B");
  struct Row {
    const char* series;
    double from, to, step, price;
  };
  const Row rows[] = {{"A", 2.2, 3.2, 0.05, 6.9},
                      {"B", 2.2, 3.2, 0.025, 6.9},
                      {"A", 2.4, 2.6, 0.05, 5.9},
                      {"B", 1.9, 1.9, 0.05, 6.9}};
  int index = 0;
  for (const Row& row : rows) {
    const At first = below(shims::first_ladder, index++);
    book.type(on_shims, first, row.series);
    int column = 0;
    for (const double number : {row.from, row.to, row.step, row.price})
      book.type(on_shims, right_of(first, ++column), number);
  }
  book.recalculate();
  for (const char* words : {"A: 21 sizes, 2.200 to 3.200 by 0.050; 5 cheaper in another row",
                            "B: 41 sizes, 2.200 to 3.200 by 0.025",
                            "A: 5 sizes, 2.400 to 2.600 by 0.050", "B: 1 size, 1.900"})
    EXPECT_TRUE(book.tells(on_shims, words)) << words;
}

TEST_F(ToldBook, says_how_far_one_is_before_anything_is_entered) {
  EXPECT_EQ(counted("shims to change"), "0");
  EXPECT_EQ(counted("remarks on the entries"), "0");
  EXPECT_TRUE(book.tells(on_read_me, "0 of 16"));
}

}  // namespace
}  // namespace shimwright::tests
