// SPDX-License-Identifier: MPL-2.0
//
// Recheck: what is predicted for each valve, and the verdict on its new gap.
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "arrival_values.hpp"
#include "bench_entries.hpp"
#include "core/service/order_command.hpp"
#include "core/service/recheck.hpp"

namespace shimwright::tests {
namespace {

using enum RecheckVerdict;

// 1 EX L wants a shim of 2.65, which is bought; 1 IN L and 1 IN R want each other's; the others are
// good.
class Recheck : public ::testing::Test {
 protected:
  Recheck() {
    book.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5).setting("doubt", 0.01);
    for (const std::string& valve : book.valves()) book.gap(valve, 0.20).micrometer(valve, 2.60);
    book.gap("1 EX L", 0.36).micrometer("1 EX L", 2.50);
    book.gap("1 IN L", 0.40).micrometer("1 IN L", 2.50);
    book.gap("1 IN R", 0.00).micrometer("1 IN R", 2.70);
  }

  void left(const std::string& valve, Entry gap, Entry why = {}) {
    book.set("recheck", valve, 0, std::move(gap)).set("recheck", valve, 1, std::move(why));
  }
  ValveRecheck valve(const std::string& name) const {
    const Service service = book.service();
    const auto known = std::ranges::find(book.valves(), name);
    return recheck_in(service, findings_in(service))
        .at(static_cast<std::size_t>(known - book.valves().begin()));
  }
  RecheckVerdict verdict(const std::string& name) const { return valve(name).verdict; }

