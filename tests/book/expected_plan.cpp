// SPDX-License-Identifier: MPL-2.0
//
// What the cells of Head and Plan show, held against the plan.
#include <gtest/gtest.h>

#include <map>
#include <tuple>

#include "book/book.hpp"
#include "book/layouter.hpp"
#include "job.hpp"

namespace shimwright::tests {
namespace {

using PieceKey = std::tuple<std::string, std::string, int>;

struct Cell {
  std::string sheet;
  At at;
};

// Where Head and Plan show each piece; the valves' names stand on Plan as they are.
std::multimap<PieceKey, Cell> cells_of(const book::Places& places) {
  std::multimap<PieceKey, Cell> cells;
  for (const book::SheetDescription& sheet : book::descriptions(places)) {
    if (sheet.name != book::sheet_name::head && sheet.name != book::sheet_name::plan) continue;
    for (const book::Field& field : all_fields(sheet))
      if (const auto* piece = std::get_if<book::Shows>(&field.content))
        cells.emplace(PieceKey(piece->table, piece->column, piece->row),
                      Cell{sheet.name, field.where.from});
    for (const book::Table& table : sheet.tables)
      if (sheet.name == book::sheet_name::plan && table.name == "valves")
        for (int i = 0; i < places.count(); ++i)
          cells.emplace(PieceKey("valves", "name", i + 1), Cell{sheet.name, below(table.first, i)});
  }
  return cells;
}

std::string piece_of(std::string_view table, std::string_view column, int row) {
  return book::formula_of(book::Shows{std::string(table), std::string(column), row});
}

}  // namespace

void expect_plan(const OpenBook& book, const Job& job, const book::Places& places, Unit unit) {
  const auto cells = cells_of(places);
  int in_cells = 0;
  const Piece shown = [&](std::string_view table, std::string_view column, int row) {
    const auto [first, last] = cells.equal_range(PieceKey(table, column, row));
    // Not for the eye, but formats look at it.
    if (first == last) return book.text_of(book::sheet_name::plan, piece_of(table, column, row));
    const std::string words = book.shown(first->second.sheet, first->second.at);
    for (auto cell = first; cell != last; ++cell, ++in_cells)
      EXPECT_EQ(book.shown(cell->second.sheet, cell->second.at), words);
    return words;
  };
  const std::string half = book.text_of(book::sheet_name::plan, "=FIXED(0.5;1)");
  expect_plan_shown(shown, job, places.layout, unit, half.substr(1, 1));
  constexpr int at_least = 14;  // a valve's pieces on Plan and on its card
  EXPECT_GE(in_cells, at_least * places.count());
}

}  // namespace shimwright::tests
