// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_map.hpp"

#include <algorithm>
#include <numeric>
#include <string_view>

#include "book/head/head_words.hpp"
#include "core/values/verdict.hpp"

namespace shimwright::book {
namespace {

constexpr double margin_mm = 1;
constexpr double wide_mm = 280;
// Of a line of the box, the gap below it, the key, and where to stand.
constexpr double box_line_mm = 4.4;
constexpr double below_box_mm = 0.5;
constexpr double legend_mm = 6;
constexpr double seen_mm = 5;
// So many find room beside each other, for the title and the key: a place for each state.
constexpr std::size_t least_cards = all_states.size();

class MapMaker {
 public:
  explicit MapMaker(const EngineLayout& layout) : layout_(layout), width_(layout) {
    map_.spread = spread_of(layout);
  }

  HeadMap make() {
    std::size_t longest = 0;
    for (const Bank& bank : layout_.banks) longest = std::max(longest, bank.cylinders.size());
    in_row_ = (longest + map_.spread.rows - 1) / map_.spread.rows;
    make_columns();
    // Where the paper has room for another line of remarks, so has the sheet.
    const bool low = map_.spread.beside || (layout_.banks.size() == 1 && map_.spread.rows == 1);
    map_.box_rows = low ? 6 : 5;
    map_.row_mm.assign(static_cast<std::size_t>(map_.box_rows), box_line_mm);
    map_.row_mm.insert(map_.row_mm.end(), {below_box_mm, legend_mm, seen_mm});
    int row = map_.first_deck_row();
    for (std::size_t bank = 0; bank < layout_.banks.size(); ++bank) {
      const std::size_t cylinders = layout_.banks[bank].cylinders.size();
      for (std::size_t first = 0; first < cylinders; first += in_row_) {
        if (map_.spread.beside) row = map_.first_deck_row();
        row = lay(bank, first, row);
      }
    }
    if (map_.spread.two_pages)
      map_.second_page_row = map_.banks[(map_.banks.size() + 1) / 2].heading.from.row;
    map_.last_row = row - 1;
    for (const ValveId& valve : valves_of(layout_))
      map_.cards.push_back(*std::ranges::find(cards_, valve, &Card::valve));
    return std::move(map_);
  }

 private:
  int columns() const { return static_cast<int>(map_.column_mm.size()); }
  int label_columns() const { return width_.halves ? 2 : 1; }
  // From a card to the next in the grid, the sliver between them included.
  int card_columns() const { return width_.halves ? 4 : 3; }

  void add_card_place() {
    map_.card_places.push_back({{columns(), 0}, {columns() + label_columns(), 0}});
    if (width_.halves)
      map_.column_mm.insert(map_.column_mm.end(), {card::value_mm, card::sliver_mm});
    else
      map_.column_mm.push_back(card::label_mm);
    map_.column_mm.push_back(card::value_mm);
  }

  void add_pads(std::size_t pads) {
    for (std::size_t i = 0; i < pads; ++i) {
      if (i > 0) map_.column_mm.push_back(card::sliver_mm);
      add_card_place();
    }
  }

  void add_bank_columns() {
    map_.column_mm.insert(map_.column_mm.end(), {deck::side_mm, deck::edge_mm});
    first_card_column_.push_back(columns());
    for (std::size_t i = 0; i < in_row_; ++i)
      for (int slot = 0; slot < width_.slots; ++slot) {
        add_card_place();
        map_.column_mm.push_back(slot + 1 < width_.slots ? card::sliver_mm
                                                         : deck::between_cylinders_mm);
      }
    map_.column_mm.back() = deck::edge_mm;
  }

  // A narrow chart stands in the middle.
  void make_columns() {
    const std::size_t banks = map_.spread.beside ? 2 : 1;
    const std::size_t cards = banks * in_row_ * static_cast<std::size_t>(width_.slots);
    const std::size_t pads = cards < least_cards ? (least_cards - cards + 1) / 2 : 0;
    if (pads > 0) map_.column_mm.push_back(deck::edge_mm);
    add_pads(pads);
    for (std::size_t bank = 0; bank < banks; ++bank) {
      if (bank > 0) map_.column_mm.push_back(deck::beside_mm);
      add_bank_columns();
    }
    if (pads > 0) map_.column_mm.push_back(deck::side_mm);  // as at the left
    add_pads(pads);
    // The key belongs to both banks, so it stands midway.
    const std::size_t outer = banks > 1 ? (map_.card_places.size() - least_cards) / 2 : 0;
    map_.card_places.erase(map_.card_places.begin(),
                           map_.card_places.begin() + static_cast<std::ptrdiff_t>(outer));
    map_.column_mm.push_back(margin_mm);
    map_.last_column = columns() - 1;
  }

