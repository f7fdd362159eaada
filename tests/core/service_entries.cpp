// SPDX-License-Identifier: MPL-2.0
#include "service_entries.hpp"

#include <algorithm>
#include <stdexcept>

namespace shimwright::tests {
namespace {

constexpr double roomy_letters = 400;
constexpr double roomy_lines = 60;

}  // namespace

ServiceEntries::ServiceEntries(EngineLayout layout) {
  setting("firing", layout.firing);
  for (const char* side : {"exhaust", "inlet"}) set("side", side, 3, "A");
  for (const ValveId& valve : valves_of(layout)) {
    const std::string name = name_of(valve, layout);
    valves_.push_back(name);
    set("valve", name, 4, static_cast<double>(valve.cylinder));
    set("valve", name, 5, std::string(word_for(valve.side)));
  }
  for (const char* sheet : {"engine", "head", "shims", "plan", "arrivals", "fit", "recheck"})
    set("box", sheet, 0, roomy_letters).set("box", sheet, 1, roomy_lines);
}

ServiceEntries& ServiceEntries::set(const std::string& kind, const std::string& name,
                                    std::size_t value, Entry entry) {
  const auto known = std::ranges::find_if(rows_, [&](const std::vector<Entry>& row) {
    return row[0] == Entry(kind) && row[1] == Entry(name);
  });
  std::vector<Entry>& row =
      known != rows_.end() ? *known : rows_.emplace_back(std::vector<Entry>{kind, name});
  row.resize(std::max(row.size(), 3 + value));
  row[2 + value] = std::move(entry);
  return *this;
}

ServiceEntries& ServiceEntries::limits(double min, double max) {
  for (const char* side : {"exhaust", "inlet"}) set("side", side, 0, min).set("side", side, 1, max);
  return *this;
}

ServiceEntries& ServiceEntries::spare(int row, const std::string& series, Entry size) {
  const std::string name = std::to_string(row);
  return set("spare", name, 0, series).set("spare", name, 1, std::move(size));
}

ServiceEntries& ServiceEntries::sizes(int row, const std::string& series, double from, double to,
                                      double step, double price) {
  const std::string name = std::to_string(row);
  set("sizes", name, 0, series);
  std::size_t value = 0;
  for (const double number : {from, to, step, price}) set("sizes", name, ++value, number);
  return *this;
}

std::string ServiceEntries::of_valve(const View& view, const std::string& valve,
                                     std::string_view column) const {
  const auto known = std::ranges::find(valves_, valve);
  if (known == valves_.end()) throw std::out_of_range("no valve " + valve);
  for (const char* table : {"valves", "cards"})
    if (std::ranges::find(view[table].columns, column) != view[table].columns.end())
      return view[table].at(column, static_cast<std::size_t>(known - valves_.begin()) + 1);
  throw std::out_of_range("no column " + std::string(column));
}

ServiceEntries driven_engine() {
  ServiceEntries entries;
  entries.set("side", "exhaust", 0, 0.20).set("side", "exhaust", 1, 0.28);
  entries.set("side", "inlet", 0, 0.14).set("side", "inlet", 1, 0.22);
  entries.setting("distance unit", "km").setting("interval", 24'000.0);
  entries.set("box", "drift", 0, 1000.0).set("box", "drift", 1, 60.0);
  return entries;
}

std::string box_of(const View& view, std::string_view sheet) {
  std::string all;
  for (std::size_t row = 1; row <= view["boxes"].rows.size(); ++row) {
    const std::string& line = view["boxes"].at(sheet, row);
    if (!line.empty()) all += (all.empty() ? "" : "\n") + line;
  }
  return all;
}

}  // namespace shimwright::tests
