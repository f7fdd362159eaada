// SPDX-License-Identifier: MPL-2.0
//
// The bench list: what is taken to it, what its ticks say, and what the two commands write.
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "arrival_values.hpp"
#include "bench_entries.hpp"
#include "core/service/bench_commands.hpp"
#include "core/service/listed_gaps.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

// Two inlet valves of one stop, each of which wants the other's shim: one stands empty meanwhile.
class Bench : public ::testing::Test {
 protected:
  Bench() {
    book.limits(0.15, 0.25);
    book.gap("1 IN L", 0.40).micrometer("1 IN L", 2.5).mark("1 IN L", 250.0);
    book.gap("1 IN R", 0.0).micrometer("1 IN R", 2.7).mark("1 IN R", 270.0);
  }

  Service service() const { return book.service(); }
  Findings found() const { return findings_in(service()); }
  std::vector<BenchRow> rows() const { return rows_for_bench(service(), found()); }

  // As the command writes it and the book hands it back.
  void take() {
    const auto taken = rows();
    count = static_cast<int>(taken.size());
    for (int i = 1; i <= count; ++i) {
      const BenchRow& row = taken[static_cast<std::size_t>(i) - 1];
      const std::string n = std::to_string(i);
      book.set("bench", n, 0, row.step.kind).set("bench", n, 1, row.step.stop);
      book.set("bench", n, 2, row.valve).set("bench", n, 3, row.step.out);
      book.set("bench", n, 4, row.step.in).set("bench", n, 5, row.step.from);
      book.set("bench", n, 6, Entry());
    }
    book.set("taken", "list", 0, "2026-11-26 17:40");
  }
  void tick(int step, Entry mark = "x") {
    book.set("bench", std::to_string(step), 6, std::move(mark));
  }
  void tick_up_to(int last) {
    for (int i = 1; i <= last; ++i) tick(i);
  }
  int first_of_kind(std::string_view kind) const {
    const auto& bench = service().bench;
    for (std::size_t i = 0; i < bench.size(); ++i)
      if (bench[i].kind == kind) return static_cast<int>(i) + 1;
    return 0;
  }
  std::string box() const { return box_of(book.view(), "fit"); }

  ServiceEntries book;
  int count = 0;
};

TEST_F(Bench, takes_the_steps_of_the_plan_as_values) {
  const auto taken = rows();
  std::vector<std::string> kinds;
  for (const BenchRow& row : taken) kinds.push_back(row.step.kind);
  EXPECT_EQ(kinds, (std::vector<std::string>{"turn", "take out", "change", "fit", "finish"}));
  EXPECT_EQ(taken[0].valve, "turn");
  EXPECT_EQ(taken[0].step.valve, "");
  EXPECT_EQ(taken[0].step.stop, Entry(1.0));
  EXPECT_TRUE(taken[0].note.starts_with("Every valve has its shim? By hand, turn the crank"));
  EXPECT_EQ(taken[1].step.out, taken[3].step.valve == "1 IN L" ? Entry(2.5) : Entry(2.7));
  EXPECT_EQ(taken[1].step.in, Entry());
  EXPECT_EQ(taken[2].step.from, taken[1].step.valve);
}

TEST_F(Bench, takes_sizes_in_the_unit_of_the_book) {
  ServiceEntries inches;
  inches.setting("unit", "inch").limits(0.006, 0.010);
  inches.gap("1 IN L", 0.016).micrometer("1 IN L", 0.100);
  inches.gap("1 IN R", 0.0).micrometer("1 IN R", 0.108);
  const auto taken = rows_for_bench(inches.service(), findings_in(inches.service()));
  ASSERT_EQ(taken.size(), 5U);
  EXPECT_NEAR(std::get<double>(taken[2].step.in) + std::get<double>(taken[2].step.out), 0.208,
              1e-9);
}

