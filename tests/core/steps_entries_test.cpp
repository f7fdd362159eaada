// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_entries.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <string>
#include <vector>

#include "blank.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

using Stops = std::vector<std::vector<int>>;  // of each valve

// Three valves: the first takes the second's shim, the second a bought one, the third keeps its
// own.
class StepsEntries : public ::testing::Test {
 protected:
  StepsEntries() {
    question.valves = {valve("Ex 1", 0.10_mm, 2.80_mm), valve("Ex 2", 0.10_mm, 2.70_mm),
                       valve("In 1", 0.18_mm, 2.90_mm)};
    question.stock = {
        {.kind = Stock::Kind::sale, .series = "", .size = 2.60_mm, .count = {}, .price = {}},
        {.kind = Stock::Kind::spare, .series = "", .size = 2.40_mm, .count = 2, .price = {}}};
    plan = best_plan(question);
  }

  static Valve valve(std::string name, Length clearance, Length shim) {
    return {.name = std::move(name),
            .series = "",
            .clearance = clearance,
            .shim = shim,
            .limits = {0.16_mm, 0.20_mm},
            .aim = 0.20_mm,
            .doubt = {}};
  }

  FittingQuestion read(const EntryTable& stops) const {
    return read_fitting(question, plan, stops);
  }

  Stops stops_of(const EntryTable& table) const {
    Stops stops;
    for (const FittingValve& one : read(table).valves) stops.push_back(one.stops);
    return stops;
  }

  std::string refusal(const EntryTable& stops) const {
    try {
      fitting_steps(read(stops));
    } catch (const BadInput& trouble) {
      return trouble.what();
    }
    return "none";
  }

  PlanQuestion question;
  Plan plan;
};

TEST_F(StepsEntries, hold_the_plan_and_the_spares_it_leaves) {
  const FittingQuestion fitting = read({{"Ex 1", 1.0}, {"Ex 2", 2.0}});
  ASSERT_EQ(fitting.valves.size(), 3U);
  EXPECT_EQ(fitting.valves[0].supply, FittingValve::Supply::valve);
  EXPECT_EQ(fitting.valves[0].giver, 1U);
  EXPECT_EQ(fitting.valves[1].supply, FittingValve::Supply::bought);
  EXPECT_EQ(fitting.valves[1].fit, 2.60_mm);
  EXPECT_EQ(fitting.valves[2].supply, FittingValve::Supply::keep);
  ASSERT_EQ(fitting.spares.size(), 1U);
  EXPECT_EQ(fitting.spares[0].count, 2);
}

TEST_F(StepsEntries, a_valve_may_be_open_at_several_stops) {
  EXPECT_EQ(stops_of({{"Ex 1", 2.0}, {"Ex 2", 1.0}, {"Ex 1", 3.0}}), (Stops{{2, 3}, {1}, {}}));
}

TEST_F(StepsEntries, valves_are_named_in_any_case) {
  EXPECT_EQ(stops_of({{" ex 1 ", 1.0}, {"EX 2", 2.0}}), (Stops{{1}, {2}, {}}));
}

TEST_F(StepsEntries, a_header_blank_rows_and_valves_without_a_stop_are_skipped) {
  EXPECT_EQ(stops_of({{"valve", "stop"},
                      {blank, ""},
                      {"Ex 1", 1.0},
                      {"In 1", blank},
                      {"Ex 2", 2.0},
                      {"", ""}}),
            (Stops{{1}, {2}, {}}));
}

TEST_F(StepsEntries, nothing_or_one_number_is_camshafts_out) {
  for (const EntryTable& table : {EntryTable(), EntryTable{{blank}}, EntryTable{{0.0}},
                                  EntryTable{{1.0}}, EntryTable{{" "}}, EntryTable(1)}) {
    EXPECT_TRUE(read(table).camshafts_out);
    EXPECT_EQ(refusal(table), "none");
  }
}

