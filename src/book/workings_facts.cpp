// SPDX-License-Identifier: MPL-2.0
//
// Workings that hold for the whole engine: the limits of either side, the rules of the plan, and
// what is told of the plan as one.
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = WorkingsMap;

void make_limits(Sheet& sheet, const Map& map) {
  heads(sheet, {0, map.limits().from.row - 1},
        {"limits", "series", "", "", "min", "max", "aim", "doubt", "", "trouble"});
  for (const Side side : {Side::exhaust, Side::inlet}) {
    const auto engine = [side](int row) { return on_engine(engine_place::of(side, row)); };
    sheet.text(map.limit(side, Map::name), "valves, " + word_for(side) + " side");
    sheet.formula(map.limit(side, Map::series), entered(engine(engine_place::series_row)));
    sheet.formula(map.limit(side, Map::min), entered_length(engine(engine_place::min_row)));
    sheet.formula(map.limit(side, Map::max), entered_length(engine(engine_place::max_row)));
    // A single blank cell would reach the function as a bias of 0.
    sheet.formula(map.limit(side, Map::aim),
                  written("=IFERROR(IFERROR(IF({bias}=\"\";CLEARANCE.AIM({min};{max});"
                          "CLEARANCE.AIM({min};{max};{bias}));CLEARANCE.AIM({min};{max}));\"\")",
                          {{"bias", engine(engine_place::bias_row)},
                           {"min", map.limit(side, Map::min)},
                           {"max", map.limit(side, Map::max)}}));
    sheet.formula(map.limit(side, Map::doubt), "=doubt");
    sheet.formula(
        map.limit(side, Map::limit_trouble),
        written(
            "=TEXTJOIN(CHAR(10);TRUE();IF({bias}=\"\";\"\";IF(ISERROR(CLEARANCE.AIM(0;1;{bias}));"
            "\"Where to aim, {side}: a number from 0 to 1 is due; 0.75 is taken\";\"\"));"
            "IF(AND(COUNT({readings})>0;OR({min}=\"\";{max}=\"\"));"
            "\"Enter the smallest and the largest gap allowed, {side}\";\"\"))",
            {{"bias", engine(engine_place::bias_row)},
             {"side", word_for(side)},
             {"readings", map.all(Map::clearance)},
             {"min", map.limit(side, Map::min)},
             {"max", map.limit(side, Map::max)}}));
  }
}

void make_rules(Sheet& sheet, const Map& map) {
  const At first = map.rules().from;
  heads(sheet, {0, first.row - 1}, {"rules", ""});
  const std::pair<const char*, At> rules[] = {{"touch good", engine_place::touch_good},
                                              {"work", engine_place::work},
                                              {"doubt", engine_place::use_doubt},
                                              {"first", engine_place::first}};
  int row = 0;
  for (const auto& [name, place] : rules) {
    sheet.text(below(first, row), name);
    sheet.formula(right_of(below(first, row++)), entered(on_engine(place)));
  }
}

std::string said_no(At at) {
  return written(
      "OR({x}=FALSE();{x}=0;ISNUMBER(FIND(\"|\"&LOWER(TRIM({x}))&\"|\";\"|no|false|\")))",
      {{"x", at}});
}

// Valves whose shim stays though they read outside their limits, by name as long as these are few.
std::string stay_outside(const Map& map) {
  const auto told = [&map](const std::string& which, std::string_view why) {
    const std::string all = written("IFERROR({which};FALSE())", {{"which", which}});
    return written(
        "IF(SUM(--{all})=0;\"\";{named}&{stay}&\"{why}\")",
        {{"all", all},
         {"named", named(all, map)},
         {"stay", one_or_more(all, " stays outside its limits: ", " stay outside their limits: ")},
         {"why", why}});
  };
  return written(
      "=IF(NOT(plan_stands);\"\";TEXTJOIN(CHAR(10);TRUE();{left};{none}))",
      {{"left", told(written("({x}<>\"\")", {{"x", map.all(Map::left_outside)}}),
                     "left alone, as told on Head.")},
       {"none",
        written("IF({nothing};IF(SUMPRODUCT(--({x}=\"none\"))=0;\"\";\"Some gaps are outside their "
                "limits: list the spares and the sizes on sale on Shims first.\");{told})",
                {{"nothing", map.fact(Map::nothing_listed)},
                 {"x", map.all(Map::action)},
                 {"told", told(written("({x}=\"none\")", {{"x", map.all(Map::action)}}),
                               "no size listed on Shims serves. The size needed stands in the "
                               "valve\u2019s row: find one and list it.")}})}});
}

