// SPDX-License-Identifier: MPL-2.0
//
// What a command writes into a book, as plain data.
#pragma once

#include <string>

#include "core/entries/entries.hpp"

namespace shimwright {

// A value of the entries (service.hpp): `valve | 1 EX L` and value 0 is that valve's gap.
struct EntryWrite {
  std::string kind;
  std::string name;
  int value = 0;
  Entry what;  // nothing: the entry is cleared
};

}  // namespace shimwright
