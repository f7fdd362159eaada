// SPDX-License-Identifier: MPL-2.0
//
// Where every shim is by the ticks of the bench list. The list is followed step by step: what comes
// out of a valve lies on the bench until it goes into another; what lies there at the end and was
// in the engine before is left over. No shim comes into being or is lost on the way.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

struct MovedShim {
  std::string series;
  Length size;
  std::string valve;                  // that it is in now, or came out of
  std::optional<Length> marked = {};  // what its mark says, where it measures otherwise
};

struct ShimMoves {
  std::vector<MovedShim> spares_fitted;  // out of the drawer, and in a valve
  std::vector<MovedShim> bought_fitted;  // in a valve
  std::vector<MovedShim> left_over;      // out of the engine, and in no valve
};

// In the order of the valves' first steps. A spare or a bought shim that stood in and came out
// again is none of these: it is where it was. Steps are taken in the order of the list, ticked or
// not, and only those that are ticked; time grows with the square of the steps.
ShimMoves shim_moves(const Service& service, const Findings& found);

}  // namespace shimwright
