// SPDX-License-Identifier: MPL-2.0
//
// Engine: what is true of the engine as a whole, entered once before the first reading.
#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

namespace place = engine_place;

constexpr int label_column = 1;
constexpr int note_column = 9;
constexpr double row_mm = 8;

class EngineMaker {
 public:
  EngineMaker(Sheet& sheet, const Places& places) : sheet_(sheet), places_(places) {}

  void make() {
    constexpr double none = 0.1;
    const double widths[] = {3, 72, none, none, 25.5, 5, none, 25.5, 7, 90};
    for (int column = 0; column <= note_column; ++column)
      sheet_.column_width(column, widths[column]);
    sheet_.row_heights(0, last_row, row_mm);
    for (const int gap : {9, 21, 28}) sheet_.row_height(gap, 4);
    sheet_.row_height(0, 11);
    sheet_.row_height(1, 5);
    sheet_.result({{label_column, 0}, {note_column, 0}}, titled(sheet_.name()), style::title);
    make_banner(sheet_, {{label_column, 1}, {note_column, 1}});
    troubles();
    engine();
    limits();
    readings();
    plan();
    crank();
    sheet_.print({{0, 0}, {note_column, last_row}}, style::portrait);
    sheet_.protect();
  }

 private:
  static constexpr int last_row = place::opened.row + 1;
  static constexpr int doubt_said_row = place::series_row + 1;

  // In the rows that stay in sight while the rest is scrolled.
  void troubles() {
    sheet_.row_height(2, 16);
    make_trouble_box(
        sheet_, {{label_column, 2}, {note_column, 2}},
        {.told = in_workings(WorkingsMap(places_.count()).box_lines(WorkingsMap::engine_box))});
  }

  void heading(int row, std::string_view words) {
    sheet_.style({{label_column, row}, {note_column, row}}, style::heading);
    sheet_.text({label_column, row}, words);
  }

  void line(int row, std::string_view label, std::string_view note) {
    sheet_.label(At{label_column, row}, label, style::label);
    sheet_.label(At{note_column, row}, note, style::note);
  }

  // Of `"yes";"no"`: what may be entered, as a sentence.
  static std::string one_of(std::string_view rule) {
    std::string words(rule.substr(1, rule.size() - 2));
    constexpr std::string_view between = "\";\"";
    const std::size_t last = words.rfind(between);
    words.replace(last, between.size(), " or ");
    for (std::size_t at = 0; (at = words.find(between)) != std::string::npos;)
      words.replace(at, between.size(), ", ");
    return "Enter " + words + ", or choose from the list.";
  }

  void choice(At at, std::string_view rule, std::string_view first, std::string_view title) {
    sheet_.style(at, style::entry_choice);
    sheet_.text(at, first);
    sheet_.check(at, {.kind = EntryCheck::Kind::choice,
                      .rule = std::string(rule),
                      .title = std::string(title),
                      .refusal = one_of(rule)});
  }

  static Area wide(At words) { return {words, {place::exhaust_column, words.row}}; }

  void fact(int row, std::string_view label, std::string_view words) {
    sheet_.label(At{label_column, row}, label, style::label);
    sheet_.label({{place::words_column, row}, {note_column, row}}, words, style::fact);
  }

  void engine() {
    heading(3, "This engine");
    line(place::name.row, "Name of the engine", "Heads every sheet.");
    sheet_.label(wide(place::name), "", style::entry_text);
    line(place::unit.row, "Unit",
         "Of every length in this book. Numbers already typed are not "
         "converted: choose first.");
    choice(place::unit, "\"mm\";\"inch\"", "mm", "Unit");
    const EngineLayout& layout = places_.layout;
    const int cylinders = cylinders_of(layout);
    fact(6, "EngineLayout",
         cylinders == 1
             ? "single cylinder"
             : word_for(layout.arrangement) + ", " + std::to_string(cylinders) + " cylinders");
    fact(7, "Valves",
         std::to_string(places_.count()) + ": " + std::to_string(layout.inlet_valves) +
             " inlet and " + std::to_string(layout.exhaust_valves) + " exhaust to each cylinder");
    fact(8, "Cylinders as drawn on Head", numbering());
  }

