// SPDX-License-Identifier: MPL-2.0
//
// Entries of the dialog as a person leaves them.
#pragma once

#include <string_view>

#include "commands/entries.hpp"

namespace shimwright::commands {

inline void type(NewBookEntries& entries, Field field, std::string_view text) {
  entries[field] = text;
  settle(entries, field);
}

// An inline four in mm with all filled in that is needed.
inline NewBookEntries inline_four_entries() {
  NewBookEntries entries = first_entries();
  type(entries, Field::inlet_min, "0.16");
  type(entries, Field::inlet_max, "0.22");
  type(entries, Field::exhaust_min, "0.22");
  type(entries, Field::exhaust_max, "0.28");
  type(entries, Field::inlet_from, "2.20");
  type(entries, Field::inlet_to, "3.20");
  type(entries, Field::inlet_step, "0.05");
  return entries;
}

}  // namespace shimwright::commands
