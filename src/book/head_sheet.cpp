// SPDX-License-Identifier: MPL-2.0
//
// Head: the valves as they lie, seen from above. Readings go in and answers come out on the same
// card, and the card's colour, sign and word tell its state.
#include <numeric>
#include <string>
#include <vector>

#include "book/formula.hpp"
#include "book/head_drawing.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/styles.hpp"
#include "book/workings.hpp"
#include "core/palette.hpp"

namespace shimwright::book {
namespace {

using Map = WorkingsMap;
using style::Wear;
using style::worn;

constexpr double row_mm = 4.7;

std::string shown(const std::string& cell) { return written("=IFERROR({x};\"\")", {{"x", cell}}); }

std::string shown_length(const std::string& cell) {
  return written("=IF(ISNUMBER({x});{x}/mm_each;\"\")", {{"x", cell}});
}

// One style for each state the cell may name.
std::vector<Grade> worn_by_state(const std::string& cell, Wear wear) {
  std::vector<Grade> grades;
  for (const State state : all_states)
    grades.push_back(
        {written("{x}=\"{word}\"", {{"x", cell}, {"word", word_for(state)}}), worn(wear, state)});
  grades.push_back({"TRUE()", worn(wear, State::unread)});  // no state can be told
  return grades;
}

std::vector<Grade> framed(const std::string& cell, Wear wear, Wear wear_inches) {
  std::vector<Grade> grades;
  for (const State state : all_states)
    grades.push_back(
        {written("AND({x}=\"{word}\";unit=\"inch\")", {{"x", cell}, {"word", word_for(state)}}),
         worn(wear_inches, state)});
  for (Grade& grade : worn_by_state(cell, wear)) grades.push_back(std::move(grade));
  return grades;
}

class CardMaker {
 public:
  CardMaker(Sheet& sheet, const Places& places, int index)
      : sheet_(sheet),
        map_(places.count()),
        first_stop_(in_workings(StepsMap(places).first_stop(index))),
        card_(places.head.cards[static_cast<std::size_t>(index)]),
        name_(name_of(card_.valve, places.layout)),
        index_(index),
        now_(cell(Map::now)),
        then_(cell(Map::then_known)) {}

  void make() {
    top();
    readings();
    answer();
    frame();
    checks();
  }

 private:
  std::string cell(Map::Valve column) const { return in_workings(map_.at(index_, column)); }

  void line(card::Row row, std::string_view label, std::string_view value_style) {
    sheet_.label(card_.at(row), label, style::card_label);
    sheet_.style(card_.value(row), value_style);
  }

  void top() {
    sheet_.label(card_.line(card::name), name_, style::card_name);
    sheet_.result(card_.line(card::banner), shown(cell(Map::now_told)), style::card_banner);
  }

  void readings() {
    line(card::gap, "", style::card_entry_length);
    sheet_.formula(
        card_.at(card::gap),
        written("=IF(ISNUMBER({stop});\"gap, stop \"&{stop};\"gap\")", {{"stop", first_stop_}}));
    line(card::limits, "limits", style::card_text);
    sheet_.formula(card_.value(card::limits), "=" + cell(Map::limits_told));
    line(card::mark, "mark", style::card_entry_mark);
    line(card::micrometer, "micrometer", style::card_entry_length);
    line(card::shim_is, "shim is", style::card_text);
    sheet_.formula(card_.value(card::shim_is), shown(cell(Map::trust)));
    line(card::alone, "leave alone", style::card_entry_choice);
  }

  void answer() {
    sheet_.result(card_.line(card::action), shown(cell(Map::to_do)), style::card_do);
    sheet_.result(card_.line(card::from), shown(cell(Map::source)), style::card_source);
    line(card::after, "after", style::card_length);
    sheet_.formula(card_.value(card::after), shown_length(cell(Map::after)));
    sheet_.result(
        card_.line(card::then),
        written("=IFERROR(IF(OR({state}=\"\";{state}=\"unread\");\"\";\"then \"&{told});\"\")",
                {{"state", then_}, {"told", cell(Map::then_told)}}),
        style::card_foot);
  }

  void frame() {
    sheet_.grade(card_.line(card::name), worn_by_state(now_, Wear::crown));
    sheet_.grade(card_.line(card::banner), worn_by_state(now_, Wear::banner));
    sheet_.grade({card_.at(card::gap), card_.at(card::alone)}, worn_by_state(now_, Wear::left));
    for (const card::Row row : {card::gap, card::micrometer})
      sheet_.grade(card_.value(row), framed(now_, Wear::well, Wear::well_inches));
    for (const card::Row row : {card::mark, card::alone})
      sheet_.grade(card_.value(row), worn_by_state(now_, Wear::well));
    sheet_.grade(card_.value(card::limits), worn_by_state(now_, Wear::right));
    std::vector<Grade> trust;
    for (const State state : all_states)
      trust.push_back({written("AND({now}=\"{word}\";OR({x}=\"thinner\";{x}=\"thicker\"))",
                               {{"now", now_}, {"word", word_for(state)}, {"x", cell(Map::trust)}}),
                       worn(Wear::right_odd, state)});
    for (Grade& grade : worn_by_state(now_, Wear::right)) trust.push_back(std::move(grade));
    sheet_.grade(card_.value(card::shim_is), trust);
    sheet_.grade(card_.line(card::action), worn_by_state(now_, Wear::sides));
    sheet_.grade(card_.line(card::from), worn_by_state(now_, Wear::sides));
    sheet_.grade(card_.at(card::after), worn_by_state(now_, Wear::left));
    sheet_.grade(card_.value(card::after), framed(now_, Wear::right, Wear::right_inches));
    sheet_.grade(card_.line(card::then), worn_by_state(then_, Wear::foot));
  }

