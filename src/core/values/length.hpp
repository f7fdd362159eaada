// SPDX-License-Identifier: MPL-2.0
//
// A length: a clearance, a shim's thickness, a limit. Whole nanometres inside, so that 0.16 mm
// read from a cell is exactly the 0.16 mm it is compared with. The inch is 25.4 mm exactly
// (NIST SP 811, appendix B.8), hence 0.001 in is a whole number of nanometres too.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace shimwright {

enum class Unit { mm, inch, thou, um };

class Length {
 public:
  constexpr Length() = default;

  static constexpr Length nanometres(std::int64_t count) { return Length(count); }

  // The nearest whole nanometre to `value` in `unit`. Throws BadInput for NaN, infinity, and
  // anything beyond 100 mm either way: no clearance or shim is of that size.
  static Length of(double value, Unit unit = Unit::mm);

  constexpr std::int64_t nanometres() const { return nanometres_; }
  // The double nearest to the length in mm, so that 2.75 goes in and 2.75 comes out.
  constexpr double mm() const { return static_cast<double>(nanometres_) / 1e6; }

  constexpr auto operator<=>(const Length&) const = default;
  constexpr Length operator-() const { return Length(-nanometres_); }
  constexpr Length& operator+=(Length other) {
    nanometres_ += other.nanometres_;
    return *this;
  }
  friend constexpr Length operator+(Length a, Length b) {
    return Length(a.nanometres_ + b.nanometres_);
  }
  friend constexpr Length operator-(Length a, Length b) {
    return Length(a.nanometres_ - b.nanometres_);
  }
  friend constexpr Length operator*(std::int64_t times, Length a) {
    return Length(times * a.nanometres_);
  }

 private:
  constexpr explicit Length(std::int64_t count) : nanometres_(count) {}

  std::int64_t nanometres_ = 0;
};

constexpr Length abs(Length length) { return length < Length() ? -length : length; }

inline namespace literals {
// For code and tests: 0.16_mm.
consteval Length operator""_mm(long double value) {
  return Length::nanometres(static_cast<std::int64_t>(value * 1e6L + (value < 0 ? -0.5L : 0.5L)));
}
}  // namespace literals

// `mm`, `in` (also `"` and `inch`), `thou`, `um` (also `µm`), in any case; empty for anything else.
std::optional<Unit> unit_named(std::string_view name);

// A length as a person writes it: a decimal number with a comma or a point, then a unit or none
// (`0.004 in`, `4 thou`, `0,10 mm`, `.108"`, `250 µm`). `bare` is the unit of a number alone.
// Empty where the text is no length; throws BadInput where it is one that cannot be (Length::of).
std::optional<Length> length_written(std::string_view text, Unit bare = Unit::mm);

// A plain decimal number with a comma or a point as decimal mark, spaces around it allowed; no
// thousands separator, no exponent. Empty where the text is anything else.
std::optional<double> number_written(std::string_view text);

// For messages: `0.16 mm`, as many decimals as it has, at least two.
std::string text_of(Length length);

}  // namespace shimwright
