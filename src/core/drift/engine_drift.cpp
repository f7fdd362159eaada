// SPDX-License-Identifier: MPL-2.0
#include "core/drift/engine_drift.hpp"

#include <algorithm>
#include <cmath>

namespace shimwright {
namespace {

double scatter_of_a_reading(Length doubt) {
  return std::max(static_cast<double>(doubt.nanometres()) / 2,
                  static_cast<double>(least_scatter.nanometres()));
}

Line with_scatter(Line line, double sd) {
  line.residual_sd = std::max(line.residual_sd, sd);
  line.slope_error = line.residual_sd / std::sqrt(line.sxx);
  return line;
}

bool stood_still(const std::vector<Point>& points) {
  return points.size() >= 3 && std::ranges::all_of(points, [&](const Point& point) {
           return point.y == points.front().y;
         });
}

}  // namespace

std::vector<Point> Followed::points() const {
  std::vector<Point> points;
  for (const auto& [distance, readings] : readings_) {
    double sum = 0;
    for (const Length& reading : readings) sum += static_cast<double>(reading.nanometres());
    points.push_back({distance, std::round(sum / static_cast<double>(readings.size()))});
  }
  return points;
}

EngineDrift judge_together(std::span<const ValveToJudge> valves, Length doubt, double confidence) {
  EngineDrift all;
  double squares = 0;
  for (const ValveToJudge& valve : valves) {
    ValveDrift& own = all.valves.emplace_back();
    own.checks = valve.points.size();
    own.stood_still = stood_still(valve.points);
    if (own.checks > 1) own.moved = valve.points.back().y - valve.points.front().y;
    own.line = fit_line(valve.points);
    if (!own.line) continue;
    squares += own.line->degrees() * own.line->residual_sd * own.line->residual_sd;
    all.degrees += own.line->degrees();
  }
  if (all.degrees == 0) return all;

  const double sd = std::max(std::sqrt(squares / all.degrees), scatter_of_a_reading(doubt));
  std::vector<Sibling> siblings;
  for (std::size_t i = 0; i < valves.size(); ++i) {
    ValveDrift& own = all.valves[i];
    if (own.line) own.line = with_scatter(*own.line, sd);
    if (own.line && valves[i].fitted && valves[i].limits)
      own.due = due_of(*own.line, all.degrees, valves[i].points.back().x, *valves[i].fitted,
                       *valves[i].limits, confidence);
    siblings.push_back({valves[i].side, own.line});
  }
  const std::vector<Kinship> kinship = kinship_of(siblings);
  for (std::size_t i = 0; i < valves.size(); ++i) all.valves[i].kinship = kinship[i];
  return all;
}

}  // namespace shimwright
