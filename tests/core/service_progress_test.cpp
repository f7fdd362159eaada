// SPDX-License-Identifier: MPL-2.0
//
// How far one is, as Read me first tells it, and what Engine asks for until it is entered.
#include <gtest/gtest.h>

#include "core/service/bench.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

class Progress : public ::testing::Test {
 protected:
  Progress() { book.limits(0.16, 0.22); }

  std::string shown(std::string_view column) const { return book.view()["book"].at(column); }

  ServiceEntries book;
};

TEST_F(Progress, counts_gaps_and_shims_but_waits_for_none_that_may_stay_unread) {
  EXPECT_EQ(shown("gaps measured"), "0 of 16");
  EXPECT_EQ(shown("shims known"), "0 of 16");
  EXPECT_EQ(shown("gaps measured share"), "0");
  book.gap("1 IN L", 0.20).gap("2 IN L", 0.10);
  EXPECT_EQ(shown("gaps measured"), "2 of 16");
  EXPECT_EQ(shown("gaps measured share"), "0.125");
  EXPECT_EQ(shown("shims known"), "0 of 15");
  book.micrometer("2 IN L", 2.7);
  EXPECT_EQ(shown("shims known"), "1 of 15");
  book.setting("touch good", "yes");
  EXPECT_EQ(shown("shims known"), "1 of 16");
}

TEST_F(Progress, of_a_book_without_steps_has_changed_nothing) {
  EXPECT_EQ(shown("change label"), "shims to change");
  EXPECT_EQ(shown("change count"), "0");
  EXPECT_EQ(shown("steps done"), "\u2013");
}

TEST_F(Progress, calls_shims_changed_once_every_step_is_ticked_and_no_sooner) {
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80).gap("2 IN L", 0.30).micrometer("2 IN L", 2.6);
  book.sizes(1, "A", 2.5, 2.9, 0.05, 5);
  EXPECT_EQ(shown("change count"), "2");
  const Service service = book.service();
  const auto steps = bench_steps(service, findings_in(service));
  ASSERT_GT(steps.size(), 1U);
  const std::string all = std::to_string(steps.size());
  EXPECT_EQ(shown("steps done"), "0 of " + all);
  book.set("taken", "list", 0, "today");
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const std::string row = std::to_string(i + 1);
    book.set("bench", row, 0, steps[i].kind).set("bench", row, 1, steps[i].stop);
    book.set("bench", row, 2, steps[i].valve).set("bench", row, 3, steps[i].out);
    book.set("bench", row, 4, steps[i].in).set("bench", row, 5, steps[i].from);
  }
  for (std::size_t i = 0; i < steps.size(); ++i) {
    EXPECT_EQ(shown("change label"), "shims to change");
    EXPECT_EQ(shown("steps done"), std::to_string(i) + " of " + all);
    book.set("bench", std::to_string(i + 1), 6, "x");
  }
  EXPECT_EQ(shown("change label"), "shims changed");
  EXPECT_EQ(shown("buy label"), "of these bought");
  EXPECT_EQ(shown("change count"), "2");
  EXPECT_EQ(shown("steps done share"), "1");
  EXPECT_EQ(shown("buy count"), "2");
  book.set("arrival", "1", 1, 2.70).set("arrival", "1", 4, "x");
  EXPECT_EQ(shown("buy count"), "2") << "what has come is bought all the same";
  EXPECT_EQ(shown("outside count"), "0");
  book.set("recheck", "1 IN L", 0, 0.30);
  EXPECT_EQ(shown("outside count"), "1") << "by the new gap";
}

TEST_F(Progress, asks_for_the_doubt_of_a_reading_until_it_is_entered) {
  EXPECT_NE(shown("doubt hint"), "");
  book.setting("doubt", 0.01);
  EXPECT_EQ(shown("doubt hint"), "");
}

TEST_F(Progress, says_what_a_mark_stands_for_in_the_unit_of_the_book) {
  EXPECT_NE(shown("marks note").find("2755 is 2.755 mm"), std::string::npos);
  book.setting("unit", "inch");
  EXPECT_NE(shown("marks note").find(".108 is 0.108 in"), std::string::npos);
}

}  // namespace
}  // namespace shimwright::tests
