// SPDX-License-Identifier: MPL-2.0
#include "core/service/stage.hpp"

#include <algorithm>

#include "core/service/arrivals.hpp"
#include "core/service/bench.hpp"
#include "core/service/recheck.hpp"

namespace shimwright {
namespace {

bool is_anything_due(const Service& service, const Findings& found) {
  return std::ranges::any_of(recheck_in(service, found), must_be_measured);
}

// Without a plan nobody knows yet which shims a valve gets.
bool is_a_shim_awaited(const Findings& found) {
  return std::ranges::any_of(found.arrivals, [&found](const ArrivalFindings& shim) {
    return shim.state == ArrivalState::on_order && (shim.valve || !found.plan);
  });
}

}  // namespace

bool is_nothing_to_fit(const Service& service, const Findings& found) {
  if (!found.plan || service.valves.empty()) return false;
  const auto valves = recheck_in(service, found);
  for (std::size_t i = 0; i < valves.size(); ++i) {
    const Action action = found.valve_plans[i].action;
    const bool may_stay = action == Action::none && !valves[i].reason.empty();
    if (!valves[i].gap_found || (action != Action::keep && !may_stay)) return false;
  }
  return true;
}

Stage stage_of(const Service& service, const Findings& found) {
  if (!service.bench.empty()) {
    if (!is_bench_done(service)) return Stage::bench;
    return is_anything_due(service, found) ? Stage::recheck : Stage::record;
  }
  if (is_nothing_to_fit(service, found)) return Stage::record;
  return is_a_shim_awaited(found) ? Stage::waiting : Stage::measuring;
}

}  // namespace shimwright
