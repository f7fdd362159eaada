// SPDX-License-Identifier: MPL-2.0
#include "core/values/length.hpp"

#include <array>
#include <charconv>
#include <cmath>

#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr double largest_nm = largest_length_mm * 1e6;

double nanometres_in(Unit unit) {
  switch (unit) {
    case Unit::mm:
      return 1e6;
    case Unit::inch:
      return 25.4e6;
    case Unit::thou:
      return 25.4e3;
    case Unit::um:
      return 1e3;
  }
  return 1e6;
}

}  // namespace

Length Length::of(double value, Unit unit) {
  if (!std::isfinite(value)) throw BadInput("a length is not a finite number");
  const double nm = value * nanometres_in(unit);
  if (std::abs(nm) > largest_nm)
    throw BadInput("a length of " + text_of(nm / 1e6) +
                   " mm is beyond the 100 mm that any shim or clearance could have");
  return Length(std::llround(nm));
}

std::optional<Unit> unit_named(std::string_view name) {
  struct Name {
    std::string_view text;
    Unit unit;
  };
  // Both the micro sign and the Greek letter mu are typed for a micrometre.
  static constexpr std::array<Name, 11> names{{{"mm", Unit::mm},
                                               {"in", Unit::inch},
                                               {"in.", Unit::inch},
                                               {"inch", Unit::inch},
                                               {"\"", Unit::inch},
                                               {"\u2033", Unit::inch},
                                               {"thou", Unit::thou},
                                               {"um", Unit::um},
                                               {"\u00b5m", Unit::um},
                                               {"\u03bcm", Unit::um},
                                               {"micron", Unit::um}}};
  const std::string wanted = lower_case(trimmed(name));
  for (const Name& candidate : names)
    if (candidate.text == wanted) return candidate.unit;
  return std::nullopt;
}

std::optional<double> number_written(std::string_view text) {
  std::string plain(trimmed(text));
  if (plain.find_first_not_of("+-.,0123456789") != std::string::npos) return std::nullopt;
  if (plain.find_first_of(".,") != plain.find_last_of(".,")) return std::nullopt;
  if (const auto comma = plain.find(','); comma != std::string::npos) plain[comma] = '.';
  if (plain.starts_with('+')) {
    plain.erase(0, 1);
    if (plain.starts_with('-')) return std::nullopt;
  }
  double value = 0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
  if (error != std::errc() || end != plain.data() + plain.size()) return std::nullopt;
  return value;
}

std::optional<Length> length_written(std::string_view text, Unit bare) {
  text = trimmed(text);
  const auto after_number = text.find_first_not_of("+-.,0123456789");
  const auto number = number_written(text.substr(0, after_number));
  if (!number) return std::nullopt;
  if (after_number == std::string_view::npos) return Length::of(*number, bare);
  const auto unit = unit_named(text.substr(after_number));
  if (!unit) return std::nullopt;
  return Length::of(*number, *unit);
}

std::string text_of(Length length) {
  std::string digits = std::to_string(abs(length).nanometres());
  if (digits.size() < 7) digits.insert(0, 7 - digits.size(), '0');
  digits.insert(digits.size() - 6, 1, '.');
  while (digits.ends_with('0') && digits.size() - digits.find('.') > 3) digits.pop_back();
  return (length < Length() ? "-" : "") + digits + " mm";
}

}  // namespace shimwright
