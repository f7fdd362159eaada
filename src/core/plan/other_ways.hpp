// SPDX-License-Identifier: MPL-2.0
//
// The same engine planned otherwise: what a little more money, or a little more work, would buy.
// Each way changes one rule of the plan as chosen and is the true optimum of the question so asked.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/plan/plan.hpp"

namespace shimwright {

enum class WayKind {
  as_chosen,
  nearest_the_aim,     // gaps before money
  nothing_bought,      // from what is at hand
  good_valves_opened,  // shims of good valves are used too
  nearest_shims        // where none serves, the one that comes nearest
};
inline constexpr WayKind all_ways[] = {WayKind::as_chosen, WayKind::nearest_the_aim,
                                       WayKind::nothing_bought, WayKind::good_valves_opened,
                                       WayKind::nearest_shims};

// What a plan comes to.
struct PlanSum {
  std::size_t outside = 0;   // valves that read outside their limits afterwards, doubt or no
  std::size_t in_doubt = 0;  // that read inside them, but nearer to a limit than the doubt
  std::size_t changed = 0;   // valves that get another shim
  std::int64_t bought = 0;   // shims
  Money money = {};          // of these, and of the work
  // Mean distance of the gaps afterwards; none where none is known.
  std::optional<Length> from_aim = {};
  bool operator==(const PlanSum&) const = default;
};

// Expects a plan of that question. Linear in its valves.
PlanSum sum_of(const PlanQuestion& question, const Plan& plan);

struct Way {
  WayKind kind = WayKind::as_chosen;
  bool chosen = false;  // the rules are so already: the plan is the one chosen
  PlanSum sum;
};

// The ways in the order of all_ways, the first that of `chosen`, which is the best plan of the
// question. Takes as long as four plans.
std::vector<Way> other_ways(const PlanQuestion& question, const Plan& chosen);

}  // namespace shimwright
