// SPDX-License-Identifier: MPL-2.0
#include "core/values/mark.hpp"

#include <array>
#include <cmath>

#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::optional<Length> positive(Length length) {
  if (length == Length()) return std::nullopt;
  check_thickness(length);
  return length;
}

bool whole(double number) { return number == std::floor(number); }

}  // namespace

MarkScheme mark_scheme_named(std::string_view name) {
  struct Name {
    std::string_view text;
    MarkScheme scheme;
  };
  static constexpr std::array<Name, 6> names{{{"auto", MarkScheme::automatic},
                                              {"hundredths", MarkScheme::hundredths},
                                              {"thousandths", MarkScheme::thousandths},
                                              {"mm", MarkScheme::mm},
                                              {"in", MarkScheme::inch},
                                              {"thou", MarkScheme::thou}}};
  for (const Name& candidate : names)
    if (same_word(name, candidate.text)) return candidate.scheme;
  throw BadInput(
      "the mark scheme '" + std::string(name) +
      "' is unknown: use auto, hundredths, thousandths, mm, in, thou or a table of marks "
      "and sizes");
}

std::optional<Length> thickness_marked(std::string_view mark, MarkScheme scheme) {
  const auto number = number_written(mark);
  if (!number) return std::nullopt;
  switch (scheme) {
    case MarkScheme::hundredths:
      return positive(Length::of(*number * 10, Unit::um));
    case MarkScheme::thousandths:
      return positive(Length::of(*number, Unit::um));
    case MarkScheme::mm:
      return positive(Length::of(*number, Unit::mm));
    case MarkScheme::inch:
      return positive(Length::of(*number, Unit::inch));
    case MarkScheme::thou:
      return positive(Length::of(*number, Unit::thou));
    case MarkScheme::automatic:
      break;
  }
  if (mark.find_first_of(".,") != std::string_view::npos || !whole(*number))
    return positive(Length::of(*number, Unit::mm));
  if (*number >= 100 && *number <= 999) return Length::of(*number * 10, Unit::um);
  if (*number >= 1000 && *number <= 9999) return Length::of(*number, Unit::um);
  return std::nullopt;
}

void MarkTable::add(std::string_view mark, Length size) {
  sizes_.try_emplace(lower_case(trimmed(mark)), size);
}

std::optional<Length> MarkTable::size_of(std::string_view mark) const {
  const auto found = sizes_.find(lower_case(trimmed(mark)));
  return found == sizes_.end() ? std::nullopt : std::optional(found->second);
}

std::optional<Length> thickness_marked(std::string_view mark, const MarkTable& table) {
  const auto size = table.size_of(mark);
  return size ? positive(*size) : std::nullopt;
}

std::string_view word_for(Trust trust) {
  switch (trust) {
    case Trust::as_marked:
      return "as marked";
    case Trust::thinner:
      return "thinner";
    case Trust::thicker:
      return "thicker";
    case Trust::unmarked:
      return "unmarked";
    case Trust::unmeasured:
      return "unmeasured";
  }
  return "unmeasured";
}

Trust trust_in(std::optional<Length> marked, std::optional<Length> measured, Length allowed) {
  if (allowed < Length())
    throw BadInput("the allowed difference, " + text_of(allowed) + ", is negative");
  if (marked) check_thickness(*marked);
  if (measured) check_thickness(*measured);
  if (!measured) return Trust::unmeasured;
  if (!marked) return Trust::unmarked;
  if (*measured < *marked - allowed) return Trust::thinner;
  if (*measured > *marked + allowed) return Trust::thicker;
  return Trust::as_marked;
}

}  // namespace shimwright
