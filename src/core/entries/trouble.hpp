// SPDX-License-Identifier: MPL-2.0
//
// What is wrong with an entry, as a value: where it stands, what is the matter, and the numbers
// that a sentence about it names. The sentence itself comes out of the catalogue (words/).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/service/words/teller.hpp"
#include "core/values/length.hpp"

namespace shimwright {

// Whom a sentence begins with: `valve 1 EX L: ...`, `spare 2.70 mm: ...`, `rule "work": ...`.
struct About {
  enum class Kind { nothing, valve, spare, sale, shim, rule };  // shim: neither spare nor sale
  Kind kind = Kind::nothing;
  std::string name = {};  // of a valve, as entered; of a rule, in lower case
  Length size = {};       // of a shim

  bool operator==(const About&) const = default;
};

struct Trouble {
  std::string table;      // `valves`, `shims` or `rules`; `firing`, `stops`
  std::size_t row = 0;    // counted from 1 as the table was given; 0: the table as a whole
  std::string column;     // its name in the table's description; empty: the row as a whole
  bool grave = false;     // no plan can be trusted until it is mended
  bool left_out = false;  // the row does not count, and the plan does without it
  About about = {};
  Say what = {};
  std::vector<Word> words = {};  // for the blanks of `what`

  bool operator==(const Trouble&) const = default;
};

// A grave one with the table as a whole.
Trouble trouble_with_table(std::string_view table, Say what, std::vector<Word> words);

// As SHIM.CHECK tells it: `valve 2 IN: the clearance, -0.12 mm, is negative`.
std::string sentence(const Trouble& trouble, const Teller& teller = Teller());

// With its place before it: `valves, row 3, clearance: ...`.
std::string in_words(const Trouble& trouble, const Teller& teller = Teller());

}  // namespace shimwright
