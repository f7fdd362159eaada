// SPDX-License-Identifier: MPL-2.0
//
// A table of texts, ready to be shown: columns known by name, rows counted from 1. It travels from
// BOOK.TELLS to BOOK.SHOWS as one text.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace shimwright {

struct ShownTable {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;  // each as long as `columns`

  bool operator==(const ShownTable&) const = default;

  // Empty text where there is no such column or row.
  const std::string& at(std::string_view column, std::size_t row = 1) const;

  // The cell of a table under construction; the column is made where it is not there yet, and so
  // are the rows up to this one.
  std::string& put(std::string_view column, std::size_t row = 1);
};

inline constexpr std::size_t longest_answer = 32'000;  // bytes; a cell's text holds no more

// As one text; rows that do not fit into `longest_answer` are left out at the end.
std::string as_text(const ShownTable& table);

// The reverse. Any other text gives a table without columns.
ShownTable table_in(std::string_view text);

}  // namespace shimwright
