// SPDX-License-Identifier: MPL-2.0
//
// The gaps on Head as they were when the list was taken to the bench. Once shims are changed, a new
// gap entered there would be judged over the old shim: it belongs on Recheck, and the book says so.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

// What Take to the bench writes beside the list: every gap in whole nanometres, `-` where there is
// none, in the order of the valves.
std::string gaps_as_taken(const Findings& found);

struct ChangedGap {
  std::size_t valve = 0;       // index
  std::optional<Length> then;  // none: it was blank
};

// The valves whose gap on Head is another than when the list was taken, once a shim is changed by
// its ticks. A gap that is entered late, for a valve that was not opened, is none of them. Nothing
// where the book does not hold the gaps of then.
std::vector<ChangedGap> gaps_changed_since_taken(const Service& service, const Findings& found);

}  // namespace shimwright
