// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing_valves.hpp"

#include "core/service/bench.hpp"

namespace shimwright {

std::vector<ValveAtClose> valves_at_close(const Service& service, const Findings& found) {
  const bool camshafts_were_out =
      is_any_shim_changed(service) && is_bench_for_camshafts_out(service, found);
  std::vector<ValveAtClose> valves;
  std::vector<ValveRecheck> rechecked = recheck_in(service, found);
  for (std::size_t i = 0; i < rechecked.size(); ++i) {
    ValveAtClose valve{.name = service.valves[i].name,
                       .recheck = std::move(rechecked[i]),
                       .touched = false,
                       .gap_left = {}};
    valve.touched = valve.recheck.opened || camshafts_were_out;
    valve.gap_left = valve.recheck.gap_left;
    if (!valve.gap_left && !valve.touched) valve.gap_left = valve.recheck.gap_found;
    const auto& limits = found.of(service.valves[i].side).limits;
    valve.outside = valve.gap_left && limits && margin_of(*valve.gap_left, *limits) < Length();
    valves.push_back(std::move(valve));
  }
  return valves;
}

}  // namespace shimwright
