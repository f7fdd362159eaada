// SPDX-License-Identifier: MPL-2.0
//
// When a valve is due: where the line through its history, with the shim that is in place now,
// leaves its limits,
//   clearance at a distance = line at that distance - shim fitted
// and how much earlier a careful person looks. A line through a few readings is uncertain, and the
// further ahead the more, so the cautious distance is where one more reading might, with the odds
// that `confidence` leaves, already be at the limit (prediction.hpp).
//
// This tells from the past alone, and by a straight line; few checks that happen to lie on one
// leave no scatter, and then no room for caution. It never takes the place of the manual's
// interval: what comes first counts.
#pragma once

#include <optional>
#include <string_view>

#include "core/drift/history.hpp"
#include "core/drift/line.hpp"
#include "core/values/length.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

inline constexpr double default_confidence = 0.95;

// Where the valve is heading: below its smallest clearance, above its largest, or neither for all
// that its checks can tell.
enum class Course { tight, loose, steady };

std::string_view word_for(Course course);

struct Due {
  // Where the line meets the limit that it is heading for; before the last check where it met it
  // already. None where the course is steady.
  std::optional<double> distance;
  // Where the one-sided prediction bound first meets that limit, from the last check on: the last
  // check's own distance where it meets it there. On a steady course that of either limit which
  // comes first, as it is not known which way the valve will go. None where it never does.
  std::optional<double> cautious;
  Course course = Course::steady;
};

// Steady is a slope that differs from none by no more than Student's t, two-sided, lets chance do
// at that confidence. None for fewer than three checks, or where all are at one distance. Throws
// BadInput for limits or a shim that cannot be, and a confidence below 0.5 or not below 1.
std::optional<Due> due_after(const History& history, Length fitted, const Limits& limits,
                             double confidence = default_confidence);

// The same of a line whose scatter is not known by its own points alone: its residual sd and error
// of the slope as they are to count, with so many degrees of freedom for Student's t, and the
// largest distance of its checks.
Due due_of(const Line& line, double degrees, double last, Length fitted, const Limits& limits,
           double confidence = default_confidence);

}  // namespace shimwright
