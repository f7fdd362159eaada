// SPDX-License-Identifier: MPL-2.0
//
// The same book with its values only: every formula replaced by what it came to.
#pragma once

#include <string>

#include "invented_book.hpp"
#include "office/office.hpp"

namespace shimwright::bench {

// Sheets, styles and conditional formats are the book's own; none of its cells holds a formula.
Document values_copy(const office::Office& office, const Document& book);

// The first cell in which the two differ and what stands there; empty where they say the same. A
// cell of the book that came to an error is blank in the copy.
std::string difference(const Document& book, const Document& copy);

std::size_t formulas_in(const Document& book);

}  // namespace shimwright::bench