  void checks() {
    const At gap = card_.value(card::gap);
    sheet_.check(gap, length_check(gap, 0, 5, "Gap of " + name_, "",
                                   "A gap is a number from 0 (no blade goes) to 5 mm or 0.2 in, "
                                   "in the unit chosen on Engine. Text with a unit, such as "
                                   "4 thou, will do too."));
    const At micrometer = card_.value(card::micrometer);
    sheet_.check(micrometer, length_check(micrometer, 0.3, 20, "Shim of " + name_, "",
                                          "A shim is between 0.3 and 20 mm thick (0.012 to "
                                          "0.787 in), in the unit chosen on Engine."));
    const At mark = card_.value(card::mark);
    sheet_.check(mark, {.rule = written("OR(NOT(add_in_there);ISNUMBER(SHIM.MM({x};mark_scheme)))",
                                        {{"x", relative(mark)}}),
                        .title = "Mark on the shim of " + name_,
                        .refusal = "This mark stands for no size by the scheme chosen on Engine. "
                                   "Keep it all the same? Then measure the shim.",
                        .may_keep = true});
    sheet_.check(card_.value(card::alone), {.kind = EntryCheck::Kind::choice,
                                            .rule = "\"yes\"",
                                            .title = "Leave alone",
                                            .refusal = "Choose yes, or clear the cell."});
  }

  Sheet& sheet_;
  Map map_;
  std::string first_stop_;
  const Card& card_;
  std::string name_;
  int index_;
  std::string now_;
  std::string then_;
};

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

void make_deck(Sheet& sheet, const BankDeck& deck, const Bank& bank) {
  sheet.style(deck.deck, style::deck);
  const Side below = deck.above == Side::exhaust ? Side::inlet : Side::exhaust;
  const auto side_words = [&](Side side) {
    const std::string words = word_for(side) + (deck.continued ? " side, continued" : " side");
    return bank.name.empty() ? words : bank.name + " bank, " + words;
  };
  sheet.label(deck.upper_side, side_words(deck.above), style::deck_side);
  sheet.label(deck.lower_side, side_words(below), style::deck_side);
  // Where the drawn outline is rounded.
  for (const At corner : {deck.deck.from, deck.deck.to, At{deck.deck.from.column, deck.deck.to.row},
                          At{deck.deck.to.column, deck.deck.from.row}})
    sheet.style(corner, style::page);
  for (const CylinderStrip& strip : deck.strips)
    sheet.label(strip.area, "cylinder " + std::to_string(strip.cylinder), style::deck_strip);
}

// Below the chart: where the crank stops to measure the valves. Gives the last row.
int make_stops(Sheet& sheet, const Places& places) {
  const StepsMap steps(places);
  const HeadMap& map = places.head;
  const auto row = [&map](int of) { return map.across(0, 1, map.last_row + of); };
  constexpr double letter_mm = 1.7;
  constexpr double line_mm = 4;
  const double width = std::accumulate(map.column_mm.begin(), map.column_mm.end(), 0.0);
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

void set_heights(Sheet& sheet, const HeadMap& map) {
  sheet.row_height(HeadMap::title_row, 11);
  sheet.row_height(HeadMap::banner_row, 10);
  sheet.row_height(HeadMap::legend_row, 6.5);
  sheet.row_height(HeadMap::first_deck_row - 1, 2.5);
  for (const BankDeck& bank : map.banks) {
    const int first = bank.deck.from.row;
    sheet.row_heights(first, bank.deck.to.row, row_mm);
    for (const int edge : {first, bank.strip_row - 1, bank.strip_row + 1, bank.deck.to.row})
      sheet.row_height(edge, 2);
    sheet.row_height(bank.strip_row, 8);
    sheet.row_height(bank.deck.to.row + 1, 2);
    for (const int top : {first + 1, bank.strip_row + 2}) sheet.row_height(top + card::banner, 7.5);
    for (const int top : {first + 1, bank.strip_row + 2}) sheet.row_height(top + card::action, 6.5);
  }
}

}  // namespace

void make_head(Sheet& sheet, const Places& places) {
  const HeadMap& map = places.head;
  for (int column = 0; column <= map.last_column; ++column)
    sheet.column_width(column, map.column_mm[static_cast<std::size_t>(column)]);
  set_heights(sheet, map);

  sheet.result(map.across(0, 0.5, HeadMap::title_row), titled(sheet.name()), style::title);
  make_banner(sheet, map.across(0, 0.5, HeadMap::banner_row));
  const Area box{map.across(0.52, 1, HeadMap::title_row).from,
                 map.across(0.52, 1, HeadMap::banner_row).to};
  make_trouble_box(sheet, box, in_workings(Map(places.count()).trouble_lines(Map::head_box)));
  make_legend(sheet, map);
  sheet.result({map.head_cell(6, HeadMap::legend_row).from, {map.last_column, HeadMap::legend_row}},
               "=\"seen from above, lengths in \"&unit", style::aside);

  for (const BankDeck& deck : map.banks) make_deck(sheet, deck, places.layout.banks[deck.bank]);
  for (int i = 0; i < places.count(); ++i) CardMaker(sheet, places, i).make();
  draw_heads(sheet, map);
  const int last_row = make_stops(sheet, places);
  const Area whole{{0, 0}, {map.last_column, last_row}};
  sheet.print(whole, sheet.taller_than_wide(whole) ? style::portrait : style::landscape);
  sheet.protect();
}

}  // namespace shimwright::book
