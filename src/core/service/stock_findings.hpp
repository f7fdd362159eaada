// SPDX-License-Identifier: MPL-2.0
//
// The shims that a service lists, as one table for the plan: spares, single sizes on sale, the
// sizes of each row of sizes, then what is on order or has arrived, as spares: it is paid for. A
// size of one series in two rows of sizes is listed once, from the row that has it for less; the
// owner did nothing wrong.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/service/findings.hpp"

namespace shimwright {

struct StockFindings {
  EntryTable table;  // as core/entries takes it
  struct Origin {
    enum class List { spare, single, row_of_sizes, arrival };
    List list = List::spare;
    int row = 0;  // the number that stands before it
  };
  std::vector<Origin> origins;  // of each row of the table
  std::vector<SizesFindings> sizes;
  std::vector<int> sizes_as_text;  // rows of spares and singles
  bool nothing_listed = true;
};

// `one_series` stands for a series left out, where both sides take the same.
StockFindings stock_findings(const Service& service, Unit unit, const std::string& one_series,
                             const std::vector<ArrivalFindings>& arrivals);

}  // namespace shimwright
