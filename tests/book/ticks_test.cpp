// SPDX-License-Identifier: MPL-2.0
//
// The ticks on Fit: what they say, when they hold, and what the sheet tells when they do not.
#include <gtest/gtest.h>

#include <map>

#include "book/look/styles.hpp"
#include "fit_cells.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace style = book::style;
using book::FitMap;
using book::StepsMap;
constexpr auto on_engine = book::sheet_name::engine;

TEST(Fit, greys_a_ticked_row_and_counts_it) {
  OpenBook demo(the_office(), demo_file());
  const At first = fit.at(0, FitMap::valve);
  EXPECT_EQ(laid_over(demo, first), style::fit_turn);
  const std::string all = said(demo, StepsMap::steps_count);
  EXPECT_NO_THROW(demo.find(book::sheet_name::read_me, "0 of " + all));
  tick(demo, 0);
  EXPECT_EQ(laid_over(demo, first), style::fit_done);
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::out)), style::fit_done);
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::done)), style::fit_done);
  EXPECT_NO_THROW(demo.find(book::sheet_name::read_me, "1 of " + all));
  EXPECT_EQ(said(demo, StepsMap::ticks_wrong), "");
}

TEST(Fit, warns_where_a_step_before_a_tick_is_not_done) {
  OpenBook demo(the_office(), demo_file());
  tick(demo, 0);
  tick(demo, 2);
  EXPECT_EQ(
      said(demo, StepsMap::ticks_wrong),
      "Step 2 is not ticked and a later one is. If it is done, tick it. If not: see that "
      "every valve has a shim, turn the crank forwards to stop 2 again, clear the ticks below "
      "it and go on from there.");
  tick(demo, 1);
  EXPECT_EQ(said(demo, StepsMap::ticks_wrong), "");
}

// A good gap where none was read.
void read_the_rest(OpenBook& book) {
  for (const book::Card& card : the_places().head.cards) {
    if (!book.formula(book::sheet_name::head, card.value(book::card::gap)).empty()) continue;
    book.type(book::sheet_name::head, card.value(book::card::gap),
              card.valve.side == Side::inlet ? 0.19 : 0.26);
  }
  book.recalculate();
}

TEST(Fit, says_when_all_is_done_and_what_comes_then) {
  OpenBook demo(the_office(), demo_file());
  tick_throughout(demo);
  EXPECT_TRUE(demo.shown(on_fit, said_box).starts_with("All steps are ticked. Measure every gap"));
  EXPECT_TRUE(demo.tells(on_fit, " is still to be measured and may want a shim"));
  for (int row = 0; row < fit.rows; ++row) demo.clear(on_fit, fit.at(row, FitMap::done));
  read_the_rest(demo);
  EXPECT_EQ(laid_over(demo, said_box), "");
  tick_throughout(demo);
  EXPECT_TRUE(demo.shown(on_fit, said_box).starts_with("All steps are ticked. Measure every gap"));
  EXPECT_TRUE(demo.tells(on_fit, "in a copy of this book: clear all ticks here"));
  EXPECT_TRUE(demo.tells(on_fit, "add the shims left over"));
  EXPECT_EQ(laid_over(demo, said_box), style::fit_next);
}

// In the copy, where the new readings are typed before the ticks are cleared.
TEST(Fit, takes_ticks_of_another_list_done_throughout_for_what_they_are) {
  OpenBook demo(the_office(), demo_file());
  tick_throughout(demo);
  for (const book::Card& card : the_places().head.cards)
    demo.type(book::sheet_name::head, card.value(book::card::gap),
              card.valve.side == Side::inlet ? 0.19 : 0.26);
  demo.recalculate();
  const std::string told = demo.shown(on_fit, said_box);
  EXPECT_TRUE(told.starts_with("All steps of another list were ticked")) << told;
  EXPECT_NE(told.find("clear all ticks"), std::string::npos) << told;
  EXPECT_EQ(told.find("begin again"), std::string::npos) << told;
  EXPECT_TRUE(told.ends_with("Nothing to fit: the plan changes no shim.")) << told;
  EXPECT_EQ(laid_over(demo, said_box), style::trouble_found);
}

