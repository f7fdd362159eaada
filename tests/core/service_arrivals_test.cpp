// SPDX-License-Identifier: MPL-2.0
//
// Arrivals: what the order writes there, what each shim that came is good for, and what the plan
// and the bench make of it.
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "arrival_values.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/bench_commands.hpp"
#include "core/service/order_command.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

// Two valves out of limits, each of which wants a shim of its own: 1 EX L 2.65 and 3 IN L 2.55.
class Arrivals : public ::testing::Test {
 protected:
  static constexpr int rows = 6;

  Arrivals() {
    book.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5);
    book.gap("1 EX L", 0.40).micrometer("1 EX L", 2.48);
    book.gap("3 IN L", 0.30).micrometer("3 IN L", 2.48);
    for (int row = 1; row <= rows; ++row) set(row, micrometer, Entry());
  }

  void set(int row, int value, Entry entry) {
    book.set("arrival", std::to_string(row), static_cast<std::size_t>(value), std::move(entry));
  }
  Service service() const { return book.service(); }
  Findings found() const { return findings_in(service()); }

  // As the command writes it and the book hands it back.
  void write(const std::vector<EntryWrite>& writes) {
    for (const EntryWrite& one : writes)
      book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  }
  void place_order() { write(order_to_write(service(), found(), "2026-11-26")); }

  std::string verdict(int row) const {
    return book.view()["arrivals"].at("verdict", static_cast<std::size_t>(row));
  }
  std::string box() const { return box_of(book.view(), "arrivals"); }
  std::string to_order() const {
    std::string all;
    const View view = book.view();
    if (view["order"].at("size").empty()) return view["order"].at("series");
    for (std::size_t row = 1; row <= view["order"].rows.size(); ++row)
      all += (all.empty() ? "" : ", ") + view["order"].at("count", row) + " of " +
             view["order"].at("size", row);
    return all;
  }

  ServiceEntries book;
};

TEST_F(Arrivals, look_as_if_to_be_seen_to_only_where_something_is_to_be_done) {
  place_order();
  const auto look = [this](std::size_t row) { return book.view()["arrivals"].at("look", row); };
  set(1, arrived, "x");
  set(1, micrometer, 2.55);
  EXPECT_EQ(look(1), "");
  EXPECT_EQ(look(2), "");
  set(2, micrometer, 3.45);
  EXPECT_EQ(look(2), "look here");
}

TEST_F(Arrivals, of_a_bench_list_with_a_valve_that_is_none_are_not_fitted) {
  place_order();
  set(1, micrometer, 2.55);
  book.set("bench", "1", 0, "change").set("bench", "1", 2, "9 EX L").set("bench", "1", 4, 2.55);
  book.set("bench", "1", 5, "bought").set("bench", "1", 6, "x");
  book.set("taken", "list", 0, "2026-11-26 17:40");
  EXPECT_TRUE(arrivals_fitted(service(), found()).empty());
}

struct Row {
  Entry ordered;
  Entry arrived;
  Entry mark;
  Entry micrometer;
  ArrivalState state;
  std::optional<double> size;  // in stock
};

