// SPDX-License-Identifier: MPL-2.0
//
// Fit: what Take to the bench writes are the steps that are told without any book, and it stands
// still. What the box says of ticks and plans: core/service_bench_test.cpp.
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>

#include "book/look/styles.hpp"
#include "core/crank/crank.hpp"
#include "core/fitting/steps.hpp"
#include "fit_cells.hpp"
#include "job.hpp"
#include "on_sheets.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace style = book::style;
using book::as;
using book::FitMap;

// The same question without a book. No firing: the camshafts are out.
FittingSteps steps_told(const PlanQuestion& question, std::string_view firing) {
  std::vector<OpenAt> open;
  if (!firing.empty()) {
    const auto stops = crank_stops(Firing::in_order(firing));
    for (std::size_t stop = 0; stop < stops.size(); ++stop)
      for (const auto& [place, clear] : stops[stop].reachable)
        for (std::size_t i = 0; i < question.valves.size(); ++i) {
          const ValveId& valve = the_places().valves[i];
          if (valve.cylinder == place.cylinder &&
              (valve.side == Side::inlet) == (place.side == Side::inlet))
            open.push_back({i, static_cast<int>(stop) + 1});
        }
  }
  return fitting_steps(fitting_of(question, best_plan(question), open));
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
  for (int row = 0; row < fit.rows; ++row) {
    const ::testing::ScopedTrace place(__FILE__, __LINE__, "step " + std::to_string(row + 1));
    const auto index = static_cast<std::size_t>(row);
    if (index >= steps.size()) {
      for (int column = FitMap::kind; column <= FitMap::done; ++column)
        EXPECT_EQ(shown(book, row, static_cast<FitMap::Column>(column)), "");
      continue;
    }
    const Step& step = steps[index];
    EXPECT_EQ(shown(book, row, FitMap::step), std::to_string(row + 1));
    EXPECT_EQ(shown(book, row, FitMap::stop), step.stop ? std::to_string(*step.stop) : "");
    EXPECT_EQ(shown(book, row, FitMap::valve),
              step.valve ? question.valves[*step.valve].name : "turn");
    EXPECT_EQ(length(book, row, FitMap::out), mm(step.out));
    EXPECT_EQ(length(book, row, FitMap::in), mm(step.in));
    EXPECT_EQ(shown(book, row, FitMap::from), step.from);
    if (step.valve) {
      EXPECT_EQ(shown(book, row, FitMap::note),
                in_words(step.notes, Teller(Language::english, Unit::mm, ".", Terms::book)));
    } else {
      EXPECT_FALSE(shown(book, row, FitMap::note).empty());
    }
  }
}

std::ptrdiff_t turns_on(const OpenBook& book) {
  std::ptrdiff_t turns = 0;
  for (int row = 0; row < fit.rows; ++row)
    if (shown(book, row, FitMap::kind) == word_for(Step::Kind::turn)) ++turns;
  return turns;
}

class FittedBook : public ::testing::TestWithParam<int> {};

TEST_P(FittedBook, takes_the_steps_of_its_plan_to_the_bench) {
  for (const bool cams_out : {false, true}) {
    OpenBook book(the_office(), template_file());
    const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout);
    type_job(book, job, the_places());
    if (cams_out) {
      book.type(on_engine, engine::opened, engine::cams_out);
      book.recalculate();
    }
    const PlanQuestion question = question_of(job, the_places().layout);
    const FittingSteps told = steps_told(question, cams_out ? "" : "1-3-4-2");
    ASSERT_FALSE(told.steps.empty());
    const int taken = take_to_bench(book);
    // There a further stop of the crank may serve better (service_further_stops_test.cpp).
    if (told.stand_ins > 0 || told.waiting > 0) {
      EXPECT_LE(turns_on(book), std::ranges::count(told.steps, Step::Kind::turn, &Step::kind))
          << box_of_fit(book);
      continue;
    }
    EXPECT_EQ(taken, static_cast<int>(told.steps.size())) << box_of_fit(book);
    expect_steps(book, question, told.steps);
  }
}

INSTANTIATE_TEST_SUITE_P(of_made_up_engines, FittedBook, ::testing::Range(0, 4));

