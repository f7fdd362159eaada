// SPDX-License-Identifier: MPL-2.0
//
// What the book shows for each valve: its card on Head, its row on Plan.
#include "core/plan/nearest.hpp"
#include "core/service/entered.hpp"
#include "core/service/rules.hpp"
#include "core/service/view_parts.hpp"
#include "core/values/palette.hpp"

namespace shimwright {
namespace {

class ValveShower {
 public:
  ValveShower(const Service& service, const Findings& found) : service_(service), found_(found) {}

  ShownTable show() {
    for (index_ = 0; index_ < service_.valves.size(); ++index_) {
      show_reading();
      if (index_ < found_.valve_plans.size())
        show_plan(found_.valve_plans[index_]);
      else
        put("card do", tell(Say::mend_entries));
    }
    return std::move(table_);
  }

 private:
  const Teller& teller() const { return found_.teller; }
  std::string tell(Say what, std::initializer_list<Word> words = {}) const {
    return teller().say(what, words);
  }
  void put(std::string_view column, std::string text) {
    table_.put(column, index_ + 1) = std::move(text);
  }
  Side side() const { return service_.valves[index_].side; }
  const ValveFindings& valve() const { return found_.valves[index_]; }
  std::string length(const std::optional<Length>& length) const {
    return length ? teller().column(*length) : std::string();
  }

  void show_reading() {
    const Service::ValveEntries& entries = service_.valves[index_];
    put("name", entries.name);
    put("state", valve().now ? std::string(word_for(*valve().now)) : std::string("unjudged"));
    put("now", valve().now
                   ? state_in_words(*valve().now, teller())
                   : tell(found_.of(entries.side).limits ? Say::gap_unknown : Say::limits_unknown));
    put("gap", length(valve().gap));
    put("shim", length(valve().shim));
  }

  void show_plan(const ValvePlan& plan) {
    const bool changed = changes_shim(plan.action);
    put("outside", yes_if(stays_outside(plan)));
    put("kept", yes_if(plan.action == Action::keep && !plan.left_outside));
    put("action", std::string(word_for(plan.action)));
    put("card do", to_do(plan, true));
    put("do", to_do(plan, false));
    put("card from", source(plan, true));
    put("from", source(plan, false));
    put("fit", changed ? length(plan.size) : std::string());
    put("after label", plan.after ? tell(Say::after) : std::string());
    put("after", length(plan.after));
    const bool is_known = !plan.measure_again && !valve().off;
    const std::string then = result(plan);
    const std::string on_card =
        plan.then == State::unread ? std::string() : tell(Say::then_state, {then});
    put("then", then);
    put("margin", plan.margin && is_known ? length(plan.margin) : std::string());
    put("then state", is_known ? std::string(word_for(plan.then)) : std::string("again"));
    put("card then", on_card);
    put("foot label", plan.nearest ? tell(Say::nearest) : plan.after ? tell(Say::after) : "");
    put("foot value", length(plan.nearest ? plan.nearest : plan.after));
    put("foot", plan.nearest ? nearest_leaves(plan, found_.of(side()), teller()) : on_card);
    put("cost", changed && plan.cost > Money() ? teller().sum(plan.cost) : std::string());
  }

  std::string result(const ValvePlan& plan) const {
    if (valve().off) return {};
    if (plan.measure_again) return tell(Say::measure_again);
    // Its gap is read, and its state stands on Head: what is missing is the shim.
    if (plan.then == State::unread && valve().gap && !valve().shim) return tell(Say::shim_unknown);
    return state_in_words(plan.then, teller());
  }

  // On a card with the size to fit, which Plan has in a column of its own.
  std::string to_do(const ValvePlan& plan, bool on_card) const {
    if (valve().off) return tell(Say::measure_first);
    if (plan.left_outside) return tell(Say::stays, {say_of(plan.then)});
    switch (plan.action) {
      case Action::keep:
        return tell(Say::keep);
      case Action::none:
        return tell(found_.nothing_listed ? Say::list_shims : Say::none_fits);
      case Action::unread:
        if (!on_card) return tell(Say::measure);
        if (valve().gap && valve().now) return tell(Say::measure_shim);
        return valve().shim ? tell(Say::measure_gap) : std::string();
      case Action::move:
        return with_size(Say::move, plan, on_card);
      case Action::spare:
        return with_size(plan.arrival ? Say::bought : Say::spare, plan, on_card);
      case Action::buy:
        return with_size(Say::buy, plan, on_card);
    }
    return {};
  }

