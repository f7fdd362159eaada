// SPDX-License-Identifier: MPL-2.0
#include "core/values/verdict.hpp"

#include <algorithm>

#include "core/values/bad_input.hpp"

namespace shimwright {

std::string_view word_for(State state) {
  switch (state) {
    case State::unread:
      return "unread";
    case State::tight:
      return "tight";
    case State::tight_doubtful:
      return "tight?";
    case State::good:
      return "good";
    case State::loose_doubtful:
      return "loose?";
    case State::loose:
      return "loose";
  }
  return "unread";
}

void check_limits(const Limits& limits) {
  if (limits.min < Length())
    throw BadInput("the minimum clearance, " + text_of(limits.min) + ", is negative");
  if (limits.max <= Length())
    throw BadInput("the maximum clearance, " + text_of(limits.max) + ", is not above zero");
  if (limits.min > limits.max)
    throw BadInput("the minimum clearance, " + text_of(limits.min) + ", is above the maximum, " +
                   text_of(limits.max));
}

void check_doubt(Length doubt) {
  if (doubt < Length()) throw BadInput("the doubt, " + text_of(doubt) + ", is negative");
}

State state_of(std::optional<Length> clearance, const Limits& limits, Length doubt) {
  check_limits(limits);
  check_doubt(doubt);
  if (!clearance) return State::unread;
  const Length c = *clearance;
  if (c < limits.min - doubt) return State::tight;
  if (c > limits.max + doubt) return State::loose;
  const bool maybe_tight = c < limits.min + doubt;
  const bool maybe_loose = c > limits.max - doubt;
  if (maybe_tight && maybe_loose)
    return abs(c - limits.min) <= abs(limits.max - c) ? State::tight_doubtful
                                                      : State::loose_doubtful;
  if (maybe_tight) return State::tight_doubtful;
  return maybe_loose ? State::loose_doubtful : State::good;
}

Length margin_of(Length clearance, const Limits& limits) {
  check_limits(limits);
  return std::min(clearance - limits.min, limits.max - clearance);
}

}  // namespace shimwright
