// SPDX-License-Identifier: MPL-2.0
//
// The usual engines: how their cylinders lie and fire, with four valves a cylinder. Where an engine
// has two banks, the chart shows it from above with its front to the left and the V (or flat)
// opened out: the right bank on top, the left below it, exhaust valves outside, inlet valves
// between the banks. Firing orders differ from engine to engine: the manual has the last word.
#pragma once

#include <span>
#include <string>

#include "core/engine/layout.hpp"

namespace shimwright::book {

struct Preset {
  std::string name;     // as a person says it: `inline four`
  EngineLayout layout;  // two inlet and two exhaust valves a cylinder
};

// From one cylinder upwards.
std::span<const Preset> presets();

// The preset laid out like this, its valves and name aside; null where there is none.
const Preset* preset_like(const EngineLayout& layout);

// The banks of an engine that is none of the presets, as most are numbered: in line from the front,
// else the odd numbers left and the even ones right. Where the number is odd, the left has one
// more.
std::vector<Bank> usual_banks(Arrangement arrangement, int cylinders);

// The layout's name by what it holds: `inline four, 16 valves`; `V, 10 cylinders, 40 valves`.
std::string full_name(const EngineLayout& layout);

}  // namespace shimwright::book
