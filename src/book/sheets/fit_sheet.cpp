// SPDX-License-Identifier: MPL-2.0
//
// Fit: the steps of fitting the plan, in the order in which nothing is ever turned over an open
// valve: a checklist to print and tick at the bench.
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>

#include "book/fit_map.hpp"
#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

using Map = StepsMap;

constexpr double row_mm = 8;
constexpr int last_column = FitMap::done;
constexpr int caution_row = 2;
constexpr int said_row = 3;
constexpr int heading_row = FitMap::head_row - 1;
constexpr int most_rows_on_a_page = 40;
// In the box at its usual size; the last line of a sentence may be half empty.
constexpr int most_letters = 820;
constexpr int letters_of_a_line = 70;

constexpr std::string_view words_of_crank =
    "Turn the crank by hand only, only the way the engine runs, and never while a valve is without "
    "its shim. The engine\u2019s own manual comes first.";
constexpr std::string_view words_of_camshafts =
    "First the camshafts come out, as the engine\u2019s own manual says: crank position, timing "
    "marks, chain or belt, order of the bolts. Do not turn the crank while they are out.";

// What the function says before the one size that stands in no column.
constexpr std::string_view before_size = "no thicker than ";

class FitMaker {
 public:
  FitMaker(Sheet& sheet, const Places& places) : sheet_(sheet), map_(places), fit_(places) {}

  void make() {
    const double widths[] = {2, 9, 9, 17, 17, 17, 18, 104, 42, 5};
    for (int column = 0; column <= last_column + 1; ++column)
      sheet_.column_width(column, widths[column]);
    sheet_.row_heights(FitMap::first_row, last_row(), row_mm);
    sheet_.row_height(0, 11);
    sheet_.result(line(0), titled(sheet_.name()), style::title);
    make_banner(sheet_, line(1));
    top();
    heads();
    rows();
    grades();
    const bool one_page = fit_.rows <= most_rows_on_a_page;
    sheet_.print({{0, 0}, {last_column + 1, last_row()}},
                 one_page ? style::portrait : style::portrait_long);
    if (!one_page) repeat_heads();
    sheet_.protect();
  }

 private:
  int last_row() const { return FitMap::first_row + fit_.rows - 1; }

  static Area line(int row) { return {{1, row}, {last_column, row}}; }
  std::string fact(Map::Fact which) const { return in_workings(map_.fact(which)); }

  void top() {
    sheet_.result(
        line(caution_row),
        written("=IF({out};\"{camshafts}\";\"{crank}\")", {{"out", fact(Map::cams_out)},
                                                           {"camshafts", words_of_camshafts},
                                                           {"crank", words_of_crank}}),
        style::caution);
    sheet_.row_height(caution_row, 10);
    const Area said{{1, said_row}, {last_column, said_row + 1}};
    sheet_.result(
        said,
        written("=TEXTJOIN(CHAR(10);TRUE();IF({all};{next};{loud});IF({all};{loud};{next}))",
                {{"all", fact(Map::all_ticked)},
                 {"loud", fact(Map::fit_loud)},
                 {"next", fact(Map::fit_next)}}),
        style::trouble_box);
    sheet_.grade(
        said,
        {{written("LEN({x})+{each}*({lines}-1)>{most}", {{"x", said.from},
                                                         {"lines", lines_in(absolute(said.from))},
                                                         {"each", letters_of_a_line},
                                                         {"most", most_letters}}),
          std::string(style::small_box)},
         {written("{loud}<>\"\"", {{"loud", fact(Map::fit_loud)}}),
          std::string(style::trouble_found)},
         {fact(Map::all_ticked), std::string(style::fit_next)}});
    sheet_.row_heights(said_row, said_row + 1, 11);  // six lines
    sheet_.row_height(said_row + 2, 2.5);
  }

  void heads() {
    sheet_.style(line(heading_row), style::heading);
    sheet_.result(At{1, heading_row},
                  written("=IF({out};\"With the camshafts out\";\"Valve by valve, cams in place\")&"
                          "\"; sizes in \"&IF(unit=\"inch\";\"inches\";\"mm\")",
                          {{"out", fact(Map::cams_out)}}),
                  style::heading);
    sheet_.result({{FitMap::note, heading_row}, {last_column, heading_row}},
                  written("=IF({n}=0;\"\";\"list \"&{code}&\": \"&{ticked}&\" of \"&{n}&\" done\")",
                          {{"n", fact(Map::steps_count)},
                           {"code", fact(Map::list_code)},
                           {"ticked", fact(Map::steps_ticked)}}),
                  style::heading_tally);
    sheet_.row_height(heading_row, 7);
    const std::pair<const char*, std::string_view> words[] = {
        {"step", style::table_head_centre},   {"stop", style::table_head_centre},
        {"valve", style::table_head_left},    {"take out", style::table_head_centre},
        {"put in", style::table_head_centre}, {"from", style::table_head_left},
        {"note", style::table_head_left},     {"done", style::table_head_centre}};
    int column = FitMap::step;
    for (const auto& [word, head_style] : words)
      sheet_.label(At{column++, FitMap::head_row}, word, head_style);
    sheet_.row_height(FitMap::head_row, 6);
  }

