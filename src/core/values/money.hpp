// SPDX-License-Identifier: MPL-2.0
//
// Money as whole thousandths of the currency's unit, the smallest minor unit in use (three
// decimals, ISO 4217), so that sums are exact and equal plans compare equal.
#pragma once

#include <compare>
#include <cstdint>

namespace shimwright {

class Money {
 public:
  constexpr Money() = default;

  static constexpr Money thousandths(std::int64_t count) { return Money(count); }

  // Throws BadInput for NaN, infinity, a negative sum and more than a million.
  static Money of(double amount);

  constexpr std::int64_t thousandths() const { return thousandths_; }
  constexpr double amount() const { return static_cast<double>(thousandths_) / 1e3; }

  constexpr auto operator<=>(const Money&) const = default;
  constexpr Money& operator+=(Money other) {
    thousandths_ += other.thousandths_;
    return *this;
  }
  friend constexpr Money operator+(Money a, Money b) {
    return Money(a.thousandths_ + b.thousandths_);
  }
  friend constexpr Money operator*(std::int64_t times, Money a) {
    return Money(times * a.thousandths_);
  }

 private:
  constexpr explicit Money(std::int64_t count) : thousandths_(count) {}

  std::int64_t thousandths_ = 0;
};

}  // namespace shimwright
