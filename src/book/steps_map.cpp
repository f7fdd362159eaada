// SPDX-License-Identifier: MPL-2.0
#include "book/steps_map.hpp"

#include <algorithm>

#include "book/workings.hpp"

namespace shimwright::book {
namespace {

// Usual engines need one to three.
constexpr int stops_listed = 8;

}  // namespace

StepsMap::StepsMap(const Places& places)
    : first_(WorkingsMap(places.count()).last_row() + 4),
      valves_(places.count()),
      cylinders_(cylinders_of(places.layout)),
      most_stops_(std::min(stops_listed, 2 * cylinders_)) {}

}  // namespace shimwright::book
