// SPDX-License-Identifier: MPL-2.0
//
// A row of the log: one valve at one check. A check is one service of the engine; where a valve has
// to be done over, the check goes through more than one round, and each round has rows of its own.
// Rows are values for good: what is written is never reckoned anew.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/entries/entries.hpp"
#include "core/values/length.hpp"

namespace shimwright {

struct LogRow {
  std::int64_t check = 0;               // from 1 on over the years; 0: not given
  std::int64_t round = 0;               // of that check, from 1 on; 0: not given
  std::optional<double> date = {};      // days since 30 December 1899, as the office counts them
  std::optional<double> distance = {};  // in all, in the unit that Engine names
  std::string valve = {};
  std::optional<Length> gap_found = {};
  // Of the gap found, as words, by the limits of that day: blank in a row that was brought in from
  // a log without it, since the limits of now may be others.
  std::string state = {};
  std::optional<Length> shim_found = {};
  std::optional<Length> shim_fitted = {};  // the same where none was changed
  std::optional<Length> gap_left = {};
  std::optional<Length> predicted = {};  // gap found + shim found - shim fitted
  std::optional<double> temperature = {};
  std::string who = {};
  std::string note = {};
};

// The columns of the sheet, left to right: files hold them in this order for ever.
enum class LogColumn {
  check,
  round,
  date,
  distance,
  valve,
  gap_found,
  state,
  shim_found,
  shim_fitted,
  gap_left,
  predicted,
  temperature,
  who,
  note
};
inline constexpr int log_columns = 14;

// The row as the sheet holds it, lengths in that unit; what is not given is blank.
std::vector<Entry> cells_of(const LogRow& row, Unit unit);

}  // namespace shimwright
