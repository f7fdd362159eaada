// SPDX-License-Identifier: MPL-2.0
#include "core/engine/presets.hpp"

#include <algorithm>
#include <vector>

namespace shimwright {
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

Preset usual(std::string name, Arrangement arrangement, int cylinders, std::string firing) {
  return preset(std::move(name), arrangement, usual_banks(arrangement, cylinders),
                std::move(firing));
}

// The V6's order: Auto Engine Repair (Goodheart-Willcox 2021), figure 6-2; the other orders: common
// practice, no source. The V-twin and the V4 are those of 90 degrees in which two opposite
// cylinders share a crank pin, the V4's two pins half a turn apart; their intervals follow from
// that.
std::vector<Preset> make_presets() {
  using enum Arrangement;
  std::vector<Bank> v_twin{{.name = "front", .cylinders = {1}, .exhaust_above = true},
                           {.name = "rear", .cylinders = {2}, .exhaust_above = false}};
  return {usual("single", in_line, 1, "1"),
          usual("parallel twin", in_line, 2, "1-2"),
          preset("V-twin", vee, std::move(v_twin), "1 at 0, 2 at 270"),
          usual("inline three", in_line, 3, "1-2-3"),
          usual("inline four", in_line, 4, "1-3-4-2"),
          usual("inline six", in_line, 6, "1-5-3-6-2-4"),
          usual("flat four", flat, 4, "1-3-2-4"),
          usual("flat six", flat, 6, "1-6-3-2-5-4"),
          usual("V4", vee, 4, "1 at 0, 3 at 180, 2 at 450, 4 at 630"),
          usual("V6", vee, 6, "1-6-5-4-3-2"),
          usual("V8", vee, 8, "1-8-4-3-6-5-7-2")};
}

}  // namespace

std::span<const Preset> presets() {
  static const std::vector<Preset> all = make_presets();
  return all;
}

const Preset* preset_like(const EngineLayout& layout) {
  const auto all = presets();
  const auto found = std::ranges::find_if(all, [&layout](const Preset& preset) {
    return preset.layout.arrangement == layout.arrangement && preset.layout.banks == layout.banks;
  });
  return found == all.end() ? nullptr : &*found;
}

std::vector<Bank> usual_banks(Arrangement arrangement, int cylinders) {
  if (arrangement == Arrangement::in_line) {
    Bank bank;
    for (int cylinder = 1; cylinder <= cylinders; ++cylinder) bank.cylinders.push_back(cylinder);
    return {bank};
  }
  const bool odd_on_the_right = arrangement == Arrangement::flat;
  Bank right{.name = "right", .cylinders = {}, .exhaust_above = true};
  Bank left{.name = "left", .cylinders = {}, .exhaust_above = false};
  for (int cylinder = 1; cylinder <= cylinders; ++cylinder) {
    const bool odd = cylinder % 2 != 0;
    (odd == odd_on_the_right ? right : left).cylinders.push_back(cylinder);
  }
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

}  // namespace shimwright
