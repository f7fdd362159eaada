// SPDX-License-Identifier: MPL-2.0
//
// Head: the valves as they lie, seen from above. Readings go in and answers come out on the same
// card, and the card's colour, sign and word tell its state.
#include <algorithm>
#include <cstdint>
#include <string>
#include <utility>

#include "book/head/head_card.hpp"
#include "book/head/head_drawing.hpp"
#include "book/head/head_words.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace head_sheet {
namespace {

Say word_of(Side side) { return side == Side::exhaust ? Say::exhaust : Say::inlet; }

// Where one begins to type: the gap of the card at the upper left.
At first_gap(const HeadMap& map) {
  const auto before = [](const Card& a, const Card& b) {
    return std::pair(a.corner.row, a.corner.column) < std::pair(b.corner.row, b.corner.column);
  };
  return std::ranges::min(map.cards, before).value(card::gap);
}

class HeadDescription {
 public:
  explicit HeadDescription(const Places& places) : places_(places), map_(places.head) {}

  SheetDescription made() && {
    sheet_.name = sheet_name::head;
    sheet_.column_mm = map_.column_mm;
    for (int row = 0; row <= map_.last_row; ++row)
      height(row, map_.row_mm[static_cast<std::size_t>(row)]);
    sheet_.frozen_rows = map_.seen_row();
    sheet_.cursor = first_gap(map_);
    above_the_heads();
    for (const BankDeck& deck : map_.banks) add_deck(deck);
    for (int i = 0; i < places_.count(); ++i) add_card(sheet_, places_, i);
    below_the_heads();
    sheet_.last_row = map_.stops_row();
    set_paper();
    return std::move(sheet_);
  }

 private:
  void height(int row, double mm) { sheet_.row_heights.emplace_back(row, mm); }

  void above_the_heads() {
    const Area banner = map_.banner();
    const At below_it{banner.from.column, banner.to.row};
    sheet_.fields = {title_field("head", map_.title()),
                     banner_field({banner.from, {banner.to.column, banner.to.row - 1}}),
                     next_sheet_field(sheet_name::shims, {below_it, banner.to})};
    add_box(sheet_, "head", map_.box());
    // How many valves are in each state; it is the key to the colours too.
    std::size_t place = 0;
    for (const State state : all_states) {
      const std::string column = "legend " + std::string(word_for(state));
      sheet_.add(column, map_.head_cell(place++, map_.legend_row()), style::legend(state),
                 Shows{"book", column});
    }
    constexpr double words = 0.8;
    sheet_.add("seen", map_.across(0, words, map_.seen_row()), style::deck_seen,
               Fixed{seen_in_words(places_.layout, map_.spread.beside)});
    sheet_.add("lengths in", map_.across(words, 1, map_.seen_row()), style::aside,
               Shows{"book", "lengths in"});
  }

  void add_deck(const BankDeck& deck) {
    const std::string name = "deck." + std::to_string(deck.heading.from.column) + "." +
                             std::to_string(deck.heading.from.row);
    // Not merged: the cards lie on it.
    sheet_.grounds.push_back({deck.deck, std::string(style::deck)});
    const Side below = deck.above == Side::exhaust ? Side::inlet : Side::exhaust;
    sheet_.add(name + ".upper", deck.upper_side, style::deck_side,
               Fixed{said(Say::head_side, {word_of(deck.above)})});
    sheet_.add(name + ".lower", deck.lower_side, style::deck_side,
               Fixed{said(Say::head_side, {word_of(below)})});
    if (const std::string words = heading_of(deck); !words.empty())
      sheet_.add(name + ".heading", deck.heading, style::deck_heading, Fixed{words});
    for (const CylinderStrip& strip : deck.strips)
      sheet_.add("cylinder." + std::to_string(strip.cylinder), strip.area, style::deck_strip,
                 Fixed{said(Say::head_cylinder, {std::int64_t{strip.cylinder}})});
  }

  std::string heading_of(const BankDeck& deck) const {
    const std::string bank = bank_in_words(places_.layout, deck.bank);
    if (!deck.continued) return bank;
    return bank.empty() ? said(Say::head_only_continued) : said(Say::head_continued, {bank});
  }

  void below_the_heads() {
    constexpr double letter_mm = 1.7;
    constexpr double line_mm = 4;
    constexpr double caution_letter_mm = 1.95;
    const double width = map_.width_mm();
    const std::string caution = said(Say::head_caution);
    const bool on_one_line = static_cast<double>(caution.size()) * caution_letter_mm < width;
    height(map_.last_row + 1, 1.5);
    sheet_.add("caution", map_.across(0, 1, map_.caution_row()), style::caution, Fixed{caution});
    height(map_.caution_row(), on_one_line ? 6.5 : 10);
    sheet_.add("stops", map_.across(0, 1, map_.stops_row()), style::list, Shows{"book", "stops"});
    height(map_.stops_row(),
           2 + line_mm * lines_of_stops(places_.layout, static_cast<int>(width / letter_mm)));
  }

  // One page; where the letters would be too small, two with the key on both.
  void set_paper() {
    sheet_.printed = Area({0, 0}, {map_.last_column, map_.stops_row()});
    if (map_.second_page_row > 0) {
      sheet_.page_style = style::portrait_parted;
      sheet_.page_breaks = {map_.second_page_row};
      sheet_.repeated_rows = {0, map_.seen_row()};
      return;
    }
    const double width = map_.width_mm();
    double height = 0;
    for (const auto& [row, mm] : sheet_.row_heights) height += mm;
    sheet_.page_style = scale_upright(width, height) > scale_lying(width, height)
                            ? style::portrait
                            : style::landscape;
  }

  const Places& places_;
  const HeadMap& map_;
  SheetDescription sheet_;
};

}  // namespace
}  // namespace head_sheet

SheetDescription describe_head(const Places& places) {
  return head_sheet::HeadDescription(places).made();
}

void draw_head(Sheet& sheet, const Places& places) {
  const HeadMap& map = places.head;
  draw_heads(sheet, map);
  if (map.second_page_row == 0) return;
  const auto size = [&](int first, int last) {
    return sheet.size_mm({{0, first}, {map.last_column, last}});
  };
  const double first_page = size(0, map.second_page_row - 1).height;
  const double second_page =
      size(0, map.seen_row()).height + size(map.second_page_row, map.stops_row()).height;
  style::scale_pages(
      sheet.maker(), style::portrait_parted,
      scale_upright(size(0, map.stops_row()).width, std::max(first_page, second_page)));
}

}  // namespace shimwright::book