TEST_F(Arrivals, are_known_by_their_marks_and_sizes) {
  using enum ArrivalState;
  const Entry no;
  const Row all[] = {
      {no, no, no, no, none, {}},
      {2.65, no, no, no, on_order, 2.65},
      {2.65, " ", no, no, on_order, 2.65},
      {2.65, "#error", no, no, on_order, 2.65},
      {2.65, "x", no, no, ArrivalState::arrived, 2.65},
      {2.65, 46352.0, no, no, ArrivalState::arrived, 2.65},
      {2.65, "x", 260.0, no, ArrivalState::arrived, 2.60},
      {2.65, "x", 260.0, 2.652, ArrivalState::arrived, 2.652},
      {2.65, no, no, 2.652, ArrivalState::arrived, 2.652},
      {2.65, no, 260.0, no, ArrivalState::arrived, 2.60},
      {2.65, "x", 5.0, no, ArrivalState::arrived, {}},
      {2.65, "x", 260.0, -1.0, ArrivalState::arrived, {}},
      {2.65, "no", no, no, not_coming, {}},
      {2.65, "No", 260.0, 2.6, not_coming, {}},
      {no, "x", no, no, ArrivalState::arrived, {}},
      {no, "x", no, 2.7, ArrivalState::arrived, 2.7},
  };
  for (const Row& one : all) {
    const Service::ArrivalEntries row{1,       Entry(),     one.ordered, Entry(),
                                      Entry(), one.arrived, one.mark,    one.micrometer};
    const ArrivalFindings shim = arrival_in(service(), row, "A");
    const std::string at = ::testing::PrintToString(&one - all);
    EXPECT_EQ(shim.state, one.state) << at;
    EXPECT_EQ(shim.size, one.size ? std::optional(Length::of(*one.size, Unit::mm)) : std::nullopt)
        << at;
    EXPECT_EQ(shim.series, "A");
  }
}

TEST_F(Arrivals, take_the_order_as_values_a_row_a_shim) {
  ASSERT_EQ(to_order(), "1 of 2.550, 1 of 2.650");
  EXPECT_EQ(question_before_ordering(service(), found()), "");
  EXPECT_EQ(order_in_words(found()),
            "Written on Arrivals, a row a shim: 1 of 2.55 mm and 1 of 2.65 mm. When they come, "
            "enter mark and micrometer size there.");
  place_order();
  const Service now = service();
  EXPECT_EQ(now.arrivals[0].series, Entry("A"));
  EXPECT_EQ(now.arrivals[0].ordered, Entry(2.55));
  EXPECT_EQ(now.arrivals[0].price, Entry(5.0));
  EXPECT_EQ(now.arrivals[0].when, Entry("2026-11-26"));
  EXPECT_EQ(now.arrivals[1].ordered, Entry(2.65));
  EXPECT_EQ(now.arrivals[2].ordered, Entry());
}

TEST_F(Arrivals, of_two_of_a_size_are_two_rows_without_a_remark) {
  book.gap("1 IN L", 0.30).micrometer("1 IN L", 2.48);
  ASSERT_EQ(to_order(), "2 of 2.550, 1 of 2.650");
  place_order();
  EXPECT_EQ(service().arrivals[1].ordered, Entry(2.55));
  EXPECT_EQ(to_order(), "nothing");
  EXPECT_TRUE(found().remarks.empty());
  set(1, micrometer, 2.55);
  EXPECT_EQ(verdict(1), "as ordered");
  EXPECT_EQ(verdict(2), "on order");
  EXPECT_EQ(book.view()["arrivals"].at("valve", 1), "1 IN L") << "what is there goes first";
  EXPECT_EQ(book.view()["arrivals"].at("valve", 2), "3 IN L");
}

TEST_F(Arrivals, on_order_are_stock_that_is_paid_for) {
  const auto before = found().valve_plans;
  place_order();
  const auto after = found().valve_plans;
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_EQ(before[i].size, after[i].size);
  const View view = book.view();
  EXPECT_EQ(view["book"].at("to pay"), "0.00");
  EXPECT_EQ(view["book"].at("count buy"), "2");
  EXPECT_EQ(view["book"].at("count spare"), "0");
  EXPECT_EQ(book.of_valve(view, "1 EX L", "do"), "bought");
  EXPECT_EQ(book.of_valve(view, "1 EX L", "from"), "on order");
  EXPECT_EQ(verdict(1), "on order");
  EXPECT_EQ(view["arrivals"].at("valve", 1), "3 IN L");
  EXPECT_EQ(view["book"].at("arrivals tally"), "0 of 2 arrived");
  EXPECT_EQ(box(), "Still to come: 2.65 mm for 1 EX L and 2.55 mm for 3 IN L.");
  EXPECT_TRUE(tells(box_of(view, "plan"), "Still to come: 2.65 mm for 1 EX L"));
}

