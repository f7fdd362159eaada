// SPDX-License-Identifier: MPL-2.0
#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = WorkingsMap;

std::string on_shims(At at) { return on(sheet_name::shims, at); }

// A row of the shims' table for a row the owner fills in; the series may be left out where both
// sides of the engine take the same. Columns as entered: series, size, count, price or none.
std::vector<std::string> stock_row(std::string_view kind, At first, bool with_price,
                                   const std::string& kind_cell) {
  const std::string series = on_shims(first);
  const std::string size = on_shims(right_of(first));
  const std::string count = on_shims(right_of(first, 2));
  return {written("=IF(AND({series}=\"\";{size}=\"\";{count}=\"\");\"\";\"{kind}\")",
                  {{"series", series}, {"size", size}, {"count", count}, {"kind", kind}}),
          written("=IF({kind}=\"\";\"\";IF({series}=\"\";{any};{series}))",
                  {{"kind", kind_cell}, {"series", series}, {"any", "one_series"}}),
          entered_length(size), entered(count),
          with_price ? entered(on_shims(right_of(first, 3))) : std::string()};
}

// What is wrong with a row of sizes; the plan goes without it.
std::string ladder_trouble(const Map& map, int index) {
  const At first = below(shims_place::first_ladder, index);
  return written(
      "=IF(COUNTA({entries})=0;\"\";IF({sizes}=0;\"Row of sizes {number}: from, to and step give "
      "no "
      "size\";IF({start}+{sizes}-1>{most};\"Row of sizes {number}: too many, all rows together "
      "may come to {most}; the rest are left out\";\"\")))",
      {{"entries", on(sheet_name::shims, block(right_of(first), 3, 1))},
       {"sizes", map.ladder(index, Map::sizes)},
       {"start", map.ladder(index, Map::start)},
       {"number", index + 1},
       {"most", Map::sale_rows}});
}

void make_ladders(Sheet& sheet, const Map& map) {
  heads(sheet, {0, map.ladder(0, Map::ladder_series).row - 1},
        {"on sale", "from", "to", "step", "price", "sizes", "start", "trouble"});
  std::vector<std::vector<std::string>> rows;
  for (int i = 0; i < shims_place::ladders; ++i) {
    const At first = below(shims_place::first_ladder, i);
    rows.push_back(
        {written("=IF({series}=\"\";one_series;{series})", {{"series", on_shims(first)}}),
         entered_length(on_shims(right_of(first))), entered_length(on_shims(right_of(first, 2))),
         entered_length(on_shims(right_of(first, 3))), entered(on_shims(right_of(first, 4))),
         written("=IFERROR(ROWS(SHIM.LADDER({from};{to};{step}));0)",
                 {{"from", map.ladder(i, Map::ladder_from)},
                  {"to", map.ladder(i, Map::ladder_to)},
                  {"step", map.ladder(i, Map::ladder_step)}}),
         i == 0 ? std::string("=1")
                : written("={start}+{sizes}", {{"start", map.ladder(i - 1, Map::start)},
                                               {"sizes", map.ladder(i - 1, Map::sizes)}}),
         ladder_trouble(map, i)});
  }
  sheet.formulas(map.ladder(0, Map::ladder_series), rows);
}

// Whether another row of sizes has the same size of the same series at a lower price, or an earlier
// one at the same: such a size is listed once, as the owner did nothing wrong.
std::string had_elsewhere(const Map& map, const std::string& which, const std::string& size) {
  const auto column = [&map](Map::Ladder of) {
    return absolute({map.ladder(0, of), map.ladder(shims_place::ladders - 1, of)});
  };
  return written(
      "IFERROR(SUMPRODUCT(({sizes}>0)*({series}=INDEX({series};{which}))*({to}>={size})*"
      "(IF({sizes}>0;{from};0)<={size})*"
      "(MOD(ROUND(({size}-IF({sizes}>0;{from};0))*1000000;0);"
      "ROUND(IF({sizes}>0;{step};1)*1000000;0))=0)*"
      "(({price}<INDEX({price};{which}))+"
      "({price}=INDEX({price};{which}))*({start}<INDEX({start};{which}))))>0;FALSE())",
      {{"sizes", column(Map::sizes)},
       {"series", column(Map::ladder_series)},
       {"from", column(Map::ladder_from)},
       {"to", column(Map::ladder_to)},
       {"step", column(Map::ladder_step)},
       {"price", column(Map::ladder_price)},
       {"start", column(Map::start)},
       {"which", which},
       {"size", size}});
}

// One row for each size of the rows of sizes, as far as they go.
void make_sales(Sheet& sheet, const Map& map) {
  const At first = map.sale(0, Map::kind);
  const auto ladders = [&map](Map::Ladder column) {
    return absolute({map.ladder(0, column), map.ladder(shims_place::ladders - 1, column)});
  };
  const auto own = [first](int column) { return "$" + relative(right_of(first, column)); };
  const std::string which = own(Map::which_ladder);
  const std::string turn = written("(ROW()-{before})", {{"before", first.row}});
  const auto of_ladder = [&](Map::Ladder column, const std::string& ladder) {
    return written("INDEX({column};{which})", {{"column", ladders(column)}, {"which", ladder}});
  };
  sheet.formulas(
      first,
      {{
          written("=IF({which}=\"\";\"\";\"sale\")", {{"which", which}}),
          written("=IF({which}=\"\";\"\";{series})",
                  {{"which", which}, {"series", of_ladder(Map::ladder_series, which)}}),
          written("=IF({which}=\"\";\"\";{size})",
                  {{"which", which}, {"size", own(Map::raw_size)}}),
          "=\"\"",
          written("=IF({which}=\"\";\"\";{price})",
                  {{"which", which}, {"price", of_ladder(Map::ladder_price, which)}}),
          written("=IF({raw}=\"\";\"\";IF({repeated};\"\";{raw}))",
                  {{"raw", own(Map::raw_ladder)},
                   {"repeated", had_elsewhere(map, own(Map::raw_ladder), own(Map::raw_size))}}),
          written(
              "=IF({turn}>{sales};\"\";MATCH({turn};{starts};1))",
              {{"turn", turn}, {"sales", map.fact(Map::sales)}, {"starts", ladders(Map::start)}}),
          written("=IF({which}=\"\";\"\";ROUND({from}+({turn}-{start})*{step};6))",
                  {{"which", own(Map::raw_ladder)},
                   {"turn", turn},
                   {"from", of_ladder(Map::ladder_from, own(Map::raw_ladder))},
                   {"start", of_ladder(Map::start, own(Map::raw_ladder))},
                   {"step", of_ladder(Map::ladder_step, own(Map::raw_ladder))}}),
      }});
  sheet.fill_down(block(first, Map::stock_columns, Map::sale_rows));
}

}  // namespace

void make_stock(Sheet& sheet, const Map& map) {
  make_ladders(sheet, map);
  heads(sheet, {0, map.stock().from.row - 1},
        {"shims", "series", "size", "count", "price", "of row", "listed in", "size there"});
  std::vector<std::vector<std::string>> rows;
  for (int i = 0; i < shims_place::spares; ++i)
    rows.push_back(stock_row("spare", below(shims_place::first_spare, i), false,
                             absolute(map.spare(i, Map::kind))));
  for (int i = 0; i < shims_place::singles; ++i)
    rows.push_back(stock_row("sale", below(shims_place::first_single, i), true,
                             absolute(map.single(i, Map::kind))));
  sheet.formulas(map.stock().from, rows);
  make_sales(sheet, map);
}

}  // namespace shimwright::book::workings