// Two inlet valves of one stop, each of which wants the other's shim: one stands empty meanwhile.
class Exchange : public ::testing::Test {
 protected:
  Exchange() {
    for (const Side side : {Side::exhaust, Side::inlet}) {
      book.type(on_engine, engine::of(side, engine::min_row), 0.15);
      book.type(on_engine, engine::of(side, engine::max_row), 0.25);
    }
    read("1 IN L", 0.40, 2.5);
    read("1 IN R", 0.0, 2.7);
    read("4 IN L", 0.20, 2.6);
    book.recalculate();
  }
  void read(const char* valve, double gap, double shim) {
    book.type(book::sheet_name::head, card_of(valve).value(book::card::gap), gap);
    book.type(book::sheet_name::head, card_of(valve).value(book::card::micrometer), shim);
  }
  void change_the_steps() {
    book.type(book::sheet_name::shims, book::shims_place::first_spare, "A");
    book.type(book::sheet_name::shims, right_of(book::shims_place::first_spare), 2.4);
    read("4 IN L", 0.02, 2.6);
    book.recalculate();
  }
  // Until a shim is out and none in; its valve.
  std::string tick_until_one_is_empty() {
    for (int row = 0; row < fit.rows; ++row) {
      tick(book, row);
      if (!shown(book, row, FitMap::out).empty() && shown(book, row, FitMap::in).empty())
        return shown(book, row, FitMap::valve);
    }
    return {};
  }
  OpenBook book{the_office(), template_file()};
};

TEST_F(Exchange, names_the_valve_that_stands_empty_when_the_steps_change) {
  const std::string valve = tick_until_one_is_empty();
  ASSERT_FALSE(valve.empty());
  const std::string shim = valve == "1 IN L" ? "2.500" : "2.700";
  EXPECT_EQ(said(book, StepsMap::emptied), valve + " (" + shim + " came out)");
  EXPECT_EQ(said(book, StepsMap::ticks_wrong), "");
  change_the_steps();
  const std::string told = book.shown(on_fit, said_box);
  EXPECT_NE(told.find("undo the last entry, or type back what stood there"), std::string::npos)
      << told;
  EXPECT_NE(
      told.find("before you turn the crank, put the camshafts back or clear a tick, fill " + valve +
                " (" + shim + " came out) from the spares or the shims that lie loose"),
      std::string::npos)
      << told;
  EXPECT_NE(told.find("the gap measured over it"), std::string::npos) << told;
  EXPECT_NE(told.find("list all that lie loose, the bought ones too"), std::string::npos) << told;
}

TEST_F(Exchange, names_no_valve_once_each_has_a_shim) {
  const auto count = static_cast<int>(
      book.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)));
  for (int row = 0; row + 1 < count; ++row) tick(book, row);
  book.recalculate();
  EXPECT_EQ(said(book, StepsMap::emptied), "");
}

TEST_F(Exchange, asks_for_no_gap_that_cannot_be_measured_while_the_camshafts_are_out) {
  book.type(on_engine, engine::opened, engine::cams_out);
  book.recalculate();
  EXPECT_TRUE(book.tells(on_fit, "First the camshafts come out"));
  EXPECT_FALSE(book.tells(on_fit, "Turn the crank by hand only"));
  const std::string valve = tick_until_one_is_empty();
  ASSERT_FALSE(valve.empty());
  change_the_steps();
  const std::string told = book.shown(on_fit, said_box);
  EXPECT_NE(told.find("fill " + valve), std::string::npos) << told;
  EXPECT_NE(told.find("old gap + old shim - new shim"), std::string::npos) << told;
  EXPECT_EQ(told.find("measured over it"), std::string::npos) << told;
}

TEST(Fit, warns_of_ticks_beyond_the_steps) {
  OpenBook demo(the_office(), demo_file());
  demo.type(on_fit, fit.at(fit.rows - 1, FitMap::done), "x");
  EXPECT_NE(said(demo, StepsMap::ticks_wrong).find("steps have changed"), std::string::npos);
  EXPECT_EQ(said(demo, StepsMap::steps_ticked), "0");
}

