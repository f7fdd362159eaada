// SPDX-License-Identifier: MPL-2.0
#include "core/service/findings.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/entries/ranges.hpp"
#include "core/fitting/steps_entries.hpp"
#include "core/plan/nearest.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/crank_findings.hpp"
#include "core/service/entered.hpp"
#include "core/service/entry_remarks.hpp"
#include "core/service/listed_gaps.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/rules.hpp"
#include "core/service/steps_findings.hpp"
#include "core/service/stock_findings.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// What a micrometer's entry takes. A mark for less is a gap in the wrong row: 0.18.
bool can_be_a_shim(const std::optional<Length>& size) {
  return size && *size >= ranges::thinnest_shim && *size <= ranges::thickest_shim;
}

bool has_decimal_mark(std::string_view text) {
  return text.find_first_of(".,") != std::string_view::npos;
}

class Finder {
 public:
  explicit Finder(const Service& service) : service_(service) {}

  Findings find() && {
    read_book();
    for (const Side side : {Side::exhaust, Side::inlet}) read_side(side);
    if (same_word(found_.exhaust.series, found_.inlet.series))
      found_.one_series = found_.exhaust.series;
    for (const auto& valve : service_.valves) read_valve(valve);
    find_readings_off(service_, found_);
    for (const auto& row : service_.arrivals)
      found_.arrivals.push_back(arrival_in(service_, row, found_.one_series));
    stock_ = stock_findings(service_, unit_, found_.one_series, found_.arrivals);
    found_.nothing_listed = stock_.nothing_listed;
    make_plan();
    tell_remarks_on_engine(service_, found_, limits_table(), rules_table());
    find_stops(service_, found_);
    tell_remarks_on_head(service_, found_, read_.troubles);
    tell_remarks_on_shims(service_, found_, read_.troubles, stock_);
    tell_remarks_on_arrivals(service_, found_);
    found_.sizes = std::move(stock_.sizes);
    find_steps(service_, found_);
    find_listed_gaps(service_, found_);
    return std::move(found_);
  }

 private:
  void read_book() {
    unit_ = unit_of(service_);
    const std::string half = word_in(service_.half);
    const std::string_view mark = half.find(',') == std::string::npos ? "." : ",";
    found_.teller = Teller(language_named(word_in(service_.language)), unit_, mark, Terms::book);
    const auto doubt = length_entered(service_.doubt, unit_);
    found_.doubt_given = doubt.has_value();
    if (doubt && *doubt >= Length()) found_.doubt = *doubt;
    const auto allowed = length_entered(service_.allowed_difference, unit_);
    if (allowed && *allowed >= Length()) found_.allowed = *allowed;
  }

  void read_side(Side side) {
    const Service::SideEntries& entries = service_.of(side);
    SideFindings& own = side == Side::exhaust ? found_.exhaust : found_.inlet;
    own.series = not_given(entries.series) ? "" : word_in(entries.series);
    const auto min = length_entered(entries.min, unit_);
    const auto max = length_entered(entries.max, unit_);
    if (!min || !max) return;
    const Limits limits{*min, *max};
    try {
      check_limits(limits);
    } catch (const BadInput&) {
      return;  // told on Engine
    }
    own.limits = limits;
    const double bias = number_entered(entries.bias).value_or(default_bias);
    own.aim = aim_between(limits, bias >= 0 && bias <= 1 ? bias : default_bias);
  }

  void read_valve(const Service::ValveEntries& entries) {
    ValveFindings& valve = found_.valves.emplace_back();
    valve.gap = length_entered(entries.gap, unit_);
    if (valve.gap && *valve.gap < Length()) valve.gap.reset();
    valve.marked = size_marked(service_, entries.mark);
    valve.measured = length_entered(entries.micrometer, unit_);
    if (valve.measured && *valve.measured <= Length()) valve.measured.reset();
    valve.shim = valve.measured                  ? valve.measured
                 : not_given(entries.micrometer) ? valve.marked
                                                 : std::nullopt;
    if (!not_given(entries.mark) || valve.measured)
      valve.trust = trust_in(valve.marked, valve.measured, found_.allowed);
    const auto exception = exception_named(entries.exception);
    valve.alone = exception.value_or(Exception::leave) == Exception::leave;
    valve.nearest = exception == Exception::nearest;
    const SideFindings& side = found_.of(entries.side);
    if (not_given(entries.gap))
      valve.now = State::unread;
    else if (valve.gap && side.limits)
      valve.now = state_of(valve.gap, *side.limits, found_.doubt);
  }

  static Entry mm_or_nothing(const std::optional<Length>& length) {
    return length ? Entry(length->mm()) : Entry();
  }

  static Entry yes_if(bool holds) { return holds ? Entry(1.0) : Entry(); }

  std::vector<Entry> limits_of(Side side) const {
    const Service::SideEntries& entries = service_.of(side);
    return {in_mm(entries.min, unit_), in_mm(entries.max, unit_),
            mm_or_nothing(found_.of(side).aim), in_mm(service_.doubt, unit_)};
  }

  EntryTable valve_table() const {
    EntryTable table;
    for (std::size_t i = 0; i < service_.valves.size(); ++i) {
      const auto& valve = service_.valves[i];
      const auto& read = found_.valves[i];
      const Entry shim = !not_given(valve.micrometer) ? in_mm(valve.micrometer, unit_)
                                                      : mm_or_nothing(read.marked);
      const Entry gap = read.off ? Entry() : in_mm(valve.gap, unit_);
      std::vector<Entry> row{valve.name, found_.of(valve.side).series, gap, shim};
      std::ranges::move(limits_of(valve.side), std::back_inserter(row));
      row.insert(row.end(), {yes_if(read.alone), yes_if(read.nearest)});
      table.push_back(std::move(row));
    }
    return table;
  }

