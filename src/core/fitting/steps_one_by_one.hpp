// SPDX-License-Identifier: MPL-2.0
//
// The work done one valve after another, without thrift: always safe, never short of a way where
// there is one by this means. It shows which rings can be done at all, and is what remains where
// the search for the least has to be cut short. Used by the steps alone.
//
// One stand-in is enough for a ring: it goes into one valve, whose shim goes to the next valve,
// and so on round to the first. While the ring is open each of its shims lies on the bench once,
// as does each shim of a chain, and may there be the stand-in for the next ring.
#pragma once

#include <vector>

#include "core/fitting/steps_work.hpp"

namespace shimwright::fitting {

struct OneByOne {
  Schedule schedule;                 // jobs that wait: opened and finished are nobody
  std::vector<std::size_t> waiting;  // indices of rings in Work::chains
};

OneByOne one_by_one(const Work& work);

}  // namespace shimwright::fitting
