// SPDX-License-Identifier: MPL-2.0
//
// Readings that were off in the last round: what another round says of them, and until when.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "closing_book.hpp"
#include "core/service/readings_off.hpp"

namespace shimwright::tests {
namespace {

using testing::AllOf;
using testing::AnyOf;
using testing::Each;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

// 1 EX L is tight and gets a thinner shim, 3 IN L is loose and gets a thicker one, one of them a
// spare.
class ReadingsOff : public ::testing::Test {
 protected:
  ReadingsOff() {
    book.all_good();
    book.gap("1 EX L", 0.10).micrometer("1 EX L", 2.70).mark("1 EX L", 270.0);
    book.gap("3 IN L", 0.30).micrometer("3 IN L", 2.50);
    book.sizes(1, "A", 2.00, 3.50, 0.05, 5).spare(1, "A", 2.60);
    book.drawer_rows(20);
    book.setting("readings off", Entry());
    book.take_to_bench();
    book.tick_all();
    book.recheck_as_predicted();
  }
  double predicted(const std::string& valve) const {
    return std::get<double>(book.entry("recheck", valve, 0));
  }
  void reads_off(const std::string& valve, double by) {
    book.set("recheck", valve, 0, predicted(valve) + by);
  }
  void begin_another_round() {
    ClosingEntries again = said;
    again.another_round = true;
    book.close(again, {});
  }
  std::string next_step() const { return book.view()["book"].at("next step"); }
  std::string question() const {
    const Service service = book.service();
    return question_on_readings_off(service, findings_in(service));
  }
  std::vector<std::string> off() const {
    std::vector<std::string> names;
    const Service service = book.service();
    const Findings found = findings_in(service);
    for (std::size_t i = 0; i < found.valves.size(); ++i)
      if (found.valves[i].off) names.push_back(service.valves[i].name);
    return names;
  }

  ClosingBook book;
  ClosingEntries said{.date = "2026-11-26",
                      .distance = "48250",
                      .temperature = "20",
                      .who = "Ann",
                      .note = "",
                      .another_round = false};
};

TEST_F(ReadingsOff, are_told_on_head_plan_fit_and_recheck_before_anything_else) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  EXPECT_THAT(off(), ElementsAre("1 EX L"));
  const View view = book.view();
  for (const char* sheet : {"head", "plan", "fit", "recheck"}) {
    EXPECT_THAT(box_of(view, sheet),
                HasSubstr("Do not order or fit a shim yet by the reading of 1 EX L (off by 0.08)"))
        << sheet;
    EXPECT_EQ(view["boxes"].at(std::string("mood ") + sheet, 1), "loud") << sheet;
  }
  EXPECT_THAT(next_step(), StartsWith("Measure gap and shim of 1 EX L again"));
}

TEST_F(ReadingsOff, leave_no_verdict_on_the_valve_itself_but_that_it_is_to_be_measured_first) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  const View view = book.view();
  EXPECT_EQ(book.of_valve(view, "1 EX L", "do"), "measure first");
  EXPECT_EQ(book.of_valve(view, "1 EX L", "card do"), "measure first");
  EXPECT_EQ(book.of_valve(view, "1 EX L", "then state"), "again");
  for (const char* piece : {"then", "card then", "foot", "after", "margin", "fit", "cost"})
    EXPECT_EQ(book.of_valve(view, "1 EX L", piece), "") << piece;
  EXPECT_THAT(book.of_valve(view, "3 IN L", "then"), HasSubstr("good"));
  for (std::size_t row = 1; row <= view["picture"].rows.size(); ++row)
    if (view["picture"].at("name", row) == "1 EX L") {
      EXPECT_EQ(view["picture"].at("after good", row), "");
    }
}

// 1 EX L reads 0.28 in place of 0.20: by that reading a shim out of a good valve would serve it.
TEST_F(ReadingsOff, change_no_shim_of_a_valve_that_is_good) {
  book.setting("touch good", "yes").setting("doubt", 0.0);
  book.gap("2 EX L", 0.16);
  reads_off("1 EX L", 0.08);
  book.set("recheck", "2 EX L", 0, Entry());
  begin_another_round();
  ASSERT_THAT(off(), ElementsAre("1 EX L"));
  const auto doings = [this] {
    std::vector<std::string> all;
    const View view = book.view();
    for (const std::string& valve : book.valves()) all.push_back(book.of_valve(view, valve, "do"));
    return all;
  };
  EXPECT_THAT(doings(), Each(AnyOf("measure first", "keep")));
  EXPECT_EQ(book.view()["book"].at("buy count"), "0");
  book.write(readings_off_to_clear(book.service()));
  EXPECT_THAT(doings(), Not(Each(AnyOf("measure first", "keep")))) << "once it counts";
}

