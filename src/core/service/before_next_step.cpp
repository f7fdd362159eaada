// SPDX-License-Identifier: MPL-2.0
#include "core/service/before_next_step.hpp"

#include <cstdint>
#include <utility>

#include "core/service/bench.hpp"
#include "core/service/listed_gaps.hpp"

namespace shimwright {
namespace {

using Lines = std::vector<BoxLine>;

void add(Lines& lines, const Findings& found, const Told& told) {
  lines.push_back({in_words(told, found.teller), Mood::loud});
}

// What is wrong with the ticks, and which valve stands empty by them. While they are in order, the
// list itself fills it before the next turn.
void add_state_of_ticks(Lines& lines, const Service& service, const Findings& found) {
  const auto empty = valves_standing_empty(service);
  const auto left_out = step_left_out(service);
  const auto next = next_step(service);
  if (!empty.empty() && !left_out && next)
    add(lines, found, {Say::bench_empty_go_on, {empty, std::int64_t{*next}}});
  else if (!empty.empty())
    add(lines, found, {Say::bench_valve_empty, {empty}});
  if (left_out) add(lines, found, left_out_in_words(service));
}

// A list whose shims would no longer do is not finished.
void add_change_of_plan(Lines& lines, const Service& service, const Findings& found) {
  if (const auto outside = valves_outside_by_list(service, found); !outside.empty())
    add(lines, found, {Say::bench_outside, {named(outside, found.teller)}});
  if (is_bench_done(service)) return;
  const auto spoiled = valves_spoiled_by_list(service, found);
  if (!spoiled.empty())
    add(lines, found, {Say::bench_spoiled, {named(spoiled, found.teller)}});
  else if (has_plan_changed(service, found))
    add(lines, found,
        {is_any_shim_changed(service) ? Say::bench_changed : Say::bench_changed_idle});
}

}  // namespace

std::vector<BoxLine> before_next_step(const Service& service, const Findings& found) {
  Lines lines;
  if (service.bench.empty()) return lines;
  add_state_of_ticks(lines, service, found);
  if (std::string words = no_gap_in_words(service, found); !words.empty())
    lines.push_back({std::move(words), Mood::loud});
  if (std::string words = changed_gaps_in_words(service, found); !words.empty())
    lines.push_back({std::move(words), Mood::loud});
  add_change_of_plan(lines, service, found);
  return lines;
}

}  // namespace shimwright
