// SPDX-License-Identifier: MPL-2.0
//
// What the book tells beyond the functions' answers: which shims nobody need take out, which valves
// stay outside their limits, what a mark means in a book in inches, what is on sale.
#include <gtest/gtest.h>

#include <algorithm>

#include "job.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;
constexpr auto on_engine = book::sheet_name::engine;
constexpr auto on_head = book::sheet_name::head;
constexpr auto on_shims = book::sheet_name::shims;
constexpr auto on_plan = book::sheet_name::plan;
constexpr auto on_read_me = book::sheet_name::read_me;

const WorkingsMap map(the_places().count());

class ToldBook : public ::testing::Test {
 protected:
  ToldBook() { limits(0.16, 0.22); }

  void limits(double min, double max) {
    for (const Side side : {Side::exhaust, Side::inlet}) {
      book.type(on_engine, engine::of(side, engine::min_row), min);
      book.type(on_engine, engine::of(side, engine::max_row), max);
    }
  }
  void gap(std::string_view valve, double length) {
    book.type(on_head, card_of(valve).value(card::gap), length);
  }
  void leave_alone(std::string_view valve) {
    book.type(on_head, card_of(valve).value(card::alone), "yes");
  }
  std::string on_card(std::string_view valve, card::Row row) const {
    return book.shown(on_head, card_of(valve).at(row));
  }
  // On Plan, so many columns beside the valve's name: 3 what to do, 4 from where, 8 the state then.
  std::string in_row(std::string_view valve, int columns) const {
    return book.shown(on_plan, right_of(book.find(on_plan, valve), columns));
  }
  double figure(std::string_view words) const {
    return book.number(on_plan, below(book.find(on_plan, words)));
  }
  std::string progress(std::string_view words) const {
    return book.shown(on_read_me, right_of(book.find(on_read_me, words), 3));
  }
  std::string counted(std::string_view words) const {
    return book.shown(on_read_me, right_of(book.find(on_read_me, words), 2));
  }

  OpenBook book{the_office(), template_file()};
};

TEST_F(ToldBook, keeps_a_good_valve_whose_shim_nobody_has_seen) {
  gap("1 IN L", 0.20);
  gap("2 IN L", 0.10);
  book.recalculate();
  EXPECT_EQ(in_row("1 IN L", 3), "keep");
  EXPECT_EQ(in_row("1 IN L", 4), "shim may stay unread");
  EXPECT_EQ(in_row("1 IN L", 8), "\u25cf good");
  EXPECT_EQ(on_card("1 IN L", card::action), "keep");
  EXPECT_EQ(on_card("1 IN L", card::from), "shim may stay unread");
  EXPECT_EQ(on_card("1 IN L", card::then), "then \u25cf good");
  EXPECT_EQ(in_row("2 IN L", 3), "measure");
  EXPECT_EQ(on_card("2 IN L", card::action), "measure shim");
  EXPECT_EQ(figure("keep"), 1);
  EXPECT_EQ(figure("to measure"), the_places().count() - 1);
  EXPECT_EQ(progress("gaps measured"), "2 of 16");
  EXPECT_EQ(progress("needed shims known"), "0 of 15");
  EXPECT_EQ(book.value_of(book::sheet_name::workings, "=COUNTIF(actions;\"keep\")"), 1);
}

TEST_F(ToldBook, has_every_shim_measured_where_good_valves_may_be_opened) {
  gap("1 IN L", 0.20);
  book.type(on_engine, engine::touch_good, "yes");
  book.recalculate();
  EXPECT_EQ(in_row("1 IN L", 3), "measure");
  EXPECT_EQ(on_card("1 IN L", card::action), "measure shim");
  EXPECT_EQ(progress("needed shims known"), "0 of 16");
}

TEST_F(ToldBook, has_the_shim_of_a_doubtful_valve_measured_unless_the_plan_ignores_the_doubt) {
  gap("1 IN L", 0.165);
  book.type(on_engine, engine::doubt, 0.01);
  book.recalculate();
  EXPECT_EQ(in_row("1 IN L", 3), "measure");
  book.type(on_engine, engine::use_doubt, "no");
  book.recalculate();
  EXPECT_EQ(in_row("1 IN L", 3), "keep");
}

