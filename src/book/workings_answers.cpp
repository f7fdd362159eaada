// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = WorkingsMap;

constexpr std::string_view engine_first = "Engine has entries to be mended first";
constexpr int most_shown = 2;  // sentences in a box; the rest are counted

// The functions' words, and those of the book's labels.
constexpr std::pair<const char*, const char*> said_in_the_book[] = {
    {"a clearance", "a gap"},
    {"the clearance", "the gap"},
    {"a minimum clearance", "the smallest gap"},
    {"the minimum clearance", "the smallest gap"},
    {"a maximum clearance", "the largest gap"},
    {"the maximum clearance", "the largest gap"},
    {"above the maximum", "above the largest"},
    {"Valves, exhaust side", "Exhaust side"},
    {"Valves, inlet side", "Inlet side"},
    {"Rule \"\"touch good\"\"", "Open good valves too"},
    {"Rule \"\"doubt\"\"", "Stay clear of the limits by the doubt"},
    {"Rule \"\"work\"\"", "Work for each valve opened"},
    {"Rule \"\"first\"\"", "Put first"},
    {" in mm is due", " is due"}};

std::string in_the_books_words(std::string text) {
  for (const auto& [theirs, ours] : said_in_the_book)
    text = written("SUBSTITUTE({text};\"{theirs}\";\"{ours}\")",
                   {{"text", text}, {"theirs", theirs}, {"ours", ours}});
  return text;
}

// With a capital letter.
std::string begun(const std::string& words) {
  return written("UPPER(LEFT({x};1))&MID({x};2;999)", {{"x", words}});
}

// Which rows are about that table. What is wrong with a limit is told once, on Engine, and not
// again for each valve.
std::string about(std::string_view table, const Map& map) {
  std::string condition =
      written("({x}=\"{table}\")", {{"x", map.troubles(Map::table)}, {"table", table}});
  if (table == "valves")
    for (const char* column : {"series", "min", "max", "aim", "doubt"})
      condition +=
          written("*({x}<>\"{column}\")", {{"x", map.troubles(Map::column)}, {"column", column}});
  return condition;
}

// A row on Shims is called by the number that stands before it.
std::string words_of(std::string_view table, const Map& map) {
  const std::string words = absolute(map.troubles(Map::words));
  if (table != "shims") return begun(words);
  return written("IF({row}>{numbered};{begun};\"Row \"&{row}&\": \"&{words})",
                 {{"row", map.troubles(Map::row)},
                  {"numbered", shims_place::spares + shims_place::singles},
                  {"begun", begun(words)},
                  {"words", words}});
}

// The first few sentences about that table, a line each.
std::string sentences_about(std::string_view table, const Map& map) {
  return written(
      "IF({about}*(ROW({rows})<=IFERROR(SMALL(IF({about};ROW({rows}));{most});1048576));{words};"
      "\"\")",
      {{"about", about(table, map)},
       {"rows", map.troubles(Map::table)},
       {"most", most_shown},
       {"words", words_of(table, map)}});
}

// One column of a table function's answer, blank beyond its end. A single row would otherwise be
// repeated down the whole range, and further rows leave #N/A.
std::string column_of(std::string_view asked, std::string_view part, const Area& area, At rows) {
  return written("=IF(ROW({area})-{before}<={rows};{asked};\"{part}\");\"\")",
                 {{"area", area},
                  {"before", area.from.row},
                  {"rows", rows},
                  {"asked", asked},
                  {"part", part}});
}

std::string box(std::string_view first_cell, std::string_view sentences, std::string_view count) {
  const std::string told = written("TEXTJOIN(CHAR(10);TRUE();{x})", {{"x", sentences}});
  return written(
      "=IF(NOT(add_in_there);\"Not checked: the Shimwright add-in is missing.\";"
      "IF(ISERROR({first});\"Not checked: the tables cannot be read.\";"
      "{told}&IF({count}>{most};CHAR(10)&\"and \"&({count}-{most})&\" more\";\"\")))",
      {{"first", first_cell},
       {"told", in_the_books_words(told)},
       {"count", count},
       {"most", most_shown}});
}

std::string count_of(std::string_view table, const Map& map) {
  return written("SUMPRODUCT(IFERROR({all};0))", {{"all", about(table, map)}});
}

// How many sentences the lines of `all` are, those that a box only counts among them.
std::string sentences_in(const std::string& all, const Map& map) {
  const auto beyond = [&map](std::string_view table) {
    return written("IF({n}>{most};{n}-{most}-1;0)",
                   {{"n", count_of(table, map)}, {"most", most_shown}});
  };
  return written("=IF({all}=\"\";0;{lines}+{valves}+{shims})", {{"all", all},
                                                                {"lines", lines_in(all)},
                                                                {"valves", beyond("valves")},
                                                                {"shims", beyond("shims")}});
}

// What SHIM.CHECK says of the limits and the rules, a doubt once for both sides.
std::string sentences_of_engine(const Map& map) {
  const std::string words = absolute(map.engine_troubles(Map::engine_words));
  return written(
      "IF({words}=\"nothing found\";\"\";IF({column}<>\"doubt\";{begun};"
      "IF(ROW({words})-{before}>MATCH(\"doubt\";{column};0);\"\";{begun_doubt})))",
      {{"words", words},
       {"column", map.engine_troubles(Map::engine_column)},
       {"before", map.engine_troubles(Map::engine_words).from.row},
       {"begun", begun(words)},
       {"begun_doubt", begun("MID(" + words + ";IFERROR(FIND(\": \";" + words + ");-1)+2;999)")}});
}

