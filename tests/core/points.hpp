// SPDX-License-Identifier: MPL-2.0
//
// Points of a line, from two columns of a table.
#pragma once

#include <vector>

#include "core/drift/line.hpp"

namespace shimwright {

inline std::vector<Point> points_of(const std::vector<double>& x, const std::vector<double>& y) {
  std::vector<Point> points;
  for (std::size_t i = 0; i < x.size(); ++i) points.push_back({x[i], y.at(i)});
  return points;
}

}  // namespace shimwright
