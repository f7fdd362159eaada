// SPDX-License-Identifier: MPL-2.0
#include "core/service/log_slips.hpp"

#include <cstdint>

#include "core/values/gap_slip.hpp"

namespace shimwright {

LogLack lack_in(const LogRow& row) {
  if (!row.gap_found && !row.gap_left) return LogLack::no_gap;
  const bool any_with_shim = (row.gap_found && row.shim_found) || (row.gap_left && row.shim_fitted);
  if (!any_with_shim) return LogLack::no_shim;
  return row.distance ? LogLack::no_row : LogLack::no_distance;
}

SlipsBlanked blank_slips(
    ReadLog& log, const std::function<std::optional<Limits>(const std::string& valve)>& limits_of) {
  SlipsBlanked found;
  std::vector<int> likewise;
  for (LoggedRow& one : log.rows) {
    const auto limits = limits_of(one.row.valve);
    if (!limits) continue;
    std::optional<Length> slip;
    for (std::optional<Length>* gap : {&one.row.gap_left, &one.row.gap_found}) {
      if (!*gap || !cannot_be_right(**gap, *limits)) continue;
      slip = *gap;
      gap->reset();
    }
    if (!slip) continue;
    if (found.valves.empty())
      found.told.push_back(
          {Say::drift_slip,
           {static_cast<std::int64_t>(one.number), one.row.valve, *slip, limits->max}});
    else
      likewise.push_back(one.number);
    found.valves.push_back(one.row.valve);
  }
  if (!likewise.empty())
    found.told.push_back({Say::drift_slips_likewise,
                          {rows_written(likewise), static_cast<std::int64_t>(likewise.size())}});
  return found;
}

}  // namespace shimwright