// The functions tell lengths in mm. Each step tells the first of those left in inches, where these
// are the book's unit; a number in quotation marks is what a person typed.
void tell_in_unit(Sheet& sheet, const Map& map, Map::Box box) {
  for (int step = 1; step <= Map::lengths_told; ++step)
    sheet.formula(
        map.told_in_steps(box, step),
        written(
            "=IF(unit=\"inch\";IFERROR(REGEX({x};\"{length}\";FIXED(NUMBERVALUE(REGEX(REGEX({x};"
            "\"{length}\");\"-?[0-9.]+\");\".\")/mm_each;decimals;TRUE())&\" in\");{x});{x})",
            {{"x", map.told_in_steps(box, step - 1)},
             {"length", "(?<![\"\"0-9.])-?[0-9]+(\\.[0-9]+)? mm(?![a-z])"}}));
}

void make_troubles(Sheet& sheet, const Map& map, At crank_wrong) {
  heads(sheet, {0, map.troubles(Map::table).from.row - 1},
        {"table", "row", "column", "trouble", "", "Engine: column", "trouble", "", "boxes"});
  const std::pair<Map::Trouble, const char*> parts[] = {
      {Map::table, "table"}, {Map::row, "row"}, {Map::column, "column"}, {Map::words, "trouble"}};
  for (const auto& [column, part] : parts)
    sheet.matrix(map.troubles(column),
                 column_of("SHIM.CHECK(valves;shims;rules", part, map.troubles(column),
                           map.fact(Map::troubles_found)));
  // The limits alone, and the rules: what a person can mend on Engine.
  const std::pair<Map::EngineTrouble, const char*> of_engine[] = {{Map::engine_column, "column"},
                                                                  {Map::engine_words, "trouble"}};
  for (const auto& [column, part] : of_engine)
    sheet.matrix(map.engine_troubles(column),
                 column_of("SHIM.CHECK(limits;nothing;rules", part, map.engine_troubles(column),
                           map.fact(Map::engine_troubles_found)));

  const auto raw = [&map](Map::Box box) { return map.told_in_steps(box, 0); };
  const std::string table = absolute(map.troubles(Map::table).from);
  sheet.matrix(raw(Map::head_box),
               box(table,
                   written("IF({engine}=\"\";\"\";\"{hint}\");"
                           "IF({marks}=\"\";\"\";\"Marks that stand for no size: \"&{marks});"
                           "{apart};{sentences}",
                           {{"engine", raw(Map::engine_box)},
                            {"hint", engine_first},
                            {"marks", written("TEXTJOIN(\", \";TRUE();{x})",
                                              {{"x", map.all(Map::mark_trouble)}})},
                            {"apart", map.fact(Map::apart_told)},
                            {"sentences", sentences_about("valves", map)}}),
                   count_of("valves", map)));
  const std::string ladders = absolute({map.ladder(0, Map::ladder_trouble),
                                        map.ladder(shims_place::ladders - 1, Map::ladder_trouble)});
  sheet.matrix(raw(Map::shims_box),
               box(table, ladders + ";" + sentences_about("shims", map), count_of("shims", map)));
  const std::string engine = written(
      "TEXTJOIN(CHAR(10);TRUE();IF(AND({unit}<>\"\";{unit}<>\"mm\";{unit}<>\"inch\");\"Unit: "
      "enter mm or inch; until then all is in mm\";\"\");{sentences};{exhaust};{inlet};{crank})",
      {{"unit", on(sheet_name::engine, engine_place::unit)},
       {"sentences", sentences_of_engine(map)},
       {"exhaust", map.limit(Side::exhaust, Map::limit_trouble)},
       {"inlet", map.limit(Side::inlet, Map::limit_trouble)},
       {"crank", crank_wrong}});
  sheet.matrix(raw(Map::engine_box),
               written("=IF(NOT(add_in_there);\"Not checked: the Shimwright add-in is missing.\";"
                       "IF(ISERROR({first});\"Not checked: the limits cannot be read.\";{told}))",
                       {{"first", map.engine_troubles(Map::engine_words).from},
                        {"told", in_the_books_words(engine)}}));
  for (const Map::Box told : {Map::head_box, Map::shims_box, Map::engine_box})
    tell_in_unit(sheet, map, told);
  sheet.formula(map.trouble_lines(Map::all_box),
                written("=IF(NOT(add_in_there);{engine};TEXTJOIN(CHAR(10);TRUE();{engine};"
                        "SUBSTITUTE(SUBSTITUTE({head};\"{hint}\"&CHAR(10);\"\");\"{hint}\";\"\");"
                        "SUBSTITUTE({shims};\"Row \";\"Shims, row \")))",
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
    sheet.matrix(map.order(column), column_of("SHIM.ORDER(valves;shims;rules", part,
                                              map.order(column), map.fact(Map::order_rows)));
  const std::pair<int, const char*> left[] = {
      {Map::surplus_series, "series"}, {Map::surplus_size, "size"}, {Map::surplus_count, "count"}};
  for (const auto& [column, part] : left)
    sheet.matrix(map.surplus(column), column_of("SHIM.SURPLUS(valves;shims;rules", part,
                                                map.surplus(column), map.fact(Map::surplus_rows)));
}

}  // namespace shimwright::book::workings
