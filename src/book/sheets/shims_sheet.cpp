// SPDX-License-Identifier: MPL-2.0
//
// Shims: the spares in the drawer, and the sizes that can be bought, as whole rows of sizes (from,
// to, step) or singly.
#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

namespace place = shims_place;
using Map = WorkingsMap;

constexpr double row_mm = 6.2;
constexpr int last_column = 13;
constexpr int last_row = 29;

void heading(Sheet& sheet, const Area& area, std::string_view words) {
  sheet.style(area, style::heading);
  sheet.text(area.from, words);
}

void heads(Sheet& sheet, At from, const std::vector<std::string>& words) {
  for (std::size_t i = 0; i < words.size(); ++i)
    sheet.label(right_of(from, static_cast<int>(i)), words[i],
                words[i] == "series"                           ? style::table_head_centre
                : words[i] == "note" || words[i] == "comes to" ? style::table_head_left
                                                               : style::table_head);
}

void series_entry(Sheet& sheet, const Area& area) {
  sheet.style(area, style::entry_choice);
  sheet.check(area, {.kind = EntryCheck::Kind::choice,
                     // Once where both sides take the same.
                     .rule = "IF(one_series=\"\";series;one_series)",
                     .title = "Shim series",
                     .refusal = "One of the two series named on Engine, or blank where both are "
                                "the same."});
}

void size_entry(Sheet& sheet, const Area& area) {
  sheet.style(area, style::entry_length);
  sheet.check(area, length_check(area.from, 0.3, 20, "Thickness", "",
                                 "A shim is between 0.3 and 20 mm thick (0.012 to 0.787 in), in "
                                 "the unit chosen on Engine. 275 is a mark: its size is 2.75 mm."));
  sheet.grade(area, {{"unit=\"inch\"", std::string(style::in_inches)}});
}

void count_entry(Sheet& sheet, const Area& area) {
  sheet.style(area, style::entry_count);
  sheet.check(area, {.rule = written("IFERROR(AND({x}>=0;{x}<=1000;{x}=INT({x}));FALSE())",
                                     {{"x", relative(area.from)}}),
                     .title = "How many",
                     .refusal = "A whole number of shims, from 0 to 1000."});
}

void money_entry(Sheet& sheet, const Area& area) {
  sheet.style(area, style::entry_money);
  sheet.check(area, money_check(area.from));
}

void make_spares(Sheet& sheet) {
  const At first = place::first_spare;
  heading(sheet, block({first.column - 1, first.row - 2}, 5, 1), "Spares at hand");
  heads(sheet, {first.column - 1, first.row - 1}, {"", "series", "size", "how many", "note"});
  for (int i = 0; i < place::spares; ++i)
    sheet.label(At{first.column - 1, first.row + i}, std::to_string(i + 1), style::row_number);
  series_entry(sheet, block(first, 1, place::spares));
  size_entry(sheet, block(right_of(first), 1, place::spares));
  count_entry(sheet, block(right_of(first, 2), 1, place::spares));
  sheet.style(block(right_of(first, 3), 1, place::spares), style::entry_text);
}

// What a row of sizes comes to, in words.
std::string tally(int index, const Map& map) {
  const At first = below(place::first_ladder, index);
  return written(
      "=IF(COUNTA({entries})=0;\"\";IF(NOT(add_in_there);\"\";IF({sizes}=0;"
      "\"gives no size: from, to and step\";IF({start}+{sizes}-1>{most};"
      "\"too many: the list holds {most}\";{sizes}&IF({sizes}=1;\" size\";\" sizes\")))))",
      {{"entries", block(right_of(first), 3, 1)},
       {"sizes", in_workings(map.ladder(index, Map::sizes))},
       {"start", in_workings(map.ladder(index, Map::start))},
       {"most", Map::sale_rows}});
}

void make_ladders(Sheet& sheet, const Map& map) {
  const At first = place::first_ladder;
  heading(sheet, {{first.column, first.row - 2}, {last_column, first.row - 2}},
          "On sale, as rows of sizes");
  heads(sheet, below(first, -1), {"series", "from", "to", "step", "price", "comes to"});
  for (int i = 0; i < place::ladders; ++i)
    sheet.label(At{first.column - 1, first.row + i}, std::to_string(i + 1), style::row_number);
  series_entry(sheet, block(first, 1, place::ladders));
  size_entry(sheet, block(right_of(first), 2, place::ladders));
  const Area step = block(right_of(first, 3), 1, place::ladders);
  sheet.style(step, style::entry_length);
  sheet.check(step, length_check(step.from, 0.001, 5, "Step", "",
                                 "From one size to the next: 0.001 to 5 mm (0.2 in), in the unit "
                                 "chosen on Engine."));
  sheet.grade(step, {{"unit=\"inch\"", std::string(style::in_inches)}});
  money_entry(sheet, block(right_of(first, 4), 1, place::ladders));
  for (int i = 0; i < place::ladders; ++i)
    sheet.result(right_of(below(first, i), 5), tally(i, map), style::table_tally);
}

