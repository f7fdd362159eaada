// SPDX-License-Identifier: MPL-2.0
#include "core/service/drift_chart.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/drift/prediction.hpp"
#include "core/drift/student_t.hpp"
#include "core/service/entered.hpp"

namespace shimwright {
namespace {

constexpr double beyond_last = 0.4;  // of the way so far, or as far as the next check
constexpr double margin_of_gaps = 0.08;
constexpr int points_of_bound = 8;
constexpr double steps_of_distance = 8;  // at most about so many
constexpr double steps_of_gaps = 13;

ChartScale scale_over(double from, double to, double most_steps) {
  const double least = (to - from) / most_steps;
  const double power = std::pow(10, std::floor(std::log10(least)));
  double step = 10 * power;
  for (const double times : {5.0, 2.0, 1.0})
    if (times * power >= least) step = times * power;
  return {std::floor(from / step) * step, std::ceil(to / step) * step, step};
}

class ChartMaker {
 public:
  ChartMaker(const Service& service, const DriftFindings& found)
      : service_(service), found_(found) {}

  std::optional<DriftCharts> made() {
    if (!set_distances()) return std::nullopt;
    const Unit unit = found_.teller.unit();
    for (const Side side : {Side::exhaust, Side::inlet})
      if (const auto limits = limits_of(side)) add_band(side, *limits, unit);
    std::map<int, std::vector<std::size_t>> cylinders;
    for (std::size_t i = 0; i < service_.valves.size(); ++i)
      cylinders[service_.valves[i].cylinder].push_back(i);
    for (const auto& [cylinder, valves] : cylinders) add_chart(cylinder, valves);
    const double room = margin_of_gaps * (high_ - low_);
    made_.side = scale_over(low_ - room, high_ + room, steps_of_gaps);
    return std::move(made_);
  }

 private:
  bool is_shown(std::size_t valve) const {
    return found_.valves[valve].fitted && !found_.valves[valve].points.empty();
  }

  bool set_distances() {
    bool any = false;
    for (std::size_t i = 0; i < found_.valves.size(); ++i) {
      if (!is_shown(i)) continue;
      const auto& points = found_.valves[i].points;
      first_ = any ? std::min(first_, points.front().x) : points.front().x;
      last_ = any ? std::max(last_, points.back().x) : points.back().x;
      any = true;
    }
    if (!any) return false;
    double to = last_ + beyond_last * (last_ - first_);
    if (found_.next) to = std::max(to, found_.next->at);
    made_.foot = scale_over(first_, to > first_ ? to : first_ + 1, steps_of_distance);
    return true;
  }

  std::optional<Limits> limits_of(Side side) const {
    const auto of_side = std::ranges::find(found_.valves, side, &ValveToJudge::side);
    return of_side == found_.valves.end() ? std::nullopt : of_side->limits;
  }

  double gap(double nanometres) const {
    return nanometres / 1e6 / (found_.teller.unit() == Unit::inch ? 25.4 : 1);
  }

  void take_in(double gap) {
    low_ = any_gap_ ? std::min(low_, gap) : gap;
    high_ = any_gap_ ? std::max(high_, gap) : gap;
    any_gap_ = true;
  }

  // Upright strokes: close together for the exhaust, which makes a ground; half as many for the
  // inlet, which makes stripes, so that the two differ without colours, and where they overlap.
  void add_band(Side side, const Limits& limits, Unit unit) {
    ChartSeries band{ChartSeries::Kind::band, side, 0,
                     found_.teller.say(side == Side::exhaust ? Say::drift_chart_band_exhaust
                                                             : Say::drift_chart_band_inlet)};
    const int strokes = side == Side::exhaust ? strokes_of_band : strokes_of_band / 2;
    const double min = in_unit(limits.min, unit);
    const double max = in_unit(limits.max, unit);
    for (int i = 0; i < strokes; ++i) {
      const double x = made_.foot.from + (made_.foot.to - made_.foot.from) * (i + 0.5) / strokes;
      band.points.insert(band.points.end(), {Point{x, min}, Point{x, max}, std::nullopt});
    }
    take_in(min);
    take_in(max);
    made_.bands.push_back(std::move(band));
  }

