// SPDX-License-Identifier: MPL-2.0
//
// Choosing a shim for one valve. Between the cam and the valve there is a fixed space: what the
// shim does not fill is the clearance. So clearance + shim stays the same when shims are changed:
//   clearance after = clearance now + shim out - shim in          (common practice, no source)
// A thicker shim makes the clearance smaller.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/values/length.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

inline constexpr double default_bias = 0.75;
inline constexpr std::size_t longest_ladder = 10'000;

// Where between the limits to aim: min + bias * (max - min), bias 0 to 1 (else BadInput). The
// default leans to the wide side: clearances mostly close up with use.
Length aim_between(const Limits& limits, double bias = default_bias);

// Throws BadInput for an aim outside the limits.
void check_aim(Length aim, const Limits& limits);

// Throws BadInput for a thickness of zero or less.
void check_thickness(Length shim);

// May be negative: the valve would be held open.
Length clearance_after(Length clearance, Length old_shim, Length new_shim);

// The thickness that would bring the clearance exactly to the aim; zero or less means that no
// shim can.
Length ideal_shim(Length clearance, Length shim, Length aim);

// The sizes from, from+step, ... not beyond `to` (`to` itself where the step leads there), exact.
// Throws BadInput for a step of zero or less, from above to, or more than `longest_ladder` sizes.
std::vector<Length> ladder(Length from, Length to, Length step);

struct ShimRange {
  Length thinnest;
  Length thickest;
};

// The shims that bring the clearance inside [min+U, max-U]:
//   thinnest = clearance + shim - max + U, thickest = clearance + shim - min - U.
// Empty where the doubt leaves no room between the limits or no positive thickness serves.
std::optional<ShimRange> serving_shims(Length clearance, Length shim, const Limits& limits,
                                       Length doubt = {});

// From `sizes`, the one that brings the clearance inside [min+U, max-U] nearest to the aim, on a
// tie the thinner; where none does, the same inside [min, max]; else empty.
std::optional<Length> pick_shim(Length clearance, Length shim, const Limits& limits, Length aim,
                                std::span<const Length> sizes, Length doubt = {});

}  // namespace shimwright
