// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_card.hpp"

#include <span>
#include <string>
#include <vector>

#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

using Map = WorkingsMap;
using style::Wear;
using style::worn;

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

  void entry(card::Row row, std::string_view label, std::string_view value_style) {
    sheet_.label(card_.label(row), label, style::card_label);
    sheet_.style(card_.value(row), value_style);
  }

  // Words of the book's own, over the whole card.
  void line(card::Row row, const std::string& formula, std::string_view style) {
    sheet_.result(card_.line(row), formula, style);
  }

  void top() {
    sheet_.label(card_.line(card::name), name_, style::card_name);
    line(card::banner, shown(cell(Map::now_told)), style::card_banner);
    line(card::limits,
         written("=IF({x}=\"\";\"\";\"limits \"&{x})", {{"x", cell(Map::limits_told)}}),
         style::card_aside);
  }

  void readings() {
    entry(card::gap, "", style::card_entry_length);
    sheet_.formula(
        card_.at(card::gap),
        written("=IF(ISNUMBER({stop});\"gap, stop \"&{stop};\"gap\")", {{"stop", first_stop_}}));
    entry(card::mark, "mark", style::card_entry_mark);
    entry(card::micrometer, "micrometer", style::card_entry_length);
    line(card::shim_is,
         written("=IFERROR(IF({x}=\"\";\"\";\"shim is \"&{x});\"\")", {{"x", cell(Map::trust)}}),
         style::card_aside);
    entry(card::alone, "leave alone", style::card_entry_choice);
  }

  // A valve without a reading has no answer: nothing stands there.
  void answer() {
    line(card::action,
         written("=IFERROR(IF({left}<>\"\";\"stays \"&{left};{to_do});\"\")",
                 {{"left", cell(Map::left_outside)}, {"to_do", cell(Map::to_do)}}),
         style::card_do);
    line(card::from, shown(cell(Map::source)), style::card_source);
    sheet_.result(card_.label(card::after),
                  written("=IF(ISNUMBER({x});\"after\";\"\")", {{"x", cell(Map::told_after)}}),
                  style::card_label);
    sheet_.style(card_.value(card::after), style::card_length);
    sheet_.formula(card_.value(card::after), shown_length(cell(Map::told_after)));
    line(card::then,
         written("=IFERROR(IF(OR({state}=\"\";{state}=\"unread\");\"\";\"then \"&{told});\"\")",
                 {{"state", then_}, {"told", cell(Map::then_told)}}),
         style::card_foot);
  }

  // Its shim is not changed, though the valve reads outside its limits: the person wants it so, or
  // no shim serves.
  std::string stays_outside() const {
    return written("IFERROR(OR({left}<>\"\";{action}=\"none\");FALSE())",
                   {{"left", cell(Map::left_outside)}, {"action", cell(Map::action)}});
  }

  void frame() {
    sheet_.grade(card_.line(card::name), worn_by_state(now_, Wear::crown));
    sheet_.grade(card_.line(card::banner), worn_by_state(now_, Wear::banner));
    sheet_.grade(card_.line(card::limits), worn_by_state(now_, Wear::sides));
    sheet_.grade({card_.at(card::gap), card_.at(card::micrometer)},
                 worn_by_state(now_, Wear::left));
    for (const card::Row row : {card::gap, card::micrometer})
      sheet_.grade(card_.value(row), framed(now_, Wear::well, Wear::well_inches));
    for (const card::Row row : {card::mark, card::alone})
      sheet_.grade(card_.value(row), worn_by_state(now_, Wear::well));
    warned(
        card_.line(card::shim_is), all_states,
        written("IFERROR(OR({x}=\"thinner\";{x}=\"thicker\");FALSE())", {{"x", cell(Map::trust)}}));
    sheet_.grade(card_.at(card::alone), worn_by_state(now_, Wear::left));
    warned({card_.at(card::action), card_.value(card::from)}, all_states, stays_outside());
    sheet_.grade(card_.at(card::after), worn_by_state(now_, Wear::left));
    sheet_.grade(card_.value(card::after), framed(now_, Wear::right, Wear::right_inches));
    sheet_.grade(card_.line(card::then), worn_by_state(then_, Wear::foot));
  }

  // What must not be overlooked, in those states.
  void warned(const Area& area, std::span<const State> states, const std::string& condition) {
    std::vector<Grade> grades;
    for (const State state : states)
      grades.push_back(
          {written("AND({now}=\"{word}\";{condition})",
                   {{"now", now_}, {"word", word_for(state)}, {"condition", condition}}),
           worn(Wear::sides_odd, state)});
    for (Grade& grade : worn_by_state(now_, Wear::sides)) grades.push_back(std::move(grade));
    sheet_.grade(area, grades);
  }

  void checks() {
    const At gap = card_.value(card::gap);
    sheet_.check(gap, length_check(gap, 0, 5, "Gap of " + name_, "",
                                   "A gap is a number from 0 (no blade goes) to 5 mm or 0.2 in, "
                                   "in the unit chosen on Engine."));
    const At micrometer = card_.value(card::micrometer);
    sheet_.check(micrometer, length_check(micrometer, 0.3, 20, "Shim of " + name_, "",
                                          "A shim is between 0.3 and 20 mm thick (0.012 to "
                                          "0.787 in), in the unit chosen on Engine."));
    const At mark = card_.value(card::mark);
    sheet_.check(mark, {.rule = written("OR(NOT(add_in_there);ISNUMBER({size}))",
                                        {{"size", size_marked(relative(mark))}}),
                        .title = "Mark on the shim of " + name_,
                        .refusal = "This mark stands for no size by the scheme chosen on Engine "
                                   "(with auto, one with a decimal point is in the book\u2019s "
                                   "unit; 3.00 mm is typed as 300). Keep it all the same? Then "
                                   "measure the shim.",
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

}  // namespace

void make_card(Sheet& sheet, const Places& places, int index) {
  CardMaker(sheet, places, index).make();
}

}  // namespace shimwright::book
