// SPDX-License-Identifier: MPL-2.0
//
// Everything in the entries of a service that makes no sense or wants a second look, sheet by
// sheet. What is wrong with a limit is told once, on Engine, and not again for each valve; what is
// wrong with a row of sizes once, and not for each of its sizes.
#pragma once

#include <vector>

#include "core/service/findings.hpp"
#include "core/service/stock_findings.hpp"

namespace shimwright {

// Each adds to `found.remarks`. `troubles` are those of the tables of valves and shims.
void tell_remarks_on_engine(const Service& service, Findings& found, const EntryTable& limits,
                            const EntryTable& rules);
void tell_remarks_on_head(const Service& service, Findings& found,
                          const std::vector<Trouble>& troubles);
void tell_remarks_on_shims(const Service& service, Findings& found,
                           const std::vector<Trouble>& troubles, const StockFindings& stock);
void tell_remarks_on_arrivals(const Service& service, Findings& found);

}  // namespace shimwright