TEST(Fit, ticks_a_step_by_its_number_its_valve_its_shim_and_its_list) {
  OpenBook demo(the_office(), demo_file());
  const std::string list = " (" + said(demo, StepsMap::list_code) + ")";
  EXPECT_EQ(list.size(), 7U) << list;
  const std::string all = said(demo, StepsMap::steps_count);
  EXPECT_EQ(demo.worked(steps_map.step_at(0, StepsMap::tick)), "1/" + all + ": turn to 2" + list);
  EXPECT_EQ(
      demo.worked(steps_map.step_at(1, StepsMap::tick)),
      "2/" + all + ": " + shown(demo, 1, FitMap::valve) + " " + shown(demo, 1, FitMap::in) + list);
}

// Where one step has changed, neither the shims nor the crank are where the others take them to be.
TEST(Fit, takes_no_tick_at_all_once_a_step_is_another) {
  OpenBook demo(the_office(), demo_file());
  const auto count = static_cast<int>(
      demo.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)));
  for (int row = 0; row + 1 < count; ++row) tick(demo, row);
  EXPECT_EQ(said(demo, StepsMap::steps_ticked), std::to_string(count - 1));
  EXPECT_EQ(said(demo, StepsMap::ticks_wrong), "");
  // The reading of the valve that was fitted first is mended; its step changes or goes.
  const std::string valve = shown(demo, 1, FitMap::valve);
  const At gap = card_of(valve).value(book::card::gap);
  const double before = demo.number(book::sheet_name::head, gap);
  demo.type(book::sheet_name::head, gap, before + 0.2);
  demo.recalculate();
  EXPECT_EQ(said(demo, StepsMap::steps_ticked), "0");
  EXPECT_EQ(said(demo, StepsMap::ticks_astray), std::to_string(count - 1));
  EXPECT_TRUE(said(demo, StepsMap::ticks_wrong).starts_with("The steps have changed since "))
      << said(demo, StepsMap::ticks_wrong);
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::done)), style::trouble_found);
  demo.type(book::sheet_name::head, gap, before);
  demo.recalculate();
  EXPECT_EQ(said(demo, StepsMap::steps_ticked), std::to_string(count - 1)) << "the same list again";
}

// What the bench reads of the steps, notes apart.
std::string list_of(const OpenBook& book) {
  std::string list;
  for (int row = 0; row < fit.rows; ++row)
    for (int column = FitMap::step; column < FitMap::note; ++column)
      list += shown(book, row, static_cast<FitMap::Column>(column)) + '|';
  return list;
}

TEST(Fit, gives_each_list_of_steps_a_code_of_its_own) {
  OpenBook demo(the_office(), demo_file());
  std::map<std::string, std::string> codes;
  std::map<std::string, std::string> lists;
  const auto look = [&] {
    demo.recalculate();
    const std::string list = list_of(demo);
    const std::string code = said(demo, StepsMap::list_code);
    EXPECT_EQ(codes.try_emplace(list, code).first->second, code) << list;
    EXPECT_EQ(lists.try_emplace(code, list).first->second, list) << code;
  };
  look();
  for (const book::Card& card : the_places().head.cards) {
    const At gap = card.value(book::card::gap);
    const double before = demo.number(book::sheet_name::head, gap);
    for (const double other : {0.05, 0.11, 0.36}) {
      demo.type(book::sheet_name::head, gap, other);
      look();
    }
    demo.type(book::sheet_name::head, gap, before);
  }
  look();
  demo.type(on_engine, engine::opened, engine::cams_out);
  look();
  EXPECT_GT(codes.size(), 20U);
}

TEST(Fit, shouts_a_tick_that_is_not_the_rows_own) {
  OpenBook demo(the_office(), demo_file());
  demo.type(on_fit, fit.at(0, FitMap::done), demo.worked(steps_map.step_at(1, StepsMap::tick)));
  EXPECT_EQ(said(demo, StepsMap::steps_ticked), "0");
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::done)), style::trouble_found);
  EXPECT_EQ(laid_over(demo, fit.at(0, FitMap::valve)), style::fit_turn);
  EXPECT_EQ(said(demo, StepsMap::ticks_wrong),
            "A tick stands in a row that is not its own: clear it.");
}

}  // namespace
}  // namespace shimwright::tests
