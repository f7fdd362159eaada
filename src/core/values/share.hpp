// SPDX-License-Identifier: MPL-2.0
//
// How many gaps a ladder of sizes can serve. Gaps and old shims come in any length, sizes on sale
// in steps. Limits that are narrower than the step fall between two sizes now and then, and no size
// on sale brings that valve inside: of limits 0.04 wide and sizes 0.05 apart, 4 of 5 gaps are
// served. Derived:
//   share = (max - min - 2 U) / step, at least 0 and at most 1    (U: the doubt of a reading)
// since the sizes that serve a gap fill a band of that width, and of all places for the band that
// share has a size in it.
#pragma once

#include <cstdint>
#include <string>

#include "core/values/length.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

// `served` of `of`, in lowest terms: 4 of 5. All is 1 of 1, none 0 of 1.
struct Share {
  std::int64_t served = 1;
  std::int64_t of = 1;
  bool operator==(const Share&) const = default;
  bool is_all() const { return served == of; }
  // Rounded down.
  std::int64_t of_a_hundred() const { return 100 * served / of; }
};

// Of gaps between the first and the last size's reach. With a doubt, a gap counts as served where
// the result is proven good. Throws BadInput for limits or a doubt that cannot be, and for a step
// of zero or less.
Share gaps_served(const Limits& limits, Length step, Length doubt = {});

// `4 of 5`, `none`; where the terms are large, of a hundred, rounded down: `about 57 of 100`.
std::string text_of(const Share& share);

}  // namespace shimwright
