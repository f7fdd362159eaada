// SPDX-License-Identifier: MPL-2.0
#include "core/log/read_log.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/log/day.hpp"
#include "core/service/entered.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

using Rows = std::vector<int>;

constexpr double least_day = 1;
constexpr double most_day = 2'958'465;  // 31 December 9999
constexpr double most_count = 1e6;
constexpr std::size_t most_told_alike = 3;

// Of each column in which a number or a day is due.
constexpr std::pair<LogColumn, Say> numbers_due[] = {
    {LogColumn::check, Say::log_check},
    {LogColumn::round, Say::log_round},
    {LogColumn::date, Say::log_date},
    {LogColumn::distance, Say::log_distance},
    {LogColumn::gap_found, Say::log_gap_found},
    {LogColumn::shim_found, Say::log_shim_found},
    {LogColumn::shim_fitted, Say::log_shim_fitted},
    {LogColumn::gap_left, Say::log_gap_left},
    {LogColumn::predicted, Say::log_predicted},
    {LogColumn::temperature, Say::log_temperature}};

Word count_of(std::size_t count) { return static_cast<std::int64_t>(count); }

Told about(Say what, const Rows& rows) {
  return {what, {rows_written(rows), count_of(rows.size())}};
}

// `12 000` is a number too.
std::string without_spaces(std::string text) {
  for (const std::string_view space : {" ", "\u00a0", "\u202f", "\u2009"})
    for (std::size_t at = 0; (at = text.find(space, at)) != std::string::npos;)
      text.erase(at, space.size());
  return text;
}

class LogReader {
 public:
  LogReader(Unit unit, const std::vector<std::string>& valves) : unit_(unit), valves_(valves) {}

  ReadLog read(const EntryTable& log) && {
    int number = 0;
    for (const std::vector<Entry>& cells : log) read_row(cells, ++number);
    tell_of_rows();
    tell_backwards();
    tell_days_with_two_checks();
    tell_twice();
    return std::move(read_);
  }

 private:
  static const Entry& at(const std::vector<Entry>& cells, LogColumn column) {
    static const Entry nothing;
    const auto index = static_cast<std::size_t>(column);
    return index < cells.size() ? cells[index] : nothing;
  }

  void read_row(const std::vector<Entry>& cells, int number) {
    if (std::ranges::all_of(cells, [](const Entry& entry) { return not_given(entry); })) return;
    cells_ = &cells;
    number_ = number;
    LogRow row;
    row.check = count_at(LogColumn::check);
    row.round = count_at(LogColumn::round);
    row.date = date();
    row.distance = number_at(LogColumn::distance);
    row.valve = valve();
    row.gap_found = gap_at(LogColumn::gap_found);
    row.state = word_in(at(cells, LogColumn::state));
    row.shim_found = shim_at(LogColumn::shim_found);
    row.shim_fitted = shim_at(LogColumn::shim_fitted);
    row.gap_left = gap_at(LogColumn::gap_left);
    row.predicted = length_at(LogColumn::predicted);
    row.temperature = number_at(LogColumn::temperature);
    row.who = word_in(at(cells, LogColumn::who));
    row.note = word_in(at(cells, LogColumn::note));
    if (!row.distance) no_distance_.push_back(number);
    if (!row.date) no_date_.push_back(number);
    read_.rows.push_back({number, std::move(row)});
  }

  std::optional<double> number_at(LogColumn column) {
    const Entry& entry = at(*cells_, column);
    if (not_given(entry)) return std::nullopt;
    auto number = number_entered(entry);
    if (!number) number = number_written(without_spaces(word_in(entry)));
    if (!number || !std::isfinite(*number)) no_number_[column].push_back(number_);
    return number && std::isfinite(*number) ? number : std::nullopt;
  }

  std::int64_t count_at(LogColumn column) {
    const auto number = number_at(column);
    return number && *number >= 1 && *number <= most_count ? static_cast<std::int64_t>(*number) : 0;
  }

  std::optional<double> date() {
    const Entry& entry = at(*cells_, LogColumn::date);
    if (not_given(entry)) return std::nullopt;
    auto day = number_entered(entry);
    if (!day) day = day_written(word_in(entry));
    if (day && *day >= least_day && *day <= most_day) return day;
    no_number_[LogColumn::date].push_back(number_);
    return std::nullopt;
  }

  std::optional<Length> length_at(LogColumn column) {
    const Entry& entry = at(*cells_, column);
    if (not_given(entry)) return std::nullopt;
    try {
      if (const auto number = number_entered(entry)) return Length::of(*number, unit_);
      const auto length = length_written(word_in(entry), unit_);
      if (!length) no_number_[column].push_back(number_);
      return length;
    } catch (const BadInput&) {
      (column == LogColumn::gap_found || column == LogColumn::gap_left ? bad_gap_ : bad_shim_)
          .push_back(number_);
      return std::nullopt;
    }
  }

  std::optional<Length> gap_at(LogColumn column) {
    const auto gap = length_at(column);
    if (!gap || (*gap >= Length() && *gap <= most_gap_logged)) return gap;
    bad_gap_.push_back(number_);
    return std::nullopt;
  }