  void set_heights(const BankDeck& deck, int heading) {
    const int end = deck.deck.to.row;
    if (static_cast<int>(map_.row_mm.size()) > end) return;  // beside another
    map_.row_mm.resize(static_cast<std::size_t>(end) + 2, card::row_mm);
    const auto set = [this](int row, double mm) {
      map_.row_mm[static_cast<std::size_t>(row)] = mm;
    };
    set(heading,
        deck.continued || layout_.banks.size() > 1 ? deck::heading_mm : deck::no_heading_mm);
    for (const int rim : {deck.deck.from.row, deck.strip_row - 1, deck.strip_row + 1, end})
      set(rim, deck::rim_mm);
    set(deck.strip_row, deck::strip_mm);
    set(end + 1, deck::below_mm);
    for (const int top : {deck.upper_side.from.row, deck.lower_side.from.row}) {
      set(top + card::banner, card::banner_mm);
      set(top + card::action, card::action_mm);
    }
  }

  void lay_cards(int cylinder, Side side, int first_column, int row) {
    const int valves = side == Side::exhaust ? layout_.exhaust_valves : layout_.inlet_valves;
    for (int place = 0; place < valves; ++place) {
      const int half_cards = width_.slots - valves + 2 * place;
      cards_.push_back({{cylinder, side, place},
                        {first_column + half_cards * card_columns() / 2, row},
                        label_columns()});
    }
  }

  // Gives the row below.
  int lay(std::size_t index, std::size_t first_of_row, int heading) {
    const Bank& bank = layout_.banks[index];
    const bool at_right = map_.spread.beside && index != bank_at_left(layout_);
    const int first_column = first_card_column_[at_right ? 1 : 0];
    const int edge = first_column - 1;
    const int top = heading + 1;
    const int upper = top + 1;
    const int strip = upper + card::rows + 1;
    const int lower = strip + 2;
    const int end = lower + card::rows;
    const std::size_t end_of_row = std::min(first_of_row + in_row_, bank.cylinders.size());
    const int pitch = width_.slots * card_columns();
    const int last_column = first_column + static_cast<int>(end_of_row - first_of_row) * pitch - 1;
    BankDeck deck{.bank = index,
                  .continued = first_of_row > 0,
                  .heading = {{edge, heading}, {last_column, heading}},
                  .deck = {{edge, top}, {last_column, end}},
                  .upper_side = {{edge - 1, upper}, {edge - 1, upper + card::rows - 1}},
                  .lower_side = {{edge - 1, lower}, {edge - 1, end - 1}},
                  .above = bank.exhaust_above ? Side::exhaust : Side::inlet,
                  .strip_row = strip,
                  .strips = {}};
    for (std::size_t i = first_of_row; i < end_of_row; ++i) {
      const int first = first_column + static_cast<int>(i - first_of_row) * pitch;
      deck.strips.push_back({bank.cylinders[i], {{first, strip}, {first + pitch - 2, strip}}});
      for (const Side side : {Side::exhaust, Side::inlet})
        lay_cards(bank.cylinders[i], side, first, side == deck.above ? upper : lower);
    }
    set_heights(deck, heading);
    map_.banks.push_back(std::move(deck));
    return end + 2;
  }

  const EngineLayout& layout_;
  CylinderWidth width_;
  std::size_t in_row_ = 1;
  std::vector<int> first_card_column_;  // of each bank, where they are side by side
  std::vector<Card> cards_;
  HeadMap map_;
};

}  // namespace

double HeadMap::width_mm() const {
  return std::accumulate(column_mm.begin(), column_mm.end(), 0.0);
}

Area HeadMap::across(double from, double to, int row) const {
  const double whole = width_mm();
  const auto column_at = [&](double share) {
    double passed = 0;
    int column = 0;
    while (column < last_column &&
           passed + column_mm[static_cast<std::size_t>(column)] / 2 < share * whole)
      passed += column_mm[static_cast<std::size_t>(column++)];
    return column;
  };
  const int first = std::max(1, column_at(from));  // beyond the sides' names or the margin
  const int last = to >= 1 ? last_column : std::max(first, column_at(to) - 1);
  return {{first, row}, {last, row}};
}

// Where the chart is wide, the name needs less of it.
Area HeadMap::title() const {
  const Area top = across(0, width_mm() > wide_mm ? 0.4 : 0.5, 0);
  return block(top.from, top.columns(), title_rows);
}

Area HeadMap::banner() const {
  return block(below(title().from, title_rows), title().columns(), box_rows - title_rows);
}

Area HeadMap::box() const {
  const Area beside = across(width_mm() > wide_mm ? 0.42 : 0.52, 1, 0);
  return block(beside.from, beside.columns(), box_rows);
}

Area HeadMap::head_cell(std::size_t place, int row) const {
  Area area = card_places[place];
  area.from.row = area.to.row = row;
  return area;
}

HeadMap head_map(const EngineLayout& layout) { return MapMaker(layout).make(); }

}  // namespace shimwright::book
