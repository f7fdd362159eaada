// SPDX-License-Identifier: MPL-2.0
#include "cells/each.hpp"

namespace shimwright::cells {

Shape common_shape(std::initializer_list<const Argument*> arguments) {
  const Argument* first = nullptr;
  for (const Argument* argument : arguments) {
    if (argument->shape().single()) continue;
    if (first == nullptr)
      first = argument;
    else if (argument->shape() != first->shape())
      throw BadInput(first->name() + " has " + text_of(first->shape()) + ", " + argument->name() +
                     " has " + text_of(argument->shape()) + ": ranges must be of one shape");
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
