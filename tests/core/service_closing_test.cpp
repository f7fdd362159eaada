// SPDX-License-Identifier: MPL-2.0
//
// Closing a check: why it cannot be closed yet, what is asked, and what it writes.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "closing_book.hpp"

namespace shimwright::tests {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

// All valves good, but 1 EX L, which is tight and gets a thinner shim, and 3 IN L, which is loose
// and gets a spare.
class ClosingACheck : public ::testing::Test {
 protected:
  ClosingACheck() {
    book.all_good();
    book.gap("1 EX L", 0.10).micrometer("1 EX L", 2.70).mark("1 EX L", 270.0);
    book.gap("3 IN L", 0.30).micrometer("3 IN L", 2.50);
    book.sizes(1, "A", 2.00, 3.50, 0.05, 5).spare(1, "A", 2.60).spare(2, "A", 2.90);
    book.drawer_rows(20);
  }

  // The list is done, and every gap is as it was predicted.
  void do_the_work() {
    book.take_to_bench();
    book.tick_all();
    book.recheck_as_predicted();
  }
  static std::vector<Entry> as_in_log(double check, double date, double distance) {
    return {check, 1.0, date, distance, "1 EX L"};
  }
  std::vector<std::string> refusals() const { return book.refusals(said, log); }
  std::vector<std::string> questions() const { return book.questions(said, log); }
  std::string deeds() const { return book.deeds(said, log); }

  ClosingBook book;
  ClosingEntries said{.date = "2026-11-26",
                      .distance = "48250",
                      .temperature = "20",
                      .who = "Ann",
                      .note = "cold engine",
                      .another_round = false};
  EntryTable log;
};

TEST_F(ClosingACheck, of_an_empty_book_has_nothing_to_put_on_record) {
  book = ClosingBook();
  book.limits(0.15, 0.25);
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("No gap is entered")));
}

TEST_F(ClosingACheck, waits_for_the_bench) {
  EXPECT_THAT(refusals(), ElementsAre("Reading out of limits: 1 EX L and 3 IN L.",
                                      HasSubstr("enter on Recheck, for each of these valves")));
  book.take_to_bench();
  book.tick(1);
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("Fit: 1 of ")));
  book.tick_all();
  EXPECT_THAT(refusals(), ElementsAre("Not measured again: 1 EX L and 3 IN L.",
                                      HasSubstr("Choose another round for these valves")));
}

TEST_F(ClosingACheck, waits_for_a_step_that_was_left_out) {
  do_the_work();
  book.tick(2, "no");
  EXPECT_THAT(refusals(), Contains(HasSubstr("Step 2 is not ticked and a later one is.")));
  said.another_round = true;
  EXPECT_THAT(refusals(), Contains(HasSubstr("Step 2 is not ticked and a later one is.")));
}

TEST_F(ClosingACheck, waits_for_valves_that_are_off_or_out_of_limits_unless_it_is_said_why) {
  do_the_work();
  EXPECT_THAT(refusals(), IsEmpty());
  book.set("recheck", "1 EX L", 0, 0.27);
  EXPECT_THAT(refusals(),
              ElementsAre(HasSubstr("Not as predicted: 1 EX L."), "Reading out of limits: 1 EX L.",
                          HasSubstr("Choose another round")));
  book.set("recheck", "1 EX L", 1, "noisy, but it may stay until spring");
  EXPECT_THAT(refusals(), IsEmpty());
  EXPECT_THAT(deeds(), HasSubstr("Left as they are, with your words in Log: 1 EX L."));
  book.set("recheck", "1 EX L", 0, Entry());
  EXPECT_THAT(refusals(), IsEmpty()) << "a valve that is not measured may stay so with a reason";
  book.set("recheck", "1 EX L", 0, "none");
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("what is entered for 1 EX L is no gap")));
}

TEST_F(ClosingACheck, lets_such_valves_into_another_round) {
  do_the_work();
  book.set("recheck", "1 EX L", 0, 0.27);
  book.set("recheck", "3 IN L", 0, Entry());
  said.another_round = true;
  EXPECT_THAT(refusals(), IsEmpty());
  EXPECT_THAT(deeds(), AllOf(HasSubstr("Without a gap on Head until measured: 3 IN L."),
                             HasSubstr("round 2 of check 1 begins")));
}

