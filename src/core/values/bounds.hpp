// SPDX-License-Identifier: MPL-2.0
//
// Beyond these a number is a slip of the hand, not a value (common practice, no source).
#pragma once

namespace shimwright {

inline constexpr double largest_length_mm = 100;  // of any clearance or shim
inline constexpr double largest_sum = 1e6;        // of money
inline constexpr double most_shims = 1e6;         // of one size
inline constexpr double largest_distance = 1e11;  // in any unit

}  // namespace shimwright
