// SPDX-License-Identifier: MPL-2.0
//
// What the box of a sheet says in the open book.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "open_book.hpp"

namespace shimwright::tests {

// Where the lines of that sheet's box stand. Throws std::out_of_range where it has none.
Area box_on(std::string_view sheet);

// Those that say anything.
std::vector<std::string> lines_of_box(const OpenBook& book, std::string_view sheet);

// As one reads it: line after line.
std::string told_by_box(const OpenBook& book, std::string_view sheet);

}  // namespace shimwright::tests
