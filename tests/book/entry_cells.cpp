// SPDX-License-Identifier: MPL-2.0
#include "entry_cells.hpp"

#include "book/book.hpp"

namespace shimwright::tests {

std::vector<EntryCell> entry_cells(const book::Places& places) {
  std::vector<EntryCell> cells;
  // A merged entry goes on in cells that nobody sees.
  for (const book::SheetDescription& sheet : book::descriptions(places))
    for (const book::Field& field : all_fields(sheet)) {
      const auto* entry = std::get_if<book::Takes>(&field.content);
      if (entry == nullptr) continue;
      const bool words = std::holds_alternative<book::Letters>(entry->check) &&
                         field.where.from != book::engine_place::firing;
      for (book::At at = field.where.from; at.column <= field.where.to.column; at = right_of(at))
        cells.push_back({sheet.name, at, words || at != field.where.from});
    }
  return cells;
}

}  // namespace shimwright::tests
