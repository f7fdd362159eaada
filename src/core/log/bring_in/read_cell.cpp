// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/read_cell.hpp"

#include <array>
#include <cmath>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

bool is_whole(double number) { return number == std::floor(number); }

std::optional<Length> length_of(double number, ColumnUnit unit) try {
  switch (unit) {
    case ColumnUnit::hundredths:
      return Length::of(number * 10, Unit::um);
    case ColumnUnit::inch:
      return Length::of(number, Unit::inch);
    case ColumnUnit::thou:
      return Length::of(number, Unit::thou);
    default:
      return Length::of(number, Unit::mm);
  }
} catch (const BadInput&) {
  return std::nullopt;
}

bool can_be(Length length, bool shim) {
  return shim ? length >= thinnest_shim && length <= thickest_shim
              : length >= Length() && length <= largest_gap;
}

Told impossible(LogColumn what, const OwnerCell& cell) {
  return {Say::bring_length_impossible, {word_for(what), shortened(shown(cell))}};
}

CellRead<Length> marked(const OwnerCell& cell, LogColumn what, const BringInBook& book) {
  const auto size = book.size_marked ? book.size_marked(cell.value) : std::nullopt;
  if (size && can_be(*size, true)) return {size, {}};
  return {{}, Told{Say::bring_mark_unknown, {word_for(what), in_quotes(shown(cell))}}};
}

// A length with its unit behind it.
std::optional<Length> length_with_unit(const std::string& text) try {
  return length_written(text);
} catch (const BadInput&) {
  return std::nullopt;
}

}  // namespace

CellRead<Length> length_in(const OwnerCell& cell, const ColumnMapping& column,
                           const BringInBook& book) {
  const LogColumn what = column.what.value();
  const bool shim = is_shim(what);
  if (says_nothing(cell)) return {};
  if (has_failed(cell.value)) return {{}, Told{Say::bring_failed, {word_for(what)}}};
  if (cell.is_date) return {{}, Told{Say::bring_length_a_date, {word_for(what), shown(cell)}}};
  std::optional<double> number;
  if (const auto* plain = std::get_if<double>(&cell.value))
    number = *plain;
  else
    number = number_written(word_in(cell.value));
  if (!number) {
    if (const auto length = length_with_unit(word_in(cell.value))) {
      if (can_be(*length, shim)) return {length, {}};
      return {{}, impossible(what, cell)};
    }
    if (shim && column.unit == ColumnUnit::mark) return marked(cell, what, book);
    return {{}, Told{Say::bring_length_unreadable, {word_for(what), in_quotes(shown(cell))}}};
  }
  if (shim && column.unit == ColumnUnit::mark) {
    // Among marks a plain size may stand, as where a shim has none.
    const auto size = is_whole(*number) ? std::nullopt : length_of(*number, ColumnUnit::mm);
    if (size && can_be(*size, true) && book.unit == Unit::mm) return {size, {}};
    return marked(cell, what, book);
  }
  const auto length = length_of(*number, column.unit);
  if (length && can_be(*length, shim)) return {length, {}};
  constexpr double least_mark = 100;
  if (shim && is_whole(*number) && *number >= least_mark)
    if (auto read = marked(cell, what, book); read.value) return read;
  return {{}, impossible(what, cell)};
}

CellRead<double> date_in(const OwnerCell& cell, DateOrder order) {
  if (says_nothing(cell)) return {};
  if (has_failed(cell.value)) return {{}, Told{Say::bring_failed, {word_for(LogColumn::date)}}};
  const Told no_date{Say::bring_date_unreadable, {in_quotes(shown(cell))}};
  if (const auto* number = std::get_if<double>(&cell.value)) {
    constexpr double least_plain = 10'000;  // 1927: a smaller one is a slip, or a year
    if (!iso_day(*number).empty() && (cell.is_date || *number >= least_plain))
      return {std::floor(*number), {}};
  }
  const auto written = date_written(word_in(cell.value));
  if (!written) return {{}, no_date};
  if (const auto day = written->in(order)) return {day, {}};
  return {{},
          Told{order == DateOrder::day_first ? Say::bring_date_not_day_first
                                             : Say::bring_date_not_month_first,
               {in_quotes(shown(cell))}}};
}

