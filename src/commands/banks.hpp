// SPDX-License-Identifier: MPL-2.0
//
// How the cylinders lie, read from one line: `1-2-3-4` for a bank in line, `right 2-4 / left 1-3`
// for the two of a V or flat engine, as seen from above, the chart's upper one first.
#pragma once

#include <string_view>
#include <vector>

#include "core/engine/layout.hpp"

namespace shimwright::commands {

// Each cylinder from 1 to `cylinders` once, in two equal banks unless in line. A blank line means
// the usual banks. Throws BadInput with a sentence for anything else.
std::vector<Bank> banks_in(std::string_view text, Arrangement arrangement, int cylinders);

}  // namespace shimwright::commands
