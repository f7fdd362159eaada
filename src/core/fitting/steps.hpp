// SPDX-License-Identifier: MPL-2.0
//
// The order to fit the plan at the bench. A valve can be worked on only where its lobe is off it,
// so the crank is turned from stop to stop; and the crank must never be turned while a valve is
// without a shim. A shim that moves from a valve at one stop to a valve at another therefore
// settles the order of the stops, and where shims change places in a ring across stops, a
// stand-in keeps one valve filled meanwhile (rules of the craft: common practice, no source).
//
// What never happens in the steps told here:
//   - the crank is turned while a valve is without a shim;
//   - a shim is fitted before it came out, or is in two places;
//   - a stand-in is thicker than the shim that came out of its valve, or of another series: it
//     cannot hold the valve open;
//   - a valve that has its own new shim, or that keeps its old one, is opened (again).
//
// What is made least, in this order:
//   1. the valves that have to wait for want of a stand-in (only rings across stops can);
//   2. turns of the crank. One turn is counted for each arrival at a stop where work is done, the
//      first one included; the crank goes forwards only, and a stop passed without work there
//      does not count, so that the stops may be come to in any order and any number of times;
//   3. stand-ins: each fitting of a shim that is not the valve's new one.
// Among equals a short way of the crank is preferred, stand-ins near in thickness, and for each
// valve the stop said first. Shims of one size are not exchanged for one another: what goes where
// is as the plan says. More spares never make it worse where the search comes to its end.
//
// How it is found (a file each in this folder):
//   work       the valves to open, in chains and rings; spares alike are one row with a count
//   greedy     which rings get no stand-in; and a safe schedule, quickly, for any number of valves
//   visits     for 1, 2, 3... turns: the orders of the stops that would do, were stand-ins never
//              short
//   stand_ins  for one order: by dynamic programming along each chain how many stand-ins it needs
//              at least, then by branch and bound which shims they are
//   least      these two together: the first number of turns with a schedule, and of its orders
//              the one with the fewest stand-ins
//   carried    rings without a stand-in, carried by a valve open at several stops
//   rows       the schedule told step by step
// The search is exact and ends: all it does is counted, and it stops at a fixed count. At an
// engine's own stops it hardly ever has to be cut short; where shims go anywhere between six stops,
// now and then, with many valves often. That is what `least` tells: what is then given is the
// better of the greedy schedule and of what was found; it is as safe, but may have a turn too many.
// `least` does not speak of 1: whether valves open at several stops can carry the shims of a ring
// along is looked at for each ring by itself, up to twice the number of stops and two more visits.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/plan/plan.hpp"
#include "core/service/words/told.hpp"
#include "core/values/length.hpp"

namespace shimwright {

struct FittingValve {
  enum class Supply { keep, valve, spare, bought };

  std::string name;
  std::string series;
  std::optional<Length> shim;  // in it now
  Supply supply = Supply::keep;
  std::size_t giver = 0;   // the index of the valve whose shim goes in, where supply is `valve`
  Length fit;              // what goes in; not looked at where the valve keeps its shim
  std::vector<int> stops;  // the stops at which it is open to work, the best liked first
};

struct FittingQuestion {
  struct Spare {
    std::string series;
    Length size;
    std::int64_t count = 1;
  };

  std::vector<FittingValve> valves;
  std::vector<Spare> spares;   // at hand and not used by the plan: stand-ins
  bool camshafts_out = false;  // every valve is open at once; no stops, no turns between
};

// A valve that is open to work at a stop. Stops are numbered in the order in which the crank,
// turned forwards, comes to them.
struct OpenAt {
  std::size_t valve = 0;  // index
  int stop = 0;
};

// The question that a plan asks. No `open` at all: the camshafts are out. Purchases are taken to
// have arrived.
FittingQuestion fitting_of(const PlanQuestion& question, const Plan& plan,
                           std::span<const OpenAt> open);

// Which shim, as a thing of its own.
struct ShimAtBench {
  enum class Origin { out_of_valve, meant_for_valve, spare };  // the second: its spare or purchase
  Origin origin = Origin::spare;
  std::size_t index = 0;  // of the valve; of the row in FittingQuestion::spares

  friend bool operator==(const ShimAtBench&, const ShimAtBench&) = default;
};

struct Step {
  enum class Kind {
    wait,      // no stand-in: this valve and the rest of its ring stay as they are
    turn,      // the crank, to `stop`
    take_out,  // and leave the valve empty for some steps at this same stop
    change,    // out and in
    fit,       // into the valve left empty
    finish     // two full turns, measure again
  };
  Kind kind = Kind::turn;
  std::optional<int> stop;  // where the crank stands in this step
  std::optional<std::size_t> valve;
  std::optional<Length> out;
  std::optional<Length> in;
  std::optional<ShimAtBench> shim;  // what goes in
  bool stand_in = false;
  std::string from;  // `spare`, `bought`, `stand-in` or the giving valve's name
  // A sentence or two for the hand at the bench, without the sizes of the columns beside it.
  std::vector<Told> notes;
};

// `wait`, `turn`, `take out`, `change`, `fit`, `finish`.
std::string_view word_for(Step::Kind kind);

struct FittingSteps {
  std::vector<Step> steps;  // none where the plan changes no shim
  std::size_t turns = 0;    // counted as above; 0 with the camshafts out
  std::size_t stand_ins = 0;
  std::size_t waiting = 0;  // valves
  bool least = true;        // false: safe, but the search was cut short before it proved 2 and 3
};

// In steps of about a nanosecond, counted: a cell waits for the answer while a person types.
inline constexpr std::uint64_t usual_effort = 30'000'000;

// Takes no longer than a tenth of a second or so, and 25 MB, whatever is asked; of less effort the
// part, but where the steps to be written are many. Throws BadInput
// where a valve that is to be opened has no shim or is open at no stop, where a shim is given
// twice, or by a valve that keeps it, or is not of the size said, and beyond 64 stops, 1 000 valves
// or 20 000 rows of spares.
FittingSteps fitting_steps(const FittingQuestion& question, std::uint64_t effort = usual_effort);

// Calls each stop, in the steps and in what they say, by another number.
void renumber_stops(FittingSteps& steps, const std::map<int, int>& numbers);

}  // namespace shimwright
