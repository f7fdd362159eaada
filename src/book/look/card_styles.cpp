// SPDX-License-Identifier: MPL-2.0
//
// The head's deck, the cards on it, and what a state lays over them.
#include "book/look/style_maker.hpp"
#include "book/look/styles.hpp"

namespace shimwright::book::style {
namespace {

std::string word_for(Wear wear) {
  switch (wear) {
    case Wear::crown:
      return "crown";
    case Wear::banner:
      return "banner";
    case Wear::left:
      return "left";
    case Wear::right:
      return "right";
    case Wear::well:
      return "entry";
    case Wear::well_inches:
      return "entry in inches";
    case Wear::sides:
      return "sides";
    case Wear::sides_odd:
      return "sides odd";
    case Wear::foot:
      return "foot";
    case Wear::told:
      return "told";
  }
  return {};
}

void make_state_styles(Maker& m, State state) {
  const StateLook& look = look_of(state);
  const std::pair<std::string_view, Any> filled{"CellBackColor", colour(look.fill)};
  const std::pair<std::string_view, Any> letters{"CharColor", colour(look.text)};
  // What is not read yet asks for nothing: its frame is thin.
  const sal_Int32 border = colour(look.border).get<sal_Int32>();
  const Any frame = line(border, state == State::unread ? 0.75 : 2);
  const Any thin = line(border, 0.75);
  const std::pair<std::string_view, Any> at_left{"LeftBorder", frame};
  const std::pair<std::string_view, Any> at_right{"RightBorder", frame};
  const auto wear = [&](Wear what, const Looks& looks) { m.make(worn(what, state), "", looks); };

  wear(Wear::told, {filled, letters});
  wear(Wear::crown, {filled, letters, at_left, at_right, {"TopBorder", frame}});
  wear(Wear::banner, {filled, letters, at_left, at_right});
  wear(Wear::left, {at_left});
  wear(Wear::right, {at_right});
  // The office draws the ends of level lines over the frame: in its colour they leave it whole. A
  // thin frame bears darker ones, which ask for a reading.
  const Any well_line = state == State::unread ? line(well_shade, 0.75) : thin;
  const Looks well_looks{
      {"TopBorder", well_line}, {"LeftBorder", well_line}, {"BottomBorder", well_line}, at_right};
  wear(Wear::well, well_looks);
  Looks in_inches = well_looks;
  in_inches.push_back(m.format(inch_format));
  wear(Wear::well_inches, in_inches);
  wear(Wear::sides, {at_left, at_right});
  wear(Wear::sides_odd, {at_left, at_right, fill(accent), text_colour(well)});
  wear(Wear::foot, {filled, letters, at_left, at_right, {"BottomBorder", frame}});
  m.make(legend(state), page,
         {filled,
          letters,
          bold(),
          centre(),
          shrinking(),
          {"TopBorder", thin},
          {"BottomBorder", thin},
          {"LeftBorder", thin},
          {"RightBorder", thin}});
}

}  // namespace

std::string worn(Wear wear, State state) {
  return "State " + std::string(shimwright::word_for(state)) + " " + word_for(wear);
}

std::string legend(State state) { return "Legend " + std::string(shimwright::word_for(state)); }

void make_card_styles(Maker& m) {
  m.make(deck, page, {fill(deck_metal)});
  m.make(deck_seen, subtitle, {shrinking()});
  m.make(deck_heading, page, {size(11), bold(), text_colour(accent), left(), indent(0.5)});
  m.make(
      deck_side, page,
      {size(9), bold(), text_colour(quiet_ink), centre(), {"RotateAngle", Any(sal_Int32{9000})}});
  m.make(deck_strip, deck, {bold(), text_colour(accent), fill(deck_groove), centre()});
  m.make(card_name, page, {bold(), fill(card_paper), centre()});
  m.make(card_banner, card_name, {size(14), shrinking()});
  m.make(card_label, page,
         {size(8.5), text_colour(quiet_ink), fill(card_paper), left(), indent(1)});
  m.make(card_aside, card_label,
         {centre(), indent(0), {"ParaLeftMargin", Any(sal_Int32{50})}, padding(0.5), shrinking()});
  m.make(card_length, card_label, {size(9), text_colour(ink), right(), padding(1.3), shrinking()});
  m.make(card_entry_length, entry_length, {bold(), shrinking()});
  m.make(card_entry_mark, entry, {right(), padding(1.3), shrinking()});
  m.make(card_entry_choice, entry_choice, {size(9)});
  m.make(card_do, card_name, {size(11), shrinking()});
  m.make(card_source, card_name,
         {size(9), {"CharWeight", Any(css::awt::FontWeight::NORMAL)}, shrinking()});
  m.make(card_foot, card_name, {size(9), shrinking()});
  for (const State state : all_states) make_state_styles(m, state);
}

}  // namespace shimwright::book::style
