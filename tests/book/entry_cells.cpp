// SPDX-License-Identifier: MPL-2.0
#include "entry_cells.hpp"

#include "book/fit_map.hpp"

namespace shimwright::tests {

std::vector<EntryCell> entry_cells(const book::Places& places) {
  namespace engine = book::engine_place;
  namespace shims = book::shims_place;
  namespace card = book::card;
  constexpr auto on_engine = book::sheet_name::engine;
  constexpr auto on_shims = book::sheet_name::shims;

  std::vector<EntryCell> cells;
  for (const book::At at : {engine::name, engine::currency}) cells.push_back({on_engine, at, true});
  for (const Side side : {Side::exhaust, Side::inlet}) {
    for (const int row : {engine::min_row, engine::max_row, engine::bias_row})
      cells.push_back({on_engine, engine::of(side, row)});
    for (const int by : {0, 1})
      cells.push_back({on_engine, right_of(engine::of(side, engine::series_row), by), true});
  }
  for (const book::At at : {engine::unit, engine::doubt, engine::allowed, engine::scheme,
                            engine::use_doubt, engine::touch_good, engine::first, engine::work})
    cells.push_back({on_engine, at});

  for (const Side side : {Side::exhaust, Side::inlet})
    for (const int row : {engine::opens_row, engine::closes_row})
      cells.push_back({on_engine, engine::of(side, row)});
  for (const book::At at : {engine::firing, engine::margin, engine::opened})
    cells.push_back({on_engine, at});
  // These go as far as the last column of numbers.
  for (const book::At at : {engine::name, engine::firing, engine::opened})
    for (int column = at.column + 1; column <= engine::exhaust_column; ++column)
      cells.push_back({on_engine, {column, at.row}, true});
  const book::FitMap fit(places);
  for (int row = 0; row < fit.rows; ++row)
    cells.push_back({book::sheet_name::fit, fit.at(row, book::FitMap::done)});

  const auto list = [&cells](book::At first, int rows, int columns, int free_column) {
    for (int row = 0; row < rows; ++row)
      for (int column = 0; column < columns; ++column)
        cells.push_back({on_shims, right_of(below(first, row), column), column == free_column});
  };
  constexpr int note = 3;
  list(shims::first_spare, shims::spares, 4, note);
  list(shims::first_ladder, shims::ladders, 5, -1);
  list(shims::first_single, shims::singles, 4, -1);

  for (const book::Card& one : places.head.cards)
    for (const card::Row row : {card::gap, card::mark, card::micrometer, card::alone})
      cells.push_back({book::sheet_name::head, one.value(row)});
  return cells;
}

}  // namespace shimwright::tests
