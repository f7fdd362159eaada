// SPDX-License-Identifier: MPL-2.0
//
// A made-up job as a book gathers it.
#pragma once

#include "made_up_job.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {

// Single sizes on sale are numbered on from 21, as on Shims.
ServiceEntries entries_of(const Job& job, const EngineLayout& layout, Unit unit = Unit::mm);

// Holds the View of that job against its best plan. `half` as the office writes it.
void expect_best_plan(const Job& job, const EngineLayout& layout, Unit unit = Unit::mm,
                      std::string_view half = "0.5");

}  // namespace shimwright::tests