  ServiceEntries book;
};

TEST_F(Recheck, asks_for_nothing_until_the_list_is_done) {
  EXPECT_EQ(verdict("1 EX L"), none);
  const int steps = take_to_bench(book);
  tick_steps(book, steps - 1);
  EXPECT_EQ(verdict("1 EX L"), none);
  tick_steps(book, steps);
  EXPECT_EQ(verdict("1 EX L"), due);
}

TEST_F(Recheck, asks_for_each_valve_and_for_those_opened_before_the_check_is_closed) {
  fit_all(book);
  for (const std::string& name : book.valves()) {
    const bool opened = name == "1 EX L" || name == "1 IN L" || name == "1 IN R";
    EXPECT_EQ(verdict(name), opened ? due : asked) << name;
    EXPECT_EQ(valve(name).opened, opened) << name;
  }
}

TEST_F(Recheck, must_have_every_valve_where_the_camshafts_came_out) {
  book.setting("camshafts out", "yes");
  fit_all(book);
  for (const std::string& name : book.valves()) EXPECT_EQ(verdict(name), due) << name;
  EXPECT_FALSE(valve("4 IN R").opened);
}

TEST_F(Recheck, predicts_the_gap_found_plus_the_shim_found_less_the_shim_fitted) {
  fit_all(book);
  const ValveRecheck bought = valve("1 EX L");
  EXPECT_EQ(bought.shim_found, 2.50_mm);
  EXPECT_EQ(bought.shim_fitted, 2.65_mm);
  EXPECT_EQ(bought.predicted, 0.21_mm);
  EXPECT_EQ(valve("1 IN L").shim_fitted, 2.70_mm);
  EXPECT_EQ(valve("1 IN L").predicted, 0.20_mm);
  const ValveRecheck kept = valve("4 IN R");
  EXPECT_EQ(kept.shim_fitted, 2.60_mm);
  EXPECT_EQ(kept.predicted, 0.20_mm);
}

struct Case {
  double left;
  RecheckVerdict verdict;
  State state;
  bool outside;
};

// Predicted is 0.21, and two readings of a doubt of 0.01 have one of 0.014 142 13...
TEST_F(Recheck, judges_each_new_gap_by_the_doubt_of_both_readings) {
  fit_all(book);
  const Case all[] = {
      {0.210'000, as_predicted, State::good, false}, {0.224'142, as_predicted, State::good, false},
      {0.224'143, off, State::good, false},          {0.195'858, as_predicted, State::good, false},
      {0.195'857, off, State::good, false},          {0.245, off, State::loose_doubtful, false},
      {0.255, off, State::loose_doubtful, true},     {0.27, off, State::loose, true},
      {0.155, off, State::tight_doubtful, false},    {0.0, off, State::tight, true},
  };
  for (const Case& one : all) {
    left("1 EX L", one.left);
    const ValveRecheck found = valve("1 EX L");
    EXPECT_EQ(found.verdict, one.verdict) << one.left;
    EXPECT_EQ(found.state, one.state) << one.left;
    EXPECT_EQ(found.outside, one.outside) << one.left;
    EXPECT_EQ(found.off, Length::of(one.left) - 0.21_mm) << one.left;
  }
}

TEST_F(Recheck, ends_of_the_doubt_belong_to_as_predicted_exactly) {
  // 5 and 7 nanometres of doubt: 2 * 25 = 50 is beyond 7 * 7, 2 * 49 = 98 beyond 9 * 9.
  const auto nm = [](std::int64_t count) { return Length::nanometres(count); };
  EXPECT_TRUE(is_within_doubt_of_both(nm(7), nm(5)));
  EXPECT_FALSE(is_within_doubt_of_both(nm(8), nm(5)));
  EXPECT_TRUE(is_within_doubt_of_both(nm(-9), nm(7)));
  EXPECT_FALSE(is_within_doubt_of_both(nm(-10), nm(7)));
  EXPECT_TRUE(is_within_doubt_of_both(nm(0), nm(0)));
  EXPECT_FALSE(is_within_doubt_of_both(nm(1), nm(0)));
  EXPECT_FALSE(is_within_doubt_of_both(nm(400'000'000), nm(20'000)));
}

// GUM 5.1.2: root of the sum of squares; 3, 3 gives 4.242 64...
TEST_F(Recheck, doubt_of_both_is_the_root_of_the_sum_of_squares) {
  EXPECT_EQ(doubt_of_both(Length::nanometres(3'000'000)), Length::nanometres(4'242'641));
  EXPECT_EQ(doubt_of_both(Length()), Length());
}

TEST_F(Recheck, takes_a_usual_doubt_where_none_is_entered) {
  book.setting("doubt", Entry());
  fit_all(book);
  left("1 EX L", 0.238);
  EXPECT_EQ(verdict("1 EX L"), as_predicted);
  left("1 EX L", 0.239);
  EXPECT_EQ(verdict("1 EX L"), off);
  // The verdict on the limits still takes the reading as it is.
  EXPECT_EQ(valve("1 EX L").state, State::good);
  book.setting("doubt", 0.0);
  left("1 EX L", 0.211);
  EXPECT_EQ(verdict("1 EX L"), off);
}

TEST_F(Recheck, predicts_nothing_where_gap_or_shim_was_not_known) {
  fit_all(book);
  book.gap("1 EX L", Entry());
  EXPECT_EQ(verdict("1 EX L"), due);
  EXPECT_EQ(valve("1 EX L").predicted, std::nullopt);
  left("1 EX L", 0.20);
  EXPECT_EQ(verdict("1 EX L"), unpredicted);
  EXPECT_EQ(valve("1 EX L").state, State::good);
  book.gap("1 EX L", 0.36).micrometer("1 EX L", Entry());
  EXPECT_EQ(verdict("1 EX L"), unpredicted);
}

// 1 IN R had a gap of 0 with 2.70, and gets 2.50: at most 0.20 is left.
TEST_F(Recheck, takes_what_follows_from_a_gap_of_nought_as_the_most_that_can_be_left) {
  fit_all(book);
  EXPECT_EQ(valve("1 IN R").predicted, 0.20_mm);
  left("1 IN R", 0.20);
  EXPECT_EQ(verdict("1 IN R"), as_predicted);
  left("1 IN R", 0.16);
  EXPECT_EQ(verdict("1 IN R"), unpredicted);
  left("1 IN R", 0.24);
  EXPECT_EQ(verdict("1 IN R"), off);
}

TEST_F(Recheck, reads_what_is_no_gap_as_none) {
  fit_all(book);
  for (const Entry& entry : {Entry("about 0.2"), Entry(-0.1), Entry("#error"), Entry(1e9)}) {
    left("1 EX L", entry);
    EXPECT_EQ(verdict("1 EX L"), unreadable);
    EXPECT_EQ(valve("1 EX L").gap_left, std::nullopt);
    EXPECT_EQ(valve("1 EX L").state, std::nullopt);
  }
  left("1 EX L", " ");
  EXPECT_EQ(verdict("1 EX L"), due);
  left("1 EX L", "0,21 mm");
  EXPECT_EQ(verdict("1 EX L"), as_predicted);
}

TEST_F(Recheck, has_no_state_without_sound_limits) {
  fit_all(book);
  left("1 EX L", 0.21);
  book.limits(0.25, 0.15);
  EXPECT_EQ(valve("1 EX L").state, std::nullopt);
  EXPECT_FALSE(valve("1 EX L").outside);
  EXPECT_EQ(verdict("1 EX L"), as_predicted);
}

TEST_F(Recheck, takes_a_shim_out_of_another_valve_by_its_micrometer_of_now) {
  book.micrometer("1 IN R", Entry()).mark("1 IN R", 270.0);
  fit_all(book);
  EXPECT_EQ(valve("1 IN L").shim_fitted, 2.70_mm);
  // Measured when it came out, as the list asks.
  book.micrometer("1 IN R", 2.685);
  EXPECT_EQ(valve("1 IN L").shim_fitted, 2.685_mm);
  EXPECT_EQ(valve("1 IN L").predicted, 0.215_mm);
  // Another shim by now.
  book.micrometer("1 IN R", 2.50);
  EXPECT_EQ(valve("1 IN L").shim_fitted, 2.70_mm);
}

TEST_F(Recheck, predicts_the_gap_found_over_a_shim_that_nobody_saw_as_it_stayed_in) {
  book.micrometer("2 EX L", Entry());
  fit_all(book);
  EXPECT_EQ(valve("2 EX L").shim_fitted, std::nullopt);
  EXPECT_EQ(valve("2 EX L").predicted, 0.20_mm);
  left("2 EX L", 0.20);
  EXPECT_EQ(verdict("2 EX L"), as_predicted);
}

class RecheckOfArrivals : public Recheck {
 protected:
  RecheckOfArrivals() {
    for (int row = 1; row <= 3; ++row) set(row, micrometer, Entry());
    const Service service = book.service();
    for (const EntryWrite& one : order_to_write(service, findings_in(service), "2026-11-26"))
      book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  }
  void set(int row, int value, Entry entry) {
    book.set("arrival", std::to_string(row), static_cast<std::size_t>(value), std::move(entry));
  }
};

TEST_F(RecheckOfArrivals, takes_a_shim_that_came_in_another_size_as_it_measures) {
  set(1, micrometer, 2.672);
  fit_all(book);
  EXPECT_EQ(valve("1 EX L").shim_fitted, 2.672_mm);
  EXPECT_EQ(valve("1 EX L").predicted, 0.188_mm);
}

TEST_F(RecheckOfArrivals, takes_a_shim_measured_after_the_list_was_taken_as_it_measures) {
  fit_all(book);
  EXPECT_EQ(valve("1 EX L").shim_fitted, 2.65_mm);
  set(1, micrometer, 2.638);
  EXPECT_EQ(valve("1 EX L").shim_fitted, 2.638_mm);
  EXPECT_EQ(valve("1 EX L").predicted, 0.222_mm);
}

TEST_F(RecheckOfArrivals, takes_a_shim_by_its_mark_until_it_is_measured) {
  set(1, arrived, "x");
  set(1, mark, 265.0);
  fit_all(book);
  set(1, micrometer, 2.66);
  EXPECT_EQ(valve("1 EX L").shim_fitted, 2.66_mm);
}

// What came is no shim for that valve: the one that is in came from elsewhere.
TEST_F(RecheckOfArrivals, takes_no_shim_for_another_that_is_far_from_its_size) {
  fit_all(book);
  set(1, micrometer, 2.95);
  EXPECT_EQ(valve("1 EX L").shim_fitted, 2.65_mm);
}

TEST_F(Recheck, knows_of_no_shim_in_a_valve_that_stands_empty) {
  book.gap("1 EX L", 0.20);
  const int steps = take_to_bench(book);
  const Service service = book.service();
  for (int i = 1; i <= steps; ++i) {
    const auto& step = service.bench[static_cast<std::size_t>(i) - 1];
    if (step.kind != "take out") continue;
    tick_steps(book, i);
    EXPECT_EQ(valve(step.valve).shim_fitted, std::nullopt);
    EXPECT_EQ(valve(step.valve).predicted, std::nullopt);
    EXPECT_TRUE(valve(step.valve).opened);
    return;
  }
  FAIL() << "no valve of this list stands empty";
}

TEST_F(Recheck, judges_a_valve_measured_again_though_nothing_is_on_the_bench) {
  left("2 EX L", 0.20);
  EXPECT_EQ(verdict("2 EX L"), as_predicted);
  EXPECT_EQ(verdict("2 EX R"), none);
  left("2 EX L", 0.24);
  EXPECT_EQ(verdict("2 EX L"), off);
}

TEST_F(Recheck, wants_another_round_for_a_valve_off_or_outside_unless_it_is_left_open) {
  fit_all(book);
  EXPECT_FALSE(wants_another_round(valve("1 EX L")));
  left("1 EX L", 0.21);
  EXPECT_FALSE(wants_another_round(valve("1 EX L")));
  left("1 EX L", 0.24);
  EXPECT_TRUE(is_off_without_reason(valve("1 EX L")));
  EXPECT_FALSE(is_outside_without_reason(valve("1 EX L")));
  EXPECT_TRUE(wants_another_round(valve("1 EX L")));
  left("1 EX L", 0.24, "cold morning");
  EXPECT_EQ(valve("1 EX L").reason, "cold morning");
  EXPECT_FALSE(wants_another_round(valve("1 EX L")));
  // As predicted, but the plan left it outside.
  book.gap("2 EX L", 0.30);
  left("2 EX L", 0.30);
  EXPECT_EQ(verdict("2 EX L"), as_predicted);
  EXPECT_FALSE(is_off_without_reason(valve("2 EX L")));
  EXPECT_TRUE(is_outside_without_reason(valve("2 EX L")));
  EXPECT_TRUE(wants_another_round(valve("2 EX L")));
}

TEST_F(Recheck, reads_gaps_in_the_unit_of_the_book) {
  ServiceEntries inches;
  inches.setting("unit", "inch").limits(0.006, 0.010).sizes(1, "A", 0.08, 0.13, 0.001, 5);
  inches.setting("doubt", 0.0005).gap("1 IN L", 0.016).micrometer("1 IN L", 0.100);
  fit_all(inches);
  inches.set("recheck", "1 IN L", 0, 0.009);
  const Service service = inches.service();
  const auto all = recheck_in(service, findings_in(service));
  const auto index = static_cast<std::size_t>(std::ranges::find(inches.valves(), "1 IN L") -
                                              inches.valves().begin());
  EXPECT_EQ(all[index].predicted, Length::of(0.009, Unit::inch));
  EXPECT_EQ(all[index].off, Length());
  EXPECT_EQ(all[index].verdict, as_predicted);
}

}  // namespace
}  // namespace shimwright::tests