TEST_F(Arrivals, as_ordered_may_differ_by_what_mark_and_micrometer_may) {
  place_order();
  set(2, micrometer, 2.665);
  EXPECT_EQ(verdict(2), "as ordered");
  EXPECT_EQ(book.of_valve("1 EX L", "after"), "0.215") << "by the size that it measures";
  EXPECT_EQ(book.of_valve("1 EX L", "from"), "has arrived");
  set(2, micrometer, 2.666);
  EXPECT_EQ(verdict(2), "will do for 1 EX L");
}

TEST_F(Arrivals, in_another_size_may_do_all_the_same) {
  place_order();
  set(1, arrived, "x");
  set(1, micrometer, 2.60);
  EXPECT_EQ(verdict(1), "will do for 3 IN L");
  EXPECT_EQ(to_order(), "nothing");
}

TEST_F(Arrivals, of_no_use_go_back_and_the_plan_orders_anew) {
  book.setting("currency", "EUR");
  place_order();
  set(1, micrometer, 2.80);
  EXPECT_EQ(verdict(1), "no use here: send back");
  EXPECT_EQ(to_order(), "1 of 2.550");
  EXPECT_TRUE(tells(box(), "To send back: row 1, 5.00 EUR in all.")) << box();
  EXPECT_TRUE(tells(box(), "Still to be ordered: 2.55 mm for 3 IN L.")) << box();
  set(2, micrometer, 2.80);
  EXPECT_TRUE(tells(box(), "To send back: rows 1 and 2, 10.00 EUR in all.")) << box();
}

TEST_F(Arrivals, that_do_not_come_are_no_stock) {
  place_order();
  set(1, arrived, "no");
  EXPECT_EQ(verdict(1), "not coming");
  EXPECT_EQ(to_order(), "1 of 2.550");
  EXPECT_EQ(book.view()["book"].at("arrivals tally"), "0 of 1 arrived, 1 not coming");
}

TEST_F(Arrivals, that_nobody_ordered_have_a_row_too) {
  place_order();
  set(5, arrived, "x");
  EXPECT_EQ(verdict(5), "size? measure it");
  set(5, micrometer, 3.10);
  EXPECT_EQ(verdict(5), "no use here: send back");
  EXPECT_TRUE(tells(box(), "To send back: row 5.")) << box();
  set(1, arrived, "no");
  set(5, micrometer, 2.56);
  EXPECT_EQ(verdict(5), "will do for 3 IN L");
  EXPECT_EQ(to_order(), "nothing");
}

TEST_F(Arrivals, on_order_that_the_plan_needs_no_longer_are_told) {
  place_order();
  book.gap("3 IN L", 0.20);
  EXPECT_EQ(verdict(1), "on order, not needed");
  EXPECT_TRUE(tells(box(), "needs it no longer: row 1. Cancel what you can")) << box();
}

TEST_F(Arrivals, come_after_the_spares_of_the_drawer) {
  place_order();
  book.spare(1, "A", 2.55);
  EXPECT_EQ(book.of_valve("3 IN L", "from"), "spares");
  EXPECT_EQ(verdict(1), "on order, not needed");
  EXPECT_EQ(book.view()["book"].at("count spare"), "1");
}

TEST_F(Arrivals, of_another_series_are_of_no_use) {
  place_order();
  set(1, series, "B");
  set(1, micrometer, 2.55);
  EXPECT_EQ(verdict(1), "no use here: send back");
  EXPECT_EQ(to_order(), "1 of 2.550");
  EXPECT_TRUE(tells(box(), "Row 1: Size 2.55 mm") || tells(box(), "no valve takes series \"B\""))
      << box();
}

TEST_F(Arrivals, have_no_verdict_but_their_state_while_entries_are_wrong) {
  place_order();
  set(1, micrometer, 2.55);
  book.set("side", "inlet", 0, 0.30);  // above the max
  EXPECT_EQ(verdict(1), "correct entries");
  EXPECT_EQ(verdict(2), "on order");
  EXPECT_TRUE(tells(box(), "Engine has entries to be corrected first.")) << box();
}

