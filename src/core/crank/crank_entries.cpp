// SPDX-License-Identifier: MPL-2.0
#include "core/crank/crank_entries.hpp"

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/crank/firing_written.hpp"
#include "core/entries/entry_row.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

namespace firing_row {
enum { cylinder, angle };
constexpr std::array<EntryColumn, 2> columns{{{"cylinder"}, {"firing angle"}}};
constexpr std::array<std::size_t, 2> number_columns{cylinder, angle};
constexpr TableDescription layout{"firing", columns, columns.size(), number_columns};
}  // namespace firing_row

constexpr std::array<std::pair<std::string_view, CrankAngle ValveTiming::*>, 4> timings{
    {{"inlet opens before TDC", &ValveTiming::inlet_opens_before_tdc},
     {"inlet closes after BDC", &ValveTiming::inlet_closes_after_bdc},
     {"exhaust opens before BDC", &ValveTiming::exhaust_opens_before_bdc},
     {"exhaust closes after TDC", &ValveTiming::exhaust_closes_after_tdc}}};

bool one_cell(const EntryTable& table) { return table.size() == 1 && table.front().size() == 1; }

double firing_number(EntryRow& row, std::size_t column) {
  if (const auto* number = std::get_if<double>(&row.at(column))) return *number;
  if (is_blank(row.at(column)))
    row.grave(column, Say::entry_missing);
  else
    row.grave(column, Say::not_a_number, {shortened(row.word_at(column))});
  return 0;
}

// None where nothing is given.
std::optional<CrankAngle> degrees_in(const Entry& entry, const std::string& place) try {
  if (const auto* number = std::get_if<double>(&entry)) return CrankAngle::of(*number);
  if (is_blank(entry)) return std::nullopt;
  throw BadInput(in_quotes(word_in(entry)) + " is not a number of degrees");
} catch (const BadInput& trouble) {
  throw BadInput(place + ": " + trouble.what());
}

}  // namespace

std::optional<Firing> read_firing(const EntryTable& firing) {
  std::vector<Trouble> troubles;
  if (one_cell(firing)) {
    const Entry& line = firing[0][0];
    if (is_blank(line) || line == Entry(0.0)) return std::nullopt;
    return firing_written(word_in(line));
  }
  const auto first = first_row(firing_row::layout, firing, troubles);
  std::vector<FiringRow> rows;
  for (std::size_t i = first.value_or(firing.size()); i < firing.size(); ++i) {
    EntryRow row(firing_row::layout, i + 1, firing[i], troubles);
    if (is_blank(row.at(firing_row::cylinder)) && is_blank(row.at(firing_row::angle))) continue;
    const double number = firing_number(row, firing_row::cylinder);
    rows.push_back({number, firing_number(row, firing_row::angle)});
  }
  if (!troubles.empty()) throw BadInput(in_words(troubles.front()));
  if (rows.empty()) return std::nullopt;
  return Firing::at_angles(rows);
}

ValveTiming read_timing(const EntryTable& timing) {
  ValveTiming read;
  std::vector<Entry> cells;
  for (const auto& row : timing) cells.insert(cells.end(), row.begin(), row.end());
  if (cells.empty() || (one_cell(timing) && (is_blank(cells[0]) || cells[0] == Entry(0.0))))
    return read;
  const bool row_or_column = timing.size() == 1 || timing.front().size() == 1;
  if (!row_or_column || cells.size() != timings.size())
    throw BadInput("timing is a row or a column of four numbers of degrees, not " +
                   std::to_string(timing.size()) + " by " + std::to_string(timing.front().size()) +
                   " cells");
  for (std::size_t i = 0; i < timings.size(); ++i) {
    const auto& [name, member] = timings[i];
    if (const auto given = degrees_in(cells[i], "timing, " + std::string(name)))
      read.*member = *given;
  }
  return read;
}

CrankAngle read_margin(const Entry& margin) {
  const CrankAngle given = degrees_in(margin, "margin").value_or(CrankAngle());
  return given == CrankAngle() ? usual_margin : given;
}

}  // namespace shimwright
