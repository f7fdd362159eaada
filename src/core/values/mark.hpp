// SPDX-License-Identifier: MPL-2.0
//
// The mark on a shim and what it says of the thickness. Makers etch the size in hundredths or
// thousandths of a millimetre (275 is 2.75 mm, 2755 is 2.755 mm: common practice, no source), in
// plain figures, or as a code of their own. Marks wear off and shims wear thin, so the mark is
// held against the micrometer.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/values/length.hpp"

namespace shimwright {

enum class MarkScheme { automatic, hundredths, thousandths, mm, inch, thou };

// `auto`, `hundredths`, `thousandths` (of a millimetre), `mm`, `in`, `thou` (thousandths of an
// inch: 102 is 0.102 in); throws BadInput for any other word.
MarkScheme mark_scheme_named(std::string_view name);

// The thickness a mark stands for; empty where it stands for none. Automatic: a decimal mark means
// mm, a whole number from 100 to 999 hundredths, from 1000 to 9999 thousandths. `mark` is the text
// on the shim; a number out of a cell is passed through text_of(double). Throws BadInput for a
// thickness below zero or beyond 100 mm.
std::optional<Length> thickness_marked(std::string_view mark,
                                       MarkScheme scheme = MarkScheme::automatic);

// The user's own marks (letters, codes) and their sizes, looked up exactly but for case and outer
// spaces, in constant time. Of a mark listed twice the first counts.
class MarkTable {
 public:
  MarkTable() = default;
  MarkTable(std::initializer_list<std::pair<std::string_view, Length>> rows) {
    for (const auto& [mark, size] : rows) add(mark, size);
  }

  void add(std::string_view mark, Length size);
  std::optional<Length> size_of(std::string_view mark) const;

 private:
  std::unordered_map<std::string, Length> sizes_;
};

// As above, a thickness of zero stands for none and a negative one is BadInput.
std::optional<Length> thickness_marked(std::string_view mark, const MarkTable& table);

enum class Trust { as_marked, thinner, thicker, unmarked, unmeasured };

// `as marked`, `thinner`, `thicker`, `unmarked`, `unmeasured`.
std::string_view word_for(Trust trust);

inline constexpr Length default_allowed_difference = Length::nanometres(15'000);

// Measured against marked; the ends of the allowed difference still belong to `as marked`. A shim
// neither marked nor measured is `unmeasured`. Throws BadInput for a thickness of zero or less and
// a negative allowance.
Trust trust_in(std::optional<Length> marked, std::optional<Length> measured,
               Length allowed = default_allowed_difference);

}  // namespace shimwright
