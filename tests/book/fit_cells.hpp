// SPDX-License-Identifier: MPL-2.0
//
// The bench list on Fit in the book that ships: how it is taken there, read and ticked.
#pragma once

#include <string>
#include <string_view>

#include "book/fit_map.hpp"
#include "on_sheets.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {

inline const book::FitMap fit(the_places().count());

// As bench_list.hpp does it, in the one office.
int take_to_bench(const OpenBook& book);

std::string shown(const OpenBook& book, int row, book::FitMap::Column column);
int steps_on(const OpenBook& book);  // rows that hold a step

void tick(OpenBook& book, int row);
int tick_throughout(OpenBook& book);

// All that the box says, its lines joined by blanks.
std::string box_of_fit(const OpenBook& book);

// The style laid over a cell by the first condition that holds.
std::string laid_over(OpenBook& book, At at);

}  // namespace shimwright::tests