TEST_F(Bench, list_stands_still_and_says_that_the_plan_has_changed) {
  take();
  EXPECT_FALSE(has_plan_changed(service(), found()));
  EXPECT_FALSE(tells(box(), "plan has changed"));
  const auto before = service().bench;
  book.gap("4 IN L", 0.5).micrometer("4 IN L", 2.5).spare(1, "A", 2.8);
  EXPECT_TRUE(has_plan_changed(service(), found()));
  EXPECT_EQ(service().bench.size(), before.size());
  EXPECT_TRUE(tells(box(), "nothing of it is done: clear the bench and take the new steps"));
  tick(1);  // a turn: no shim is changed yet
  EXPECT_TRUE(tells(box(), "nothing of it is done: clear the bench and take the new steps"));
  tick(2);
  EXPECT_TRUE(tells(box(), "The list stands: finish it, measure every gap again"));
}

// 1 IN L was to get a thicker shim; its gap was misread.
TEST_F(Bench, is_not_to_be_finished_where_a_shim_of_the_list_would_no_longer_do) {
  take();
  tick(1);
  EXPECT_TRUE(valves_spoiled_by_list(service(), found()).empty());
  book.gap("1 IN L", 0.04);
  EXPECT_EQ(valves_spoiled_by_list(service(), found()), std::vector<std::string>{"1 IN L"});
  EXPECT_TRUE(tells(box(),
                    "Do not finish this list: by the gaps and shims entered now, it would leave "
                    "1 IN L out of limits."));
  EXPECT_FALSE(tells(box(), "finish it, measure"));
  tick_up_to(count);
  EXPECT_TRUE(valves_spoiled_by_list(service(), found()).empty()) << "it has its shim";
}

// The mark of 1 IN L's shim was untrue: it measures 2.20 once it is out, and goes into 1 IN R.
TEST_F(Bench, warns_before_the_crank_is_turned_over_a_valve_that_a_shim_leaves_no_gap) {
  constexpr const char* no_gap =
      "Do not turn the crank: by the gaps and shims entered now there is no gap left over the shim "
      "that is in 1 IN L (needs ";
  take();
  tick_up_to(2);
  book.micrometer("1 IN L", 2.20);
  EXPECT_FALSE(tells(box(), no_gap)) << "it is not in yet";
  EXPECT_TRUE(tells(box(), "it would leave 1 IN L and 1 IN R out of limits"));
  tick_up_to(count);
  EXPECT_TRUE(tells(box(), no_gap));
  EXPECT_FALSE(tells(box(), "two full turns"));
  EXPECT_TRUE(tells(box_of(book.view(), "recheck"), no_gap));
  EXPECT_TRUE(
      book.view()["book"].at("next step").starts_with("As Fit says: Do not turn the crank"));
  EXPECT_TRUE(tells(box(), "the shim that is in leaves 1 IN R out of limits: it wants another"));
  EXPECT_EQ(valves_outside_by_list(service(), found()), std::vector<std::string>{"1 IN R"});
  // Nobody knows whether a new gap on Recheck was typed before the shim went in.
  book.set("recheck", "1 IN L", 0, 0.20);
  EXPECT_TRUE(tells(box(), no_gap));
  EXPECT_TRUE(tells(box_of(book.view(), "recheck"), no_gap));
  book.micrometer("1 IN L", 2.50);
  EXPECT_FALSE(tells(box(), "Do not turn the crank: by"));
  EXPECT_TRUE(tells(box(), "two full turns"));
}

