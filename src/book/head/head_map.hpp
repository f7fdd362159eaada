// SPDX-License-Identifier: MPL-2.0
//
// Where things lie on the Head sheet: for each bank a row of cards for the valves of the upper
// side, a strip with the cylinders' numbers, a row of cards for the lower side. A card has a column
// for what and one for how much. Where one valve lies opposite two, or two opposite three, they
// stand midway between these, as on the engine. Pure arithmetic: no office is needed.
#pragma once

#include <cstddef>
#include <vector>

#include "book/area.hpp"
#include "book/head/head_spread.hpp"
#include "core/engine/layout.hpp"

namespace shimwright::book {

struct Card {
  ValveId valve;
  At corner;              // top left
  int label_columns = 1;  // two where cards may stand half a card further in
  At at(card::Row row) const { return {corner.column, corner.row + row}; }
  At value(card::Row row) const { return right_of(at(row), label_columns); }
  Area label(card::Row row) const { return {at(row), right_of(at(row), label_columns - 1)}; }
  Area line(card::Row row) const { return {at(row), value(row)}; }
};

struct CylinderStrip {
  int cylinder = 0;
  Area area;
};

// A bank, or as much of it as lies in one row.
struct BankDeck {
  std::size_t bank = 0;    // its place among the layout's
  bool continued = false;  // not the bank's beginning
  Area heading;            // above it
  Area deck;               // the whole head, its edges included
  Area upper_side;
  Area lower_side;  // where the names of the sides stand
  Side above = Side::exhaust;
  int strip_row = 0;
  std::vector<CylinderStrip> strips;
};

struct HeadMap {
  HeadSpread spread;
  std::vector<double> column_mm;
  std::vector<double> row_mm;
  std::vector<Card> cards;  // in the order of valves_of(layout)
  std::vector<BankDeck> banks;
  std::vector<Area> card_places;  // one after the other, also where no cylinder lies; in row 0;
                                  // of banks side by side the middle ones
  int second_page_row = 0;        // where it begins; 0: all is on one page
  int last_column = 0;
  int last_row = 0;

  // The title and the banner, and beside them the box, a line of remarks in each row; then the key,
  // where to stand, and the first deck's heading.
  int box_rows = 5;
  static constexpr int title_rows = 2;
  int legend_row() const { return box_rows + 1; }
  int seen_row() const { return box_rows + 2; }
  int first_deck_row() const { return box_rows + 3; }

  // Below the chart: what must not be done, and where the crank stops.
  int caution_row() const { return last_row + 2; }
  int stops_row() const { return last_row + 3; }

  double width_mm() const;

  // Places beside each other in a row above the cards, as wide as a card: one for each state at
  // least.
  Area head_cell(std::size_t place, int row) const;

  Area title() const;
  Area banner() const;
  Area box() const;

  // The columns that reach from one share of the sheet's width to another, 0 to 1.
  Area across(double from, double to, int row) const;
};

HeadMap head_map(const EngineLayout& layout);

}  // namespace shimwright::book
