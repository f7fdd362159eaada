// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing_writes.hpp"

#include <algorithm>
#include <iterator>

#include "core/service/bench_commands.hpp"
#include "core/service/entered.hpp"
#include "core/service/entry_value.hpp"
#include "core/service/readings_off.hpp"

namespace shimwright {
namespace {

bool is_empty(const Entry& entry) { return not_given(entry) && !has_failed(entry); }

std::vector<EntryWrite> reasons_to_clear(const Service& service) {
  std::vector<EntryWrite> writes;
  for (const auto& row : service.recheck)
    if (!is_empty(row.left))
      writes.push_back({"recheck", row.valve, entry_value::recheck_left, Entry()});
  return writes;
}

// The shims that are in, the rows of Arrivals that they came from, and the drawer; no gaps.
std::vector<EntryWrite> shims_and_drawer(const Service& service, const Findings& found,
                                         const DrawerAfter& drawer) {
  std::vector<EntryWrite> writes = shims_to_enter(service, found);
  std::erase_if(writes, [](const EntryWrite& one) {
    return one.kind == "valve" && one.value == entry_value::gap;
  });
  for (const auto& more : {drawer.writes, new_gaps_to_clear(service), reasons_to_clear(service)})
    std::ranges::copy(more, std::back_inserter(writes));
  return writes;
}

std::vector<EntryWrite> readings_off_to_write(const Service& service,
                                              const std::vector<ValveAtClose>& valves) {
  if (!service.readings_off) return {};
  std::vector<ValveRecheck> rechecked;
  for (const ValveAtClose& valve : valves) rechecked.push_back(valve.recheck);
  const std::string text = readings_off_written(rechecked);
  if (text.empty()) return readings_off_to_clear(service);
  return {{"setting", "readings off", 0, text}};
}

}  // namespace

std::vector<EntryWrite> writes_to_close(const Service& service, const Findings& found,
                                        const std::vector<ValveAtClose>& valves,
                                        const DrawerAfter& drawer) {
  std::vector<EntryWrite> writes = shims_and_drawer(service, found, drawer);
  for (std::size_t i = 0; i < valves.size(); ++i)
    if (!is_empty(service.valves[i].gap))
      writes.push_back({"valve", valves[i].name, entry_value::gap, Entry()});
  for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
    const bool goes_in_drawer = std::ranges::find(drawer.arrivals, i) != drawer.arrivals.end();
    if (!goes_in_drawer && found.arrivals[i].state != ArrivalState::not_coming) continue;
    for (int value = 0; value < entry_value::values_of_arrival; ++value)
      writes.push_back({"arrival", std::to_string(service.arrivals[i].row), value, Entry()});
  }
  if (!is_empty(service.check_number)) writes.push_back({"setting", "check", 0, Entry()});
  if (!is_empty(service.round)) writes.push_back({"setting", "round", 0, Entry()});
  std::ranges::copy(readings_off_to_clear(service), std::back_inserter(writes));
  return writes;
}

std::vector<EntryWrite> writes_for_round(const Service& service, const Findings& found,
                                         const std::vector<ValveAtClose>& valves,
                                         const DrawerAfter& drawer, std::int64_t check,
                                         std::int64_t next_round) {
  std::vector<EntryWrite> writes = shims_and_drawer(service, found, drawer);
  for (std::size_t i = 0; i < valves.size(); ++i) {
    const ValveAtClose& valve = valves[i];
    if (valve.recheck.gap_left)
      writes.push_back({"valve", valve.name, entry_value::gap,
                        in_unit(*valve.recheck.gap_left, found.teller.unit())});
    else if (valve.touched && !is_empty(service.valves[i].gap))
      writes.push_back({"valve", valve.name, entry_value::gap, Entry()});
  }
  writes.push_back({"setting", "check", 0, static_cast<double>(check)});
  writes.push_back({"setting", "round", 0, static_cast<double>(next_round)});
  std::ranges::copy(readings_off_to_write(service, valves), std::back_inserter(writes));
  return writes;
}

}  // namespace shimwright
