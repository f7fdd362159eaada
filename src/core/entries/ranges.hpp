// SPDX-License-Identifier: MPL-2.0
//
// What an entry may be at most: wider than any engine has it, so that only slips are refused (a
// unit mistaken, a decimal mark left out). Common practice, no source.
#pragma once

#include "core/values/length.hpp"

namespace shimwright::ranges {

inline constexpr Length widest_clearance = 5.0_mm;

// A clearance above this is unusual: asked about, not refused.
inline constexpr Length usual_clearance = 2.0_mm;

inline constexpr Length thinnest_shim = 0.3_mm;
inline constexpr Length thickest_shim = 20.0_mm;

// From one size on sale to the next.
inline constexpr Length finest_step = 0.001_mm;
inline constexpr Length widest_step = 5.0_mm;

}  // namespace shimwright::ranges
