// SPDX-License-Identifier: MPL-2.0
//
// Every way in which a small plan could be fitted, looked at breadth first: the states of the head
// at a turn of the crank, and from each, at each stop, every shim that might be put into every
// valve open there. Knows nothing of chains, rings or schedules.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/fitting/steps.hpp"

namespace shimwright::search {

struct Least {
  std::size_t turns = 0;
  std::size_t stand_ins = 0;
};

// The fewest turns, then stand-ins, to fit all valves but those left out (which are not touched);
// none where there is no way. With `known`, no way that comes out worse is followed to its end,
// which is quicker: it tells whether that can be done and whether it can be beaten.
std::optional<Least> every_way(const FittingQuestion& question, const std::vector<bool>& left_out,
                               const std::optional<Least>& known = {});

}  // namespace shimwright::search
