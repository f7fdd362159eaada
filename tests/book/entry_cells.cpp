// SPDX-License-Identifier: MPL-2.0
#include "entry_cells.hpp"

#include "book/book.hpp"
#include "book/fit_map.hpp"

namespace shimwright::tests {

std::vector<EntryCell> entry_cells(const book::Places& places) {
  namespace card = book::card;

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
  const book::FitMap fit(places);
  for (int row = 0; row < fit.rows; ++row)
    cells.push_back({std::string(book::sheet_name::fit), fit.at(row, book::FitMap::done)});

  for (const book::Card& one : places.head.cards)
    for (const card::Row row : {card::gap, card::mark, card::micrometer, card::alone})
      cells.push_back({std::string(book::sheet_name::head), one.value(row)});
  return cells;
}

}  // namespace shimwright::tests
