// SPDX-License-Identifier: MPL-2.0
//
// What stands on the Fit sheet of the book that ships, and how its steps are ticked.
#pragma once

#include <string>

#include "book/fit_map.hpp"
#include "book/steps_map.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {

constexpr auto on_fit = book::sheet_name::fit;

inline const book::FitMap fit(the_places());
inline const book::StepsMap steps_map(the_places());

// The box below the caution.
constexpr At said_box{1, 3};

std::string shown(const OpenBook& book, int row, book::FitMap::Column column);

std::string said(const OpenBook& book, book::StepsMap::Fact which);

// As the list of that row offers it; every step of the list, and how many these are.
void tick(OpenBook& book, int row);
int tick_throughout(OpenBook& book);

// The style laid over a cell of the first row of steps by the first condition that holds.
std::string laid_over(OpenBook& book, At at);

}  // namespace shimwright::tests
