// SPDX-License-Identifier: MPL-2.0
//
// Order placed at the desk, and what came of it: by menu, by button and by keys, with Undo.
#include "bench_desk.hpp"

namespace shimwright::tests {
namespace {

namespace place = book::arrivals_place;

class ArrivalsAtTheDesk : public BenchAtTheDesk {
 protected:
  std::string shown(int row, place::Column column) const {
    return text_in(document_, on_arrivals, place::at(row, column));
  }
  bool comes_to_show(int row, place::Column column, std::string_view words) const {
    return comes_true([&] { return shown(row, column) == words; });
  }
  std::vector<std::string> entered() const {
    std::vector<std::string> all;
    for (const place::Column column : {place::series, place::ordered, place::price, place::when,
                                       place::arrived, place::mark, place::micrometer})
      for (const std::string& one :
           contents(on_arrivals,
                    {place::at(0, column), place::at(place::rows(places.count()) - 1, column)}))
        all.push_back(one);
    return all;
  }
  // One shim, for 1 EX L.
  void place_order() {
    read("1 EX L", 0.15, 2.7);
    dispatch(document_, book::command::order_placed);
    answer(order_title, "OK");
  }
};

TEST_F(ArrivalsAtTheDesk, take_the_order_by_the_menu_and_give_it_back_by_undo) {
  read("1 EX L", 0.15, 2.7);
  const auto before = entered();
  screen_->press("alt+l");
  screen_->press("o");
  EXPECT_THAT(box(order_title).words(),
              testing::StartsWith("Written on Arrivals, a row a shim: 1 of 2."));
  answer(order_title, "OK");
  EXPECT_TRUE(comes_to_show(0, place::verdict, "on order"));
  EXPECT_EQ(shown(0, place::valve), "1 EX L");
  EXPECT_EQ(shown(0, place::ordered).substr(0, 2), "2.");
  EXPECT_EQ(shown(0, place::when).substr(0, 2), "20");
  EXPECT_TRUE(is_protected(on_arrivals));
  screen_->picture(PICTURES "/arrivals-ordered.png");
  const auto after = entered();
  EXPECT_NE(after, before);
  screen_->focus(title_of(document_));
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return entered() == before; })) << "one step";
  EXPECT_TRUE(is_protected(on_arrivals));
  screen_->press("ctrl+y");
  EXPECT_TRUE(comes_true([&] { return entered() == after; }));
}

TEST_F(ArrivalsAtTheDesk, take_the_order_by_the_button_on_plan_and_a_size_by_keys) {
  read("1 EX L", 0.15, 2.7);
  show_sheet(document_, on_plan);
  wait_for_turn();
  press_on(on_plan, order_title);
  answer(order_title, "OK");
  ASSERT_TRUE(comes_to_show(0, place::verdict, "on order"));
  go_to(*office_, document_, on_arrivals, place::at(0, place::micrometer));
  screen_->type("2.9");
  screen_->press("Return");
  EXPECT_TRUE(comes_to_show(0, place::verdict, "no use here: send back"));
  screen_->picture(PICTURES "/arrivals-send-back.png");
}

TEST_F(ArrivalsAtTheDesk,
       show_a_mark_that_is_not_what_the_micrometer_reads_and_a_shim_not_ordered) {
  place_order();
  cell(on_arrivals, place::at(0, place::mark))->setValue(263);
  cell(on_arrivals, place::at(2, place::micrometer))->setValue(2.9);
  go_to(*office_, document_, on_arrivals, place::at(0, place::micrometer));
  screen_->type("2.6");
  screen_->press("Return");
  EXPECT_TRUE(comes_to_show(0, place::verdict, "as ordered"));
  EXPECT_TRUE(comes_to_show(2, place::verdict, "no use here: send back"));
  EXPECT_THAT(
      text_in(document_, on_arrivals, {place::first.column, place::box_row}),
      testing::StartsWith("\u2022 Row 1: micrometer 2.60 mm and mark 2.63 mm are 0.03 mm "));
  EXPECT_EQ(text_in(document_, on_arrivals, {place::valve, place::heading_row}),
            "1 of 1 arrived, 1 not ordered");
  screen_->picture(PICTURES "/arrivals-mark-differs.png");
}

TEST_F(ArrivalsAtTheDesk, are_asked_about_before_more_is_ordered) {
  place_order();
  dispatch(document_, book::command::order_placed);
  EXPECT_THAT(box(order_title).words(),
              testing::StartsWith("The plan buys nothing beyond what is on order already: 2."));
  answer(order_title, "OK");
  read("1 EX R", 0.40, 2.45);
  dispatch(document_, book::command::order_placed);
  EXPECT_THAT(box(order_title).words(), testing::StartsWith("On order and not arrived: 2."));
  answer(order_title, "No");
  EXPECT_EQ(shown(1, place::ordered), "");
  dispatch(document_, book::command::order_placed);
  answer(order_title, "Yes");
  answer(order_title, "OK");
  EXPECT_TRUE(comes_to_show(1, place::verdict, "on order"));
}

TEST_F(ArrivalsAtTheDesk, are_waited_for_and_leave_their_row_when_they_are_in_the_engine) {
  place_order();
  const std::string size = shown(0, place::ordered);
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(),
              testing::StartsWith("Open no valve before its new shim is there."));
  answer(take_title, "No");
  EXPECT_FALSE(is_taken());
  cell(on_arrivals, place::at(0, place::micrometer))->setValue(std::stod(size));
  dispatch(document_, book::command::take_to_bench);
  ASSERT_TRUE(comes_to_the_bench());
  EXPECT_EQ(in_row(1, FitMap::from), "bought");
  for (int row = 0; row < 3; ++row) tick(row);
  const auto before = entered();
  dispatch(document_, book::command::clear_bench);
  EXPECT_THAT(box(clear_title).words(), testing::HasSubstr("Yes also clears row 1 of Arrivals"));
  answer(clear_title, "Yes");
  ASSERT_TRUE(comes_true([&] { return !is_taken(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::micrometer), size);
  EXPECT_EQ(shown(0, place::ordered), "");
  EXPECT_EQ(shown(0, place::verdict), "");
  EXPECT_TRUE(is_protected(on_arrivals));
  screen_->focus(title_of(document_));
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return entered() == before && is_taken(); }));
}

}  // namespace
}  // namespace shimwright::tests