// Valves that come out so near a limit that an ordinary doubt of the reading would leave them open
// (common practice, no source), as long as no doubt is entered. In mm.
constexpr std::string_view near_a_limit = "0.01";

std::string come_out_near(const Map& map) {
  const std::string count =
      written("SUM(IFERROR((ROUND({margin};6)<{near})*({margin}>=0);0))",
              {{"margin", map.all(Map::told_margin)}, {"near", near_a_limit}});
  return written(
      "=IF(NOT(plan_stands);\"\";IF(IF(ISNUMBER(doubt);doubt>0;FALSE());\"\";IF({n}=0;\"\";{n}&"
      "IF({n}=1;\" gap comes out\";\" gaps come out\")&\" nearer than \"&"
      "FIXED({near}/mm_each;decimals;TRUE())&IF(unit=\"inch\";\" in\";\" mm\")&\" to a limit, and "
      "no doubt of the readings is entered: enter it on Engine, or put the aim first there.\")))",
      {{"n", count}, {"near", near_a_limit}});
}

std::string moved_by_mark(const Map& map) {
  const std::string moved = written(
      "IF(ISNUMBER(MATCH({names};IF({actions}=\"move\";{from};\"\");0))*({measured}=\"\");{names};"
      "\"\")",
      {{"names", map.all(Map::name)},
       {"actions", map.all(Map::told_action)},
       {"from", map.all(Map::from)},
       {"measured", map.all(Map::measured)}});
  return written(
      "=IF(NOT(plan_stands);\"\";IF(TEXTJOIN(\"\";TRUE();{moved})=\"\";\"\";"
      "\"Known by the mark alone: the shim of \"&TEXTJOIN(\", \";TRUE();{moved})&\". "
      "Measure it when it comes out, before it goes into another valve.\"))",
      {{"moved", moved}});
}

// Head or Shims: the one whose entries the plan cannot be made with, though it can be without them.
std::string keeps_plan_from_standing(std::string_view valves, std::string_view shims,
                                     std::string_view rules) {
  return written(
      "=IF(OR(NOT(add_in_there);plan_stands);FALSE();"
      "AND(NOT(ISERROR(ROWS(SHIM.PLAN(limits;nothing;rules))));"
      "ISERROR(ROWS(SHIM.PLAN({valves};{shims};{rules})))))",
      {{"valves", valves}, {"shims", shims}, {"rules", rules}});
}

