// SPDX-License-Identifier: MPL-2.0
//
// The stages of a check, one after the other and out of turn.
#include <gtest/gtest.h>

#include "arrival_values.hpp"
#include "bench_entries.hpp"
#include "core/service/order_command.hpp"
#include "core/service/stage.hpp"

namespace shimwright::tests {
namespace {

// 1 EX L wants a shim that is to be bought; all others are good.
class Stages : public ::testing::Test {
 protected:
  Stages() {
    book.limits(0.15, 0.25).sizes(1, "A", 2.00, 3.50, 0.05, 5).setting("doubt", 0.01);
    for (const std::string& valve : book.valves()) book.gap(valve, 0.20).micrometer(valve, 2.60);
    book.gap("1 EX L", 0.36).micrometer("1 EX L", 2.50);
  }
  Stage stage() const {
    const Service service = book.service();
    return stage_of(service, findings_in(service));
  }
  void order() {
    for (int row = 1; row <= 3; ++row)
      book.set("arrival", std::to_string(row), micrometer, Entry());
    const Service service = book.service();
    for (const EntryWrite& one : order_to_write(service, findings_in(service), "2026-11-26"))
      book.set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
  }

  ServiceEntries book;
};

TEST_F(Stages, follow_one_another_from_the_first_gap_to_the_record) {
  EXPECT_EQ(stage(), Stage::measuring);
  order();
  EXPECT_EQ(stage(), Stage::waiting);
  book.set("arrival", "1", arrived, "x");
  EXPECT_EQ(stage(), Stage::measuring);  // the next step is the bench
  const int steps = take_to_bench(book);
  EXPECT_EQ(stage(), Stage::bench);
  tick_steps(book, steps - 1);
  EXPECT_EQ(stage(), Stage::bench);
  tick_steps(book, steps);
  EXPECT_EQ(stage(), Stage::recheck);
  book.set("recheck", "2 EX L", 0, 0.20);  // it was not opened
  EXPECT_EQ(stage(), Stage::recheck);
  book.set("recheck", "1 EX L", 0, 0.35);  // off, which another round settles
  EXPECT_EQ(stage(), Stage::record);
  book.set("recheck", "1 EX L", 0, "#error");
  EXPECT_EQ(stage(), Stage::recheck);
}

TEST_F(Stages, of_an_empty_book_and_of_one_without_limits_is_measuring) {
  EXPECT_EQ(stage_of(ServiceEntries().service(), findings_in(ServiceEntries().service())),
            Stage::measuring);
  EXPECT_EQ(stage_of(Service(), findings_in(Service())), Stage::measuring);
  book.limits(0.3, 0.1);
  EXPECT_EQ(stage(), Stage::measuring);
}

TEST_F(Stages, lead_from_measuring_to_the_record_where_nothing_needs_a_shim) {
  book.gap("1 EX L", 0.20);
  EXPECT_EQ(stage(), Stage::record);
  book.gap("4 IN R", Entry());
  EXPECT_EQ(stage(), Stage::measuring);
}

TEST_F(Stages, take_a_valve_left_alone_as_one_that_needs_no_shim) {
  book.leave_alone("1 EX L");
  EXPECT_EQ(stage(), Stage::record);
}

TEST_F(Stages, stay_at_measuring_where_no_shim_serves_until_it_is_said_why_that_may_be) {
  book.gap("1 EX L", 1.90);
  EXPECT_EQ(stage(), Stage::measuring);
  book.set("recheck", "1 EX L", 1, "head comes off next month");
  EXPECT_EQ(stage(), Stage::record);
}

TEST_F(Stages, do_not_wait_for_a_shim_that_no_valve_gets_or_that_is_not_coming) {
  order();
  book.set("arrival", "1", arrived, "no");
  EXPECT_EQ(stage(), Stage::measuring);
  book.set("arrival", "1", arrived, Entry());
  book.gap("1 EX L", 0.20);
  EXPECT_EQ(stage(), Stage::record);
}

TEST_F(Stages, wait_for_what_is_on_order_while_there_is_no_plan) {
  order();
  book.limits(0.3, 0.1);
  EXPECT_EQ(stage(), Stage::waiting);
}

TEST_F(Stages, are_told_by_the_ticks_whatever_the_plan_says_by_now) {
  fit_all(book);
  book.gap("1 EX L", 0.20);
  EXPECT_EQ(stage(), Stage::recheck);
  book.limits(0.3, 0.1);
  EXPECT_EQ(stage(), Stage::recheck);
}

TEST_F(Stages, with_camshafts_out_want_every_valve_measured) {
  book.setting("camshafts out", "yes");
  fit_all(book);
  for (const std::string& valve : book.valves()) {
    EXPECT_EQ(stage(), Stage::recheck) << valve;
    book.set("recheck", valve, 0, 0.20);
  }
  EXPECT_EQ(stage(), Stage::record);
}

}  // namespace
}  // namespace shimwright::tests