TEST_F(ClosingACheck, has_no_further_round_where_no_shim_was_changed) {
  said.another_round = true;
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("No shim was changed")));
}

TEST_F(ClosingACheck, wants_limits_to_judge_by) {
  do_the_work();
  book.set("side", "inlet", 1, Entry());
  EXPECT_THAT(refusals(), Contains("Enter the smallest and the largest gap allowed, inlet side."));
}

TEST_F(ClosingACheck, wants_a_day_and_numbers) {
  do_the_work();
  said.date = "";
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("such as 2026-11-30")));
  said.date = "last week";
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("\"last week\" is no day")));
  said.date = "2026-11-26";
  said.distance = "about 48 000";
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("cannot be read")));
  for (const char* thousands : {"48,250", "48.250", "1.048.250", "-5"}) {
    said.distance = thousands;
    EXPECT_THAT(refusals(), ElementsAre(HasSubstr("Enter figures without a mark"))) << thousands;
  }
  said.distance = "48 250";
  said.temperature = "warm";
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("\"warm\" is no number")));
  for (const char* no_engine : {"20000", "200.1", "-60,1"}) {
    said.temperature = no_engine;
    EXPECT_THAT(refusals(), ElementsAre(HasSubstr("no engine is at"))) << no_engine;
  }
  said.temperature = "20000";
  EXPECT_THAT(refusals(), ElementsAre("Temperature: no engine is at 20000 \u00b0C. Enter degrees "
                                      "Celsius, such as 20, or leave it blank."));
  for (const char* end : {"-60", "200"}) {
    said.temperature = end;
    EXPECT_THAT(refusals(), IsEmpty()) << end;
  }
  said.temperature = "18,5";
  EXPECT_THAT(refusals(), IsEmpty());
  EXPECT_EQ(book.closing(said, log).rows[0].distance, 48250.0);
  EXPECT_EQ(book.closing(said, log).rows[0].temperature, 18.5);
}

TEST_F(ClosingACheck, asks_about_a_distance_with_a_figure_too_many) {
  do_the_work();
  log = {as_in_log(1, 46000, 42000)};
  said.distance = "420000";
  EXPECT_THAT(questions(), ElementsAre(HasSubstr("420000 km is far more than the 42000 km")));
  said.distance = "84000";
  EXPECT_THAT(questions(), IsEmpty());
}

TEST_F(ClosingACheck, asks_about_a_distance_and_a_day_that_go_backwards) {
  do_the_work();
  log = {as_in_log(1, 46000, 40000), {"2", "", "46100", "48251", "1 EX L"}};
  EXPECT_THAT(questions(), ElementsAre(AllOf(HasSubstr("48250 km is less than the 48251 km"),
                                             HasSubstr("Was the instrument replaced?"))));
  book.setting("earlier distance", 1.0).setting("distance unit", "miles");
  EXPECT_THAT(questions(), IsEmpty());
  EXPECT_EQ(book.closing(said, log).rows[0].distance, 48251.0);
  EXPECT_THAT(deeds(), HasSubstr("Distance in all: 48251 miles."));
  said.date = "2000-01-01";
  EXPECT_THAT(questions(), ElementsAre(HasSubstr("2000-01-01 is before 2026-03-19")));
  said.date = "2026-12-01";
  EXPECT_THAT(questions(), ElementsAre(HasSubstr("2026-12-01 is yet to come")));
  said.date = "2026-11-26";
  said.distance = "";
  EXPECT_THAT(questions(), ElementsAre(HasSubstr("A check without its miles is on record")));
}