TEST_F(Arrivals, are_to_be_measured) {
  place_order();
  set(1, arrived, "x");
  set(2, micrometer, 2.65);
  EXPECT_TRUE(tells(box(), "Not measured: row 1. Measure every shim that comes")) << box();
  EXPECT_TRUE(tells(box(), "Every shim that the plan needs is in hand")) << box();
  set(1, micrometer, 2.55);
  EXPECT_EQ(box(), "Every shim that the plan needs is in hand: take the steps to the bench.");
}

TEST_F(Arrivals, are_told_of_where_mark_and_micrometer_are_far_apart) {
  place_order();
  set(1, mark, 255.0);
  set(1, micrometer, 2.65);
  EXPECT_TRUE(tells(box(), "Row 1: micrometer 2.65 mm and mark 2.55 mm are 0.10 mm apart."))
      << box();
  EXPECT_TRUE(tells(box_of(book.view(), "plan"), "Arrivals, Row 1: micrometer")) << "on Plan too";
  set(2, mark, 5.0);
  EXPECT_TRUE(tells(box(), "Marks that stand for no size: Row 2 (5).")) << box();
}

TEST_F(Arrivals, are_asked_about_where_the_mark_is_not_what_the_micrometer_reads) {
  place_order();
  set(1, mark, 255.0);
  set(1, micrometer, 2.565);
  EXPECT_FALSE(tells(box(), "mark of another size")) << "the ends of what may differ belong to it";
  set(1, micrometer, 2.566);
  EXPECT_TRUE(tells(box(),
                    "Row 1: micrometer 2.566 mm and mark 2.55 mm are 0.016 mm apart. Is that the "
                    "mark of another size? Measure this shim again; the size measured counts."))
      << box();
  EXPECT_TRUE(tells(box_of(book.view(), "plan"), "Arrivals, Row 1: micrometer 2.566 mm"));
  EXPECT_EQ(book.view()["arrivals"].at("look", 1), "look here");
  set(2, mark, 265.0);
  set(2, micrometer, 2.68);
  EXPECT_TRUE(tells(box(), "Likewise Row 2.")) << box();
  EXPECT_EQ(verdict(2), "will do for 1 EX L") << "by what it measures";
  set(1, arrived, "no");
  EXPECT_TRUE(tells(box(), "Row 2: micrometer 2.68 mm and mark 2.65 mm")) << box();
  EXPECT_FALSE(tells(box(), "Row 1: ")) << "what goes back matters no more";
  book.setting("allowed difference", 0.04);
  EXPECT_FALSE(tells(box(), "mark of another size")) << box();
}

TEST_F(Arrivals, far_from_their_mark_are_told_of_once) {
  place_order();
  set(1, mark, 250.0);
  set(1, micrometer, 2.60);
  EXPECT_TRUE(tells(box(), "Row 1: micrometer 2.60 mm and mark 2.50 mm are 0.10 mm apart."));
  EXPECT_FALSE(tells(box(), "mark of another size")) << box();
  EXPECT_EQ(book.view()["arrivals"].at("look", 1), "look here");
}

TEST_F(Arrivals, have_a_box_of_one_ground) {
  place_order();
  set(1, micrometer, 2.55);
  set(1, mark, 258.0);
  set(2, micrometer, 2.65);
  const ShownTable boxes = book.view()["boxes"];
  std::size_t lines = 0;
  for (std::size_t row = 1; row <= boxes.rows.size(); ++row) {
    if (boxes.at("arrivals", row).empty()) continue;
    ++lines;
    EXPECT_EQ(boxes.at("mood arrivals", row), "remark") << boxes.at("arrivals", row);
  }
  EXPECT_GT(lines, 1U);
  EXPECT_TRUE(tells(box(), "Every shim that the plan needs is in hand")) << "a calm line too";
}