TEST_F(StepsEntries, a_table_laid_out_but_blank_is_not_camshafts_out) {
  for (const EntryTable& table : {EntryTable{{blank, blank}}, EntryTable{{"", ""}, {"", ""}},
                                  EntryTable{{"valve", "stop"}, {"Ex 1", ""}}}) {
    EXPECT_FALSE(read(table).camshafts_out);
    EXPECT_NE(refusal(table).find("worked on at no stop of the crank"), std::string::npos);
  }
}

TEST_F(StepsEntries, a_valve_to_be_opened_needs_a_stop) {
  EXPECT_EQ(
      refusal({{"Ex 1", 1.0}, {"In 1", 1.0}}),
      "valve \"Ex 2\": its shim is to be changed, but it can be worked on at no stop of the crank");
}

TEST_F(StepsEntries, an_unknown_valve_is_told_with_its_row) {
  EXPECT_EQ(refusal({{"valve", "stop"}, {"Ex 1", 1.0}, {"Ex 9", 2.0}}),
            "stops, row 3, valve: \"Ex 9\" is none of the valves");
  EXPECT_EQ(refusal({{"Ex 1", 1.0}, {"", 2.0}}),
            "stops, row 2, valve: there is a stop without a valve");
}

TEST_F(StepsEntries, a_stop_that_is_none_is_told_with_its_row) {
  EXPECT_EQ(refusal({{"Ex 1", 1.0}, {"Ex 2", 1.5}}),
            "stops, row 2, stop: 1.5 is not the number of a stop: stops count 1, 2, 3 and so on");
  EXPECT_EQ(refusal({{"Ex 1", "first"}, {"Ex 2", 2.0}}),
            "stops, row 1, stop: \"first\" is not the number of a stop")
      << "the name of a valve stands in no heading";
  EXPECT_EQ(refusal({{"Ex 1", 1.0}, {"Ex 2", "second"}}),
            "stops, row 2, stop: \"second\" is not the number of a stop");
  for (const double strange : {0.0, -1.0, 1e300, std::numeric_limits<double>::quiet_NaN(),
                               std::numeric_limits<double>::infinity()})
    EXPECT_NE(refusal({{"Ex 1", 1.0}, {"Ex 2", strange}}).find("stops, row 2, stop: "),
              std::string::npos)
        << strange;
}

TEST_F(StepsEntries, stops_are_numbered_up_to_1000) {
  EXPECT_EQ(stops_of({{"Ex 1", 1000.0}, {"Ex 2", 1.0}}), (Stops{{1000}, {1}, {}}));
  EXPECT_NE(refusal({{"Ex 1", 1001.0}, {"Ex 2", 1.0}}).find("stops, row 1, stop: "),
            std::string::npos);
}

TEST_F(StepsEntries, a_single_cell_that_is_no_stop_is_told) {
  EXPECT_EQ(refusal({{"camshafts out"}}), "stops: \"camshafts out\" is not the number of a stop");
  EXPECT_EQ(refusal({{2.5}}),
            "stops: 2.5 is not the number of a stop: stops count 1, 2, 3 and so on");
}

TEST_F(StepsEntries, one_column_is_too_narrow) {
  EXPECT_EQ(refusal({{1.0}, {2.0}}),
            "stops: the table has 1 column; at least 2 are due: valve and stop");
}

FittingSteps one_step(bool least) {
  FittingSteps found;
  found.steps.resize(2);
  found.steps[1].notes = {{Say::measure_again}};
  found.least = least;
  return found;
}

TEST(ToldSteps, proved_the_fewest_are_as_they_are) {
  const auto steps = told_steps(one_step(true));
  ASSERT_EQ(steps.size(), 2U);
  EXPECT_TRUE(steps[0].notes.empty());
  EXPECT_EQ(in_words(steps[1].notes, Teller()), "measure again");
}

TEST(ToldSteps, not_proved_the_fewest_say_so_at_the_end) {
  const auto steps = told_steps(one_step(false));
  EXPECT_TRUE(steps[0].notes.empty());
  EXPECT_EQ(in_words(steps[1].notes, Teller()),
            "measure again (These steps are safe, but there may be a way with fewer turns.)");
  EXPECT_TRUE(told_steps({.steps = {}, .least = false}).empty());
}

}  // namespace
}  // namespace shimwright
