// SPDX-License-Identifier: MPL-2.0
#include "core/service/view.hpp"

#include <array>
#include <utility>

#include "core/service/view_parts.hpp"

namespace shimwright {

View view_of(const Service& service) {
  const Findings found = findings_in(service);
  return {.book = show_book(service, found),
          .valves = show_valves(service, found),
          .order = show_order(found),
          .surplus = show_surplus(found),
          .steps = show_steps(service, found),
          .bench = show_bench(service, found),
          .stops = show_stops(found),
          .sizes = show_sizes(found),
          .boxes = show_boxes(service, found),
          .remarks = show_remarks(found)};
}

const ShownTable* View::table(std::string_view name) const {
  constexpr std::array<std::pair<std::string_view, ShownTable View::*>, 10> tables{
      {{"book", &View::book},
       {"valves", &View::valves},
       {"order", &View::order},
       {"left over", &View::surplus},
       {"steps", &View::steps},
       {"bench", &View::bench},
       {"stops", &View::stops},
       {"sizes", &View::sizes},
       {"boxes", &View::boxes},
       {"remarks", &View::remarks}}};
  for (const auto& [word, member] : tables)
    if (word == name) return &(this->*member);
  return nullptr;
}

}  // namespace shimwright
