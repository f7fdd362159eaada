// SPDX-License-Identifier: MPL-2.0
//
// Greedy: always on to the stop where most can be done now, never looking further ahead; always
// safe, and quick for any number of valves. It is what remains where the search for the least is
// cut short. And which rings can be done at all. Used by the steps alone.
//
// One stand-in is enough for a ring: it goes into one valve, whose shim goes to the next valve,
// and so on round to the first. While the ring is open each of its shims lies on the bench once,
// as does each shim of a chain, and may there be the stand-in for the next ring. A spare comes
// back whatever else waits, so spares may stand in wherever that helps.
#pragma once

#include <cstddef>
#include <vector>

#include "core/fitting/work.hpp"

namespace shimwright::fitting {

// How each ring comes by a stand-in, where no valve carries its shims from stop to stop.
struct Lending {
  std::vector<std::size_t> lent;      // by chain: a shim that is no spare; no_index: a spare serves
  std::vector<std::size_t> has_none;  // indices of rings across stops that get none
  std::vector<std::size_t> needs_none;  // of rings within one stop that get none
};
// Time n log n.
Lending lending_of(const Work& work);

// A schedule of all but the rings that have none, whose `opened` and `finished` are no_index.
// Time n a visit at most, times the stops of a valve.
Schedule greedy_schedule(const Work& work);

}  // namespace shimwright::fitting