  void limits() {
    heading(10, "Valve clearance, engine cold");
    for (const Side side : {Side::exhaust, Side::inlet})
      sheet_.label(place::of(side, 10), word_for(side), style::table_head_centre);
    line(place::min_row, "Smallest gap allowed", "From the engine\u2019s own manual.");
    line(place::max_row, "Largest gap allowed", "From the engine\u2019s own manual.");
    line(place::bias_row, "Where to aim",
         "0 is the smallest, 1 the largest. Gaps mostly close up with use, hence 0.75.");
    line(place::aim_row, "Gap aimed at", "What that comes to.");
    say_that_readings_have_a_doubt();
    line(place::series_row, "Shim series",
         "Any word. A shim fits only valves of its own series; the same word for both if every "
         "shim fits every valve.");
    for (const Side side : {Side::exhaust, Side::inlet}) {
      for (const int row : {place::min_row, place::max_row}) {
        const At at = place::of(side, row);
        sheet_.style(at, style::entry_length);
        sheet_.check(at, length_check(at, 0, 5, "Gap allowed", "",
                                      "A gap from 0 to 5 mm (0.2 in), in the unit chosen above."));
      }
      inches(place::of(side, place::min_row), place::of(side, place::max_row));
      const At bias = place::of(side, place::bias_row);
      sheet_.style(bias, style::entry_factor);
      sheet_.number(bias, 0.75);
      sheet_.check(bias,
                   {.rule = written("AND(ISNUMBER({x});{x}>=0;{x}<=1)", {{"x", relative(bias)}}),
                    .title = "Where to aim",
                    .refusal = "A number from 0 (at the smallest) to 1 (at the largest)."});
      const At aim = place::of(side, place::aim_row);
      sheet_.result(
          aim,
          written("=IF(ISNUMBER({x});{x}/mm_each;\"\u2013\")",
                  {{"x", in_workings(WorkingsMap(places_.count()).limit(side, WorkingsMap::aim))}}),
          style::table_length);
      inches(aim, aim);
      const At series = place::of(side, place::series_row);
      sheet_.label({series, right_of(series)}, "A", style::entry_choice);
    }
  }

  // Of the gauge: common practice, no source. Said as long as nobody has entered it.
  void say_that_readings_have_a_doubt() {
    const Area area{{label_column, doubt_said_row}, {note_column, doubt_said_row}};
    sheet_.result(area,
                  written("=IF({doubt}<>\"\";\"\";\"No feeler reading is exact: enter its doubt "
                          "below (\"&IF(unit=\"inch\";\"0.0004 to 0.0008 in\";\"0.01 to 0.02 "
                          "mm\")&\" is common practice), and a "
                          "gap too near a limit to be sure of is marked with a question mark, and "
                          "the plan keeps that much further inside the limits.\")",
                          {{"doubt", place::doubt}}),
                  style::text);
    sheet_.row_height(doubt_said_row, 11);
  }

  void inches(At from, At to) {
    sheet_.grade({from, to}, {{"unit=\"inch\"", std::string(style::in_inches)}});
  }

  void length_entry(At at, double most_mm, std::string_view title, std::string_view refusal) {
    sheet_.style(at, style::entry_length);
    sheet_.check(at, length_check(at, 0, most_mm, title, "", refusal));
    inches(at, at);
  }

  void readings() {
    heading(17, "Readings");
    line(place::doubt.row, "Doubt of a reading (U)",
         "The true gap is taken to lie within this much either side of the reading. Blank: exact.");
    length_entry(place::doubt, 0.2, "Doubt of a reading",
                 "A number from 0 to 0.2 mm (0.008 in), in the unit chosen above.");
    line(place::allowed.row, "Mark and micrometer may differ by", "");
    sheet_.formula({note_column, place::allowed.row},
                   "=\"Blank: \"&FIXED(0.015/mm_each;decimals;TRUE())&IF(unit=\"inch\";\" in.\";"
                   "\" mm.\")");
    length_entry(place::allowed, 0.2, "Mark and micrometer",
                 "A number from 0 to 0.2 mm (0.008 in), in the unit chosen above.");
    line(place::scheme.row, "Marks on shims are in", "");
    sheet_.formula(
        {note_column, place::scheme.row},
        "=IF(unit=\"inch\";\"auto: .108 is 0.108 in; 275 is 2.75 mm, 2755 is 2.755 mm.\";"
        "\"auto: 275 and 2.75 are 2.75 mm, 2755 is 2.755 mm.\")");
    choice(place::scheme, "\"auto\";\"hundredths\";\"thousandths\";\"mm\";\"in\"", "auto",
           "Marks on shims");
  }

