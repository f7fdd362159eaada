// SPDX-License-Identifier: MPL-2.0
//
// Words as people type them into cells: spaces around them and the case do not count.
#pragma once

#include <string>
#include <string_view>

namespace shimwright {

// Without white space (the no-break space included) at either end.
std::string_view trimmed(std::string_view text);

// ASCII letters in lower case; every other byte of the UTF-8 text stays.
std::string lower_case(std::string_view text);

// Equal once trimmed and in lower case.
bool same_word(std::string_view a, std::string_view b);

// A number as a person writes it: 275, not 275.000000.
std::string text_of(double number);

}  // namespace shimwright