TEST_F(ClosingACheck, writes_a_row_a_valve) {
  do_the_work();
  book.set("recheck", "1 EX L", 0, 0.21).set("recheck", "1 EX L", 1, "quiet");
  log = {as_in_log(4, 46000, 40000), as_in_log(3, 46000, 40000)};
  const auto rows = book.closing(said, log).rows;
  ASSERT_EQ(rows.size(), 16U);
  const auto row = *std::ranges::find(rows, "1 EX L", &LogRow::valve);
  EXPECT_EQ(row.check, 5);
  EXPECT_EQ(row.round, 1);
  EXPECT_EQ(row.date, 46352.0);
  EXPECT_EQ(row.distance, 48250.0);
  EXPECT_EQ(row.gap_found, 0.10_mm);
  EXPECT_EQ(row.state, "tight");
  EXPECT_EQ(row.shim_found, 2.70_mm);
  EXPECT_EQ(row.shim_fitted, 2.60_mm);
  EXPECT_EQ(row.predicted, 0.20_mm);
  EXPECT_EQ(row.gap_left, 0.21_mm);
  EXPECT_EQ(row.temperature, 20.0);
  EXPECT_EQ(row.who, "Ann");
  EXPECT_EQ(row.note, "cold engine; quiet");
  const auto kept = *std::ranges::find(rows, "2 EX L", &LogRow::valve);
  EXPECT_EQ(kept.shim_fitted, kept.shim_found);
  EXPECT_EQ(kept.gap_left, kept.gap_found);
  EXPECT_EQ(kept.note, "cold engine");
}

// A lobe that was off its valve and on again may leave another gap.
TEST_F(ClosingACheck, has_no_gap_left_where_camshafts_were_out_and_nobody_measured_again) {
  book.setting("camshafts out", "yes");
  do_the_work();
  EXPECT_THAT(refusals(), Contains(HasSubstr("Not measured again: 1 EX R, ")));
  said.another_round = true;
  const auto rows = book.closing(said, log).rows;
  EXPECT_EQ(std::ranges::find(rows, "2 EX L", &LogRow::valve)->gap_left, std::nullopt);
  book.close(said, log);
  EXPECT_EQ(book.entry("valve", "2 EX L", 0), Entry());
  EXPECT_NE(book.entry("valve", "1 EX L", 0), Entry());
}

TEST_F(ClosingACheck, closes_where_nothing_was_changed) {
  book.gap("1 EX L", 0.20).gap("3 IN L", 0.20);
  EXPECT_THAT(refusals(), IsEmpty());
  EXPECT_THAT(deeds(), AllOf(HasSubstr("No shim was changed."), Not(HasSubstr("drawer"))));
  const auto rows = book.closing(said, log).rows;
  for (const LogRow& row : rows) {
    EXPECT_EQ(row.shim_fitted, row.shim_found);
    EXPECT_EQ(row.gap_left, row.gap_found);
  }
  book.close(said, log);
  for (const std::string& valve : book.valves()) EXPECT_EQ(book.entry("valve", valve, 0), Entry());
  EXPECT_EQ(book.entry("valve", "1 EX L", 2), Entry(2.70));
}

TEST_F(ClosingACheck, enters_the_shims_that_are_in_and_clears_the_rest) {
  do_the_work();
  EXPECT_THAT(
      deeds(),
      AllOf(HasSubstr("Log gets 16 rows: check 1, round 1, of 2026-11-26."),
            HasSubstr("1 EX L from 2.700 to 2.600"), HasSubstr("3 IN L from 2.500 to 2.550"),
            HasSubstr("Into the drawer: 2.700 out of 1 EX L and 2.500 out of 3 IN L."),
            HasSubstr("Out of the drawer, now in the engine: 2.600.")));
  book.close(said, log);
  EXPECT_TRUE(book.service().bench.empty());
  EXPECT_EQ(book.entry("valve", "1 EX L", 0), Entry());
  EXPECT_EQ(book.entry("valve", "2 EX L", 0), Entry());
  EXPECT_EQ(findings_in(book.service()).valves[0].shim, 2.60_mm);
  EXPECT_EQ(book.entry("recheck", "1 EX L", 0), Entry());
}

// One spare of 2.60 goes in, the two shims that came out take its row and the next blank one.
TEST_F(ClosingACheck, brings_the_drawer_up_to_date_and_says_where_a_shim_came_from) {
  book.set("note", "2", 0, "from the old engine");
  do_the_work();
  book.close(said, log);
  EXPECT_THAT(book.drawer(),
              ElementsAre("2.700 x1 out of 1 EX L, 2026-11-26", "2.900 x1 from the old engine",
                          "2.500 x1 out of 3 IN L, 2026-11-26"));
}

