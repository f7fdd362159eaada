// SPDX-License-Identifier: MPL-2.0
#include "core/drift/prediction.hpp"

#include <algorithm>
#include <cmath>

namespace shimwright {
namespace {

double constant_part(const Line& line, Scatter scatter) {
  const double of_line = 1 / static_cast<double>(line.n);
  return scatter == Scatter::of_a_reading ? 1 + of_line : of_line;
}

}  // namespace

double distance_from_line(const Line& line, const Bound& bound, double x) {
  const double from_mean = x - line.mean_x;
  return bound.t * line.residual_sd *
         std::sqrt(constant_part(line, bound.scatter) + from_mean * from_mean / line.sxx);
}

double bound_at(const Line& line, const Bound& bound, double x) {
  const double away = distance_from_line(line, bound, x);
  return bound.side == Bound::Side::below ? line.at(x) - away : line.at(x) + away;
}

// With d = x - mean x, room a + b d between line and level, and q = t s / sqrt(Sxx), the slope that
// the bound has far out against the line, the bound meets the level where
//   a + b d = q sqrt(k Sxx + d^2).
// The left side less the right is concave, so from where it is positive it reaches zero once at
// most, and does where b < q: at the root (-ab - w) / (b^2 - q^2), w = q sqrt(a^2 + k Sxx (b^2 -
// q^2)), of the squared equation, which is (a^2 - q^2 k Sxx) / (w - ab) and so none of the second
// degree where b^2 = q^2.
std::optional<double> first_meeting(const Line& line, const Bound& bound, double level,
                                    double from) {
  const double sign = bound.side == Bound::Side::below ? 1 : -1;
  const double a = sign * (line.mean_y - level);
  const double b = sign * line.slope;
  if (sign * (bound_at(line, bound, from) - level) <= 0) return from;
  const double q = bound.t * line.residual_sd / std::sqrt(line.sxx);
  if (b >= q) return std::nullopt;
  const double k_sxx = constant_part(line, bound.scatter) * line.sxx;
  const double w = q * std::sqrt(std::max(0.0, a * a + k_sxx * (b - q) * (b + q)));
  const double from_mean = (a * a - q * q * k_sxx) / (w - a * b);
  const double x = std::max(from, line.mean_x + from_mean);
  return std::isfinite(x) ? std::optional(x) : std::nullopt;
}

}  // namespace shimwright
