// SPDX-License-Identifier: MPL-2.0
//
// Fit: the steps in the book are the steps that are told without any book.
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/sheet/XCellRangeData.hpp>

#include "book/look/styles.hpp"
#include "core/crank/crank.hpp"
#include "core/entries/entries.hpp"
#include "core/fitting/steps.hpp"
#include "fit_cells.hpp"
#include "job.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace style = book::style;
using book::as;
using book::FitMap;
using book::StepsMap;
constexpr auto on_engine = book::sheet_name::engine;

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
          const ValveId& valve = the_places().valves[i];
          if (valve.cylinder == place.cylinder &&
              (valve.side == Side::inlet) == (place.side == Side::inlet))
            open.push_back({i, static_cast<int>(stop) + 1});
        }
  }
  return fitting_steps(fitting_of(question, best_plan(question), open)).steps;
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

TEST(Fit, tells_a_later_turn_from_where_the_crank_is) {
  OpenBook demo(the_office(), demo_file());
  int row = 1;
  while (shown(demo, row, FitMap::valve) != "turn") ++row;
  ASSERT_EQ(shown(demo, row, FitMap::stop), "1");
  EXPECT_EQ(shown(demo, row, FitMap::note),
            "Every valve has its shim? By hand, turn forwards to cylinder 1's firing dead centre: "
            "360\u00b0 on from stop 2.");
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
  tick_throughout(demo);
  EXPECT_TRUE(
      demo.tells(on_fit, valve + " stays outside its limits: left alone, as told on Head."));
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
      return name_of(one.valve, the_places().layout) == name;
    });
  };
  // Two inlet valves at two stops, each of which wants the other's shim.
  for (const int row : {engine::min_row, engine::max_row})
    for (const Side side : {Side::exhaust, Side::inlet})
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

}  // namespace
}  // namespace shimwright::tests