TEST_F(ClosingACheck, counts_a_shim_of_a_size_that_the_drawer_has_to_it) {
  book.spare(2, "", 2.70).set("spare", "2", 2, 3.0).set("note", "2", 0, "from the old engine");
  do_the_work();
  book.close(said, log);
  EXPECT_THAT(book.drawer(),
              ElementsAre("2.500 x1 out of 3 IN L, 2026-11-26",
                          "2.700 x4 from the old engine; out of 1 EX L, 2026-11-26"));
}

TEST_F(ClosingACheck, takes_one_of_several_spares) {
  book.set("spare", "1", 2, 3.0);
  do_the_work();
  ASSERT_THAT(deeds(), HasSubstr("now in the engine: 2.600 and 2.600."));
  book.close(said, log);
  EXPECT_THAT(book.drawer(), Contains("2.600 x1"));
}

TEST_F(ClosingACheck, refuses_where_the_drawer_has_no_room) {
  do_the_work();
  for (int row = 3; row <= 20; ++row) book.spare(row, "A", 3.0 + row / 100.0);
  EXPECT_THAT(refusals(),
              ElementsAre(HasSubstr("The drawer on Shims has no blank row for 1 shim")));
  EXPECT_TRUE(book.closing(said, log).writes.empty());
  EXPECT_TRUE(book.closing(said, log).rows.empty());
}

TEST_F(ClosingACheck, begins_another_round_with_the_new_gaps_over_the_new_shims) {
  do_the_work();
  book.set("recheck", "1 EX L", 0, 0.27).set("recheck", "2 EX L", 0, 0.19);
  said.another_round = true;
  log = {as_in_log(6, 46000, 40000)};
  book.close(said, log);
  EXPECT_EQ(book.entry("valve", "1 EX L", 0), Entry(0.27));
  EXPECT_EQ(book.entry("valve", "2 EX L", 0), Entry(0.19));
  EXPECT_EQ(book.entry("valve", "3 EX L", 0), Entry(0.20)) << "nothing touched it";
  EXPECT_EQ(findings_in(book.service()).valves[0].shim, 2.60_mm);
  EXPECT_EQ(book.entry("setting", "check", 0), Entry(7.0));
  EXPECT_EQ(book.entry("setting", "round", 0), Entry(2.0));
  EXPECT_TRUE(book.service().bench.empty());
  do_the_work();
  said.another_round = false;
  log.push_back(as_in_log(7, 46352, 48250));
  const auto closing = book.closing(said, log);
  ASSERT_FALSE(closing.rows.empty());
  EXPECT_EQ(closing.rows[0].check, 7);
  EXPECT_EQ(closing.rows[0].round, 2);
  EXPECT_EQ(closing.rows[0].gap_found, 0.27_mm);
  book.close(said, log);
  EXPECT_EQ(book.entry("setting", "check", 0), Entry());
  EXPECT_EQ(book.entry("setting", "round", 0), Entry());
}

// 2.55 was ordered for 1 EX L and came; so did one that nobody wants, and one is still to come.
TEST_F(ClosingACheck, puts_what_came_and_was_not_fitted_into_the_drawer) {
  book.set("spare", "1", 1, Entry());
  book.arrival(1, 2.60, "x").arrival(2, 3.10, "x").arrival(3, 3.20, Entry());
  book.arrival(4, 3.30, "no").arrival(5, Entry(), Entry());
  do_the_work();
  EXPECT_THAT(deeds(), AllOf(HasSubstr("bought and not used: 3.100 of row 2. If it goes back"),
                             HasSubstr("Still on order, and left on Arrivals: row 3.")));
  said.another_round = true;
  EXPECT_THAT(deeds(), Not(HasSubstr("bought and not used")));
  said.another_round = false;
  book.close(said, log);
  EXPECT_THAT(book.drawer(), Contains("3.100 x1 bought and not used, 2026-11-26"));
  for (const char* row : {"1", "2", "4"})
    for (std::size_t value = 0; value < 7; ++value)
      EXPECT_EQ(book.entry("arrival", row, value), Entry()) << row << " " << value;
  EXPECT_EQ(book.entry("arrival", "3", 1), Entry(3.20));
}

