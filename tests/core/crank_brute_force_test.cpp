// SPDX-License-Identifier: MPL-2.0
//
// The crank stops held against every set of stops there is, on random engines. The model here
// knows only when a valve is off its seat, and measures the turn left on both sides of it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <random>
#include <set>
#include <span>
#include <sstream>
#include <string>
#include <vector>

#include "core/crank/crank.hpp"

namespace shimwright {
namespace {

// In parts of a crank angle throughout.
constexpr std::int64_t degree = CrankAngle::parts_in_degree;
constexpr std::int64_t cycle = 720 * degree;

struct Engine {
  Firing firing;
  ValveTiming timing;
  CrankAngle margin;

  int valves() const { return 2 * firing.cylinders(); }

  // How much farther than the margin the crank may be turned either way before the valve opens or
  // from where it closed; negative where the gauge has no place. Valve 2c is cylinder c+1's inlet.
  std::int64_t spare(int valve, std::int64_t crank) const {
    const std::int64_t local = crank - firing.angle_of(valve / 2 + 1).parts();
    const bool inlet = valve % 2 == 0;
    const std::int64_t opens = inlet ? 360 * degree - timing.inlet_opens_before_tdc.parts()
                                     : 180 * degree - timing.exhaust_opens_before_bdc.parts();
    const std::int64_t closes = inlet ? 540 * degree + timing.inlet_closes_after_bdc.parts()
                                      : 360 * degree + timing.exhaust_closes_after_tdc.parts();
    std::int64_t nearest = cycle;
    for (std::int64_t turns = -3 * cycle; turns <= 3 * cycle; turns += cycle)
      nearest = std::min(nearest, std::max(opens + turns - local, local - (closes + turns)));
    return nearest - margin.parts();
  }

  bool on_dead_centre(std::int64_t crank) const {
    for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
      if (firing.angle_of(cylinder).parts() == crank) return true;
    return false;
  }

  std::uint32_t reach(std::int64_t crank) const {
    std::uint32_t reached = 0;
    for (int valve = 0; valve < valves(); ++valve)
      if (spare(valve, crank) >= 0) reached |= 1U << valve;
    return reached;
  }

  std::uint32_t all() const { return static_cast<std::uint32_t>((1ULL << valves()) - 1); }
};

struct Score {
  int stops = 0;
  int off_dead_centre = 0;
  auto operator<=>(const Score&) const = default;
};

Score score_of(const Engine& engine, std::span<const CrankStop> stops) {
  Score score;
  for (const CrankStop& stop : stops) {
    ++score.stops;
    score.off_dead_centre += engine.on_dead_centre(stop.angle.parts()) ? 0 : 1;
  }
  return score;
}

// Of the valve that fares worst at its best stop.
std::int64_t least_spare(const Engine& engine, std::span<const std::int64_t> stops) {
  std::int64_t least = cycle;
  for (int valve = 0; valve < engine.valves(); ++valve) {
    std::int64_t best = -cycle;
    for (const std::int64_t stop : stops) best = std::max(best, engine.spare(valve, stop));
    least = std::min(least, best);
  }
  return least;
}

// What can be reached changes only where a valve's base circle begins or ends: these places, those
// midway between neighbours, and the dead centres stand for every place of the crank.
std::vector<std::int64_t> telling_places(const Engine& engine) {
  std::set<std::int64_t> ends{0};
  for (int cylinder = 1; cylinder <= engine.firing.cylinders(); ++cylinder) {
    ends.insert(engine.firing.angle_of(cylinder).parts());
    for (const CrankAngle end : {360_deg - engine.timing.inlet_opens_before_tdc - engine.margin,
                                 540_deg + engine.timing.inlet_closes_after_bdc + engine.margin,
                                 180_deg - engine.timing.exhaust_opens_before_bdc - engine.margin,
                                 360_deg + engine.timing.exhaust_closes_after_tdc + engine.margin})
      ends.insert((end + engine.firing.angle_of(cylinder)).in_cycle().parts());
  }
  std::vector<std::int64_t> places(ends.begin(), ends.end());
  const std::size_t count = places.size();
  for (std::size_t i = 0; i < count; ++i)
    places.push_back((places[i] + (i + 1 < count ? places[i + 1] : cycle)) / 2);
  return places;
}

// The best score of all sets of stops among `places`, by the set of valves reached so far.
std::optional<Score> best_score(const Engine& engine, std::span<const std::int64_t> places,
                                bool begin_at_zero) {
  std::map<std::uint32_t, int> kinds;  // what is reached, and whether off dead centre at best
  for (const std::int64_t place : places) {
    const auto reached = engine.reach(place);
    const int off = engine.on_dead_centre(place) ? 0 : 1;
    const auto [kind, fresh] = kinds.try_emplace(reached, off);
    if (!fresh) kind->second = std::min(kind->second, off);
  }
  std::vector<std::optional<Score>> best(engine.all() + 1ULL);
  if (begin_at_zero)
    best[engine.reach(0)] = Score{1, 0};
  else
    best[0] = Score{};
  for (std::uint32_t have = 0; have < engine.all(); ++have) {
    if (!best[have]) continue;
    for (const auto& [reached, off] : kinds) {
      const Score score{best[have]->stops + 1, best[have]->off_dead_centre + off};
      auto& now = best[have | reached];
      if ((have | reached) != have && (!now || score < *now)) now = score;
    }
  }
  return best[engine.all()];
}

// The search's own account of its stops: in order, each valve listed where it is open to the
// gauge and nowhere else, none missed.
void expect_sound(const Engine& engine, std::span<const CrankStop> stops) {
  std::uint32_t reached = 0;
  for (std::size_t i = 0; i < stops.size(); ++i) {
    const std::int64_t at = stops[i].angle.parts();
    EXPECT_TRUE(at >= 0 && at < cycle && (i == 0 || at > stops[i - 1].angle.parts()));
    std::uint32_t listed = 0;
    for (const auto& [place, clear] : stops[i].reachable) {
      const int valve = 2 * (place.cylinder - 1) + (place.side == Side::inlet ? 0 : 1);
      listed |= 1U << valve;
      EXPECT_EQ(clear.parts(), engine.spare(valve, at) + engine.margin.parts());
    }
    EXPECT_EQ(listed, engine.reach(at));
    EXPECT_TRUE(std::ranges::is_sorted(stops[i].reachable, {}, &ReachableValve::place));
    reached |= listed;
  }
  EXPECT_EQ(reached, engine.all());
}

std::string told(const Engine& engine) {
  std::ostringstream text;
  text << "fires at";
  for (int cylinder = 1; cylinder <= engine.firing.cylinders(); ++cylinder)
    text << ' ' << engine.firing.angle_of(cylinder).degrees();
  text << "; timing and margin";
  for (const CrankAngle angle :
       {engine.timing.inlet_opens_before_tdc, engine.timing.inlet_closes_after_bdc,
        engine.timing.exhaust_opens_before_bdc, engine.timing.exhaust_closes_after_tdc,
        engine.margin})
    text << ' ' << angle.degrees();
  return text.str();
}

class Engines {
 public:
  explicit Engines(std::uint32_t seed) : random_(seed) {}

