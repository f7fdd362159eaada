// SPDX-License-Identifier: MPL-2.0
//
// The straight line through points by least squares: what a valve's checks say of its drift when
// x is distance and y is clearance + shim.
//   slope = Sxy / Sxx,  residual sd s = sqrt(SSE / (n - 2)),  error of the slope = s / sqrt(Sxx)
// with sums of squares about the means (any textbook of regression; checked on NIST StRD). Units
// are the caller's; the order of the points does not matter.
//
// Distances may be large and their differences small: the sums are of differences from the means,
// which a first pass finds (Chan, Golub & LeVeque, The American Statistician 37, 1983), and keep
// what rounding would drop (sum.hpp).
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace shimwright {

struct Point {
  double x = 0;
  double y = 0;
};

struct Line {
  std::size_t n = 0;
  double slope = 0;
  double slope_error = 0;    // standard error of the slope
  double residual_sd = 0;    // with n - 2 degrees of freedom
  std::optional<double> r2;  // share of the scatter in y that the line explains; none where y
                             // never changes
  double mean_x = 0;         // the line goes through the means
  double mean_y = 0;
  double sxx = 0;  // sum of (x - mean_x)^2

  double at(double x) const { return mean_y + slope * (x - mean_x); }
  double intercept() const { return mean_y - slope * mean_x; }
  double degrees() const { return static_cast<double>(n) - 2; }
};

// None for fewer than three points, or where all have one x. Coordinates up to 1e150. Time grows
// with n.
std::optional<Line> fit_line(std::span<const Point> points);

}  // namespace shimwright