  void plan() {
    heading(22, "What the plan may do");
    line(place::use_doubt.row, "Stay clear of the limits by the doubt",
         "yes: a gap must come out good even if the reading is off by U.");
    choice(place::use_doubt, "\"yes\";\"no\"", "yes", "Doubt");
    line(place::touch_good.row, "Change shims of good valves too",
         "yes: a good valve may give its shim to another.");
    choice(place::touch_good, "\"yes\";\"no\"", "no", "Good valves");
    line(place::first.row, "Put first",
         "cost: least money. aim: gaps nearest the aim, whatever they cost.");
    choice(place::first, "\"cost\";\"aim\"", "cost", "What comes first");
    line(place::work.row, "Work for each shim changed", "A sum of money. Blank: none.");
    sheet_.style(place::work, style::entry_money);
    sheet_.check(place::work, money_check(place::work));
    line(place::currency.row, "Currency", "A word or sign, shown with sums.");
    sheet_.style(place::currency, style::entry_choice);
  }

  // As they lie on Head.
  std::string numbering() const {
    std::string words;
    for (const Bank& bank : places_.layout.banks) {
      if (!words.empty()) words += "; ";
      if (bank.name.empty() && bank.cylinders.size() > 1) words += "from left to right:";
      if (!bank.name.empty()) words += bank.name + " bank:";
      for (const int cylinder : bank.cylinders)
        words += (words.empty() ? "" : " ") + std::to_string(cylinder);
    }
    return words;
  }

  void crank() {
    heading(29, "Turning the crank");
    line(place::firing.row, "Firing order",
         "As the manual says. Uneven firing is told in degrees: 1 at 0, 2 at 270.");
    sheet_.label(wide(place::firing), places_.layout.firing, style::entry_words);
    const std::string cylinders = std::to_string(cylinders_of(places_.layout));
    sheet_.check(
        place::firing,
        {.rule = written(
             "OR(NOT(add_in_there);IFERROR(MAX(CRANK.STOPS({x};;;\"cylinder\"))={n};FALSE()))",
             {{"x", relative(place::firing)}, {"n", cylinders}}),
         .title = "Firing order",
         .refusal = "Name each of the " + cylinders +
                    " cylinders once in the order of firing, such as 1-3-4-2; or give the degrees "
                    "of the crank at which each fires, from 0 to below 720: 1 at 0, 2 at 270."});
    constexpr int heads_row = place::opens_row - 1;
    sheet_.row_height(heads_row, 6);
    for (const Side side : {Side::exhaust, Side::inlet})
      sheet_.label(place::of(side, heads_row), word_for(side), style::table_head_centre);
    line(place::opens_row, "Opens, degrees before dead centre",
         "Inlet before top, exhaust before bottom. Blank: 20 and 60.");
    line(place::closes_row, "Closes, degrees after dead centre",
         "Inlet after bottom, exhaust after top. Blank: 60 and 20.");
    for (const Side side : {Side::exhaust, Side::inlet})
      for (const int row : {place::opens_row, place::closes_row})
        degrees(place::of(side, row), -180, "Valve timing");
    line(place::margin.row, "Clear of the lobe by, degrees",
         "At both ends, as the crank is set by eye. Blank: 10.");
    degrees(place::margin, 0, "Clear of the lobe");
    line(place::opened.row, "How shims are changed",
         "With the camshafts out every shim can be reached at once.");
    sheet_.style(wide(place::opened), style::entry_choice);
    sheet_.merge(wide(place::opened));
    choice(place::opened,
           written("\"{in}\";\"{out}\"", {{"in", place::cams_in_place}, {"out", place::cams_out}}),
           place::cams_in_place, "How shims are changed");
  }

  void degrees(At at, int least, std::string_view title) {
    const std::string from = std::to_string(least);
    sheet_.style(at, style::entry_choice);
    sheet_.check(at, {.rule = written("AND(ISNUMBER({x});{x}>={least};{x}<=180)",
                                      {{"x", relative(at)}, {"least", from}}),
                      .title = std::string(title),
                      .refusal = "Degrees of the crank: a number from " + from + " to 180."});
  }

  Sheet& sheet_;
  const Places& places_;
};

}  // namespace

void make_engine(Sheet& sheet, const Places& places) { EngineMaker(sheet, places).make(); }

}  // namespace shimwright::book