  int from_to(int low, int high) {
    return low + static_cast<int>(random_() % static_cast<std::uint32_t>(high - low + 1));
  }
  CrankAngle angle(int low, int high) { return CrankAngle::of(from_to(low, high)); }

  // Whole degrees; every other engine with cams so long, or margins so wide, that little is left.
  Engine uneven(int most_cylinders) {
    std::vector<FiringRow> rows{{1, 0}};
    for (int cylinder = 2, count = from_to(1, most_cylinders); cylinder <= count; ++cylinder) {
      const int step = from_to(0, 1) == 0 ? 1 : 45;
      rows.push_back(
          {static_cast<double>(cylinder), static_cast<double>(from_to(0, 719) / step * step)});
    }
    return {Firing::at_angles(rows), any_timing(), margin_};
  }

  Engine even(int cylinders) {
    std::vector<int> numbers;
    for (int cylinder = 1; cylinder <= cylinders; ++cylinder) numbers.push_back(cylinder);
    for (std::size_t i = numbers.size(); i > 1; --i)
      std::swap(numbers[i - 1], numbers[random_() % static_cast<std::uint32_t>(i)]);
    std::string order;
    for (const int cylinder : numbers) order += std::to_string(cylinder) + " ";
    return {Firing::in_order(order), any_timing(), margin_};
  }

  void timing_between(int low, int high, int widest_margin) {
    low_ = low;
    high_ = high;
    widest_margin_ = widest_margin;
  }

 private:
  ValveTiming any_timing() {
    margin_ = angle(0, widest_margin_);
    return {angle(low_, high_), angle(low_, high_), angle(low_, high_), angle(low_, high_)};
  }

