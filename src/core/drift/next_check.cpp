// SPDX-License-Identifier: MPL-2.0
#include "core/drift/next_check.hpp"

#include <algorithm>
#include <cmath>

namespace shimwright {

double rounded_down(double distance, double from) {
  if (!(distance > from)) return from;
  const double most = (distance - from) / 10;
  double step = std::pow(10, std::floor(std::log10(most)));
  for (const double times : {5.0, 2.0})
    if (times * step <= most) {
      step *= times;
      break;
    }
  // Below a whole unit a step divides one evenly: its number is whole, and the quotient exact.
  const double rounded = step >= 1 ? std::floor(distance / step) * step
                                   : std::floor(distance / step) / std::round(1 / step);
  return std::max(from, rounded);
}

std::optional<NextCheck> next_check(double last, std::optional<double> cautious,
                                    std::optional<double> interval) {
  if (!cautious && !interval) return std::nullopt;
  if (!cautious) return NextCheck{last + *interval, true};
  const double at = rounded_down(*cautious, last);
  if (interval && last + *interval < at) return NextCheck{last + *interval, true};
  return NextCheck{at, false};
}

}  // namespace shimwright
