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

void try_further_stops(const Service& service, Findings& found) {
  std::set<ValvePlace> places;  // of valves to be opened
  for (std::size_t i = 0; i < service.valves.size(); ++i)
    if (found.plan->lines[i].action == Action::move ||
        found.plan->lines[i].action == Action::spare || found.plan->lines[i].action == Action::buy)
      places.insert(place_of(service.valves[i]));
  const auto further =
      further_stops(*found.firing, found.timing, found.margin, found.stops, places);
  if (further.empty()) return;
  std::vector<CrankStop> stops = found.stops;
  stops.insert(stops.end(), further.begin(), further.end());
  std::ranges::sort(stops, {}, &CrankStop::angle);
  FittingSteps steps = fitting_steps(question_at(stops, service, found), usual_effort / 2);
  if (!is_better(steps, *found.steps)) return;

  // The stops of measuring keep their numbers, and those further ones that serve have the next.
  std::set<int> used;
  for (const Step& step : steps.steps)
    if (step.stop) used.insert(*step.stop);
  std::map<int, int> numbers;
  for (const int stop : used) {
    const CrankStop& at = stops[static_cast<std::size_t>(stop) - 1];
    auto known = std::ranges::find(found.all_stops, at.angle, &CrankStop::angle);
    if (known == found.all_stops.end()) known = found.all_stops.insert(found.all_stops.end(), at);
    numbers[stop] = static_cast<int>(known - found.all_stops.begin()) + 1;
  }
  renumber_stops(steps, numbers);
  found.steps = std::move(steps);
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