  // The limits of either side, shaped as the table of valves with nothing read.
  EntryTable limits_table() const {
    EntryTable table;
    for (const Side side : {Side::exhaust, Side::inlet}) {
      std::vector<Entry> row{
          found_.teller.say(side == Side::exhaust ? Say::exhaust_side : Say::inlet_side),
          found_.of(side).series, Entry(), Entry()};
      std::ranges::move(limits_of(side), std::back_inserter(row));
      table.push_back(std::move(row));
    }
    return table;
  }

  EntryTable rules_table() const {
    const auto given = [](const Entry& entry) { return not_given(entry) ? Entry() : entry; };
    return {{std::string("touch good"), given(service_.touch_good)},
            {std::string("work"), given(service_.work)},
            {std::string("doubt"), given(service_.stay_clear)},
            {std::string("first"), given(service_.first)},
            {std::string("nearest"), given(service_.nearest)}};
  }

  void make_plan() {
    read_ = read_entries(valve_table(), stock_.table, rules_table());
    found_.question = read_.question;
    const bool sound = std::ranges::none_of(read_.troubles, &Trouble::grave) &&
                       found_.question.valves.size() == service_.valves.size();
    if (!sound) return;
    if (is_any_reading_off(found_)) hold_good_valves_still();
    found_.plan = best_plan(found_.question);
    for (std::size_t i = 0; i < service_.valves.size(); ++i)
      found_.valve_plans.push_back(plan_for(i));
    give_arrivals_to_valves(found_);
  }

  // A reading that is off is taken again before anything is decided by it.
  void hold_good_valves_still() {
    for (std::size_t i = 0; i < found_.valves.size(); ++i)
      if (found_.valves[i].now == State::good) found_.question.valves[i].locked = true;
  }

  ValvePlan plan_for(std::size_t index) const {
    const PlanLine& line = found_.plan->lines[index];
    const ValveFindings& valve = found_.valves[index];
    const SideFindings& side = found_.of(service_.valves[index].side);
    ValvePlan told{.action = line.action,
                   .from = line.from,
                   .arrival = {},
                   .size = line.size,
                   .after = line.after,
                   .margin = line.margin,
                   .then = line.state,
                   .cost = line.cost,
                   .thinnest = {},
                   .thickest = {},
                   .nearest = {},
                   .nearest_after = {}};
    const PlanRules& rules = found_.question.rules;
    const Length plan_doubt = rules.use_doubt ? found_.doubt : Length();
    const bool opens_good = rules.touch_good && !is_any_reading_off(found_);
    const auto kept = kept_unseen(valve, side, opens_good, plan_doubt);
    if (kept && !valve.off) {
      told.action = Action::keep;
      told.unseen = true;
      told.after = valve.gap;
      told.margin = margin_of(*valve.gap, *side.limits);
      told.then = *kept;
    }
    told.measure_again = is_to_be_measured_again(valve, told.then);
    const bool outside = told.margin && *told.margin < Length();
    told.left_outside = told.action == Action::keep && outside;
    told.fitted_outside = outside && told.action != Action::keep && told.action != Action::none;
    if (told.action == Action::none) {
      auto serving = serving_shims(*valve.gap, *valve.shim, *side.limits, found_.doubt);
      if (!serving) serving = serving_shims(*valve.gap, *valve.shim, *side.limits);
      if (serving) {
        told.thinnest = serving->thinnest;
        told.thickest = serving->thickest;
      }
      told.nearest = nearest_listed(found_.question.valves[index], found_.question.stock);
      if (told.nearest)
        told.nearest_after = clearance_after(*valve.gap, *valve.shim, *told.nearest);
    }
    return told;
  }

  const Service& service_;
  Unit unit_ = Unit::mm;
  Findings found_;
  StockFindings stock_;
  Entries read_;
};

}  // namespace

bool Findings::any_grave(Page page) const {
  return std::ranges::any_of(
      remarks, [page](const Remark& remark) { return remark.page == page && remark.grave; });
}

std::size_t Findings::remarks_on(Page page) const {
  return static_cast<std::size_t>(std::ranges::count(remarks, page, &Remark::page));
}

Unit unit_of(const Service& service) {
  return same_word(word_in(service.unit), "inch") ? Unit::inch : Unit::mm;
}

std::optional<Length> size_marked(const Service& service, const Entry& mark) {
  if (not_given(mark)) return std::nullopt;
  const std::string words = word_in(mark);
  const std::string scheme = not_given(service.marks) ? "auto" : word_in(service.marks);
  try {
    if (unit_of(service) == Unit::inch && same_word(scheme, "auto") && has_decimal_mark(words)) {
      const auto size = thickness_marked(words, MarkScheme::inch);
      return can_be_a_shim(size) ? size : std::nullopt;
    }
    const auto size = thickness_marked(words, mark_scheme_named(scheme));
    return can_be_a_shim(size) ? size : std::nullopt;
  } catch (const BadInput&) {
    return std::nullopt;  // told on Head
  }
}

const Told* Findings::crank_trouble() const {
  if (!stops.empty()) return nullptr;
  for (const Remark& remark : remarks)
    if (const auto* told = std::get_if<Told>(&remark.said);
        told && (told->what == Say::firing_missing || told->what == Say::firing_unreadable ||
                 told->what == Say::firing_other_engine || told->what == Say::timing_impossible))
      return told;
  return nullptr;
}

Findings findings_in(const Service& service) { return Finder(service).find(); }

}  // namespace shimwright
