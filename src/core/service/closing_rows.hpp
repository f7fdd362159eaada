// SPDX-License-Identifier: MPL-2.0
//
// The rows that a check adds to the log, and what the log holds already.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/log/log_row.hpp"
#include "core/service/closing_valves.hpp"

namespace shimwright {

struct LogSoFar {
  std::int64_t last_check = 0;             // the largest number; 0: none
  std::optional<double> last_day;          // the latest
  std::optional<double> longest_distance;  // of all rows
};

// Numbers may stand there as text. Rows and cells that make no sense are passed over.
LogSoFar log_so_far(const EntryTable& log);

// What the log has of that check: of its last round, or the one before where that says nothing.
struct CheckSoFar {
  std::optional<double> distance;  // in all
  std::optional<double> temperature;
  std::string who;
};
CheckSoFar check_so_far(const EntryTable& log, std::int64_t check);

// What all rows of a check have alike.
struct CheckFacts {
  std::int64_t check = 0;
  std::int64_t round = 0;
  double day = 0;
  std::optional<double> distance;
  std::optional<double> temperature;
  std::string who;
  std::string note;
};

// A row a valve.
std::vector<LogRow> closing_rows(const Service& service, const Findings& found,
                                 const std::vector<ValveAtClose>& valves, const CheckFacts& facts);

}  // namespace shimwright
