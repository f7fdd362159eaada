// SPDX-License-Identifier: MPL-2.0
//
// Where things lie on the Head sheet: for each bank a row of cards for the valves of the upper
// side, a strip with the cylinders' numbers, a row of cards for the lower side. A card is two
// columns wide (what, how much). A bank too long to be read on paper goes on in a further row.
// Pure arithmetic: no office is needed.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "book/cells.hpp"
#include "book/layout.hpp"

namespace shimwright::book {

// The rows of a card, from its top.
namespace card {
enum Row { name, banner, gap, limits, mark, micrometer, shim_is, alone, action, from, after, then };
inline constexpr int rows = then + 1;
inline constexpr double label_mm = 16.5;
inline constexpr double value_mm = 16;
}  // namespace card

struct Card {
  ValveId valve;
  At corner;  // top left
  At at(card::Row row) const { return {corner.column, corner.row + row}; }
  At value(card::Row row) const { return right_of(at(row)); }
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
  Area deck;               // the whole head, its edges included
  Area upper_side;
  Area lower_side;  // where the names of the sides stand
  Side above = Side::exhaust;
  int strip_row = 0;
  std::vector<CylinderStrip> strips;
};

struct HeadMap {
  std::vector<double> column_mm;
  std::vector<Card> cards;  // in the order of valves_of(layout)
  std::vector<BankDeck> banks;
  std::vector<int> card_columns;  // where cards may begin, also beyond the last cylinder
  int last_column = 0;
  int last_row = 0;

  static constexpr int title_row = 0;
  static constexpr int banner_row = 1;
  static constexpr int legend_row = 2;
  static constexpr int first_deck_row = 4;

  // Places beside each other in a row above the cards: as wide as a card where there are enough.
  Area head_cell(std::size_t place, int row) const;

  // The columns that reach from one share of the sheet's width to another, 0 to 1.
  Area across(double from, double to, int row) const;
};

HeadMap head_map(const Layout& layout);

}  // namespace shimwright::book
