// SPDX-License-Identifier: MPL-2.0
//
// Days as the office counts them, from 30 December 1899 on, and as a person writes them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shimwright {

// None for a year before 1900, and for a day that no calendar has (30 February).
std::optional<double> day_of(int year, int month, int day);

// `2026-11-26`, or `26.11.2026`; empty for anything else, and for a day that no calendar has (30
// February). Day and month between strokes could be either, so `4/5/2026` is no day.
std::optional<double> day_written(std::string_view text);

// `2026-11-26`. Of a day with a time, the day.
std::string day_in_figures(double day);

}  // namespace shimwright
