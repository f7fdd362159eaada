// SPDX-License-Identifier: MPL-2.0
//
// Where to stop the crank. A clearance shows only while the cam's base circle stands over the
// valve, so the engine is turned by hand from stop to stop until each valve has been in reach of
// the gauge. A four-stroke cylinder, in degrees of crank after its firing dead centre, with the
// valve timing as manuals give it:
//
//   0     firing dead centre, both valves shut
//   180   bottom dead centre; the exhaust valve opens EO before it
//   360   top dead centre; the inlet valve opens IO before it, the exhaust valve closes EC after
//   540   bottom dead centre; the inlet valve closes IC after it
//   720   the firing dead centre again
//
// The gauge fits from where a valve closes to where it opens next, with a margin at both ends for
// the cam's ramps and for a crank set by eye.
#pragma once

#include <compare>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/firing.hpp"
#include "core/engine/side.hpp"

namespace shimwright {

// The same valve (or valves: they open together) of one cylinder.
struct ValvePlace {
  int cylinder = 1;
  Side side = Side::inlet;
  auto operator<=>(const ValvePlace&) const = default;
};

// Each may be negative: an exhaust valve may close before dead centre.
struct ValveTiming {
  CrankAngle inlet_opens_before_tdc = 20_deg;
  CrankAngle inlet_closes_after_bdc = 60_deg;
  CrankAngle exhaust_opens_before_bdc = 60_deg;
  CrankAngle exhaust_closes_after_tdc = 20_deg;
};

// For the cam's ramps and a crank set by eye (common practice, no source). The usual firing orders
// need no stop more for it: the tests try seventeen.
inline constexpr CrankAngle usual_margin = 30_deg;

// The stretch of the cycle in which a valve is open to the gauge: from `from`, in a cycle, for
// `length` onwards, both ends included.
struct BaseCircle {
  CrankAngle from;
  CrankAngle length;
  bool holds(CrankAngle angle) const { return (angle - from).in_cycle() <= length; }
  // How far `angle`, which it holds, is inside the nearer end.
  CrankAngle inside(CrankAngle angle) const {
    const CrankAngle past = (angle - from).in_cycle();
    return past < length - past ? past : length - past;
  }
};

// Of a cylinder that fires at 0. Throws BadInput, naming the side, where a timing is beyond 180°
// either way, where the valve would never open, and where timing and margin leave no base circle;
// and where the margin is negative or beyond 180°.
BaseCircle base_circle(Side side, const ValveTiming& timing = {}, CrankAngle margin = usual_margin);

struct ReachableValve {
  ValvePlace place;
  CrankAngle clear;  // how far the nearer end of its lobe is: at least the margin
  bool operator==(const ReachableValve&) const = default;
};

struct CrankStop {
  CrankAngle angle;                       // after cylinder 1's firing dead centre, below 720°
  std::vector<ReachableValve> reachable;  // every valve open to the gauge here, in order

  // None where the valve cannot be measured here.
  std::optional<CrankAngle> clear_of(const ValvePlace& place) const;
};

// The stop at that angle, below 720°. Throws BadInput as base_circle does.
CrankStop crank_stop_at(CrankAngle angle, const Firing& firing, const ValveTiming& timing = {},
                        CrankAngle margin = usual_margin);

// The stops at which every valve is reached at least once, as the engine turns: as few as there
// can be; among equals, as many as can be with a cylinder on its firing dead centre, which a hand
// finds without a degree wheel; then the first on cylinder 1's, where that costs none of these;
// then those that keep each valve, at its best stop, farthest inside its base circle. An exact
// search; the same engine always gets the same stops. Throws BadInput as base_circle does.
std::vector<CrankStop> crank_stops(const Firing& firing, const ValveTiming& timing = {},
                                   CrankAngle margin = usual_margin);

// The stops at which the valve can be measured, as indices: where it is clear of its lobe by most
// comes first; of equals the earlier.
std::vector<std::size_t> stops_by_clear(std::span<const CrankStop> stops, const ValvePlace& place);

// Where to measure the valve: the first of these. None where it is open to the gauge at no stop.
std::optional<std::size_t> clearest_stop(std::span<const CrankStop> stops, const ValvePlace& place);

}  // namespace shimwright
