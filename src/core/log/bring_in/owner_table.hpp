// SPDX-License-Identifier: MPL-2.0
//
// A log as its owner has it on a sheet of their own: cells in any order of columns, with a heading
// or without one.
#pragma once

#include <string>
#include <vector>

#include "core/entries/entries.hpp"

namespace shimwright {

struct OwnerCell {
  Entry value;           // of a formula, what it came to; of one that failed, failed_entry
  bool is_date = false;  // a number that its sheet shows as a date
};

struct OwnerTable {
  std::vector<std::vector<OwnerCell>> rows;
  int first_row = 1;     // as the sheet counts them, for sentences
  int first_column = 0;  // 0 is A

  std::size_t columns() const;  // of the widest row
  // A cell beyond a row's end is blank.
  const OwnerCell& at(std::size_t row, std::size_t column) const;
};

// Nothing, or what people write for nothing: `-`, `n/a`.
bool says_nothing(const OwnerCell& cell);

// As a person reads it: a date as `2019-05-04`, a number without needless figures.
std::string shown(const OwnerCell& cell);

}  // namespace shimwright
