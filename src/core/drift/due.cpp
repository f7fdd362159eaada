// SPDX-License-Identifier: MPL-2.0
#include "core/drift/due.hpp"

#include <algorithm>
#include <cmath>

#include "core/drift/line.hpp"
#include "core/drift/prediction.hpp"
#include "core/drift/student_t.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

Course course_of(const Line& line, double degrees, double confidence) {
  const double t = student_t((1 - confidence) / 2, degrees);
  if (!(std::abs(line.slope) > t * line.slope_error)) return Course::steady;
  return line.slope < 0 ? Course::tight : Course::loose;
}

// The earlier of two, either of which may be none.
std::optional<double> earlier(std::optional<double> a, std::optional<double> b) {
  if (a && b) return std::min(*a, *b);
  return a ? a : b;
}

void check(Length fitted, const Limits& limits, double confidence) {
  check_limits(limits);
  check_thickness(fitted);
  if (!(confidence >= 0.5 && confidence < 1))
    throw BadInput("a confidence of " + text_of(confidence) +
                   " cannot be used: it is at least 0.5 and below 1, such as 0.95");
}

}  // namespace

std::string_view word_for(Course course) {
  switch (course) {
    case Course::tight:
      return "tight";
    case Course::loose:
      return "loose";
    case Course::steady:
      return "steady";
  }
  return "steady";
}

std::optional<Due> due_after(const History& history, Length fitted, const Limits& limits,
                             double confidence) {
  check(fitted, limits, confidence);
  const auto line = fit_line(history.checks());
  if (!line) return std::nullopt;
  return due_of(*line, line->degrees(), history.last_distance(), fitted, limits, confidence);
}

Due due_of(const Line& line, double degrees, double last, Length fitted, const Limits& limits,
           double confidence) {
  check(fitted, limits, confidence);
  const auto level = [&](Length limit) {
    return static_cast<double>((limit + fitted).nanometres());
  };
  const double t = student_t(1 - confidence, degrees);
  const auto meets = [&](Bound::Side side, Length limit) {
    return first_meeting(line, {side, t}, level(limit), last);
  };
  const auto line_meets = [&](Length limit) {
    return line.mean_x + (level(limit) - line.mean_y) / line.slope;
  };

  switch (const Course course = course_of(line, degrees, confidence)) {
    case Course::tight:
      return Due{line_meets(limits.min), meets(Bound::Side::below, limits.min), course};
    case Course::loose:
      return Due{line_meets(limits.max), meets(Bound::Side::above, limits.max), course};
    case Course::steady:
      break;
  }
  return Due{std::nullopt,
             earlier(meets(Bound::Side::below, limits.min), meets(Bound::Side::above, limits.max)),
             Course::steady};
}

}  // namespace shimwright
