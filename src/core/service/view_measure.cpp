// SPDX-License-Identifier: MPL-2.0
//
// What the measuring sheet shows, which is printed and written on at the engine: how to come to
// each stop, and what is known before of each valve to be measured there.
#include <optional>
#include <string>

#include "core/service/measuring.hpp"
#include "core/service/view_parts.hpp"
#include "core/service/words/crank_words.hpp"

namespace shimwright {
namespace {

std::size_t room_for_stops(const Service& service) {
  const auto given = service.boxes.find("measure");
  return static_cast<std::size_t>(
      (given == service.boxes.end() ? Service::Room() : given->second).lines);
}

// No more lines than the sheet has room for.
void show_how_to_come(const Service& service, const Findings& found, ShownTable& table) {
  const Teller& teller = found.teller;
  if (const Told* trouble = found.crank_trouble()) {
    table.put("come") = in_words(*trouble, teller);
    return;
  }
  const std::size_t room = room_for_stops(service);
  const std::size_t stops = found.stops.size();
  const std::size_t told = stops <= room ? stops : room - 1;
  for (std::size_t i = 0; i < told; ++i)
    table.put("come", i + 1) = teller.say(
        Say::measure_stop,
        {static_cast<std::int64_t>(i + 1),
         turn_in_words(*found.firing, found.stops, i,
                       i > 0 ? std::optional<std::size_t>(i - 1) : std::nullopt, teller)});
  if (told < stops) {
    table.put("come", room) =
        teller.say(Say::measure_more_stops, {static_cast<std::int64_t>(stops - told)});
  } else if (stops > 0 && stops < room && found.usual_timing) {
    table.put("come", stops + 1) = teller.say(Say::usual_timing);
    table.put("come look", stops + 1) = "note";
  }
}

}  // namespace

ShownTable show_measure(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{{"come", "come look", "stop", "look", "limits"}, {}};
  for (std::size_t place = 1; place <= most_in_a_measuring_row; ++place)
    for (const char* column : {"name ", "shim ", "box "})
      table.columns.push_back(column + std::to_string(place));
  show_how_to_come(service, found, table);
  std::size_t row = 0;
  for (const MeasuringRow& measured : measuring_order(service, found)) {
    ++row;
    const std::string look = measured.first_of_stop ? "first" : "row";
    table.put("look", row) = look;
    if (measured.first_of_stop && measured.stop)
      table.put("stop", row) = std::to_string(*measured.stop);
    const auto& limits = found.of(service.valves[measured.valves.front()].side).limits;
    if (limits) table.put("limits", row) = teller.span(limits->min, limits->max);
    for (std::size_t i = 0; i < measured.valves.size(); ++i) {
      const std::string place = std::to_string(i + 1);
      const auto& shim = found.valves[measured.valves[i]].shim;
      table.put("name " + place, row) = service.valves[measured.valves[i]].name;
      table.put("shim " + place, row) = shim ? teller.column(*shim) : std::string();
      table.put("box " + place, row) = look;
    }
  }
  return table;
}

}  // namespace shimwright
