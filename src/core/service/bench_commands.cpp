// SPDX-License-Identifier: MPL-2.0
#include "core/service/bench_commands.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/entries/entry_row.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/service/entry_value.hpp"
#include "core/service/rules.hpp"
#include "core/service/shim_moves.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::optional<std::size_t> valve_named(const Service& service, const std::string& name) {
  const auto found = std::ranges::find(service.valves, name, &Service::ValveEntries::name);
  if (found == service.valves.end()) return std::nullopt;
  return static_cast<std::size_t>(found - service.valves.begin());
}

Entry given(const Entry& entry) { return not_given(entry) ? Entry() : entry; }

// The mark that the book would read as this size, as it is etched: figures without a decimal mark
// where the scheme allows it.
std::optional<Entry> mark_for(const Service& service, Length size) {
  const double mm = size.mm();
  const double inches = mm / 25.4;
  // Whole hundredths of a millimetre, thousandths of it, thousandths of an inch; sizes in plain.
  const double candidates[] = {std::round(mm * 100), std::round(mm * 1000),
                               std::round(inches * 1000), std::round(mm * 1000) / 1000,
                               std::round(inches * 10000) / 10000};
  for (const double figures : candidates)
    if (size_marked(service, figures) == size) return Entry(figures);
  return std::nullopt;
}

bool is_read(const Service::ArrivalEntries& row) {
  return !not_given(row.mark) || !not_given(row.micrometer);
}

bool has_new_gap(const Service::RecheckEntries& valve) { return !not_given(valve.gap); }

// What becomes of the new gaps on Recheck, as a paragraph of a question. Blank where there is none.
std::string on_new_gaps(Say what, const Service& service, const Teller& teller) {
  std::vector<std::string> valves;
  for (const Service::RecheckEntries& valve : service.recheck)
    if (has_new_gap(valve)) valves.push_back(valve.valve);
  return valves.empty() ? std::string() : "\n\n" + teller.say(what, {named(valves, teller)});
}

// Where the ticks leave a step out, nobody can tell from them which shim is where.
std::string caution_before(const Service& service, const Teller& teller) {
  std::string caution;
  if (const auto empty = valves_standing_empty(service); !empty.empty())
    caution = teller.say(Say::bench_valve_empty, {empty});
  if (step_left_out(service)) {
    const std::string left_out = in_words(left_out_in_words(service), teller);
    caution += (caution.empty() ? "" : "\n\n") + teller.say(Say::bench_left_out_first, {left_out});
  }
  if (caution.empty()) return {};
  return caution + "\n\n" + teller.say(Say::bench_all_the_same);
}

}  // namespace

std::vector<BenchRow> rows_for_bench(const Service& service, const Findings& found) {
  std::vector<BenchRow> rows;
  for (Service::BenchEntries& step : bench_steps(service, found)) {
    const std::string valve = step.valve.empty() ? found.teller.say(Say::bench_turn) : step.valve;
    const std::string note = bench_note(found, rows.size());
    rows.push_back({std::move(step), valve, note});
  }
  return rows;
}

std::string why_nothing_to_take(const Service& service, const Findings& found) {
  Service idle = service;
  idle.bench.clear();
  std::string all;
  for (const BoxLine& line : box_of_fit(idle, found)) all += (all.empty() ? "" : "\n") + line.words;
  return all;
}

