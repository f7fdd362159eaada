// SPDX-License-Identifier: MPL-2.0
//
// Beyond these a number is a slip of the hand, not a value (common practice, no source).
#pragma once

namespace shimwright {

inline constexpr double largest_length_mm = 100;  // of any clearance or shim
inline constexpr double largest_sum = 1e6;        // of money
inline constexpr double most_shims = 1e6;         // of one size
inline constexpr double largest_distance = 1e11;  // in any unit

// Of an engine, in degrees Celsius: left out in the worst frost, and hotter than oil ever is.
inline constexpr double coldest_engine = -60;
inline constexpr double hottest_engine = 200;

// False for what is no number.
constexpr bool can_be_of_an_engine(double celsius) {
  return celsius >= coldest_engine && celsius <= hottest_engine;
}

}  // namespace shimwright
