// SPDX-License-Identifier: MPL-2.0
//
// Every cell a person may type into, by the descriptions of the sheets.
#pragma once

#include <string>
#include <vector>

#include "book/places.hpp"

namespace shimwright::tests {

struct EntryCell {
  std::string sheet;
  book::At at;
  bool free_text = false;  // any word will do there
};

std::vector<EntryCell> entry_cells(const book::Places& places);

}  // namespace shimwright::tests
