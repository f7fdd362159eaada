// SPDX-License-Identifier: MPL-2.0
//
// What Recheck shows and says, which stage the book tells, and that no new gap is taken for one
// found.
#include <gtest/gtest.h>

#include <algorithm>

#include "bench_entries.hpp"
#include "core/service/bench_commands.hpp"
#include "core/service/gaps_taken.hpp"
#include "core/service/order_command.hpp"

namespace shimwright::tests {
namespace {

// 1 EX L wants a shim of 2.65, which is bought; all others are good.
class RecheckSheet : public ::testing::Test {
 protected:
  RecheckSheet() {
    book.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5).setting("doubt", 0.01);
    for (const std::string& valve : book.valves()) book.gap(valve, 0.20).micrometer(valve, 2.60);
    book.gap("1 EX L", 0.36).micrometer("1 EX L", 2.50);
  }

  void take() {
    steps = take_to_bench(book);
    book.set("taken", "list", 1, gaps_as_taken(findings_in(book.service())));
  }
  void fit() {
    take();
    tick_steps(book, steps);
  }
  void left(const std::string& valve, Entry gap, Entry why = {}) {
    book.set("recheck", valve, 0, std::move(gap)).set("recheck", valve, 1, std::move(why));
  }
  std::string cell(const std::string& valve, std::string_view column) const {
    const View view = book.view();
    const auto known = std::ranges::find(book.valves(), valve);
    return view["recheck"].at(column, static_cast<std::size_t>(known - book.valves().begin()) + 1);
  }
  std::string row(const std::string& valve) const {
    std::string all;
    for (const char* column :
         {"gap found", "shim found", "shim fitted", "predicted", "difference", "verdict", "state"})
      all += cell(valve, column) + "|";
    all.pop_back();
    return all;
  }
  std::string box(std::string_view sheet = "recheck") const { return box_of(book.view(), sheet); }
  std::string said(std::string_view column) const { return book.view()["book"].at(column); }

