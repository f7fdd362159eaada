// SPDX-License-Identifier: MPL-2.0
#include "book/presets.hpp"

#include <algorithm>
#include <vector>

namespace shimwright::book {
namespace {

Preset preset(std::string name, Arrangement arrangement, std::vector<Bank> banks,
              std::string firing) {
  EngineLayout layout{.name = {},
                      .arrangement = arrangement,
                      .banks = std::move(banks),
                      .exhaust_valves = 2,
                      .inlet_valves = 2,
                      .firing = std::move(firing)};
  layout.name = name + ", " + std::to_string(valves_of(layout).size()) + " valves";
  return {std::move(name), std::move(layout)};
}

Preset in_line(std::string name, int cylinders, std::string firing) {
  return preset(std::move(name), Arrangement::in_line, usual_banks(Arrangement::in_line, cylinders),
                std::move(firing));
}

// Orders of three to eight cylinders: common practice, no source. A V-twin of 90 degrees with both
// rods on one crank pin fires 270 and 450 degrees apart.
std::vector<Preset> make_presets() {
  std::vector<Bank> v_twin{{.name = "front", .cylinders = {1}, .exhaust_above = true},
                           {.name = "rear", .cylinders = {2}, .exhaust_above = false}};
  return {in_line("single", 1, "1"),
          in_line("parallel twin", 2, "1-2"),
          preset("V-twin", Arrangement::vee, std::move(v_twin), "1 at 0, 2 at 270"),
          in_line("inline three", 3, "1-2-3"),
          in_line("inline four", 4, "1-3-4-2"),
          in_line("inline six", 6, "1-5-3-6-2-4"),
          preset("flat four", Arrangement::flat, usual_banks(Arrangement::flat, 4), "1-3-2-4"),
          preset("V8", Arrangement::vee, usual_banks(Arrangement::vee, 8), "1-8-4-3-6-5-7-2")};
}

}  // namespace

std::span<const Preset> presets() {
  static const std::vector<Preset> usual = make_presets();
  return usual;
}

const Preset* preset_like(const EngineLayout& layout) {
  const auto all = presets();
  const auto found = std::ranges::find_if(all, [&layout](const Preset& preset) {
    const EngineLayout& other = preset.layout;
    return other.arrangement == layout.arrangement && other.banks == layout.banks &&
           other.firing == layout.firing;
  });
  return found == all.end() ? nullptr : &*found;
}

std::vector<Bank> usual_banks(Arrangement arrangement, int cylinders) {
  if (arrangement == Arrangement::in_line) {
    Bank bank;
    for (int cylinder = 1; cylinder <= cylinders; ++cylinder) bank.cylinders.push_back(cylinder);
    return {bank};
  }
  Bank right{.name = "right", .cylinders = {}, .exhaust_above = true};
  Bank left{.name = "left", .cylinders = {}, .exhaust_above = false};
  for (int cylinder = 1; cylinder <= cylinders; ++cylinder)
    (cylinder % 2 == 0 ? right : left).cylinders.push_back(cylinder);
  return {right, left};
}

std::string full_name(const EngineLayout& layout) {
  const Preset* preset = preset_like(layout);
  const int cylinders = cylinders_of(layout);
  const std::string engine = preset
                                 ? preset->name
                                 : word_for(layout.arrangement) + ", " + std::to_string(cylinders) +
                                       (cylinders == 1 ? " cylinder" : " cylinders");
  return engine + ", " + std::to_string(valves_of(layout).size()) + " valves";
}

}  // namespace shimwright::book
