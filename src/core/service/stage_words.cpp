// SPDX-License-Identifier: MPL-2.0
#include "core/service/stage_words.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/service/before_next_step.hpp"
#include "core/service/bench.hpp"
#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/service/recheck.hpp"
#include "core/service/rules.hpp"
#include "core/service/stage.hpp"
#include "core/service/valve_names.hpp"

namespace shimwright {
namespace {

template <class Condition>
std::vector<std::string> rechecked_where(const Service& service, const Findings& found,
                                         Condition condition) {
  return names_where(service, recheck_in(service, found), condition);
}

bool has_all_limits(const Service& service, const Findings& found) {
  return std::ranges::all_of(service.valves, [&found](const auto& valve) {
    return found.of(valve.side).limits.has_value();
  });
}

bool is_any_grave(const Findings& found) {
  return std::ranges::any_of(found.remarks, &Remark::grave);
}

std::vector<std::string> valves_off(const Service& service, const Findings& found) {
  return names_where(service, found.valves,
                     [](const ValveFindings& valve) { return valve.off.has_value(); });
}

// What is to be entered on Head before the plan can settle every valve; none where nothing is.
std::optional<Told> still_to_measure(const Service& service, const Findings& found) {
  std::vector<std::string> without_gap;
  std::vector<std::string> without_shim;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i)
    if (found.valve_plans[i].action == Action::unread)
      (found.valves[i].gap ? without_shim : without_gap).push_back(service.valves[i].name);
  const Word gaps = named(without_gap, found.teller);
  const Word shims = named(without_shim, found.teller);
  if (without_gap.empty() && without_shim.empty()) return std::nullopt;
  if (without_shim.empty()) return Told{Say::next_measure, {gaps}};
  if (without_gap.empty()) return Told{Say::next_measure_shims, {shims}};
  return Told{Say::next_measure_and_shims, {gaps, shims}};
}

Told next_while_measuring(const Service& service, const Findings& found) {
  if (!has_all_limits(service, found)) return {Say::next_limits};
  if (!found.plan || is_any_grave(found)) return {Say::next_mend};
  if (const auto off = valves_off(service, found); !off.empty())
    return {Say::next_off, {named(off, found.teller)}};
  if (const auto missing = still_to_measure(service, found)) return *missing;
  if (shims_are_to_be_listed(found)) return {Say::next_list};
  if (!found.plan->order.empty()) return {Say::next_order};
  if (!found.steps) return {Say::next_no_steps};
  return {found.steps->steps.empty() ? Say::next_none_serves : Say::next_take};
}

}  // namespace

std::string round_in_words(const Service& service, const Teller& teller) {
  const auto check = number_entered(service.check_number);
  const auto round = number_entered(service.round);
  return check && round ? teller.say(Say::recheck_round, {*round, *check}) : std::string();
}

std::string stage_in_words(const Service& service, const Findings& found) {
  const auto count = [](std::size_t number) { return Word(static_cast<std::int64_t>(number)); };
  const auto say = [&found](Say what, std::initializer_list<Word> words = {}) {
    return found.teller.say(what, words);
  };
  std::string stage;
  switch (stage_of(service, found)) {
    case Stage::measuring:
      stage = say(Say::stage_measuring);
      break;
    case Stage::waiting:
      stage = say(Say::stage_waiting);
      break;
    case Stage::bench:
      stage = say(Say::stage_bench, {count(ticked_steps(service)), count(service.bench.size())});
      break;
    case Stage::recheck: {
      const auto measured = rechecked_where(
          service, found, [](const auto& valve) { return valve.gap_left.has_value(); });
      stage = say(Say::stage_recheck, {count(measured.size()), count(service.valves.size())});
      break;
    }
    case Stage::record:
      stage = say(rechecked_where(service, found, wants_another_round).empty()
                      ? Say::stage_record
                      : Say::stage_not_in_order);
  }
  const std::string round = round_in_words(service, found.teller);
  return round.empty() ? stage : say(Say::led_by, {round, stage});
}

std::string next_step_in_words(const Service& service, const Findings& found) {
  if (const auto first = before_next_step(service, found); !first.empty())
    return found.teller.say(Say::next_as_fit_says, {first.front().words});
  const auto told = [&]() -> Told {
    const auto off = valves_off(service, found);
    const bool is_ready = stage_of(service, found) != Stage::measuring;
    if (is_ready && service.bench.empty() && !off.empty())
      return {Say::next_off, {named(off, found.teller)}};
    switch (stage_of(service, found)) {
      case Stage::measuring:
        return next_while_measuring(service, found);
      case Stage::waiting:
        return {Say::next_arrivals};
      case Stage::bench:
        return {Say::next_step, {std::int64_t{next_step(service).value()}}};
      case Stage::recheck:
        return {Say::next_recheck,
                {named(rechecked_where(service, found, must_be_measured), found.teller)}};
      case Stage::record:
        break;
    }
    const auto round = rechecked_where(service, found, wants_another_round);
    return round.empty() ? Told{Say::next_close}
                         : Told{Say::next_round, {named(round, found.teller)}};
  };
  return in_words(told(), found.teller);
}

}  // namespace shimwright