// Ordered and marked as 2.65, it was measured only after the list was taken.
TEST_F(Bench, is_not_to_be_finished_where_a_bought_shim_measures_otherwise) {
  ServiceEntries bought;
  bought.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5);
  bought.gap("1 EX L", 0.36).micrometer("1 EX L", 2.50);
  const auto arrived = [&bought](ArrivalValue value, Entry entry) {
    bought.set("arrival", "1", value, std::move(entry));
  };
  arrived(ArrivalValue::ordered, 2.65);
  arrived(ArrivalValue::mark, 265.0);
  const int steps = take_to_bench(bought);
  const auto valves = [&bought](auto question) {
    return question(bought.service(), findings_in(bought.service()));
  };
  EXPECT_EQ(valves(valves_spoiled_by_list), std::vector<std::string>());
  arrived(ArrivalValue::micrometer, 2.60);  // 0.26 after
  EXPECT_EQ(valves(valves_spoiled_by_list), std::vector<std::string>{"1 EX L"});
  tick_steps(bought, steps);
  EXPECT_EQ(valves(valves_spoiled_by_list), std::vector<std::string>());
  EXPECT_EQ(valves(valves_outside_by_list), std::vector<std::string>{"1 EX L"});
}

TEST_F(Bench, is_to_be_finished_where_the_nearest_shim_leaves_a_valve_outside_as_planned) {
  ServiceEntries narrow;
  narrow.limits(0.25, 0.27).sizes(1, "A", 2.00, 3.50, 0.05, 5).setting("camshafts out", "yes");
  narrow.gap("1 IN L", 0.10).micrometer("1 IN L", 2.48).set("valve", "1 IN L", 3, "nearest");
  int row = 0;
  for (const auto& step : bench_steps(narrow.service(), findings_in(narrow.service()))) {
    const std::string name = std::to_string(++row);
    narrow.set("bench", name, 0, step.kind).set("bench", name, 1, step.stop);
    narrow.set("bench", name, 2, step.valve).set("bench", name, 3, step.out);
    narrow.set("bench", name, 4, step.in).set("bench", name, 5, step.from);
  }
  ASSERT_GT(row, 0);
  const auto spoiled = [&narrow] {
    return valves_spoiled_by_list(narrow.service(), findings_in(narrow.service()));
  };
  EXPECT_EQ(spoiled(), std::vector<std::string>());  // 0.28 after, where it is 0.10
  EXPECT_NE(box_of(narrow.view(), "fit").find("1 IN L, even with the nearest shim"),
            std::string::npos);
  narrow.gap("1 IN L", 0.24);  // misread before: 0.42 after
  EXPECT_EQ(spoiled(), std::vector<std::string>{"1 IN L"});
  narrow.gap("1 IN L", 0.10).set("valve", "1 IN L", 3, "");
  EXPECT_EQ(spoiled(), std::vector<std::string>{"1 IN L"}) << "no longer what is wanted";
}

// What Engine says now is of the next list.
TEST_F(Bench, keeps_its_heading_and_caution_whatever_engine_says_of_the_camshafts) {
  take();
  const std::string heading = book.view()["book"].at("fit heading");
  const std::string caution = book.view()["book"].at("fit caution");
  book.setting("camshafts out", "yes");
  EXPECT_EQ(book.view()["book"].at("fit heading"), heading);
  EXPECT_EQ(book.view()["book"].at("fit caution"), caution);
  EXPECT_FALSE(is_bench_for_camshafts_out(service(), found()));
}

// By such ticks one shim might be in two valves.
TEST_F(Bench, enters_no_shims_while_a_step_is_left_out) {
  take();
  tick(1);
  tick(3);
  const BenchQuestion question = question_before_clearing(service(), found());
  EXPECT_TRUE(tells(question.caution, "Step 2 is not ticked and a later one is."));
  EXPECT_FALSE(question.offers_shims);
  tick(2);
  EXPECT_FALSE(tells(question_before_clearing(service(), found()).caution, "is not ticked"));
  EXPECT_TRUE(question_before_clearing(service(), found()).offers_shims);
}

TEST_F(Bench, has_not_changed_in_inches_either) {
  book.setting("unit", "inch").limits(0.006, 0.010);
  book.gap("1 IN L", 0.016).micrometer("1 IN L", 0.1001).mark("1 IN L", Entry());
  book.gap("1 IN R", 0.0).micrometer("1 IN R", 0.1079).mark("1 IN R", Entry());
  take();
  ASSERT_EQ(count, 5);
  EXPECT_FALSE(has_plan_changed(service(), found()));
}