// Its shim known or not.
TEST_F(ToldBook, tells_aloud_which_valves_left_alone_stay_outside_their_limits) {
  gap("1 EX L", 0.10);
  leave_alone("1 EX L");
  gap("3 EX R", 0.30);
  book.type(on_head, card_of("3 EX R").value(card::mark), 270.0);
  leave_alone("3 EX R");
  gap("4 EX L", 0.20);
  leave_alone("4 EX L");
  book.recalculate();
  EXPECT_EQ(figure("left outside"), 2);
  EXPECT_EQ(figure("keep"), 1);
  EXPECT_EQ(counted("valves left outside"), "2");
  EXPECT_EQ(in_row("1 EX L", 3), "stays tight");
  EXPECT_EQ(in_row("3 EX R", 3), "stays loose");
  EXPECT_EQ(in_row("3 EX R", 4), "left alone as told");
  EXPECT_EQ(in_row("4 EX L", 3), "keep");
  EXPECT_EQ(on_card("1 EX L", card::action), "stays tight");
  EXPECT_TRUE(book.tells(on_plan,
                         "1 EX L, 3 EX R stay outside their limits: left alone, as told on Head."));
}

TEST_F(ToldBook, counts_the_valves_left_outside_where_there_are_too_many_to_name) {
  for (const ValveId& valve : the_places().valves) {
    gap(name_of(valve, the_places().layout), 0.10);
    leave_alone(name_of(valve, the_places().layout));
  }
  book.recalculate();
  EXPECT_TRUE(book.tells(on_plan, "16 valves stay outside their limits: left alone"));
}

TEST_F(ToldBook, calls_a_gap_of_zero_a_remark) {
  gap("1 IN L", 0.0);
  book.recalculate();
  EXPECT_EQ(counted("remarks on the entries"), "1");
}

// No doubt is entered, so such a gap is called good though nobody can know.
TEST_F(ToldBook, says_how_many_gaps_come_out_near_a_limit_while_no_doubt_is_entered) {
  constexpr std::string_view words =
      "2 gaps come out nearer than 0.010 mm to a limit, and no doubt of the readings is entered";
  gap("1 IN L", 0.16);
  gap("2 IN L", 0.211);
  gap("3 IN L", 0.21);
  gap("4 IN L", 0.19);
  book.recalculate();
  EXPECT_TRUE(book.tells(on_plan, words));
  book.type(on_engine, engine::doubt, 0.005);
  book.recalculate();
  EXPECT_FALSE(book.tells(on_plan, "nearer than"));
  book.clear(on_engine, engine::doubt);
  book.type(on_engine, engine::unit, "inch");
  limits(0.006, 0.009);
  for (const char* valve : {"1 IN L", "2 IN L", "3 IN L"}) gap(valve, 0.008);
  gap("4 IN L", 0.006);
  book.recalculate();
  EXPECT_TRUE(book.tells(on_plan, "1 gap comes out nearer than 0.0004 in to a limit"));
}

TEST_F(ToldBook, says_where_columns_are_entered_how_to_paste) {
  for (const std::string_view sheet : {on_read_me, on_shims})
    EXPECT_TRUE(book.tells(sheet, "pasted with Ctrl+Shift+V, then Values Only")) << sheet;
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
  EXPECT_EQ(book.worked(map.at(2, WorkingsMap::marked)), "2.7");
}

class InchBook : public ToldBook {
 protected:
  InchBook() {
    book.type(on_engine, engine::unit, "inch");
    limits(0.006, 0.009);
  }
  // The size in mm; nothing where the mark stands for none.
  std::string marked(double mark) {
    book.type(on_head, card_of("1 IN L").value(card::mark), mark);
    book.recalculate();
    return book.worked(map.at(2, WorkingsMap::marked));
  }
};

