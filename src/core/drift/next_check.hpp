// SPDX-License-Identifier: MPL-2.0
//
// When to look at the whole engine again: the earliest cautious distance of its valves, as a person
// would write it, never beyond the manual's interval and never before the last check.
#pragma once

#include <optional>

namespace shimwright {

struct NextCheck {
  double at = 0;
  bool by_manual = false;  // the interval ends first
};

// Down to a whole number of steps of 1, 2 or 5 times a power of ten; the step is at most a tenth of
// the way from `from`, so that no more than a tenth of it is given away. `from` where `distance`
// lies no further.
double rounded_down(double distance, double from);

// None where neither a cautious distance nor an interval is known. `last` is the distance of the
// last check, from which the interval (above 0) counts.
std::optional<NextCheck> next_check(double last, std::optional<double> cautious,
                                    std::optional<double> interval);

}  // namespace shimwright
