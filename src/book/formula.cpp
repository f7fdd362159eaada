// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"

#include <algorithm>
#include <stdexcept>

namespace shimwright::book {

std::string written(std::string_view pattern, std::initializer_list<Word> words) {
  std::string formula;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    if (pattern[i] != '{') {
      formula += pattern[i];
      continue;
    }
    const std::size_t end = pattern.find('}', i);
    const std::string_view name = pattern.substr(i + 1, end - i - 1);
    const auto word = std::ranges::find(words, name, &Word::name);
    if (word == words.end()) throw std::logic_error("no meaning for " + std::string(name));
    formula += word->stands_for;
    i = end;
  }
  return formula;
}

}  // namespace shimwright::book
