// SPDX-License-Identifier: MPL-2.0
//
// Steps of fitting that go to a stop at which no gap is measured: where shims change places between
// valves that are clear of their lobes together there and nowhere else.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "core/service/bench_commands.hpp"
#include "core/service/steps_findings.hpp"
#include "model_engine.hpp"
#include "plan_questions.hpp"
#include "service_entries.hpp"
#include "steps_search.hpp"

namespace shimwright::tests {
namespace {

// Of an inline four. Both valves are out of limits, and each takes the other's shim.
ServiceEntries changing_places(const std::string& thin, const std::string& thick) {
  ServiceEntries book;
  book.limits(0.15, 0.25);
  book.gap(thin, 0.40).micrometer(thin, 2.5).gap(thick, 0.0).micrometer(thick, 2.7);
  return book;
}

TEST(FurtherStop, does_without_a_stand_in_what_the_stops_of_measuring_cannot) {
  const ServiceEntries book = changing_places("3 EX L", "3 IN L");
  const auto rows = rows_for_bench(book.service(), findings_in(book.service()));
  ASSERT_EQ(rows.size(), 5U);
  EXPECT_EQ(rows[0].step.kind, "turn");
  EXPECT_EQ(rows[0].step.stop, Entry(3.0));
  EXPECT_EQ(rows[0].note,
            "Every valve has its shim? By hand, turn the crank forwards to TDC on compression of "
            "cylinder 3. Only shims are changed at this stop: no gap is measured here.");
  EXPECT_EQ(rows[1].step.kind, "take out");
  EXPECT_EQ(rows[2].step.kind, "change");
  EXPECT_EQ(rows[3].step.kind, "fit");
  EXPECT_EQ(rows[4].step.kind, "finish");
}

TEST(FurtherStop, is_counted_on_from_the_stop_before) {
  ServiceEntries book = changing_places("3 EX L", "3 IN L");
  book.setting("margin", 35.0).sizes(1, "A", 2.7, 2.7, 0.05, 5);
  book.gap("4 IN L", 0.40).micrometer("4 IN L", 2.5);
  std::vector<std::string> turns;
  for (const auto& row : rows_for_bench(book.service(), findings_in(book.service())))
    if (row.step.kind == "turn") turns.push_back(row.note);
  EXPECT_EQ(turns, (std::vector<std::string>{
                       "Every valve has its shim? By hand, turn the crank forwards to TDC on "
                       "compression of cylinder 3. Only shims are changed at this stop: no gap is "
                       "measured here.",
                       "Every valve has its shim? By hand, turn the crank forwards to TDC on "
                       "compression of cylinder 4, 180\u00b0 on from stop 3."}));
}

TEST(FurtherStop, is_none_of_those_for_measuring) {
  ServiceEntries plain;
  const View before = plain.view();
  const View after = changing_places("3 EX L", "3 IN L").view();
  EXPECT_EQ(after["stops"].rows, before["stops"].rows);
  EXPECT_EQ(after["book"].at("stops"), before["book"].at("stops"));
  for (std::size_t row = 1; row <= 8; ++row) {
    EXPECT_EQ(after["measure"].at("stop", row), before["measure"].at("stop", row));
    EXPECT_EQ(after["measure"].at("come", row), before["measure"].at("come", row));
  }
  for (std::size_t valve = 1; valve <= 16; ++valve)
    EXPECT_EQ(after["valves"].at("gap label", valve), before["valves"].at("gap label", valve));
}

TEST(FurtherStop, saves_the_turns_that_a_stand_in_costs) {
  ServiceEntries book = changing_places("3 EX L", "3 IN L");
  book.spare(1, "A", 2.3);
  const Findings found = findings_in(book.service());
  EXPECT_EQ(found.steps->turns, 1U);
  EXPECT_EQ(found.steps->stand_ins, 0U);
}

TEST(FurtherStop, is_not_looked_for_with_the_camshafts_out) {
  ServiceEntries book = changing_places("3 EX L", "3 IN L");
  book.setting("camshafts out", "yes");
  const Findings found = findings_in(book.service());
  EXPECT_EQ(found.all_stops.size(), 2U);
  EXPECT_EQ(found.steps->turns, 0U);
}

// ---- Made-up engines ---------------------------------------------------------------------------

// All degrees are whole tens. Shims of sizes of their own, most of which change places: the limits
// leave no other way.
EntryTable made_up(std::int64_t most_cylinders, std::size_t most_moved, std::uint64_t seed) {
  questions::Dice dice(seed);
  const auto tens = [&](std::int64_t low, std::int64_t high) {
    return 10.0 * static_cast<double>(dice.between(low, high));
  };
  std::string firing = "1 at 0";
  struct Valve {
    std::string cylinder;
    const char* side;
    double shim;
  };
  std::vector<Valve> valves;
  const std::int64_t cylinders = dice.between(1, most_cylinders);
  const bool even = dice.one_in(2);
  for (std::int64_t c = 1; c <= cylinders; ++c) {
    const std::string name = std::to_string(c);
    if (c > 1)
      firing +=
          ", " + name + " at " +
          std::to_string(even ? (c - 1) * 720 / cylinders / 10 * 10 : 10 * dice.between(0, 71));
    for (const char* side : {"exhaust", "inlet"})
      for (const char* place : {"", "'"})
        if (place[0] == 0 || most_moved > 4)
          valves.push_back({name + place, side, 2.5 + 0.02 * static_cast<double>(valves.size())});
  }
  std::vector<std::size_t> moved;
  for (std::size_t i = 0; i < valves.size(); ++i) moved.push_back(i);
  for (std::size_t i = moved.size(); i > 1; --i)
    std::swap(moved[i - 1],
              moved[static_cast<std::size_t>(dice.between(0, static_cast<int>(i) - 1))]);
  if (moved.size() > most_moved) moved.resize(most_moved);
  std::vector<double> wanted;
  for (const Valve& valve : valves) wanted.push_back(valve.shim);
  const std::size_t parts = dice.one_in(2) ? 2 : moved.size();  // pairs, or one long ring
  for (std::size_t i = 0; i < moved.size(); ++i) {
    const std::size_t first = i / parts * parts;
    const std::size_t size = std::min(parts, moved.size() - first);
    wanted[moved[i]] = valves[moved[first + (i - first + 1) % size]].shim;
  }
  EntryTable rows{{"setting", "firing", firing}, {"setting", "margin", tens(1, 6)}};
  for (const char* side : {"exhaust", "inlet"})
    rows.push_back({"side", side, 0.495, 0.505, "", "A", tens(1, 5), tens(3, 7)});
  for (std::size_t i = 0; i < valves.size(); ++i) {
    const Valve& valve = valves[i];
    rows.push_back({"valve", valve.cylinder + " " + valve.side + std::to_string(i),
                    0.5 + wanted[i] - valve.shim, "", valve.shim, "", std::stod(valve.cylinder),
                    valve.side});
  }
  if (dice.one_in(3)) rows.push_back({"spare", "1", "A", 2.4 + 0.01 * tens(0, 3)});
  return rows;
}

auto worth(const FittingSteps& steps) {
  return std::tuple(steps.waiting, steps.turns, steps.stand_ins);
}

FittingQuestion question_at(const Service& service, const Findings& found,
                            std::span<const CrankStop> stops) {
  return fitting_of(found.question, *found.plan, valves_at_stops(service, stops));
}

// At a stop of measuring all that is done at a further one could be done as well.
bool is_stop_needless(const Service& service, const Findings& found) {
  for (std::size_t stop = found.stops.size(); stop < found.all_stops.size(); ++stop)
    for (const CrankStop& measuring : found.stops)
      if (std::ranges::all_of(found.steps->steps, [&](const Step& step) {
            if (!step.valve || step.stop != static_cast<int>(stop) + 1) return true;
            const auto& valve = service.valves[*step.valve];
            return measuring.clear_of({valve.cylinder, valve.side}).has_value();
          }))
        return true;
  return false;
}

TEST(FurtherStop, is_safe_and_never_the_worse_way_on_made_up_engines) {
  std::size_t better = 0;
  std::size_t done_now = 0;
  for (std::uint64_t seed = 1; seed <= 300 && !::testing::Test::HasFailure(); ++seed) {
    const Service service = service_of(made_up(8, 12, seed));
    const Findings found = findings_in(service);
    if (!found.steps) continue;
    const FittingSteps plain = fitting_steps(question_at(service, found, found.stops));
    EXPECT_LE(worth(*found.steps), worth(plain)) << "seed " << seed;
    EXPECT_EQ(model::play(question_at(service, found, found.all_stops), *found.steps), "")
        << "seed " << seed;
    EXPECT_FALSE(is_stop_needless(service, found)) << "seed " << seed;
    better += worth(*found.steps) < worth(plain);
    done_now += found.steps->waiting < plain.waiting;
  }
  EXPECT_GT(better, 75U);
  EXPECT_GT(done_now, 30U);
}

// With a stop at every five degrees, between which nothing changes. What can be done at any of them
// without borrowing is done, and in the fewest turns wherever further stops were looked at.
TEST(FurtherStop, leaves_nothing_undone_that_any_stops_could_do) {
  std::size_t done_there = 0;
  std::size_t waiting = 0;
  std::size_t stand_ins = 0;
  for (std::uint64_t seed = 1; seed <= 1'500 && !::testing::Test::HasFailure(); ++seed) {
    const Service service = service_of(made_up(4, 4, seed));
    const Findings found = findings_in(service);
    if (!found.steps) continue;
    const FittingSteps plain = fitting_steps(question_at(service, found, found.stops));
    if (plain.waiting == 0 && plain.stand_ins == 0) continue;
    std::vector<CrankStop> everywhere;
    std::set<std::set<ValvePlace>> seen;
    for (int angle = 0; angle < 720; angle += 5) {
      CrankStop stop =
          crank_stop_at(CrankAngle::of(angle), *found.firing, found.timing, found.margin);
      std::set<ValvePlace> places;
      for (const auto& valve : stop.reachable) places.insert(valve.place);
      if (seen.insert(places).second) everywhere.push_back(std::move(stop));
    }
    const auto least = search::every_way(question_at(service, found, everywhere),
                                         std::vector<bool>(service.valves.size()));
    EXPECT_EQ(least.has_value(), found.steps->waiting == 0) << "seed " << seed;
    if (least && found.steps->waiting == 0) {
      EXPECT_EQ(least->turns, found.steps->turns) << "seed " << seed;
      EXPECT_EQ(least->stand_ins, found.steps->stand_ins) << "seed " << seed;
    }
    stand_ins += found.steps->stand_ins > 0;
    done_there += plain.waiting > 0 && found.steps->waiting == 0;
    waiting += found.steps->waiting > 0;
  }
  EXPECT_GT(done_there, 100U);
  EXPECT_GT(waiting, 20U);
  EXPECT_GT(stand_ins, 20U);  // a stand-in stays where doing without one takes more turns
}

}  // namespace
}  // namespace shimwright::tests
