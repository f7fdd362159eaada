// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/styles.hpp"
#include "core/bad_input.hpp"
#include "core/crank.hpp"
#include "core/firing_written.hpp"

namespace shimwright::book {
namespace {

constexpr int longest_shim_mm = 20;  // as the check of a shim's thickness says

}  // namespace

std::string titled(std::string_view sheet) {
  return written("=IF(engine_name=\"\";\"{sheet}\";engine_name&\" \u00b7 {sheet}\")",
                 {{"sheet", sheet}});
}

void make_trouble_box(Sheet& sheet, const Area& area, const std::string& sentences,
                      std::vector<Grade> grades) {
  const std::string_view begin = sheet.name() == sheet_name::engine
                                     ? "Begin here: enter the smallest and the largest gap allowed."
                                     : "Begin on Engine: the limits are not entered yet.";
  sheet.result(area,
               written("=IF({words}<>\"\";{words};IF(COUNT(limits)=0;\"{begin}\";"
                       "\"Nothing found amiss in the entries.\"))",
                       {{"words", sentences}, {"begin", begin}}),
               style::trouble_box);
  grades.push_back(
      {written("{words}<>\"\"", {{"words", sentences}}), std::string(style::trouble_found)});
  sheet.grade(area, grades);
}

std::string lines_in(const std::string& cell) {
  return written("(LEN({x})-LEN(SUBSTITUTE({x};CHAR(10);\"\"))+1)", {{"x", cell}});
}

std::string first_lines(const std::string& cell, int most, std::string_view rest) {
  return written(
      "IF({lines}<={most};{x};LEFT({x};FIND(CHAR(1);SUBSTITUTE({x};CHAR(10);CHAR(1);{shown})))&"
      "{rest})",
      {{"lines", lines_in(cell)},
       {"x", cell},
       {"most", most},
       {"shown", most - 1},
       {"rest", rest}});
}

void make_banner(Sheet& sheet, const Area& area) {
  // NOW is worked out anew whenever the book is opened; the text kept from the last time would
  // tell a reader without the add-in that it is there.
  sheet.result(
      area,
      "=IFERROR(IF(NOW()>0;\"Shimwright \";\"\")&SHIM.VERSION();\"The Shimwright add-in is "
      "missing: nothing is calculated. Install it, then open this book again.\")",
      style::banner);
  sheet.grade(area, {{"NOT(add_in_there)", std::string(style::trouble_found)}});
}

int lines_of_stops(const Layout& layout, int letters) {
  constexpr std::size_t between = 40;  // `Stop 2: `, `; valves open to the gauge: `
  constexpr std::size_t below = words_of_usual_timing.size() + words_of_manual_first.size();
  try {
    const Firing firing = firing_written(layout.firing);
    const std::vector<CrankStop> stops = crank_stops(firing);
    std::size_t lines = 1 + below / static_cast<std::size_t>(letters);
    for (std::size_t i = 0; i < stops.size(); ++i)
      lines +=
          1 + (turn_in_words(firing, stops, i).size() + between + reach_in_words(stops[i]).size()) /
                  static_cast<std::size_t>(letters);
    return static_cast<int>(lines);
  } catch (const BadInput&) {
    return 6;  // of an engine whose firing is still to be entered
  }
}

std::string size_marked(const std::string& cell) {
  return written(
      "IF(AND(unit=\"inch\";mark_scheme=\"auto\";"
      "LEN(SUBSTITUTE(SUBSTITUTE({x};\".\";\"\");\",\";\"\"))<LEN({x}));"
      "IF(SHIM.MM({x};\"in\")>{longest};NA();SHIM.MM({x};\"in\"));SHIM.MM({x};mark_scheme))",
      {{"x", cell}, {"longest", longest_shim_mm}});
}

EntryCheck length_check(At first, double least_mm, double most_mm, std::string_view title,
                        std::string_view help, std::string_view refusal) {
  return {.kind = EntryCheck::Kind::condition,
          // Without the add-in nothing can be judged, and nothing is refused.
          .rule = written("OR(NOT(add_in_there);IFERROR(AND(LENGTH.MM({x};unit)>={least};"
                          "LENGTH.MM({x};unit)<={most});FALSE()))",
                          {{"x", relative(first)},
                           {"least", std::to_string(least_mm)},
                           {"most", std::to_string(most_mm)}}),
          .title = std::string(title),
          .help = std::string(help),
          .refusal = std::string(refusal)};
}

EntryCheck money_check(At first) {
  return {.rule = written("IFERROR(AND({x}>=0;{x}<=1000000);FALSE())", {{"x", relative(first)}}),
          .title = "Money",
          .refusal = "A sum of money: a number from 0 to a million."};
}

}  // namespace shimwright::book
