// SPDX-License-Identifier: MPL-2.0
#include "core/service/steps_findings.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "core/crank/further_stops.hpp"
#include "core/service/arrivals.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

ValvePlace place_of(const Service::ValveEntries& valve) { return {valve.cylinder, valve.side}; }

FittingQuestion question_at(std::span<const CrankStop> stops, const Service& service,
                            const Findings& found) {
  FittingQuestion question =
      fitting_of(found.question, *found.plan,
                 found.camshafts_out ? std::vector<OpenAt>() : valves_at_stops(service, stops));
  question.camshafts_out = found.camshafts_out;
  leave_out_what_has_not_come(question, found);
  return question;
}

bool is_better(const FittingSteps& a, const FittingSteps& b) {
  return std::tuple(a.waiting, a.turns, a.stand_ins) < std::tuple(b.waiting, b.turns, b.stand_ins);
}

// The best place for work on these valves, which are clear of their lobes together at `stop`: where
// gaps are measured, if that serves.
CrankStop best_stop_for(const std::set<ValvePlace>& valves, const CrankStop& stop,
                        const Findings& found) {
  const auto serves = [&valves](const CrankStop& other) {
    return std::ranges::all_of(
        valves, [&other](const ValvePlace& place) { return other.clear_of(place).has_value(); });
  };
  const auto at = [](const auto& stops, CrankAngle angle) {
    return std::ranges::find(stops, angle, &CrankStop::angle) != stops.end();
  };
  if (at(found.stops, stop.angle)) return stop;
  const auto further = further_stops(*found.firing, found.timing, found.margin, {}, valves);
  for (const auto& stops : {found.stops, further})
    if (const auto best = std::ranges::find_if(stops, serves); best != stops.end()) return *best;
  return stop;
}

bool is_turned_to_where_it_stands(const FittingSteps& steps) {
  std::optional<int> at;
  for (const Step& step : steps.steps) {
    if (step.kind == Step::Kind::turn && step.stop == at) return true;
    at = step.stop;
  }
  return false;
}

// The steps, in which a stop is called by its place in `stops`, in the numbers of the book: those
// of measuring keep theirs, the others have the next.
void take(FittingSteps steps, std::span<const CrankStop> stops, const Service& service,
          Findings& found) {
  std::map<int, std::set<ValvePlace>> worked_on;  // by stop
  for (const Step& step : steps.steps) {
    if (!step.stop) continue;
    auto& valves = worked_on[*step.stop];
    if (step.valve) valves.insert(place_of(service.valves[*step.valve]));
  }
  for (const bool at_best : {true, false}) {
    found.all_stops = found.stops;
    std::map<int, int> numbers;
    for (const auto& [number, valves] : worked_on) {
      const CrankStop& there = stops[static_cast<std::size_t>(number) - 1];
      const CrankStop stop = at_best ? best_stop_for(valves, there, found) : there;
      auto known = std::ranges::find(found.all_stops, stop.angle, &CrankStop::angle);
      if (known == found.all_stops.end())
        known = found.all_stops.insert(found.all_stops.end(), stop);
      numbers[number] = static_cast<int>(known - found.all_stops.begin()) + 1;
    }
    found.steps = steps;
    renumber_stops(*found.steps, numbers);
    if (!is_turned_to_where_it_stands(*found.steps)) return;
  }
}

void try_further_stops(const Service& service, Findings& found) {
  std::set<ValvePlace> opened;
  for (std::size_t i = 0; i < service.valves.size(); ++i)
    if (changes_shim(found.plan->lines[i].action)) opened.insert(place_of(service.valves[i]));
  const auto further =
      further_stops(*found.firing, found.timing, found.margin, found.stops, opened);
  if (further.empty()) return;
  std::vector<CrankStop> stops = found.stops;
  stops.insert(stops.end(), further.begin(), further.end());
  std::ranges::sort(stops, {}, &CrankStop::angle);
  FittingSteps steps = fitting_steps(question_at(stops, service, found), usual_effort / 2);
  if (is_better(steps, *found.steps)) take(std::move(steps), stops, service, found);
}

}  // namespace

std::vector<OpenAt> valves_at_stops(const Service& service, std::span<const CrankStop> stops) {
  std::vector<OpenAt> open;
  for (std::size_t valve = 0; valve < service.valves.size(); ++valve)
    for (const std::size_t stop : stops_by_clear(stops, place_of(service.valves[valve])))
      open.push_back({valve, static_cast<int>(stop) + 1});
  return open;
}

void find_steps(const Service& service, Findings& found) {
  if (!found.plan || (!found.camshafts_out && found.stops.empty())) return;
  try {
    found.steps = fitting_steps(question_at(found.stops, service, found));
  } catch (const BadInput&) {
    found.no_stop_for_work = true;
    return;
  }
  if (!found.camshafts_out && (found.steps->waiting > 0 || found.steps->stand_ins > 0))
    try_further_stops(service, found);
}

}  // namespace shimwright