TEST_F(Bench, takes_any_mark_but_no_for_a_tick) {
  const std::pair<Entry, bool> marks[] = {{"x", true},      {"yes", true},    {46352.0, true},
                                          {"26.11.", true}, {"no", false},    {" ", false},
                                          {Entry(), false}, {"#error", false}};
  take();
  for (const auto& [mark, ticks] : marks) {
    tick(1, mark);
    EXPECT_EQ(ticked_steps(service()), ticks ? 1U : 0U);
    EXPECT_EQ(book.view()["bench"].at("look", 1), ticks ? "done" : "turn");
  }
}

TEST_F(Bench, counts_the_ticks_and_says_since_when_it_stands) {
  EXPECT_EQ(book.view()["book"].at("fit tally"), "");
  take();
  tick(1);
  EXPECT_EQ(book.view()["book"].at("fit tally"), "taken 2026-11-26 17:40: 1 of 5 done");
}

TEST_F(Bench, rows_look_as_their_steps_are) {
  take();
  const View view = book.view();
  const char* looks[] = {"turn", "step", "step", "step", "turn"};
  for (std::size_t i = 0; i < 5; ++i) EXPECT_EQ(view["bench"].at("look", i + 1), looks[i]);
  EXPECT_EQ(view["bench"].at("look", 6), "");
}

TEST_F(Bench, names_the_step_left_out_and_the_stop_to_go_back_to) {
  take();
  tick(1);
  EXPECT_EQ(step_left_out(service()), std::nullopt);
  tick(3);
  EXPECT_EQ(step_left_out(service()), 2);
  EXPECT_EQ(stop_of_step(service(), 2), 1);
  EXPECT_EQ(stop_of_step(service(), 5), std::nullopt);
  EXPECT_TRUE(tells(box(), "Step 2 is not ticked and a later one is."));
  EXPECT_FALSE(tells(box(), "forwards to stop 1 again")) << "it is there still";
  tick(5);
  EXPECT_TRUE(tells(box(), "turn the crank forwards to stop 1 again"));
  tick(2);
  EXPECT_EQ(step_left_out(service()), 4);
}

// An owner who keeps no list of arrivals.
TEST_F(Bench, says_to_open_no_valve_before_its_bought_shim_is_in_hand) {
  ServiceEntries buying;
  buying.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5).setting("camshafts out", "yes");
  buying.gap("1 IN L", 0.10).micrometer("1 IN L", 2.70);
  constexpr const char* caution = "Open no valve before its new shim is in your hand.";
  EXPECT_TRUE(tells(box_of(buying.view(), "fit"), caution));
  EXPECT_TRUE(tells(box_of(buying.view(), "fit"), " for 1 IN L."));
  buying.set("arrival", "1", 1, 2.60);
  EXPECT_FALSE(tells(box_of(buying.view(), "fit"), caution)) << "Arrivals knows";
}

TEST_F(Bench, names_the_valve_that_stands_empty) {
  take();
  const int out = first_of_kind("take out");
  const int in = first_of_kind("fit");
  const std::string valve = service().bench[static_cast<std::size_t>(out) - 1].valve;
  tick_up_to(out);
  EXPECT_EQ(valves_standing_empty(service()), std::vector{valve});
  // In order, the list fills it; out of order, nothing does.
  EXPECT_TRUE(tells(box(), valve + " stands empty: do not turn the crank. Go on with step " +
                               std::to_string(out + 1) + "."));
  tick(count);
  EXPECT_TRUE(
      tells(box(), "Do not turn the crank, refit camshafts or clear ticks yet. First fill " +
                       valve + " with a shim no thicker than the one that came out."));
  tick(count, Entry());
  tick_up_to(in);
  EXPECT_TRUE(valves_standing_empty(service()).empty());
}

