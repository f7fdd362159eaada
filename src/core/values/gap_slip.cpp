// SPDX-License-Identifier: MPL-2.0
#include "core/values/gap_slip.hpp"

namespace shimwright {
namespace {

// Common practice, no source.
constexpr int likely_times_largest = 2;
constexpr int likely_parts_of_smallest = 5;
constexpr int never_times_largest = 3;

}  // namespace

GapSlip likely_slip(Length gap, const Limits& limits) {
  if (limits.max > Length() && gap >= likely_times_largest * limits.max) return GapSlip::too_large;
  if (gap > Length() && likely_parts_of_smallest * gap <= limits.min) return GapSlip::too_small;
  return GapSlip::none;
}

bool cannot_be_right(Length gap, const Limits& limits) {
  return limits.max > Length() && gap >= never_times_largest * limits.max;
}

}  // namespace shimwright
