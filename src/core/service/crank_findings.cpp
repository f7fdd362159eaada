// SPDX-License-Identifier: MPL-2.0
#include "core/service/crank_findings.hpp"

#include <algorithm>

#include "core/crank/firing_written.hpp"
#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

ValvePlace place_of(const Service::ValveEntries& valve) { return {valve.cylinder, valve.side}; }

void remark(Findings& found, Told said) {
  found.remarks.push_back({.page = Page::engine, .said = std::move(said)});
}

int cylinders_of(const Service& service) {
  int most = 0;
  for (const auto& valve : service.valves) most = std::max(most, valve.cylinder);
  return most;
}

class Crank {
 public:
  Crank(const Service& service, Findings& found) : service_(service), found_(found) {}

  void find() {
    found_.camshafts_out = yes_or_no(service_.camshafts_out).value_or(false);
    found_.measured_at.assign(service_.valves.size(), std::nullopt);
    if (!read_firing()) return;
    const CrankAngle margin = degrees(service_.margin, usual_margin, false);
    found_.margin = margin == CrankAngle() ? usual_margin : margin;
    found_.timing = read_timing();
    try {
      found_.stops = crank_stops(*found_.firing, found_.timing, found_.margin);
    } catch (const BadInput&) {
      remark(found_, {Say::timing_impossible});
      return;
    }
    found_.all_stops = found_.stops;
    for (std::size_t valve = 0; valve < service_.valves.size(); ++valve)
      if (const auto stop = clearest_stop(found_.stops, place_of(service_.valves[valve])))
        found_.measured_at[valve] = static_cast<int>(*stop) + 1;
  }

 private:
  bool read_firing() {
    if (not_given(service_.firing)) {
      remark(found_, {Say::firing_missing});
      return false;
    }
    try {
      found_.firing = firing_written(word_in(service_.firing));
    } catch (const BadInput&) {
      remark(found_, {Say::firing_unreadable});
      return false;
    }
    const int cylinders = cylinders_of(service_);
    if (found_.firing->cylinders() == cylinders) return true;
    remark(found_, {Say::firing_other_engine, {std::int64_t{cylinders}}});
    found_.firing.reset();
    return false;
  }

  ValveTiming read_timing() {
    const ValveTiming usual;
    return {
        .inlet_opens_before_tdc = degrees(service_.inlet.opens, usual.inlet_opens_before_tdc),
        .inlet_closes_after_bdc = degrees(service_.inlet.closes, usual.inlet_closes_after_bdc),
        .exhaust_opens_before_bdc = degrees(service_.exhaust.opens, usual.exhaust_opens_before_bdc),
        .exhaust_closes_after_tdc =
            degrees(service_.exhaust.closes, usual.exhaust_closes_after_tdc)};
  }

  CrankAngle degrees(const Entry& entry, CrankAngle usual, bool of_timing = true) {
    if (not_given(entry)) {
      found_.usual_timing = found_.usual_timing || of_timing;
      return usual;
    }
    const auto number = number_entered(entry);
    if (number && *number >= -180 && *number <= 180) return CrankAngle::of(*number);
    if (!told_of_degrees_) remark(found_, {Say::timing_not_number});
    told_of_degrees_ = true;
    return usual;
  }

  const Service& service_;
  Findings& found_;
  bool told_of_degrees_ = false;
};

}  // namespace

void find_stops(const Service& service, Findings& found) { Crank(service, found).find(); }

}  // namespace shimwright
