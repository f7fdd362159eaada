// SPDX-License-Identifier: MPL-2.0
#include "book/workings.hpp"

#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book {

using Map = WorkingsMap;

std::string in_workings(const Area& area) { return on(sheet_name::workings, area); }

namespace workings {

std::string entered_length(const std::string& cell) {
  // A number that cannot be is left for the check to refuse, in mm as all the rest.
  return written(
      "=IF({x}=\"\";\"\";IFERROR(LENGTH.MM({x};unit);IF(ISNUMBER({x});{x}*mm_each;{x})))",
      {{"x", cell}});
}

std::string entered(const std::string& cell) {
  return written("=IF({x}=\"\";\"\";{x})", {{"x", cell}});
}

std::string on_engine(At at) { return on(sheet_name::engine, at); }

void write_fact(Sheet& sheet, At at, std::string_view name, std::string_view formula) {
  sheet.text(right_of(at, -1), name);
  sheet.formula(at, formula);
  sheet.formula(right_of(at), "=\"\"");
}

void write_matrix_fact(Sheet& sheet, At at, std::string_view name, std::string_view formula) {
  sheet.text(right_of(at, -1), name);
  sheet.matrix(at, formula);
  sheet.formula(right_of(at), "=\"\"");
}

std::string named(const std::string& which, const WorkingsMap& map) {
  constexpr int most_named = 8;
  return written(
      "IF(SUM(--{which})>{most};SUM(--{which})&\" valves\";TEXTJOIN(\", \";TRUE();"
      "IF({which};{names};\"\")))",
      {{"which", which}, {"most", most_named}, {"names", map.all(WorkingsMap::name)}});
}

std::string one_or_more(const std::string& which, std::string_view one, std::string_view more) {
  return written("IF(SUM(--{which})=1;\"{one}\";\"{more}\")",
                 {{"which", which}, {"one", one}, {"more", more}});
}

void heads(Sheet& sheet, At from, const std::vector<std::string>& words) {
  for (std::size_t i = 0; i < words.size(); ++i)
    sheet.label(right_of(from, static_cast<int>(i)), words[i], style::working_head);
}

}  // namespace workings

