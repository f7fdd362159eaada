// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = WorkingsMap;

constexpr int most_told = 40;  // sentences about one sheet; the rest are counted

// The functions' words, and those of the book's labels.
constexpr std::pair<const char*, const char*> said_in_the_book[] = {
    {"the clearance", "the gap"},
    {"the minimum clearance", "the smallest gap"},
    {"the maximum clearance", "the largest gap"},
    {"no minimum clearance", "no smallest gap"},
    {"no maximum clearance", "no largest gap"},
    {"above the maximum", "above the largest"},
    {"Valves, exhaust side", "Exhaust side"},
    {"Valves, inlet side", "Inlet side"},
    {"Rule \"\"touch good\"\"", "Change shims of good valves too"},
    {"Rule \"\"doubt\"\"", "Stay clear of the limits by the doubt"},
    {"Rule \"\"work\"\"", "Work for each shim changed"},
    {"Rule \"\"first\"\"", "Put first"}};

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
  std::string condition = written(
      "({x}=\"{table}\")*({placed}<>\"\")",
      {{"x", map.troubles(Map::table)}, {"table", table}, {"placed", map.troubles(Map::placed)}});
  if (table == "valves")
    for (const char* column : {"series", "min", "max", "aim", "doubt"})
      condition +=
          written("*({x}<>\"{column}\")", {{"x", map.troubles(Map::column)}, {"column", column}});
  return condition;
}

// The sentence with its place: a row on Shims is called by the number that stands before it. What
// is wrong with a row of sizes is told once, not again for each of its sizes.
std::string placed(const Map& map) {
  const auto own = [&map](Map::Trouble column) {
    return "$" + relative(map.troubles(column).from);
  };
  return written(
      "=IFERROR(IF(OR({table}<>\"shims\";{row}=0);{begun};IF({row}<={numbered};\"Row \"&{row}&"
      "\": \"&{words};IF({of}=\"\";{begun};IF(MATCH({of};{all};0)<ROW()-{before};\"\";"
      "\"Row of sizes \"&LEFT({of};1)&\": \"&IF(OR({column}=\"price\";{column}=\"series\");"
      "MID({words};FIND(\": \";{words})+2;999);{words})))));\"\")",
      {{"table", own(Map::table)},
       {"row", own(Map::row)},
       {"numbered", shims_place::spares + shims_place::singles},
       {"words", own(Map::words)},
       {"begun", begun(own(Map::words))},
       {"of", own(Map::of_sizes)},
       {"all", map.troubles(Map::of_sizes)},
       {"before", map.troubles(Map::of_sizes).from.row},
       {"column", own(Map::column)}});
}

std::string of_sizes(const Map& map) {
  const auto own = [&map](Map::Trouble column) {
    return "$" + relative(map.troubles(column).from);
  };
  return written(
      "=IFERROR(IF(AND({table}=\"shims\";{row}>{numbered});INDEX({sizes};{row}-{numbered})&\" \"&"
      "{column};\"\");\"\")",
      {{"table", own(Map::table)},
       {"row", own(Map::row)},
       {"numbered", shims_place::spares + shims_place::singles},
       {"sizes", Area{map.sale(0, Map::raw_ladder), map.sale(Map::sale_rows - 1, Map::raw_ladder)}},
       {"column", own(Map::column)}});
}

// The first few sentences about that table, a line each.
std::string sentences_about(std::string_view table, const Map& map) {
  return written(
      "IF({about}*(ROW({rows})<=IFERROR(SMALL(IF({about};ROW({rows}));{most});1048576));{words};"
      "\"\")",
      {{"about", about(table, map)},
       {"rows", map.troubles(Map::table)},
       {"most", most_told},
       {"words", map.troubles(Map::told)}});
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
       {"most", most_told}});
}

std::string count_of(std::string_view table, const Map& map) {
  return written("SUMPRODUCT(IFERROR({all};0))", {{"all", about(table, map)}});
}

