// SPDX-License-Identifier: MPL-2.0
//
// Fit: the steps in the book are the steps that are told without any book, and ticks are seen.
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntries.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntry.hpp>
#include <map>

#include "book/fit_map.hpp"
#include "book/steps_map.hpp"
#include "book/styles.hpp"
#include "core/crank.hpp"
#include "core/entries.hpp"
#include "core/steps.hpp"
#include "job.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace style = book::style;
using book::as;
using book::FitMap;
using book::StepsMap;
constexpr auto on_fit = book::sheet_name::fit;
constexpr auto on_engine = book::sheet_name::engine;

const FitMap fit(the_places());
const StepsMap steps_map(the_places());
const WorkingsMap map(the_places().count());

// A table of the workings, as the functions get it.
EntryTable table(const OpenBook& book, const Area& area) {
  const auto range =
      book.sheet(book::sheet_name::workings)
          ->getCellRangeByPosition(area.from.column, area.from.row, area.to.column, area.to.row);
  EntryTable rows;
  for (const auto& cells : as<css::sheet::XCellRangeData>(range)->getDataArray()) {
    auto& row = rows.emplace_back();
    for (const auto& cell : cells) {
      double number = 0;
      rtl::OUString text;
      if (cell >>= number)
        row.emplace_back(number);
      else if (cell >>= text)
        row.emplace_back(office::from_office(text));
      else
        row.emplace_back();
    }
  }
  return rows;
}

PlanQuestion asked_in(const OpenBook& book) {
  return sound_question(
      read_entries(table(book, map.valves()), table(book, map.stock()), table(book, map.rules())));
}

// The same question without a book. No firing: the camshafts are out.
std::vector<Step> steps_told(const PlanQuestion& question, std::string_view firing) {
  std::vector<OpenAt> open;
  if (!firing.empty()) {
    const auto stops = crank_stops(Firing::in_order(firing));
    for (std::size_t stop = 0; stop < stops.size(); ++stop)
      for (const ValvePlace& place : stops[stop].reachable)
        for (std::size_t i = 0; i < question.valves.size(); ++i) {
          const book::ValveId& valve = the_places().valves[i];
          if (valve.cylinder == place.cylinder &&
              (valve.side == book::Side::inlet) == (place.side == Side::inlet))
            open.push_back({i, static_cast<int>(stop) + 1});
        }
  }
  return fitting_steps(fitting_of(question, best_plan(question), open)).steps;
}

std::string shown(const OpenBook& book, int row, FitMap::Column column) {
  return book.shown(on_fit, fit.at(row, column));
}

std::optional<double> length(const OpenBook& book, int row, FitMap::Column column) {
  if (shown(book, row, column).empty()) return std::nullopt;
  return Length::of(book.number(on_fit, fit.at(row, column)), Unit::mm).mm();
}

std::optional<double> mm(const std::optional<Length>& size) {
  return size ? std::optional(size->mm()) : std::nullopt;
}

void expect_steps(const OpenBook& book, const PlanQuestion& question,
                  const std::vector<Step>& steps) {
  ASSERT_LE(static_cast<int>(steps.size()), fit.rows);
  EXPECT_EQ(book.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)),
            static_cast<double>(steps.size()));
  for (int row = 0; row < fit.rows; ++row) {
    const ::testing::ScopedTrace place(__FILE__, __LINE__, "step " + std::to_string(row + 1));
    const auto index = static_cast<std::size_t>(row);
    if (index >= steps.size()) {
      for (int column = FitMap::step; column <= FitMap::note; ++column)
        EXPECT_EQ(shown(book, row, static_cast<FitMap::Column>(column)), "");
      continue;
    }
    const Step& step = steps[index];
    EXPECT_EQ(shown(book, row, FitMap::step), std::to_string(row + 1));
    EXPECT_EQ(shown(book, row, FitMap::stop), step.stop    ? std::to_string(*step.stop)
                                              : step.valve ? "\u2013"
                                                           : "");
    EXPECT_EQ(shown(book, row, FitMap::valve),
              step.valve ? question.valves[*step.valve].name : "turn");
    EXPECT_EQ(length(book, row, FitMap::out), mm(step.out));
    EXPECT_EQ(length(book, row, FitMap::in), mm(step.in));
    EXPECT_EQ(shown(book, row, FitMap::from), step.from);
    const bool own_words = !step.valve || step.kind == Step::Kind::wait;
    if (own_words)
      EXPECT_FALSE(shown(book, row, FitMap::note).empty());
    else
      EXPECT_EQ(shown(book, row, FitMap::note), step.note);
  }
}

