// SPDX-License-Identifier: MPL-2.0
#include "core/drift/line.hpp"

#include <algorithm>
#include <cmath>

#include "core/drift/sum.hpp"

namespace shimwright {

std::optional<Line> fit_line(std::span<const Point> points) {
  if (points.size() < 3) return std::nullopt;
  const auto n = static_cast<double>(points.size());

  // Differences from the first point are right to the last digit, however far away it is.
  const Point first = points.front();
  Sum sum_x;
  Sum sum_y;
  for (const Point& point : points) {
    sum_x.add(point.x - first.x);
    sum_y.add(point.y - first.y);
  }
  const Point mean{sum_x.value() / n, sum_y.value() / n};
  const auto centred = [&](const Point& point) {
    return Point{(point.x - first.x) - mean.x, (point.y - first.y) - mean.y};
  };

  Sum xx;
  Sum xy;
  Sum yy;
  for (const Point& point : points) {
    const auto [x, y] = centred(point);
    xx.add(x * x);
    xy.add(x * y);
    yy.add(y * y);
  }
  if (!(xx.value() > 0)) return std::nullopt;

  Line line;
  line.n = points.size();
  line.mean_x = first.x + mean.x;
  line.mean_y = first.y + mean.y;
  line.sxx = xx.value();
  line.slope = xy.value() / line.sxx;
  Sum squares;
  for (const Point& point : points) {
    const auto [x, y] = centred(point);
    const double residual = y - line.slope * x;
    squares.add(residual * residual);
  }
  line.residual_sd = std::sqrt(squares.value() / line.degrees());
  line.slope_error = line.residual_sd / std::sqrt(line.sxx);
  if (yy.value() > 0) line.r2 = std::max(0.0, 1 - squares.value() / yy.value());
  return line;
}

}  // namespace shimwright
