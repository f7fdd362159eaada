// SPDX-License-Identifier: MPL-2.0
#include "core/crank/crank.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <optional>
#include <utility>

#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::string degrees_in_words(double degrees) { return text_of(degrees) + "\u00b0"; }

void check_timing(const std::string& said, CrankAngle angle, std::string_view where) {
  if (angle > 180_deg || angle < CrankAngle() - 180_deg)
    throw BadInput(said + " " + degrees_in_words(angle.degrees()) + " " + std::string(where) +
                   " dead centre: that must lie within 180\u00b0 of it");
}

// ---- The search -------------------------------------------------------------------------------
// Each valve is an arc of the cycle; stops must pierce them all. Stops p < q may follow each other
// if no arc lies wholly between them, and a round of such steps that comes back to its start a
// cycle later pierces every arc. A stop off every dead centre may be moved on to where the first
// of its arcs ends without losing any, so these ends and the dead centres are all the places that
// need be tried; for each as first stop, the best way round is a shortest path.

struct Score {
  int stops = 0;
  int off_dead_centre = 0;
  auto operator<=>(const Score&) const = default;
};

struct Round {
  Score score;
  std::vector<CrankAngle> stops;
};

class Search {
 public:
  // `dead_centres` in a cycle, 0 among them.
  Search(std::vector<BaseCircle> arcs, const std::vector<CrankAngle>& dead_centres)
      : arcs_(std::move(arcs)), places_(dead_centres) {
    for (const BaseCircle& arc : arcs_) places_.push_back((arc.from + arc.length).in_cycle());
    std::ranges::sort(places_);
    const auto repeats = std::unique(places_.begin(), places_.end());
    places_.erase(repeats, places_.end());
    for (const CrankAngle place : places_) {
      farthest_.push_back(farthest_after(place));
      off_dead_centre_.push_back(std::ranges::find(dead_centres, place) == dead_centres.end());
    }
  }

  // The best of all rounds; among equals the one with the earliest stops.
  Round best() const {
    std::optional<Round> best;
    for (std::size_t first = 0; first < places_.size(); ++first)
      if (auto round = best_from(first); round && (!best || round->score < best->score))
        best = std::move(round);
    return best.value();  // all places together are a round
  }

  // The best round whose first stop is cylinder 1's dead centre, at 0.
  std::optional<Round> best_from_zero() const { return best_from(0); }

 private:
  // From a stop at `place`, the next must come no later: there the first arc ends of those that
  // begin after `place`.
  CrankAngle farthest_after(CrankAngle place) const {
    const auto end_of = [&](const BaseCircle& arc) {
      const CrankAngle wait = (arc.from - place).in_cycle();
      return (wait == CrankAngle() ? whole_cycle : wait) + arc.length;
    };
    return place + end_of(std::ranges::min(arcs_, {}, end_of));
  }

  // The best round of which places_[first] is the lowest stop: none where a valve is missed.
  std::optional<Round> best_from(std::size_t first) const {
    const CrankAngle back = places_[first] + whole_cycle;
    std::vector<std::optional<Score>> rest(places_.size());  // from here on round to the first
    std::vector<std::size_t> next(places_.size(), places_.size());
    for (std::size_t at = places_.size(); at-- > first;) {
      if (back <= farthest_[at]) rest[at] = Score{};
      for (std::size_t to = at + 1; to < places_.size() && places_[to] <= farthest_[at]; ++to)
        if (rest[to] && (!rest[at] || *rest[to] < *rest[at])) {
          rest[at] = rest[to];
          next[at] = to;
        }
      if (!rest[at]) continue;
      ++rest[at]->stops;
      rest[at]->off_dead_centre += off_dead_centre_[at] ? 1 : 0;
    }
    if (!rest[first]) return std::nullopt;
    Round round{*rest[first], {}};
    for (std::size_t at = first; at < places_.size(); at = next[at])
      round.stops.push_back(places_[at]);
    return round;
  }

  std::vector<BaseCircle> arcs_;
  std::vector<CrankAngle> places_;     // in order, each once; 0 is the first
  std::vector<CrankAngle> farthest_;   // for each place
  std::vector<bool> off_dead_centre_;  // for each place
};

struct Reach {
  ValvePlace place;
  BaseCircle open_to_gauge;
};

std::vector<Reach> valves_of(const Firing& firing, const ValveTiming& timing, CrankAngle margin) {
  std::vector<Reach> valves;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
    for (const Side side : {Side::inlet, Side::exhaust}) {
      BaseCircle open = base_circle(side, timing, margin);
      open.from = (open.from + firing.angle_of(cylinder)).in_cycle();
      valves.push_back({{cylinder, side}, open});
    }
  return valves;
}

