// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/log/day.hpp"
#include "core/service/bench.hpp"
#include "core/service/boxes.hpp"
#include "core/service/closing_rows.hpp"
#include "core/service/closing_words.hpp"
#include "core/service/closing_writes.hpp"
#include "core/service/next_check_words.hpp"
#include "core/service/rules.hpp"
#include "core/service/valve_names.hpp"

namespace shimwright {
namespace {

class Closer {
 public:
  Closer(const Service& service, const Findings& found, const EntryTable& log,
         const ClosingEntries& entries, std::string_view today)
      : service_(service),
        found_(found),
        entries_(entries),
        today_(today),
        log_(log),
        so_far_(log_so_far(log)),
        valves_(valves_at_close(service, found)) {}

  Closing close() && {
    if (std::ranges::none_of(valves_, [](const ValveAtClose& valve) {
          return valve.recheck.gap_found || valve.recheck.gap_left;
        })) {
      refuse({Say::close_nothing});
      return std::move(closing_);
    }
    look_at_limits();
    look_at_bench();
    look_at_valves();
    look_at_arrivals();
    look_at_readings_off();
    look_at_shims_found();
    look_at_entries();
    const bool closes = !entries_.another_round;
    const DrawerAfter drawer = drawer_after(service_, found_, closes, day_in_figures(facts_.day));
    if (drawer.rows_short > 0) refuse({Say::close_no_room, {drawer.rows_short}});
    if (!closing_.refusals.empty()) {
      closing_.questions.clear();
      return std::move(closing_);
    }
    closing_.rows = closing_rows(service_, found_, valves_, facts_);
    closing_.writes = closes ? writes_to_close(service_, found_, valves_, drawer)
                             : writes_for_round(service_, found_, valves_, drawer, facts_.check,
                                                facts_.round + 1);
    closing_.deeds = closing_in_words(service_, found_, valves_, drawer, facts_, closes);
    if (closes)
      std::ranges::move(next_check_after(service_, log_, closing_.rows),
                        std::back_inserter(closing_.deeds));
    return std::move(closing_);
  }

 private:
  void refuse(Told why) { closing_.refusals.push_back(std::move(why)); }

  // Unless there are none.
  void refuse_for(Say what, const std::vector<std::string>& names) {
    if (!names.empty()) refuse({what, {names}});
  }

  void look_at_limits() {
    for (const Side side : {Side::exhaust, Side::inlet})
      if (!found_.of(side).limits && std::ranges::any_of(service_.valves, [side](const auto& one) {
            return one.side == side;
          }))
        refuse({Say::limits_missing, {side == Side::exhaust ? Say::exhaust : Say::inlet}});
  }

  void look_at_bench() {
    if (service_.bench.empty()) {
      if (entries_.another_round) refuse({Say::close_round_of_nothing});
      return;
    }
    if (const auto empty = valves_standing_empty(service_); !empty.empty())
      refuse({Say::bench_valve_empty, {empty}});
    if (step_left_out(service_))
      refuse(left_out_in_words(service_));
    else if (!is_bench_done(service_))
      refuse({Say::close_bench_unfinished,
              {static_cast<std::int64_t>(ticked_steps(service_)),
               static_cast<std::int64_t>(service_.bench.size())}});
  }

  void look_at_valves() {
    refuse_for(Say::close_unreadable, names_where(service_, valves_, [](const ValveAtClose& valve) {
                 return valve.recheck.verdict == RecheckVerdict::unreadable;
               }));
    if (entries_.another_round || (!service_.bench.empty() && !is_bench_done(service_))) return;
    const std::size_t before = closing_.refusals.size();
    refuse_for(service_.bench.empty() ? Say::close_not_measured : Say::close_not_measured_again,
               names_where(service_, valves_, [](const ValveAtClose& valve) {
                 return !valve.is_measured() && !valve.has_reason() &&
                        valve.recheck.verdict != RecheckVerdict::unreadable;
               }));
    refuse_for(Say::close_off, names_where(service_, valves_, [](const ValveAtClose& valve) {
                 return is_off_without_reason(valve.recheck);
               }));
    refuse_for(Say::close_outside, names_where(service_, valves_, [](const ValveAtClose& valve) {
                 return is_outside_without_reason(valve.recheck);
               }));
    if (closing_.refusals.size() > before)
      refuse({service_.bench.empty() ? Say::close_say_why : Say::close_round_or_say_why});
  }

  // One that has come, but in no size that goes into the drawer.
  void look_at_arrivals() {
    if (entries_.another_round) return;
    std::vector<std::string> rows;
    for (std::size_t i = 0; i < found_.arrivals.size(); ++i)
      if (found_.arrivals[i].state == ArrivalState::arrived && !found_.arrivals[i].size)
        rows.push_back(std::to_string(service_.arrivals[i].row));
    refuse_for(Say::close_arrival_unmeasured, rows);
  }

  // Another round asks for them anew.
  void look_at_readings_off() {
    if (entries_.another_round) return;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < valves_.size(); ++i)
      if (found_.valves[i].off && !valves_[i].touched && !valves_[i].recheck.gap_left)
        names.push_back(valves_[i].name);
    if (!names.empty()) ask({Say::close_off_last_round, {names}});
  }

  // Log and drawer go by Head, which may hold the new shim by mistake.
  void look_at_shims_found() {
    std::vector<std::string> told;
    for (std::size_t i = 0; i < valves_.size(); ++i) {
      const auto listed = shim_out_by_list(service_, found_, valves_[i].name);
      const auto& on_head = found_.valves[i].shim;
      if (are_far_apart(listed, on_head, found_.allowed))
        told.push_back(
            found_.teller.say(Say::close_shim_differs_as, {valves_[i].name, *on_head, *listed}));
    }
    if (!told.empty()) ask({Say::close_shim_differs, {told}});
  }

  void look_at_entries() {
    FactsRead read = facts_in(service_, so_far_, entries_, today_);
    facts_ = std::move(read.facts);
    std::ranges::move(read.refusals, std::back_inserter(closing_.refusals));
    std::ranges::move(read.questions, std::back_inserter(closing_.questions));
  }

  void ask(Told question) { closing_.questions.push_back(std::move(question)); }

  const Service& service_;
  const Findings& found_;
  const ClosingEntries& entries_;
  std::string_view today_;
  const EntryTable& log_;
  LogSoFar so_far_;
  std::vector<ValveAtClose> valves_;
  CheckFacts facts_;
  Closing closing_;
};

}  // namespace

Closing closing_of(const Service& service, const Findings& found, const EntryTable& log,
                   const ClosingEntries& entries, std::string_view today) {
  return Closer(service, found, log, entries, today).close();
}

}  // namespace shimwright
