// SPDX-License-Identifier: MPL-2.0
//
// Words as people type them into cells, where spaces around them and the case do not count; and as
// a sentence about them says them.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace shimwright {

// Without white space (the no-break space included) at either end.
std::string_view trimmed(std::string_view text);

inline constexpr std::string_view all_figures = "0123456789";

// Of ASCII, whatever the locale.
inline bool is_digit(char c) { return c >= '0' && c <= '9'; }

// ASCII letters in lower case; every other byte of the UTF-8 text stays.
std::string lower_case(std::string_view text);

// In lower case and without accents, as far as Western European letters go: `Épaisseur` is
// `epaisseur`, `Maß` is `mass`. Grows with the length of the text.
std::string plain_letters(std::string_view text);

// Equal once trimmed and in lower case.
bool same_word(std::string_view a, std::string_view b);

// Takes off what stands before the mark, and the mark; all where there is none.
std::string_view taken_off(std::string_view& text, std::string_view mark);

// A number as a person writes it: 275, not 275.000000.
std::string text_of(double number);

// For a sentence: a novel in a cell is cut short.
std::string shortened(std::string_view text);

// The same in quotation marks.
std::string in_quotes(std::string_view text);

// `A, B and C`.
std::string listed(std::span<const std::string> names);

// In lines of at most so many letters (of UTF-8), broken at spaces; a longer word has a line of its
// own.
std::vector<std::string> broken_into_lines(std::string_view text, std::size_t letters);

}  // namespace shimwright
