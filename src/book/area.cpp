// SPDX-License-Identifier: MPL-2.0
#include "book/area.hpp"

namespace shimwright::book {
namespace {

std::string in_quotes(std::string_view sheet) { return "$'" + std::string(sheet) + "'."; }

}  // namespace

std::string column_name(int column) {
  std::string name;
  for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26)
    name.insert(name.begin(), static_cast<char>('A' + (rest - 1) % 26));
  return name;
}

std::string relative(At at) { return column_name(at.column) + std::to_string(at.row + 1); }

std::string absolute(At at) {
  return "$" + column_name(at.column) + "$" + std::to_string(at.row + 1);
}

std::string absolute(const Area& area) {
  if (area.from == area.to) return absolute(area.from);
  return absolute(area.from) + ":" + absolute(area.to);
}

std::string on(std::string_view sheet, At at) { return in_quotes(sheet) + absolute(at); }

std::string on(std::string_view sheet, const Area& area) {
  return in_quotes(sheet) + absolute(area);
}

}  // namespace shimwright::book