TEST_F(ClosingACheck, wants_the_size_of_what_came) {
  do_the_work();
  book.arrival(2, Entry(), "x");
  EXPECT_THAT(refusals(), ElementsAre(HasSubstr("Arrivals, row 2: nobody knows the size")));
}

TEST_F(ClosingACheck, tells_of_a_spare_in_the_engine_that_the_drawer_does_not_list) {
  do_the_work();
  book.set("spare", "1", 1, 2.42);
  EXPECT_THAT(deeds(), HasSubstr("Shims lists no such spare to take it from: 2.600 in "));
}

// The shim was measured once it was out.
TEST_F(ClosingACheck, puts_a_shim_into_the_drawer_by_what_it_measures) {
  book.take_to_bench();
  book.tick_all();
  book.micrometer("1 EX L", 2.698);
  book.recheck_as_predicted();
  EXPECT_EQ(book.closing(said, log).rows[0].shim_found, 2.698_mm);
  book.close(said, log);
  EXPECT_THAT(book.drawer(), Contains("2.698 x1 out of 1 EX L, 2026-11-26"));
}

// It was 2.70 by its mark, and measures far less once it is out. Or it is the new shim.
TEST_F(ClosingACheck, asks_whether_a_shim_far_from_the_list_is_the_one_that_came_out) {
  do_the_work();
  EXPECT_THAT(questions(), IsEmpty());
  book.micrometer("1 EX L", 2.45).set("recheck", "1 EX L", 1, "looked at twice");
  EXPECT_THAT(questions(), ElementsAre(HasSubstr("1 EX L (2.45 mm, by the list 2.70 mm)")));
  EXPECT_EQ(book.closing(said, log).rows[0].shim_found, 2.45_mm);
  book.close(said, log);
  EXPECT_THAT(book.drawer(), Contains(testing::StartsWith("2.450 x1"))) << "as in the log";
}

// Whoever takes it up later reads the mark.
TEST_F(ClosingACheck, notes_beside_a_shim_in_the_drawer_that_its_mark_says_otherwise) {
  book.mark("1 EX L", 250.0);
  book.arrival(2, 3.10, "x");
  book.set("arrival", "2", 5, 310.0).set("arrival", "2", 6, 3.14);
  do_the_work();
  EXPECT_THAT(deeds(),
              HasSubstr("Of another size than the mark on them, so measure them again before use: "
                        "2.700 (marked 2.500) and 3.140 (marked 3.100). The note on Shims says "
                        "so."));
  book.close(said, log);
  EXPECT_THAT(book.drawer(),
              AllOf(Contains("2.700 x1 marked 2.50 mm, out of 1 EX L, 2026-11-26"),
                    Contains("3.140 x1 marked 3.10 mm, bought and not used, 2026-11-26")));
}

TEST_F(ClosingACheck, says_nothing_of_marks_that_are_true) {
  book.arrival(2, 3.10, "x");
  book.set("arrival", "2", 5, 310.0).set("arrival", "2", 6, 3.11);
  do_the_work();
  EXPECT_THAT(deeds(), Not(HasSubstr("marked")));
}

TEST_F(ClosingACheck, tells_which_gaps_are_nearer_to_a_limit_than_their_doubt) {
  book.setting("doubt", 0.01);
  do_the_work();
  EXPECT_THAT(deeds(), Not(HasSubstr("nearer to one")));
  book.set("recheck", "1 EX L", 0, 0.155).set("recheck", "2 EX L", 0, 0.245);
  book.set("recheck", "1 EX L", 1, "new bucket").set("recheck", "2 EX L", 1, "new bucket");
  EXPECT_THAT(deeds(), HasSubstr("Inside their limits, but nearer to one than the doubt of the "
                                 "reading: 1 EX L (tight?) and 2 EX L (loose?)."));
  book.set("recheck", "2 EX L", 0, 0.24);
  EXPECT_THAT(deeds(), HasSubstr("Inside its limits, but nearer to one than the doubt of the "
                                 "reading: 1 EX L (tight?)."));
  book.setting("doubt", Entry());
  EXPECT_THAT(deeds(), Not(HasSubstr("nearer to one"))) << "no doubt is entered";
}

