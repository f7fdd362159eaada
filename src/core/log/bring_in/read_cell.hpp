// SPDX-License-Identifier: MPL-2.0
//
// One cell of an owner's log read as what its column holds: a value, nothing, or the reason why it
// makes no sense.
#pragma once

#include <optional>

#include "core/log/bring_in/mapping.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

template <class Value>
struct CellRead {
  std::optional<Value> value = {};
  std::optional<Told> why = {};  // no value though something stands there
};

// Beyond these a number is a slip, not a gap or a shim (common practice, no source).
inline constexpr Length largest_gap = Length::nanometres(3'000'000);
inline constexpr Length thinnest_shim = Length::nanometres(300'000);
inline constexpr Length thickest_shim = Length::nanometres(20'000'000);

// A unit behind the number counts before that of the column. A whole number that is too large for
// the column's unit is read as the mark on a shim where a shim is due.
CellRead<Length> length_in(const OwnerCell& cell, const ColumnMapping& column,
                           const BringInBook& book);

CellRead<double> date_in(const OwnerCell& cell, DateOrder order);

// In the book's unit. `decimal_mark`: decimal_mark_in() of the column.
CellRead<double> distance_in(const OwnerCell& cell, const ColumnMapping& column, char decimal_mark,
                             const BringInBook& book);

// In degrees Celsius; `68 F` is converted.
CellRead<double> temperature_in(const OwnerCell& cell);

// The number of a check or a round: whole, from 1 on.
CellRead<std::int64_t> number_in(const OwnerCell& cell, LogColumn what);

// What a column holds, in words: `gap found`.
Say word_for(LogColumn column);
Say word_for(DistanceUnit unit);

}  // namespace shimwright
