// SPDX-License-Identifier: MPL-2.0
//
// The valves at the end of a round: what is known of each, and which are not in order.
#pragma once

#include <string>
#include <vector>

#include "core/service/recheck.hpp"

namespace shimwright {

struct ValveAtClose {
  std::string name;
  ValveRecheck recheck;
  bool touched = false;  // its shim was out, or its camshaft

  bool is_measured() const { return recheck.gap_now.has_value(); }
  // The person said why it may stay as it is.
  bool has_reason() const { return !recheck.reason.empty(); }
  bool is_in_order() const {
    return is_measured() && recheck.verdict != RecheckVerdict::off && !recheck.outside;
  }
};

// In the order of the valves.
std::vector<ValveAtClose> valves_at_close(const Service& service, const Findings& found);

}  // namespace shimwright
