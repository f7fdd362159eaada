// SPDX-License-Identifier: MPL-2.0
#include "core/drift/engine_drift.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace shimwright {
namespace {

constexpr Limits shared_limits{0.10_mm, 0.20_mm};

// Clearance + shim in mm at every 12 000, over a shim of 2.70.
ValveToJudge valve_of(const std::vector<double>& followed, Side side = Side::exhaust) {
  ValveToJudge valve{.side = side, .fitted = 2.70_mm, .limits = shared_limits};
  for (std::size_t i = 0; i < followed.size(); ++i)
    valve.points.push_back(
        {12e3 * static_cast<double>(i), static_cast<double>(Length::of(followed[i]).nanometres())});
  return valve;
}

TEST(Followed, takes_the_mean_of_the_readings_at_one_distance_as_one_check) {
  Followed valve;
  valve.add(12'000, 0.15_mm, 2.70_mm);
  valve.add(0, 0.18_mm, 2.70_mm);
  valve.add(12'000, 0.20_mm, 2.66_mm);  // after a change of shim
  EXPECT_EQ(valve.checks(), 2U);
  const auto points = valve.points();
  ASSERT_EQ(points.size(), 2U);
  EXPECT_EQ(points[0].x, 0);
  EXPECT_EQ(points[0].y, 2.88e6);
  EXPECT_EQ(points[1].y, 2.855e6);
}

TEST(EngineDrift, draws_the_line_of_clearance_drift_through_a_valve) {
  const std::vector<ValveToJudge> valves{valve_of({2.90, 2.89, 2.88, 2.85})};
  const auto drift = judge_together(valves, {});
  ASSERT_TRUE(drift.valves[0].line && drift.valves[0].due);
  EXPECT_NEAR(drift.valves[0].line->slope, -4.0 / 3, 1e-9);  // nm a km
  // One valve, whose scatter is beyond that of a reading: as CLEARANCE.DUE has it.
  History history;
  for (const Point& point : valves[0].points) history.add(point.x, point.y / 1e6 - 2.7, 2.7);
  const auto alone = due_after(history, 2.70_mm, shared_limits);
  EXPECT_EQ(drift.valves[0].due->distance, alone->distance);
  EXPECT_EQ(drift.valves[0].due->cautious, alone->cautious);
}

TEST(EngineDrift, counts_no_scatter_below_that_of_a_reading) {
  const std::vector<ValveToJudge> on_a_line{valve_of({2.89, 2.88, 2.87, 2.86})};
  const auto blades = judge_together(on_a_line, {}).valves[0];
  EXPECT_NEAR(blades.line->residual_sd, 2887, 1e-9);
  ASSERT_TRUE(blades.due->cautious);
  EXPECT_LT(*blades.due->cautious, *blades.due->distance - 5'000);
  const auto doubtful = judge_together(on_a_line, 0.02_mm).valves[0];
  EXPECT_NEAR(doubtful.line->residual_sd, 10'000, 1e-9);
}

TEST(EngineDrift, pools_the_scatter_of_its_valves_so_that_three_checks_can_tell) {
  std::vector<ValveToJudge> valves;
  for (int i = 0; i < 8; ++i)
    valves.push_back(
        valve_of(i % 2 == 0 ? std::vector{2.90, 2.865, 2.85} : std::vector{2.90, 2.885, 2.85}));
  const auto alone = judge_together(std::span(valves).first(1), {});
  EXPECT_EQ(alone.valves[0].due->course, Course::steady);
  const auto together = judge_together(valves, {});
  EXPECT_EQ(together.degrees, 8);
  EXPECT_EQ(together.valves[0].due->course, Course::tight);
}

TEST(EngineDrift, leaves_a_valve_its_own_scatter_where_that_is_larger) {
  std::vector<ValveToJudge> valves(6, valve_of({2.90, 2.89, 2.88, 2.87}));
  valves.push_back(valve_of({2.90, 2.84, 2.93, 2.85}));
  const auto drift = judge_together(valves, {});
  EXPECT_GT(drift.valves[6].line->residual_sd, 2 * drift.valves[0].line->residual_sd);
}

TEST(EngineDrift, of_few_checks_tells_how_far_the_valve_moved_and_no_more) {
  const std::vector<ValveToJudge> valves{valve_of({}), valve_of({2.90}), valve_of({2.90, 2.88})};
  const auto drift = judge_together(valves, {});
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(drift.valves[i].checks, i);
    EXPECT_FALSE(drift.valves[i].line);
    EXPECT_FALSE(drift.valves[i].due);
  }
  EXPECT_EQ(drift.valves[2].moved, -20'000);
}

TEST(EngineDrift, knows_a_valve_that_never_moved) {
  const std::vector<ValveToJudge> valves{valve_of({2.90, 2.90, 2.90}), valve_of({2.90, 2.90}),
                                         valve_of({2.90, 2.89, 2.90})};
  const auto drift = judge_together(valves, {});
  EXPECT_TRUE(drift.valves[0].stood_still);
  EXPECT_EQ(drift.valves[0].due->course, Course::steady);
  EXPECT_FALSE(drift.valves[1].stood_still);
  EXPECT_FALSE(drift.valves[2].stood_still);
}

// Valves that wear along a line from 0.17 to 0.10 at a distance known to the simulation, read to
// the blade below, whose error is the engine's scatter; the share of cautious distances that come
// before it.
double share_in_time(int valves_of_engine, int checks, double step_mm, double sd_mm, Length doubt,
                     unsigned seed) {
  std::mt19937 random(seed);
  std::normal_distribution<double> noise(0, sd_mm);
  std::uniform_real_distribution<double> life(60e3, 200e3);
  int in_time = 0;
  int all = 0;
  for (int engine = 0; engine < 6000 / valves_of_engine; ++engine) {
    std::vector<ValveToJudge> valves;
    std::vector<double> crossing;
    for (int i = 0; i < valves_of_engine; ++i) {
      const double at_limit = life(random);
      std::vector<double> followed;
      for (int check = 0; check < checks; ++check) {
        const double truth = 0.17 - 0.07 * 12e3 * check / at_limit;
        const double read = truth + noise(random);
        followed.push_back(2.70 + std::round(read / step_mm) * step_mm);
      }
      valves.push_back(valve_of(followed));
      crossing.push_back(at_limit);
    }
    const auto drift = judge_together(valves, doubt);
    for (std::size_t i = 0; i < valves.size(); ++i) {
      const auto& due = drift.valves[i].due;
      // Nothing is claimed of a valve past its limit at the last check.
      if (crossing[i] <= valves[i].points.back().x) continue;
      ++all;
      in_time += due->cautious && *due->cautious <= crossing[i];
    }
  }
  return static_cast<double>(in_time) / all;
}

TEST(EngineDrift, is_cautious_in_time_in_19_of_20_valves_however_few_the_checks) {
  unsigned seed = 10;
  for (const int valves : {1, 2, 16})
    for (const int checks : {3, 4, 6})
      for (const double step : {0.001, 0.01})
        for (const double sd : {0.001, 0.005}) {
          const double share = share_in_time(valves, checks, step, sd, {}, ++seed);
          std::printf("%2d valves, %d checks, steps of %.3f mm, sd %.3f mm: %.3f in time\n", valves,
                      checks, step, sd, share);
          EXPECT_GE(share, 0.945) << valves << ", " << checks << ", " << step << ", " << sd;
        }
}

}  // namespace
}  // namespace shimwright
