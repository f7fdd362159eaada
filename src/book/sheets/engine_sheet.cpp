// SPDX-License-Identifier: MPL-2.0
//
// Engine: what is true of the engine as a whole, entered once before the first reading.
#include <utility>

#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace engine_sheet {
namespace {

namespace place = engine_place;

constexpr int label_column = 1;
constexpr int note_column = 9;
constexpr int last_row = place::earlier.row + 1;
constexpr double most_interval = 1e6;
constexpr double most_distance = 1e7;
constexpr double most_gap_mm = 5;
constexpr double most_doubt_mm = 0.2;
constexpr double most_money = 1'000'000;

Area whole_line(int row) { return {{label_column, row}, {note_column, row}}; }

// Words reach as far as the last column of numbers.
Area wide(At words) { return {words, {place::exhaust_column, words.row}}; }

Say word_of(Side side) { return side == Side::exhaust ? Say::exhaust : Say::inlet; }

std::string one_of(const Choice& choice) {
  std::string words;
  for (std::size_t i = 0; i < choice.options.size(); ++i) {
    if (i > 0) words += i + 1 == choice.options.size() ? " or " : ", ";
    words += choice.options[i].shown;
  }
  return said(Say::choice_due, {words});
}

class EngineDescription {
 public:
  explicit EngineDescription(const Places& places) : places_(places) {}

  SheetDescription made() && {
    sheet_.name = sheet_name::engine;
    constexpr double none = 0.1;
    sheet_.column_mm = {3, 72, none, none, 25.5, 5, none, 25.5, 7, 90};
    sheet_.row_mm = 8;
    sheet_.row_heights = {{0, 11},      {1, 5},       {row(6), 4},     {row(18), 4},
                          {row(26), 4}, {row(34), 4}, {doubt_row, 11}, {place::opens_row - 1, 6}};
    for (int line = 0; line < place::box_lines; ++line)
      sheet_.row_heights.emplace_back(2 + line, 5);
    sheet_.last_row = last_row;
    sheet_.frozen_rows = place::first_row;
    sheet_.cursor = place::name;
    sheet_.printed = Area({0, 0}, {note_column, last_row});
    sheet_.page_style = style::portrait;
    sheet_.fields = {title_field("engine", {whole_line(0).from, {place::exhaust_column, 0}}),
                     banner_field(whole_line(1)),
                     next_sheet_field(sheet_name::head, At{note_column, 0})};
    add_box(sheet_, "engine", {whole_line(2).from, whole_line(1 + place::box_lines).to});
    engine();
    limits();
    readings();
    plan();
    crank();
    distance();
    return std::move(sheet_);
  }

 private:
  static constexpr int row(int below) { return place::first_row + below; }
  static constexpr int doubt_row = place::series_row + 1;

  void heading(std::string name, int row, Say words) {
    for (Field& field : heading_fields(name + ".heading", whole_line(row), said(words)))
      sheet_.fields.push_back(std::move(field));
  }

  void line(const std::string& name, int row, Say label, Content note) {
    sheet_.add(name + ".label", At{label_column, row}, style::label, Fixed{said(label)});
    sheet_.add(name + ".note", At{note_column, row}, style::note, std::move(note));
  }

  void line(const std::string& name, int row, Say label, Say note) {
    line(name, row, label, Fixed{said(note)});
  }

  void fact(const std::string& name, int row, Say label, std::string words) {
    sheet_.add(name + ".label", At{label_column, row}, style::label, Fixed{said(label)});
    sheet_.add(name, {{place::words_column, row}, {note_column, row}}, style::fact,
               Fixed{std::move(words)});
  }

  Takes& last_entry() { return std::get<Takes>(sheet_.fields.back().content); }

  // The label is the title too, where it is short enough for one.
  void setting(const std::string& name, const Area& where, std::string_view look, Say title,
               Takes entry) {
    entry.kind = "setting";
    entry.name = name;
    entry.place = said(title);
    if (entry.title.empty()) entry.title = entry.place;
    sheet_.add(name, where, look, std::move(entry));
  }

  void choice(const std::string& name, const Area& where, Say title, Say help,
              std::vector<Choice::Option> options) {
    Choice check{std::move(options)};
    const std::string first = check.options.front().shown;
    const std::string due = one_of(check);
    setting(name, where, style::entry_choice, title,
            {.check = std::move(check), .help = said(help), .due = due, .at_first = first});
  }

  // A value of both sides, exhaust and inlet.
  void sides(const std::string& name, int row, std::string_view look, Say title,
             entry_value::Side value, const Takes& entry) {
    for (const Side side : {Side::exhaust, Side::inlet}) {
      const At at = place::of(side, row);
      Takes taken = entry;
      taken.kind = "side";
      taken.name = word_for(side);
      taken.value = value;
      if (taken.title.empty()) taken.title = said(title);
      taken.place = said(Say::engine_of_side, {said(title), said(word_of(side))});
      Field field{.name = std::string(word_for(side)) + "." + name,
                  .where = at,
                  .style = std::string(look),
                  .content = std::move(taken)};
      if (row == place::series_row) field.where = Area(at, right_of(at));
      if (look == style::entry_length) field.grades = {in_inches()};
      sheet_.fields.push_back(std::move(field));
    }
  }

