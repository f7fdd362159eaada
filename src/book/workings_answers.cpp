// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = WorkingsMap;

constexpr std::string_view engine_first = "Engine has entries to be mended first";
constexpr int most_shown = 2;  // sentences in a box; the rest are counted

// Whether rows are about that table. What is wrong with a limit is told once, on Engine, and not
// again for each valve.
std::string about(std::string_view table, std::string_view tables, std::string_view columns) {
  std::string condition = written("({x}=\"{table}\")", {{"x", tables}, {"table", table}});
  if (table == "valves")
    for (const char* column : {"series", "min", "max", "aim", "doubt"})
      condition += written("*({x}<>\"{column}\")", {{"x", columns}, {"column", column}});
  return condition;
}

// A row on Shims is called by the number that stands before it.
std::string words_of(std::string_view table, const Map& map) {
  const std::string words = "$" + relative(map.troubles(Map::words).from);
  if (table != "shims") return words;
  return written("IF({row}>{numbered};\"\";\"row \"&{row}&\": \")&{words}",
                 {{"row", "$" + relative(map.troubles(Map::row).from)},
                  {"numbered", shims_place::spares + shims_place::singles},
                  {"words", words}});
}

// The sentence of this row where it is about that table and among the first few, else nothing.
std::string sentence_about(std::string_view table, const Map& map) {
  const At first_table = map.troubles(Map::table).from;
  const At first_column = map.troubles(Map::column).from;
  const auto so_far = [](At first) { return absolute(first) + ":$" + relative(first); };
  return written("=IFERROR(IF({mine};IF(SUMPRODUCT({all})<={most};{words};\"\");\"\");\"\")",
                 {{"mine", about(table, "$" + relative(first_table), "$" + relative(first_column))},
                  {"all", about(table, so_far(first_table), so_far(first_column))},
                  {"most", most_shown},
                  {"words", words_of(table, map)}});
}

// One column of a table function's answer, blank beyond its end. A single row would otherwise be
// repeated down the whole range, and further rows leave #N/A.
std::string column_of(std::string_view function, std::string_view part, const Area& area, At rows) {
  return written("=IF(ROW({area})-{before}<={rows};{function}(valves;shims;rules;\"{part}\");\"\")",
                 {{"area", area},
                  {"before", area.from.row},
                  {"rows", rows},
                  {"function", function},
                  {"part", part}});
}

std::string box(std::string_view first_cell, std::string_view sentences, std::string_view count) {
  return written(
      "=IF(NOT(add_in_there);\"Not checked: the Shimwright add-in is missing.\";"
      "IF(ISERROR({first});\"Not checked: the tables cannot be read.\";"
      "TEXTJOIN(CHAR(10);TRUE();{sentences})&IF({count}>{most};CHAR(10)&\"and \"&"
      "({count}-{most})&\" more\";\"\")))",
      {{"first", first_cell}, {"sentences", sentences}, {"count", count}, {"most", most_shown}});
}

std::string count_of(std::string_view table, const Map& map) {
  return written("SUMPRODUCT(IFERROR({all};0))",
                 {{"all", about(table, absolute(map.troubles(Map::table)),
                                absolute(map.troubles(Map::column)))}});
}

// How many sentences the lines of `all` are, those that a box only counts among them.
std::string sentences_in(const std::string& all, const Map& map) {
  const auto beyond = [&map](std::string_view table) {
    return written("IF({n}>{most};{n}-{most}-1;0)",
                   {{"n", count_of(table, map)}, {"most", most_shown}});
  };
  return written(
      "=IF({all}=\"\";0;LEN({all})-LEN(SUBSTITUTE({all};CHAR(10);\"\"))+1+{valves}+{shims})",
      {{"all", all}, {"valves", beyond("valves")}, {"shims", beyond("shims")}});
}

