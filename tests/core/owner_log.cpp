// SPDX-License-Identifier: MPL-2.0
#include "owner_log.hpp"

#include "core/engine/layout.hpp"
#include "core/service/findings.hpp"

namespace shimwright {

Typed day(int year, int month, int date) {
  Typed typed(day_number(year, month, date).value());
  typed.cell.is_date = true;
  return typed;
}

OwnerTable sheet(std::initializer_list<std::initializer_list<Typed>> rows) {
  OwnerTable table;
  for (const auto& row : rows) {
    auto& cells = table.rows.emplace_back();
    for (const Typed& typed : row) cells.push_back(typed.cell);
  }
  return table;
}

BringInBook invented_log_book() {
  BringInBook book;
  const EngineLayout layout = inline_four();
  for (const ValveId& valve : valves_of(layout)) book.valves.push_back(name_of(valve, layout));
  book.size_marked = [](const Entry& mark) { return size_marked(Service(), mark); };
  return book;
}

std::vector<LogRow> invented_log() {
  std::vector<LogRow> log;
  const std::vector<std::string> valves = invented_log_book().valves;
  for (int check = 1; check <= 4; ++check)
    for (std::size_t valve = 0; valve < valves.size(); ++valve) {
      LogRow row;
      row.check = check;
      row.round = 1;
      row.date = 40'000.0 + 400 * check;
      row.distance = 12'000.0 * check + 37;
      row.valve = valves[valve];
      const auto step = static_cast<std::int64_t>(valve);
      row.gap_found = 0.25_mm - (10 * check + step) * Length::nanometres(1000);
      row.shim_found = 2.70_mm + step * Length::nanometres(10'000);
      row.shim_fitted = valve % 5 == 0 ? *row.shim_found - 0.05_mm : *row.shim_found;
      row.gap_left = *row.gap_found + *row.shim_found - *row.shim_fitted;
      row.predicted = row.gap_left;
      row.state = "good";
      row.temperature = 18;
      row.who = "Sam";
      row.note = valve == 3 ? "lobe looks dull" : "";
      log.push_back(row);
    }
  return log;
}

}  // namespace shimwright
