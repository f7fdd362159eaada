// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/written_distance.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

// All kinds of spaces and apostrophes between thousands as one blank each.
std::string with_plain_blanks(std::string_view text) {
  static constexpr std::array<std::string_view, 5> blanks{"\u00a0", "\u202f", "\u2009", "\u2019",
                                                          "'"};
  std::string plain;
  while (!text.empty()) {
    const auto blank =
        std::ranges::find_if(blanks, [&](std::string_view one) { return text.starts_with(one); });
    plain += blank == blanks.end() ? text.front() : ' ';
    text.remove_prefix(blank == blanks.end() ? 1 : blank->size());
  }
  return std::string(trimmed(plain));
}

std::size_t figures_behind(std::string_view number, std::size_t at) {
  const std::size_t end = number.find_first_not_of(all_figures, at + 1);
  return (end == std::string_view::npos ? number.size() : end) - at - 1;
}

// The number at the beginning of the text, and what stands behind it.
std::pair<std::string_view, std::string_view> split(std::string_view text) {
  const std::size_t end = text.find_first_not_of("+-0123456789., ");
  if (end == std::string_view::npos) return {trimmed(text), {}};
  return {trimmed(text.substr(0, end)), trimmed(text.substr(end))};
}

// Where the decimals begin; npos where there are none.
std::size_t decimals_in(std::string_view number, char decimal_mark) {
  const std::size_t last = number.find_last_of(".,");
  if (last == std::string_view::npos) return last;
  const std::size_t first = number.find_first_of(".,");
  if (number[first] != number[last]) return last;               // `12.500,5`
  if (first != last) return std::string_view::npos;             // `1.250.000`
  if (number.find(' ') != std::string_view::npos) return last;  // `12 500.5`
  if (number[last] == decimal_mark) return last;
  const bool thousands =
      figures_behind(number, last) == 3 && last >= 1 && last <= 3 && number.front() != '0';
  return thousands ? std::string_view::npos : last;
}

}  // namespace

std::optional<DistanceUnit> distance_unit_named(std::string_view word) {
  struct Name {
    std::string_view text;
    DistanceUnit unit;
  };
  static constexpr std::array<Name, 13> names{{{"km", DistanceUnit::km},
                                               {"kms", DistanceUnit::km},
                                               {"kilometres", DistanceUnit::km},
                                               {"kilometers", DistanceUnit::km},
                                               {"mi", DistanceUnit::miles},
                                               {"mi.", DistanceUnit::miles},
                                               {"mile", DistanceUnit::miles},
                                               {"miles", DistanceUnit::miles},
                                               {"h", DistanceUnit::hours},
                                               {"hr", DistanceUnit::hours},
                                               {"hrs", DistanceUnit::hours},
                                               {"hour", DistanceUnit::hours},
                                               {"hours", DistanceUnit::hours}}};
  const std::string wanted = lower_case(trimmed(word));
  for (const Name& name : names)
    if (name.text == wanted) return name.unit;
  return std::nullopt;
}

char decimal_mark_in(const std::vector<std::string>& texts) {
  for (const std::string& text : texts) {
    const std::string plain = with_plain_blanks(text);
    const auto [number, unit] = split(plain);
    const std::size_t at = decimals_in(number, 0);
    if (at != std::string_view::npos) return number[at];
  }
  return 0;
}

std::optional<WrittenDistance> distance_written(std::string_view text, char decimal_mark) {
  const std::string plain = with_plain_blanks(text);
  const auto [number, word] = split(plain);
  WrittenDistance written;
  if (!word.empty() && !(written.unit = distance_unit_named(word))) return std::nullopt;
  const std::size_t decimals = decimals_in(number, decimal_mark);
  std::string digits;
  for (std::size_t i = 0; i < number.size(); ++i) {
    const char c = number[i];
    if (is_digit(c) || (c == '-' && i == 0))
      digits += c;
    else if (i == decimals)
      digits += '.';
    else if (c == '+' && i == 0)
      continue;
    else if (c == '+' || c == '-' || i == 0 || !is_digit(number[i - 1]) ||
             figures_behind(number, i) != 3)
      return std::nullopt;  // no thousands behind it
  }
  const char* end = digits.data() + digits.size();
  const auto [stop, error] = std::from_chars(digits.data(), end, written.count);
  if (error != std::errc() || stop != end) return std::nullopt;
  return written;
}

std::optional<double> converted(double count, DistanceUnit from, DistanceUnit to) {
  constexpr double km_a_mile = 1.609344;
  if (from == to) return count;
  if (from == DistanceUnit::hours || to == DistanceUnit::hours) return std::nullopt;
  return from == DistanceUnit::miles ? count * km_a_mile : count / km_a_mile;
}

}  // namespace shimwright
