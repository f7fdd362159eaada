// SPDX-License-Identifier: MPL-2.0
//
// What Recheck shows for each valve: how it was found, what was fitted, what its gap should be by
// that, and the verdict on what it is.
#include "core/service/bench.hpp"
#include "core/service/recheck.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

std::string verdict_in_words(const ValveRecheck& valve, const Teller& teller) {
  using enum RecheckVerdict;
  switch (valve.verdict) {
    case none:
      return {};
    case due:
      return teller.say(Say::recheck_due);
    case asked:
      return teller.say(Say::recheck_asked);
    case unreadable:
      return teller.say(Say::gap_unknown);
    case unpredicted:
      return teller.say(Say::recheck_unpredicted);
    case as_predicted:
      return teller.say(Say::recheck_as_predicted);
    case off:
      return teller.say(Say::recheck_off_by, {LengthToType{abs(*valve.off)}});
  }
  return {};
}

// `+0.040`: the new gap is wider than predicted.
std::string difference(const ValveRecheck& valve, const Teller& teller) {
  if (!valve.off) return {};
  const std::string amount = teller.column(abs(*valve.off));
  // What is too little to be told has no sign either.
  if (amount == teller.column(Length())) return amount;
  return teller.say(*valve.off > Length() ? Say::recheck_more : Say::recheck_less, {amount});
}

}  // namespace

// Blank until something is fitted, but for what a person entered there.
ShownTable show_recheck(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  const auto length = [&teller](const std::optional<Length>& one) {
    return one ? teller.column(*one) : std::string();
  };
  ShownTable table{
      {"gap found", "shim found", "shim fitted", "predicted", "difference", "verdict", "state"},
      {}};
  const bool is_done = is_bench_done(service);
  for (const ValveRecheck& valve : recheck_in(service, found)) {
    const bool is_told = is_done || valve.opened || valve.gap_left;
    const std::string verdict = verdict_in_words(valve, teller);
    if (!is_told) {
      table.rows.push_back({"", "", "", "", "", verdict, ""});
      continue;
    }
    table.rows.push_back({length(valve.gap_found), length(valve.shim_found),
                          length(valve.shim_fitted), length(valve.predicted),
                          difference(valve, teller), verdict,
                          valve.state ? state_in_words(*valve.state, teller) : std::string()});
  }
  return table;
}

}  // namespace shimwright
