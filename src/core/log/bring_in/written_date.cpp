// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/written_date.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/log/day.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr int last_year = 2199;

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

// One of the three parts of a date: a number, or a month by its name.
struct Part {
  int number = 0;
  std::size_t figures = 0;  // 0: a month's name
};

std::optional<int> month_named(std::string_view word) {
  static constexpr std::array<std::string_view, 12> months{
      "january", "february", "march",     "april",   "may",      "june",
      "july",    "august",   "september", "october", "november", "december"};
  const std::string wanted = lower_case(word);
  if (wanted.size() < 3) return std::nullopt;
  for (std::size_t i = 0; i < months.size(); ++i)
    if (months[i].starts_with(wanted) || (wanted == "sept" && i == 8))
      return static_cast<int>(i) + 1;
  return std::nullopt;
}

bool may_be_passed_over(std::string_view word) {
  static constexpr std::array<std::string_view, 4> ordinals{"st", "nd", "rd", "th"};
  static constexpr std::array<std::string_view, 7> days{
      "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};
  const std::string wanted = lower_case(word);
  return std::ranges::find(ordinals, wanted) != ordinals.end() ||
         (wanted.size() >= 3 &&
          std::ranges::any_of(days, [&](std::string_view day) { return day.starts_with(wanted); }));
}

// Behind the date nothing may stand but a time of day.
bool is_time_or_nothing(std::string_view text) {
  text = trimmed(text);
  if (text.empty()) return true;
  if (text.front() == 'T' || text.front() == ',') text = trimmed(text.substr(1));
  return !text.empty() && is_digit(text.front()) && text.find(':') != std::string_view::npos &&
         text.find_first_not_of("0123456789:., +-aApPmMZ") == std::string_view::npos;
}

// The three parts at the beginning of the text; none where it begins with something else.
std::optional<std::array<Part, 3>> parts_of(std::string_view text) {
  std::array<Part, 3> parts{};
  std::size_t count = 0;
  text = trimmed(text);
  if (text.size() == 8 && std::ranges::all_of(text, is_digit)) {
    for (const auto& [from, length] : {std::pair{0, 4}, std::pair{4, 2}, std::pair{6, 2}}) {
      Part& part = parts[count++];
      std::from_chars(text.data() + from, text.data() + from + length, part.number);
      part.figures = static_cast<std::size_t>(length);
    }
    return parts;
  }
  while (count < parts.size()) {
    const std::size_t separators = text.find_first_not_of(" ./-,");
    if (separators == std::string_view::npos) return std::nullopt;
    text.remove_prefix(separators);
    const bool number = is_digit(text.front());
    if (!number && !is_letter(text.front())) return std::nullopt;
    const auto end = std::ranges::find_if_not(text, number ? is_digit : is_letter);
    const std::string_view word = text.substr(0, static_cast<std::size_t>(end - text.begin()));
    text.remove_prefix(word.size());
    if (number) {
      if (word.size() > 4 || word.size() == 3) return std::nullopt;
      std::from_chars(word.data(), word.data() + word.size(), parts[count].number);
      parts[count++].figures = word.size();
    } else if (const auto month = month_named(word)) {
      parts[count++].number = *month;
    } else if (!may_be_passed_over(word)) {
      return std::nullopt;
    }
  }
  if (!is_time_or_nothing(text)) return std::nullopt;
  return parts;
}

std::optional<int> year_of(const Part& part) {
  if (part.figures == 4) return part.number;
  if (part.figures != 2) return std::nullopt;
  constexpr int turn = 70;
  return part.number + (part.number < turn ? 2000 : 1900);
}

std::optional<double> day_of(const Part& year, const Part& month, const Part& day) {
  const auto whole = year_of(year);
  if (!whole || day.figures == 0 || day.figures > 2 || month.figures > 2) return std::nullopt;
  return day_number(*whole, month.number, day.number);
}

}  // namespace

std::optional<double> day_number(int year, int month, int day) {
  return year > last_year ? std::nullopt : day_of(year, month, day);
}

std::string iso_day(double number) {
  constexpr double beyond = 109'939;  // the last day of those years is before it
  return number >= 1 && number < beyond ? day_in_figures(number) : std::string();
}

std::optional<WrittenDate> date_written(std::string_view text) {
  const auto parts = parts_of(text);
  if (!parts) return std::nullopt;
  const auto& [first, second, third] = *parts;
  WrittenDate date;
  if (first.figures == 4)
    date.day_first = date.month_first = day_of(first, second, third);
  else if (first.figures == 0)
    date.day_first = date.month_first = day_of(third, first, second);
  else if (second.figures == 0)
    date.day_first = date.month_first = day_of(third, second, first);
  else
    date = {day_of(third, second, first), day_of(third, first, second)};
  if (!date.day_first && !date.month_first) return std::nullopt;
  return date;
}

OrderGuess order_of(const std::vector<std::string>& texts) {
  std::size_t day_only = 0;
  std::size_t month_only = 0;
  std::size_t with_points = 0;
  std::size_t either = 0;
  std::size_t steps_back_day = 0;
  std::size_t steps_back_month = 0;
  std::optional<WrittenDate> before;
  for (const std::string& text : texts) {
    const auto date = date_written(text);
    if (!date) continue;
    if (!date->month_first) ++day_only;
    if (!date->day_first) ++month_only;
    if (!date->day_first || !date->month_first) continue;
    if (*date->day_first != *date->month_first) {
      ++either;
      if (text.find('.') != std::string::npos) ++with_points;
    }
    if (before) {
      if (*date->day_first < *before->day_first) ++steps_back_day;
      if (*date->month_first < *before->month_first) ++steps_back_month;
    }
    before = date;
  }
  if (day_only != month_only && (day_only == 0 || month_only == 0))
    return {day_only > 0 ? DateOrder::day_first : DateOrder::month_first, false};
  OrderGuess guess;
  guess.asked = either > 0;
  if (day_only + month_only > 0)
    guess.order = month_only > day_only ? DateOrder::month_first : DateOrder::day_first;
  else if (with_points == 0 && steps_back_month < steps_back_day)
    guess.order = DateOrder::month_first;
  return guess;
}

}  // namespace shimwright
