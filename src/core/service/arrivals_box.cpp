// SPDX-License-Identifier: MPL-2.0
//
// What Arrivals says at its top: what goes back, what is still missing, and when all is in hand.
#include <algorithm>
#include <cstdint>

#include "core/service/box_writer.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

class ArrivalsBox {
 public:
  ArrivalsBox(const Service& service, const Findings& found)
      : service_(service), found_(found), box_(service, found) {}

  std::vector<BoxLine> lines() && {
    box_.add_mend_first(Page::engine, Say::sheet_engine);
    box_.add_mend_first(Page::head, Say::sheet_head);
    box_.add_remarks_on(Page::arrivals);
    if (is_anything_ordered(found_))
      on_what_is_ordered();
    else
      box_.add(Mood::calm, {Say::arrivals_none});
    return std::move(box_).lines();
  }

 private:
  void on_what_is_ordered() {
    add_what_to_send_back();
    box_.add_readings_off();
    add_arrivals_at_the_edge();
    box_.add_list(Say::arrivals_not_needed,
                  arrivals_with(ArrivalVerdict::not_needed, service_, found_));
    box_.add_list(Say::arrivals_to_measure, arrivals_to_measure(service_, found_));
    box_.add_still_to_come();
    if (const auto missing = missing_shims(found_, false); !missing.empty())
      box_.add(Mood::remark, {Say::arrivals_to_order, {shims_listed(service_, found_, missing)}});
    box_.add_stand_ins_wanted();
    const bool is_to_be_fitted = found_.steps && !found_.steps->steps.empty();
    if (is_to_be_fitted && shims_not_in_hand(found_).empty() && !waits_for_stand_in(found_) &&
        !is_any_reading_off(found_))
      box_.add(Mood::calm, {Say::arrivals_complete});
  }

  void add_what_to_send_back() {
    const auto rows = arrivals_with(ArrivalVerdict::send_back, service_, found_);
    const Money money = money_to_send_back(found_);
    if (rows.empty() || money == Money())
      box_.add_list(Say::arrivals_back, rows);
    else
      box_.add(Mood::remark,
               {Say::arrivals_back_money, {rows, sum_in_currency(money, service_, found_.teller)}});
  }

  // It serves, as what was ordered would have, but not as well.
  void add_arrivals_at_the_edge() {
    const auto rows = arrivals_with(ArrivalVerdict::will_do, service_, found_);
    for (std::size_t i = 0; i < found_.arrivals.size(); ++i) {
      const auto& valve = found_.arrivals[i].valve;
      const std::int64_t row = service_.arrivals[i].row;
      if (!valve || std::ranges::find(rows, std::to_string(row)) == rows.end()) continue;
      const ValvePlan& plan = found_.valve_plans[*valve];
      if (!plan.after || plan.then == State::good || plan.then == State::unread) continue;
      box_.add(Mood::remark, {Say::arrivals_at_the_edge,
                              {row, service_.valves[*valve].name, *plan.after, say_of(plan.then)}});
    }
  }

  const Service& service_;
  const Findings& found_;
  BoxWriter box_;
};

}  // namespace

std::vector<BoxLine> box_of_arrivals(const Service& service, const Findings& found) {
  return ArrivalsBox(service, found).lines();
}

}  // namespace shimwright
