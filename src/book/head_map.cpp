// SPDX-License-Identifier: MPL-2.0
#include "book/head_map.hpp"

#include <algorithm>
#include <numeric>

namespace shimwright::book {
namespace {

constexpr double side_mm = 6;
constexpr double edge_mm = 2.5;
constexpr double margin_mm = 1;
constexpr double between_valves_mm = 1;
constexpr double between_cylinders_mm = 3.5;
constexpr int first_card_column = 2;    // after the side's name and the deck's edge
constexpr std::size_t least_cards = 5;  // so many find room beside each other, for the title
constexpr int rows_between_banks = 2;

// Where more valves lie on the other side of the cylinder, a pair keeps to the outside.
int slot_of(int place, int valves, int slots) {
  if (valves == slots) return place;
  if (valves == 1) return (slots - 1) / 2;
  return place == 0 ? 0 : slots - 1;
}

// About what a row of cards and the rows above and below the chart take, for a glance at how small
// the chart comes out on paper.
constexpr double deck_mm = 142;
constexpr double around_mm = 45;
constexpr double smallest_scale = 0.5;  // letters half their size can still be read

double scale_on_paper(double width, double height) {
  return std::max(std::min(277 / width, 181 / height), std::min(190 / width, 268 / height));
}

// Into how many rows each bank is parted: as few as can be read, else as can be read best.
std::size_t rows_of_bank(std::size_t cylinders, std::size_t banks, int slots) {
  std::size_t best = 1;
  double best_scale = 0;
  for (std::size_t rows = 1; rows <= cylinders; ++rows) {
    const std::size_t in_row = (cylinders + rows - 1) / rows;
    const double scale = scale_on_paper(
        side_mm + static_cast<double>(in_row) *
                      (slots * (card::label_mm + card::value_mm + between_valves_mm) +
                       between_cylinders_mm),
        around_mm + deck_mm * static_cast<double>(banks * rows));
    if (scale > best_scale) {
      best = rows;
      best_scale = scale;
    }
    if (scale >= smallest_scale) return rows;
  }
  return best;
}

}  // namespace

Area HeadMap::across(double from, double to, int row) const {
  const double whole = std::accumulate(column_mm.begin(), column_mm.end(), 0.0);
  const auto column_at = [&](double share) {
    double passed = 0;
    int column = 0;
    while (column < last_column &&
           passed + column_mm[static_cast<std::size_t>(column)] / 2 < share * whole)
      passed += column_mm[static_cast<std::size_t>(column++)];
    return column;
  };
  const int first = std::max(1, column_at(from));  // beyond the names of the sides
  const int last = to >= 1 ? last_column : std::max(first, column_at(to) - 1);
  return {{first, row}, {last, row}};
}

Area HeadMap::head_cell(std::size_t place, int row) const {
  constexpr std::size_t places = 7;
  if (card_columns.size() >= places)
    return {{card_columns[place], row}, {card_columns[place] + 1, row}};
  const int column = card_columns[place / 2] + static_cast<int>(place % 2);
  return {{column, row}, {column, row}};
}

HeadMap head_map(const Layout& layout) {
  HeadMap map;
  const int slots = std::max(layout.exhaust_valves, layout.inlet_valves);
  std::size_t widest = 0;
  for (const Bank& bank : layout.banks) widest = std::max(widest, bank.cylinders.size());
  const std::size_t rows = rows_of_bank(widest, layout.banks.size(), slots);
  widest = (widest + rows - 1) / rows;

  // A cylinder takes `slots` cards with narrow columns between them and a wider one after them.
  const int pitch = slots * 3;
  map.column_mm = {side_mm, edge_mm};
  for (std::size_t i = 0; i < widest; ++i) {
    for (int slot = 0; slot < slots; ++slot) {
      map.card_columns.push_back(static_cast<int>(map.column_mm.size()));
      map.column_mm.push_back(card::label_mm);
      map.column_mm.push_back(card::value_mm);
      map.column_mm.push_back(slot + 1 < slots ? between_valves_mm : between_cylinders_mm);
    }
  }
  map.column_mm.back() = edge_mm;
  const int deck_end = static_cast<int>(map.column_mm.size()) - 1;
  for (std::size_t cards = widest * static_cast<std::size_t>(slots); cards < least_cards; ++cards) {
    map.card_columns.push_back(static_cast<int>(map.column_mm.size()));
    map.column_mm.push_back(card::label_mm);
    map.column_mm.push_back(card::value_mm);
  }
  map.column_mm.push_back(margin_mm);
  map.last_column = static_cast<int>(map.column_mm.size()) - 1;

  std::vector<Card> cards;
  int row = HeadMap::first_deck_row;
  const auto lay = [&](std::size_t index, std::size_t first_of_row) {
    const Bank& bank = layout.banks[index];
    const int upper = row + 1;  // below the deck's edge
    const int strip = upper + card::rows + 1;
    const int lower = strip + 2;
    const int end = lower + card::rows;
    BankDeck deck{.bank = index,
                  .continued = first_of_row > 0,
                  .deck = {{1, row}, {deck_end, end}},
                  .upper_side = {{0, upper}, {0, upper + card::rows - 1}},
                  .lower_side = {{0, lower}, {0, end - 1}},
                  .above = bank.exhaust_above ? Side::exhaust : Side::inlet,
                  .strip_row = strip,
                  .strips = {}};
    const std::size_t end_of_row = std::min(first_of_row + widest, bank.cylinders.size());
    for (std::size_t i = first_of_row; i < end_of_row; ++i) {
      const int first = first_card_column + static_cast<int>(i - first_of_row) * pitch;
      deck.strips.push_back({bank.cylinders[i], {{first, strip}, {first + pitch - 2, strip}}});
      for (const Side side : {Side::exhaust, Side::inlet}) {
        const int valves = side == Side::exhaust ? layout.exhaust_valves : layout.inlet_valves;
        for (int place = 0; place < valves; ++place)
          cards.push_back(
              {{bank.cylinders[i], side, place},
               {first + 3 * slot_of(place, valves, slots), side == deck.above ? upper : lower}});
      }
    }
    map.banks.push_back(std::move(deck));
    map.last_row = end + 1;
    row = end + 1 + rows_between_banks;
  };
  for (std::size_t bank = 0; bank < layout.banks.size(); ++bank)
    for (std::size_t i = 0; i < layout.banks[bank].cylinders.size(); i += widest) lay(bank, i);
  for (const ValveId& valve : valves_of(layout))
    map.cards.push_back(*std::ranges::find(cards, valve, &Card::valve));
  return map;
}

}  // namespace shimwright::book
