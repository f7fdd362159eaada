// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/check_numbers.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace shimwright {
namespace {

// A check by its date and distance, one without them by the owner's number.
struct CheckKey {
  double date = -1;  // those without one come first
  double distance = -1;
  std::int64_t own = 0;
  auto operator<=>(const CheckKey&) const = default;
};

CheckKey key_of(const LogRow& row) {
  return {row.date.value_or(-1), row.distance.value_or(-1),
          row.date || row.distance ? 0 : row.check};
}

// In the log a date is one check, whatever distance stands beside it.
CheckKey log_key_of(const LogRow& row) {
  CheckKey key = key_of(row);
  if (row.date) key.distance = -1;
  return key;
}

using LogNumbers = std::map<CheckKey, std::set<std::int64_t>>;

LogNumbers numbers_in(const std::vector<LogRow>& log) {
  LogNumbers numbers;
  for (const LogRow& row : log)
    if (row.check > 0 && (row.date || row.distance)) numbers[log_key_of(row)].insert(row.check);
  return numbers;
}

}  // namespace

bool settle_own_numbers(Preview& preview, const BringInBook& book) {
  std::map<std::int64_t, std::set<CheckKey>> dates;  // of a number
  std::map<CheckKey, std::set<std::int64_t>> numbers;
  std::map<std::int64_t, std::size_t> rows;
  for (const Reading& reading : preview.readings) {
    if (!reading.can_be_taken() || reading.row.check == 0) continue;
    dates[reading.row.check].insert(log_key_of(reading.row));
    numbers[log_key_of(reading.row)].insert(reading.row.check);
    ++rows[reading.row.check];
  }
  if (rows.empty()) return false;
  const bool one_date_each =
      std::ranges::all_of(dates, [](const auto& one) { return one.second.size() == 1; });
  const bool count_of_rows =
      std::ranges::all_of(rows, [](const auto& one) { return one.second == 1; }) &&
      std::ranges::any_of(numbers, [](const auto& one) { return one.second.size() > 1; });
  bool others = false;
  const LogNumbers present = numbers_in(book.log);
  for (const auto& [date, taken] : present)
    for (const std::int64_t number : taken)
      if (const auto same = dates.find(number); same != dates.end())
        others = others || !same->second.contains(date);
  for (const auto& [date, own] : numbers)
    if (const auto same = present.find(date); same != present.end())
      others = others || !std::ranges::includes(same->second, own);
  if (one_date_each && !count_of_rows && !others) return true;
  preview.notes.push_back({others ? Say::bring_numbers_taken : Say::bring_numbers_unclear});
  return false;
}

std::vector<LogRow> rows_taken(const Preview& preview, const std::vector<bool>& ticks,
                               const BringInBook& book) {
  std::vector<LogRow> rows;
  for (std::size_t i = 0; i < preview.readings.size() && i < ticks.size(); ++i)
    if (ticks[i] && preview.readings[i].can_be_taken()) rows.push_back(preview.readings[i].row);
  // A row that has the date alone is of the check that has the distance too.
  std::map<double, double> distances;
  for (const LogRow& row : rows)
    if (row.date && row.distance) distances.try_emplace(*row.date, *row.distance);
  const auto check_of = [&](const LogRow& row) {
    CheckKey key = key_of(row);
    if (const auto known = distances.find(key.date); known != distances.end() && !row.distance)
      key.distance = known->second;
    return key;
  };
  const LogNumbers present = numbers_in(book.log);
  std::map<CheckKey, std::int64_t> given;
  std::int64_t largest = 0;
  for (const LogRow& row : book.log) largest = std::max(largest, row.check);
  for (const LogRow& row : rows) {
    const bool kept = preview.own_numbers && row.check > 0;
    if (kept) largest = std::max(largest, row.check);
    const auto known = present.find(log_key_of(row));
    std::int64_t& number = given.try_emplace(check_of(row), 0).first->second;
    if (number == 0)
      number = kept ? row.check : known == present.end() ? 0 : *known->second.begin();
  }
  for (auto& [check, number] : given)  // by date, then distance
    if (number == 0) number = ++largest;
  for (LogRow& row : rows)
    if (!preview.own_numbers || row.check == 0) row.check = given.at(check_of(row));
  std::ranges::stable_sort(rows, {}, [](const LogRow& row) {
    return std::tuple(row.date.value_or(-1), row.distance.value_or(-1), row.check, row.round);
  });
  return rows;
}

bool is_any_older_than_its_number(const std::vector<LogRow>& rows, const std::vector<LogRow>& log) {
  // Of the log's check with the latest date: no other can be later for it.
  std::optional<double> latest;
  std::int64_t number = 0;
  for (const LogRow& row : log)
    if (row.check > 0 && row.date && (!latest || *row.date > *latest)) {
      latest = row.date;
      number = row.check;
    }
  return latest && std::ranges::any_of(rows, [&](const LogRow& row) {
           return row.date && *row.date < *latest && row.check > number;
         });
}

}  // namespace shimwright
