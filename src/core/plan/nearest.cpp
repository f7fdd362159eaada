// SPDX-License-Identifier: MPL-2.0
#include "core/plan/nearest.hpp"

#include <algorithm>

namespace shimwright {

Length outside_by(Length clearance, const Limits& limits) {
  return std::max(Length(), -margin_of(clearance, limits));
}

std::optional<ShimRange> nearer_shims(Length clearance, Length shim, const Limits& limits) {
  constexpr Length least = Length::nanometres(1);
  const Length now = outside_by(clearance, limits);
  if (now == Length()) return std::nullopt;
  const Length filled = clearance + shim;  // by gap and shim together, whichever shim it is
  const Length thinnest = std::max(least, filled - limits.max - now + least);
  // Where the smallest clearance allowed is 0, one of 0 is inside.
  const Length leaves_a_gap = limits.min == Length() ? filled : filled - least;
  const Length thickest = std::min(leaves_a_gap, filled - limits.min + now - least);
  if (thinnest > thickest) return std::nullopt;
  return ShimRange{thinnest, thickest};
}

std::optional<Length> nearest_listed(const Valve& valve, std::span<const Stock> stock) {
  if (!valve.clearance || !valve.shim) return std::nullopt;
  const auto range = nearer_shims(*valve.clearance, *valve.shim, valve.limits);
  if (!range) return std::nullopt;
  const auto left_outside = [&valve](Length size) {
    return outside_by(clearance_after(*valve.clearance, *valve.shim, size), valve.limits);
  };
  std::optional<Length> nearest;
  for (const Stock& one : stock) {
    if (one.series != valve.series || one.count == 0) continue;
    if (one.size < range->thinnest || one.size > range->thickest) continue;
    const Length outside = left_outside(one.size);
    if (outside == Length()) return std::nullopt;
    if (!nearest || outside < left_outside(*nearest) ||
        (outside == left_outside(*nearest) && one.size < *nearest))
      nearest = one.size;
  }
  return nearest;
}

}  // namespace shimwright
