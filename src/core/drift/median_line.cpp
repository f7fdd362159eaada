// SPDX-License-Identifier: MPL-2.0
#include "core/drift/median_line.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

#include "core/drift/pair_slopes.hpp"
#include "core/drift/sum.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

constexpr double normal_over_mad = 1.4826;  // 1 / (normal quantile of 0.75)

double median_of(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  if (values.size() % 2 == 1) return *middle;
  return std::midpoint(*std::max_element(values.begin(), middle), *middle);
}

std::vector<double> all_of(std::span<const Point> points, double Point::*coordinate) {
  std::vector<double> values;
  values.reserve(points.size());
  for (const Point& point : points) values.push_back(point.*coordinate);
  return values;
}

// Kendall's variance of S; equal x say nothing.
double variance_of_s(std::span<const Point> points) {
  const auto term = [](double count) { return count * (count - 1) * (2 * count + 5); };
  std::vector<double> x = all_of(points, &Point::x);
  std::ranges::sort(x);
  double sum = term(static_cast<double>(x.size()));
  for (auto first = x.begin(); first != x.end();) {
    const auto end = std::upper_bound(first, x.end(), *first);
    sum -= term(static_cast<double>(end - first));
    first = end;
  }
  return sum / 18;
}

std::int64_t lower_rank(std::span<const Point> points, std::int64_t slopes, double z) {
  const double reach = z * std::sqrt(variance_of_s(points));
  return std::max<std::int64_t>(1, std::llround((static_cast<double>(slopes) - reach) / 2));
}

void check_count(std::span<const Point> points) {
  if (points.size() > longest_median_line)
    throw BadInput(std::to_string(points.size()) +
                   " checks are too many for the method median: at most " +
                   std::to_string(longest_median_line) + "; the method least takes them");
}

struct Slopes {
  double median = 0;
  SlopeInterval interval;
};

std::optional<Slopes> slopes_of(std::span<const Point> points, double z) {
  check_count(points);
  if (points.size() < 3) return std::nullopt;
  PairSlopes slopes(points);
  const std::int64_t count = slopes.count();
  if (count == 0) return std::nullopt;
  const std::int64_t low = lower_rank(points, count, z);
  const std::array ranks{low, (count + 1) / 2, count / 2 + 1, count + 1 - low};
  const std::vector<double> found = slopes.of_ranks(ranks);
  return Slopes{std::midpoint(found[1], found[2]), {found[0], found[3]}};
}

}  // namespace

std::optional<SlopeInterval> slope_interval(std::span<const Point> points, double z) {
  const auto slopes = slopes_of(points, z);
  return slopes ? std::optional(slopes->interval) : std::nullopt;
}

std::optional<MedianLine> fit_median_line(std::span<const Point> points) {
  const auto slopes = slopes_of(points, 1);
  if (!slopes) return std::nullopt;
  const Point middle{median_of(all_of(points, &Point::x)), median_of(all_of(points, &Point::y))};

  // About the medians, so that large distances cost no digits.
  std::vector<double> residuals;
  residuals.reserve(points.size());
  Sum sum_y;
  Sum squares;
  for (const Point& point : points) {
    residuals.push_back((point.y - middle.y) - slopes->median * (point.x - middle.x));
    squares.add(residuals.back() * residuals.back());
    sum_y.add(point.y - middle.y);
  }
  const double mean_y = sum_y.value() / static_cast<double>(points.size());
  Sum yy;
  for (const Point& point : points) {
    const double y = (point.y - middle.y) - mean_y;
    yy.add(y * y);
  }

  MedianLine line;
  line.n = points.size();
  line.slope = slopes->median;
  line.slope_error = (slopes->interval.high - slopes->interval.low) / 2;
  line.intercept = middle.y - line.slope * middle.x;
  if (yy.value() > 0) line.r2 = 1 - squares.value() / yy.value();
  const double centre = median_of(residuals);
  for (double& residual : residuals) residual = std::abs(residual - centre);
  line.residual_sd = normal_over_mad * median_of(std::move(residuals));
  return line;
}

}  // namespace shimwright
