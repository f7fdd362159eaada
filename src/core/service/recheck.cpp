// SPDX-License-Identifier: MPL-2.0
#include "core/service/recheck.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "core/entries/entry_row.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/bench.hpp"
#include "core/service/entered.hpp"
#include "core/service/rules.hpp"
#include "core/values/choice.hpp"

namespace shimwright {
namespace {

class Rechecker {
 public:
  Rechecker(const Service& service, const Findings& found)
      : service_(service),
        found_(found),
        unit_(found.teller.unit()),
        doubt_(doubt_of_reading(service, found)),
        is_done_(is_bench_done(service)),
        all_are_due_(is_done_ && is_bench_for_camshafts_out(service, found)),
        empty_(valves_standing_empty(service)),
        fitted_(shims_fitted(service)),
        arrivals_(arrivals_fitted(service, found)) {}

  ValveRecheck valve(std::size_t index) const {
    const ValveFindings& read = found_.valves[index];
    const std::string& name = service_.valves[index].name;
    ValveRecheck valve{.gap_found = read.gap,
                       .shim_found = read.shim,
                       .shim_fitted = shim_in(index),
                       .gap_left = {},
                       .gap_now = {},
                       .predicted = {},
                       .off = {},
                       .state = {},
                       .opened = is_opened(service_, name),
                       .reason = {}};
    valve.predicted = predicted(valve, read.off);
    if (is_done_)
      valve.verdict = valve.opened || all_are_due_ ? RecheckVerdict::due : RecheckVerdict::asked;
    const SideFindings& side = found_.of(service_.valves[index].side);
    read_new_gap(valve, name, side);
    if (valve.gap_left || (!valve.opened && !all_are_due_))
      valve.gap_now = valve.gap_left ? valve.gap_left : valve.gap_found;
    if (valve.gap_now && side.limits)
      valve.outside = margin_of(*valve.gap_now, *side.limits) < Length();
    return valve;
  }

 private:
  // `off`: by how much the gap found was off what the last round predicted, where it was.
  static std::optional<Length> predicted(const ValveRecheck& valve, std::optional<Length> off) {
    if (!valve.opened && off) return *valve.gap_found - *off;  // as the last round had it
    if (!valve.opened) return valve.gap_found;                 // over the same shim, known or not
    if (!valve.gap_found || !valve.shim_found || !valve.shim_fitted) return std::nullopt;
    return clearance_after(*valve.gap_found, *valve.shim_found, *valve.shim_fitted);
  }

  // As measured: the shim out of another valve as that valve's card on Head has it, a bought one
  // as its row of Arrivals has it, by micrometer before mark. Where these hold another shim by now,
  // and for any other, the list's size.
  std::optional<Length> shim_in(std::size_t index) const {
    const std::string& name = service_.valves[index].name;
    if (std::ranges::find(empty_, name) != empty_.end()) return std::nullopt;
    const auto shim = std::ranges::find(fitted_, name, &FittedShim::valve);
    if (shim == fitted_.end()) return found_.valves[index].shim;
    const auto listed = length_entered(shim->size, unit_);
    const auto giver = std::ranges::find(service_.valves, shim->from, &Service::ValveEntries::name);
    if (giver != service_.valves.end()) {
      const auto at = static_cast<std::size_t>(giver - service_.valves.begin());
      const auto& size = found_.valves[at].shim;
      return size && !are_far_apart(listed, size, found_.allowed) ? size : listed;
    }
    const auto arrival = std::ranges::find(arrivals_, name, &FittedArrival::valve);
    return arrival == arrivals_.end() ? listed : found_.arrivals[arrival->row].size;
  }

  void read_new_gap(ValveRecheck& valve, const std::string& name, const SideFindings& side) const {
    const auto entries = std::ranges::find(service_.recheck, name, &Service::RecheckEntries::valve);
    if (entries == service_.recheck.end()) return;
    if (!not_given(entries->left)) valve.reason = word_in(entries->left);
    if (not_given(entries->gap) && !has_failed(entries->gap)) return;
    valve.gap_left = length_entered(entries->gap, unit_);
    if (valve.gap_left && *valve.gap_left < Length()) valve.gap_left.reset();
    judge(valve, side);
  }

  void judge(ValveRecheck& valve, const SideFindings& side) const {
    if (!valve.gap_left) {
      valve.verdict = RecheckVerdict::unreadable;
      return;
    }
    if (side.limits) valve.state = state_of(valve.gap_left, *side.limits, found_.doubt);
    valve.verdict = RecheckVerdict::unpredicted;
    if (!valve.predicted) return;
    valve.off = *valve.gap_left - *valve.predicted;
    // No blade went before, so the prediction is only the most that the gap can be.
    const bool is_at_most = *valve.gap_found == Length();
    if (is_within_doubt_of_both(*valve.off, doubt_))
      valve.verdict = RecheckVerdict::as_predicted;
    else if (!is_at_most || *valve.off > Length())
      valve.verdict = RecheckVerdict::off;
  }

  const Service& service_;
  const Findings& found_;
  Unit unit_;
  Length doubt_;
  bool is_done_;
  bool all_are_due_;
  std::vector<std::string> empty_;
  std::vector<FittedShim> fitted_;
  std::vector<FittedArrival> arrivals_;
};

}  // namespace

std::vector<ValveRecheck> recheck_in(const Service& service, const Findings& found) {
  const Rechecker rechecker(service, found);
  std::vector<ValveRecheck> valves;
  for (std::size_t i = 0; i < service.valves.size(); ++i) valves.push_back(rechecker.valve(i));
  return valves;
}

Length doubt_of_reading(const Service& service, const Findings& found) {
  const auto entered = length_entered(service.doubt, found.teller.unit());
  return entered && *entered >= Length() ? *entered : usual_doubt;
}

Length doubt_of_both(Length doubt) {
  return Length::nanometres(std::llround(std::sqrt(2.0) * static_cast<double>(doubt.nanometres())));
}

bool is_within_doubt_of_both(Length difference, Length doubt) {
  // In whole numbers, since the root of two is none. A length is at most 100 mm either way, and a
  // difference of a few of them at most 400 mm: its square is far from the largest of 64 bits.
  const std::int64_t d = difference.nanometres();
  const std::int64_t u = doubt.nanometres();
  return d * d <= 2 * u * u;
}

bool must_be_measured(const ValveRecheck& valve) {
  return valve.verdict == RecheckVerdict::due || valve.verdict == RecheckVerdict::unreadable;
}

bool is_off_without_reason(const ValveRecheck& valve) {
  return valve.verdict == RecheckVerdict::off && valve.reason.empty();
}

bool is_outside_without_reason(const ValveRecheck& valve) {
  return valve.outside && valve.reason.empty();
}

bool wants_another_round(const ValveRecheck& valve) {
  return is_off_without_reason(valve) || is_outside_without_reason(valve);
}

}  // namespace shimwright
