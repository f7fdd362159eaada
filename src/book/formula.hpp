// SPDX-License-Identifier: MPL-2.0
//
// Formulas written so that they can be read: `{gap}` in the pattern stands for a cell.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>

#include "book/area.hpp"

namespace shimwright::book {

struct Word {
  std::string name;
  std::string stands_for;
  Word(std::string_view of, std::string_view meaning) : name(of), stands_for(meaning) {}
  // On the formula's own sheet.
  Word(std::string_view of, At at) : Word(of, absolute(at)) {}
  Word(std::string_view of, const Area& area) : Word(of, absolute(area)) {}
  Word(std::string_view of, int number) : Word(of, std::to_string(number)) {}
};

// Throws std::logic_error for a word in braces that is not among `words`.
std::string written(std::string_view pattern, std::initializer_list<Word> words);

}  // namespace shimwright::book
