// SPDX-License-Identifier: MPL-2.0
//
// Stops of the crank as a hand comes to them, and what it can measure there.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>

#include "core/crank/crank.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

// `turn the crank forwards to TDC on compression of cylinder 4, 360° on from stop 1`; angles to a
// tenth of a degree. `from` is the index of the stop the crank stands at, if it stands at one.
std::string turn_in_words(const Firing& firing, std::span<const CrankStop> stops, std::size_t index,
                          std::optional<std::size_t> from, const Teller& teller);

// `cylinder 1: inlet and exhaust; cylinder 2: exhaust`: the valves to be measured at that stop,
// each of which is clear of its lobe by most there.
std::string measured_in_words(std::span<const CrankStop> stops, std::size_t index,
                              const Teller& teller);

// Both, for a list of the stops: counted from stop 1, which serves to find the others.
std::string stop_in_words(const Firing& firing, std::span<const CrankStop> stops, std::size_t index,
                          const Teller& teller);

}  // namespace shimwright
