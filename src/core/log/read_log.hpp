// SPDX-License-Identifier: MPL-2.0
//
// The log as it stands in the book, which a person may have typed, pasted, sorted or brought in:
// its rows read, and everything odd in them told. Nothing is thrown and nothing refused; what
// cannot be counts as not given, and is told with the rows where it stands.
//
// - Numbers may stand as text, with a comma or a point; days as `2021-05-04`.
// - A row whose valve no valve of the engine is called, or none, counts for no valve.
// - A row without a distance counts for no drift; one without a date does, by its distance.
// - A distance that goes backwards against the dates, two checks on one day, and a valve that
// stands
//   twice in a round are told, and count all the same.
#pragma once

#include <string>
#include <vector>

#include "core/entries/entries.hpp"
#include "core/log/log_row.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

// A gap and a shim beyond these are a slip of unit or decimal mark (common practice, no source).
inline constexpr Length most_gap_logged = Length::nanometres(5'000'000);
inline constexpr Length most_shim_logged = Length::nanometres(20'000'000);

struct LoggedRow {
  int number = 0;  // as it stands before the row, from 1 on
  LogRow row;
};

struct ReadLog {
  std::vector<LoggedRow> rows;  // all but the blank ones; the valve as the engine calls it
  std::vector<Told> odd;
};

// `unit`: of numbers without one. Time grows with the rows times the logarithm of their number.
ReadLog read_log(const EntryTable& log, Unit unit, const std::vector<std::string>& valves);

// `5\u20138, 12`, of numbers in rising order.
std::string rows_written(const std::vector<int>& rows);

}  // namespace shimwright
