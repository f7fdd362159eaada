// SPDX-License-Identifier: MPL-2.0
//
// Puts values into words: the text for a meaning, in a language, with its blanks filled in; lengths
// in the unit asked for. The only place where a number becomes part of a sentence.
//
// A text's blanks are `{0}`, `{1}` and so on; `{0?valve|valves}` is the first word where argument 0
// is 1, else the second. Where the book has another text than the functions, it stands after
// theirs, behind `||`: `the clearance||the gap`.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/service/words/say.hpp"
#include "core/values/length.hpp"
#include "core/values/money.hpp"

namespace shimwright {

enum class Language { english };

// `en`; English for every other word, blank included.
Language language_named(std::string_view code);

// The book and the functions differ in some nouns: what is `the gap` on a sheet is `the clearance`
// in a function.
enum class Terms { functions, book };

// A length as a person typed it, which may be one that cannot be: told with its unit and no more
// decimals than were typed (`2425 mm`).
struct TypedLength {
  double mm = 0;
  bool operator==(const TypedLength&) const = default;
};

// A length as a person is to type it, without its unit: `2.425`.
struct LengthToType {
  Length length;
  bool operator==(const LengthToType&) const = default;
};

// A list told as `A, B and C`; what stands in it is text or has a text of its own.
using Names = std::vector<std::variant<std::string, Say>>;

// What fills a blank. A length comes with its unit (`0.16 mm`), a list as `A, B and C`.
using Word = std::variant<Length, Money, std::int64_t, double, std::string, Say,
                          std::vector<std::string>, TypedLength, LengthToType, Names>;

class Teller {
 public:
  // `unit` is mm or inch. `decimal_mark` stands for the decimal point in every number told.
  explicit Teller(Language language = Language::english, Unit unit = Unit::mm,
                  std::string_view decimal_mark = ".", Terms terms = Terms::functions)
      : language_(language), unit_(unit), decimal_mark_(decimal_mark), terms_(terms) {}

  Unit unit() const { return unit_; }

  // Throws std::logic_error for a blank without a word.
  std::string say(Say what, std::span<const Word> words) const;
  std::string say(Say what, std::initializer_list<Word> words = {}) const {
    return say(what, std::span(words.begin(), words.size()));
  }

  // As a column shows it, without its unit: three decimals in mm, four in inches.
  std::string column(Length length) const;
  // With its unit: `0.16 mm`, `0.0063 in`; no more decimals than it needs, at least two in mm.
  std::string with_unit(Length length) const;
  // For a narrow place, without its unit: two decimals in mm, four in inches.
  std::string short_of(Length length) const;
  // Two lengths for a narrow place: in mm without a last decimal that is nought in both
  // (`2.47\u20132.49`), in inches as in every other place (`0.0930\u20130.0945`).
  std::string span(Length from, Length to) const;
  // Two decimals.
  std::string sum(Money money) const;
  // No more decimals than it needs.
  std::string number(double value) const;
  // `mm`, `in`.
  std::string_view unit_word() const;

 private:
  std::string fixed(Length length, int decimals) const;
  std::string filled(const Word& word) const;
  std::string listed(std::span<const std::string> names) const;

  Language language_;
  Unit unit_;
  std::string decimal_mark_;
  Terms terms_;
};

// The text with its blanks. Empty where the language lacks it.
std::string_view text_of(Say what, Language language, Terms terms);

// A text and what it is for, as a language's file lists them.
struct Text {
  Say what;
  std::string_view words;
};
std::span<const Text> english_texts();

}  // namespace shimwright
