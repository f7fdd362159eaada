// SPDX-License-Identifier: MPL-2.0
//
// The verdict on a clearance. Too little (tight) is the dangerous side: the valve may not close
// and burns; too much (loose) is noisy and wears. With a doubt U (expanded uncertainty, k = 2) a
// guard band w = U lies inside each limit (ILAC-G8:09/2019; ISO 14253-1:2017 is content with 0.825
// U at its default of 95 %): good is said only where the reading proves it, tight or loose only
// where the reading proves that; between, the state is doubtful and carries a question mark.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/values/length.hpp"

namespace shimwright {

struct Limits {
  Length min;
  Length max;
};

enum class State { unread, tight, tight_doubtful, good, loose_doubtful, loose };

inline constexpr std::array all_states{State::unread, State::tight,          State::tight_doubtful,
                                       State::good,   State::loose_doubtful, State::loose};

// `unread`, `tight`, `tight?`, `good`, `loose?`, `loose`.
std::string_view word_for(State state);

// Throws BadInput where min is negative or above max, or max is zero, with the values.
void check_limits(const Limits& limits);

// Throws BadInput where the doubt is negative.
void check_doubt(Length doubt);

// good: min+U <= c <= max-U; tight: c < min-U (c < min where U is 0); loose likewise; between, the
// doubtful state of the limit concerned. Where the two doubtful zones overlap, the nearer limit
// names the state, and on a tie `tight?`, the dangerous side. No clearance: unread.
State state_of(std::optional<Length> clearance, const Limits& limits, Length doubt = {});

// Distance from the nearer limit, negative outside them.
Length margin_of(Length clearance, const Limits& limits);

}  // namespace shimwright
