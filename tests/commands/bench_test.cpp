// SPDX-License-Identifier: MPL-2.0
//
// Take to the bench and Clear the bench at the desk: by menu, by button and by keys, with Undo.
#include "bench_desk.hpp"

namespace shimwright::tests {
namespace {

TEST_F(BenchAtTheDesk, takes_the_steps_by_the_menu_and_gives_them_back_by_undo) {
  read("1 EX L", 0.15, 2.7);
  const auto before = bench();
  screen_->press("alt+l");
  screen_->press("t");
  ASSERT_TRUE(comes_to_the_bench());
  EXPECT_EQ(in_row(1, FitMap::valve), "1 EX L");
  EXPECT_EQ(in_row(1, FitMap::out), "2.700");
  EXPECT_EQ(in_row(1, FitMap::from), "bought");
  EXPECT_EQ(in_row(0, FitMap::valve), "turn");
  EXPECT_TRUE(is_protected());
  screen_->picture(PICTURES "/bench-taken.png");
  const auto after = bench();
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return bench() == before; }));
  EXPECT_TRUE(is_protected());
  screen_->press("ctrl+y");
  EXPECT_TRUE(comes_true([&] { return bench() == after; }));
}

TEST_F(BenchAtTheDesk, takes_the_steps_by_the_button_on_fit) {
  read("1 EX L", 0.15, 2.7);
  show_sheet(document_, on_fit);
  wait_for_turn();
  press_on(on_fit, take_title);
  EXPECT_TRUE(comes_to_the_bench());
}

TEST_F(BenchAtTheDesk, ticks_a_step_by_keys) {
  take_one();
  go_to(*office_, document_, on_fit, fit.at(0, FitMap::done));
  screen_->type("x");
  screen_->press("Return");
  EXPECT_TRUE(comes_true([&] { return in_row(0, FitMap::done) == "x"; }));
  screen_->picture(PICTURES "/bench-ticked.png");
}

TEST_F(BenchAtTheDesk, says_why_there_is_nothing_to_take) {
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("Nothing to fit yet: 16 valves"));
  answer(take_title, "OK");
  EXPECT_FALSE(is_taken());
}

TEST_F(BenchAtTheDesk, asks_before_it_replaces_a_list_with_ticks) {
  take_one();
  tick(0);
  const auto before = bench();
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("1 of 3 steps on the bench are ticked."));
  answer(take_title, "No");
  EXPECT_EQ(bench(), before);
  dispatch(document_, book::command::take_to_bench);
  answer(take_title, "Yes");
  EXPECT_TRUE(comes_true([&] { return in_row(0, FitMap::done).empty(); }));
  EXPECT_TRUE(is_taken());
}

TEST_F(BenchAtTheDesk, clears_the_bench_and_enters_the_new_shims_on_head) {
  take_one();
  const std::string in = in_row(1, FitMap::in);
  for (int row = 0; row < 3; ++row) tick(row);
  const auto list = bench();
  screen_->press("alt+l");
  screen_->press("c");
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("By the ticks 1 EX L ("));
  screen_->picture(PICTURES "/bench-clear.png");
  answer(clear_title, "Yes");
  ASSERT_TRUE(comes_true([&] { return !is_taken(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::micrometer), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), in.substr(0, 1) + in.substr(2, 2));
  screen_->focus(title_of(document_));
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return bench() == list; }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.150");
  EXPECT_EQ(at_valve("1 EX L", book::card::micrometer), "2.700");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), "");
}

TEST_F(BenchAtTheDesk, clears_the_bench_alone_or_not_at_all) {
  take_one();
  for (int row = 0; row < 3; ++row) tick(row);
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "Cancel");
  EXPECT_TRUE(is_taken());
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "No");
  EXPECT_TRUE(comes_true([&] { return !is_taken(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.150");
  dispatch(document_, book::command::clear_bench);
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("Nothing is on the bench."));
  answer(clear_title, "OK");
}

TEST_F(BenchAtTheDesk, cautions_first_where_a_valve_stands_empty) {
  read("1 IN L", 0.40, 2.45);
  read("1 IN R", 0.0, 2.65);
  dispatch(document_, book::command::take_to_bench);
  ASSERT_TRUE(comes_to_the_bench());
  ASSERT_EQ(in_row(1, FitMap::in), "") << "one valve is left empty first";
  tick(0);
  tick(1);
  dispatch(document_, book::command::clear_bench);
  EXPECT_THAT(box(clear_title).words(),
              testing::HasSubstr("Do not turn the crank, refit camshafts or clear ticks yet. First "
                                 "fill 1 IN "));
  answer(clear_title, "No");
  EXPECT_TRUE(is_taken());
  dispatch(document_, book::command::clear_bench);
  answer(clear_title, "Yes");
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("Clear the bench?"));
  answer(clear_title, "Yes");
  EXPECT_TRUE(comes_true([&] { return !is_taken(); }));
}

TEST_F(BenchAtTheDesk, of_another_document_says_that_it_is_no_service_book) {
  dispatch(sheet_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("This document is no service book."));
  answer(take_title, "OK");
}

}  // namespace
}  // namespace shimwright::tests