// The round that keeps every valve farthest inside its base circle among those of the best score.
std::vector<CrankAngle> best_stops(const std::vector<Reach>& valves,
                                   const std::vector<CrankAngle>& dead_centres) {
  const auto search_with = [&](CrankAngle spare) {
    std::vector<BaseCircle> arcs;
    for (const Reach& valve : valves)
      arcs.push_back({(valve.open_to_gauge.from + spare).in_cycle(),
                      valve.open_to_gauge.length - spare - spare});
    return Search(std::move(arcs), dead_centres);
  };
  const Search plain = search_with(CrankAngle());
  const Score target = plain.best().score;
  const auto from_zero = plain.best_from_zero();
  const bool begin_at_zero = from_zero && from_zero->score == target;
  const auto round_with = [&](CrankAngle spare) {
    const Search search = search_with(spare);
    std::optional<Round> round = begin_at_zero ? search.best_from_zero() : search.best();
    if (round && round->score != target) round.reset();
    return round;
  };

  Round best = round_with(CrankAngle()).value();
  std::int64_t kept = 0;  // a spare that can be had, in parts
  const auto length_of = [](const Reach& valve) { return valve.open_to_gauge.length; };
  const CrankAngle shortest = length_of(std::ranges::min(valves, {}, length_of));
  std::int64_t lost = shortest.parts() / 2 + 1;  // one that cannot
  while (lost - kept > 1) {
    const std::int64_t middle = kept + (lost - kept) / 2;
    if (auto round = round_with(CrankAngle::parts(middle))) {
      best = std::move(*round);
      kept = middle;
    } else {
      lost = middle;
    }
  }
  return best.stops;
}

}  // namespace

BaseCircle base_circle(Side side, const ValveTiming& timing, CrankAngle margin) {
  const bool inlet = side == Side::inlet;
  const CrankAngle before = inlet ? timing.inlet_opens_before_tdc : timing.exhaust_opens_before_bdc;
  const CrankAngle after = inlet ? timing.inlet_closes_after_bdc : timing.exhaust_closes_after_tdc;
  const std::string valve = "the " + std::string(word_for(side)) + " valve";
  check_timing(valve + " is said to open", before, inlet ? "before top" : "before bottom");
  check_timing(valve + " is said to close", after, inlet ? "after bottom" : "after top");
  if (margin < CrankAngle() || margin > 180_deg)
    throw BadInput("a margin of " + degrees_in_words(margin.degrees()) +
                   ": it lies between 0\u00b0 and 180\u00b0");
  const CrankAngle open = before + 180_deg + after;
  if (open <= CrankAngle())
    throw BadInput(valve + " would never open: by its timing it is open for " +
                   degrees_in_words(open.degrees()));
  const CrankAngle length = whole_cycle - open - margin - margin;
  if (length < CrankAngle())
    throw BadInput(valve + " leaves no base circle to measure on: it is open for " +
                   degrees_in_words(open.degrees()) + " of 720\u00b0, and the margin takes " +
                   degrees_in_words(margin.degrees()) + " at each end");
  const CrankAngle closes = (inlet ? 540_deg : 360_deg) + after;
  return {(closes + margin).in_cycle(), length};
}

CrankStop crank_stop_at(CrankAngle angle, const Firing& firing, const ValveTiming& timing,
                        CrankAngle margin) {
  CrankStop stop{angle, {}};
  for (const Reach& valve : valves_of(firing, timing, margin))
    if (valve.open_to_gauge.holds(angle))
      stop.reachable.push_back({valve.place, margin + valve.open_to_gauge.inside(angle)});
  return stop;
}

std::vector<CrankStop> crank_stops(const Firing& firing, const ValveTiming& timing,
                                   CrankAngle margin) {
  const std::vector<Reach> valves = valves_of(firing, timing, margin);
  std::vector<CrankAngle> dead_centres;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
    dead_centres.push_back(firing.angle_of(cylinder));
  std::vector<CrankStop> stops;
  for (const CrankAngle angle : best_stops(valves, dead_centres))
    stops.push_back(crank_stop_at(angle, firing, timing, margin));
  return stops;
}

std::optional<CrankAngle> CrankStop::clear_of(const ValvePlace& place) const {
  const auto found = std::ranges::find(reachable, place, &ReachableValve::place);
  return found == reachable.end() ? std::nullopt : std::optional(found->clear);
}

std::vector<std::size_t> stops_by_clear(std::span<const CrankStop> stops, const ValvePlace& place) {
  std::vector<std::size_t> indices;
  for (std::size_t i = 0; i < stops.size(); ++i)
    if (stops[i].clear_of(place)) indices.push_back(i);
  std::ranges::stable_sort(indices, std::ranges::greater(),
                           [&](std::size_t i) { return stops[i].clear_of(place).value(); });
  return indices;
}

std::optional<std::size_t> clearest_stop(std::span<const CrankStop> stops,
                                         const ValvePlace& place) {
  const auto indices = stops_by_clear(stops, place);
  return indices.empty() ? std::nullopt : std::optional(indices.front());
}

}  // namespace shimwright
