// SPDX-License-Identifier: MPL-2.0
#include "service_model.hpp"

#include <algorithm>
#include <set>
#include <stdexcept>

namespace shimwright::tests {

std::string in_mm(int micrometres) {
  const std::string digits = std::to_string(1000 + micrometres % 1000);
  return std::to_string(micrometres / 1000) + "." + digits.substr(1);
}

PaperValve& PaperService::at(const std::string& valve) {
  const auto found = std::ranges::find(valves_, valve, &PaperValve::name);
  if (found == valves_.end()) throw std::logic_error("no valve " + valve);
  return *found;
}

PaperShim PaperService::shim_of(const PaperMove& move) {
  if (move.from == "bought") return move.shim;
  // The drawer's list says what a spare measures.
  if (move.from == "spare") return {move.shim.size, "", in_mm(move.shim.size)};
  return at(move.from).shim;
}

std::vector<std::string> PaperService::steps_of(const std::vector<PaperMove>& moves) {
  std::vector<std::string> steps;
  for (const PaperMove& move : moves)
    steps.push_back(move.valve + " out " + in_mm(at(move.valve).shim.size) + " in " +
                    in_mm(shim_of(move).size) + " from " + move.from);
  return steps;
}

void PaperService::end_round(const PaperFacts& facts, const std::vector<PaperMove>& moves,
                             const std::map<std::string, int>& new_gaps,
                             const std::map<std::string, std::string>& why) {
  std::map<std::string, PaperShim> fitted;
  std::set<std::string> givers;
  for (const PaperMove& move : moves) {
    fitted[move.valve] = shim_of(move);
    givers.insert(move.from);
    if (move.from == "spare" && --drawer_.at(move.shim.size).count == 0)
      drawer_.erase(move.shim.size);
  }
  for (const PaperMove& move : moves)
    if (!givers.contains(move.valve)) {
      PaperSpare& row = drawer_[at(move.valve).shim.size];
      ++row.count;
      row.note += (row.note.empty() ? "out of " : "; out of ") + move.valve + ", " + facts.date;
    }
  for (PaperValve& valve : valves_) {
    const bool changed = fitted.contains(valve.name);
    const PaperShim after = changed ? fitted[valve.name] : valve.shim;
    const auto again = new_gaps.find(valve.name);
    if (changed && again == new_gaps.end()) throw std::logic_error(valve.name + " not measured");
    const int left = again == new_gaps.end() ? valve.gap : again->second;
    std::string note = facts.note;
    if (const auto words = why.find(valve.name); words != why.end())
      note += (note.empty() ? "" : "; ") + words->second;
    std::string row;
    for (const std::string& cell :
         {std::to_string(facts.check), std::to_string(facts.round), facts.date, facts.distance,
          valve.name, in_mm(valve.gap), valve.state_of(valve.gap), in_mm(valve.shim.size),
          in_mm(after.size), in_mm(left), in_mm(valve.gap + valve.shim.size - after.size),
          facts.temperature, facts.who, note})
      row += (row.empty() ? "" : " | ") + cell;
    log_.push_back(row);
    valve.shim = after;
    valve.gap = left;
  }
}

}  // namespace shimwright::tests