void expect_told_steps(const OpenBook& book, std::string_view firing) {
  const PlanQuestion question = asked_in(book);
  const std::vector<Step> steps = steps_told(question, firing);
  ASSERT_FALSE(steps.empty());
  expect_steps(book, question, steps);
}

// The style laid over a cell of the first row of steps by the first condition that holds.
std::string laid_over(OpenBook& book, At at) {
  const auto entries = as<css::sheet::XSheetConditionalEntries>(
      as<css::beans::XPropertySet>(book.cell(on_fit, at))->getPropertyValue("ConditionalFormat"));
  for (sal_Int32 i = 0; i < entries->getCount(); ++i) {
    const auto entry = entries->getByIndex(i);
    const std::string condition =
        office::from_office(as<css::sheet::XSheetCondition>(entry)->getFormula1());
    if (book.value_of(on_fit, "=" + condition) != 0)
      return office::from_office(as<css::sheet::XSheetConditionalEntry>(entry)->getStyleName());
  }
  return {};
}

std::string said(const OpenBook& book, StepsMap::Fact which) {
  return book.worked(steps_map.fact(which));
}

// As the list of that row offers it.
void tick(OpenBook& book, int row) {
  book.type(on_fit, fit.at(row, FitMap::done), book.worked(steps_map.step_at(row, StepsMap::tick)));
}

TEST(Fit, tells_the_steps_of_the_demo) {
  OpenBook demo(the_office(), demo_file());
  expect_told_steps(demo, "1-3-4-2");
}

class FittedBook : public ::testing::TestWithParam<int> {};

TEST_P(FittedBook, tells_the_steps_of_its_plan) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout),
           the_places());
  expect_told_steps(book, "1-3-4-2");
  book.type(on_engine, engine::firing, "1-2-4-3");
  book.recalculate();
  expect_told_steps(book, "1-2-4-3");
}

INSTANTIATE_TEST_SUITE_P(of_made_up_engines, FittedBook, ::testing::Range(0, 6));

TEST(Fit, with_the_camshafts_out_turns_at_the_end_only) {
  OpenBook demo(the_office(), demo_file());
  demo.type(on_engine, engine::opened, engine::cams_out);
  demo.recalculate();
  expect_told_steps(demo, "");
  const int count = static_cast<int>(
      demo.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)));
  for (int row = 0; row < count; ++row)
    EXPECT_EQ(shown(demo, row, FitMap::valve) == "turn", row == count - 1) << row;
}

TEST(Fit, tells_a_turn_in_words_a_hand_can_follow) {
  OpenBook demo(the_office(), demo_file());
  ASSERT_EQ(shown(demo, 0, FitMap::stop), "2");
  EXPECT_EQ(shown(demo, 0, FitMap::note),
            "Every valve has its shim? By hand, turn forwards to cylinder 4's firing dead centre: "
            "360\u00b0 after stop 1.");
}

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