  ServiceEntries book;
  int steps = 0;
};

TEST_F(RecheckSheet, is_blank_and_says_fit_first_while_nothing_is_on_the_bench) {
  EXPECT_EQ(row("1 EX L"), "||||||");
  EXPECT_EQ(box(),
            "Fit first. When every step on Fit is ticked, measure every gap again and enter it "
            "here.");
  EXPECT_EQ(said("recheck tally"), "");
}

TEST_F(RecheckSheet, asks_only_for_what_was_taken_out_to_be_measured_where_no_shim_is_changed) {
  book.gap("1 EX L", 0.20);
  EXPECT_EQ(box(),
            "No shim is to be changed. Where one was taken out to be measured, measure that gap "
            "again and enter it here. Then close this check.");
  book.gap("1 EX L", 0.27).leave_alone("1 EX L");
  EXPECT_TRUE(tells(box(), "Do not call 1 EX L done: its gap reads out of limits.")) << box();
  left("1 EX L", Entry(), "head comes off in spring");
  EXPECT_TRUE(tells(box(), "Left as it is, by what you entered: 1 EX L.")) << box();
}

TEST_F(RecheckSheet, shows_each_valve_as_found_fitted_predicted_and_judged) {
  fit();
  EXPECT_EQ(row("1 EX L"), "0.360|2.500|2.650|0.210||measure it again|");
  EXPECT_EQ(row("4 IN R"), "0.200|2.600|2.600|0.200||shim not changed: measure it too|");
  left("1 EX L", 0.22);
  EXPECT_EQ(row("1 EX L"), "0.360|2.500|2.650|0.210|+0.010|as predicted|\u25cf good");
  left("1 EX L", 0.21);
  EXPECT_EQ(cell("1 EX L", "difference"), "0.000");
  left("1 EX L", 0.25);
  EXPECT_EQ(row("1 EX L"),
            "0.360|2.500|2.650|0.210|+0.040|off by 0.04: not seated, another shim, or a slip of "
            "the gauge? measure again|\u25b3 loose?");
  left("1 EX L", 0.175);
  EXPECT_EQ(cell("1 EX L", "difference"), "\u22120.035");
  EXPECT_TRUE(cell("1 EX L", "verdict").starts_with("off by 0.035: not seated"));
  left("1 EX L", "#error");
  EXPECT_EQ(cell("1 EX L", "verdict"), "gap?");
}

TEST_F(RecheckSheet, begins_with_what_not_to_do) {
  take();
  tick_steps(book, 1);
  EXPECT_TRUE(box().starts_with("Do not measure yet: 1 of ")) << box();
  tick_steps(book, steps);
  left("1 EX L", 0.30);
  EXPECT_TRUE(tells(box(),
                    "Do not call 1 EX L done: its gap reads out of limits. It wants another "
                    "round, or a reason to stay so."))
      << box();
  EXPECT_TRUE(tells(box(), "Not as predicted: 1 EX L.")) << box();
  left("1 EX L", 0.30, "parts come in May");
  EXPECT_FALSE(tells(box(), "Do not call")) << box();
  EXPECT_TRUE(tells(box(), "Left as it is, by what you entered: 1 EX L.")) << box();
}

TEST_F(RecheckSheet, says_which_valves_are_still_to_be_measured_and_when_all_is_well) {
  fit();
  EXPECT_TRUE(tells(box(), "Still to be measured again: 1 EX L.")) << box();
  EXPECT_TRUE(tells(box(),
                    "15 valves keep their shims. Where one was taken out to be measured, "
                    "measure that gap again. Measure the others too if you can"))
      << box();
  EXPECT_EQ(said("recheck tally"), "0 of 16 measured again");
  left("1 EX L", 0.21);
  EXPECT_TRUE(
      tells(box(), "Every new gap reads inside its limits and as predicted: close this check."))
      << box();
  for (const std::string& valve : book.valves()) left(valve, valve == "1 EX L" ? 0.21 : 0.20);
  EXPECT_EQ(box(), "Every new gap reads inside its limits and as predicted: close this check.");
  EXPECT_EQ(said("recheck tally"), "16 of 16 measured again");
  left("2 EX L", 0.24);
  EXPECT_TRUE(tells(box(), "another round begins")) << box();
}

TEST_F(RecheckSheet, tells_how_far_a_gap_may_be_off) {
  EXPECT_TRUE(tells(said("recheck note"),
                    "no further from that than 0.014 mm is as predicted: so "
                    "much may two readings differ that are each in doubt by "
                    "0.01 mm."))
      << said("recheck note");
  book.setting("doubt", Entry());
  EXPECT_TRUE(tells(said("recheck note"), "No doubt of a reading is entered on Engine: 0.02 mm"))
      << said("recheck note");
  EXPECT_TRUE(tells(said("recheck note"), "than 0.028 mm is as predicted"));
}

TEST_F(RecheckSheet, speaks_inches_in_a_book_in_inches) {
  ServiceEntries inches;
  inches.setting("unit", "inch").limits(0.006, 0.010).sizes(1, "A", 0.08, 0.13, 0.001, 5);
  inches.setting("doubt", 0.0005).gap("1 IN L", 0.016).micrometer("1 IN L", 0.100);
  fit_all(inches);
  inches.set("recheck", "1 IN L", 0, 0.012);
  const View view = inches.view();
  const auto known = std::ranges::find(inches.valves(), "1 IN L") - inches.valves().begin();
  const auto row = static_cast<std::size_t>(known) + 1;
  EXPECT_EQ(view["recheck"].at("predicted", row), "0.0090");
  EXPECT_EQ(view["recheck"].at("difference", row), "+0.0030");
  EXPECT_TRUE(view["recheck"].at("verdict", row).starts_with("off by 0.0030: not seated"))
      << view["recheck"].at("verdict", row);
  EXPECT_EQ(view["book"].at("recheck heading"),
            "Gaps after fitting, and as predicted; lengths in inches");
  inches.set("recheck", "1 IN L", 0, 0.00899);
  EXPECT_EQ(inches.view()["recheck"].at("difference", row), "0.0000") << "nought has no sign";
}

TEST_F(RecheckSheet, names_the_round_of_the_check_once_there_is_another) {
  book.setting("check", 5.0).setting("round", 2.0);
  EXPECT_EQ(said("recheck tally"), "Round 2 of check 5");
  EXPECT_EQ(said("stage"), "Round 2 of check 5: Measuring and planning");
  fit();
  EXPECT_EQ(said("recheck tally"), "Round 2 of check 5: 0 of 16 measured again");
}

TEST_F(RecheckSheet, passes_over_a_row_of_a_valve_that_is_none) {
  book.set("recheck", "9 EX L", 0, 0.3);
  EXPECT_EQ(row("1 EX L"), "||||||");
}

// ---- Gaps as found.

TEST_F(RecheckSheet, lets_head_say_that_it_shows_gaps_as_found_once_a_shim_is_changed) {
  take();
  EXPECT_FALSE(tells(box("head"), "as found"));
  tick_steps(book, 1);  // a turn
  EXPECT_FALSE(tells(box("head"), "as found"));
  tick_steps(book, 2);
  EXPECT_EQ(box("head"), "Gaps and shims as found. New gaps belong on Recheck.");
}

TEST_F(RecheckSheet, tells_on_every_sheet_concerned_of_a_gap_changed_on_head_after_fitting) {
  take();
  book.gap("1 EX L", 0.37);
  EXPECT_FALSE(tells(box("fit"), "Enter no new gap")) << "nothing is fitted yet";
  tick_steps(book, steps);
  book.gap("1 EX L", 0.21).gap("2 EX L", 0.19);
  for (const char* sheet : {"head", "plan", "fit", "recheck"})
    EXPECT_TRUE(tells(box(sheet),
                      "Enter no new gap on Head: it would be judged over the old shim. Changed "
                      "there since the list was taken to the bench: 1 EX L (was 0.36 mm) and "
                      "2 EX L (was 0.20 mm)."))
        << sheet << ": " << box(sheet);
  EXPECT_TRUE(tells(box("fit"), "All steps are done."));
  book.gap("1 EX L", 0.36).gap("2 EX L", 0.20);
  for (const char* sheet : {"head", "plan", "fit", "recheck"})
    EXPECT_FALSE(tells(box(sheet), "Enter no new gap")) << sheet;
}

TEST_F(RecheckSheet, takes_a_gap_entered_late_as_found_where_its_valve_was_not_opened) {
  book.gap("4 IN R", Entry());
  fit();
  book.gap("4 IN R", 0.20);
  EXPECT_FALSE(tells(box("head"), "Enter no new gap"));
  book.gap("1 EX L", Entry());
  EXPECT_TRUE(tells(box("head"), "1 EX L (was 0.36 mm)")) << box("head");
}

TEST_F(RecheckSheet, knows_of_no_changed_gap_in_a_book_that_holds_none_of_then) {
  fit();
  book.gap("1 EX L", 0.21);
  for (const char* written :
       {"", "360000", "360000 x", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 1e6"}) {
    book.set("taken", "list", 1, written);
    EXPECT_FALSE(tells(box("head"), "Enter no new gap")) << written;
  }
}

TEST_F(RecheckSheet, is_named_by_fit_once_the_list_is_done) {
  fit();
  EXPECT_TRUE(tells(box("fit"), "measure every gap again and enter it on Recheck")) << box("fit");
  left("1 EX L", 0.21);
  EXPECT_TRUE(tells(box("fit"), "what was opened is measured again: go on on Recheck"));
}

TEST_F(RecheckSheet, hands_its_gaps_to_head_with_the_shims_and_lets_no_other_list_judge_them) {
  fit();
  left("1 EX L", 0.22);
  left("2 EX L", 0.19, "stays");
  const Service service = book.service();
  const Findings found = findings_in(service);
  const BenchQuestion clearing = question_before_clearing(service, found);
  EXPECT_TRUE(tells(clearing.words,
                    "Yes also enters the new gaps of 1 EX L and 2 EX L from Recheck "
                    "on Head. Either answer clears them on Recheck."))
      << clearing.words;
  EXPECT_TRUE(tells(question_before_taking(service, found).words,
                    "This also clears the new gaps of 1 EX L and 2 EX L on Recheck."));
  for (const EntryWrite& one : shims_to_enter(service, found))
    book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  for (const EntryWrite& one : new_gaps_to_clear(service))
    book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  const Service after = book.service();
  EXPECT_EQ(after.valves[0].name, "1 EX L");
  EXPECT_EQ(after.valves[0].gap, Entry(0.22));
  EXPECT_EQ(cell("1 EX L", "verdict"), "measure it again");
  const auto second = std::ranges::find(after.valves, "2 EX L", &Service::ValveEntries::name);
  EXPECT_EQ(second->gap, Entry(0.19));
  EXPECT_EQ(new_gaps_to_clear(after).size(), 0U);
}

TEST_F(RecheckSheet, asks_before_a_new_list_clears_new_gaps_though_nothing_is_on_the_bench) {
  const Service before = book.service();
  EXPECT_EQ(question_before_taking(before, findings_in(before)).words, "");
  left("1 EX L", 0.22);
  const Service service = book.service();
  EXPECT_EQ(question_before_taking(service, findings_in(service)).words,
            "Take the steps of the present plan to the bench?\n\nThis also clears the new gap of "
            "1 EX L on Recheck.");
}

// ---- The stage and its next step.

TEST_F(RecheckSheet, stages_lead_from_sheet_to_sheet) {
  EXPECT_EQ(said("stage"), "Measuring and planning");
  EXPECT_EQ(said("next step"),
            "On Plan, look the order through. Once it is placed, press Order placed.");
  for (int row = 1; row <= 3; ++row) book.set("arrival", std::to_string(row), 6, Entry());
  const Service service = book.service();
  for (const EntryWrite& one : order_to_write(service, findings_in(service), "2026-11-26"))
    book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  EXPECT_EQ(said("stage"), "Waiting for shims on order");
  EXPECT_EQ(said("next step"),
            "On Arrivals, enter each shim when it comes: its mark and its size.");
  book.set("arrival", "1", 4, "x");
  EXPECT_EQ(said("next step"), "On Plan, look the plan through. Then press Take to the bench.");
  take();
  tick_steps(book, 1);
  EXPECT_EQ(said("stage"), "Fitting: 1 of 3 steps done");
  EXPECT_EQ(said("next step"), "On Fit, go on with step 2.");
  tick_steps(book, steps);
  EXPECT_EQ(said("stage"), "Measuring again: 0 of 16 gaps");
  EXPECT_EQ(said("next step"),
            "Turn the crank by hand through two full turns. Then measure 1 EX L again and enter "
            "the new gap on Recheck.");
  left("1 EX L", 0.30);
  EXPECT_EQ(said("stage"), "Measured again, and not in order yet");
  EXPECT_TRUE(said("next step").starts_with("On Recheck, see to 1 EX L: measure again"));
  left("1 EX L", 0.21);
  EXPECT_EQ(said("stage"), "Ready to be closed");
  EXPECT_EQ(said("next step"), "On Recheck, close this check.");
}

TEST_F(RecheckSheet, next_step_while_measuring_is_what_is_missing) {
  ServiceEntries empty;
  const auto next = [](const ServiceEntries& one) { return one.view()["book"].at("next step"); };
  EXPECT_EQ(next(empty), "On Engine, enter the smallest and the largest gap allowed.");
  empty.limits(0.15, 0.25);
  EXPECT_EQ(next(empty), "On Head, enter gap and shim of 16 valves.");
  book.gap("2 IN R", Entry());
  EXPECT_EQ(next(book), "On Head, enter gap and shim of 2 IN R.");
  book.gap("2 IN R", 0.10).micrometer("2 IN R", Entry());
  EXPECT_EQ(next(book), "On Head, enter the shim of 2 IN R: only that is missing.");
  book.gap("2 IN L", Entry());
  EXPECT_EQ(next(book),
            "On Head, enter gap and shim of 2 IN L, and the shim of 2 IN R, whose gap is known.");
  book.gap("2 IN L", 0.20).gap("2 IN R", 0.20).micrometer("2 IN R", 2.60);
  book.sizes(1, "A", -2, 3.5, 0.05, 5);
  book.set("sizes", "1", 1, Entry()).set("sizes", "1", 2, Entry()).set("sizes", "1", 3, Entry());
  EXPECT_EQ(next(book), "On Shims, list the spares and the sizes on sale.");
  book.spare(1, "A", 2.0);
  EXPECT_TRUE(next(book).starts_with("On Plan, see which size each valve out of limits needs"));
  book.spare(1, "A", 2.65);
  EXPECT_EQ(next(book), "On Plan, look the plan through. Then press Take to the bench.");
  book.setting("firing", Entry());
  EXPECT_EQ(next(book), "On Fit, read why there are no steps yet.");
  book.set("valve", "1 EX L", 0, -1.0);
  EXPECT_EQ(next(book), "Correct the entries that Plan remarks on.");
}

}  // namespace
}  // namespace shimwright::tests
