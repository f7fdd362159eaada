// SPDX-License-Identifier: MPL-2.0
//
// Where things lie in the book that ships, and the office it is opened in.
#pragma once

#include <algorithm>
#include <string_view>

#include "../office/sheet.hpp"
#include "book/places.hpp"
#include "core/engine/layout.hpp"

namespace shimwright::tests {

inline const book::Places& the_places() {
  static const book::Places places(inline_four());
  return places;
}

// By the valve's name.
inline const book::Card& card_of(std::string_view valve) {
  return *std::ranges::find_if(the_places().head.cards, [valve](const book::Card& one) {
    return name_of(one.valve, the_places().layout) == valve;
  });
}

}  // namespace shimwright::tests
