// SPDX-License-Identifier: MPL-2.0
//
// Everything the book shows for a service, in the book's unit and in words: a handful of tables,
// each a few columns known by name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/service/service.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

struct ShownTable {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;

  // Empty text where there is no such column or row; rows count from 1.
  const std::string& at(std::string_view column, std::size_t row = 1) const;
};

struct View {
  ShownTable book;    // one row: what is said once
  ShownTable valves;  // a row a valve, in the order given
  ShownTable order;   // what to buy
  ShownTable surplus;
  ShownTable steps;    // the fitting of the present plan
  ShownTable bench;    // a row a step on the bench
  ShownTable stops;    // where the crank stops
  ShownTable sizes;    // a row a row of sizes on sale
  ShownTable remarks;  // every remark on the entries, a line each

  // `book`, `valves`, `order`, `left over`, `steps`, `bench`, `stops`, `sizes`, `remarks`; null for
  // any other word.
  const ShownTable* table(std::string_view name) const;
};

// `decimal_mark` stands for the decimal point in every number. Never throws for what the service
// holds. Takes about as long as the plan and its steps (SHIM.PLAN, SHIM.STEPS).
View view_of(const Service& service, std::string_view decimal_mark = ".");

}  // namespace shimwright