TEST_F(Arrivals, that_leave_a_gap_at_a_limit_are_told_though_they_serve) {
  book.setting("doubt", 0.02);
  place_order();
  set(1, micrometer, 2.55);
  book.sizes(1, "A", 2.00, 2.60, 0.05, 5);  // the size ordered is not to be had any more
  set(2, micrometer, 2.72);                 // 0.40 + 2.48 - 2.72 = 0.16, within 0.02 of 0.15
  EXPECT_EQ(verdict(2), "will do for 1 EX L");
  EXPECT_TRUE(tells(box(), "Row 2 leaves 1 EX L at 0.16 mm (tight?). Is another")) << box();
  set(2, micrometer, 2.70);  // 0.18
  EXPECT_FALSE(tells(box(), "worth waiting for")) << box();
}

TEST_F(Arrivals, ask_nobody_to_the_bench_where_nothing_is_to_be_fitted) {
  place_order();
  set(1, micrometer, 2.55);
  set(2, micrometer, 2.65);
  EXPECT_TRUE(tells(box(), "take the steps to the bench")) << box();
  book.gap("1 EX L", 0.20).gap("3 IN L", 0.20);
  EXPECT_FALSE(tells(box(), "take the steps to the bench")) << box();
}

TEST_F(Arrivals, are_counted_apart_from_what_nobody_ordered) {
  const auto tally = [this] { return book.view()["book"].at("arrivals tally"); };
  place_order();
  set(5, micrometer, 2.70);
  EXPECT_EQ(tally(), "0 of 2 arrived, 1 not ordered");
  set(1, arrived, "x");
  set(2, arrived, "x");
  EXPECT_EQ(tally(), "2 of 2 arrived, 1 not ordered");
  set(5, micrometer, Entry());
  EXPECT_EQ(tally(), "2 of 2 arrived");
}

TEST_F(Arrivals, that_are_not_coming_are_told_beside_those_that_are) {
  const auto tally = [this] { return book.view()["book"].at("arrivals tally"); };
  place_order();
  set(1, arrived, "x");
  set(2, arrived, "no");
  EXPECT_EQ(tally(), "1 of 1 arrived, 1 not coming");
  set(5, micrometer, 2.70);
  EXPECT_EQ(tally(), "1 of 1 arrived, 1 not coming, 1 not ordered");
  set(1, arrived, "no");
  EXPECT_EQ(tally(), "2 not coming, 1 not ordered");
}

TEST_F(Arrivals, that_nobody_ordered_are_counted_where_there_is_no_order_too) {
  set(5, micrometer, 2.70);
  EXPECT_EQ(book.view()["book"].at("arrivals tally"), "1 not ordered");
}

TEST_F(Arrivals, take_a_second_order_in_the_rows_below_and_ask_what_has_not_come) {
  place_order();
  EXPECT_EQ(why_no_order(service(), found()),
            "The plan buys nothing beyond what is on order already: 2.55 mm (row 1) and 2.65 mm "
            "(row 2). Where one of these is not coming, enter no beside it on Arrivals: the plan "
            "then orders it anew.");
  EXPECT_TRUE(order_to_write(service(), found(), "2026-11-27").empty());
  set(1, arrived, "no");
  EXPECT_TRUE(question_before_ordering(service(), found())
                  .starts_with("On order and not arrived: 2.65 mm (row 2). It stays on Arrivals"));
  EXPECT_TRUE(tells(question_before_ordering(service(), found()),
                    "Add what the plan needs beyond these, 1 of 2.55 mm?"));
  const auto writes = order_to_write(service(), found(), "2026-11-27");
  ASSERT_EQ(writes.size(), 4U);
  EXPECT_TRUE(std::ranges::all_of(writes, [](const auto& one) { return one.name == "3"; }));
  write(writes);
  EXPECT_EQ(verdict(1), "not coming");
  EXPECT_EQ(verdict(3), "on order");
}

TEST_F(Arrivals, never_write_over_what_is_entered) {
  set(1, arrived, "x");
  set(2, series, "A");
  set(3, mark, "#error");
  place_order();
  EXPECT_EQ(service().arrivals[0].ordered, Entry());
  EXPECT_EQ(service().arrivals[1].ordered, Entry());
  EXPECT_EQ(service().arrivals[2].ordered, Entry());
  EXPECT_EQ(service().arrivals[3].ordered, Entry(2.55));
  EXPECT_EQ(service().arrivals[4].ordered, Entry(2.65));
}

