// SPDX-License-Identifier: MPL-2.0
#include "book/places.hpp"

#include "book/workings.hpp"

namespace shimwright::book {

std::vector<std::pair<std::string, std::string>> named_ranges(const Places& places) {
  using Map = WorkingsMap;
  const Map map(places.count());
  const auto fact = [&map](Map::Fact which) { return in_workings(map.fact(which)); };
  const Area both_series{map.limit(Side::exhaust, Map::series),
                         map.limit(Side::inlet, Map::series)};
  return {{"valves", in_workings(map.valves())},
          {"shims", in_workings(map.stock())},
          {"rules", in_workings(map.rules())},
          {"limits", in_workings(map.limits())},
          {"nothing", in_workings(map.blank())},
          {"unit", fact(Map::unit)},
          {"mm_each", fact(Map::mm_each)},
          {"decimals", fact(Map::decimals)},
          {"mark_scheme", fact(Map::scheme)},
          {"allowed_difference", fact(Map::allowed)},
          {"doubt", fact(Map::book_doubt)},
          {"add_in_there", fact(Map::tool_there)},
          {"plan_stands", fact(Map::plan_stands)},
          {"one_series", fact(Map::one_series)},
          {"series", in_workings(both_series)},
          {"engine_name", on(sheet_name::engine, engine_place::name)},
          {"currency", on(sheet_name::engine, engine_place::currency)},
          {"states_now", in_workings(map.all(Map::now))},
          {"states_after", in_workings(map.all(Map::then_known))},
          {"actions", in_workings(map.all(Map::told_action))}};
}

}  // namespace shimwright::book
