// SPDX-License-Identifier: MPL-2.0
//
// How the valves lie: an engine has one bank of cylinders in line, or two as a V or flat. Each
// bank has its own head; seen from above it has the exhaust valves along one side and the inlet
// valves along the other, cylinder beside cylinder. A book is built for one layout.
#pragma once

#include <string>
#include <vector>

#include "core/engine/side.hpp"

namespace shimwright {

enum class Arrangement { in_line, vee, flat };

struct Bank {
  std::string name;            // such as `left`; empty where there is one bank only
  std::vector<int> cylinders;  // their numbers as they lie from left to right
  bool exhaust_above = true;   // which side is on top of the chart
  bool operator==(const Bank&) const = default;
};

struct EngineLayout {
  std::string name;  // as a person would say it: `inline four, 16 valves`
  Arrangement arrangement = Arrangement::in_line;
  std::vector<Bank> banks;
  int exhaust_valves = 2;  // per cylinder
  int inlet_valves = 2;
  std::string firing;  // the order in which the cylinders fire: `1-3-4-2`
};

// `place` counts from the left as seen in the chart, from 0.
struct ValveId {
  int cylinder = 0;
  Side side = Side::exhaust;
  int place = 0;
  bool operator==(const ValveId&) const = default;
};

// `1 EX L`: the cylinder, the side (EX, IN), the place (L, M, R; none where the valve is alone).
std::string name_of(const ValveId& valve, const EngineLayout& layout);

// By cylinder number, the exhaust valves of each before its inlet valves, from the left: the order
// of every table in the book.
std::vector<ValveId> valves_of(const EngineLayout& layout);

int cylinders_of(const EngineLayout& layout);

// `in line`, `V`, `flat`.
std::string word_for(Arrangement arrangement);

// The usual small-boat and roadster engine: four cylinders in line, two inlet and two exhaust
// valves each.
EngineLayout inline_four();

}  // namespace shimwright
