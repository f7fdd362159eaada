// SPDX-License-Identifier: MPL-2.0
//
// How the chart says which way round it shows the engine. Only what the layout holds is said: where
// the engine's front is, nobody told.
#pragma once

#include <cstddef>
#include <string>

#include "core/engine/layout.hpp"

namespace shimwright::book {

// Which of two banks stands on the left where they are side by side: the first, unless their names
// say otherwise.
std::size_t bank_at_left(const EngineLayout& layout);

// `right bank`; by its cylinders where it has no name; empty where it is the only one.
std::string bank_in_words(const EngineLayout& layout, std::size_t bank);

// `Seen from above, exhaust side away from you, cylinder 1 at your left.`
std::string seen_in_words(const EngineLayout& layout, bool banks_beside);

}  // namespace shimwright::book
