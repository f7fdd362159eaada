// SPDX-License-Identifier: MPL-2.0
//
// What of the log cannot serve the drift: a gap that cannot be right beside the limits of its
// valve, and rows that lack a part. One gap with its decimal mark in the wrong place would widen
// the scatter of every valve, for that is one for the whole engine.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/log/read_log.hpp"
#include "core/service/words/told.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

// Why a row gives its valve no reading. Of several rows of a valve the last in this order is told,
// as the least is to be done about it.
enum class LogLack { no_row, no_gap, no_distance, no_shim, wrong_gap };

// What the row lacks as far as drift goes; no_row where it lacks nothing. A gap found goes with the
// shim found, a gap left with the shim fitted.
LogLack lack_in(const LogRow& row);

// Blanks every gap of `log`, found or left, that cannot be right (gap_slip.hpp), and tells of them:
// of the first row in full, of the others where they stand. `limits_of`: of a valve by its name;
// none where it is no valve of the engine or its limits are not known.
struct SlipsBlanked {
  std::vector<Told> told;
  std::vector<std::string> valves;  // of each such row
};
SlipsBlanked blank_slips(
    ReadLog& log, const std::function<std::optional<Limits>(const std::string& valve)>& limits_of);

}  // namespace shimwright