TEST_F(Bench, says_when_all_is_done_and_what_comes_then) {
  EXPECT_FALSE(is_bench_done(service()));
  take();
  tick_up_to(count - 1);
  EXPECT_FALSE(is_bench_done(service()));
  tick(count);
  EXPECT_TRUE(is_bench_done(service()));
  EXPECT_TRUE(tells(box(), "All steps are done. Turn the crank by hand"));
}

TEST_F(Bench, knows_the_shims_that_are_in_by_the_ticks) {
  take();
  EXPECT_TRUE(shims_fitted(service()).empty());
  tick_up_to(count);
  auto fitted = shims_fitted(service());
  std::ranges::sort(fitted, {}, &FittedShim::valve);
  ASSERT_EQ(fitted.size(), 2U);
  EXPECT_EQ(fitted[0].valve, "1 IN L");
  EXPECT_EQ(fitted[0].size, 2.7);
  EXPECT_EQ(fitted[0].from, "1 IN R");
  EXPECT_EQ(fitted[1].size, 2.5);
}

std::optional<Entry> write_of(const std::vector<EntryWrite>& writes, std::string_view valve,
                              int value) {
  for (const EntryWrite& one : writes)
    if (one.kind == "valve" && one.name == valve && one.value == value) return one.what;
  return std::nullopt;
}

TEST_F(Bench, enters_a_shim_that_moved_with_its_mark_and_size_and_clears_the_gap) {
  book.micrometer("1 IN R", 2.698);
  take();
  tick_up_to(count);
  const auto writes = shims_to_enter(service(), found());
  EXPECT_EQ(writes.size(), 6U);
  EXPECT_EQ(write_of(writes, "1 IN L", 0), Entry());
  EXPECT_EQ(write_of(writes, "1 IN L", 1), Entry(270.0));
  EXPECT_EQ(write_of(writes, "1 IN L", 2), Entry(2.698));
  EXPECT_EQ(write_of(writes, "1 IN R", 1), Entry(250.0));
  EXPECT_EQ(write_of(writes, "1 IN R", 2), Entry(2.5));
}

TEST_F(Bench, enters_only_what_is_ticked) {
  take();
  tick_up_to(3);
  const auto writes = shims_to_enter(service(), found());
  ASSERT_EQ(writes.size(), 3U);
  EXPECT_EQ(writes[0].name, service().bench[2].valve);
}

// Head was changed since the list was taken: what the list says counts.
TEST_F(Bench, enters_the_size_on_the_list_where_the_giver_holds_another_now) {
  take();
  tick_up_to(count);
  book.micrometer("1 IN R", 2.6).mark("1 IN R", 260.0);
  const auto writes = shims_to_enter(service(), found());
  EXPECT_EQ(write_of(writes, "1 IN L", 1), Entry());
  EXPECT_EQ(write_of(writes, "1 IN L", 2), Entry(2.7));
}

// It was measured when it came out.
TEST_F(Bench, enters_a_moved_shim_with_what_its_giver_was_measured_at_since) {
  book.micrometer("1 IN R", Entry());
  take();
  tick_up_to(count);
  book.micrometer("1 IN R", 2.685);
  const auto writes = shims_to_enter(service(), found());
  EXPECT_EQ(write_of(writes, "1 IN L", 1), Entry(270.0));
  EXPECT_EQ(write_of(writes, "1 IN L", 2), Entry(2.685));
}

struct Marked {
  const char* unit;
  const char* scheme;
  double size;
  std::optional<double> mark;  // none: entered as measured
};

