// SPDX-License-Identifier: MPL-2.0
//
// Read me first: what the book is for, what must never be done, the steps, and how far one is.
#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

using Map = WorkingsMap;

constexpr int last_column = 4;

constexpr const char* cautions[] = {
    "The engine\u2019s own manual, the local rules and a licensed mechanic come first. "
    "Nothing here replaces them.",
    "Engine cold, best left overnight. Ignition off, spark plugs out.",
    "Turn the crank only by hand, and only in the direction in which the engine runs.",
    "Never turn it while a valve is without its shim or a cam is not bolted down as the manual "
    "says.",
    "Keep shims clean and each in its marked place. Oil every shim before it goes in.",
    "After fitting, turn the crank by hand through two full turns and measure every gap again.",
};

struct Step {
  std::string_view sheet;
  const char* words;
};

constexpr Step steps[] = {
    {sheet_name::engine,
     "Name the engine, choose the unit, and enter the limits from its own manual. Check the shim "
     "series there too, and the firing order and angles: the crank stops follow from these."},
    {sheet_name::head,
     "With the engine cold, measure the gap at every valve with the cam\u2019s lobe away from it, "
     "and type it on the valve\u2019s card."},
    {sheet_name::head,
     "Take out the shims, one valve at a time, and put each back before you turn the crank. Type "
     "the mark; measure each with the micrometer and type that too: marks wear off, and shims wear "
     "thin. The shim of a good valve may stay in and unread, unless Engine has shims of good "
     "valves changed too."},
    {sheet_name::shims,
     "List the spares in the drawer and the sizes you can buy. Spares that stand in another sheet "
     "are pasted with Ctrl+Shift+V, then Values Only: Ctrl+V takes looks, locks and checks from "
     "the cells. Undo cures it."},
    {sheet_name::plan,
     "Read what to keep, move, fit or buy. If a dark box speaks, mend what it names first."},
    {sheet_name::plan,
     "Order what it says. Measure every shim that comes before you trust its mark: one of another "
     "size goes on Shims as a spare, and the plan is read anew."},
    {sheet_name::fit,
     "Fit the shims step by step, in this order and no other. Tick each step as you go."},
    {sheet_name::head,
     "Turn the crank by hand through two full turns and measure every gap again. In a copy of this "
     "book, clear every tick on Fit and type the new gaps, each with the mark and micrometer size "
     "of the shim now in that valve. On Shims, strike off the spares that went in and add the "
     "shims left over."},
};

class ReadMeMaker {
 public:
  ReadMeMaker(Sheet& sheet, const Places& places)
      : sheet_(sheet),
        layout_(places.layout),
        map_(places.count()),
        steps_(places),
        count_(places.count()) {}

  void make() {
    const double widths[] = {3, 12, 30, 128, 34};
    for (int column = 0; column <= last_column; ++column)
      sheet_.column_width(column, widths[column]);
    sheet_.row_height(0, 14);
    sheet_.result(line(0), "=IF(engine_name=\"\";\"Valve service\";engine_name)", style::title);
    sheet_.label(line(1),
                 "From feeler gauge to order list: enter what you measure, and this book tells "
                 "which valves are tight, good or loose, which shims to keep and move, and which "
                 "few to buy.",
                 style::text);
    sheet_.row_height(1, 11);
    make_banner(sheet_, line(2));
    sheet_.row_height(2, 5.5);
    write_cautions();
    write_steps();
    write_stops();
    write_progress();
    sheet_.print({{0, 0}, {last_column, row_}}, style::portrait);
    list_remarks();
    sheet_.protect();
  }

 private:
  static Area line(int row) { return {{1, row}, {last_column, row}}; }

  void heading(std::string_view words) {
    sheet_.row_height(row_++, 5);
    sheet_.style(line(row_), style::heading);
    sheet_.text({1, row_}, words);
    sheet_.row_height(row_++, 7);
  }

  void write_cautions() {
    heading("Before you begin");
    for (const char* words : cautions) {
      sheet_.label(line(row_), words, style::caution);
      sheet_.row_height(row_++, 7);
    }
  }

  void write_steps() {
    heading("The steps");
    int number = 0;
    for (const Step& step : steps) {
      sheet_.label(At{1, row_}, std::to_string(++number), style::number);
      sheet_.result(At{2, row_},
                    written("=HYPERLINK(\"#'{sheet}'.A1\";\"{sheet}\")", {{"sheet", step.sheet}}),
                    style::link);
      sheet_.label({{3, row_}, {last_column, row_}}, step.words, style::text);
      constexpr std::size_t one_line = 90;  // letters
      constexpr std::size_t two_lines = 185;
      const std::size_t letters = std::string_view(step.words).size();
      sheet_.row_height(row_++, letters <= one_line ? 7.5 : letters <= two_lines ? 10.5 : 14.5);
    }
  }

