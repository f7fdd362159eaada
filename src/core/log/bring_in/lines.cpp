// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/lines.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/log/bring_in/check_numbers.hpp"
#include "core/log/bring_in/read_cell.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::size_t letters_in(std::string_view text) {
  return static_cast<std::size_t>(std::ranges::count_if(
      text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

// Cut or filled up to so many letters, and a gap behind them.
std::string wide(std::string_view text, std::size_t letters) {
  std::string cell(text);
  std::ranges::replace(cell, '\n', ' ');
  if (letters_in(cell) > letters) {
    std::size_t end = 0;
    for (std::size_t seen = 0; end < cell.size(); ++end)
      if ((static_cast<unsigned char>(cell[end]) & 0xC0) != 0x80 && ++seen == letters) break;
    cell = cell.substr(0, end) + "\u2026";
  }
  return cell + std::string(letters - letters_in(cell) + 2, ' ');
}

std::string first_values(const OwnerTable& table, std::size_t from, std::size_t column) {
  constexpr std::size_t most = 3;
  std::string values;
  std::size_t count = 0;
  for (std::size_t row = from; row < table.rows.size() && count < most; ++row) {
    if (says_nothing(table.at(row, column))) continue;
    values += (count++ == 0 ? "" : "  ") + shown(table.at(row, column));
  }
  return values;
}

std::string letters_of_column(int column) {
  std::string name;
  for (++column; column > 0; column = (column - 1) / 26)
    name.insert(name.begin(), static_cast<char>('A' + (column - 1) % 26));
  return name;
}

// Letters in each column of a line.
constexpr std::size_t letter_wide = 3;
constexpr std::size_t heading_wide = 20;
constexpr std::size_t values_wide = 34;
constexpr std::size_t place_wide = 11;
constexpr std::size_t date_wide = 10;
constexpr std::size_t distance_wide = 8;
constexpr std::size_t valve_wide = 6;
constexpr std::size_t length_wide = 11;

std::string short_in(const std::optional<Length>& length, const Teller& teller) {
  return length ? teller.column(*length) : "\u2013";
}

}  // namespace

std::string in_words(std::optional<LogColumn> what, const Teller& teller) {
  return teller.say(what ? word_for(*what) : Say::bring_left_out);
}

std::string in_words(ColumnUnit unit, const Teller& teller) {
  switch (unit) {
    case ColumnUnit::none:
      break;
    case ColumnUnit::mm:
      return teller.say(Say::bring_unit_mm);
    case ColumnUnit::hundredths:
      return teller.say(Say::bring_unit_hundredths);
    case ColumnUnit::inch:
      return teller.say(Say::bring_unit_inch);
    case ColumnUnit::thou:
      return teller.say(Say::bring_unit_thou);
    case ColumnUnit::mark:
      return teller.say(Say::bring_unit_mark);
    case ColumnUnit::km:
      return teller.say(Say::bring_km);
    case ColumnUnit::miles:
      return teller.say(Say::bring_miles);
    case ColumnUnit::hours:
      return teller.say(Say::bring_hours);
  }
  return teller.say(Say::bring_unit_none);
}

std::string columns_heading(const Teller& teller) {
  return wide({}, letter_wide) + wide(teller.say(Say::bring_head_heading), heading_wide) +
         wide(teller.say(Say::bring_head_values), values_wide) + teller.say(Say::bring_head_holds);
}

std::string readings_heading(const Teller& teller) {
  std::string line = "  " + wide(teller.say(Say::bring_head_place), place_wide) +
                     wide(teller.say(Say::log_date), date_wide) +
                     wide(teller.say(Say::log_distance), distance_wide) +
                     wide(teller.say(Say::log_valve), valve_wide);
  for (const Say length :
       {Say::log_gap_found, Say::log_shim_found, Say::log_shim_fitted, Say::log_gap_left})
    line += wide(teller.say(length), length_wide);
  return line + teller.say(Say::bring_head_remark);
}

std::string column_line(const OwnerTable& table, const Mapping& mapping, std::size_t column,
                        const BringInBook& book, const Teller& teller) {
  const ColumnMapping& mapped = mapping.columns[column];
  std::string held = in_words(mapped.what, teller);
  if (mapped.unit != ColumnUnit::none)
    held = teller.say(Say::bring_held_as, {held, in_words(mapped.unit, teller)});
  if (mapping.form == LogForm::row_a_check && mapped.valve && *mapped.valve < book.valves.size())
    held = teller.say(Say::bring_valve_held_as, {book.valves[*mapped.valve], held});
  return wide(letters_of_column(table.first_column + static_cast<int>(column)), 3) +
         wide(heading_of(table, mapping.heading_rows, column), heading_wide) +
         wide(first_values(table, mapping.heading_rows, column), values_wide) + held;
}

std::string reading_line(const Reading& reading, bool tick, const Teller& teller) {
  const std::int64_t number = reading.source_row;
  const std::string place =
      reading.source_column < 0
          ? teller.say(Say::bring_row, {number})
          : teller.say(Say::bring_row_at, {number, letters_of_column(reading.source_column)});
  std::string line = std::string(tick                     ? "\u2611"
                                 : reading.can_be_taken() ? "\u2610"
                                                          : "\u2715") +
                     " " + wide(place, place_wide);
  std::string why;
  for (const auto* reasons : {&reading.why, &reading.notes})
    for (const Told& one : *reasons) why += (why.empty() ? "" : "; ") + in_words(one, teller);
  if (!reading.can_be_taken()) return line + why;
  const LogRow& row = reading.row;
  line += wide(row.date ? iso_day(*row.date) : "\u2013", date_wide) +
          wide(row.distance ? teller.number(std::round(*row.distance * 10) / 10) : "\u2013",
               distance_wide) +
          wide(row.valve, valve_wide);
  for (const auto& length : {row.gap_found, row.shim_found, row.shim_fitted, row.gap_left})
    line += wide(short_in(length, teller), length_wide);
  return line + (why.empty() ? row.note : why);
}

std::string outcome_in_words(const Preview& preview, const std::vector<bool>& ticks,
                             const Mapping& mapping, const BringInBook& book,
                             const Teller& teller) {
  const std::vector<LogRow> rows = rows_taken(preview, ticks, book);
  std::set<std::int64_t> checks;
  for (const LogRow& row : rows) checks.insert(row.check);
  std::string words =
      rows.empty() ? teller.say(Say::bring_nothing_taken)
                   : teller.say(Say::bring_taken, {static_cast<std::int64_t>(rows.size()),
                                                   static_cast<std::int64_t>(checks.size())});
  const auto count = [&](Say say, auto counts) {
    std::int64_t number = 0;
    for (std::size_t i = 0; i < preview.readings.size(); ++i)
      if (!ticks[i] && counts(preview.readings[i].standing)) ++number;
    if (number > 0) words += " " + teller.say(say, {number});
  };
  count(Say::bring_refused, [](Standing one) { return one == Standing::refused; });
  count(Say::bring_have_already, [](Standing one) { return one == Standing::in_log; });
  count(Say::bring_have_twice, [](Standing one) { return one == Standing::twice; });
  count(Say::bring_have_unlikely, [](Standing one) { return one == Standing::unlikely; });
  count(Say::bring_unticked, [](Standing one) { return one == Standing::sound; });
  std::vector<Told> look;
  if (mapping.order_asked) look.push_back({Say::bring_ask_order});
  look.insert(look.end(), preview.notes.begin(), preview.notes.end());
  if (is_any_older_than_its_number(rows, book.log)) look.push_back({Say::bring_older});
  if (!look.empty()) words += "\n" + in_words(look, teller);
  return words;
}

}  // namespace shimwright
