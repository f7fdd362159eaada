// SPDX-License-Identifier: MPL-2.0
#include "core/values/choice.hpp"

#include <algorithm>
#include <cmath>

#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {

Length aim_between(const Limits& limits, double bias) {
  check_limits(limits);
  if (!(bias >= 0 && bias <= 1))
    throw BadInput("a bias of " + text_of(bias) + " is not between 0 and 1");
  const auto width = static_cast<double>((limits.max - limits.min).nanometres());
  return limits.min + Length::nanometres(std::llround(bias * width));
}

void check_aim(Length aim, const Limits& limits) {
  if (aim < limits.min || aim > limits.max)
    throw BadInput("the aim, " + text_of(aim) + ", is outside the limits " + text_of(limits.min) +
                   " to " + text_of(limits.max));
}

void check_thickness(Length shim) {
  if (shim <= Length())
    throw BadInput("a shim of " + text_of(shim) + " cannot be: a thickness is above zero");
}

Length clearance_after(Length clearance, Length old_shim, Length new_shim) {
  check_thickness(old_shim);
  check_thickness(new_shim);
  return clearance + old_shim - new_shim;
}

Length ideal_shim(Length clearance, Length shim, Length aim) {
  check_thickness(shim);
  return clearance + shim - aim;
}

std::vector<Length> ladder(Length from, Length to, Length step) {
  check_thickness(from);
  if (step <= Length())
    throw BadInput("a step of " + text_of(step) + " leads nowhere: it must be above zero");
  if (from > to)
    throw BadInput("the smallest size, " + text_of(from) + ", is above the largest, " +
                   text_of(to));
  const auto count =
      static_cast<std::size_t>((to - from).nanometres() / step.nanometres()) + std::size_t{1};
  if (count > longest_ladder)
    throw BadInput("from " + text_of(from) + " to " + text_of(to) + " by " + text_of(step) +
                   " makes " + std::to_string(count) + " sizes; at most " +
                   std::to_string(longest_ladder) + " are allowed");
  std::vector<Length> sizes;
  sizes.reserve(count);
  for (std::size_t i = 0; i < count; ++i)
    sizes.push_back(from + static_cast<std::int64_t>(i) * step);
  return sizes;
}

std::optional<ShimRange> serving_shims(Length clearance, Length shim, const Limits& limits,
                                       Length doubt) {
  check_limits(limits);
  check_doubt(doubt);
  check_thickness(shim);
  const ShimRange range{std::max(clearance + shim - limits.max + doubt, Length::nanometres(1)),
                        clearance + shim - limits.min - doubt};
  if (range.thinnest > range.thickest) return std::nullopt;
  return range;
}

std::optional<Length> pick_shim(Length clearance, Length shim, const Limits& limits, Length aim,
                                std::span<const Length> sizes, Length doubt) {
  check_limits(limits);
  check_aim(aim, limits);
  check_doubt(doubt);
  for (const Length size : sizes) check_thickness(size);
  const Length ideal = ideal_shim(clearance, shim, aim);
  const auto nearest_in = [&](Length band) -> std::optional<Length> {
    const auto range = serving_shims(clearance, shim, limits, band);
    std::optional<Length> best;
    for (const Length size : sizes) {
      if (!range || size < range->thinnest || size > range->thickest) continue;
      if (!best || abs(size - ideal) < abs(*best - ideal) ||
          (abs(size - ideal) == abs(*best - ideal) && size < *best))
        best = size;
    }
    return best;
  };
  const auto inside_band = nearest_in(doubt);
  return inside_band ? inside_band : nearest_in(Length());
}

}  // namespace shimwright
