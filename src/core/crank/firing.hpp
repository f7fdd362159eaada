// SPDX-License-Identifier: MPL-2.0
//
// When each cylinder fires, as the manual writes it: an order such as `1-3-4-2` for an engine that
// fires at even intervals, or crank angles for one that does not (V-twins, cross-plane cranks). A
// four-stroke cylinder fires once in two turns of the crank, 720°, so n cylinders that fire evenly
// do so every 720°/n. All angles count from cylinder 1's firing dead centre, the way the engine
// turns: the top dead centre at which its charge burns and both its valves are shut.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

namespace shimwright {

// An angle of the crank. Counted in whole parts of which a degree has 1 001 000, so that every
// thousandth of a degree and every even interval (720°/n, n up to 16) is a whole number of parts
// and no answer depends on binary fractions.
class CrankAngle {
 public:
  constexpr CrankAngle() = default;

  static constexpr std::int64_t parts_in_degree = 1'001'000;
  static constexpr CrankAngle parts(std::int64_t count) { return CrankAngle(count); }

  // The nearest whole part. Throws BadInput for NaN, infinity, and anything beyond a whole cycle
  // of 720° either way.
  static CrankAngle of(double degrees);

  constexpr std::int64_t parts() const { return parts_; }
  constexpr double degrees() const {
    return static_cast<double>(parts_) / static_cast<double>(parts_in_degree);
  }
  // The same place in the cycle, from 0 to just under 720°.
  constexpr CrankAngle in_cycle() const;

  constexpr auto operator<=>(const CrankAngle&) const = default;
  friend constexpr CrankAngle operator+(CrankAngle a, CrankAngle b) {
    return CrankAngle(a.parts_ + b.parts_);
  }
  friend constexpr CrankAngle operator-(CrankAngle a, CrankAngle b) {
    return CrankAngle(a.parts_ - b.parts_);
  }

 private:
  constexpr explicit CrankAngle(std::int64_t count) : parts_(count) {}

  std::int64_t parts_ = 0;
};

inline namespace literals {
// For code and tests: 180_deg.
consteval CrankAngle operator""_deg(unsigned long long degrees) {
  return CrankAngle::parts(static_cast<std::int64_t>(degrees) * CrankAngle::parts_in_degree);
}
}  // namespace literals

// Two turns of the crank, in which every cylinder fires once.
inline constexpr CrankAngle whole_cycle = 720_deg;

constexpr CrankAngle CrankAngle::in_cycle() const {
  const std::int64_t rest = parts_ % whole_cycle.parts_;
  return CrankAngle(rest < 0 ? rest + whole_cycle.parts_ : rest);
}

struct FiringRow {
  double cylinder;  // as entered; it must be whole
  double angle;     // crank degrees after cylinder 1's firing dead centre, 0 to 720
};

class Firing {
 public:
  static constexpr int most_cylinders = 16;

  // Even firing from an order: cylinders' numbers with a hyphen, a dash, a comma, a semicolon, a
  // slash or a space between. Throws BadInput where a cylinder is left out or named twice, where a
  // number is none of a cylinder's, and beyond 16 cylinders. `cylinders` is how many the engine
  // has, where that is known; else as many as the highest number named.
  static Firing in_order(std::string_view text, std::optional<int> cylinders = std::nullopt);

  // Firing by angles, the rows in any order; cylinders may fire together. Throws BadInput as
  // above, and where an angle is outside 0 to 720 or cylinder 1's is not 0 (or 720).
  static Firing at_angles(std::span<const FiringRow> rows,
                          std::optional<int> cylinders = std::nullopt);

  int cylinders() const { return static_cast<int>(angles_.size()); }
  // From 0 to just under 720°. `cylinder` counts from 1.
  CrankAngle angle_of(int cylinder) const {
    return angles_.at(static_cast<std::size_t>(cylinder) - 1);
  }

 private:
  explicit Firing(std::vector<CrankAngle> angles) : angles_(std::move(angles)) {}

  std::vector<CrankAngle> angles_;  // of cylinder 1, 2 and so on
};

}  // namespace shimwright
