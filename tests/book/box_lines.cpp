// SPDX-License-Identifier: MPL-2.0
#include "box_lines.hpp"

#include <stdexcept>

#include "book/book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {

Area box_on(std::string_view sheet) {
  for (const book::SheetDescription& one : book::descriptions(the_places()))
    if (one.name == sheet)
      for (const book::Table& table : one.tables)
        if (table.name == "box") return block(table.first, 1, static_cast<int>(table.rows.size()));
  throw std::out_of_range("no box on " + std::string(sheet));
}

std::vector<std::string> lines_of_box(const OpenBook& book, std::string_view sheet) {
  std::vector<std::string> lines;
  const Area box = box_on(sheet);
  for (int row = 0; row < box.rows(); ++row) {
    lines.push_back(book.shown(sheet, below(box.from, row)));
    if (lines.back().empty()) lines.pop_back();
  }
  return lines;
}

std::string told_by_box(const OpenBook& book, std::string_view sheet) {
  std::string told;
  for (const std::string& line : lines_of_box(book, sheet))
    told += (told.empty() ? "" : " ") + line;
  return told;
}

}  // namespace shimwright::tests
