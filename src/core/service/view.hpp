// SPDX-License-Identifier: MPL-2.0
//
// Everything the book shows for a service, in the book's unit and in words: a handful of tables,
// each a few columns known by name.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/service/service.hpp"
#include "core/service/shown_table.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

class View {
 public:
  struct Table {
    std::string_view name;
    ShownTable shown;
  };

  View() = default;
  explicit View(std::vector<Table> tables) : tables_(std::move(tables)) {}

  // `book` (one row: what is said once), `valves` (a row each, in the order given), `cards` (of
  // each valve what its gap does not change), `measure`, `order`, `left over`, `steps` (of the
  // present plan), `bench`, `stops`, `sizes`, `boxes` (line by line), `remarks`, `arrivals`,
  // `recheck`: the list is in view_parts.hpp. Null for any other word.
  const ShownTable* table(std::string_view name) const;
  // A table without rows for any other word.
  const ShownTable& operator[](std::string_view name) const;

 private:
  std::vector<Table> tables_;
};

// Never throws for what the service holds. Takes about as long as the plan and its steps
// (best_plan, fitting_steps).
View view_of(const Service& service);

// Whether that table says the same whatever gaps are entered, so that a book may tell it of its
// other entries alone and has nothing to work out anew there when a gap is typed.
bool is_told_without_gaps(std::string_view table);

}  // namespace shimwright
