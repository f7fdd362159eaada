// SPDX-License-Identifier: MPL-2.0
//
// How far one is, as Read me first tells it.
#include <gtest/gtest.h>

#include "book/fit_map.hpp"
#include "book/steps_map.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

constexpr std::string_view on_read_me = book::sheet_name::read_me;

std::string counted(const OpenBook& book, std::string_view what) {
  return book.shown(on_read_me, right_of(book.find(on_read_me, what), 2));
}

TEST(Progress, calls_shims_changed_once_every_step_is_ticked_and_no_sooner) {
  OpenBook demo(the_office(), demo_file());
  const book::StepsMap steps(the_places());
  const book::FitMap fit(the_places());
  const int count = static_cast<int>(
      demo.number(book::sheet_name::workings, steps.fact(book::StepsMap::steps_count)));
  ASSERT_GT(count, 1);
  for (int row = 0; row < count; ++row) {
    EXPECT_EQ(counted(demo, "shims to change"), "8");
    EXPECT_EQ(counted(demo, "shims to buy"), "2");
    demo.type(book::sheet_name::fit, fit.at(row, book::FitMap::done),
              demo.worked(steps.step_at(row, book::StepsMap::tick)));
    demo.recalculate();
  }
  EXPECT_EQ(counted(demo, "shims changed"), "8");
  EXPECT_EQ(counted(demo, "of these bought"), "2");
  for (const char* still : {"shims to change", "shims to buy"})
    EXPECT_FALSE(demo.tells(on_read_me, still));

  // Another list of steps, of which no tick holds.
  demo.type(book::sheet_name::head, card_of("1 EX L").value(book::card::gap), 0.05);
  demo.recalculate();
  EXPECT_EQ(counted(demo, "shims to change"), "9");
  EXPECT_FALSE(demo.tells(on_read_me, "shims changed"));
}

TEST(Progress, of_a_book_without_steps_has_changed_nothing) {
  const OpenBook book(the_office(), template_file());
  EXPECT_EQ(counted(book, "shims to change"), "0");
}

}  // namespace
}  // namespace shimwright::tests