  // Every row's formulas are the first's, moved down.
  void rows() {
    const auto cell = [this](Map::Steps column) {
      return written("$'{sheet}'.{at}",
                     {{"sheet", sheet_name::workings}, {"at", relative(map_.step_at(0, column))}});
    };
    const auto number = [](const std::string& x) {
      return written("=IF(ISNUMBER({x});{x};\"\")", {{"x", x}});
    };
    const auto length = [](const std::string& x) {
      return written("=IF(ISNUMBER({x});{x}/mm_each;\"\")", {{"x", x}});
    };
    sheet_.formulas(
        fit_.at(0, FitMap::step),
        {{number(cell(Map::step)),
          written("=IF(ISNUMBER({stop});{stop};IF(AND(ISNUMBER({step});{valve}<>\"\");\"\u2013\";"
                  "\"\"))",
                  {{"stop", cell(Map::step_stop)},
                   {"step", cell(Map::step)},
                   {"valve", cell(Map::step_valve)}}),
          written("=IF({valve}<>\"\";{valve};IF(ISNUMBER({step});\"turn\";\"\"))",
                  {{"valve", cell(Map::step_valve)}, {"step", cell(Map::step)}}),
          length(cell(Map::out)), length(cell(Map::in)), "=" + cell(Map::from), note(cell)}});
    sheet_.fill_down({fit_.at(0, FitMap::step), fit_.at(fit_.rows - 1, FitMap::note)});
    const std::string_view styles[] = {
        style::table_centre, style::table_centre, style::table_strong, style::table_size,
        style::table_size,   style::table_text,   style::table_note,   style::entry_tick};
    for (int column = FitMap::step; column <= last_column; ++column)
      sheet_.style(fit_.all(static_cast<FitMap::Column>(column)), styles[column - FitMap::step]);
    sheet_.check(fit_.all(FitMap::done),
                 {.kind = EntryCheck::Kind::choice,
                  .rule = tick(),
                  .title = "Done",
                  .refusal = "Choose the step from the list when it is done (Alt+Down, Enter); "
                             "leave it blank until then."});
  }

  // The words that tick the first row; those of the others count from it.
  std::string tick() const {
    return written("$'{sheet}'.${at}",
                   {{"sheet", sheet_name::workings}, {"at", relative(map_.step_at(0, Map::tick))}});
  }

  // The function's own words; a turn with the place to turn to, and a size to borrow in the book's
  // own unit, as on every other sheet.
  template <class Cell>
  std::string note(const Cell& cell) const {
    const WorkingsMap valves(fit_.valves);
    const std::string borrow = written(
        "IFERROR(LEFT({note};FIND(\"{before}\";{note})+{length})&"
        "FIXED(INDEX({shims};MATCH({valve};{names};0))/mm_each;decimals;TRUE())&"
        "IF(unit=\"inch\";\" in\";\" mm\")&"
        "MID({note};FIND(\" mm\";{note};FIND(\"{before}\";{note}))+3;999);{note})",
        {{"note", cell(Map::note)},
         {"before", before_size},
         {"length", static_cast<int>(before_size.size()) - 1},
         {"valve", cell(Map::step_valve)},
         {"shims", in_workings(valves.all(WorkingsMap::shim))},
         {"names", in_workings(valves.all(WorkingsMap::name))}});
    return written(
        "=IF(NOT(ISNUMBER({step}));\"\";IF({valve}=\"\";IF(ISNUMBER({stop});"
        "\"Every valve has its shim? By hand, \"&{place}&\".\";"
        "IF({cams_out};\"Shims in, camshafts back as the manual says? \";"
        "\"Every valve has its shim? \")&\"By hand, two full turns forwards; stop if it binds. "
        "Measure every gap again.\");IF(AND({out}=\"\";{in}=\"\");{borrow};{note})))",
        {{"step", cell(Map::step)},
         {"valve", cell(Map::step_valve)},
         {"stop", cell(Map::step_stop)},
         {"place", place_to_turn_to(cell)},
         {"cams_out", fact(Map::cams_out)},
         {"out", cell(Map::out)},
         {"in", cell(Map::in)},
         {"borrow", borrow},
         {"note", cell(Map::note)}});
  }

