// SPDX-License-Identifier: MPL-2.0
//
// Made-up jobs of 48 valves for the benchmark of the book: the same on every machine.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <string>
#include <vector>

#include "book/office/uno.hpp"
#include "core/engine/layout.hpp"

namespace shimwright::bench {

using Document = book::Ref<com::sun::star::sheet::XSpreadsheetDocument>;

// Twelve cylinders, two exhaust and two inlet valves each: a V and one in line.
std::vector<EngineLayout> layouts_of_48_valves();

// The entries of a job that gives every function work, as book::fill takes them: each shim worn to
// a size of its own, so that shims move from valve to valve across the stops; spares, rows of sizes
// and single sizes on sale.
std::string entries_for(const EngineLayout& layout);

}  // namespace shimwright::bench
