// SPDX-License-Identifier: MPL-2.0
#include "core/service/bench.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/service/words/crank_words.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

Entry size_entry(const std::optional<Length>& size, Unit unit) {
  return size ? Entry(in_unit(*size, unit)) : Entry();
}

// To the nanometre, as a size in inches is no whole number of them.
bool same_number(const Entry& a, const Entry& b) {
  const auto one = number_entered(a);
  const auto other = number_entered(b);
  if (!one || !other) return one.has_value() == other.has_value();
  return std::abs(*one - *other) < 1e-6;
}

bool changes_a_shim(const Service::BenchEntries& step) {
  return is_ticked(step) && (number_entered(step.in) || number_entered(step.out));
}

// What stands on Arrivals was bought, whether it has come by now or not: the list does not change
// when it does.
std::string source_of(const Step& step, const Findings& found) {
  const Teller& teller = found.teller;
  if (step.stand_in) return teller.say(Say::stand_in);
  if (step.valve && found.valve_plans[*step.valve].arrival) return teller.say(Say::bought);
  if (step.from == "spare") return teller.say(Say::spare);
  if (step.from == "bought") return teller.say(Say::bought);
  return step.from;
}

}  // namespace

bool is_ticked(const Service::BenchEntries& step) {
  return !not_given(step.done) && !same_word(word_in(step.done), "no");
}

std::size_t ticked_steps(const Service& service) {
  return static_cast<std::size_t>(std::ranges::count_if(service.bench, is_ticked));
}

bool is_bench_done(const Service& service) {
  return !service.bench.empty() && std::ranges::all_of(service.bench, is_ticked);
}

std::optional<int> step_left_out(const Service& service) {
  const auto& steps = service.bench;
  const auto first = std::ranges::find_if_not(steps, is_ticked);
  if (std::none_of(first, steps.end(), is_ticked)) return std::nullopt;
  return static_cast<int>(first - steps.begin()) + 1;
}

std::optional<int> stop_of_step(const Service& service, int step) {
  const auto stop = number_entered(service.bench.at(static_cast<std::size_t>(step) - 1).stop);
  return stop ? std::optional(static_cast<int>(*stop)) : std::nullopt;
}

std::vector<std::string> valves_standing_empty(const Service& service) {
  std::vector<std::string> empty;
  for (const auto& step : service.bench) {
    if (!is_ticked(step) || step.valve.empty()) continue;
    if (number_entered(step.in))
      std::erase(empty, step.valve);
    else if (number_entered(step.out))
      empty.push_back(step.valve);
  }
  return empty;
}

std::vector<FittedShim> shims_fitted(const Service& service) {
  std::vector<FittedShim> fitted;
  for (const auto& step : service.bench) {
    const auto size = number_entered(step.in);
    if (!is_ticked(step) || !size) continue;
    // A stand-in gives way to the valve's own new shim.
    std::erase_if(fitted, [&](const FittedShim& shim) { return shim.valve == step.valve; });
    fitted.push_back({step.valve, *size, step.from});
  }
  return fitted;
}

std::optional<Length> shim_out_by_list(const Service& service, const Findings& found,
                                       const std::string& valve) {
  const auto step = std::ranges::find_if(service.bench, [&valve](const auto& one) {
    return one.valve == valve && is_ticked(one) && number_entered(one.out);
  });
  return step == service.bench.end() ? std::nullopt
                                     : length_entered(step->out, found.teller.unit());
}

bool is_any_shim_changed(const Service& service) {
  return std::ranges::any_of(service.bench, changes_a_shim);
}

bool is_opened(const Service& service, const std::string& valve) {
  return std::ranges::any_of(service.bench, [&valve](const Service::BenchEntries& step) {
    return step.valve == valve && changes_a_shim(step);
  });
}

std::optional<int> next_step(const Service& service) {
  const auto next = std::ranges::find_if_not(service.bench, is_ticked);
  if (next == service.bench.end()) return std::nullopt;
  return static_cast<int>(next - service.bench.begin()) + 1;
}

bool is_bench_for_camshafts_out(const Service& service, const Findings& found) {
  if (service.bench.empty()) return found.camshafts_out;
  const std::string turn(word_for(Step::Kind::turn));
  return std::ranges::none_of(service.bench,
                              [&turn](const auto& step) { return step.kind == turn; });
}

std::vector<Service::BenchEntries> bench_steps(const Service&, const Findings& found) {
  std::vector<Service::BenchEntries> rows;
  if (!found.steps) return rows;
  const Teller& teller = found.teller;
  for (const Step& step : found.steps->steps)
    rows.push_back({std::string(word_for(step.kind)),
                    step.stop ? Entry(static_cast<double>(*step.stop)) : Entry(),
                    step.valve ? found.question.valves[*step.valve].name : std::string(),
                    size_entry(step.out, teller.unit()), size_entry(step.in, teller.unit()),
                    source_of(step, found), Entry()});
  return rows;
}

std::string bench_note(const Findings& found, std::size_t index) {
  const auto& steps = found.steps->steps;
  const Step& step = steps.at(index);
  const Teller& teller = found.teller;
  if (step.kind == Step::Kind::turn && step.stop && found.firing) {
    std::optional<std::size_t> from;
    if (index > 0 && steps[index - 1].stop)
      from = static_cast<std::size_t>(*steps[index - 1].stop) - 1;
    const auto stop = static_cast<std::size_t>(*step.stop) - 1;
    std::string words = teller.say(
        Say::step_turn_words, {turn_in_words(*found.firing, found.all_stops, stop, from, teller)});
    if (stop >= found.stops.size()) words += " " + teller.say(Say::step_turn_further);
    return words;
  }
  std::string note = in_words(step.notes, teller);
  if (index + 1 == steps.size() && !found.steps->least)
    note += " " + teller.say(Say::steps_maybe_fewer);
  return note;
}

bool has_plan_changed(const Service& service, const Findings& found) {
  const auto now = bench_steps(service, found);
  return !std::ranges::equal(service.bench, now, [](const auto& a, const auto& b) {
    return a.kind == b.kind && a.valve == b.valve && a.from == b.from &&
           same_number(a.stop, b.stop) && same_number(a.out, b.out) && same_number(a.in, b.in);
  });
}

}  // namespace shimwright