void make_troubles(Sheet& sheet, const Map& map, At crank_wrong) {
  heads(sheet, {0, map.troubles(Map::table).from.row - 1},
        {"table", "row", "column", "trouble", "on Head", "on Shims", "on Engine", "", "boxes"});
  const std::pair<Map::Trouble, const char*> parts[] = {
      {Map::table, "table"}, {Map::row, "row"}, {Map::column, "column"}, {Map::words, "trouble"}};
  for (const auto& [column, part] : parts)
    sheet.matrix(map.troubles(column), column_of("SHIM.CHECK", part, map.troubles(column),
                                                 map.fact(Map::troubles_found)));
  const At first = map.troubles(Map::on_head).from;
  sheet.formulas(first, {{sentence_about("valves", map), sentence_about("shims", map)}});
  sheet.fill_down(block(first, 2, Map::trouble_rows));
  // The limits alone, and the rules: what a person can mend on Engine.
  sheet.matrix(map.engine_troubles(), "=SHIM.CHECK(limits;nothing;rules;\"trouble\")");

  const std::string table = absolute(map.troubles(Map::table).from);
  sheet.formula(map.trouble_lines(Map::head_box),
                box(table,
                    written("IF({engine}=\"\";\"\";\"{hint}\");"
                            "IF({marks}=\"\";\"\";\"marks that stand for no size: \"&{marks});"
                            "{apart};{sentences}",
                            {{"engine", map.trouble_lines(Map::engine_box)},
                             {"hint", engine_first},
                             {"marks", written("TEXTJOIN(\", \";TRUE();{x})",
                                               {{"x", map.all(Map::mark_trouble)}})},
                             {"apart", map.fact(Map::apart_told)},
                             {"sentences", map.troubles(Map::on_head)}}),
                    count_of("valves", map)));
  const std::string ladders = absolute({map.ladder(0, Map::ladder_trouble),
                                        map.ladder(shims_place::ladders - 1, Map::ladder_trouble)});
  sheet.formula(
      map.trouble_lines(Map::shims_box),
      box(table, ladders + ";" + absolute(map.troubles(Map::on_shims)), count_of("shims", map)));
  const std::string engine = absolute(map.engine_troubles().from);
  sheet.formula(map.trouble_lines(Map::engine_box),
                written("=IF(NOT(add_in_there);\"Not checked: the Shimwright add-in is missing.\";"
                        "IF(ISERROR({first});\"Not checked: the limits cannot be read.\";"
                        "TEXTJOIN(CHAR(10);TRUE();IF({first}=\"nothing found\";\"\";{first});"
                        "{exhaust};{inlet};{crank})))",
                        {{"first", engine},
                         {"exhaust", map.limit(Side::exhaust, Map::limit_trouble)},
                         {"inlet", map.limit(Side::inlet, Map::limit_trouble)},
                         {"crank", crank_wrong}}));
  sheet.formula(
      map.trouble_lines(Map::all_box),
      written("=IF(NOT(add_in_there);{engine};TEXTJOIN(CHAR(10);TRUE();{engine};"
              "SUBSTITUTE(SUBSTITUTE({head};\"{hint}\"&CHAR(10);\"\");\"{hint}\";\"\");{shims}))",
              {{"hint", engine_first},
               {"head", map.trouble_lines(Map::head_box)},
               {"shims", map.trouble_lines(Map::shims_box)},
               {"engine", map.trouble_lines(Map::engine_box)}}));
  sheet.formula(map.trouble_lines(Map::all_count),
                sentences_in(absolute(map.trouble_lines(Map::all_box)), map));
}

}  // namespace

void make_answers(Sheet& sheet, const Map& map, At crank_wrong) {
  make_troubles(sheet, map, crank_wrong);
  const At order = map.order(Map::order_series).from;
  heads(sheet, {0, order.row - 1},
        {"to buy: series", "size", "count", "price", "cost", "", "left over: series", "size",
         "count"});
  const std::pair<int, const char*> buys[] = {{Map::order_series, "series"},
                                              {Map::order_size, "size"},
                                              {Map::order_count, "count"},
                                              {Map::order_price, "price"},
                                              {Map::order_cost, "cost"}};
  for (const auto& [column, part] : buys)
    sheet.matrix(map.order(column),
                 column_of("SHIM.ORDER", part, map.order(column), map.fact(Map::order_rows)));
  const std::pair<int, const char*> left[] = {
      {Map::surplus_series, "series"}, {Map::surplus_size, "size"}, {Map::surplus_count, "count"}};
  for (const auto& [column, part] : left)
    sheet.matrix(map.surplus(column),
                 column_of("SHIM.SURPLUS", part, map.surplus(column), map.fact(Map::surplus_rows)));
}

}  // namespace shimwright::book::workings