// What one row of sizes offers to the plan: `28 mm: 21 sizes, 2.200 to 3.200 by 0.050`.
std::string offered(int index, const Map& map) {
  const auto sales = [&map](Map::Stock column) {
    return in_workings({map.sale(0, column), map.sale(Map::sale_rows - 1, column)});
  };
  const auto length = [](const std::string& x) {
    return written("FIXED({x}/mm_each;decimals;TRUE())", {{"x", x}});
  };
  const auto end = [&](std::string_view which) {
    return length(written("{which}IFS({sizes};{rows};{row})", {{"which", which},
                                                               {"sizes", sales(Map::raw_size)},
                                                               {"rows", sales(Map::raw_ladder)},
                                                               {"row", index + 1}}));
  };
  const auto count = [&](Map::Stock column) {
    return written("COUNTIF({rows};{row})", {{"rows", sales(column)}, {"row", index + 1}});
  };
  return written(
      "IF({n}=0;\"\";IF({series}=\"\";\"\";{series}&\": \")&{n}&IF({n}=1;\" size, \"&{from};\" "
      "sizes, \"&{from}&\" to \"&{to}&\" by \"&{step})&IF({cheaper}=0;\"\";\"; \"&{cheaper}&"
      "\" cheaper in another row\"))",
      {{"n", count(Map::raw_ladder)},
       {"series", in_workings(map.ladder(index, Map::ladder_series))},
       {"from", end("MIN")},
       {"to", end("MAX")},
       {"step", length(in_workings(map.ladder(index, Map::ladder_step)))},
       {"cheaper", "(" + count(Map::raw_ladder) + "-" + count(Map::which_ladder) + ")"}});
}

// What the rows above come to, a line each, so that there is always room.
void make_list(Sheet& sheet, const Map& map) {
  std::string rows;
  for (int i = 0; i < place::ladders; ++i) rows += ";" + offered(i, map);
  sheet.result(
      {below(place::first_ladder, place::ladders), {last_column, place::first_single.row - 3}},
      written("=IFERROR(IF({none};\"No rows of sizes are listed yet.\";\"Offered to the "
              "plan:\"&CHAR(10)&"
              "TEXTJOIN(CHAR(10);TRUE(){rows}));\"\")",
              {{"none", in_workings(map.fact(Map::sales)) + "=0"}, {"rows", rows}}),
      style::list);
}

void make_singles(Sheet& sheet) {
  const At first = place::first_single;
  heading(sheet, {{first.column, first.row - 2}, {last_column, first.row - 2}},
          "On sale singly, used ones too; numbered on from the spares");
  heads(sheet, below(first, -1), {"series", "size", "how many", "price"});
  // Counted on from the spares, as the check counts them.
  for (int i = 0; i < place::singles; ++i)
    sheet.label(At{first.column - 1, first.row + i}, std::to_string(place::spares + i + 1),
                style::row_number);
  series_entry(sheet, block(first, 1, place::singles));
  size_entry(sheet, block(right_of(first), 1, place::singles));
  count_entry(sheet, block(right_of(first, 2), 1, place::singles));
  money_entry(sheet, block(right_of(first, 3), 1, place::singles));
  sheet.label({{last_column, first.row}, {last_column, first.row + 5}},
              "How many: blank means one for a spare, and as many as you like for a size on sale. "
              "Leave price blank everywhere and the plan buys as few as it can.",
              style::list);
}

}  // namespace

void make_shims(Sheet& sheet, const Places& places) {
  const Map map(places.count());
  const double widths[] = {2, 7, 20, 20, 18, 48, 2, 6, 22, 21, 21, 21, 21, 44};
  for (int column = 0; column <= last_column; ++column) sheet.column_width(column, widths[column]);
  sheet.row_heights(0, last_row, row_mm);
  sheet.row_height(0, 11);
  sheet.row_height(3, 3);
  sheet.result({{1, 0}, {7, 0}}, titled(sheet.name()), style::title);
  sheet.result({{1, 1}, {7, 2}},
               written("=\"All sizes in \"&IF(unit=\"inch\";\"inches\";\"mm\")&\". {paste}\"",
                       {{"paste", words_of_pasting}}),
               style::list);
  make_trouble_box(sheet, {{8, 0}, {last_column, 2}},
                   {.told = in_workings(map.box_lines(Map::shims_box))});
  make_spares(sheet);
  make_ladders(sheet, map);
  make_list(sheet, map);
  make_singles(sheet);
  sheet.print({{0, 0}, {last_column, last_row}}, style::landscape);
  sheet.protect();
}

}  // namespace shimwright::book