TEST(BenchShims, are_entered_by_the_mark_that_the_scheme_has_for_their_size) {
  const Marked all[] = {{"mm", "auto", 2.75, 275.0},
                        {"mm", "auto", 2.755, 2755.0},
                        {"mm", "auto", 2.7555, std::nullopt},
                        {"mm", "hundredths", 2.75, 275.0},
                        {"mm", "hundredths", 2.755, std::nullopt},
                        {"mm", "thousandths", 2.75, 2750.0},
                        {"mm", "mm", 2.75, 2.75},
                        {"inch", "auto", 0.108, 0.108},
                        {"inch", "thou", 0.108, 108.0},
                        {"inch", "in", 0.108, 0.108}};
  for (const Marked& one : all) {
    ServiceEntries book;
    book.setting("unit", one.unit).setting("marks", one.scheme);
    book.gap("1 IN L", 0.1).micrometer("1 IN L", 2.0);
    book.set("bench", "1", 0, "change").set("bench", "1", 2, "1 IN L");
    book.set("bench", "1", 3, 2.0).set("bench", "1", 4, one.size).set("bench", "1", 5, "bought");
    book.set("bench", "1", 6, "x");
    const Service service = book.service();
    const auto writes = shims_to_enter(service, findings_in(service));
    const auto mark = write_of(writes, "1 IN L", 1);
    const auto micrometer = write_of(writes, "1 IN L", 2);
    ASSERT_TRUE(mark && micrometer);
    if (one.mark) {
      ASSERT_TRUE(std::holds_alternative<double>(*mark)) << one.scheme << " " << one.size;
      EXPECT_NEAR(std::get<double>(*mark), *one.mark, 1e-9) << one.scheme << " " << one.size;
      EXPECT_EQ(micrometer, Entry());
    } else {
      EXPECT_EQ(mark, Entry()) << one.scheme << " " << one.size;
      EXPECT_EQ(micrometer, Entry(one.size));
    }
    EXPECT_EQ(write_of(writes, "1 IN L", 0), Entry());
  }
}

// A stand-in keeps a valve filled until its own shim comes.
TEST(BenchShims, of_a_stand_in_give_way_to_the_valves_own) {
  ServiceEntries book;
  const auto row = [&book](const char* n, double out, double in, const char* from) {
    book.set("bench", n, 0, "change").set("bench", n, 2, "1 IN L").set("bench", n, 3, out);
    book.set("bench", n, 4, in).set("bench", n, 5, from).set("bench", n, 6, "x");
  };
  row("1", 2.7, 2.3, "stand-in");
  EXPECT_EQ(book.view()["bench"].at("look", 1), "done");
  book.set("bench", "1", 6, Entry());
  EXPECT_EQ(book.view()["bench"].at("look", 1), "stand-in");
  book.set("bench", "1", 6, "x");
  row("2", 2.3, 2.5, "4 IN L");
  const auto fitted = shims_fitted(book.service());
  ASSERT_EQ(fitted.size(), 1U);
  EXPECT_EQ(fitted[0].size, 2.5);
}

TEST_F(Bench, asks_before_ticks_are_lost) {
  take();
  EXPECT_EQ(question_before_taking(service(), found()).words, "");
  tick(1);
  const BenchQuestion question = question_before_taking(service(), found());
  EXPECT_TRUE(question.words.starts_with("1 of 5 steps on the bench are ticked."))
      << question.words;
  EXPECT_EQ(question.caution, "");
  EXPECT_FALSE(question.offers_shims);
}

TEST_F(Bench, offers_to_enter_the_shims_that_are_in) {
  take();
  EXPECT_FALSE(question_before_clearing(service(), found()).offers_shims);
  EXPECT_EQ(question_before_clearing(service(), found()).words,
            "No step with a new shim is ticked. Clear the bench?");
  tick_up_to(count);
  const BenchQuestion question = question_before_clearing(service(), found());
  EXPECT_TRUE(question.offers_shims);
  EXPECT_TRUE(
      question.words.starts_with("Do not clear a list that is done: enter the new gaps on "
                                 "Recheck. Close this check then enters the shims"))
      << question.words;
  EXPECT_TRUE(tells(question.words, "By the ticks 1 IN ")) << question.words;
  EXPECT_TRUE(tells(question.words, "1 IN L (2.70 mm)")) << question.words;
  EXPECT_TRUE(tells(question.words, " have new shims: enter them on Head?")) << question.words;
}

