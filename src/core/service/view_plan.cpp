// SPDX-License-Identifier: MPL-2.0
//
// What Plan shows beside its lists: the same engine planned otherwise, and the picture of the gaps
// before and after.
#include "core/plan/other_ways.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

Say say_of(WayKind kind) {
  switch (kind) {
    case WayKind::as_chosen:
      return Say::way_as_chosen;
    case WayKind::nearest_the_aim:
      return Say::way_nearest_the_aim;
    case WayKind::nothing_bought:
      return Say::way_nothing_bought;
    case WayKind::good_valves_opened:
      return Say::way_good_valves_opened;
    case WayKind::nearest_shims:
      return Say::way_nearest_shims;
  }
  return Say::way_as_chosen;
}

}  // namespace

ShownTable show_ways(const Service&, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{
      {"name", "as chosen", "outside", "in doubt", "changed", "bought", "money", "aim"}, {}};
  if (!found.plan) return table;
  for (const Way& way : other_ways(found.question, *found.plan)) {
    const PlanSum& sum = way.sum;
    table.rows.push_back(
        {teller.say(say_of(way.kind)), yes_if(way.chosen && way.kind != WayKind::as_chosen),
         std::to_string(sum.outside), std::to_string(sum.in_doubt), std::to_string(sum.changed),
         std::to_string(sum.bought), teller.sum(sum.money),
         sum.from_aim ? teller.column(*sum.from_aim) : std::string()});
  }
  return table;
}

ShownTable show_bands(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{{"name", "least", "room"}, {}};
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    table.put("name", i + 1) = service.valves[i].name;
    if (const auto& limits = found.of(service.valves[i].side).limits) {
      table.put("least", i + 1) = teller.column(limits->min);
      table.put("room", i + 1) = teller.column(limits->max - limits->min);
    }
  }
  return table;
}

// A gap stands in the column of its state, so that each state has marks of its own.
ShownTable show_picture(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table;
  for (const std::string when : {"before ", "after "})
    for (const State state : all_states)
      if (state != State::unread) table.columns.push_back(when + std::string(word_for(state)));
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    const std::size_t row = i + 1;
    const ValveFindings& valve = found.valves[i];
    if (valve.gap && valve.now && *valve.now != State::unread)
      table.put("before " + std::string(word_for(*valve.now)), row) = teller.column(*valve.gap);
    if (i >= found.valve_plans.size()) continue;
    const ValvePlan& plan = found.valve_plans[i];
    if (plan.after && plan.then != State::unread && !plan.measure_again)
      table.put("after " + std::string(word_for(plan.then)), row) = teller.column(*plan.after);
  }
  return table;
}

}  // namespace shimwright
