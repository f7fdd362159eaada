// SPDX-License-Identifier: MPL-2.0
//
// A valve as its owner calls it: `1 EX L`, `ex1l`, `Exhaust 1 left`, `Cyl. 1 EXL`. What counts is
// the cylinder, the side and the place, in any order and case.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/engine/side.hpp"

namespace shimwright {

// What a text says of a valve, and its other words.
struct ValveWords {
  std::optional<int> cylinder;
  std::optional<Side> side;
  char place = '\0';              // L, M, R
  std::vector<std::string> rest;  // in plain letters, in order; signs left off
};

// Of the two meanings of `in` and `left` that of a valve is taken, but once only: `1 EX L left` has
// `left` as its rest.
ValveWords valve_words_in(std::string_view text);

// The valves of a book, found by what an owner calls them.
class ValveNames {
 public:
  explicit ValveNames(const std::vector<std::string>& names);

  // The valves, by their numbers in the list, that these words may mean: all that agree on what is
  // said. None where nothing is said of a valve. The rest of the words does not count.
  std::vector<std::size_t> fitting(const ValveWords& words) const;

  // The same for a text that says nothing else; a text that is a name fits that valve alone.
  std::vector<std::size_t> fitting(std::string_view text) const;

 private:
  std::vector<std::string> names_;  // in lower case
  std::vector<ValveWords> words_;
};

}  // namespace shimwright
