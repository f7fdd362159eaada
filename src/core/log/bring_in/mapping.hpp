// SPDX-License-Identifier: MPL-2.0
//
// What each column of an owner's log holds, as guessed, and as the owner then puts it right.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/log/bring_in/owner_table.hpp"
#include "core/log/bring_in/written_date.hpp"
#include "core/log/bring_in/written_distance.hpp"
#include "core/log/log_row.hpp"
#include "core/values/length.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

// What the book knows that an old log is read by.
struct BringInBook {
  std::vector<std::string> valves;
  std::vector<std::optional<Limits>> limits;  // of each valve; fewer, or none, where not known
  Unit unit = Unit::mm;
  DistanceUnit distance = DistanceUnit::km;
  std::function<std::optional<Length>(const Entry&)> size_marked;  // the shim a mark stands for
  std::vector<LogRow> log;                                         // what stands there already
};

// One row a valve, the valve named in it; or one row a check, the valves named over the columns.
enum class LogForm { row_a_valve, row_a_check };

// What a column's bare numbers are in. `hundredths` of a millimetre; `mark`: as etched on a shim.
enum class ColumnUnit { none, mm, hundredths, inch, thou, mark, km, miles, hours };

struct ColumnMapping {
  std::optional<LogColumn> what;     // none: left out
  std::optional<std::size_t> valve;  // in a row a check: of which valve, by its number in the book
  ColumnUnit unit = ColumnUnit::none;
  bool operator==(const ColumnMapping&) const = default;
};

struct Mapping {
  LogForm form = LogForm::row_a_valve;
  std::size_t heading_rows = 0;  // 0 to 2
  std::vector<ColumnMapping> columns;
  DateOrder order = DateOrder::day_first;
  bool order_asked = false;  // the dates could be read either way
};

bool is_gap(LogColumn column);   // found, left, predicted
bool is_shim(LogColumn column);  // found, fitted

// The units that a column of that meaning can have, the likeliest first; none for one without.
std::vector<ColumnUnit> units_of(std::optional<LogColumn> what, const BringInBook& book);

// What the headings say, and where there are none, or they say nothing, the size and kind of what
// stands below. Time grows with the cells.
Mapping guessed(const OwnerTable& table, const BringInBook& book);

// The likeliest unit of a column of that meaning, by its heading, else by the size of its numbers.
ColumnUnit unit_guessed(const OwnerTable& table, std::size_t heading_rows, std::size_t column,
                        std::optional<LogColumn> what, const BringInBook& book);

// What stands over a column: of two heading rows the words of both, where a word of the first may
// stand over several columns.
std::string heading_of(const OwnerTable& table, std::size_t heading_rows, std::size_t column);

}  // namespace shimwright