TEST_F(ReadingsOff, let_valves_outside_their_limits_get_their_shims_but_not_the_one_in_doubt) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  const double gap = std::get<double>(book.entry("valve", "1 EX L", 0));
  book.gap("2 EX R", 0.05);
  const View view = book.view();
  ASSERT_THAT(off(), ElementsAre("1 EX L"));
  ASSERT_GT(gap, 0.25);
  EXPECT_THAT(book.of_valve(view, "2 EX R", "do"), AnyOf("buy", "spare"));
  EXPECT_THAT(box_of(view, "fit"), Not(HasSubstr("ready")));
}

// With its reading in doubt nobody knows yet whether the shim that has come is wanted.
TEST_F(ReadingsOff, send_no_shim_back) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  book.arrival(1, 2.55, "yes");
  EXPECT_EQ(book.view()["arrivals"].at("verdict", 1), "measure first");
  EXPECT_THAT(box_of(book.view(), "arrivals"), Not(HasSubstr("back")));
  book.write(readings_off_to_clear(book.service()));
  EXPECT_NE(book.view()["arrivals"].at("verdict", 1), "measure first");
}

TEST_F(ReadingsOff, end_with_another_gap_or_another_shim_on_head) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  const ClosingBook before = book;
  const double gap = std::get<double>(book.entry("valve", "1 EX L", 0));
  book.gap("1 EX L", gap - 0.06);
  EXPECT_THAT(off(), IsEmpty());
  EXPECT_THAT(box_of(book.view(), "plan"), Not(HasSubstr("Do not order or fit")));
  EXPECT_THAT(next_step(), Not(HasSubstr("Measure gap and shim")));
  book = before;
  book.micrometer("1 EX L", 2.63);
  EXPECT_THAT(off(), IsEmpty());
  book = before;
  book.gap("2 EX L", 0.21);
  EXPECT_THAT(off(), ElementsAre("1 EX L")) << "another valve";
}

// Typing the same again on another sheet proves nothing.
TEST_F(ReadingsOff, are_judged_on_recheck_by_what_the_last_round_predicted) {
  reads_off("3 IN L", -0.05);  // off, but inside its limits
  begin_another_round();
  const double gap = std::get<double>(book.entry("valve", "3 IN L", 0));
  book.set("recheck", "3 IN L", 0, gap);
  EXPECT_THAT(off(), ElementsAre("3 IN L"));
  EXPECT_THAT(book.refusals(said, {}),
              ElementsAre(StartsWith("Not as predicted: 3 IN L."), HasSubstr("why it stays")));
  book.set("recheck", "3 IN L", 0, gap + 0.05);
  EXPECT_THAT(book.refusals(said, {}), IsEmpty());
  EXPECT_THAT(book.questions(said, {}), IsEmpty()) << "it was measured again";
}

TEST_F(ReadingsOff, are_named_before_another_round_begins) {
  reads_off("1 EX L", 0.08);
  ClosingEntries again = said;
  again.another_round = true;
  EXPECT_THAT(book.deeds(again, {}), HasSubstr("To be measured first in the next round, before "
                                               "anything is decided by it: 1 EX L."));
}

TEST_F(ReadingsOff, end_by_a_persons_word_where_both_read_the_same_again) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  EXPECT_THAT(question(), AllOf(StartsWith("Do not order or fit a shim by a reading"),
                                HasSubstr("1 EX L (off by 0.08)")));
  book.write(readings_off_to_clear(book.service()));
  EXPECT_THAT(off(), IsEmpty());
  EXPECT_EQ(question(), "");
  EXPECT_THAT(readings_off_to_clear(book.service()), IsEmpty());
}