TEST(Fit, of_a_book_without_a_list_has_bare_rows_and_says_what_to_do) {
  OpenBook demo(the_office(), demo_file());
  EXPECT_EQ(steps_on(demo), 0);
  EXPECT_NE(box_of_fit(demo).find("Take to the bench writes them here"), std::string::npos);
  for (int column = FitMap::kind; column <= FitMap::done; ++column)
    EXPECT_EQ(laid_over(demo, fit.at(0, static_cast<FitMap::Column>(column))), "");
}

TEST(Fit, stands_still_whatever_is_entered_and_says_that_the_plan_has_changed) {
  OpenBook demo(the_office(), demo_file());
  ASSERT_GT(take_to_bench(demo), 2);
  const auto list = [&demo] {
    std::vector<std::string> rows;
    for (int row = 0; row < fit.rows; ++row)
      for (int column = FitMap::kind; column <= FitMap::done; ++column)
        rows.push_back(shown(demo, row, static_cast<FitMap::Column>(column)));
    return rows;
  };
  const auto before = list();
  EXPECT_EQ(box_of_fit(demo).find("The plan has changed"), std::string::npos);
  demo.type(book::sheet_name::head, card_of("1 EX L").value(book::card::gap), 0.05);
  demo.recalculate();
  EXPECT_EQ(list(), before);
  EXPECT_NE(box_of_fit(demo).find("The plan has changed"), std::string::npos) << box_of_fit(demo);
  EXPECT_TRUE(demo.tells(book::sheet_name::read_me, "As Fit says: The plan has changed"));
  EXPECT_FALSE(demo.tells(book::sheet_name::read_me, "On Fit, go on with step"));
}

TEST(Fit, takes_marks_of_any_kind_only_where_a_step_is_done) {
  OpenBook demo(the_office(), demo_file());
  const int count = take_to_bench(demo);
  ASSERT_GT(count, 2);
  for (int column = FitMap::kind; column < FitMap::done; ++column)
    EXPECT_TRUE(demo.locked(on_fit, fit.at(0, static_cast<FitMap::Column>(column)))) << column;
  EXPECT_FALSE(demo.locked(on_fit, fit.at(0, FitMap::done)));
}

// Everything that the command changed, looked at before and after.
struct Bench {
  std::vector<std::string> contents;
  sal_Int32 last_printed_row;
  bool operator==(const Bench&) const = default;
};

Bench bench_of(const OpenBook& book) {
  Bench bench;
  for (int row = FitMap::head_row; row < FitMap::first_row + fit.rows; ++row)
    for (int column = FitMap::kind; column <= FitMap::done; ++column)
      bench.contents.push_back(book.formula(on_fit, {column, row}));
  bench.contents.push_back(book.formula(on_fit, FitMap::gaps_taken));
  bench.last_printed_row =
      as<css::sheet::XPrintAreas>(book.sheet(on_fit))->getPrintAreas()[0].EndRow;
  return bench;
}

TEST(Fit, is_taken_by_one_step_of_undo_and_redo_gives_it_back_exactly) {
  OpenBook demo(the_office(), demo_file());
  const Bench before = bench_of(demo);
  ASSERT_GT(take_to_bench(demo), 2);
  const Bench after = bench_of(demo);
  EXPECT_NE(before, after);
  const auto undo = as<css::document::XUndoManagerSupplier>(demo.document())->getUndoManager();
  EXPECT_EQ(office::from_office(undo->getCurrentUndoActionTitle()), "Take to the bench");
  undo->undo();
  EXPECT_EQ(bench_of(demo), before);
  EXPECT_TRUE(demo.locked(on_fit, fit.at(0, FitMap::note)));
  undo->redo();
  EXPECT_EQ(bench_of(demo), after);
}

TEST(Fit, prints_the_rows_of_its_steps_and_no_more) {
  OpenBook demo(the_office(), demo_file());
  const int count = take_to_bench(demo);
  ASSERT_GT(count, 2);
  EXPECT_EQ(bench_of(demo).last_printed_row, FitMap::first_row + count - 1);
}

TEST(Fit, shows_sizes_with_the_decimals_of_inches) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places(), Unit::inch);
  const int count = take_to_bench(book);
  ASSERT_GT(count, 2);
  int sizes = 0;
  for (int row = 0; row < count; ++row)
    if (const std::string in = shown(book, row, FitMap::in); !in.empty()) ++sizes;
  EXPECT_GT(sizes, 1);
  EXPECT_NO_THROW(book.find(on_fit, "Valve by valve, cams in place; sizes in inches"));
}

}  // namespace
}  // namespace shimwright::tests
