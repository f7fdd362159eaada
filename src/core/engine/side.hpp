// SPDX-License-Identifier: MPL-2.0
//
// The two sides of a cylinder: where the charge comes in, and where it leaves.
#pragma once

#include <string>

namespace shimwright {

enum class Side { inlet, exhaust };

// `exhaust`, `inlet`.
inline std::string word_for(Side side) { return side == Side::exhaust ? "exhaust" : "inlet"; }

}  // namespace shimwright
