// SPDX-License-Identifier: MPL-2.0
//
// What is worth a second look though nothing is wrong: entries that are sound in themselves and may
// still not be this engine's. A remark forbids nothing.
#pragma once

#include <string>
#include <vector>

#include "commands/entries.hpp"
#include "commands/request.hpp"

namespace shimwright::commands {

// A sentence each, the most general first. `opened` is what the dialog opened with: as long as
// its clearances stand as the last book's, that is one of the remarks.
std::vector<std::string> remarks_on(const BookRequest& request, const NewBookEntries& opened);

}  // namespace shimwright::commands
