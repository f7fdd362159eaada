// SPDX-License-Identifier: MPL-2.0
//
// Value by value: a function of the core applied to arguments that may be ranges. A single value
// stands for every place of a range; where an argument is not given, so is the answer there.
#pragma once

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>

#include "cells/decode.hpp"
#include "cells/encode.hpp"
#include "core/values/choice.hpp"

namespace shimwright::cells {

// The shape of the ranges among the arguments. Throws BadInput where two ranges differ.
Shape common_shape(std::initializer_list<const Argument*> arguments);

// The same of shapes by name, however large.
struct NamedShape {
  std::string_view name;
  Shape shape;
};
Shape common_shape(std::span<const NamedShape> arguments);

// The trouble with its place in the ranges.
BadInput placed(const BadInput& trouble, const Shape& shape, std::size_t row, std::size_t column);

// How an answer of the core lies in cells: one beside the other, `width` of them.
template <class T>
struct ResultShape;

template <>
struct ResultShape<Length> {
  static constexpr std::size_t width = 1;
  static constexpr bool text = false;
  static std::array<Entry, width> of(Length answer) { return {answer.mm()}; }
};

template <>
struct ResultShape<std::string_view> {
  static constexpr std::size_t width = 1;
  static constexpr bool text = true;
  static std::array<Entry, width> of(std::string_view answer) { return {std::string(answer)}; }
};

template <>
struct ResultShape<ShimRange> {
  static constexpr std::size_t width = 2;
  static constexpr bool text = false;
  static std::array<Entry, width> of(const ShimRange& answer) {
    return {answer.thinnest.mm(), answer.thickest.mm()};
  }
};

template <class T>
struct ResultShape<std::optional<T>> : ResultShape<T> {
  static std::array<Entry, ResultShape<T>::width> of(const std::optional<T>& answer) {
    return answer ? ResultShape<T>::of(*answer) : std::array<Entry, ResultShape<T>::width>();
  }
};

template <class Function, class... Arguments>
Any each(Function function, const Arguments&... arguments) {
  using Answer = ResultShape<std::invoke_result_t<Function, typename Arguments::Element...>>;
  const Shape shape = common_shape({&arguments.argument...});
  if (Answer::width > 1 && shape.columns > 1)
    throw BadInput("the ranges are columns: " + text_of(shape) + " are too many");
  EntryTable answers(shape.rows, std::vector<Entry>(shape.columns * Answer::width));
  for (std::size_t row = 0; row < shape.rows; ++row)
    for (std::size_t column = 0; column < shape.columns; ++column) try {
        const auto elements = std::tuple(arguments.element(row, column)...);
        const auto answer = [&](const auto&... given) {
          return (given && ...) ? Answer::of(function(*given...)) : decltype(Answer::of({}))();
        };
        std::ranges::move(std::apply(answer, elements),
                          answers[row].begin() + static_cast<std::ptrdiff_t>(column));
      } catch (const BadInput& trouble) {
        throw placed(trouble, shape, row, column);
      }
  if (shape.single() && (Answer::width == 1 || answers[0][0] == Entry()))
    return single_result(answers[0][0]);
  return Answer::text ? text_range(answers) : number_range(answers);
}

}  // namespace shimwright::cells
