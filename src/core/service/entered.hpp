// SPDX-License-Identifier: MPL-2.0
//
// Single entries of a service, read: lengths in the book's unit, words, and numbers that stand
// there as text.
#pragma once

#include <optional>
#include <string>

#include "core/entries/entries.hpp"
#include "core/values/length.hpp"

namespace shimwright {

// A formula that came to an error stands there.
bool has_failed(const Entry& entry);

// Nothing, only spaces, or a formula that failed: not given.
bool not_given(const Entry& entry);

// A number in the book's unit, or text that reads as a length; none where it is neither or cannot
// be a length.
std::optional<Length> length_entered(const Entry& entry, Unit unit);

// The same for the tables that core/entries reads: in mm where it is a number or reads as a length
// (also one that cannot be, which is told there), text as it stands, else nothing.
Entry in_mm(const Entry& entry, Unit unit);

// Text that reads as a length: the office completes other entries of its column from it.
bool is_length_as_text(const Entry& entry, Unit unit);

// As a person types it in a book of that unit, mm or inch.
double in_unit(Length length, Unit unit);

std::optional<double> number_entered(const Entry& entry);

}  // namespace shimwright
