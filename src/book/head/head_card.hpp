// SPDX-License-Identifier: MPL-2.0
//
// A valve's card on the Head sheet: readings go in and the answer comes out on it, and its colour,
// sign and word tell the valve's state.
#pragma once

#include "book/office/sheet.hpp"
#include "book/places.hpp"

namespace shimwright::book {

void make_card(Sheet& sheet, const Places& places, int index);

}  // namespace shimwright::book