CellRead<double> distance_in(const OwnerCell& cell, const ColumnMapping& column, char decimal_mark,
                             const BringInBook& book) {
  if (says_nothing(cell)) return {};
  if (has_failed(cell.value)) return {{}, Told{Say::bring_failed, {word_for(LogColumn::distance)}}};
  DistanceUnit unit = book.distance;
  if (column.unit == ColumnUnit::km) unit = DistanceUnit::km;
  if (column.unit == ColumnUnit::miles) unit = DistanceUnit::miles;
  if (column.unit == ColumnUnit::hours) unit = DistanceUnit::hours;
  const Told unreadable{Say::bring_distance_unreadable, {in_quotes(shown(cell))}};
  double count = 0;
  if (cell.is_date) return {{}, unreadable};
  if (const auto* number = std::get_if<double>(&cell.value)) {
    count = *number;
  } else {
    const auto written = distance_written(word_in(cell.value), decimal_mark);
    if (!written) return {{}, unreadable};
    count = written->count;
    unit = written->unit.value_or(unit);
  }
  const auto value = converted(count, unit, book.distance);
  if (!value)
    return {{}, Told{Say::bring_distance_other, {word_for(unit), word_for(book.distance)}}};
  if (!std::isfinite(*value) || *value < 0 || *value > largest_distance) return {{}, unreadable};
  return {value, {}};
}

CellRead<double> temperature_in(const OwnerCell& cell) {
  if (says_nothing(cell)) return {};
  const Told unreadable{Say::bring_part_left_out,
                        {word_for(LogColumn::temperature), in_quotes(shown(cell))}};
  std::optional<double> number = number_entered(cell.value);
  bool fahrenheit = false;
  if (!number) {
    const std::string text = lower_case(word_in(cell.value));
    const std::size_t end = text.find_first_not_of("+-.,0123456789");
    number = number_written(text.substr(0, end));
    std::string unit(end == std::string::npos ? "" : trimmed(text.substr(end)));
    for (const std::string_view sign : {"\u00b0", "\u00ba", "deg"})
      if (unit.starts_with(sign)) unit = trimmed(std::string_view(unit).substr(sign.size()));
    fahrenheit = unit == "f";
    if (!fahrenheit && !unit.empty() && unit != "c") number.reset();
  }
  if (!number || cell.is_date) return {{}, unreadable};
  const double celsius = fahrenheit ? (*number - 32) / 1.8 : *number;
  if (!can_be_of_an_engine(celsius)) return {{}, unreadable};
  return {celsius, {}};
}

CellRead<std::int64_t> number_in(const OwnerCell& cell, LogColumn what) {
  if (says_nothing(cell)) return {};
  std::optional<double> number = number_entered(cell.value);
  if (!number) number = number_written(word_in(cell.value));
  constexpr double most = 1e6;
  if (number && !cell.is_date && *number >= 1 && *number <= most && is_whole(*number))
    return {static_cast<std::int64_t>(*number), {}};
  return {{}, Told{Say::bring_part_left_out, {word_for(what), in_quotes(shown(cell))}}};
}

Say word_for(LogColumn column) {
  static constexpr std::array<Say, log_columns> words{
      Say::log_check,       Say::log_round,     Say::log_date,      Say::log_distance,
      Say::log_valve,       Say::log_gap_found, Say::log_state,     Say::log_shim_found,
      Say::log_shim_fitted, Say::log_gap_left,  Say::log_predicted, Say::bring_temperature,
      Say::log_who,         Say::log_remark};
  return words[static_cast<std::size_t>(column)];
}

Say word_for(DistanceUnit unit) {
  switch (unit) {
    case DistanceUnit::km:
      return Say::bring_km;
    case DistanceUnit::miles:
      return Say::bring_miles;
    case DistanceUnit::hours:
      break;
  }
  return Say::bring_hours;
}

}  // namespace shimwright
