// SPDX-License-Identifier: MPL-2.0
//
// The line through medians: a slip of one reading, which pulls the least squares line its way,
// hardly moves it. The slope is the median of the slopes of all pairs (H. Theil 1950; P. K. Sen,
// J. Amer. Statist. Assoc. 63, 1968, pp. 1379-1389); the line goes through the medians of x and y.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/drift/line.hpp"

namespace shimwright {

// Beyond it the office would stand still for longer than a person waits.
inline constexpr std::size_t longest_median_line = 100'000;

struct MedianLine {
  std::size_t n = 0;
  double slope = 0;
  double slope_error = 0;    // half the width of the slope's interval of one standard error
  double intercept = 0;      // median y - slope * median x
  double residual_sd = 0;    // 1.4826 * median |residual - median residual|: the standard deviation
                             // of residuals that are normal
  std::optional<double> r2;  // as of Line, so it may be negative; none where y never changes
};

struct SlopeInterval {
  double low = 0;
  double high = 0;
};

// None for fewer than three points, or where all have one x. Throws BadInput for more than
// `longest_median_line` points. Time: pair_slopes.hpp.
std::optional<MedianLine> fit_median_line(std::span<const Point> points);

// The slope's interval by Kendall's S, as Sen has it: of N slopes, ascending, those of rank
//   round((N - z sigma) / 2) and its counterpart from above, at least the first and the last,
//   sigma^2 = (n (n-1) (2n+5) - sum of u (u-1) (2u+5) over groups of u equal x) / 18
// `z` is the normal quantile: 1 for 68.27 %, 1.96 for 95 %. Equal y count as they come. None and
// BadInput as above.
std::optional<SlopeInterval> slope_interval(std::span<const Point> points, double z);

}  // namespace shimwright
