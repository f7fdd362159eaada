// SPDX-License-Identifier: MPL-2.0
//
// The nearest shim where none serves. Limits narrower than the step of the sizes on sale fall
// between two sizes now and then: no shim brings that valve inside. One may still leave it less far
// outside than the shim it has. Between two that leave it equally far the thinner, looser one is
// taken: too much clearance is noisy, too little burns the valve.
#pragma once

#include <optional>
#include <span>

#include "core/plan/plan.hpp"
#include "core/values/choice.hpp"

namespace shimwright {

// How far a clearance is outside its limits; zero inside.
Length outside_by(Length clearance, const Limits& limits);

// The shims that leave the clearance less far outside than it is, those that bring it inside
// included; with D for how far it is outside now:
//   clearance + shim - max - D < size < clearance + shim - min + D
// A shim that would leave no gap at all is none of them, as it may hold the valve open. Empty where
// the clearance is inside its limits.
std::optional<ShimRange> nearer_shims(Length clearance, Length shim, const Limits& limits);

// The listed size, spare or on sale, of the valve's series that comes nearest to its limits; as
// near, the thinner. Empty where a listed size would bring it inside, where none comes nearer than
// its own shim, and where the valve is not read. Time grows with the stock.
std::optional<Length> nearest_listed(const Valve& valve, std::span<const Stock> stock);

}  // namespace shimwright