// ---- What the dialog begins with.

class BeginningToClose : public ClosingACheck {
 protected:
  ClosingEntries begin() const {
    const Service service = book.service();
    return entries_to_begin_with(service, findings_in(service), log, closing_today);
  }
  // Of 1 EX L; who and temperature besides.
  static std::vector<Entry> row(Entry check, Entry round, Entry distance, Entry degrees,
                                Entry who) {
    return {check,   round,   46352.0, distance, "1 EX L", Entry(), Entry(),
            Entry(), Entry(), Entry(), Entry(),  degrees,  who,     Entry()};
  }
};

TEST_F(BeginningToClose, a_first_round_has_todays_date_and_nothing_else) {
  log = {row(1.0, 1.0, 48250.0, 20.0, "Ann")};
  EXPECT_EQ(begin().date, closing_today);
  EXPECT_EQ(begin().distance, "");
  EXPECT_EQ(begin().temperature, "");
  EXPECT_EQ(begin().who, "");
  EXPECT_FALSE(begin().another_round);
}

TEST_F(BeginningToClose, a_further_round_has_what_the_round_before_it_had) {
  book.setting("check", 2.0).setting("round", 3.0);
  log = {row(2.0, 2.0, 48260.0, 18.5, "Ben"), row(2.0, 1.0, 48250.0, 20.0, "Ann"),
         row(1.0, 1.0, 36000.0, 15.0, "Cora")};
  EXPECT_EQ(begin().date, closing_today);
  EXPECT_EQ(begin().distance, "48260");
  EXPECT_EQ(begin().temperature, "18.5");
  EXPECT_EQ(begin().who, "Ben");
  EXPECT_EQ(begin().note, "");
  book.setting("half", "0,5");
  EXPECT_EQ(begin().temperature, "18,5");
  EXPECT_THAT(questions(), IsEmpty()) << "it goes on as it begins";
}

TEST_F(BeginningToClose, what_the_last_round_does_not_say_is_that_of_the_one_before) {
  book.setting("check", 2.0).setting("round", 3.0);
  log = {row("2", "1", "48250", "20", "Ann"), row(2.0, 2.0, Entry(), Entry(), Entry())};
  EXPECT_EQ(begin().distance, "48250");
  EXPECT_EQ(begin().temperature, "20");
  EXPECT_EQ(begin().who, "Ann");
}

TEST_F(BeginningToClose, the_distance_is_as_the_instrument_shows_it) {
  book.setting("check", 2.0).setting("round", 2.0).setting("earlier distance", 40000.0);
  log = {row(2.0, 1.0, 48250.5, Entry(), Entry())};
  EXPECT_EQ(begin().distance, "8250.5");
  log = {row(2.0, 1.0, 48250.125, Entry(), Entry())};
  EXPECT_EQ(begin().distance, "") << "three decimals would be read as thousands";
  log = {row(2.0, 1.0, 30000.0, Entry(), Entry())};
  EXPECT_EQ(begin().distance, "") << "it was logged before the instrument was replaced";
}

TEST(LogSoFar, is_read_though_cells_make_no_sense) {
  const LogSoFar none = log_so_far({{}, {"a", "b"}, {-3.0, 1.0, "x", "y"}});
  EXPECT_EQ(none.last_check, 0);
  EXPECT_EQ(none.last_day, std::nullopt);
  EXPECT_EQ(none.longest_distance, std::nullopt);
  const LogSoFar some = log_so_far({{7.0, 1.0, 46000.0, "12,5"}, {"3", 1.0, 46100.0, 12.0}});
  EXPECT_EQ(some.last_check, 7);
  EXPECT_EQ(some.last_day, 46100.0);
  EXPECT_EQ(some.longest_distance, 12.5);
}

}  // namespace
}  // namespace shimwright::tests
