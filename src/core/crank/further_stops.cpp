// SPDX-License-Identifier: MPL-2.0
#include "core/crank/further_stops.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <tuple>

namespace shimwright {
namespace {

using ValveSet = std::uint64_t;  // bit by bit, in the order of the places

bool is_within(ValveSet some, ValveSet all) { return (some & ~all) == 0; }

// A stretch of the cycle in which all of certain valves are clear, and the best place in it.
struct Stretch {
  ValveSet valves = 0;
  CrankAngle angle;
  CrankAngle inside;  // how far from the nearer end
  bool on_dead_centre = false;
};

class Stretches {
 public:
  Stretches(const Firing& firing, const ValveTiming& timing, CrankAngle margin,
            const std::set<ValvePlace>& valves)
      : firing_(firing) {
    for (const auto& [cylinder, side] : valves) {
      BaseCircle arc = base_circle(side, timing, margin);
      arc.from = (arc.from + firing.angle_of(cylinder)).in_cycle();
      arcs_.push_back(arc);
    }
  }

  ValveSet clear_at(CrankAngle angle) const {
    ValveSet clear = 0;
    for (std::size_t i = 0; i < arcs_.size(); ++i)
      if (arcs_[i].holds(angle)) clear |= ValveSet{1} << i;
    return clear;
  }

  // Turned back from anywhere, the crank comes to where a valve was first clear before it loses
  // any: so the sets at those places hold every other.
  std::vector<Stretch> largest() const {
    std::vector<Stretch> found;
    for (const BaseCircle& arc : arcs_) {
      const ValveSet clear = clear_at(arc.from);
      BaseCircle all{arc.from, whole_cycle};
      for (const BaseCircle& other : arcs_)
        if (other.holds(arc.from))
          all.length = std::min(all.length, other.length - (arc.from - other.from).in_cycle());
      found.push_back(best_place(all, clear));
    }
    // Whoever comes first stays.
    std::ranges::sort(found, [](const Stretch& a, const Stretch& b) {
      return std::tuple(!a.on_dead_centre, b.inside, a.angle) <
             std::tuple(!b.on_dead_centre, a.inside, b.angle);
    });
    std::vector<Stretch> kept;
    for (const Stretch& one : found)
      if (std::ranges::none_of(kept, [&](const Stretch& k) { return k.valves == one.valves; }) &&
          std::ranges::none_of(found, [&](const Stretch& other) {
            return other.valves != one.valves && is_within(one.valves, other.valves);
          }))
        kept.push_back(one);
    return kept;
  }

 private:
  Stretch best_place(const BaseCircle& all, ValveSet valves) const {
    const CrankAngle middle = all.from + CrankAngle::parts(all.length.parts() / 2);
    const CrankAngle whole =
        CrankAngle::parts(middle.parts() - middle.parts() % CrankAngle::parts_in_degree).in_cycle();
    Stretch best{valves, all.holds(whole) ? whole : middle.in_cycle(), {}, false};
    best.inside = all.inside(best.angle);
    for (int cylinder = 1; cylinder <= firing_.cylinders(); ++cylinder) {
      const CrankAngle centre = firing_.angle_of(cylinder);
      if (!all.holds(centre) || (best.on_dead_centre && all.inside(centre) <= best.inside))
        continue;
      best = {valves, centre, all.inside(centre), true};
    }
    return best;
  }

  const Firing& firing_;
  std::vector<BaseCircle> arcs_;
};

}  // namespace

std::vector<CrankStop> further_stops(const Firing& firing, const ValveTiming& timing,
                                     CrankAngle margin, std::span<const CrankStop> stops,
                                     const std::set<ValvePlace>& valves) {
  const Stretches stretches(firing, timing, margin, valves);
  std::vector<CrankStop> further;
  for (const Stretch& stretch : stretches.largest())
    if (std::ranges::none_of(stops, [&](const CrankStop& stop) {
          return is_within(stretch.valves, stretches.clear_at(stop.angle));
        }))
      further.push_back(crank_stop_at(stretch.angle, firing, timing, margin));
  std::ranges::sort(further, {}, &CrankStop::angle);
  return further;
}

}  // namespace shimwright
