// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing_rows.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

std::optional<double> number_at(const std::vector<Entry>& row, LogColumn column) {
  const auto index = static_cast<std::size_t>(column);
  if (index >= row.size() || not_given(row[index])) return std::nullopt;
  if (const auto number = number_entered(row[index])) return number;
  return number_written(word_in(row[index]));
}

void keep_largest(std::optional<double>& largest, std::optional<double> number) {
  if (number && std::isfinite(*number) && (!largest || *number > *largest)) largest = number;
}

// Blank too where nothing stands there.
std::string words_at(const std::vector<Entry>& row, LogColumn column) {
  const auto index = static_cast<std::size_t>(column);
  return index < row.size() && !not_given(row[index]) ? word_in(row[index]) : std::string();
}

std::string both_notes(const std::string& one, const std::string& other) {
  return one + (one.empty() || other.empty() ? "" : "; ") + other;
}

}  // namespace

LogSoFar log_so_far(const EntryTable& log) {
  constexpr double most_checks = 1e6;
  LogSoFar so_far;
  std::optional<double> check;
  for (const std::vector<Entry>& row : log) {
    const auto number = number_at(row, LogColumn::check);
    if (number && *number >= 1 && *number <= most_checks) keep_largest(check, std::floor(*number));
    keep_largest(so_far.last_day, number_at(row, LogColumn::date));
    keep_largest(so_far.longest_distance, number_at(row, LogColumn::distance));
  }
  so_far.last_check = static_cast<std::int64_t>(check.value_or(0));
  return so_far;
}

CheckSoFar check_so_far(const EntryTable& log, std::int64_t check) {
  std::vector<const std::vector<Entry>*> rows;
  for (const std::vector<Entry>& row : log)
    if (number_at(row, LogColumn::check) == static_cast<double>(check)) rows.push_back(&row);
  // A person may have sorted them.
  std::ranges::stable_sort(rows, {}, [](const std::vector<Entry>* row) {
    return number_at(*row, LogColumn::round).value_or(1);
  });
  CheckSoFar so_far;
  for (const std::vector<Entry>* row : rows) {
    if (const auto distance = number_at(*row, LogColumn::distance)) so_far.distance = distance;
    if (const auto degrees = number_at(*row, LogColumn::temperature)) so_far.temperature = degrees;
    if (std::string who = words_at(*row, LogColumn::who); !who.empty()) so_far.who = std::move(who);
  }
  return so_far;
}

std::vector<LogRow> closing_rows(const Service& service, const Findings& found,
                                 const std::vector<ValveAtClose>& valves, const CheckFacts& facts) {
  std::vector<LogRow> rows;
  for (std::size_t i = 0; i < valves.size(); ++i) {
    const ValveRecheck& valve = valves[i].recheck;
    const auto& limits = found.of(service.valves[i].side).limits;
    rows.push_back(
        {.check = facts.check,
         .round = facts.round,
         .date = facts.day,
         .distance = facts.distance,
         .valve = valves[i].name,
         .gap_found = valve.gap_found,
         .state = limits ? found.teller.say(say_of(state_of(valve.gap_found, *limits, found.doubt)))
                         : std::string(),
         .shim_found = valve.shim_found,
         .shim_fitted = valve.shim_fitted,
         .gap_left = valve.gap_now,
         .predicted = valve.predicted,
         .temperature = facts.temperature,
         .who = facts.who,
         .note = both_notes(facts.note, valve.reason)});
  }
  return rows;
}

}  // namespace shimwright
