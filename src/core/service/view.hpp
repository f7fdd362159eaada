// SPDX-License-Identifier: MPL-2.0
//
// Everything the book shows for a service, in the book's unit and in words: a handful of tables,
// each a few columns known by name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/service/service.hpp"
#include "core/service/shown_table.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

struct View {
  ShownTable book;    // one row: what is said once
  ShownTable valves;  // a row a valve, in the order given
  ShownTable order;   // what to buy
  ShownTable surplus;
  ShownTable steps;    // the fitting of the present plan
  ShownTable bench;    // a row a step on the bench
  ShownTable stops;    // where the crank stops
  ShownTable sizes;    // a row a row of sizes on sale
  ShownTable boxes;    // what each sheet's box says, line by line
  ShownTable remarks;  // every remark on the entries, a line each

  // `book`, `valves`, `order`, `left over`, `steps`, `bench`, `stops`, `sizes`, `boxes`,
  // `remarks`; null for
  // any other word.
  const ShownTable* table(std::string_view name) const;
};

// Never throws for what the service holds. Takes about as long as the plan and its steps
// (best_plan, fitting_steps).
View view_of(const Service& service);

}  // namespace shimwright
