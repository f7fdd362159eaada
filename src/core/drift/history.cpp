// SPDX-License-Identifier: MPL-2.0
#include "core/drift/history.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

const std::optional<double>& entry_of(Entered column, std::size_t check) {
  return column.size() == 1 ? column.front() : column[check];
}

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

double History::last_distance() const { return std::ranges::max_element(checks, {}, &Point::x)->x; }

History read_history(Entered distance, Entered clearance, Entered shim) {
  const std::size_t count = std::max({distance.size(), clearance.size(), shim.size()});
  for (const Entered& column : {distance, clearance, shim})
    if (column.size() != count && column.size() != 1)
      throw BadInput("distance, clearance and shim are of different lengths");
  History history;
  history.checks.reserve(count);
  for (std::size_t check = 0; check < count; ++check) try {
      const auto& at = entry_of(distance, check);
      const auto& gap = entry_of(clearance, check);
      const auto& thickness = entry_of(shim, check);
      if (at && gap && thickness) history.checks.push_back(point_of(*at, *gap, *thickness));
    } catch (const BadInput& trouble) {
      throw BadInput("check " + std::to_string(check + 1) + ": " + trouble.what());
    }
  return history;
}

}  // namespace shimwright
