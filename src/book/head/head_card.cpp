// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_card.hpp"

#include <string>
#include <utility>
#include <vector>

#include "book/look/style_names.hpp"

namespace shimwright::book {
namespace {

using style::Wear;
using style::worn;

constexpr double most_gap_mm = 5;
constexpr double least_shim_mm = 0.3;
constexpr double most_shim_mm = 20;
constexpr double most_mark = 99'999;

using Also = Wears::Also;

// One look for each state that the piece may name; that of `unread` where it names none.
std::vector<Wears> by_state(const Shows& piece, Wear wear, const std::optional<Also>& also = {}) {
  std::vector<Wears> looks;
  std::vector<std::string> known;
  for (const State state : all_states) {
    if (state == State::unread) continue;
    known.emplace_back(word_for(state));
    looks.push_back(
        {.piece = piece, .words = {known.back()}, .style = worn(wear, state), .also = also});
  }
  looks.push_back({.piece = piece,
                   .words = std::move(known),
                   .style = worn(wear, State::unread),
                   .unless = true,
                   .also = also});
  return looks;
}

std::vector<Wears> joined(std::vector<Wears> first, std::vector<Wears> then) {
  for (Wears& look : then) first.push_back(std::move(look));
  return first;
}

class CardMaker {
 public:
  CardMaker(SheetDescription& sheet, const Places& places, int index)
      : sheet_(sheet),
        card_(places.head.cards[static_cast<std::size_t>(index)]),
        name_(name_of(card_.valve, places.layout)),
        row_(index + 1) {}

  void make() {
    top();
    readings();
    answer();
    const auto constant = [this](int value, std::string what) {
      sheet_.constants.push_back({"valve", name_, value, std::move(what)});
    };
    constant(entry_value::cylinder, std::to_string(card_.valve.cylinder));
    constant(entry_value::side, std::string(word_for(card_.valve.side)));
  }

 private:
  Shows piece(std::string_view column) const { return {"valves", std::string(column), row_}; }
  // That the gap does not change.
  Shows lasting(std::string_view column) const { return {"cards", std::string(column), row_}; }

  std::vector<Wears> now(Wear wear) const { return by_state(piece("state"), wear); }

  // What must not be overlooked, where that piece says yes.
  std::vector<Wears> warned(const Shows& where) const {
    return joined(by_state(piece("state"), Wear::sides_odd, Also{where, "yes"}), now(Wear::sides));
  }

  void add(std::string_view what, const Area& where, std::string_view look, Content content,
           std::vector<Wears> grades) {
    sheet_.fields.push_back({.name = name_ + "." + std::string(what),
                             .where = where,
                             .style = std::string(look),
                             .content = std::move(content),
                             .grades = std::move(grades)});
  }

  // A piece over the whole card, called as its column.
  void line(card::Row row, const Shows& shown, std::string_view look, std::vector<Wears> grades) {
    add(shown.column, card_.line(row), look, shown, std::move(grades));
  }

  void label(card::Row row, std::string_view what, Content content) {
    add(std::string(what) + ".label", card_.label(row), style::card_label, std::move(content),
        now(Wear::left));
  }

  struct Words {
    Say title;
    Say help;
    Say due;
    Say place;
  };
  void entry(card::Row row, std::string_view what, std::string_view look, int value, Check check,
             const Words& words) {
    const bool is_length = look == style::card_entry_length;
    add(what, card_.value(row), look,
        Takes{.kind = "valve",
              .name = name_,
              .value = value,
              .check = std::move(check),
              .title = said(words.title, {name_}),
              .help = said(words.help),
              .due = said(words.due),
              .place = said(words.place, {name_})},
        is_length
            ? joined(by_state(piece("state"), Wear::well_inches, Also{{"book", "unit"}, "in"}),
                     now(Wear::well))
            : now(Wear::well));
  }

  void top() {
    add("name", card_.line(card::name), style::card_name, Fixed{name_}, now(Wear::crown));
    line(card::banner, piece("now"), style::card_banner, now(Wear::banner));
    line(card::limits, lasting("limits"), style::card_aside, now(Wear::sides));
  }

  void readings() {
    label(card::gap, "gap", lasting("gap label"));
    entry(card::gap, "gap", style::card_entry_length, entry_value::gap,
          Number{0, most_gap_mm, true},
          {Say::head_gap_title, Say::head_gap_help, Say::head_gap_due, Say::head_gap_place});
    label(card::mark, "mark", Fixed{said(Say::name_of_mark)});
    entry(card::mark, "mark", style::card_entry_mark, entry_value::mark, Number{0, most_mark},
          {Say::head_mark_title, Say::head_mark_help, Say::head_mark_due, Say::head_mark_place});
    label(card::micrometer, "micrometer", Fixed{said(Say::name_of_micrometer)});
    entry(card::micrometer, "micrometer", style::card_entry_length, entry_value::micrometer,
          Number{least_shim_mm, most_shim_mm, true},
          {Say::head_micrometer_title, Say::head_micrometer_help, Say::head_micrometer_due,
           Say::head_micrometer_place});
    line(card::shim_is, lasting("shim is"), style::card_aside, warned(lasting("shim odd")));
    label(card::exception, "exception", Fixed{said(Say::name_of_exception)});
    entry(card::exception, "exception", style::card_entry_choice, entry_value::exception,
          Choice{{{"leave"}, {"nearest"}}},
          {Say::head_exception_title, Say::head_exception_help, Say::head_exception_due,
           Say::head_exception_place});
  }

  void answer() {
    line(card::action, piece("card do"), style::card_do, warned(piece("outside")));
    line(card::from, piece("card from"), style::card_source, warned(piece("outside")));
    label(card::after, "after", piece("foot label"));
    add("after", card_.value(card::after), style::card_length, piece("foot value"),
        now(Wear::right));
    line(card::then, piece("foot"), style::card_foot, by_state(piece("then state"), Wear::foot));
  }

  SheetDescription& sheet_;
  const Card& card_;
  std::string name_;
  int row_;  // of the View's table, counted from 1
};

}  // namespace

void add_card(SheetDescription& sheet, const Places& places, int index) {
  CardMaker(sheet, places, index).make();
}

}  // namespace shimwright::book
