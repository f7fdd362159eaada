// SPDX-License-Identifier: MPL-2.0
#include "core/drift/history.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/choice.hpp"
#include "core/values/length.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

double sound_distance(double distance) {
  if (!std::isfinite(distance)) throw BadInput("a distance is not a finite number");
  if (std::abs(distance) > largest_distance)
    throw BadInput("a distance of " + text_of(distance) + " is beyond " +
                   text_of(largest_distance));
  return distance;
}

Point point_of(double distance, double clearance, double shim) {
  const Length thickness = Length::of(shim);
  check_thickness(thickness);
  const Length followed = Length::of(clearance) + thickness;
  return {sound_distance(distance), static_cast<double>(followed.nanometres())};
}

}  // namespace

void History::add(std::optional<double> distance, std::optional<double> clearance,
                  std::optional<double> shim) try {
  ++entered_;
  if (distance && clearance && shim) checks_.push_back(point_of(*distance, *clearance, *shim));
} catch (const BadInput& trouble) {
  throw BadInput("check " + std::to_string(entered_) + ": " + trouble.what());
}

double History::last_distance() const {
  return std::ranges::max_element(checks_, {}, &Point::x)->x;
}

}  // namespace shimwright
