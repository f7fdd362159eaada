// SPDX-License-Identifier: MPL-2.0
//
// The firing of an engine in one line, as a person types it: an order where the engine fires at
// even intervals, `1-3-4-2`, or the crank angle of each cylinder where it does not,
// `1 at 0, 2 at 270`: in degrees after cylinder 1's firing dead centre, the way the engine turns.
#pragma once

#include <optional>
#include <string_view>

#include "core/crank/firing.hpp"

namespace shimwright {

// Angles are meant where the line says `at` (or `:`, `=`, `@`) between cylinder and degrees; a
// degree sign may follow, and commas, semicolons or spaces part the cylinders. Degrees may have a
// decimal comma or point; a comma directly before a figure is a decimal mark. Throws BadInput as
// Firing does, and where the line is neither form. `cylinders` as for Firing.
Firing firing_written(std::string_view text, std::optional<int> cylinders = std::nullopt);

}  // namespace shimwright