  std::optional<Length> shim_at(LogColumn column) {
    const auto shim = length_at(column);
    if (!shim || (*shim > Length() && *shim <= most_shim_logged)) return shim;
    bad_shim_.push_back(number_);
    return std::nullopt;
  }

  std::string valve() {
    const std::string name = word_in(at(*cells_, LogColumn::valve));
    if (name.empty()) {
      no_valve_.push_back(number_);
      return {};
    }
    const auto known =
        std::ranges::find_if(valves_, [&](const auto& valve) { return same_word(valve, name); });
    if (known != valves_.end()) return *known;
    unknown_valves_[name].push_back(number_);
    return name;
  }

  void tell(Told told) { read_.odd.push_back(std::move(told)); }

  void tell_of_rows() {
    for (const auto& [name, rows] : unknown_valves_)
      tell({Say::log_odd_unknown, {in_quotes(name), rows_written(rows), count_of(rows.size())}});
    if (!no_valve_.empty()) tell(about(Say::log_odd_no_valve, no_valve_));
    if (!no_distance_.empty()) tell(about(Say::log_odd_no_distance, no_distance_));
    if (!no_date_.empty()) tell(about(Say::log_odd_no_date, no_date_));
    for (const auto& [column, heading] : numbers_due)
      if (const auto found = no_number_.find(column); found != no_number_.end())
        tell({column == LogColumn::date ? Say::log_odd_day : Say::log_odd_text,
              {heading, rows_written(found->second), count_of(found->second.size())}});
    if (!bad_gap_.empty()) tell(about(Say::log_odd_gap, unique(bad_gap_)));
    if (!bad_shim_.empty()) tell(about(Say::log_odd_shim, unique(bad_shim_)));
  }

  static Rows unique(Rows rows) {
    rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
    return rows;
  }

  // Each date and distance once; of a check that goes back, what it is held against.
  void tell_backwards() {
    std::set<std::pair<double, double>> checks;
    for (const LoggedRow& one : read_.rows)
      if (one.row.date && one.row.distance) checks.emplace(*one.row.date, *one.row.distance);
    std::optional<std::pair<double, double>> furthest;
    std::size_t told = 0;
    for (const auto& check : checks) {
      // On one day the order is not known.
      const bool back =
          furthest && check.second < furthest->second && check.first > furthest->first;
      if (back && told++ < most_told_alike)
        tell({Say::log_odd_backwards,
              {day_in_figures(check.first), check.second, furthest->second,
               day_in_figures(furthest->first)}});
      if (!furthest || check.second > furthest->second) furthest = check;
    }
  }

  void tell_days_with_two_checks() {
    std::map<double, std::set<std::pair<std::int64_t, double>>> days;
    for (const LoggedRow& one : read_.rows) {
      if (!one.row.date) continue;
      // By their numbers; where they have none, by their distances.
      days[std::floor(*one.row.date)].emplace(one.row.check,
                                              one.row.check > 0 ? 0 : one.row.distance.value_or(0));
    }
    std::size_t told = 0;
    for (const auto& [day, checks] : days)
      if (checks.size() > 1 && told++ < most_told_alike)
        tell({Say::log_odd_one_day, {day_in_figures(day), count_of(checks.size())}});
  }

  void tell_twice() {
    using Key = std::tuple<std::int64_t, std::int64_t, double, double, std::string>;
    std::map<Key, Rows> places;
    for (const LoggedRow& one : read_.rows) {
      const LogRow& row = one.row;
      if (row.valve.empty()) continue;
      const bool numbered = row.check > 0;
      places[{row.check, row.round, numbered ? 0 : row.date.value_or(0),
              numbered ? 0 : row.distance.value_or(0), row.valve}]
          .push_back(one.number);
    }
    std::map<std::string, Rows> twice;
    for (const auto& [key, rows] : places)
      if (rows.size() > 1) {
        Rows& of_valve = twice[std::get<std::string>(key)];
        of_valve.insert(of_valve.end(), rows.begin(), rows.end());
      }
    for (auto& [valve, rows] : twice) {
      std::ranges::sort(rows);
      tell({Say::log_odd_twice, {valve, rows_written(rows)}});
    }
  }

  Unit unit_;
  const std::vector<std::string>& valves_;
  const std::vector<Entry>* cells_ = nullptr;
  int number_ = 0;
  ReadLog read_;
  std::map<std::string, Rows> unknown_valves_;
  std::map<LogColumn, Rows> no_number_;
  Rows no_valve_;
  Rows no_distance_;
  Rows no_date_;
  Rows bad_gap_;
  Rows bad_shim_;
};

}  // namespace

ReadLog read_log(const EntryTable& log, Unit unit, const std::vector<std::string>& valves) {
  return LogReader(unit, valves).read(log);
}

std::string rows_written(const std::vector<int>& rows) {
  std::string text;
  for (std::size_t i = 0; i < rows.size();) {
    std::size_t last = i;
    while (last + 1 < rows.size() && rows[last + 1] == rows[last] + 1) ++last;
    if (!text.empty()) text += ", ";
    text += std::to_string(rows[i]);
    if (last > i) text += (last == i + 1 ? ", " : "\u2013") + std::to_string(rows[last]);
    i = last + 1;
  }
  return text;
}

}  // namespace shimwright
