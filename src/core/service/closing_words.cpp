// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing_words.hpp"

#include <algorithm>

#include "core/entries/entry_row.hpp"
#include "core/log/day.hpp"
#include "core/service/entered.hpp"
#include "core/service/valve_names.hpp"
#include "core/service/view_parts.hpp"

namespace shimwright {
namespace {

class Words {
 public:
  Words(const Service& service, const Findings& found, const std::vector<ValveAtClose>& valves,
        const DrawerAfter& drawer, const CheckFacts& facts, bool closes)
      : service_(service),
        found_(found),
        valves_(valves),
        drawer_(drawer),
        facts_(facts),
        closes_(closes) {}

  std::vector<Told> all() && {
    add_rows();
    add_shims();
    add_drawer();
    add_arrivals();
    add_in_doubt();
    add_left_with_reason();
    if (closes_) {
      add(Say::close_clears);
    } else {
      add_gaps_lost();
      add_readings_off();
      add(Say::close_begins_round, {facts_.round + 1, facts_.check});
    }
    return std::move(told_);
  }

 private:
  void add(Say what, std::vector<Word> words = {}) { told_.push_back({what, std::move(words)}); }
  // Unless there are none.
  void add_names(Say what, const std::vector<std::string>& names) {
    if (!names.empty()) add(what, {names});
  }

  void add_rows() {
    add(Say::close_rows, {static_cast<std::int64_t>(valves_.size()), facts_.check, facts_.round,
                          day_in_figures(facts_.day)});
    if (facts_.distance)
      add(Say::close_at_distance, {*facts_.distance, distance_unit_of(service_)});
  }

  std::string column(const std::optional<Length>& length) const {
    return length ? found_.teller.column(*length) : std::string("?");
  }

  void add_shims() {
    std::vector<std::string> changed;
    for (const ValveAtClose& valve : valves_)
      if (valve.recheck.opened)
        changed.push_back(found_.teller.say(
            Say::close_shim_changed,
            {valve.name, column(valve.recheck.shim_found), column(valve.recheck.shim_fitted)}));
    if (changed.empty()) return add(Say::close_none_changed);
    add_names(Say::close_shims, changed);
  }

  std::vector<std::string> sizes_of(const std::vector<MovedShim>& shims) const {
    std::vector<std::string> sizes;
    for (const MovedShim& shim : shims) sizes.push_back(found_.teller.column(shim.size));
    return sizes;
  }

  void add_drawer() {
    add_names(Say::close_out_of_drawer, sizes_of(drawer_.out));
    std::vector<std::string> in;
    for (const MovedShim& shim : drawer_.in)
      if (!shim.valve.empty())
        in.push_back(found_.teller.say(Say::close_came_out_of,
                                       {found_.teller.column(shim.size), shim.valve}));
    add_names(Say::close_into_drawer, in);
    std::vector<std::string> missing;
    for (const MovedShim& shim : drawer_.not_listed)
      missing.push_back(
          found_.teller.say(Say::close_is_in, {found_.teller.column(shim.size), shim.valve}));
    add_names(Say::close_not_listed, missing);
    std::vector<std::string> marked_otherwise;
    for (const MovedShim& shim : drawer_.in)
      if (shim.marked)
        marked_otherwise.push_back(
            found_.teller.say(Say::close_marked_as, {column(shim.size), column(shim.marked)}));
    add_names(Say::close_mark_differs, marked_otherwise);
  }

  void add_arrivals() {
    std::vector<std::string> unused;
    for (const std::size_t i : drawer_.arrivals)
      unused.push_back(
          found_.teller.say(Say::close_on_row, {found_.teller.column(*found_.arrivals[i].size),
                                                std::int64_t{service_.arrivals[i].row}}));
    add_names(Say::close_unused, unused);
    std::vector<std::string> waiting;
    for (std::size_t i = 0; i < found_.arrivals.size(); ++i)
      if (found_.arrivals[i].state == ArrivalState::on_order)
        waiting.push_back(std::to_string(service_.arrivals[i].row));
    add_names(Say::close_still_on_order, waiting);
  }

  // The log has them as good, which the readings do not prove.
  void add_in_doubt() {
    std::vector<std::string> doubtful;
    for (std::size_t i = 0; i < valves_.size(); ++i) {
      const auto& limits = found_.of(service_.valves[i].side).limits;
      if (!limits || valves_[i].recheck.outside) continue;
      const State state = state_of(valves_[i].recheck.gap_now, *limits, found_.doubt);
      if (state == State::tight_doubtful || state == State::loose_doubtful)
        doubtful.push_back(
            found_.teller.say(Say::close_in_doubt_as, {valves_[i].name, say_of(state)}));
    }
    add_names(Say::close_in_doubt, doubtful);
  }

  void add_left_with_reason() {
    add_names(Say::close_left_open, names_where(service_, valves_, [](const ValveAtClose& valve) {
                return !valve.is_in_order() && valve.has_reason();
              }));
  }

  void add_gaps_lost() {
    add_names(Say::close_gaps_lost, names_where(service_, valves_, [](const ValveAtClose& valve) {
                return valve.touched && !valve.recheck.gap_left;
              }));
  }

  void add_readings_off() {
    add_names(Say::close_measure_first,
              names_where(service_, valves_, [](const ValveAtClose& valve) {
                return is_off_without_reason(valve.recheck);
              }));
  }

  const Service& service_;
  const Findings& found_;
  const std::vector<ValveAtClose>& valves_;
  const DrawerAfter& drawer_;
  const CheckFacts& facts_;
  bool closes_;
  std::vector<Told> told_;
};

}  // namespace

std::string distance_unit_of(const Service& service) {
  return not_given(service.distance_unit) ? "km" : word_in(service.distance_unit);
}

std::vector<Told> closing_in_words(const Service& service, const Findings& found,
                                   const std::vector<ValveAtClose>& valves,
                                   const DrawerAfter& drawer, const CheckFacts& facts,
                                   bool closes) {
  return Words(service, found, valves, drawer, facts, closes).all();
}

}  // namespace shimwright
