// SPDX-License-Identifier: MPL-2.0
#include "core/service/listed_gaps.hpp"

#include <algorithm>

#include "core/entries/entry_row.hpp"
#include "core/plan/nearest.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/bench.hpp"
#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/values/choice.hpp"

namespace shimwright {
namespace {

// The shims of Arrivals that the list puts in, whether they are in already or not.
std::vector<FittedArrival> arrivals_listed(const Service& service, const Findings& found) {
  Service when_done = service;
  for (auto& step : when_done.bench) step.done = "x";
  return arrivals_fitted(when_done, found);
}

// As Head has the giver's shim now, or Arrivals the bought one, else as listed.
std::optional<Length> size_listed_in(const Service::BenchEntries& step, const Service& service,
                                     const Findings& found,
                                     const std::vector<FittedArrival>& arrivals) {
  const auto giver = std::ranges::find(service.valves, step.from, &Service::ValveEntries::name);
  if (giver != service.valves.end())
    if (const auto& shim =
            found.valves[static_cast<std::size_t>(giver - service.valves.begin())].shim)
      return shim;
  if (const auto arrival = std::ranges::find(arrivals, step.valve, &FittedArrival::valve);
      arrival != arrivals.end())
    return found.arrivals[arrival->row].size;
  return length_entered(step.in, found.teller.unit());
}

// Beyond a limit; but a valve that may take the nearest shim may be so as long as it comes nearer.
bool is_left_outside(Length predicted, const ValveFindings& valve, const Limits& limits,
                     bool nearest_for_all) {
  const Length outside = outside_by(predicted, limits);
  const bool may_stay_outside = valve.nearest || nearest_for_all;
  return outside > Length() && !(may_stay_outside && outside < outside_by(*valve.gap, limits));
}

template <class Condition>
std::vector<std::string> listed_where(const Service& service, const Findings& found,
                                      Condition condition) {
  std::vector<std::string> names;
  for (const ListedGap& gap : found.listed_gaps)
    if (condition(gap)) names.push_back(service.valves[gap.valve].name);
  return names;
}

bool has_no_gap(const ListedGap& gap) { return gap.is_in && gap.predicted <= Length(); }

}  // namespace

void find_listed_gaps(const Service& service, Findings& found) {
  found.listed_gaps.clear();
  if (service.bench.empty()) return;
  const auto arrivals = arrivals_listed(service, found);
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    const ValveFindings& valve = found.valves[i];
    const auto& limits = found.of(service.valves[i].side).limits;
    const auto of_valve = [&](const auto& step) { return step.valve == service.valves[i].name; };
    const auto first = std::ranges::find_if(service.bench, of_valve);
    if (first == service.bench.end() || !valve.gap || !limits) continue;
    // Its own new shim is the last that goes in; before, a stand-in may.
    const Service::BenchEntries* last = nullptr;
    for (const auto& step : service.bench)
      if (of_valve(step) && number_entered(step.in)) last = &step;
    if (last == nullptr) continue;
    const auto out = valve.shim ? valve.shim : length_entered(first->out, found.teller.unit());
    const auto in = size_listed_in(*last, service, found, arrivals);
    if (!out || !in) continue;
    const Length predicted = clearance_after(*valve.gap, *out, *in);
    found.listed_gaps.push_back(
        {i, predicted, is_ticked(*last),
         is_left_outside(predicted, valve, *limits, found.question.rules.nearest)});
  }
}

bool is_any_without_gap(const Findings& found) {
  return std::ranges::any_of(found.listed_gaps, has_no_gap);
}

std::string no_gap_in_words(const Service& service, const Findings& found) {
  std::vector<std::string> valves;
  for (const ListedGap& gap : found.listed_gaps) {
    if (!has_no_gap(gap)) continue;
    const ValveFindings& valve = found.valves[gap.valve];
    const auto& limits = found.of(service.valves[gap.valve].side).limits;
    const auto serving =
        valve.shim ? serving_shims(*valve.gap, *valve.shim, *limits) : std::nullopt;
    const std::string& name = service.valves[gap.valve].name;
    valves.push_back(
        serving ? found.teller.say(Say::bench_no_gap_of,
                                   {name, found.teller.span(serving->thinnest, serving->thickest)})
                : name);
  }
  return valves.empty() ? std::string() : found.teller.say(Say::bench_no_gap, {valves});
}

std::vector<std::string> valves_spoiled_by_list(const Service& service, const Findings& found) {
  return listed_where(service, found,
                      [](const ListedGap& gap) { return gap.outside && !gap.is_in; });
}

std::vector<std::string> valves_outside_by_list(const Service& service, const Findings& found) {
  return listed_where(service, found, [](const ListedGap& gap) {
    return gap.outside && gap.is_in && !has_no_gap(gap);
  });
}

}  // namespace shimwright