  void add_chart(int cylinder, const std::vector<std::size_t>& valves) {
    DriftChart chart{
        found_.teller.say(
            Say::drift_chart_title,
            {std::int64_t{cylinder}, std::string(found_.teller.unit_word()), found_.distance_unit}),
        {}};
    const auto series = [&](ChartSeries::Kind kind, Side side, int place, std::string name) {
      chart.series.push_back({kind, side, place, std::move(name)});
      return &chart.series.back();
    };
    chart.series.reserve(valves.size() + 2 * 2 + 1);
    std::vector<std::optional<Point>> changed;
    std::map<Side, int> places;
    for (const std::size_t valve : valves) {
      const Side side = service_.valves[valve].side;
      auto* checks =
          series(ChartSeries::Kind::checks, side, places[side]++, service_.valves[valve].name);
      if (!is_shown(valve)) continue;
      for (const Point& check : found_.valves[valve].points) {
        const Point shown{check.x, shown_gap(valve, check.y)};
        take_in(shown.y);
        checks->points.push_back(shown);
        if (std::ranges::find(found_.changes[valve], check.x) != found_.changes[valve].end())
          changed.push_back(shown);
      }
    }
    for (const Side side : {Side::exhaust, Side::inlet}) {
      auto* line =
          series(ChartSeries::Kind::line, side, 0, found_.teller.say(Say::drift_chart_line));
      auto* bound =
          series(ChartSeries::Kind::bound, side, 0, found_.teller.say(Say::drift_chart_cautious));
      for (const std::size_t valve : valves)
        if (is_shown(valve) && service_.valves[valve].side == side) {
          add_line(valve, *line);
          add_bound(valve, *bound);
        }
    }
    series(ChartSeries::Kind::changed, Side::exhaust, 0,
           found_.teller.say(Say::drift_chart_changed))
        ->points = std::move(changed);
    made_.charts.push_back(std::move(chart));
  }

  double shown_gap(std::size_t valve, double followed) const {
    return gap(followed - static_cast<double>(found_.valves[valve].fitted->nanometres()));
  }

  void add_line(std::size_t valve, ChartSeries& to) const {
    const auto& line = found_.drift.valves[valve].line;
    if (!line) return;
    const double from = found_.valves[valve].points.front().x;
    for (const double x : {from, made_.foot.to})
      to.points.push_back(Point{x, shown_gap(valve, line->at(x))});
    to.points.push_back(std::nullopt);
  }

  // Of the limit that the valve is heading for; of a steady one, that where it is met first.
  void add_bound(std::size_t valve, ChartSeries& to) const {
    const ValveDrift& own = found_.drift.valves[valve];
    if (!own.due || !own.due->cautious) return;
    const double from = found_.valves[valve].points.back().x;
    const double t = student_t(1 - default_confidence, found_.drift.degrees);
    const Bound below{Bound::Side::below, t};
    const Bound above{Bound::Side::above, t};
    const double level = static_cast<double>(
        (found_.valves[valve].limits->min + *found_.valves[valve].fitted).nanometres());
    const bool is_below = own.due->course == Course::tight ||
                          (own.due->course == Course::steady &&
                           bound_at(*own.line, below, *own.due->cautious) <= level + 1);
    for (int i = 0; i <= points_of_bound; ++i) {
      const double x = from + (made_.foot.to - from) * i / points_of_bound;
      to.points.push_back(
          Point{x, shown_gap(valve, bound_at(*own.line, is_below ? below : above, x))});
    }
    to.points.push_back(std::nullopt);
  }

  const Service& service_;
  const DriftFindings& found_;
  DriftCharts made_;
  double first_ = 0;
  double last_ = 0;
  double low_ = 0;
  double high_ = 0;
  bool any_gap_ = false;
};

}  // namespace

std::optional<DriftCharts> drift_charts(const Service& service, const DriftFindings& found) {
  return ChartMaker(service, found).made();
}

}  // namespace shimwright