// A bought shim, a spare, and one that was never out.
TEST_F(ReadingsOff, are_known_again_by_gap_and_shim_wherever_the_shim_came_from) {
  reads_off("1 EX L", 0.08);
  reads_off("3 IN L", -0.06);
  book.set("recheck", "2 EX L", 0, 0.15);
  begin_another_round();
  EXPECT_THAT(off(), ElementsAre("1 EX L", "2 EX L", "3 IN L"));
  EXPECT_THAT(question(), HasSubstr("1 EX L (off by 0.08), 2 EX L (off by 0.05) and 3 IN L "
                                    "(off by 0.06)"));
}

TEST_F(ReadingsOff, in_inches_are_known_again_too) {
  ClosingBook inches;
  inches.setting("unit", "inch").setting("readings off", Entry());
  inches.limits(0.0059, 0.0098);
  for (const std::string& valve : inches.valves())
    inches.gap(valve, 0.0079).micrometer(valve, 0.1063);
  inches.gap("1 EX L", 0.0039).sizes(1, "A", 0.08, 0.14, 0.002, 5);
  inches.drawer_rows(20);
  inches.take_to_bench();
  inches.tick_all();
  inches.recheck_as_predicted();
  inches.set("recheck", "1 EX L", 0,
             std::get<double>(inches.entry("recheck", "1 EX L", 0)) + 0.0031);
  ClosingEntries again = said;
  again.another_round = true;
  inches.close(again, {});
  EXPECT_THAT(box_of(inches.view(), "plan"), HasSubstr("1 EX L (off by 0.0031)"));
}

TEST_F(ReadingsOff, are_none_that_were_as_predicted) {
  begin_another_round();
  EXPECT_THAT(off(), IsEmpty());
  EXPECT_EQ(book.entry("setting", "readings off", 0), Entry());
}

TEST_F(ReadingsOff, are_none_of_which_the_owner_said_why) {
  reads_off("1 EX L", 0.08);
  book.set("recheck", "1 EX L", 1, "a new bucket went in");
  begin_another_round();
  EXPECT_THAT(off(), IsEmpty());
}

TEST_F(ReadingsOff, are_asked_about_before_the_check_is_closed_and_then_forgotten) {
  reads_off("3 IN L", -0.05);  // off, but good
  begin_another_round();
  ASSERT_THAT(off(), ElementsAre("3 IN L"));
  EXPECT_THAT(next_step(), StartsWith("Measure gap and shim of 3 IN L again")) << "though good";
  EXPECT_THAT(book.refusals(said, {}), IsEmpty());
  EXPECT_THAT(book.questions(said, {}),
              ElementsAre(StartsWith("3 IN L was not as predicted after the last round.")));
  book.close(said, {});
  EXPECT_EQ(book.entry("setting", "readings off", 0), Entry());
}

TEST_F(ReadingsOff, of_a_round_take_the_place_of_those_before) {
  reads_off("1 EX L", 0.20);
  begin_another_round();
  book.write(readings_off_to_clear(book.service()));
  book.take_to_bench();
  book.tick_all();
  book.recheck_as_predicted();
  begin_another_round();
  EXPECT_THAT(off(), IsEmpty());
}

TEST_F(ReadingsOff, are_not_kept_by_a_book_that_has_no_cell_for_them) {
  reads_off("1 EX L", 0.08);
  Service service = book.service();
  service.readings_off.reset();
  ClosingEntries again = said;
  again.another_round = true;
  for (const EntryWrite& one :
       closing_of(service, findings_in(service), {}, again, closing_today).writes)
    EXPECT_NE(one.name, "readings off");
}

TEST_F(ReadingsOff, are_none_where_what_is_kept_cannot_be_read) {
  reads_off("1 EX L", 0.08);
  begin_another_round();
  const std::string kept = std::get<std::string>(book.entry("setting", "readings off", 0));
  for (const std::string& other :
       {std::string("nonsense"), kept + " -", kept.substr(0, kept.size() - 2), std::string("/ / /"),
        std::string(5000, ' ')}) {
    book.setting("readings off", other);
    EXPECT_THAT(off(), IsEmpty()) << other;
  }
  book.setting("readings off", kept);
  EXPECT_THAT(off(), ElementsAre("1 EX L"));
}

}  // namespace
}  // namespace shimwright::tests
