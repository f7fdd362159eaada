// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/owner_table.hpp"

#include <algorithm>
#include <array>

#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/written_date.hpp"
#include "core/values/text.hpp"

namespace shimwright {

std::size_t OwnerTable::columns() const {
  std::size_t most = 0;
  for (const auto& row : rows) most = std::max(most, row.size());
  return most;
}

const OwnerCell& OwnerTable::at(std::size_t row, std::size_t column) const {
  static const OwnerCell blank;
  return column < rows[row].size() ? rows[row][column] : blank;
}

bool says_nothing(const OwnerCell& cell) {
  if (is_blank(cell.value)) return true;
  const auto* text = std::get_if<std::string>(&cell.value);
  if (text == nullptr) return false;
  static constexpr std::array<std::string_view, 7> nothing{"-",      "--",  "\u2013", "\u2014",
                                                           "\u2212", "n/a", "na"};
  return std::ranges::any_of(nothing,
                             [&](std::string_view word) { return same_word(*text, word); });
}

std::string shown(const OwnerCell& cell) {
  const auto* number = std::get_if<double>(&cell.value);
  if (cell.is_date && number != nullptr)
    if (const std::string day = iso_day(*number); !day.empty()) return day;
  return word_in(cell.value);
}

}  // namespace shimwright