// 1 in is 25.4 mm exactly.
TEST_F(InchBook, reads_a_mark_with_a_point_in_inches) {
  ASSERT_EQ(book.worked(map.at(2, WorkingsMap::name)), "1 IN L");
  EXPECT_EQ(marked(0.108), "2.7432");
  EXPECT_EQ(marked(275), "2.75");
  EXPECT_EQ(marked(2755), "2.755");
  EXPECT_TRUE(book.tells(on_engine, "auto: .108 is 0.108 in; 275 is 2.75 mm, 2755 is 2.755 mm."));
}

TEST_F(InchBook, reads_a_mark_typed_as_text_likewise) {
  book.type(on_head, card_of("1 IN L").value(card::mark), ".108");
  book.recalculate();
  EXPECT_EQ(book.worked(map.at(2, WorkingsMap::marked)), "2.7432");
}

TEST_F(InchBook, takes_a_mark_of_millimetres_for_none_and_says_so) {
  EXPECT_EQ(marked(2.75), "");
  EXPECT_TRUE(book.tells(on_head, "Marks that stand for no size: 1 IN L (2.75)"));
}

TEST_F(InchBook, keeps_the_scheme_that_the_owner_chose) {
  book.type(on_engine, engine::scheme, "mm");
  EXPECT_EQ(marked(2.75), "2.75");
}

TEST_F(ToldBook, reads_a_mark_with_a_point_in_mm_where_the_book_is_in_mm) {
  book.type(on_head, card_of("1 IN L").value(card::mark), 2.75);
  book.recalculate();
  EXPECT_EQ(book.worked(map.at(2, WorkingsMap::marked)), "2.75");
  EXPECT_TRUE(book.tells(on_engine, "auto: 275 and 2.75 are 2.75 mm, 2755 is 2.755 mm."));
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
  EXPECT_TRUE(book.tells(on_shims,
                         "Offered to the plan:\n"
                         "A: 21 sizes, 2.200 to 3.200 by 0.050; 5 cheaper in another row\n"
                         "B: 41 sizes, 2.200 to 3.200 by 0.025\n"
                         "A: 5 sizes, 2.400 to 2.600 by 0.050\n"
                         "B: 1 size, 1.900"));
}

TEST_F(ToldBook, asks_for_the_doubt_of_a_reading_until_it_is_entered) {
  constexpr std::string_view words = "No feeler reading is exact: enter its doubt below";
  EXPECT_TRUE(book.tells(on_engine, words));
  book.type(on_engine, engine::doubt, 0.01);
  book.recalculate();
  EXPECT_FALSE(book.tells(on_engine, words));
}

TEST_F(ToldBook, says_whether_the_stops_rest_on_usual_timing) {
  constexpr std::string_view usual = "These stops assume usual valve timing";
  const auto rests_on_it = [&](std::string_view sheet) { return book.tells(sheet, usual); };
  EXPECT_TRUE(rests_on_it(on_read_me));
  EXPECT_TRUE(rests_on_it(on_head));
  for (const Side side : {Side::exhaust, Side::inlet})
    for (const int row : {engine::opens_row, engine::closes_row})
      book.type(on_engine, engine::of(side, row), 40.0);
  book.recalculate();
  EXPECT_FALSE(rests_on_it(on_read_me));
  EXPECT_TRUE(book.tells(on_read_me, "The manual\u2019s procedure comes first."));
}

TEST_F(ToldBook, says_what_a_unit_may_be) {
  book.type(on_engine, engine::unit, "inlet");
  book.recalculate();
  EXPECT_TRUE(book.tells(on_engine, "Unit: enter mm or inch; until then all is in mm"));
}

TEST_F(ToldBook, says_between_which_degrees_a_cylinder_fires) {
  book.type(on_engine, engine::firing, "1 at 0, 2 at 900, 3 at 180, 4 at 360");
  book.recalculate();
  EXPECT_TRUE(book.tells(on_engine, "from 0 to below 720"));
}

}  // namespace
}  // namespace shimwright::tests
