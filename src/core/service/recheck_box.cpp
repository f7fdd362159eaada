// SPDX-License-Identifier: MPL-2.0
//
// What Recheck says at its top: what must not be done yet, which valves are not in order, and what
// is next.
#include <cstdint>

#include "core/service/bench.hpp"
#include "core/service/box_writer.hpp"
#include "core/service/listed_gaps.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/recheck.hpp"
#include "core/service/stage.hpp"
#include "core/service/valve_names.hpp"

namespace shimwright {
namespace {

class RecheckBox {
 public:
  RecheckBox(const Service& service, const Findings& found)
      : service_(service),
        found_(found),
        valves_(recheck_in(service, found)),
        box_(service, found) {}

  std::vector<BoxLine> lines() && {
    box_.add_words(Mood::loud, no_gap_in_words(service_, found_));
    box_.add_changed_gaps();
    if (service_.bench.empty())
      without_list();
    else if (!is_bench_done(service_))
      while_fitting();
    else
      after_fitting();
    return std::move(box_).lines();
  }

 private:
  template <class Condition>
  std::vector<std::string> valves_where(Condition condition) const {
    return names_where(service_, valves_, condition);
  }

  // Until the list is done, a gap found out of limits is only what is being put right: then new
  // gaps alone are judged.
  void add_verdicts(bool with_gaps_found) {
    const auto is_judged = [with_gaps_found](const ValveRecheck& valve) {
      return with_gaps_found || valve.gap_left;
    };
    box_.add_valves(Mood::loud, Say::recheck_outside, valves_where([&](const ValveRecheck& valve) {
                      return is_judged(valve) && is_outside_without_reason(valve);
                    }));
    box_.add_valves(Mood::remark, Say::recheck_off, valves_where(is_off_without_reason));
    box_.add_valves(Mood::remark, Say::recheck_left, valves_where([&](const ValveRecheck& valve) {
                      return is_judged(valve) && !valve.reason.empty() &&
                             (valve.outside || valve.verdict == RecheckVerdict::off);
                    }));
  }

  void without_list() {
    box_.add_readings_off();
    const bool is_nothing = is_nothing_to_fit(service_, found_);
    add_verdicts(is_nothing);
    if (is_nothing)
      box_.add(Mood::calm, {Say::recheck_nothing});
    else if (!is_any_reading_off(found_))
      box_.add(Mood::calm, {Say::recheck_fit_first});
  }

  void while_fitting() {
    if (const auto empty = valves_standing_empty(service_); !empty.empty())
      box_.add(Mood::loud, {Say::bench_valve_empty, {empty}});
    box_.add(Mood::remark, {Say::recheck_not_yet,
                            {static_cast<std::int64_t>(ticked_steps(service_)),
                             static_cast<std::int64_t>(service_.bench.size())}});
    add_verdicts(false);
  }

  void after_fitting() {
    add_verdicts(true);
    const auto due = valves_where(must_be_measured);
    box_.add_valves(Mood::remark, Say::recheck_to_measure, due);
    if (due.empty()) {
      const bool is_in_order = box_.is_empty();
      box_.add(Mood::calm, {is_in_order ? Say::recheck_in_order : Say::recheck_again});
    }
    box_.add_valves(Mood::calm, Say::recheck_also, valves_where([](const ValveRecheck& valve) {
                      return valve.verdict == RecheckVerdict::asked;
                    }));
  }

  const Service& service_;
  const Findings& found_;
  std::vector<ValveRecheck> valves_;
  BoxWriter box_;
};

}  // namespace

std::vector<BoxLine> box_of_recheck(const Service& service, const Findings& found) {
  return RecheckBox(service, found).lines();
}

}  // namespace shimwright
