// SPDX-License-Identifier: MPL-2.0
//
// The plan for the whole engine at once: which valve keeps its shim, which gets another valve's,
// which a spare, which one to buy. Shims that come out of one valve are the first stock for the
// others, so valves cannot be decided one by one; the plan is the true optimum of an assignment of
// valves to (series, size) classes of shims.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/values/length.hpp"
#include "core/values/money.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

struct Valve {
  std::string name;
  std::string series;               // a shim fits only valves of its own series
  std::optional<Length> clearance;  // without clearance or shim the valve is unread: left alone,
  std::optional<Length> shim;       // its shim offered to no one
  Limits limits;
  Length aim;
  Length doubt;
  bool locked = false;   // keeps its shim whatever the state
  bool nearest = false;  // where it stays outside its limits, it may take the shim nearest to them
};

struct Stock {
  enum class Kind { spare, sale };
  Kind kind = Kind::sale;
  std::string series;
  Length size;
  std::optional<std::int64_t> count;  // none: one spare; a sale without limit
  Money price;                        // of one; a spare is the owner's already and costs nothing
};

struct PlanRules {
  bool touch_good = false;  // may a good valve be opened to give its shim to another?
  Money work;               // for each valve opened
  bool use_doubt = true;    // plan inside the guard band; false takes every reading as exact
  bool aim_first = false;   // nearness to the aim before money
  bool nearest = false;     // every valve may take the nearest shim where it stays outside
};

struct PlanQuestion {
  std::vector<Valve> valves;
  std::vector<Stock> stock;
  PlanRules rules;
};

enum class Action { keep, move, spare, buy, none, unread };

// `keep`, `move`, `spare`, `buy`, `none`, `unread`.
std::string_view word_for(Action action);

// The valve gets another shim.
constexpr bool changes_shim(Action action) {
  return action == Action::move || action == Action::spare || action == Action::buy;
}

struct PlanLine {
  Action action = Action::unread;
  std::optional<std::size_t> from;  // the giving valve's index, where the action is move
  std::optional<Length> size;       // of the shim in the valve afterwards, where known
  std::optional<Length> after;      // clearance afterwards; none where unread
  State state = State::unread;      // of `after`
  std::optional<Length> margin;     // of `after`
  Money cost;                       // price of a bought shim + work where the valve is opened
};

struct Purchase {
  std::string series;
  Length size;
  std::int64_t count = 0;
  Money price;  // of one
};

struct Leftover {
  std::string series;
  Length size;
  std::int64_t count = 0;
};

struct Plan {
  std::vector<PlanLine> lines;    // one for each valve, in the order given
  std::vector<Purchase> order;    // by series, then size
  std::vector<Leftover> surplus;  // shims that come out and are not used again; same order
};

// The best plan, in this order of aims: fewest valves outside their limits; least sum of how far
// those with `nearest` are outside, then fewest of these on the tight side; fewest valves outside
// the guard band; least money; fewest valves opened; least sum of |after - aim| (with `aim_first`
// this comes before money).
//
// A shim that would leave the valve outside its limits is never fitted, and the valve keeps its own
// with action none, unless it has `nearest`: then it may have any shim that leaves it less far
// outside than its own and with some gap (nearest.hpp). It gets a shim that is less near than
// another where that one brings some valve inside, or more of them nearer: the order of aims alone
// decides.
//
// Deterministic: the same question, the same plan. Expects a sound question (see entries.hpp):
// sound limits, positive sizes, unique names. Time grows with valves times the sizes in their
// reach, and at worst with the cube of the valves; space with the square of the valves.
Plan best_plan(const PlanQuestion& question);

}  // namespace shimwright
