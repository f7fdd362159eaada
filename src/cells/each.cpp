// SPDX-License-Identifier: MPL-2.0
#include "cells/each.hpp"

#include <vector>

namespace shimwright::cells {

Shape common_shape(std::initializer_list<const Argument*> arguments) {
  std::vector<NamedShape> shapes;
  for (const Argument* argument : arguments)
    shapes.push_back({argument->name(), argument->shape()});
  return common_shape(shapes);
}

Shape common_shape(std::span<const NamedShape> arguments) {
  const NamedShape* first = nullptr;
  for (const NamedShape& argument : arguments) {
    if (argument.shape.single()) continue;
    if (first == nullptr)
      first = &argument;
    else if (argument.shape != first->shape)
      throw BadInput(std::string(first->name) + " has " + text_of(first->shape) + ", " +
                     std::string(argument.name) + " has " + text_of(argument.shape) +
                     ": ranges must be of one shape");
  }
  return first == nullptr ? Shape() : first->shape;
}

BadInput placed(const BadInput& trouble, const Shape& shape, std::size_t row, std::size_t column) {
  if (shape.single()) return trouble;
  std::string place = "row " + std::to_string(row + 1);
  if (shape.columns > 1) place += ", column " + std::to_string(column + 1);
  return BadInput(place + " of the ranges: " + trouble.what());
}

}  // namespace shimwright::cells
