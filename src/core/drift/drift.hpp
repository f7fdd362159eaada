// SPDX-License-Identifier: MPL-2.0
//
// How fast a valve drifts: a line through its history, as figures to show.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "core/drift/history.hpp"

namespace shimwright {

enum class Method { least, median };

// `least`, `median`, in any case; throws BadInput for anything else.
Method method_named(std::string_view name);

// Lengths in mm of clearance + shim; a rate is per 1000 of the unit of distance, and negative where
// the clearance closes up.
struct Drift {
  double rate = 0;
  double rate_error = 0;  // standard error, or what stands for it (median_line.hpp)
  double intercept = 0;   // of the line, at distance 0
  double scatter = 0;     // standard deviation of the readings about the line
  std::size_t checks = 0;
  std::optional<double> r2;  // none where clearance + shim never changes
};

// None for fewer than three checks, or where all are at one distance. Throws BadInput for more
// checks than the method takes (median_line.hpp).
std::optional<Drift> drift_of(const History& history, Method method);

}  // namespace shimwright