TEST_F(Arrivals, without_room_refuse_the_order_whole) {
  for (int row = 1; row < rows; ++row) set(row, arrived, "no");
  EXPECT_EQ(why_no_order(service(), found()),
            "Arrivals has room for 1 more shim, and the order has 2. Nothing was changed.");
  EXPECT_TRUE(order_to_write(service(), found(), "2026-11-26").empty());
}

TEST_F(Arrivals, say_why_there_is_nothing_to_order) {
  book.set("side", "inlet", 0, 0.30);
  EXPECT_EQ(why_no_order(service(), found()),
            "Correct the entries first, as Plan says: until then there is no order.");
  EXPECT_TRUE(tells(box(), "Nothing is on order. Order placed, in the menu and on Plan, writes"));
  book.set("side", "inlet", 0, 0.15);
  book.gap("1 EX L", 0.20).gap("3 IN L", 0.20);
  EXPECT_EQ(why_no_order(service(), found()), "The plan buys no shim: there is nothing to order.");
}

// A book of an earlier version.
TEST(ArrivalsOfAnOlderBook, are_none_and_nothing_else_changes) {
  ServiceEntries book;
  book.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5);
  book.gap("1 EX L", 0.40).micrometer("1 EX L", 2.48);
  const Service service = book.service();
  const Findings found = findings_in(service);
  EXPECT_TRUE(book.view()["arrivals"].rows.empty());
  EXPECT_TRUE(why_no_order(service, found).starts_with("This book was made before there was"));
  EXPECT_EQ(question_before_taking(service, found).words, "");
  EXPECT_TRUE(shims_not_in_hand(found).empty());
}

TEST_F(Arrivals, in_inches_are_ordered_in_inches) {
  book.setting("unit", "inch").limits(0.006, 0.010).sizes(1, "A", 0.080, 0.140, 0.002, 5);
  book.gap("1 EX L", 0.016).micrometer("1 EX L", 0.0985);
  book.gap("3 IN L", 0.008).micrometer("3 IN L", 0.100);
  place_order();
  ASSERT_TRUE(std::holds_alternative<double>(service().arrivals[0].ordered));
  EXPECT_NEAR(std::get<double>(service().arrivals[0].ordered), 0.106, 1e-12);
  EXPECT_EQ(verdict(1), "on order");
}

// ---- The bench.

TEST_F(Arrivals, that_have_not_come_are_asked_about_before_the_steps_are_taken) {
  EXPECT_EQ(question_before_taking(service(), found()).words, "") << "no list of arrivals is kept";
  place_order();
  set(2, micrometer, 2.65);
  const BenchQuestion question = question_before_taking(service(), found());
  EXPECT_EQ(question.words,
            "Open no valve before its new shim is there. Not in hand yet: 2.55 mm for 3 IN L.\n\n"
            "Take the steps to the bench all the same?");
  EXPECT_TRUE(tells(box_of(book.view(), "fit"), "Not in hand yet: 2.55 mm for 3 IN L."));
  set(1, arrived, "no");
  EXPECT_TRUE(tells(question_before_taking(service(), found()).words, "2.55 mm for 3 IN L"))
      << "it is still to be ordered";
  set(1, arrived, "x");
  EXPECT_EQ(question_before_taking(service(), found()).words, "");
  EXPECT_FALSE(tells(box_of(book.view(), "fit"), "Not in hand"));
}

class ArrivalsAtTheBench : public Arrivals {
 protected:
  void take() {
    int row = 0;
    for (const auto& step : bench_steps(service(), found())) {
      const std::string n = std::to_string(++row);
      book.set("bench", n, 0, step.kind).set("bench", n, 1, step.stop);
      book.set("bench", n, 2, step.valve).set("bench", n, 3, step.out);
      book.set("bench", n, 4, step.in).set("bench", n, 5, step.from);
      book.set("bench", n, 6, Entry());
    }
    steps = row;
  }
  void tick_all() {
    for (int i = 1; i <= steps; ++i) book.set("bench", std::to_string(i), 6, "x");
  }
  int steps = 0;
};

