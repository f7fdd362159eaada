// SPDX-License-Identifier: MPL-2.0
//
// The usual engines: how their cylinders lie and fire, with four valves a cylinder. Where an engine
// has two banks, the chart shows it from above with its front to the left and the V (or flat)
// opened out: the right bank on top, the left below it, exhaust valves outside, inlet valves
// between the banks. Firing orders differ from engine to engine: the manual has the last word.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/engine/layout.hpp"

namespace shimwright {

struct Preset {
  std::string name;     // as a person says it: `inline four`
  EngineLayout layout;  // two inlet and two exhaust valves a cylinder
};

// In line, flat and V, each from few cylinders to many; the twins before them.
std::span<const Preset> presets();

// The preset that lies like this; null where there is none. Its valves and its firing do not
// count: engines that lie alike are built with either.
const Preset* preset_like(const EngineLayout& layout);

// The banks of most engines of so many cylinders. In line they count from the front. A V has the
// odd numbers on the left, a flat engine on the right, as seen by the driver; where the number is
// odd, that bank has one more. Common practice, no source; some engines count along one bank first.
std::vector<Bank> usual_banks(Arrangement arrangement, int cylinders);

// The layout's name by what it holds: `inline four, 16 valves`; `V, 10 cylinders, 40 valves`.
std::string full_name(const EngineLayout& layout);

}  // namespace shimwright
