// SPDX-License-Identifier: MPL-2.0
#include "core/drift/pair_slopes.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <numeric>

namespace shimwright {
namespace {

constexpr double steepest = 1e250;  // so that no product overflows

// Whole numbers in the order of the doubles, and back.
std::int64_t place_of(double value) {
  const auto bits = std::bit_cast<std::int64_t>(value);
  return bits < 0 ? std::numeric_limits<std::int64_t>::min() - bits : bits;
}

double value_at(std::int64_t place) {
  return std::bit_cast<double>(place < 0 ? std::numeric_limits<std::int64_t>::min() - place
                                         : place);
}

std::int64_t pairs_of(std::size_t count) {
  const auto n = static_cast<std::int64_t>(count);
  return n * (n - 1) / 2;
}

// Pairs at one x, in points by x.
std::int64_t pairs_without_slope(const std::vector<Point>& points) {
  std::int64_t pairs = 0;
  for (auto first = points.begin(); first != points.end();) {
    const auto end = std::find_if(first, points.end(),
                                  [x = first->x](const Point& point) { return point.x != x; });
    pairs += pairs_of(static_cast<std::size_t>(end - first));
    first = end;
  }
  return pairs;
}

}  // namespace

PairSlopes::PairSlopes(std::span<const Point> points, std::size_t listed_up_to)
    : points_(points.begin(), points.end()) {
  std::ranges::sort(points_, [](const Point& a, const Point& b) {
    return a.x < b.x || (a.x == b.x && a.y < b.y);
  });
  count_ = pairs_of(points_.size()) - pairs_without_slope(points_);
  if (points_.size() <= listed_up_to) list();
}

void PairSlopes::list() {
  slopes_.reserve(static_cast<std::size_t>(count_));
  for (std::size_t i = 0; i < points_.size(); ++i)
    for (std::size_t j = i + 1; j < points_.size(); ++j)
      if (points_[i].x != points_[j].x)
        slopes_.push_back((points_[j].y - points_[i].y) / (points_[j].x - points_[i].x));
  std::ranges::sort(slopes_);
}

std::vector<double> PairSlopes::of_ranks(std::span<const std::int64_t> ranks) {
  std::vector<double> found;
  if (!slopes_.empty()) {
    for (const std::int64_t rank : ranks)
      found.push_back(slopes_[static_cast<std::size_t>(rank - 1)]);
    return found;
  }
  heights_.resize(points_.size());
  merged_.resize(points_.size());
  narrow(place_of(-steepest), place_of(steepest), ranks, found);
  return found;
}

// The ranks lie above the count at `below`, and not above that at `up_to`.
void PairSlopes::narrow(std::int64_t below, std::int64_t up_to, std::span<const std::int64_t> ranks,
                        std::vector<double>& found) {
  if (ranks.empty()) return;
  if (below + 1 == up_to) {
    found.insert(found.end(), ranks.size(), value_at(up_to));
    return;
  }
  const std::int64_t middle = std::midpoint(below, up_to);
  const std::int64_t reached = count_up_to(value_at(middle));
  const auto split =
      static_cast<std::size_t>(std::ranges::upper_bound(ranks, reached) - ranks.begin());
  narrow(below, middle, ranks.first(split), found);
  narrow(middle, up_to, ranks.subspan(split), found);
}

// Exact but for the last of 106 bits (T. J. Dekker, Numer. Math. 18, 1971, pp. 224-242; the
// product's error by a fused multiply-add).
PairSlopes::Height PairSlopes::height_of(const Point& point, double slope) {
  const double product = slope * point.x;
  const double product_error = std::fma(slope, point.x, -product);
  const double difference = point.y - product;
  const double taken = difference - point.y;
  const double difference_error = (point.y - (difference - taken)) - (product + taken);
  const double low = difference_error - product_error;
  const double high = difference + low;
  return {high, low - (high - difference), point.x};
}

std::int64_t PairSlopes::count_up_to(double slope) {
  std::ranges::transform(points_, heights_.begin(),
                         [slope](const Point& point) { return height_of(point, slope); });
  const std::size_t n = heights_.size();
  std::int64_t inversions = 0;
  for (std::size_t width = 1; width < n; width *= 2) {
    for (std::size_t begin = 0; begin < n; begin += 2 * width) {
      const std::size_t middle = std::min(begin + width, n);
      const std::size_t end = std::min(begin + 2 * width, n);
      std::size_t left = begin;
      std::size_t right = middle;
      for (std::size_t at = begin; at < end; ++at) {
        const bool from_left =
            right == end || (left < middle && !(heights_[right] < heights_[left]));
        if (!from_left) inversions += static_cast<std::int64_t>(middle - left);
        merged_[at] = heights_[from_left ? left++ : right++];
      }
    }
    heights_.swap(merged_);
  }
  return inversions;
}

}  // namespace shimwright
