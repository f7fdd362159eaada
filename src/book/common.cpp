// SPDX-License-Identifier: MPL-2.0
#include <algorithm>

#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "core/crank/crank.hpp"
#include "core/crank/firing_written.hpp"
#include "core/service/words/crank_words.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright::book {
namespace {

constexpr int longest_shim_mm = 20;  // as the check of a shim's thickness says

// About how many lines of how many letters find room in a box, in bold letters of that size.
class Room {
 public:
  Room(const Sheet::Size& box, double letter_pt)
      : letters_(static_cast<int>((box.width - 5) / (0.5 * letter_pt * mm_each_pt))),
        lines_(std::max(2, static_cast<int>(box.height / (1.15 * letter_pt * mm_each_pt)))) {}

  std::string is_too_small_for(const std::string& cell) const {
    return written("AND({x}<>\"\";LEN({first})<=LEN({x}))",
                   {{"first", first(cell, lines_)}, {"x", cell}});
  }

  // Whole lines of the text, and how many more there are; of a single line too long, its beginning.
  std::string filled_with(const std::string& cell) const {
    const std::string shown = first(cell, lines_ - 1);
    return written(
        "IF(LEN({all})>LEN({x});{x};IF({shown}=\"\";LEFT({x};{most})&\"\u2026\";{shown}&\"and \"&"
        "({lines}-LEN({shown})+LEN(SUBSTITUTE({shown};CHAR(10);\"\")))&\" {rest}\"))",
        {{"all", first(cell, lines_)},
         {"x", cell},
         {"shown", shown},
         {"most", letters_ * (lines_ - 1)},
         {"lines", lines_in(cell)},
         {"rest", words_of_the_rest}});
  }

 private:
  static constexpr double mm_each_pt = 25.4 / 72;

  static std::string up_to(int most) { return "{1," + std::to_string(most) + "}"; }

  // As many whole lines, each with its end, as come to so many lines in the box: each takes words
  // until the next would go beyond the edge.
  std::string first(const std::string& cell, int lines) const {
    return written(
        "IFERROR(REGEX({x}&CHAR(10);\"^(?:(?>[^\\n]{letters}[ \\n])){lines}(?<=\\n)\");\"\")",
        {{"x", cell}, {"letters", up_to(letters_)}, {"lines", up_to(lines)}});
  }

  int letters_;
  int lines_;
};

}  // namespace

std::string titled(std::string_view sheet) {
  return written("=IF(engine_name=\"\";\"{sheet}\";engine_name&\" \u00b7 {sheet}\")",
                 {{"sheet", sheet}});
}

void make_trouble_box(Sheet& sheet, const Area& area, const TroubleBox& box) {
  const Sheet::Size size = sheet.size_mm(area);
  const std::string_view begin = sheet.name() == sheet_name::engine
                                     ? "Begin here: enter the smallest and the largest gap allowed."
                                     : "Begin on Engine: the limits are not entered yet.";
  // Plan tells of all sheets.
  const std::string_view calm = sheet.name() == sheet_name::plan
                                    ? "Nothing found amiss in the entries."
                                    : "Nothing found amiss in the entries on this sheet.";
  constexpr double usual_pt = 8.5;
  constexpr double small_pt = 7;
  const Room last(size, box.may_shrink ? small_pt : usual_pt);
  sheet.result(area,
               written("=IF({told}<>\"\";{shown};IF(COUNT(limits)=0;\"{begin}\";\"{calm}\"))",
                       {{"told", box.told},
                        {"shown", last.filled_with(box.told)},
                        {"begin", begin},
                        {"calm", calm}}),
               style::trouble_box);
  std::vector<Grade> grades;
  if (box.may_shrink)
    grades.push_back(
        {Room(size, usual_pt).is_too_small_for(box.told), std::string(style::small_box)});
  grades.push_back(
      {written("{told}<>\"\"", {{"told", box.told}}), std::string(style::trouble_found)});
  sheet.grade(area, grades);
}

std::string lines_in(const std::string& cell) {
  return written("(LEN({x})-LEN(SUBSTITUTE({x};CHAR(10);\"\"))+1)", {{"x", cell}});
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

int lines_of_stops(const EngineLayout& layout, int letters) {
  constexpr std::size_t below = words_of_usual_timing.size() + words_of_manual_first.size();
  try {
    const Firing firing = firing_written(layout.firing);
    const std::vector<CrankStop> stops = crank_stops(firing);
    std::size_t lines = 1 + below / static_cast<std::size_t>(letters);
    for (std::size_t i = 0; i < stops.size(); ++i)
      lines +=
          1 + stop_in_words(firing, stops, i, Teller()).size() / static_cast<std::size_t>(letters);
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
          // Text is refused: Calc would complete the next number in the column from it.
          .rule = written(
              "OR(NOT(add_in_there);IFERROR(AND(ISNUMBER({x});LENGTH.MM({x};unit)>="
              "{least};LENGTH.MM({x};unit)<={most});FALSE()))",
              {{"x", relative(first)}, {"least", text_of(least_mm)}, {"most", text_of(most_mm)}}),
          .title = std::string(title),
          .help = std::string(help),
          .refusal = std::string(refusal) +
                     " Type the number alone, with the decimal mark that "
                     "this office shows in others."};
}

EntryCheck money_check(At first) {
  return {.rule = written("IFERROR(AND({x}>=0;{x}<=1000000);FALSE())", {{"x", relative(first)}}),
          .title = "Money",
          .refusal = "A sum of money: a number from 0 to a million."};
}

}  // namespace shimwright::book
