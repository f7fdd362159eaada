// SPDX-License-Identifier: MPL-2.0
//
// Something to be told, as a value: what is meant and which words fill its blanks. A Teller puts it
// into a sentence.
#pragma once

#include <utility>
#include <vector>

#include "core/service/words/teller.hpp"

namespace shimwright {

struct Told {
  Say what;
  std::vector<Word> words = {};
};

inline std::string in_words(const Told& told, const Teller& teller) {
  return teller.say(told.what, told.words);
}

// A sentence after the other.
inline std::string in_words(const std::vector<Told>& all, const Teller& teller) {
  std::string words;
  for (const Told& one : all) words += (words.empty() ? "" : " ") + in_words(one, teller);
  return words;
}

}  // namespace shimwright
