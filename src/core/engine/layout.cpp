// SPDX-License-Identifier: MPL-2.0
#include "core/engine/layout.hpp"

#include <algorithm>

namespace shimwright {
namespace {

int valves_on(Side side, const EngineLayout& layout) {
  return side == Side::exhaust ? layout.exhaust_valves : layout.inlet_valves;
}

}  // namespace

std::string name_of(const ValveId& valve, const EngineLayout& layout) {
  std::string name = std::to_string(valve.cylinder);
  name += valve.side == Side::exhaust ? " EX" : " IN";
  const int count = valves_on(valve.side, layout);
  if (count == 1) return name;
  if (valve.place == 0) return name + " L";
  return name + (valve.place == count - 1 ? " R" : " M");
}

std::vector<ValveId> valves_of(const EngineLayout& layout) {
  std::vector<int> cylinders;
  for (const Bank& bank : layout.banks)
    cylinders.insert(cylinders.end(), bank.cylinders.begin(), bank.cylinders.end());
  std::sort(cylinders.begin(), cylinders.end());

  std::vector<ValveId> valves;
  for (const int cylinder : cylinders)
    for (const Side side : {Side::exhaust, Side::inlet})
      for (int place = 0; place < valves_on(side, layout); ++place)
        valves.push_back({cylinder, side, place});
  return valves;
}

int cylinders_of(const EngineLayout& layout) {
  std::size_t count = 0;
  for (const Bank& bank : layout.banks) count += bank.cylinders.size();
  return static_cast<int>(count);
}

std::string word_for(Arrangement arrangement) {
  switch (arrangement) {
    case Arrangement::in_line:
      return "in line";
    case Arrangement::vee:
      return "V";
    case Arrangement::flat:
      return "flat";
  }
  return {};
}

EngineLayout inline_four() {
  return {.name = "inline four, 16 valves",
          .arrangement = Arrangement::in_line,
          .banks = {{.name = "", .cylinders = {1, 2, 3, 4}, .exhaust_above = true}},
          .exhaust_valves = 2,
          .inlet_valves = 2,
          .firing = "1-3-4-2"};
}

}  // namespace shimwright
