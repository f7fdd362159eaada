// SPDX-License-Identifier: MPL-2.0
#include "core/log/day.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

using std::chrono::sys_days;
using std::chrono::year_month_day;

constexpr sys_days first_day = std::chrono::year(1899) / 12 / 30;

// The three numbers between those marks.
std::optional<std::array<int, 3>> three_numbers(std::string_view text, char mark) {
  std::array<int, 3> numbers{};
  for (std::size_t i = 0; i < 3; ++i) {
    const std::size_t end = i < 2 ? text.find(mark) : text.size();
    if (end == std::string_view::npos || end == 0 || end > 4) return std::nullopt;
    const auto [stop, error] = std::from_chars(text.data(), text.data() + end, numbers.at(i));
    if (error != std::errc() || stop != text.data() + end || numbers.at(i) < 0) return std::nullopt;
    text.remove_prefix(i < 2 ? end + 1 : end);
  }
  return numbers;
}

}  // namespace

std::optional<double> day_of(int year, int month, int day) {
  constexpr int first_year = 1900;  // before that, figures are left out
  if (month < 1 || month > 12 || day < 1 || day > 31) return std::nullopt;  // chrono keeps 8 bits
  const year_month_day date(std::chrono::year(year),
                            std::chrono::month(static_cast<unsigned>(month)),
                            std::chrono::day(static_cast<unsigned>(day)));
  if (year < first_year || !date.ok()) return std::nullopt;
  return static_cast<double>((sys_days(date) - first_day).count());
}

std::optional<double> day_written(std::string_view text) {
  text = trimmed(text);
  if (const auto iso = three_numbers(text, '-')) return day_of((*iso)[0], (*iso)[1], (*iso)[2]);
  if (const auto points = three_numbers(text, '.'))
    return day_of((*points)[2], (*points)[1], (*points)[0]);
  return std::nullopt;
}

std::string day_in_figures(double day) {
  const year_month_day date(first_day + std::chrono::days(static_cast<int>(std::floor(day))));
  const auto two = [](unsigned number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
  };
  return std::to_string(static_cast<int>(date.year())) + "-" +
         two(static_cast<unsigned>(date.month())) + "-" + two(static_cast<unsigned>(date.day()));
}

}  // namespace shimwright
