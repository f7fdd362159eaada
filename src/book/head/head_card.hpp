// SPDX-License-Identifier: MPL-2.0
//
// A valve's card on the Head sheet: readings go in and the answer comes out on it, and its colour,
// sign and word tell the valve's state.
#pragma once

#include "book/description.hpp"
#include "book/places.hpp"

namespace shimwright::book {

// Adds its cells, and what the layout tells of the valve. `index`: its place among the valves.
void add_card(SheetDescription& sheet, const Places& places, int index);

}  // namespace shimwright::book