TEST_F(ArrivalsAtTheBench, leave_the_list_as_it_is_when_they_are_ordered_and_come) {
  take();
  ASSERT_GT(steps, 0);
  EXPECT_FALSE(has_plan_changed(service(), found()));
  place_order();
  EXPECT_FALSE(has_plan_changed(service(), found())) << "ordered";
  set(1, arrived, "x");
  set(2, micrometer, 2.65);
  EXPECT_FALSE(has_plan_changed(service(), found())) << "come, as ordered";
  set(2, micrometer, 2.652);
  EXPECT_TRUE(has_plan_changed(service(), found())) << "it measures otherwise";
}

TEST_F(ArrivalsAtTheBench, leave_their_rows_when_they_are_entered_on_head) {
  place_order();
  set(1, mark, 255.0);
  set(1, micrometer, 2.548);
  set(2, arrived, "x");
  set(5, micrometer, 3.10);
  take();
  tick_all();
  EXPECT_TRUE(tells(question_before_clearing(service(), found()).words,
                    "Yes also clears rows 2 and 1 of Arrivals"))
      << question_before_clearing(service(), found()).words;
  const auto writes = shims_to_enter(service(), found());
  const auto what = [&writes](std::string_view kind, std::string_view name, int value) {
    const auto one = std::ranges::find_if(writes, [&](const EntryWrite& write) {
      return write.kind == kind && write.name == name && write.value == value;
    });
    return one == writes.end() ? std::nullopt : std::optional(one->what);
  };
  EXPECT_EQ(what("valve", "3 IN L", 1), Entry(255.0)) << "its own mark";
  EXPECT_EQ(what("valve", "3 IN L", 2), Entry(2.548)) << "and size";
  EXPECT_EQ(what("valve", "1 EX L", 1), Entry(265.0)) << "the mark that it was ordered by";
  EXPECT_EQ(what("valve", "1 EX L", 2), Entry());
  for (const char* row : {"1", "2"})
    for (int value = series; value <= micrometer; ++value)
      EXPECT_EQ(what("arrival", row, value), Entry()) << row << " " << value;
  EXPECT_EQ(what("arrival", "5", micrometer), std::nullopt) << "it is still there, to be sent back";
}

// Two valves of different stops whose shims change places need a third shim meanwhile.
TEST(ArrivalsAtARing, stand_in_only_once_they_are_there) {
  ServiceEntries book;
  book.limits(0.15, 0.25).setting("margin", 60.0);  // nowhere clear together
  book.gap("1 IN L", 0.40).micrometer("1 IN L", 2.5);
  book.gap("4 IN L", 0.0).micrometer("4 IN L", 2.7);
  book.set("arrival", "1", series, "A").set("arrival", "1", ordered, 2.3);
  const auto waits = [&book] {
    const auto steps = bench_steps(book.service(), findings_in(book.service()));
    return std::ranges::any_of(steps, [](const auto& step) { return step.kind == "wait"; });
  };
  EXPECT_TRUE(waits());
  book.set("arrival", "1", arrived, "x");
  EXPECT_FALSE(waits());
}

TEST_F(Arrivals, a_remark_on_a_row_stands_once_on_read_me_first) {
  place_order();
  set(1, mark, 265.0);
  set(1, micrometer, 2.55);
  EXPECT_TRUE(tells(box(), "Row 1: micrometer 2.55 mm and mark 2.65 mm are 0.10 mm apart."))
      << box();
  const View view = book.view();
  int told = 0;
  for (std::size_t row = 1; row <= view["remarks"].rows.size(); ++row)
    told += tells(view["remarks"].at("words", row), "Row 1: micrometer 2.55 mm") ? 1 : 0;
  EXPECT_EQ(told, 1);
  EXPECT_TRUE(tells(view["remarks"].at("words", 1), "Arrivals, Row 1: micrometer"));
}

}  // namespace
}  // namespace shimwright::tests