// How many sentences the lines of `all` are, those that a box only counts among them.
std::string sentences_in(const std::string& all, const Map& map) {
  const auto beyond = [&map](std::string_view table) {
    return written("IF({n}>{most};{n}-{most}-1;0)",
                   {{"n", count_of(table, map)}, {"most", most_told}});
  };
  return written("=IF({all}=\"\";0;{lines}+{valves}+{shims})", {{"all", all},
                                                                {"lines", lines_in(all)},
                                                                {"valves", beyond("valves")},
                                                                {"shims", beyond("shims")}});
}

// What SHIM.CHECK says of the limits and the rules, a doubt once for both sides.
std::string sentences_of_engine(const Map& map) {
  const std::string words = absolute(map.engine_troubles(Map::engine_told));
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
void tell_in_unit(Sheet& sheet, const Area& words) {
  const std::string formula = written(
      "=IF(unit=\"inch\";IFERROR(REGEX({x};\"{length}\";FIXED(NUMBERVALUE(REGEX(REGEX({x};"
      "\"{length}\");\"-?[0-9.]+\");\".\")/mm_each;decimals;TRUE())&\" in\");{x});{x})",
      {{"x", relative(words.from)}, {"length", "(?<![\"\"0-9.])-?[0-9]+(\\.[0-9]+)? mm(?![a-z])"}});
  sheet.formula(right_of(words.from), formula);
  sheet.fill_down({right_of(words.from), right_of(words.to)});
}

void tell_in_unit_from(Sheet& sheet, Area words) {
  for (int step = 0; step < Map::lengths_told; ++step) {
    tell_in_unit(sheet, words);
    words = {right_of(words.from), right_of(words.to)};
  }
}

// Out of text in a column the office completes the numbers typed there.
std::string told_as_text(const std::string& where) {
  return written(
      "IF({where}=\"\";\"\";\"Numbers that are text: \"&{where}&\". They are read, but type them "
      "anew: from text Calc completes other numbers typed in the column\")",
      {{"where", where}});
}

std::string rows_of_sizes_as_text(const Map& map) {
  namespace place = shims_place;
  const auto rows = [](At first, int count, int before, At read) {
    const Area sizes = block(right_of(first), 1, count);
    return written("IF(ISTEXT({x})*ISNUMBER({read});\"row \"&(ROW({x})-{before});\"\")",
                   {{"x", on(sheet_name::shims, sizes)},
                    {"read", block(read, 1, count)},
                    {"before", first.row - before}});
  };
  return "TEXTJOIN(\", \";TRUE();" +
         rows(place::first_spare, place::spares, 0, map.spare(0, Map::stock_size)) + ";" +
         rows(place::first_single, place::singles, place::spares, map.single(0, Map::stock_size)) +
         ")";
}

std::string mended_first(std::string_view sheet) {
  return "\"" + std::string(sheet) + " has entries to be mended first\"";
}

// What the sheet tells: where the plan waits for another sheet, that one comes first. Without its
// limits Head has no verdict, so there every remark on Engine counts.
void make_box_lines(Sheet& sheet, const Map& map) {
  const auto where = [&map](Map::Fact grave, Map::Box box, std::string_view name) {
    return written("IF(AND({grave};{box}<>\"\");{first};\"\")", {{"grave", map.fact(grave)},
                                                                 {"box", map.trouble_lines(box)},
                                                                 {"first", mended_first(name)}});
  };
  const std::string engine =
      written("IF({engine}=\"\";\"\";{first})", {{"engine", map.trouble_lines(Map::engine_box)},
                                                 {"first", mended_first(sheet_name::engine)}});
  const std::string head = where(Map::head_grave, Map::head_box, sheet_name::head);
  const std::string shims = where(Map::shims_grave, Map::shims_box, sheet_name::shims);
  const std::pair<Map::Box, std::string> boxes[] = {{Map::head_box, engine + ";" + shims},
                                                    {Map::shims_box, engine + ";" + head},
                                                    {Map::engine_box, head + ";" + shims}};
  for (const auto& [box, others] : boxes)
    sheet.formula(map.box_lines(box),
                  written("=IF(NOT(add_in_there);{own};TEXTJOIN(CHAR(10);TRUE();{others};{own}))",
                          {{"own", map.trouble_lines(box)}, {"others", others}}));
}

void make_troubles(Sheet& sheet, const Map& map, At crank_wrong) {
  heads(sheet, {0, map.troubles(Map::table).from.row - 1},
        {"table", "row", "column", "trouble", "of sizes", "placed", "in the unit", "", "", "",
         "Engine: column", "trouble", "in the unit", "", "", "", "boxes", "as shown"});
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

  sheet.formula(map.troubles(Map::of_sizes).from, of_sizes(map));
  sheet.fill_down(map.troubles(Map::of_sizes));
  sheet.formula(map.troubles(Map::placed).from, placed(map));
  sheet.fill_down(map.troubles(Map::placed));
  tell_in_unit_from(sheet, map.troubles(Map::placed));
  tell_in_unit_from(sheet, map.engine_troubles(Map::engine_words));

  const std::string table = absolute(map.troubles(Map::table).from);
  sheet.matrix(map.trouble_lines(Map::head_box),
               box(table,
                   written("IF({marks}=\"\";\"\";\"Marks that stand for no size: \"&{marks});"
                           "{apart};{text};{sentences}",
                           {{"marks", written("TEXTJOIN(\", \";TRUE();{x})",
                                              {{"x", map.all(Map::mark_trouble)}})},
                            {"apart", map.fact(Map::apart_told)},
                            {"text", told_as_text("TEXTJOIN(\", \";TRUE();" +
                                                  absolute(map.all(Map::as_text)) + ")")},
                            {"sentences", sentences_about("valves", map)}}),
                   count_of("valves", map)));
  const std::string ladders = absolute({map.ladder(0, Map::ladder_trouble),
                                        map.ladder(shims_place::ladders - 1, Map::ladder_trouble)});
  sheet.matrix(map.trouble_lines(Map::shims_box),
               box(table,
                   ladders + ";" + told_as_text(rows_of_sizes_as_text(map)) + ";" +
                       sentences_about("shims", map),
                   count_of("shims", map)));
  const std::string engine = written(
      "TEXTJOIN(CHAR(10);TRUE();IF(AND({unit}<>\"\";{unit}<>\"mm\";{unit}<>\"inch\");\"Unit: "
      "enter mm or inch; until then all is in mm\";\"\");{sentences};{exhaust};{inlet};{crank})",
      {{"unit", on(sheet_name::engine, engine_place::unit)},
       {"sentences", sentences_of_engine(map)},
       {"exhaust", map.limit(Side::exhaust, Map::limit_trouble)},
       {"inlet", map.limit(Side::inlet, Map::limit_trouble)},
       {"crank", crank_wrong}});
  sheet.matrix(map.trouble_lines(Map::engine_box),
               written("=IF(NOT(add_in_there);\"Not checked: the Shimwright add-in is missing.\";"
                       "IF(ISERROR({first});\"Not checked: the limits cannot be read.\";{told}))",
                       {{"first", map.engine_troubles(Map::engine_words).from},
                        {"told", in_the_books_words(engine)}}));
  sheet.formula(map.trouble_lines(Map::all_box),
                written("=IF(NOT(add_in_there);{engine};TEXTJOIN(CHAR(10);TRUE();{engine};"
                        "{head};SUBSTITUTE({shims};\"Row \";\"Shims, row \")))",
                        {{"head", map.trouble_lines(Map::head_box)},
                         {"shims", map.trouble_lines(Map::shims_box)},
                         {"engine", map.trouble_lines(Map::engine_box)}}));
  sheet.formula(map.trouble_lines(Map::all_count),
                sentences_in(absolute(map.trouble_lines(Map::all_box)), map));
  make_box_lines(sheet, map);
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