  // CRANK.STOPS counts from stop 1, which serves to find the first stop; from there on a hand
  // counts from where it is.
  template <class Cell>
  std::string place_to_turn_to(const Cell& cell) const {
    const std::string before = written(
        "$'{sheet}'.{at}",
        {{"sheet", sheet_name::workings}, {"at", relative(map_.step_at(-1, Map::step_stop))}});
    const auto angle = [this](const std::string& stop) {
      return written("INDEX({angles};MATCH({stop};{stops};0))",
                     {{"angles", in_workings(map_.stops(Map::angle))},
                      {"stop", stop},
                      {"stops", in_workings(map_.stops(Map::stop))}});
    };
    return written(
        "IFERROR(IF(ISNUMBER({before});LEFT({words};MIN(FIND(\":\";{words});FIND(\";\";{words}))-1)"
        "&"
        "\": \"&SUBSTITUTE(ROUND(MOD({to}-{from};720);1);\",\";\".\")&\"\u00b0 on from stop \"&"
        "{before};LEFT({words};FIND(\";\";{words})-1));\"turn forwards to stop \"&{stop})",
        {{"before", before},
         {"words", written("INDEX({lines};{stop})",
                           {{"lines", in_workings(map_.stop_lines(Map::line_words))},
                            {"stop", cell(Map::step_stop)}})},
         {"to", angle(cell(Map::step_stop))},
         {"from", angle(before)},
         {"stop", cell(Map::step_stop)}});
  }

  void grades() {
    const auto own = [this](FitMap::Column column) { return "$" + relative(fit_.at(0, column)); };
    const Grade no_step{own(FitMap::step) + "=\"\"", std::string(style::no_row)};
    const std::string ticked =
        written("AND({done}<>\"\";{done}={tick})", {{"done", own(FitMap::done)}, {"tick", tick()}});
    const Grade done{ticked, std::string(style::fit_done)};
    const Grade turn{own(FitMap::valve) + "=\"turn\"", std::string(style::fit_turn)};
    const Grade borrow{
        written(
            "AND({valve}<>\"turn\";{out}=\"\";{in}=\"\")",
            {{"valve", own(FitMap::valve)}, {"out", own(FitMap::out)}, {"in", own(FitMap::in)}}),
        std::string(style::fit_borrow)};
    const Grade stand_in{own(FitMap::from) + "=\"stand-in\"", std::string(style::fit_stand_in)};
    const Grade inches{"unit=\"inch\"", std::string(style::in_inches)};
    const Grade done_inches{written("AND({ticked};unit=\"inch\")", {{"ticked", ticked}}),
                            std::string(style::fit_done_inches)};
    sheet_.grade({fit_.at(0, FitMap::step), fit_.at(fit_.rows - 1, FitMap::valve)},
                 {no_step, done, turn, borrow});
    sheet_.grade({fit_.at(0, FitMap::out), fit_.at(fit_.rows - 1, FitMap::in)},
                 {no_step, done_inches, done, turn, borrow, inches});
    sheet_.grade({fit_.at(0, FitMap::from), fit_.at(fit_.rows - 1, FitMap::note)},
                 {no_step, done, turn, borrow, stand_in});
    sheet_.grade(fit_.all(FitMap::done),
                 {{written("AND({step}=\"\";{done}=\"\")",
                           {{"step", own(FitMap::step)}, {"done", own(FitMap::done)}}),
                   std::string(style::no_entry)},
                  done,
                  // Of another plan.
                  {own(FitMap::done) + "<>\"\"", std::string(style::trouble_found)}});
  }

  // On each further page.
  void repeat_heads() {
    const auto areas = as<css::sheet::XPrintAreas>(sheet_.sheet());
    areas->setPrintTitleRows(true);
    areas->setTitleRows(as<css::sheet::XCellRangeAddressable>(
                            sheet_.range({{0, FitMap::head_row}, {last_column, FitMap::head_row}}))
                            ->getRangeAddress());
  }

  Sheet& sheet_;
  Map map_;
  FitMap fit_;
};

}  // namespace

void make_fit(Sheet& sheet, const Places& places) { FitMaker(sheet, places).make(); }

}  // namespace shimwright::book
