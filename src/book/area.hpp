// SPDX-License-Identifier: MPL-2.0
//
// Places on a sheet, counted from 0, and how a formula calls them.
#pragma once

#include <string>
#include <string_view>

namespace shimwright::book {

struct At {
  int column = 0;
  int row = 0;
  bool operator==(const At&) const = default;
};

constexpr At right_of(At at, int columns = 1) { return {at.column + columns, at.row}; }
constexpr At below(At at, int rows = 1) { return {at.column, at.row + rows}; }

// Both corners belong to it.
struct Area {
  At from;
  At to;
  constexpr Area(At one) : from(one), to(one) {}  // NOLINT: a cell is an area
  constexpr Area(At first, At last) : from(first), to(last) {}
  constexpr int rows() const { return to.row - from.row + 1; }
  constexpr int columns() const { return to.column - from.column + 1; }
};

// `columns` wide and `rows` high, from its first cell.
constexpr Area block(At from, int columns, int rows) {
  return {from, {from.column + columns - 1, from.row + rows - 1}};
}

std::string column_name(int column);  // 0 is A, 26 is AA

std::string relative(At at);                    // C5
std::string absolute(At at);                    // $C$5
std::string absolute(const Area& area);         // $C$5:$D$9
std::string on(std::string_view sheet, At at);  // $'Read me'.$C$5
std::string on(std::string_view sheet, const Area&);

}  // namespace shimwright::book
