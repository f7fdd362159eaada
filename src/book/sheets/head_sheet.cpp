// SPDX-License-Identifier: MPL-2.0
//
// Head: the valves as they lie, seen from above. Readings go in and answers come out on the same
// card, and the card's colour, sign and word tell its state.
#include <algorithm>
#include <string>
#include <vector>

#include "book/formula.hpp"
#include "book/head/head_card.hpp"
#include "book/head/head_drawing.hpp"
#include "book/head/head_words.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings.hpp"
#include "core/values/palette.hpp"

namespace shimwright::book {
namespace {

using Map = WorkingsMap;

// How many valves are in each state; it is the key to the colours too.
void make_legend(Sheet& sheet, const HeadMap& map) {
  std::size_t place = 0;
  for (const State state : all_states) {
    const Area area = map.head_cell(place++, HeadMap::legend_row);
    sheet.result(
        area,
        written("=IFERROR(\"{sign} {word} \"&IF(add_in_there;SUMPRODUCT(--(states_now=\"{word}\"));"
                "\"\u2013\");\"\")",
                {{"sign", look_of(state).sign}, {"word", word_for(state)}}),
        style::legend(state));
  }
}

void make_deck(Sheet& sheet, const BankDeck& deck, const EngineLayout& layout) {
  sheet.style(deck.deck, style::deck);
  const Side below = deck.above == Side::exhaust ? Side::inlet : Side::exhaust;
  sheet.label(deck.upper_side, word_for(deck.above) + " side", style::deck_side);
  sheet.label(deck.lower_side, word_for(below) + " side", style::deck_side);
  const std::string bank = bank_in_words(layout, deck.bank);
  const std::string words =
      bank + (deck.continued ? (bank.empty() ? "continued" : ", continued") : "");
  if (!words.empty()) sheet.label(deck.heading, words, style::deck_heading);
  for (const CylinderStrip& strip : deck.strips)
    sheet.label(strip.area, "cylinder " + std::to_string(strip.cylinder), style::deck_strip);
}

// The more there is to tell, the smaller the letters.
void make_box(Sheet& sheet, const Places& places) {
  make_trouble_box(
      sheet, places.head.box(),
      {.told = in_workings(Map(places.count()).box_lines(Map::head_box)), .may_shrink = true});
}

// Below the chart: where the crank stops to measure the valves. Gives the last row.
int make_stops(Sheet& sheet, const Places& places) {
  const StepsMap steps(places);
  const HeadMap& map = places.head;
  const auto row = [&map](int of) { return map.across(0, 1, map.last_row + of); };
  constexpr double letter_mm = 1.7;
  constexpr double line_mm = 4;
  const double width = map.width_mm();
  constexpr std::string_view caution =
      "Turn the crank by hand only, and only the way the engine runs. Never turn it while a valve "
      "is without its shim.";
  constexpr double caution_letter_mm = 1.95;
  const bool on_one_line = static_cast<double>(caution.size()) * caution_letter_mm < width;
  sheet.row_height(map.last_row + 1, 1.5);
  sheet.label(row(2), caution, style::caution);
  sheet.row_height(map.last_row + 2, on_one_line ? 6.5 : 10);
  sheet.result(row(3),
               written("=IF({wrong}<>\"\";{wrong};{said})",
                       {{"wrong", in_workings(steps.fact(StepsMap::crank_wrong))},
                        {"said", in_workings(steps.fact(StepsMap::stops_said))}}),
               style::list);
  sheet.row_height(
      map.last_row + 3,
      2 + line_mm * lines_of_stops(places.layout, static_cast<int>(width / letter_mm)));
  return map.last_row + 3;
}

void set_sizes(Sheet& sheet, const HeadMap& map) {
  for (int column = 0; column <= map.last_column; ++column)
    sheet.column_width(column, map.column_mm[static_cast<std::size_t>(column)]);
  for (int row = 0; row <= map.last_row; ++row)
    sheet.row_height(row, map.row_mm[static_cast<std::size_t>(row)]);
}

// One page; where the letters would be too small, two with the key on both.
void set_paper(Sheet& sheet, const HeadMap& map, int last_row) {
  const Area whole{{0, 0}, {map.last_column, last_row}};
  if (map.second_page_row > 0) {
    const auto height = [&](int first, int last) {
      return sheet.size_mm({{0, first}, {map.last_column, last}}).height;
    };
    const double first_page = height(0, map.second_page_row - 1);
    const double second_page = height(0, HeadMap::seen_row) + height(map.second_page_row, last_row);
    sheet.print(whole, style::portrait_parted);
    style::scale_parted(sheet.maker(), scale_upright(sheet.size_mm(whole).width,
                                                     std::max(first_page, second_page)));
    sheet.new_page(map.second_page_row);
    sheet.repeat_rows(0, HeadMap::seen_row);
    return;
  }
  const auto [width, height] = sheet.size_mm(whole);
  sheet.print(whole, scale_upright(width, height) > scale_lying(width, height) ? style::portrait
                                                                               : style::landscape);
}

}  // namespace

void make_head(Sheet& sheet, const Places& places) {
  const HeadMap& map = places.head;
  set_sizes(sheet, map);

  sheet.result(map.title(HeadMap::title_row), titled(sheet.name()), style::title);
  make_banner(sheet, map.title(HeadMap::banner_row));
  make_box(sheet, places);
  make_legend(sheet, map);
  sheet.result(map.across(0, 1, HeadMap::seen_row),
               written("=\"{seen} Lengths in \"&IF(unit=\"inch\";\"inches\";unit)&\".\"",
                       {{"seen", seen_in_words(places.layout, map.spread.beside)}}),
               style::deck_seen);

  for (const BankDeck& deck : map.banks) make_deck(sheet, deck, places.layout);
  for (int i = 0; i < places.count(); ++i) make_card(sheet, places, i);
  draw_heads(sheet, map);
  const int last_row = make_stops(sheet, places);
  set_paper(sheet, map, last_row);
  sheet.protect();
}

}  // namespace shimwright::book
