// SPDX-License-Identifier: MPL-2.0
//
// The engine's firing and valve timing as a person enters them in cells: copied out of the manual,
// as one line or as a small table.
#pragma once

#include <optional>

#include "core/crank/crank.hpp"
#include "core/entries/entries.hpp"

namespace shimwright {

// One cell with the firing in a line, as firing_written reads it (a bare number 1: a single), or
// rows {cylinder, firing angle in degrees}, of which a heading (a first row of two texts) and blank
// rows are skipped. None where nothing is given: no table, one blank cell or a zero, or blanks
// only. Throws BadInput with the place where a cylinder or an angle is missing or no number, and
// as Firing does.
std::optional<Firing> read_firing(const EntryTable& firing);

// A row or a column of four, in degrees: inlet opens before TDC, inlet closes after BDC, exhaust
// opens before BDC, exhaust closes after TDC. A blank takes its default, as all do where nothing is
// given; zero is a timing. Throws BadInput for another shape, for text (a default instead of what
// was typed could have a valve measured on its lobe) and beyond 720 degrees.
ValveTiming read_timing(const EntryTable& timing);

// In degrees. Zero counts as not given, as one blank cell comes out of a sheet as a zero: then, and
// where nothing is given, the usual margin. Throws BadInput for text and beyond 720 degrees.
CrankAngle read_margin(const Entry& margin);

}  // namespace shimwright
