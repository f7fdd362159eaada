// SPDX-License-Identifier: MPL-2.0
//
// Made-up engines and fittings for the tests of the steps: the same seed, the same question.
#pragma once

#include <cstdint>

#include "core/fitting/steps.hpp"
#include "plan_questions.hpp"

namespace shimwright::questions {

struct FittingShape {
  std::int64_t valves = 6;    // at most
  std::int64_t stops = 3;     // at most
  std::int64_t spares = 2;    // at most
  std::int64_t several = 10;  // one valve in so many is open at several stops
  std::int64_t sizes = 6;     // to pick from
  std::int64_t series = 2;    // one valve in so many is of the second series; 0: none
};

// Moves at random: each valve keeps its shim, gets a spare or bought one, or another's, of any
// thickness at all (a plan would not do that, which makes it the harder for the steps).
FittingQuestion shuffled(const FittingShape& shape, std::uint64_t seed);

// The best plan for a made-up head, its valves open at stops at random.
FittingQuestion planned(const PlanQuestion& head, std::int64_t most_stops, std::int64_t several,
                        std::uint64_t seed);

// The same for a head of so many valves as it might be measured, or with every shim of a size of
// its own.
FittingQuestion serviced(std::size_t valves, bool scattered, std::int64_t most_stops,
                         std::int64_t several, std::uint64_t seed);

// So many valves, an even number, that change places in pairs across two stops, and so many rows of
// spares each of another size, each so many times.
FittingQuestion pairs(std::size_t valves, std::int64_t rows, std::int64_t count);

// One ring of so many valves, from stop 1 to stop 2 and back all the way round, and so many spares
// that fit everywhere.
FittingQuestion long_ring(std::size_t valves, std::int64_t spares);

}  // namespace shimwright::questions
