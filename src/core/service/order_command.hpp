// SPDX-License-Identifier: MPL-2.0
//
// What the command Order placed writes into Arrivals and says of it, as plain data. What is on
// order already is stock, so the plan's order holds only what is still missing: the command may be
// given again at any time, and no row that stands there is touched.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"

namespace shimwright {

// Why the order cannot be placed: there is none, or Arrivals has no room for it. Blank: it can.
std::string why_no_order(const Service& service, const Findings& found);

// What to ask first: of shims that were ordered before, some have not arrived. Blank: nothing.
std::string question_before_ordering(const Service& service, const Findings& found);

// The plan's order, a row a shim, into blank rows from the top. `today` as it is to stand there.
// Nothing where the order cannot be placed.
std::vector<EntryWrite> order_to_write(const Service& service, const Findings& found,
                                       std::string_view today);

// What is to be said once it is written; `found` as before that.
std::string order_in_words(const Findings& found);

}  // namespace shimwright
