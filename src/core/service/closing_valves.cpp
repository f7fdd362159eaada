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
    const bool touched = rechecked[i].opened || camshafts_were_out;
    valves.push_back({service.valves[i].name, std::move(rechecked[i]), touched});
  }
  return valves;
}

}  // namespace shimwright
