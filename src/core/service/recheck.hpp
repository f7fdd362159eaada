// SPDX-License-Identifier: MPL-2.0
//
// Recheck: each valve's gap after fitting, beside what it should be. With the sizes of shims as
// measured,
//   predicted = gap found + shim found - shim fitted
// Gap found and gap left each have the doubt of a reading, U, so that their difference has the
// doubt sqrt(U^2 + U^2) (root of the sum of squares, GUM 5.1.2). Up to that, its ends included, a
// valve reads as predicted; beyond, it is not seated, has another shim, or was misread. The sizes
// of shims count as exact: what a micrometer may be off by is small beside a blade.
//
// Every valve is asked for once the bench list is done. Those that were opened must be measured
// before the check is closed; where the camshafts came out, all of them, as each has its lobe over
// it anew. The others stand as they were found, and one new reading of them is only worth having.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// The doubt of a reading where none is entered: the upper end of what feeler readings are usually
// off by. Common practice, no source.
inline constexpr Length usual_doubt = Length::nanometres(20'000);

enum class RecheckVerdict {
  none,         // nothing is asked yet
  due,          // to be measured before the check is closed
  asked,        // to be measured if one wants it: the valve was not opened
  unreadable,   // what is entered is no gap
  unpredicted,  // gap found or a shim is not known, or no blade went before
  as_predicted,
  off
};

struct ValveRecheck {
  std::optional<Length> gap_found;
  std::optional<Length> shim_found;
  std::optional<Length> shim_fitted;  // in the valve by the ticks; none where it stands empty
  std::optional<Length> gap_left;     // the new gap
  // The gap as it is now: the new one; while a valve was not opened, and the camshafts stayed in,
  // else the gap found.
  std::optional<Length> gap_now;
  std::optional<Length> predicted;
  std::optional<Length> off;  // gap left less predicted
  RecheckVerdict verdict = RecheckVerdict::none;
  std::optional<State> state;  // of the gap left; none without it, or without sound limits
  bool opened = false;         // a shim came out or went in by the ticks
  bool outside = false;        // the gap as it is now is beyond a limit
  std::string reason;          // why it may stay as it is, as entered; blank: nobody said so
};

// In the order of the valves. Time grows with valves times steps on the bench.
std::vector<ValveRecheck> recheck_in(const Service& service, const Findings& found);

// The doubt of each reading: as entered, else the usual one.
Length doubt_of_reading(const Service& service, const Findings& found);

// Of the difference of two such readings, to the nearest nanometre, for telling it.
Length doubt_of_both(Length doubt);

// No further from nought than the doubt of both readings, exactly.
bool is_within_doubt_of_both(Length difference, Length doubt);

// Its new gap is wanted before the check is closed, and is not there or cannot be read.
bool must_be_measured(const ValveRecheck& valve);

// Its new gap is not as predicted, and nobody said why it may stay so.
bool is_off_without_reason(const ValveRecheck& valve);

// Its gap is beyond a limit, and nobody said why it may stay so.
bool is_outside_without_reason(const ValveRecheck& valve);

// Either of these.
bool wants_another_round(const ValveRecheck& valve);

}  // namespace shimwright
