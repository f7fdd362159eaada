// SPDX-License-Identifier: MPL-2.0
//
// The commands of the bench, run in a book that is open.
#pragma once

#include <string_view>

#include "open_book.hpp"

namespace shimwright::tests {

// Runs that command in the book's window; it ends a little later.
void run_command(const office::Office& office, const OpenBook& book, std::string_view url);

// Take to the bench, where nothing is asked; how many steps stand there then, none where none came
// in half a minute.
int take_to_bench(const office::Office& office, const OpenBook& book);

}  // namespace shimwright::tests
