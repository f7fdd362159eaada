// SPDX-License-Identifier: MPL-2.0
//
// The bench list: steps of fitting taken to the bench, which stand still while they are done, and
// what their ticks say of the engine just now.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// Any mark but `no`: x, yes, a date.
bool is_ticked(const Service::BenchEntries& step);

std::size_t ticked_steps(const Service& service);

// Every step is ticked; false where nothing is on the bench.
bool is_bench_done(const Service& service);

// The first step, counted from 1, that is not ticked though a later one is.
std::optional<int> step_left_out(const Service& service);

// Where the crank was for that step, as far as it was at a stop.
std::optional<int> stop_of_step(const Service& service, int step);

// Valves whose shim is out by the ticks, and no other in.
std::vector<std::string> valves_standing_empty(const Service& service);

// A valve that has got another shim by the ticks, and how thick that is, in the book's unit.
struct FittedShim {
  std::string valve;
  double size = 0;
  std::string from;  // the giving valve's name, or how the list says it
};
std::vector<FittedShim> shims_fitted(const Service& service);

// The shim that came out of that valve first, by the ticks, as the list has it.
std::optional<Length> shim_out_by_list(const Service& service, const Findings& found,
                                       const std::string& valve);

// A shim is in, or out, by the ticks; turns of the crank change nothing.
bool is_any_shim_changed(const Service& service);

// A shim of that valve came out or went in by the ticks.
bool is_opened(const Service& service, const std::string& valve);

// The first step that is not ticked, counted from 1.
std::optional<int> next_step(const Service& service);

// The list is for camshafts that are out, as it has no turn between stops; while nothing is on the
// bench, what Engine says.
bool is_bench_for_camshafts_out(const Service& service, const Findings& found);

// The steps of the present plan, as the bench takes them. Sizes and stops are numbers in the book's
// unit, blank where there are none; `done` is blank.
std::vector<Service::BenchEntries> bench_steps(const Service& service, const Findings& found);

// What a hand does in that step, in words.
std::string bench_note(const Findings& found, std::size_t step);

// Whether the plan would now make another list.
bool has_plan_changed(const Service& service, const Findings& found);

}  // namespace shimwright
