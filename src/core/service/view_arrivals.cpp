// SPDX-License-Identifier: MPL-2.0
//
// What Arrivals shows: the verdict on each row, and the valve that gets its shim.
#include "core/service/arrivals.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

std::string verdict_in_words(ArrivalVerdict verdict, const std::string& valve, bool has_plan,
                             const Teller& teller) {
  using enum ArrivalVerdict;
  switch (verdict) {
    case none:
      return {};
    case on_order:
      return teller.say(Say::on_order);
    case not_needed:
      return teller.say(Say::arrival_not_needed);
    case as_ordered:
      return teller.say(Say::arrival_as_ordered);
    case will_do:
      return teller.say(Say::arrival_will_do, {valve});
    case send_back:
      return teller.say(Say::arrival_send_back);
    case unmeasured:
      return teller.say(Say::arrival_unmeasured);
    case not_coming:
      return teller.say(Say::arrival_not_coming);
    case unsettled:
      return teller.say(has_plan ? Say::measure_first : Say::mend_entries);
  }
  return {};
}

constexpr std::string_view look_here = "look here";

// How the verdict is to look: `look here` where something is to be done, `gone`, or as any text.
std::string_view look_of(ArrivalVerdict verdict) {
  using enum ArrivalVerdict;
  if (verdict == not_coming) return "gone";
  const bool asks = verdict == send_back || verdict == not_needed || verdict == unmeasured;
  return asks ? look_here : "";
}

}  // namespace

ShownTable show_arrivals(const Service& service, const Findings& found) {
  ShownTable table{{"verdict", "look", "valve"}, {}};
  for (const ArrivalFindings& shim : found.arrivals) {
    const ArrivalVerdict verdict = arrival_verdict(shim, found);
    const std::string valve = shim.valve ? service.valves[*shim.valve].name : std::string();
    const bool differs = differs_from_its_mark(shim, found.allowed);
    table.rows.push_back({verdict_in_words(verdict, valve, found.plan.has_value(), found.teller),
                          std::string(differs ? look_here : look_of(verdict)), valve});
  }
  return table;
}

}  // namespace shimwright
