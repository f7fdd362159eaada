// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/valve_words.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

// Of any alphabet.
bool is_of_a_word(char c) {
  return (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) & 0x80) != 0;
}

enum class Kind { side, place, filler };

struct Known {
  std::string_view word;
  Kind kind;
  Side side = Side::exhaust;
  char place = '\0';
};

// Longer words first, so that letters written together are taken apart rightly. English, German,
// French, Spanish and Italian, in plain letters (common practice, no source).
constexpr std::array known_words{
    Known{"aspirazione", Kind::side, Side::inlet},
    Known{"echappement", Kind::side, Side::exhaust},
    Known{"admission", Kind::side, Side::inlet},
    Known{"izquierda", Kind::place, {}, 'L'},
    Known{"cylinder", Kind::filler},
    Known{"admision", Kind::side, Side::inlet},
    Known{"cilindro", Kind::filler},
    Known{"cylindre", Kind::filler},
    Known{"sinistra", Kind::place, {}, 'L'},
    Known{"zylinder", Kind::filler},
    Known{"exhaust", Kind::side, Side::exhaust},
    Known{"auslass", Kind::side, Side::exhaust},
    Known{"derecha", Kind::place, {}, 'R'},
    Known{"einlass", Kind::side, Side::inlet},
    Known{"scarico", Kind::side, Side::exhaust},
    Known{"soupape", Kind::filler},
    Known{"valvola", Kind::filler},
    Known{"valvula", Kind::filler},
    Known{"intake", Kind::side, Side::inlet},
    Known{"centre", Kind::place, {}, 'M'},
    Known{"center", Kind::place, {}, 'M'},
    Known{"middle", Kind::place, {}, 'M'},
    Known{"centro", Kind::place, {}, 'M'},
    Known{"destra", Kind::place, {}, 'R'},
    Known{"droite", Kind::place, {}, 'R'},
    Known{"escape", Kind::side, Side::exhaust},
    Known{"gauche", Kind::place, {}, 'L'},
    Known{"milieu", Kind::place, {}, 'M'},
    Known{"rechts", Kind::place, {}, 'R'},
    Known{"ventil", Kind::filler},
    Known{"inlet", Kind::side, Side::inlet},
    Known{"right", Kind::place, {}, 'R'},
    Known{"valve", Kind::filler},
    Known{"links", Kind::place, {}, 'L'},
    Known{"mitte", Kind::place, {}, 'M'},
    Known{"left", Kind::place, {}, 'L'},
    Known{"cyl", Kind::filler},
    Known{"exh", Kind::side, Side::exhaust},
    Known{"int", Kind::side, Side::inlet},
    Known{"mid", Kind::place, {}, 'M'},
    Known{"zyl", Kind::filler},
    Known{"ex", Kind::side, Side::exhaust},
    Known{"in", Kind::side, Side::inlet},
    Known{"no", Kind::filler},
    Known{"lh", Kind::place, {}, 'L'},
    Known{"rh", Kind::place, {}, 'R'},
    Known{"e", Kind::side, Side::exhaust},
    Known{"i", Kind::side, Side::inlet},
    Known{"l", Kind::place, {}, 'L'},
    Known{"m", Kind::place, {}, 'M'},
    Known{"r", Kind::place, {}, 'R'},
};

// False where its kind was told already.
bool take(const Known& known, ValveWords& into) {
  switch (known.kind) {
    case Kind::side:
      if (into.side) return false;
      into.side = known.side;
      return true;
    case Kind::place:
      if (into.place != '\0') return false;
      into.place = known.place;
      return true;
    case Kind::filler:
      return true;
  }
  return false;
}

// Letters that say a valve and nothing else, alone or written together (`exl`).
bool take_letters(std::string_view letters, ValveWords& into) {
  if (const auto whole = std::ranges::find(known_words, letters, &Known::word);
      whole != known_words.end())
    return take(*whole, into);
  ValveWords tried = into;
  while (!letters.empty()) {
    const auto next = std::ranges::find_if(
        known_words, [&](const Known& known) { return letters.starts_with(known.word); });
    if (next == known_words.end() || !take(*next, tried)) return false;
    letters.remove_prefix(next->word.size());
  }
  into = std::move(tried);
  return true;
}

}  // namespace

ValveWords valve_words_in(std::string_view text) {
  const std::string lower = plain_letters(text);
  ValveWords words;
  for (std::size_t i = 0; i < lower.size();) {
    const bool digits = is_digit(lower[i]);
    if (!digits && !is_of_a_word(lower[i])) {
      ++i;
      continue;
    }
    std::size_t end = i;
    while (end < lower.size() && (digits ? is_digit(lower[end]) : is_of_a_word(lower[end]))) ++end;
    const std::string_view word = std::string_view(lower).substr(i, end - i);
    i = end;
    if (!digits) {
      if (!take_letters(word, words)) words.rest.emplace_back(word);
      continue;
    }
    int number = 0;
    const auto read = std::from_chars(word.data(), word.data() + word.size(), number);
    if (words.cylinder || read.ec != std::errc())
      words.rest.emplace_back(word);
    else
      words.cylinder = number;
  }
  return words;
}

ValveNames::ValveNames(const std::vector<std::string>& names) {
  for (const std::string& name : names) {
    names_.push_back(lower_case(trimmed(name)));
    words_.push_back(valve_words_in(name));
  }
}

std::vector<std::size_t> ValveNames::fitting(const ValveWords& words) const {
  std::vector<std::size_t> all;
  if (!words.cylinder && !words.side && words.place == '\0') return all;
  for (std::size_t i = 0; i < words_.size(); ++i) {
    const ValveWords& own = words_[i];
    if (words.cylinder && words.cylinder != own.cylinder) continue;
    if (words.side && words.side != own.side) continue;
    if (words.place != '\0' && words.place != own.place) continue;
    all.push_back(i);
  }
  return all;
}

std::vector<std::size_t> ValveNames::fitting(std::string_view text) const {
  const std::string wanted = lower_case(trimmed(text));
  if (const auto same = std::ranges::find(names_, wanted); same != names_.end())
    return {static_cast<std::size_t>(same - names_.begin())};
  const ValveWords words = valve_words_in(text);
  if (!words.rest.empty()) return {};
  return fitting(words);
}

}  // namespace shimwright