  void write_stops() {
    heading("Where to stop the crank");
    const Area area{{1, row_}, {last_column, row_}};
    const std::string wrong = in_workings(steps_.fact(StepsMap::crank_wrong));
    sheet_.result(
        area,
        written("=IF({wrong}<>\"\";{wrong};{said})",
                {{"wrong", wrong}, {"said", in_workings(steps_.fact(StepsMap::stops_said))}}),
        style::text);
    constexpr double line_mm = 4.4;
    constexpr int letters = 110;
    sheet_.row_height(row_++, 2 + line_mm * lines_of_stops(layout_, letters));
    sheet_.label(
        line(row_),
        "Firing dead centre: the piston at the top with all its cylinder\u2019s valves shut "
        "(top of compression).",
        style::text);
    sheet_.row_height(row_++, 6);
  }

  void bar(std::string_view words, const std::string& done, const std::string& of) {
    sheet_.label({{1, row_}, {2, row_}}, words, style::label);
    sheet_.result(At{3, row_}, written("=IFERROR({done}/{of};0)", {{"done", done}, {"of", of}}),
                  style::bar);
    sheet_.bar({3, row_}, style::bar_colour);
    sheet_.result(At{4, row_},
                  written("=IFERROR(IF({of}=0;\"\u2013\";{done}&\" of \"&{of});\"\u2013\")",
                          {{"done", done}, {"of", of}}),
                  style::tally);
    sheet_.row_height(row_++, 5);
    sheet_.row_height(row_++, 2.5);
  }

  // The words may be a formula. With a look of its own where the figure is not 0.
  void figure(std::string_view words, const std::string& formula, std::string_view look = {},
              std::vector<Grade> grades = {}) {
    const At at{3, row_};
    sheet_.result({{1, row_}, {2, row_}}, words, style::label);
    sheet_.result(at, "=IFERROR(" + formula + ";\"\u2013\")", style::answer);
    if (!look.empty())
      grades.push_back(
          {written("AND(ISNUMBER({x});{x}>0)", {{"x", relative(at)}}), std::string(look)});
    if (!grades.empty()) sheet_.grade(at, grades);
    sheet_.row_height(row_++, 7);
  }

  void write_progress() {
    heading("How far you are");
    sheet_.row_height(row_++, 2.5);
    const std::string all = std::to_string(count_);
    const auto known = [this](Map::Valve column) {
      return written("COUNT({x})", {{"x", in_workings(map_.all(column))}});
    };
    bar("gaps measured", known(Map::clearance), all);
    // A shim that stays in its valve whatever its size is not waited for.
    bar("needed shims known", known(Map::shim),
        written("({all}-SUMPRODUCT(0+({kept}<>\"\")))",
                {{"all", all}, {"kept", in_workings(map_.all(Map::kept))}}));
    const auto steps = [this](StepsMap::Fact which) { return in_workings(steps_.fact(which)); };
    bar("steps done", steps(StepsMap::steps_ticked), steps(StepsMap::steps_count));
    figure("remarks on the entries", remarks(), style::remark_found);
    const std::string to_list = in_workings(map_.fact(Map::to_list));
    figure("=IF(" + to_list + ";\"valves that want a shim\";\"valves left outside\")",
           written("SUMPRODUCT((actions=\"none\")+NOT({to_list})*({left}<>\"\"))",
                   {{"to_list", to_list}, {"left", in_workings(map_.all(Map::left_outside))}}),
           style::trouble_found, {{to_list, std::string(style::remark_found)}});
    const std::string done = steps(StepsMap::all_ticked);
    figure("=IF(" + done + ";\"shims changed\";\"shims to change\")",
           "SUMPRODUCT((actions=\"move\")+(actions=\"spare\")+(actions=\"buy\"))");
    figure("=IF(" + done + ";\"of these bought\";\"shims to buy\")",
           written("IF(plan_stands;SUM({x});NA())",
                   {{"x", in_workings(map_.order(Map::order_count))}}));
  }

  std::string remarks() const { return in_workings(map_.trouble_lines(Map::all_count)); }

  // All that the boxes may have no room for, below what goes on paper.
  void list_remarks() {
    constexpr int most = 40;
    const std::string all = in_workings(map_.trouble_lines(Map::all_box));
    row_ += 2;
    sheet_.result(
        line(row_),
        written(
            "=IF({all}=\"\";\"No remarks on the entries\";\"Remarks on the entries, all of them\")",
            {{"all", all}}),
        style::heading);
    for (int i = 1; i <= most; ++i) {
      ++row_;
      sheet_.result(
          line(row_),
          written(i < most ? "=IF({all}=\"\";\"\";IFERROR(REGEX({all};\"[^\\n]+\";;{i});\"\"))"
                           : "=IF({all}=\"\";\"\";IF({lines}<{i};\"\";\"and \"&({lines}-{i}+1)&"
                             "\" more: mend these first\"))",
                  {{"all", all}, {"i", i}, {"lines", lines_in(all)}}),
          style::text);
      sheet_.row_height(row_, 9);
    }
  }

  Sheet& sheet_;
  const EngineLayout& layout_;
  Map map_;
  StepsMap steps_;
  int count_;
  int row_ = 3;
};

}  // namespace

void make_read_me(Sheet& sheet, const Places& places) { ReadMeMaker(sheet, places).make(); }

}  // namespace shimwright::book
