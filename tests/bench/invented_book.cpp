// SPDX-License-Identifier: MPL-2.0
#include "invented_book.hpp"

#include <sstream>

#include "../core/plan_questions.hpp"
#include "core/engine/presets.hpp"

namespace shimwright::bench {
namespace {

std::string mm(std::int64_t micrometres) {
  const std::string digits = std::to_string(10'000 + micrometres);
  return digits.substr(1, 1) + "." + digits.substr(2);
}

EngineLayout twelve(Arrangement arrangement) {
  EngineLayout layout{.name = {},
                      .arrangement = arrangement,
                      .banks = usual_banks(arrangement, 12),
                      .exhaust_valves = 2,
                      .inlet_valves = 2,
                      .firing = "1-12-5-8-3-10-6-7-2-11-4-9"};
  layout.name = full_name(layout);
  return layout;
}

}  // namespace

std::vector<EngineLayout> layouts_of_48_valves() {
  return {twelve(Arrangement::vee), twelve(Arrangement::in_line)};
}

std::string entries_for(const EngineLayout& layout) {
  questions::Dice dice(1);
  std::ostringstream text;
  text << "[engine]\nname = invented\nunit = mm\nexhaust = 0.13 | 0.19 | 0.75 | A\n"
          "inlet = 0.13 | 0.19 | 0.75 | A\ndoubt = 0.01\ntouch good = yes\nwork = 0.5\n"
          "[valves]\n";
  for (const ValveId& valve : valves_of(layout)) {
    const std::int64_t shim = dice.between(2400, 2900);
    text << name_of(valve, layout) << " | " << mm(dice.between(70, 200)) << " | "
         << (shim + 2) / 5 * 5 << " | " << mm(shim) << '\n';
  }
  text << "[spares]\n";
  for (int i = 0; i < 12; ++i) text << "A | " << mm(dice.between(2300, 2900)) << " | 1\n";
  text << "[rows of sizes]\nA | 2.20 | 3.20 | 0.05 | 6.90\n"
          "[single sizes]\nA | 2.475 | 2 | 7.50\n";
  return text.str();
}

}  // namespace shimwright::bench