  std::mt19937 random_;
  CrankAngle margin_;
  int low_ = -10;
  int high_ = 90;
  int widest_margin_ = 30;
};

// The same stops count, dead centres and beginning as the best of all sets.
void expect_best(const Engine& engine) {
  SCOPED_TRACE(told(engine));
  const auto stops = crank_stops(engine.firing, engine.timing, engine.margin);
  expect_sound(engine, stops);
  const auto places = telling_places(engine);
  const Score score = score_of(engine, stops);
  EXPECT_EQ(score, best_score(engine, places, false));
  const bool may_begin_at_zero = best_score(engine, places, true) == score;
  EXPECT_EQ(stops.front().angle == CrankAngle(), may_begin_at_zero);
}

TEST(CrankBruteForce, uneven_engines_with_ordinary_cams) {
  Engines engines(20240601);
  for (int i = 0; i < 3000; ++i) {
    expect_best(engines.uneven(5));
    if (HasFailure()) return;
  }
}

TEST(CrankBruteForce, uneven_engines_with_little_base_circle) {
  Engines engines(20240602);
  engines.timing_between(60, 120, 145);
  std::map<std::size_t, int> by_count;
  for (int i = 0; i < 3000; ++i) {
    const Engine engine = engines.uneven(5);
    expect_best(engine);
    ++by_count[crank_stops(engine.firing, engine.timing, engine.margin).size()];
    if (HasFailure()) return;
  }
  for (std::size_t count = 1; count <= 6; ++count) EXPECT_GT(by_count[count], 0) << count;
}

TEST(CrankBruteForce, even_engines_up_to_eight_cylinders) {
  Engines engines(20240603);
  engines.timing_between(0, 120, 120);
  for (int i = 0; i < 40; ++i)
    for (int cylinders = 1; cylinders <= 8; ++cylinders) {
      expect_best(engines.even(cylinders));
      if (HasFailure()) return;
    }
}

// Against every single stop and every pair of stops at whole degrees, all aims together.
void expect_best_pair(const Engine& engine) {
  SCOPED_TRACE(told(engine));
  const auto stops = crank_stops(engine.firing, engine.timing, engine.margin);
  expect_sound(engine, stops);
  ASSERT_LE(stops.size(), 2U);
  std::vector<std::uint32_t> reach;
  std::vector<int> off;
  for (std::int64_t place = 0; place < 720; ++place) {
    reach.push_back(engine.reach(place * degree));
    off.push_back(engine.on_dead_centre(place * degree) ? 0 : 1);
  }
  struct Best {
    Score score{9, 9};
    bool off_zero = true;
    std::int64_t spare = 0;
  } best;
  for (std::size_t a = 0; a < 720; ++a)
    for (std::size_t b = a; b < 720; ++b) {
      if ((reach[a] | reach[b]) != engine.all()) continue;
      const Score score{a == b ? 1 : 2, off[a] + (a == b ? 0 : off[b])};
      if (score > best.score) continue;
      const bool off_zero = a != 0;
      if (score == best.score && off_zero > best.off_zero) continue;
      const std::int64_t pair[] = {static_cast<std::int64_t>(a) * degree,
                                   static_cast<std::int64_t>(b) * degree};
      const std::int64_t spare = least_spare(engine, pair);
      if (score < best.score || off_zero < best.off_zero || spare > best.spare)
        best = {score, off_zero, spare};
    }
  std::vector<std::int64_t> ours;
  for (const CrankStop& stop : stops) ours.push_back(stop.angle.parts());
  EXPECT_EQ(score_of(engine, stops), best.score);
  EXPECT_EQ(ours.front() != 0, best.off_zero);
  EXPECT_GE(least_spare(engine, ours), best.spare);
  EXPECT_LE(least_spare(engine, ours), best.spare + degree);  // whole degrees may miss the middle
}

TEST(CrankBruteForce, stops_keep_farthest_inside_the_base_circles) {
  Engines engines(20240604);
  engines.timing_between(0, 60, 20);  // base circles of a full turn or more: two stops do
  for (int i = 0; i < 300; ++i) {
    expect_best_pair(engines.uneven(8));
    if (HasFailure()) return;
  }
}

TEST(CrankBruteForce, sixteen_cylinders) {
  Engines engines(20240605);
  engines.timing_between(0, 60, 20);
  for (int i = 0; i < 30; ++i) {
    expect_best_pair(engines.even(16));
    expect_best_pair(engines.uneven(16));
    if (HasFailure()) return;
  }
}

// What they were when this was written: whoever changes them means to. Long cams, so that several
// stops are needed and many sets of them would do.
TEST(CrankBruteForce, a_known_engine_gets_the_known_stops) {
  const std::vector<FiringRow> fires{{1, 0},   {2, 90},  {3, 170}, {4, 250},
                                     {5, 360}, {6, 430}, {7, 540}, {8, 650}};
  const Engine engine{Firing::at_angles(fires), {40_deg, 80_deg, 80_deg, 40_deg}, 60_deg};
  const auto stops = crank_stops(engine.firing, engine.timing, engine.margin);
  expect_sound(engine, stops);
  std::vector<double> angles;
  for (const CrankStop& stop : stops) angles.push_back(stop.angle.degrees());
  EXPECT_EQ(angles, (std::vector<double>{0, 170, 430}));
}

}  // namespace
}  // namespace shimwright
