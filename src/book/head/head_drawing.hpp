// SPDX-License-Identifier: MPL-2.0
//
// The outline of each head, drawn over the Head sheet's cells so that the cards are seen to lie on
// an engine.
#pragma once

#include "book/head/head_map.hpp"
#include "book/office/sheet.hpp"

namespace shimwright::book {

// Call it when the columns and rows have their sizes.
void draw_heads(Sheet& sheet, const HeadMap& map);

}  // namespace shimwright::book
