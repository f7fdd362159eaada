// SPDX-License-Identifier: MPL-2.0
//
// The rules by which the book tells of a service, each by its name. Tolerances without a source
// here are common practice, no source.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// So near a limit an ordinary doubt of the reading would leave the gap open.
inline constexpr Length near_a_limit = Length::nanometres(10'000);

// Further than this wear and a worn mark do not reach: one of the two was misread.
inline constexpr Length far_apart = Length::nanometres(50'000);

// The state of a valve that keeps its shim whatever that is, so that nobody need take it out: it
// is left alone, or it is good and good valves are not opened. None where the shim matters, is
// known, or there is no gap. `plan_doubt` is 0 where the plan takes readings as exact.
std::optional<State> kept_unseen(const ValveFindings& valve, const SideFindings& side,
                                 bool opens_good_valves, Length plan_doubt);

// What a person wants of one valve: that it keeps its shim whatever its gap, or that it takes the
// nearest one where none serves.
enum class Exception { none, leave, nearest };

// `leave`, `yes`, `x` and TRUE are leave, `nearest` is nearest, `no`, FALSE and a blank are none.
// Empty for any other word, which counts as leave until it is mended: no shim is changed by
// mistake.
std::optional<Exception> exception_named(const Entry& entry);

// The gap afterwards is only the most it can be: no blade goes now, and the plan trusts in more.
bool is_to_be_measured_again(const ValveFindings& valve, State then);

// It is outside its limits afterwards too: the person wants it left alone, no size serves, or the
// nearest is fitted.
bool stays_outside(const ValvePlan& plan);

// It measures otherwise than its mark says, by more than is allowed (trust_in).
bool differs_from_mark(const std::optional<Trust>& trust);

// Micrometer and mark are too far apart for one of them not to be wrong.
bool are_far_apart(std::optional<Length> marked, std::optional<Length> measured, Length allowed);
bool is_far_apart(const ValveFindings& valve, Length allowed);

// The scheme of marks by which a mark agrees with the micrometer where it does not by the one
// chosen, and is wrong about tenfold or by the inch; none where none does.
std::optional<std::string> scheme_that_agrees(const std::string& mark, Length marked,
                                              Length measured, Length allowed);

// How many gaps come out nearer to a limit than `near_a_limit` but inside; 0 where a doubt is
// given, as then the guard band keeps them off.
std::size_t gaps_near_a_limit(const Findings& found);

// Valves whose shim, not measured, goes into another valve.
std::vector<std::size_t> moved_by_mark_alone(const Findings& found);

// Some gap wants a shim while no shims are listed at all: nobody knows yet whether one fits.
bool shims_are_to_be_listed(const Findings& found);

}  // namespace shimwright