std::vector<EntryWrite> shims_to_enter(const Service& service, const Findings& found) {
  std::vector<EntryWrite> writes;
  const Unit unit = found.teller.unit();
  const std::vector<FittedArrival> arrivals = arrivals_fitted(service, found);
  for (const FittedShim& shim : shims_fitted(service)) {
    if (!valve_named(service, shim.valve)) continue;
    const Length size = Length::of(shim.size, unit);
    Entry marked;
    Entry measured;
    const auto giver = valve_named(service, shim.from);
    const auto arrival = std::ranges::find(arrivals, shim.valve, &FittedArrival::valve);
    if (giver && found.valves[*giver].shim &&
        !are_far_apart(size, found.valves[*giver].shim, found.allowed)) {
      marked = given(service.valves[*giver].mark);
      measured = given(service.valves[*giver].micrometer);
    } else if (arrival != arrivals.end() && is_read(service.arrivals[arrival->row])) {
      marked = given(service.arrivals[arrival->row].mark);
      measured = given(service.arrivals[arrival->row].micrometer);
    } else if (shim.from == found.teller.say(Say::bought)) {
      // Nobody has measured it yet: it is known by the mark it was ordered by.
      if (const auto own = mark_for(service, size))
        marked = *own;
      else
        measured = shim.size;
    } else {
      measured = shim.size;  // as the owner lists it
    }
    writes.push_back({"valve", shim.valve, entry_value::gap, Entry()});
    writes.push_back({"valve", shim.valve, entry_value::mark, marked});
    writes.push_back({"valve", shim.valve, entry_value::micrometer, measured});
  }
  for (const Service::RecheckEntries& valve : service.recheck)
    if (has_new_gap(valve) && valve_named(service, valve.valve))
      writes.push_back({"valve", valve.valve, entry_value::gap, valve.gap});
  for (const FittedArrival& one : arrivals)
    for (int value = 0; value < entry_value::values_of_arrival; ++value)
      writes.push_back({"arrival", std::to_string(service.arrivals[one.row].row), value, Entry()});
  return writes;
}

std::vector<EntryWrite> new_gaps_to_clear(const Service& service) {
  std::vector<EntryWrite> writes;
  for (const Service::RecheckEntries& valve : service.recheck)
    if (!not_given(valve.gap) || has_failed(valve.gap))
      writes.push_back({"recheck", valve.valve, 0, Entry()});
  return writes;
}

BenchQuestion question_before_taking(const Service& service, const Findings& found) {
  const auto ticked = static_cast<std::int64_t>(ticked_steps(service));
  const std::string missing = missing_in_words(service, found);
  const std::string new_gaps = on_new_gaps(Say::new_gaps_cleared, service, found.teller);
  if (ticked == 0 && missing.empty() && !new_gaps.empty())
    return {{}, found.teller.say(Say::bench_take_ask) + new_gaps, false};
  if (ticked == 0)
    return {{},
            missing.empty() ? "" : found.teller.say(Say::bench_missing, {missing}) + new_gaps,
            false};
  std::string words = found.teller.say(Say::bench_replace,
                                       {ticked, static_cast<std::int64_t>(service.bench.size())});
  if (!missing.empty()) words += "\n\n" + missing;
  words += new_gaps;
  return {caution_before(service, found.teller), words, false};
}

BenchQuestion question_before_clearing(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  std::vector<std::string> fitted;
  const bool is_sure = !step_left_out(service);
  for (const FittedShim& shim : is_sure ? shims_fitted(service) : std::vector<FittedShim>())
    fitted.push_back(
        teller.say(Say::bench_shim_in_valve, {shim.valve, Length::of(shim.size, teller.unit())}));
  if (fitted.empty())
    return {caution_before(service, teller),
            teller.say(is_sure ? Say::bench_clear_ask : Say::bench_clear_unsure) +
                on_new_gaps(Say::new_gaps_cleared, service, teller),
            false};
  std::string words = teller.say(Say::bench_enter_shims, {fitted});
  const ShimMoves moves = shim_moves(service, found);
  for (const auto& [what, shims] : {std::pair(Say::bench_spares_out, moves.spares_fitted),
                                    {Say::bench_left_over, moves.left_over}}) {
    std::vector<std::string> told;
    for (const MovedShim& shim : shims) told.push_back(teller.column(shim.size));
    if (!told.empty()) words += " " + teller.say(what, {told});
  }
  if (is_bench_done(service))
    words = teller.say(Say::bench_better_closed) + "\n\n" + words;
  else
    words = teller.say(Say::bench_half_done, {static_cast<std::int64_t>(ticked_steps(service)),
                                              static_cast<std::int64_t>(service.bench.size())}) +
            "\n\n" + words;
  std::vector<std::string> rows;
  for (const FittedArrival& one : arrivals_fitted(service, found))
    rows.push_back(std::to_string(service.arrivals[one.row].row));
  if (!rows.empty()) words += "\n\n" + teller.say(Say::bench_clears_arrivals, {rows});
  words += on_new_gaps(Say::new_gaps_entered, service, teller);
  return {caution_before(service, teller), words, true};
}

}  // namespace shimwright
