// SPDX-License-Identifier: MPL-2.0
#include "core/service/measuring.hpp"

#include <algorithm>

namespace shimwright {

std::vector<MeasuringRow> measuring_order(const Service& service, const Findings& found) {
  std::vector<MeasuringRow> rows;
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    const auto& valve = service.valves[i];
    const auto beside = std::ranges::find_if(rows, [&](const MeasuringRow& row) {
      const auto& first = service.valves[row.valves.front()];
      return first.cylinder == valve.cylinder && first.side == valve.side &&
             row.valves.size() < most_in_a_measuring_row;
    });
    if (beside != rows.end())
      beside->valves.push_back(i);
    else
      rows.push_back({found.measured_at[i], false, {i}});
  }
  std::ranges::stable_sort(rows, {}, &MeasuringRow::stop);
  for (std::size_t i = 0; i < rows.size(); ++i)
    rows[i].first_of_stop = i == 0 || rows[i].stop != rows[i - 1].stop;
  return rows;
}

}  // namespace shimwright
