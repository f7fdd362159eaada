// SPDX-License-Identifier: MPL-2.0
//
// Where things lie in the book that ships, and the office it is opened in.
#pragma once

#include "../office/sheet.hpp"
#include "book/layout.hpp"
#include "book/places.hpp"

namespace shimwright::tests {

inline const book::Places& the_places() {
  static const book::Places places(book::inline_four());
  return places;
}

}  // namespace shimwright::tests
