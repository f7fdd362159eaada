// SPDX-License-Identifier: MPL-2.0
//
// The log of an invented engine, for tests and benchmarks: checks of all its valves at every 12
// 000, more than a year apart. The gaps close up along a line, read to 0.01 mm; those of the
// exhaust as twice as fast; and a valve that comes near its limit gets a thinner shim.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "core/log/log_row.hpp"
#include "core/values/choice.hpp"

namespace shimwright::tests {

inline constexpr double first_invented_day = 42'500;  // 10 May 2016
inline constexpr double invented_distance = 12'000;

// `fast`: that valve closes up several times as fast as its siblings.
inline std::vector<LogRow> invented_log(const std::vector<std::string>& valves, int checks,
                                        const std::string& fast = {}) {
  std::vector<LogRow> rows;
  std::vector<Length> shims;
  for (std::size_t v = 0; v < valves.size(); ++v)
    shims.push_back(Length::nanometres(2'700'000 + 10'000 * static_cast<std::int64_t>(v % 7)));
  const std::vector<Length> at_first = shims;
  for (int check = 1; check <= checks; ++check)
    for (std::size_t v = 0; v < valves.size(); ++v) {
      const bool exhaust = valves[v].find("EX") != std::string::npos;
      const double rate = (exhaust ? 10 : 5) * (1 + 0.1 * static_cast<double>(v % 3)) *
                          (valves[v] == fast ? 3.5 : 1);  // micrometres a check
      const double new_gap = (exhaust ? 0.26 : 0.19) + 0.01 * (static_cast<double>(v * 5 % 3) - 1);
      const double swing =
          0.002 * std::sin(static_cast<double>(7 * check) + 3.0 * static_cast<double>(v));
      const double followed = new_gap + at_first[v].mm() - rate / 1000 * (check - 1) + swing;
      const Length gap = Length::of(std::round((followed - shims[v].mm()) * 100) / 100);
      const Length lowest = exhaust ? Length::of(0.22) : Length::of(0.16);
      Length fitted = shims[v];
      if (gap <= lowest) fitted = shims[v] - Length::of(0.05);
      const Length after = clearance_after(gap, shims[v], fitted);
      rows.push_back({.check = check,
                      .round = 1,
                      .date = first_invented_day + 460.0 * (check - 1),
                      .distance = invented_distance * check,
                      .valve = valves[v],
                      .gap_found = gap,
                      .state = gap < lowest ? "tight" : "good",
                      .shim_found = shims[v],
                      .shim_fitted = fitted,
                      .gap_left = after,
                      .predicted = after,
                      .temperature = 18.0 + check % 4,
                      .who = "M. Ash"});
      shims[v] = fitted;
    }
  return rows;
}

inline EntryTable table_of(const std::vector<LogRow>& rows, Unit unit = Unit::mm) {
  EntryTable table;
  for (const LogRow& row : rows) table.push_back(cells_of(row, unit));
  return table;
}

}  // namespace shimwright::tests
