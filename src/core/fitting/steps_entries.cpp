// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_entries.hpp"

#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/entries/entry_row.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

namespace stop_row {
enum { valve, stop };
constexpr std::array<EntryColumn, 2> columns{{{"valve"}, {"stop"}}};
constexpr std::array<std::size_t, 1> number_columns{stop};
constexpr TableDescription layout{"stops", columns, columns.size(), number_columns};
}  // namespace stop_row

constexpr double highest_stop = 1000;  // a number beyond is an angle or a slip

// What is wrong with the number of a stop, and with which; or nothing.
std::optional<std::pair<Say, Word>> trouble_with(const Entry& entry) {
  const auto* number = std::get_if<double>(&entry);
  if (number == nullptr) return std::pair(Say::not_a_stop, Word(shortened(word_in(entry))));
  if (*number >= 1 && *number <= highest_stop && *number == std::floor(*number)) return {};
  return std::pair(Say::not_a_stops_number, Word(*number));
}

bool says_camshafts_out(const EntryTable& stops) {
  if (stops.empty() || stops.front().empty()) return true;
  if (stops.size() > 1 || stops.front().size() > 1) return false;
  const Entry& word = stops[0][0];
  if (is_blank(word) || word == Entry(0.0)) return true;  // a blank cell comes as a zero
  if (const auto trouble = trouble_with(word))
    throw BadInput(
        in_words(trouble_with_table(stop_row::layout.table, trouble->first, {trouble->second})));
  return true;
}

std::vector<OpenAt> read_rows(const EntryTable& stops, const std::vector<Valve>& valves) {
  std::map<std::string, std::size_t> index;
  for (std::size_t i = 0; i < valves.size(); ++i) index.emplace(lower_case(valves[i].name), i);
  std::vector<Trouble> troubles;
  std::vector<OpenAt> open;
  const auto names_a_valve = [&index](const EntryRow& row) {
    return index.contains(lower_case(row.word_at(stop_row::valve)));
  };
  const auto first = first_row(stop_row::layout, stops, troubles, names_a_valve);
  for (std::size_t i = first.value_or(stops.size()); i < stops.size(); ++i) {
    EntryRow row(stop_row::layout, i + 1, stops[i], troubles);
    if (is_blank(row.at(stop_row::stop))) continue;
    const std::string name = row.word_at(stop_row::valve);
    const auto found = index.find(lower_case(name));
    if (name.empty())
      row.grave(stop_row::valve, Say::stop_without_valve);
    else if (found == index.end())
      row.grave(stop_row::valve, Say::none_of_the_valves, {shortened(name)});
    else if (const auto trouble = trouble_with(row.at(stop_row::stop)))
      row.grave(stop_row::stop, trouble->first, {trouble->second});
    else
      open.push_back({found->second, static_cast<int>(std::get<double>(row.at(stop_row::stop)))});
  }
  if (!troubles.empty()) throw BadInput(in_words(troubles.front()));
  return open;
}

}  // namespace

FittingQuestion read_fitting(const PlanQuestion& question, const Plan& plan,
                             const EntryTable& stops) {
  const bool camshafts_out = says_camshafts_out(stops);
  FittingQuestion fitting = fitting_of(
      question, plan, camshafts_out ? std::vector<OpenAt>() : read_rows(stops, question.valves));
  fitting.camshafts_out = camshafts_out;
  return fitting;
}

std::vector<Step> told_steps(FittingSteps found) {
  if (!found.least && !found.steps.empty())
    found.steps.back().notes.push_back({Say::steps_maybe_fewer});
  return std::move(found.steps);
}

}  // namespace shimwright