TEST_F(Bench, tells_before_clearing_what_the_drawer_gained_and_lost) {
  book.gap("1 IN R", 0.20).spare(1, "", 2.7);
  take();
  tick_up_to(count);
  const BenchQuestion question = question_before_clearing(service(), found());
  EXPECT_TRUE(tells(question.words, "Spares that went in: 2.700.")) << question.words;
  EXPECT_TRUE(tells(question.words, "Out of the engine, and in no valve: 2.500."))
      << question.words;
  EXPECT_FALSE(tells(question.words, "steps are ticked"));
}

TEST_F(Bench, says_before_clearing_that_it_is_half_done) {
  take();
  tick_up_to(count - 1);
  EXPECT_FALSE(tells(question_before_clearing(service(), found()).words, "Close this check"));
  EXPECT_TRUE(tells(
      question_before_clearing(service(), found()).words,
      "Only " + std::to_string(count - 1) + " of " + std::to_string(count) + " steps are ticked"));
}

TEST_F(Bench, cautions_first_where_a_valve_stands_empty) {
  take();
  tick_up_to(2);
  for (const auto& ask : {question_before_clearing, question_before_taking}) {
    const BenchQuestion question = ask(service(), found());
    EXPECT_TRUE(question.caution.starts_with(
        "Do not turn the crank, refit camshafts or clear ticks yet. First fill 1 IN "))
        << question.caution;
  }
}

TEST(BenchOfAnEmptyBook, has_nothing_to_take_and_says_why) {
  ServiceEntries book;
  const Service service = book.service();
  const Findings found = findings_in(service);
  EXPECT_TRUE(rows_for_bench(service, found).empty());
  EXPECT_TRUE(why_nothing_to_take(service, found).starts_with("Nothing to fit yet: 16 valves"))
      << why_nothing_to_take(service, found);
}

TEST_F(Bench, has_nothing_to_take_while_entries_are_wrong) {
  take();
  book.set("side", "inlet", 0, 0.30);  // above the max
  EXPECT_TRUE(rows().empty());
  EXPECT_EQ(why_nothing_to_take(service(), found()),
            "No steps yet: correct the entries first, as Plan says.");
}

TEST_F(Bench, of_camshafts_out_has_no_stops) {
  book.setting("camshafts out", "yes");
  const auto taken = rows();
  ASSERT_EQ(taken.size(), 4U);
  for (const BenchRow& row : taken) EXPECT_EQ(row.step.stop, Entry());
  EXPECT_EQ(taken.back().valve, "turn");
  EXPECT_TRUE(tells(book.view()["book"].at("fit caution"), "while the camshafts are out"));
}

// Wherever the crank stands, one of the two is less than 60 degrees from its lobe.
TEST(BenchRing, says_which_shim_to_borrow_until_a_spare_can_stand_in) {
  ServiceEntries book;
  book.limits(0.15, 0.25).setting("margin", 60.0);
  book.gap("1 IN L", 0.40).micrometer("1 IN L", 2.5);
  book.gap("4 IN L", 0.0).micrometer("4 IN L", 2.7);
  const auto rows = [&book] { return rows_for_bench(book.service(), findings_in(book.service())); };
  const auto waiting = rows();
  ASSERT_FALSE(waiting.empty());
  EXPECT_EQ(waiting[0].step.kind, "wait");
  EXPECT_TRUE(tells(waiting[0].note, "borrow or buy a shim no thicker than 2.70 mm"))
      << waiting[0].note;
  EXPECT_TRUE(tells(box_of(book.view(), "fit"), "need a stand-in that is not there"));
  book.spare(1, "A", 2.3);
  const auto able = rows();
  EXPECT_TRUE(
      std::ranges::none_of(able, [](const BenchRow& row) { return row.step.kind == "wait"; }));
  EXPECT_TRUE(
      std::ranges::any_of(able, [](const BenchRow& row) { return row.step.from == "stand-in"; }));
}

}  // namespace
}  // namespace shimwright::tests
