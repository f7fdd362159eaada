// SPDX-License-Identifier: MPL-2.0
//
// What the charts on Drift are drawn from, a chart for each cylinder: gaps, as they would be with
// the shim now in place, over distance, so that a change of shim makes no step; in the band of
// their limits, with the line through the checks and its cautious bound beyond the last one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/service/drift_findings.hpp"

namespace shimwright {

// Points that belong together; a blank one parts a line.
struct ChartSeries {
  enum class Kind { band, changed, line, bound, checks } kind;
  Side side = Side::exhaust;
  int place = 0;     // of the valve among those of its side in this cylinder
  std::string name;  // in the key
  std::vector<std::optional<Point>> points = {};  // distance, gap in the book's unit
};

struct DriftChart {
  std::string title;
  std::vector<ChartSeries> series;  // from what lies over all others to what lies under them
};

// Ends at whole steps, of 1, 2 or 5 times a power of ten.
struct ChartScale {
  double from = 0;
  double to = 0;
  double step = 0;
};

struct DriftCharts {
  ChartScale foot;                 // distances
  ChartScale side;                 // gaps
  std::vector<ChartSeries> bands;  // the same in every chart
  std::vector<DriftChart> charts;
};

// How far apart the strokes of a band stand: so many over the whole foot.
inline constexpr int strokes_of_band = 120;

// None where the log holds no check of any valve whose shim is known.
std::optional<DriftCharts> drift_charts(const Service& service, const DriftFindings& found);

}  // namespace shimwright