namespace {

using workings::entered;
using workings::entered_length;
using workings::heads;
using workings::said_yes;

std::string on_head(At at) { return on(sheet_name::head, at); }

// What was entered for one valve, and what each function says of it alone.
std::vector<std::string> entries_of(const Card& card, const std::string& valve_name, const Map& map,
                                    int index) {
  const Side side = card.valve.side;
  const auto limit = [&](Map::Valve column) { return "=" + absolute(map.limit(side, column)); };
  const auto own = [&](Map::Valve column) { return relative(map.at(index, column)); };
  return {"=\"" + valve_name + "\"",
          limit(Map::series),
          entered_length(on_head(card.value(card::gap))),
          written("=IF({measured}<>\"\";{measured};{marked})",
                  {{"measured", own(Map::measured)}, {"marked", own(Map::marked)}}),
          limit(Map::min),
          limit(Map::max),
          limit(Map::aim),
          limit(Map::doubt),
          entered(on_head(card.value(card::alone))),
          written("=IF({x}=\"\";\"\";IFERROR({size};\"\"))",
                  {{"x", on_head(card.value(card::mark))},
                   {"size", size_marked(on_head(card.value(card::mark)))}}),
          entered_length(on_head(card.value(card::micrometer))),
          written("=IF(AND({mark}=\"\";{measured}=\"\");\"\";"
                  "IFERROR(SHIM.TRUST({marked};{measured};allowed_difference);\"\"))",
                  {{"mark", on_head(card.value(card::mark))},
                   {"marked", own(Map::marked)},
                   {"measured", own(Map::measured)}}),
          written("=IF(NOT(add_in_there);\"\";IF(ISNUMBER({c});IFERROR(CLEARANCE.STATE({c};{min};"
                  "{max};{doubt});\"limits?\");\"unread\"))",
                  {{"c", own(Map::clearance)},
                   {"min", own(Map::min)},
                   {"max", own(Map::max)},
                   {"doubt", own(Map::doubt)}}),
          "=" + with_sign(own(Map::now))};
}

std::string one_decimal_less(const std::string& cell) {
  return written("ROUND({x}/mm_each;decimals-1)=ROUND({x}/mm_each;decimals+2)", {{"x", cell}});
}

// Two lengths as one text, short enough for a card: without a last decimal that is nought in
// both, and inches without the nought before the decimal mark.
std::string span_told(const std::string& from, const std::string& to) {
  const auto told = [&](const std::string& x) {
    return written(
        "MID(FIXED({x}/mm_each;decimals-AND({from_less};{to_less});TRUE());"
        "IF(AND(unit=\"inch\";{x}<25.4);2;1);9)",
        {{"x", x}, {"from_less", one_decimal_less(from)}, {"to_less", one_decimal_less(to)}});
  };
  return told(from) + "&\"\u2013\"&" + told(to);
}

std::string told(const std::string& length) {
  return written("FIXED({x}/mm_each;decimals;TRUE())", {{"x", length}});
}

// Further than this wear and a worn mark do not reach: one of the two was misread (common
// practice, no source). In mm.
constexpr std::string_view far_apart = "0.05";

// As long as neither spares nor sizes are listed, nobody has looked whether one fits.
std::string none_told(const Map& map) {
  return written("IF({nothing};\"list shims\";\"none fits\")",
                 {{"nothing", map.fact(Map::nothing_listed)}});
}

// Pasted, for the checks of the cells refuse them.
std::string numbers_that_are_text(const Card& card, const Map& map, int index) {
  std::string texts;
  for (const auto& [row, read] :
       {std::pair{card::gap, Map::clearance}, std::pair{card::mark, Map::marked},
        std::pair{card::micrometer, Map::measured}})
    texts += written(";IF(AND(ISTEXT({x});ISNUMBER({read}));{x};\"\")",
                     {{"x", on_head(card.value(row))}, {"read", relative(map.at(index, read))}});
  const std::string all = "TEXTJOIN(\", \";TRUE()" + texts + ")";
  return written("=IF({all}=\"\";\"\";{name}&\" (\"&{all}&\")\")",
                 {{"all", all}, {"name", relative(map.at(index, Map::name))}});
}

// What to show of the plan for one valve.
std::vector<std::string> answers_for(const Card& card, const Map& map, int index) {
  const auto own = [&](Map::Valve column) { return relative(map.at(index, column)); };
  const auto serving = [&](int column) {
    return written(
        "=IF(IFERROR({action}=\"none\";FALSE());"
        "IFERROR(INDEX(SHIM.RANGE({c};{shim};{min};{max};{doubt});1;{column});"
        "IFERROR(INDEX(SHIM.RANGE({c};{shim};{min};{max});1;{column});\"\"));\"\")",
        {{"action", own(Map::action)},
         {"c", own(Map::clearance)},
         {"shim", own(Map::shim)},
         {"min", own(Map::min)},
         {"max", own(Map::max)},
         {"doubt", own(Map::doubt)},
         {"column", column}});
  };
  const auto or_where_kept = [&](Map::Valve column, const std::string& kept) {
    return written("=IF({kept}<>\"\";{instead};{x})",
                   {{"kept", own(Map::kept)}, {"instead", kept}, {"x", own(column)}});
  };
  return {
      written("=IF({known}=\"again\";\"measure again\";{told})",
              {{"known", own(Map::then_known)}, {"told", with_sign(own(Map::then_known))}}),
      written("=IF(NOT(add_in_there);\"\";IF(ISERROR({action});\"mend entries\";"
              "IF({told}=\"keep\";\"keep\";IF({action}=\"none\";{none};"
              "IF({action}=\"unread\";IF(AND(ISNUMBER({c});{now}<>\"limits?\");"
              "\"measure shim\";IF(ISNUMBER({shim});\"measure gap\";\"\"));"
              "{action}&\" \"&FIXED({size}/mm_each;decimals;TRUE()))))))",
              {{"action", own(Map::action)},
               {"none", none_told(map)},
               {"told", own(Map::told_action)},
               {"c", own(Map::clearance)},
               {"now", own(Map::now)},
               {"shim", own(Map::shim)},
               {"size", own(Map::size)}}),
      written("=IFERROR(IF(NOT(add_in_there);\"\";IF({left}<>\"\";\"left alone as told\";"
              "IF({kept}<>\"\";\"shim may stay unread\";IF({action}=\"move\";\"from \"&{from}&"
              "IF(INDEX({measured};MATCH({from};{names};0))=\"\";\", measure it\";\"\");"
              "IF({action}=\"spare\";"
              "\"from the spares\";IF({action}=\"buy\";\"to order\";IF({action}=\"none\";"
              "IF({low}=\"\";\"no size serves\";\"needs \"&{range});\"\")))))));\"\")",
              {{"left", own(Map::left_outside)},
               {"kept", own(Map::kept)},
               {"action", own(Map::action)},
               {"from", own(Map::from)},
               {"measured", map.all(Map::measured)},
               {"names", map.all(Map::name)},
               {"low", own(Map::thinnest)},
               {"range", span_told(own(Map::thinnest), own(Map::thickest))}}),
      serving(1), serving(2),
      // Whoever measured the shim may note any mark.
      written("=IF(AND({x}<>\"\";{marked}=\"\";NOT(ISNUMBER({measured})));"
              "{name}&\" (\"&{x}&\")\";\"\")",
              {{"x", on_head(card.value(card::mark))},
               {"measured", own(Map::measured)},
               {"marked", own(Map::marked)},
               {"name", own(Map::name)}}),
      written("=IF(AND(ISNUMBER({min});ISNUMBER({max}));{span};\"\")",
              {{"min", own(Map::min)},
               {"max", own(Map::max)},
               {"span", span_told(own(Map::min), own(Map::max))}}),
      // No blade goes: the gap may be anything below, or none.
      written("=IF(NOT(add_in_there);\"\";IF(AND(ISNUMBER({c});{c}=0;"
              "IFERROR(AND({then}<>\"unread\";{then}<>\"tight\");FALSE()));\"again\";{then}))",
              {{"c", own(Map::clearance)},
               {"then", written("IF({kept}<>\"\";{kept};{then})",
                                {{"kept", own(Map::kept)}, {"then", own(Map::then)}})}}),
      written("=IF(AND(ISNUMBER({marked});ISNUMBER({measured}));"
              "IF(AND(ROUND(ABS({marked}-{measured});6)>{most};OR({trust}=\"thinner\";"
              "{trust}=\"thicker\"));{name}&\": micrometer \"&{a}&\" and mark \"&{b}&"
              "\" differ by \"&{by}&IF(unit=\"inch\";\" in\";\" mm\")&\": measure it again\";"
              "\"\");\"\")",
              {{"marked", own(Map::marked)},
               {"measured", own(Map::measured)},
               {"most", far_apart},
               {"trust", own(Map::trust)},
               {"name", own(Map::name)},
               {"a", told(own(Map::measured))},
               {"b", told(own(Map::marked))},
               {"by", told("ABS(" + own(Map::marked) + "-" + own(Map::measured) + ")")}}),
      // The function plans nothing for a valve whose shim is unknown. Where it would keep its
      // shim whatever that is, nothing is to be done.
      written("=IFERROR(IF(AND({action}=\"unread\";ISNUMBER({c});NOT(ISNUMBER({shim})));"
              "IF(OR({locked};AND(NOT({opens_good});{state}=\"good\"));{state};\"\");\"\");\"\")",
              {{"action", own(Map::action)},
               {"c", own(Map::clearance)},
               {"shim", own(Map::shim)},
               {"locked", said_yes(map.at(index, Map::locked))},
               {"opens_good", map.fact(Map::opens_good)},
               {"state", written("CLEARANCE.STATE({c};{min};{max};{doubt})",
                                 {{"c", own(Map::clearance)},
                                  {"min", own(Map::min)},
                                  {"max", own(Map::max)},
                                  {"doubt", map.fact(Map::plan_doubt)}})}}),
      or_where_kept(Map::action, "\"keep\""), or_where_kept(Map::after, own(Map::clearance)),
      or_where_kept(
          Map::margin,
          written("CLEARANCE.MARGIN({c};{min};{max})",
                  {{"c", own(Map::clearance)}, {"min", own(Map::min)}, {"max", own(Map::max)}})),
      written("=IFERROR(IF(AND({action}=\"keep\";{margin}<0);{then};\"\");\"\")",
              {{"action", own(Map::told_action)},
               {"margin", own(Map::told_margin)},
               {"then", written("IF({kept}<>\"\";{kept};{then})",
                                {{"kept", own(Map::kept)}, {"then", own(Map::then)}})}}),
      numbers_that_are_text(card, map, index)};
}

void make_valves(Sheet& sheet, const Places& places, const Map& map) {
  heads(
      sheet, {0, map.valves().from.row - 1},
      {"valve",  "series",   "clearance", "shim",         "min",         "max",   "aim",   "doubt",
       "locked", "marked",   "measured",  "trust",        "now",         "told",  "valve", "action",
       "from",   "size",     "after",     "state",        "margin",      "cost",  "told",  "to do",
       "source", "thinnest", "thickest",  "mark",         "limits told", "known", "apart", "kept",
       "do",     "after",    "margin",    "left outside", "as text"});
  std::vector<std::vector<std::string>> entries;
  std::vector<std::vector<std::string>> answers;
  for (int i = 0; i < places.count(); ++i) {
    const Card& card = places.head.cards[static_cast<std::size_t>(i)];
    entries.push_back(entries_of(card, name_of(card.valve, places.layout), map, i));
    answers.push_back(answers_for(card, map, i));
  }
  sheet.formulas(map.at(0, Map::name), entries);
  const std::pair<Map::Valve, const char*> parts[] = {
      {Map::plan_name, "valve"}, {Map::action, "action"}, {Map::from, "from"},
      {Map::size, "size"},       {Map::after, "after"},   {Map::then, "state"},
      {Map::margin, "margin"},   {Map::cost, "cost"}};
  for (const auto& [column, part] : parts)
    sheet.matrix(map.all(column),
                 written("=SHIM.PLAN(valves;shims;rules;\"{part}\")", {{"part", part}}));
  sheet.formulas(map.at(0, Map::then_told), answers);
}

}  // namespace

void make_workings(Sheet& sheet, const Places& places) {
  const WorkingsMap map(places.count());
  const StepsMap steps(places);
  const Area whole{{0, 0}, {WorkingsMap::valve_columns - 1, steps.last_row()}};
  sheet.style(whole, style::working);
  for (int column = 0; column < WorkingsMap::valve_columns; ++column)
    sheet.column_width(column, column == 0 || column == 4 ? 34 : 22);
  sheet.label({{0, 0}, {4, 0}}, "Workings", style::title);
  sheet.label(At{0, 1},
              "The tables the functions take, all lengths in mm, and their answers. Nothing is "
              "entered here.",
              style::subtitle);
  make_valves(sheet, places, map);
  workings::make_facts(sheet, map);
  workings::make_stock(sheet, map);
  workings::make_answers(sheet, map, steps.fact(StepsMap::crank_wrong));
  workings::make_steps(sheet, places);
  // Rows of a matrix beyond its answer hold #N/A.
  sheet.grade({{0, 3}, whole.to}, {{"ISERROR(A4)", std::string(style::hushed)}});
  sheet.keep_off_paper();
  sheet.protect();
}

}  // namespace shimwright::book