  // In the line of a heading, in place of its own cells.
  void side_heads(int row) {
    for (const Side side : {Side::exhaust, Side::inlet}) {
      const At at{side == Side::exhaust ? place::exhaust_column : place::inlet_column, row};
      std::erase_if(sheet_.fields, [at](const Field& field) { return field.where.from == at; });
      sheet_.add(std::string(word_for(side)) + ".head." + std::to_string(row), at,
                 style::table_head_centre, Fixed{said(word_of(side))});
    }
  }

  void engine() {
    heading("this engine", row(0), Say::engine_this);
    line("engine", place::name.row, Say::engine_name, Say::engine_name_note);
    setting("engine", wide(place::name), style::entry_text, Say::engine_name,
            {.check = Letters{60},
             .help = said(Say::engine_name_help),
             .due = said(Say::engine_name_due)});
    line("unit", place::unit.row, Say::engine_unit, Say::engine_unit_note);
    choice("unit", {place::unit, {place::inlet_column, place::unit.row}}, Say::engine_unit,
           Say::engine_unit_help, {{"mm"}, {"inch"}});
    const EngineLayout& layout = places_.layout;
    fact("layout", row(3), Say::engine_layout, layout_in_words());
    fact("valves", row(4), Say::engine_valves,
         said(Say::engine_valves_told,
              {std::int64_t{layout.inlet_valves}, std::int64_t{layout.exhaust_valves},
               std::int64_t{places_.count()}}));
    fact("numbering", row(5), Say::engine_numbering, numbering());
  }

  std::string layout_in_words() const {
    const std::int64_t cylinders = cylinders_of(places_.layout);
    if (cylinders == 1) return said(Say::engine_single);
    switch (places_.layout.arrangement) {
      case Arrangement::vee:
        return said(Say::engine_vee, {cylinders});
      case Arrangement::flat:
        return said(Say::engine_flat, {cylinders});
      case Arrangement::in_line:
        break;
    }
    return said(Say::engine_in_line, {cylinders});
  }

  // As they lie on Head.
  std::string numbering() const {
    std::string words;
    for (const Bank& bank : places_.layout.banks) {
      std::string cylinders;
      for (const int cylinder : bank.cylinders)
        cylinders += (cylinders.empty() ? "" : " ") + std::to_string(cylinder);
      if (!words.empty()) words += "; ";
      if (!bank.name.empty())
        words += said(Say::engine_bank, {bank.name, cylinders});
      else if (bank.cylinders.size() > 1)
        words += said(Say::engine_left_to_right, {cylinders});
      else
        words += cylinders;
    }
    return words;
  }

  void limits() {
    heading("limits", row(7), Say::engine_limits);
    side_heads(row(7));
    line("min", place::min_row, Say::engine_min, Say::engine_limit_note);
    line("max", place::max_row, Say::engine_max, Say::engine_limit_note);
    line("bias", place::bias_row, Say::engine_bias, Say::engine_bias_note);
    line("aim", place::aim_row, Say::engine_aim, Say::engine_aim_note);
    line("series", place::series_row, Say::engine_series, Say::engine_series_note);
    const Takes limit{.check = Number{0, most_gap_mm, true},
                      .help = said(Say::engine_limit_help),
                      .due = said(Say::engine_limit_due)};
    sides("min", place::min_row, style::entry_length, Say::engine_min, entry_value::min, limit);
    sides("max", place::max_row, style::entry_length, Say::engine_max, entry_value::max, limit);
    sides("bias", place::bias_row, style::entry_factor, Say::engine_bias, entry_value::bias,
          {.check = Number{0, 1},
           .help = said(Say::engine_bias_help),
           .due = said(Say::engine_bias_due),
           .at_first = "0.75"});
    for (const Side side : {Side::exhaust, Side::inlet})
      sheet_.add(std::string(word_for(side)) + ".aim", place::of(side, place::aim_row),
                 style::table_length, Shows{"book", "aim " + std::string(word_for(side))});
    sides("series", place::series_row, style::entry_choice, Say::engine_series, entry_value::series,
          {.check = Letters{20},
           .help = said(Say::engine_series_help),
           .due = said(Say::engine_series_due),
           .at_first = "A"});
    // Common practice, no source. Said as long as nobody has entered it.
    sheet_.add("doubt hint", whole_line(doubt_row), style::text, Shows{"book", "doubt hint"});
  }

  void small_length(const std::string& name, At at, Say title, Say help) {
    setting(name, at, style::entry_length, title,
            {.check = Number{0, most_doubt_mm, true},
             .help = said(help),
             .due = said(Say::engine_small_length_due)});
    sheet_.fields.back().grades = {in_inches()};
  }