TEST(Fit, tells_a_later_turn_from_where_the_crank_is) {
  OpenBook demo(the_office(), demo_file());
  int row = 1;
  while (shown(demo, row, FitMap::valve) != "turn") ++row;
  ASSERT_EQ(shown(demo, row, FitMap::stop), "1");
  EXPECT_EQ(shown(demo, row, FitMap::note),
            "Every valve has its shim? By hand, turn forwards to cylinder 1's firing dead centre: "
            "360\u00b0 on from stop 2.");
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

int ticked_throughout(OpenBook& book) {
  const auto count = static_cast<int>(
      book.number(book::sheet_name::workings, steps_map.fact(StepsMap::steps_count)));
  for (int row = 0; row < count; ++row) tick(book, row);
  book.recalculate();
  return count;
}

// The box below the caution.
constexpr At said_box{1, 3};

// A good gap where none was read.
void read_the_rest(OpenBook& book) {
  for (const book::Card& card : the_places().head.cards) {
    if (!book.formula(book::sheet_name::head, card.value(book::card::gap)).empty()) continue;
    book.type(book::sheet_name::head, card.value(book::card::gap),
              card.valve.side == book::Side::inlet ? 0.19 : 0.26);
  }
  book.recalculate();
}

TEST(Fit, says_when_all_is_done_and_what_comes_then) {
  OpenBook demo(the_office(), demo_file());
  ticked_throughout(demo);
  EXPECT_TRUE(demo.shown(on_fit, said_box).starts_with("All steps are ticked. Measure every gap"));
  EXPECT_TRUE(demo.tells(on_fit, " is still to be measured and may want a shim"));
  for (int row = 0; row < fit.rows; ++row) demo.clear(on_fit, fit.at(row, FitMap::done));
  read_the_rest(demo);
  EXPECT_EQ(laid_over(demo, said_box), "");
  ticked_throughout(demo);
  EXPECT_TRUE(demo.shown(on_fit, said_box).starts_with("All steps are ticked. Measure every gap"));
  EXPECT_TRUE(demo.tells(on_fit, "in a copy of this book: clear all ticks here"));
  EXPECT_TRUE(demo.tells(on_fit, "add the shims left over"));
  EXPECT_EQ(laid_over(demo, said_box), style::fit_next);
}

// In the copy, where the new readings are typed before the ticks are cleared.
TEST(Fit, takes_ticks_of_another_list_done_throughout_for_what_they_are) {
  OpenBook demo(the_office(), demo_file());
  ticked_throughout(demo);
  for (const book::Card& card : the_places().head.cards)
    demo.type(book::sheet_name::head, card.value(book::card::gap),
              card.valve.side == book::Side::inlet ? 0.19 : 0.26);
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
    for (const book::Side side : {book::Side::exhaust, book::Side::inlet}) {
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

TEST(Fit, asks_to_measure_a_shim_that_moves_by_its_mark_alone) {
  OpenBook demo(the_office(), demo_file());
  const std::string valve = shown(demo, 4, FitMap::from);  // 2 IN L gets the shim of that valve
  EXPECT_FALSE(demo.tells(on_fit, "by the mark alone"));
  demo.type(book::sheet_name::head, card_of(valve).value(book::card::mark), 2551.0);
  demo.clear(book::sheet_name::head, card_of(valve).value(book::card::micrometer));
  demo.recalculate();
  EXPECT_EQ(shown(demo, 4, FitMap::from), valve);
  EXPECT_TRUE(demo.tells(on_fit, "Known by the mark alone: the shim of " + valve + ". Measure it"));
}

TEST(Fit, says_which_valves_stay_outside_their_limits) {
  OpenBook demo(the_office(), demo_file());
  const std::string valve = shown(demo, 1, FitMap::valve);
  const auto leave = [&](const char* entry) {
    demo.type(book::sheet_name::head, card_of(valve).value(book::card::alone), entry);
    demo.recalculate();
  };
  EXPECT_FALSE(demo.tells(on_fit, "outside"));
  leave("yes");
  EXPECT_TRUE(
      demo.tells(on_fit, valve + " stays outside its limits: left alone, as told on Head."));
  EXPECT_EQ(laid_over(demo, said_box), style::trouble_found);
  ticked_throughout(demo);
  EXPECT_TRUE(
      demo.tells(on_fit, valve + " stays outside its limits: left alone, as told on Head."));
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

TEST(Fit, says_that_valves_are_still_to_be_measured) {
  OpenBook demo(the_office(), demo_file());
  const std::string valve = shown(demo, 1, FitMap::valve);
  demo.clear(book::sheet_name::head, card_of(valve).value(book::card::gap));
  demo.recalculate();
  EXPECT_TRUE(demo.tells(on_fit, valve));
  EXPECT_TRUE(
      demo.tells(on_fit, " are still to be measured and may want a shim that comes out here"));
}

TEST(Fit, says_that_remarks_stand_on_Plan) {
  OpenBook demo(the_office(), demo_file());
  const At gap = card_of(shown(demo, 1, FitMap::valve)).value(book::card::micrometer);
  demo.type(book::sheet_name::head, gap, demo.number(book::sheet_name::head, gap) + 0.28);
  demo.recalculate();
  const std::string count = demo.worked(map.trouble_lines(WorkingsMap::all_count));
  ASSERT_NE(count, "0");
  EXPECT_TRUE(demo.tells(
      on_fit, count + (count == "1" ? " remark" : " remarks") + " on the entries: read "));
}

TEST(Fit, of_an_empty_book_says_that_there_is_nothing_to_fit) {
  OpenBook book(the_office(), template_file());
  EXPECT_EQ(said(book, StepsMap::steps_noted),
            "Nothing to fit yet: 16 valves are still to be measured.");
  expect_steps(book, {}, {});
  EXPECT_EQ(laid_over(book, fit.at(0, FitMap::step)), style::no_row);
  EXPECT_EQ(laid_over(book, fit.at(0, FitMap::done)), style::no_entry);
  EXPECT_NO_THROW(book.find(on_fit, "Nothing to fit yet: 16 valves are still to be measured."));
}

TEST(Fit, says_which_shim_to_borrow_for_a_ring_across_stops) {
  OpenBook book(the_office(), template_file());
  const auto card = [](const char* name) {
    return *std::ranges::find_if(the_places().head.cards, [name](const book::Card& one) {
      return book::name_of(one.valve, the_places().layout) == name;
    });
  };
  // Two inlet valves at two stops, each of which wants the other's shim.
  for (const int row : {engine::min_row, engine::max_row})
    for (const book::Side side : {book::Side::exhaust, book::Side::inlet})
      book.type(on_engine, engine::of(side, row), row == engine::min_row ? 0.15 : 0.25);
  const std::pair<const char*, std::pair<double, double>> readings[] = {{"1 IN L", {0.40, 2.5}},
                                                                        {"4 IN L", {0.0, 2.7}}};
  for (const auto& [name, reading] : readings) {
    book.type(book::sheet_name::head, card(name).value(book::card::gap), reading.first);
    book.type(book::sheet_name::head, card(name).value(book::card::micrometer), reading.second);
  }
  book.recalculate();
  EXPECT_EQ(shown(book, 0, FitMap::valve), "4 IN L");
  EXPECT_EQ(laid_over(book, fit.at(0, FitMap::note)), style::fit_borrow);
  const std::string note = shown(book, 0, FitMap::note);
  EXPECT_TRUE(note.find("borrow or buy a shim no thicker than 2.700 mm") != std::string::npos)
      << note;
  EXPECT_NE(said(book, StepsMap::steps_wrong).find("stand-in"), std::string::npos);

  // A thin spare is one.
  book.type(book::sheet_name::shims, book::shims_place::first_spare, "A");
  book.type(book::sheet_name::shims, right_of(book::shims_place::first_spare), 2.3);
  book.recalculate();
  expect_told_steps(book, "1-3-4-2");
  EXPECT_EQ(said(book, StepsMap::steps_wrong), "");
  bool stand_in = false;
  for (int row = 0; row < fit.rows; ++row)
    stand_in = stand_in || shown(book, row, FitMap::from) == "stand-in";
  EXPECT_TRUE(stand_in);
}

// Common practice, no source: an inline four is measured at two stops one full turn apart.
TEST(CrankInTheBook, of_an_inline_four_stops_twice_one_full_turn_apart) {
  OpenBook book(the_office(), template_file());
  EXPECT_EQ(said(book, StepsMap::stops_said),
            "Stop 1: turn forwards to cylinder 1's firing dead centre; valves open to the gauge: "
            "cylinder 1: inlet and exhaust; cylinder 2: inlet; cylinder 3: exhaust.\n"
            "Stop 2: turn forwards to cylinder 4's firing dead centre: 360\u00b0 after stop 1"
            "; valves open to the gauge: cylinder 2: exhaust; cylinder 3: inlet; cylinder 4: "
            "inlet and exhaust.\n"
            "The manual\u2019s procedure comes first. These stops assume usual valve timing where "
            "Engine leaves it blank.");
  for (const auto sheet : {book::sheet_name::read_me, book::sheet_name::head})
    EXPECT_NO_THROW(book.find(sheet, said(book, StepsMap::stops_said))) << sheet;
}

TEST(CrankInTheBook, is_told_on_each_card) {
  OpenBook book(the_office(), template_file());
  for (const book::Card& card : the_places().head.cards) {
    const bool inlet = card.valve.side == book::Side::inlet;
    const int cylinder = card.valve.cylinder;
    const bool second = cylinder == 4 || cylinder == (inlet ? 3 : 2);
    EXPECT_EQ(book.shown(book::sheet_name::head, card.at(book::card::gap)),
              second ? "gap, stop 2" : "gap, stop 1");
  }
}

TEST(CrankInTheBook, does_not_take_a_firing_order_for_a_date) {
  OpenBook book(the_office(), template_file());
  book.strike(on_engine, engine::firing, "1-2-3");
  EXPECT_EQ(book.formula(on_engine, engine::firing), "1-2-3");
  EXPECT_EQ(book.shown(on_engine, engine::firing), "1-2-3");
}

struct CrankSlip {
  const char* what;
  At at;
  std::string entry;
  const char* said;
};

const CrankSlip crank_slips[] = {
    {"no firing order", engine::firing, "", "Firing order: it is not entered"},
    {"a cylinder twice", engine::firing, "1-3-3-2", "Firing order: name each cylinder once"},
    {"three cylinders of four", engine::firing, "1-2-3", "Firing order: the engine has 4"},
    {"words for a margin", engine::margin, "a hair", "Valve timing: "},
    {"a margin that leaves nothing", engine::margin, "170", "Valve timing: "},
};

TEST(CrankInTheBook, refuses_in_a_sentence_and_tells_no_steps) {
  OpenBook demo(the_office(), demo_file());
  for (const auto& [what, at, entry, words] : crank_slips) {
    const ::testing::ScopedTrace place(__FILE__, __LINE__, what);
    const std::string before = demo.formula(on_engine, at);
    demo.type(on_engine, at, entry);
    demo.recalculate();
    for (const auto fact : {StepsMap::crank_wrong, StepsMap::steps_wrong})
      EXPECT_TRUE(said(demo, fact).starts_with(words)) << said(demo, fact);
    EXPECT_NE(demo.worked(map.trouble_lines(WorkingsMap::engine_box)).find(words),
              std::string::npos);
    EXPECT_EQ(said(demo, StepsMap::steps_count), "0");
    EXPECT_TRUE(demo.holds(map.fact(WorkingsMap::plan_stands)));
    demo.type(on_engine, at, before);
  }
}

TEST(CrankInTheBook, takes_uneven_firing_and_other_timing) {
  OpenBook book(the_office(), template_file());
  book.type(on_engine, engine::firing, "1 at 0, 2 at 270, 3 at 180, 4 at 450");
  book.recalculate();
  EXPECT_EQ(said(book, StepsMap::crank_wrong), "");
  EXPECT_NE(said(book, StepsMap::stops_said).find("Stop 1: "), std::string::npos);
}

}  // namespace
}  // namespace shimwright::tests
