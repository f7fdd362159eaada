// SPDX-License-Identifier: MPL-2.0
//
// Every cell a person may type into, by the book's own map.
#pragma once

#include <string_view>
#include <vector>

#include "book/places.hpp"

namespace shimwright::tests {

struct EntryCell {
  std::string_view sheet;
  book::At at;
  bool free_text = false;  // any word will do there, so nothing is checked
};

std::vector<EntryCell> entry_cells(const book::Places& places);

}  // namespace shimwright::tests