  void readings() {
    heading("readings", row(14), Say::engine_readings);
    line("doubt", place::doubt.row, Say::engine_doubt, Say::engine_doubt_note);
    small_length("doubt", place::doubt, Say::engine_doubt, Say::engine_doubt_help);
    line("allowed difference", place::allowed.row, Say::engine_allowed,
         Shows{"book", "allowed note"});
    small_length("allowed difference", place::allowed, Say::engine_allowed,
                 Say::engine_allowed_help);
    last_entry().title = said(Say::engine_allowed_title);
    line("marks", place::scheme.row, Say::engine_scheme, Shows{"book", "marks note"});
    choice("marks", place::scheme, Say::engine_scheme, Say::engine_scheme_help,
           {{"auto"}, {"hundredths"}, {"thousandths"}, {"mm"}, {"in"}, {"thou"}});
  }

  void plan() {
    heading("plan", row(19), Say::engine_plan);
    line("stay clear", place::use_doubt.row, Say::engine_clear, Say::engine_clear_note);
    choice("stay clear", place::use_doubt, Say::engine_clear, Say::engine_clear_help,
           {{"yes"}, {"no"}});
    last_entry().title = said(Say::engine_clear_title);
    line("touch good", place::touch_good.row, Say::engine_touch, Say::engine_touch_note);
    choice("touch good", place::touch_good, Say::engine_touch, Say::engine_touch_help,
           {{"yes"}, {"no"}});
    last_entry().at_first = "no";
    line("first", place::first.row, Say::engine_first, Say::engine_first_note);
    choice("first", place::first, Say::engine_first, Say::engine_first_help, {{"cost"}, {"aim"}});
    line("nearest", place::nearest.row, Say::engine_nearest, Say::engine_nearest_note);
    choice("nearest", place::nearest, Say::engine_nearest, Say::engine_nearest_help,
           {{"yes"}, {"no"}});
    last_entry().at_first = "no";
    line("work", place::work.row, Say::engine_work, Say::engine_work_note);
    setting("work", place::work, style::entry_money, Say::engine_work,
            {.check = Number{0, most_money},
             .help = said(Say::engine_work_help),
             .due = said(Say::engine_money_due)});
    line("currency", place::currency.row, Say::engine_currency, Say::engine_currency_note);
    setting("currency", place::currency, style::entry_choice, Say::engine_currency,
            {.check = Letters{8},
             .help = said(Say::engine_currency_help),
             .due = said(Say::engine_currency_due)});
  }

  void crank() {
    heading("crank", row(27), Say::engine_crank);
    line("firing", place::firing.row, Say::engine_firing, Say::engine_firing_note);
    // What is wrong with it, the box says: its rule is no plain one.
    setting("firing", wide(place::firing), style::entry_words, Say::engine_firing,
            {.check = Letters{200},
             .help = said(Say::engine_firing_help),
             .due = said(Say::engine_firing_due),
             .at_first = places_.layout.firing});
    side_heads(place::opens_row - 1);
    line("opens", place::opens_row, Say::engine_opens, Say::engine_opens_note);
    line("closes", place::closes_row, Say::engine_closes, Say::engine_closes_note);
    const Takes timing{.check = Number{-180, 180},
                       .title = said(Say::engine_timing_title),
                       .help = said(Say::engine_timing_help),
                       .due = said(Say::engine_timing_due)};
    sides("opens", place::opens_row, style::entry_choice, Say::engine_opens, entry_value::opens,
          timing);
    sides("closes", place::closes_row, style::entry_choice, Say::engine_closes, entry_value::closes,
          timing);
    line("margin", place::margin.row, Say::engine_margin, Say::engine_margin_note);
    setting("margin", place::margin, style::entry_choice, Say::engine_margin,
            {.check = Number{0, 180},
             .help = said(Say::engine_margin_help),
             .due = said(Say::engine_margin_due)});
    line("camshafts out", place::opened.row, Say::engine_opened, Say::engine_opened_note);
    choice("camshafts out", wide(place::opened), Say::engine_opened, Say::engine_opened_help,
           {{std::string(place::cams_in_place), "no"}, {std::string(place::cams_out), "yes"}});
  }

  void number(const std::string& name, At at, Say title, Say help, Say due, Number check) {
    setting(name, at, style::entry_choice, title,
            {.check = check, .help = said(help), .due = said(due)});
  }

  void distance() {
    heading("distance", row(35), Say::engine_distance);
    line("distance unit", place::distance_unit.row, Say::engine_distance_unit,
         Say::engine_distance_unit_note);
    choice("distance unit", place::distance_unit, Say::engine_distance_unit,
           Say::engine_distance_unit_help, {{"km"}, {"miles"}, {"hours"}});
    line("interval", place::interval.row, Say::engine_interval, Say::engine_interval_note);
    number("interval", place::interval, Say::engine_interval, Say::engine_interval_help,
           Say::engine_interval_due, {1, most_interval});
    line("earlier distance", place::earlier.row, Say::engine_earlier, Say::engine_earlier_note);
    number("earlier distance", place::earlier, Say::engine_earlier, Say::engine_earlier_help,
           Say::engine_earlier_due, {0, most_distance});
    last_entry().title = said(Say::engine_earlier_title);
  }

  const Places& places_;
  SheetDescription sheet_;
};

}  // namespace
}  // namespace engine_sheet

SheetDescription describe_engine(const Places& places) {
  return engine_sheet::EngineDescription(places).made();
}

}  // namespace shimwright::book
