// SPDX-License-Identifier: MPL-2.0
#include "cells/each.hpp"

namespace shimwright::cells {
namespace {

// No engine needs as many; Calc itself takes minutes to show the answers for a whole column.
constexpr std::size_t most_cells = 100'000;

}  // namespace

Shape common_shape(std::initializer_list<const Argument*> arguments) {
  const Argument* first = nullptr;
  for (const Argument* argument : arguments) {
    const Shape shape = argument->shape();
    if (shape.single()) continue;
    if (shape.rows * shape.columns > most_cells)
      throw BadInput(argument->name() + " has " + text_of(shape) + ": at most " +
                     std::to_string(most_cells) + " cells can be answered at once");
    if (first == nullptr)
      first = argument;
    else if (shape != first->shape())
      throw BadInput(first->name() + " has " + text_of(first->shape()) + ", " + argument->name() +
                     " has " + text_of(shape) + ": ranges must be of one shape");
  }
  return first == nullptr ? Shape() : first->shape();
}

BadInput placed(const BadInput& trouble, const Shape& shape, std::size_t row, std::size_t column) {
  if (shape.single()) return trouble;
  std::string place = "row " + std::to_string(row + 1);
  if (shape.columns > 1) place += ", column " + std::to_string(column + 1);
  return BadInput(place + " of the ranges: " + trouble.what());
}

}  // namespace shimwright::cells
