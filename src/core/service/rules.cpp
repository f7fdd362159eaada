// SPDX-License-Identifier: MPL-2.0
#include "core/service/rules.hpp"

#include <algorithm>
#include <array>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {

std::optional<State> kept_unseen(const ValveFindings& valve, const SideFindings& side,
                                 bool opens_good_valves, Length plan_doubt) {
  if (!valve.gap || valve.shim || !side.limits) return std::nullopt;
  const State state = state_of(valve.gap, *side.limits, plan_doubt);
  const bool stays = valve.alone || (!opens_good_valves && state == State::good);
  return stays ? std::optional(state) : std::nullopt;
}

std::optional<Exception> exception_named(const Entry& entry) {
  if (not_given(entry)) return Exception::none;
  const std::string word = word_in(entry);
  if (same_word(word, "leave")) return Exception::leave;
  if (same_word(word, "nearest")) return Exception::nearest;
  const auto answer = yes_or_no(entry);
  if (!answer) return std::nullopt;
  return *answer ? Exception::leave : Exception::none;
}

bool is_to_be_measured_again(const ValveFindings& valve, State then) {
  return valve.gap == Length() && then != State::unread && then != State::tight;
}

bool stays_outside(const ValvePlan& plan) {
  return plan.left_outside || plan.fitted_outside || plan.action == Action::none;
}

bool differs_from_mark(const std::optional<Trust>& trust) {
  return trust == Trust::thinner || trust == Trust::thicker;
}

bool are_far_apart(std::optional<Length> marked, std::optional<Length> measured, Length allowed) {
  if (!marked || !measured) return false;
  const Length difference = abs(*marked - *measured);
  return difference > far_apart && difference > allowed;
}

bool is_far_apart(const ValveFindings& valve, Length allowed) {
  return are_far_apart(valve.marked, valve.measured, allowed);
}

std::optional<std::string> scheme_that_agrees(const std::string& mark, Length marked,
                                              Length measured, Length allowed) {
  // A misread mark is off by a little; a mark in another scheme by far.
  constexpr int times_off = 5;
  if (times_off * marked > measured && times_off * measured > marked) return std::nullopt;
  for (const char* name : {"hundredths", "thousandths", "mm", "in", "thou"}) {
    try {
      const auto read = thickness_marked(mark, mark_scheme_named(name));
      if (read && abs(*read - measured) <= std::max(allowed, far_apart)) return name;
    } catch (const BadInput&) {
      // By this scheme it is no shim's size.
    }
  }
  return std::nullopt;
}

std::size_t gaps_near_a_limit(const Findings& found) {
  if (found.doubt > Length()) return 0;
  return static_cast<std::size_t>(
      std::ranges::count_if(found.valve_plans, [](const ValvePlan& valve) {
        return valve.margin && *valve.margin >= Length() && *valve.margin < near_a_limit;
      }));
}

std::vector<std::size_t> moved_by_mark_alone(const Findings& found) {
  std::vector<std::size_t> givers;
  for (const ValvePlan& valve : found.valve_plans)
    if (valve.action == Action::move && valve.from && !found.valves[*valve.from].measured)
      givers.push_back(*valve.from);
  std::ranges::sort(givers);
  return givers;
}

bool shims_are_to_be_listed(const Findings& found) {
  return found.nothing_listed && std::ranges::any_of(found.valve_plans, [](const ValvePlan& valve) {
           return valve.action == Action::none;
         });
}

}  // namespace shimwright
