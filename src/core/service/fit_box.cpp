// SPDX-License-Identifier: MPL-2.0
//
// What Fit says at its top: before a list is taken, what keeps it from being safe; once one is on
// the bench, what to do first.
#include <algorithm>
#include <cstdint>

#include "core/service/before_next_step.hpp"
#include "core/service/bench.hpp"
#include "core/service/box_writer.hpp"
#include "core/service/listed_gaps.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/rules.hpp"
#include "core/service/stage.hpp"
#include "core/service/valve_names.hpp"

namespace shimwright {
namespace {

class FitBox {
 public:
  FitBox(const Service& service, const Findings& found)
      : service_(service), found_(found), box_(service, found) {}

  std::vector<BoxLine> lines() && {
    if (is_bench_for_camshafts_out(service_, found_))
      box_.add(Mood::remark, {Say::caution_camshafts});
    if (service_.bench.empty())
      before_taking();
    else
      on_the_bench();
    return std::move(box_).lines();
  }

 private:
  void before_taking() {
    if (!found_.plan) return box_.add(Mood::loud, {Say::bench_no_plan});
    if (found_.no_stop_for_work) box_.add(Mood::loud, {Say::bench_no_stop});
    if (const Told* trouble = found_.crank_trouble(); trouble && !found_.camshafts_out)
      box_.add(Mood::loud, *trouble);
    if (!found_.steps) return;
    box_.add_readings_off();
    if (found_.steps->steps.empty()) return nothing_to_fit();
    if (waits_for_stand_in(found_)) box_.add(Mood::loud, {Say::bench_ring});
    add_cautions();
    if (!is_any_reading_off(found_))
      box_.add(Mood::calm,
               {Say::bench_ready, {static_cast<std::int64_t>(found_.steps->steps.size())}});
  }

  void nothing_to_fit() {
    box_.add_valves_that_stay_outside();
    const auto unread = still_to_measure();
    if (unread.empty())
      box_.add(Mood::calm, {Say::bench_nothing});
    else
      box_.add_valves(Mood::remark, Say::bench_nothing_yet, unread);
  }

  void on_the_bench() {
    box_.add(before_next_step(service_, found_));
    if (is_any_without_gap(found_)) return;
    if (is_bench_done(service_)) {
      const bool measured = stage_of(service_, found_) == Stage::record;
      return box_.add(Mood::remark, {measured ? Say::bench_measured : Say::bench_done});
    }
    if (std::ranges::any_of(service_.bench, [](const auto& step) { return step.kind == "wait"; }))
      box_.add(Mood::loud, {Say::bench_ring});
    add_cautions();
    box_.add(Mood::calm, {Say::bench_go_on});
  }

  // What to know before the first step, and while it is not done yet.
  void add_cautions() {
    box_.add_words(Mood::loud, missing_in_words(service_, found_));
    if (const auto bought = shims_to_have(); !bought.empty())
      box_.add(Mood::remark, {Say::bench_to_have, {shims_listed(service_, found_, bought)}});
    box_.add_valves_that_stay_outside();
    box_.add_near_limits();
    box_.add_list(Say::known_by_mark, moved_by_mark());
    if (!found_.remarks.empty())
      box_.add(Mood::remark,
               {Say::bench_read_remarks, {static_cast<std::int64_t>(found_.remarks.size())}});
    box_.add_valves(Mood::remark, Say::bench_keep_all, still_to_measure());
  }

  // Of an owner who keeps no list of what has come, so that nobody knows what is in hand.
  std::vector<MissingShim> shims_to_have() const {
    std::vector<MissingShim> bought;
    if (is_anything_ordered(found_)) return bought;
    const auto fitted = shims_fitted(service_);
    for (std::size_t i = 0; i < found_.valve_plans.size(); ++i) {
      const ValvePlan& plan = found_.valve_plans[i];
      const bool is_in =
          std::ranges::find(fitted, service_.valves[i].name, &FittedShim::valve) != fitted.end();
      if (plan.action == Action::buy && plan.size && !is_in) bought.push_back({i, *plan.size});
    }
    return bought;
  }

  std::vector<std::string> moved_by_mark() const {
    std::vector<std::string> names;
    for (const std::size_t valve : moved_by_mark_alone(found_))
      names.push_back(service_.valves[valve].name);
    return names;
  }

  std::vector<std::string> still_to_measure() const {
    return names_where(service_, found_.valve_plans,
                       [](const ValvePlan& valve) { return valve.action == Action::unread; });
  }

  const Service& service_;
  const Findings& found_;
  BoxWriter box_;
};

}  // namespace

std::vector<BoxLine> box_of_fit(const Service& service, const Findings& found) {
  return FitBox(service, found).lines();
}

}  // namespace shimwright