void make_single_facts(Sheet& sheet, const Map& map) {
  heads(sheet, {4, map.rules().from.row - 1}, {"facts", ""});
  const auto fact = [&](Map::Fact which, std::string_view name, std::string_view formula) {
    sheet.text({map.fact(which).column - 1, map.fact(which).row}, name);
    sheet.formula(map.fact(which), formula);
  };
  fact(Map::unit, "unit",
       written("=IF({x}=\"inch\";\"inch\";\"mm\")", {{"x", on_engine(engine_place::unit)}}));
  fact(Map::mm_each, "mm each", "=IF(unit=\"inch\";25.4;1)");
  fact(Map::decimals, "decimals", "=IF(unit=\"inch\";4;3)");
  fact(Map::scheme, "marks",
       written("=IF({x}=\"\";\"auto\";{x})", {{"x", on_engine(engine_place::scheme)}}));
  fact(Map::allowed, "allowed", entered_length(on_engine(engine_place::allowed)));
  fact(Map::book_doubt, "doubt", entered_length(on_engine(engine_place::doubt)));
  // NOW has this worked out anew whenever the book is opened.
  fact(Map::tool_there, "add-in there", "=NOT(ISERROR(IF(NOW()>0;SHIM.VERSION();\"\")))");
  fact(Map::plan_stands, "plan stands",
       written("=AND(add_in_there;NOT(ISERROR({x})))", {{"x", map.at(0, Map::action)}}));
  const std::pair<Map::Fact, const char*> answers[] = {
      {Map::troubles_found, "CHECK"}, {Map::order_rows, "ORDER"}, {Map::surplus_rows, "SURPLUS"}};
  for (const auto& [which, function] : answers)
    fact(which, std::string("rows of ") + function,
         written("=ROWS(SHIM.{function}(valves;shims;rules))", {{"function", function}}));
  fact(Map::engine_troubles_found, "rows of CHECK, Engine",
       "=ROWS(SHIM.CHECK(limits;nothing;rules))");
  fact(Map::opens_good, "opens good", "=" + said_yes(right_of(map.rules().from)));
  fact(Map::plan_doubt, "doubt of the plan",
       written("=IF(OR({no};NOT(ISNUMBER(doubt)));0;doubt)",
               {{"no", said_no(right_of(below(map.rules().from, 2)))}}));
  const auto row_fact = [&](Map::Fact which, std::string_view name, std::string_view formula) {
    write_matrix_fact(sheet, map.fact(which), name, formula);
  };
  // The first in full, of the others the names.
  row_fact(Map::apart_told, "far apart",
           written("=IFERROR(INDEX({all};MATCH(TRUE();{all}<>\"\";0))&"
                   "IF(SUM(--({all}<>\"\"))=1;\"\";\"; likewise \"&TEXTJOIN(\", \";TRUE();"
                   "IF(({all}<>\"\")*(ROW({all})>{before}+MATCH(TRUE();{all}<>\"\";0));{names};"
                   "\"\")));\"\")",
                   {{"all", map.all(Map::apart)},
                    {"before", map.all(Map::apart).from.row},
                    {"names", map.all(Map::name)}}));
  fact(Map::nothing_listed, "nothing listed",
       written("=SUMPRODUCT(--({x}<>\"\"))=0",
               {{"x", Area{map.spare(0, Map::kind), map.sale(0, Map::kind)}}}));
  fact(Map::to_list, "to be listed first",
       written("=IFERROR(AND({nothing};SUMPRODUCT(--(actions=\"none\"))>0);FALSE())",
               {{"nothing", map.fact(Map::nothing_listed)}}));
  fact(Map::head_grave, "Head is to be mended",
       keeps_plan_from_standing("valves", "nothing", "rules"));
  fact(Map::shims_grave, "Shims is to be mended",
       keeps_plan_from_standing("limits", "shims", "nothing"));
  row_fact(Map::stays_told, "stay outside", stay_outside(map));
  row_fact(Map::near_told, "near a limit", come_out_near(map));
  row_fact(Map::unmeasured_told, "moved by the mark", moved_by_mark(map));
  row_fact(Map::plan_box, "box of Plan",
           written("=TEXTJOIN(CHAR(10);TRUE();{stay};{amiss};{near})",
                   {{"stay", map.fact(Map::stays_told)},
                    {"near", map.fact(Map::near_told)},
                    {"amiss", map.trouble_lines(Map::all_box)}}));
  const int last = shims_place::ladders - 1;
  fact(Map::sales, "sizes on sale",
       written("={start}+{sizes}-1",
               {{"start", map.ladder(last, Map::start)}, {"sizes", map.ladder(last, Map::sizes)}}));
  fact(Map::one_series, "one series",
       written("=IF({exhaust}={inlet};{inlet};\"\")",
               {{"exhaust", map.limit(Side::exhaust, Map::series)},
                {"inlet", map.limit(Side::inlet, Map::series)}}));
}

}  // namespace

std::string said_yes(At at) {
  return written(
      "OR({x}=TRUE();{x}=1;ISNUMBER(FIND(\"|\"&LOWER(TRIM({x}))&\"|\";\"|yes|x|true|\")))",
      {{"x", at}});
}

void make_facts(Sheet& sheet, const Map& map) {
  make_limits(sheet, map);
  make_rules(sheet, map);
  make_single_facts(sheet, map);
}

}  // namespace shimwright::book::workings