  std::string with_size(Say action, const ValvePlan& plan, bool on_card) const {
    return on_card ? tell(Say::action_and_size, {action, length(plan.size)}) : tell(action);
  }

  std::string source(const ValvePlan& plan, bool on_card) const {
    if (plan.left_outside) return tell(Say::left_alone_as_entered);
    if (plan.unseen) return tell(on_card ? Say::no_need_on_card : Say::no_need_to_measure);
    switch (plan.action) {
      case Action::move: {
        const std::string& giver = service_.valves[*plan.from].name;
        const bool measured = found_.valves[*plan.from].measured.has_value();
        if (on_card) return tell(measured ? Say::from_valve : Say::from_valve_measure, {giver});
        return measured ? giver : tell(Say::measure_it, {giver});
      }
      case Action::spare:
        if (plan.arrival)
          return tell(found_.arrivals[*plan.arrival].state == ArrivalState::arrived
                          ? Say::arrived
                          : Say::on_order);
        return tell(on_card ? Say::from_spares : Say::spares);
      case Action::buy:
        return tell(on_card ? Say::to_order : Say::order);
      case Action::none:
        if (!plan.thinnest) return tell(Say::no_size_serves);
        return tell(Say::needs_span, {teller().span(*plan.thinnest, *plan.thickest)});
      case Action::keep:
      case Action::unread:
        break;
    }
    return {};
  }

  const Service& service_;
  const Findings& found_;
  ShownTable table_;
  std::size_t index_ = 0;
};

std::string trust_in_words(const ValveFindings& valve, const Teller& teller) {
  if (!valve.trust) return {};
  switch (*valve.trust) {
    case Trust::as_marked:
      return teller.say(Say::as_marked);
    case Trust::thinner:
      return teller.say(Say::thinner_than_marked,
                        {teller.short_of(*valve.marked - *valve.measured)});
    case Trust::thicker:
      return teller.say(Say::thicker_than_marked,
                        {teller.short_of(*valve.measured - *valve.marked)});
    case Trust::unmarked:
      return teller.say(Say::unmarked);
    case Trust::unmeasured:
      return teller.say(Say::unmeasured);
  }
  return {};
}

}  // namespace

Say say_of(State state) {
  switch (state) {
    case State::unread:
      return Say::unread;
    case State::tight:
      return Say::tight;
    case State::tight_doubtful:
      return Say::tight_doubtful;
    case State::good:
      return Say::good;
    case State::loose_doubtful:
      return Say::loose_doubtful;
    case State::loose:
      return Say::loose;
  }
  return Say::unread;
}

std::string state_in_words(State state, const Teller& teller) {
  return teller.say(Say::state_with_sign, {std::string(look_of(state).sign), say_of(state)});
}

std::string nearest_leaves(const ValvePlan& plan, const SideFindings& side, const Teller& teller) {
  const Length after = *plan.nearest_after;
  const bool tight = after < side.limits->min;
  return teller.say(tight ? Say::leaves_too_tight : Say::leaves_too_loose,
                    {teller.column(after), teller.column(outside_by(after, *side.limits))});
}

ShownTable show_cards(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table;
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    const ValveFindings& valve = found.valves[i];
    const auto put = [&](std::string_view column, std::string text) {
      table.put(column, i + 1) = std::move(text);
    };
    const auto& limits = found.of(service.valves[i].side).limits;
    put("limits", limits ? teller.say(Say::limits_span, {teller.span(limits->min, limits->max)})
                         : std::string());
    const auto stop = found.measured_at[i];
    put("gap label", stop ? teller.say(Say::gap_at_stop, {static_cast<std::int64_t>(*stop)})
                          : teller.say(Say::gap));
    put("shim is", trust_in_words(valve, teller));
    put("shim odd", yes_if(differs_from_mark(valve.trust)));
  }
  return table;
}

ShownTable show_valves(const Service& service, const Findings& found) {
  return ValveShower(service, found).show();
}

}  // namespace shimwright
