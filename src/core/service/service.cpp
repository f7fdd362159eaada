// SPDX-License-Identifier: MPL-2.0
#include "core/service/service.hpp"

#include <algorithm>

#include <cstddef>
#include <string_view>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/fitting/steps.hpp"
#include "core/service/entry_value.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

using Row = std::vector<Entry>;

const Entry& value_at(const Row& row, std::size_t index) {
  static const Entry nothing;
  return index + 2 < row.size() ? row[index + 2] : nothing;
}

std::string text_at(const Row& row, std::size_t index) { return word_in(value_at(row, index)); }

int whole_in(const Entry& entry) {
  const auto* number = std::get_if<double>(&entry);
  return number && *number >= 0 && *number <= 1e6 ? static_cast<int>(*number) : 0;
}

// The number that stands before a row of a list is its name.
int row_number(const Row& row) {
  if (const int number = whole_in(row[1])) return number;
  const auto written = number_written(word_in(row[1]));
  return written ? whole_in(*written) : 0;
}

std::optional<Side> side_named(std::string_view word) {
  for (const Side side : {Side::inlet, Side::exhaust})
    if (same_word(word, word_for(side))) return side;
  return std::nullopt;
}

constexpr std::pair<std::string_view, Entry Service::*> settings[] = {
    {"engine", &Service::engine},
    {"unit", &Service::unit},
    {"language", &Service::language},
    {"half", &Service::half},
    {"currency", &Service::currency},
    {"doubt", &Service::doubt},
    {"allowed difference", &Service::allowed_difference},
    {"marks", &Service::marks},
    {"stay clear", &Service::stay_clear},
    {"touch good", &Service::touch_good},
    {"first", &Service::first},
    {"work", &Service::work},
    {"nearest", &Service::nearest},
    {"firing", &Service::firing},
    {"margin", &Service::margin},
    {"camshafts out", &Service::camshafts_out},
    {"distance unit", &Service::distance_unit},
    {"interval", &Service::interval},
    {"earlier distance", &Service::earlier},
    {"check", &Service::check_number},
    {"round", &Service::round}};

void read_setting(Service& service, const Row& row) {
  for (const auto& [name, member] : settings)
    if (same_word(word_in(row[1]), name)) service.*member = value_at(row, 0);
  if (same_word(word_in(row[1]), "readings off")) service.readings_off = value_at(row, 0);
}

void read_side(Service& service, const Row& row) {
  const auto side = side_named(word_in(row[1]));
  if (!side) return;
  service.of(*side) = {value_at(row, 0), value_at(row, 1), value_at(row, 2),
                       value_at(row, 3), value_at(row, 4), value_at(row, 5)};
}

void read_valve(Service& service, const Row& row) {
  service.valves.push_back({word_in(row[1]), whole_in(value_at(row, 4)),
                            side_named(text_at(row, 5)).value_or(Side::exhaust), value_at(row, 0),
                            value_at(row, 1), value_at(row, 2), value_at(row, 3)});
}

// A book keeps its readings in rows of their own, below all others.
void read_gap(Service& service, const Row& row) {
  const auto valve =
      std::ranges::find(service.valves, word_in(row[1]), &Service::ValveEntries::name);
  if (valve != service.valves.end()) valve->gap = value_at(row, 0);
}

Service::ShimEntries shims_in(const Row& row) {
  return {row_number(row), value_at(row, 0), value_at(row, 1), value_at(row, 2), value_at(row, 3)};
}

void read_spare(Service& service, const Row& row) { service.spares.push_back(shims_in(row)); }
void read_note(Service& service, const Row& row) {
  service.spare_notes[row_number(row)] = value_at(row, 0);
}
void read_single(Service& service, const Row& row) { service.singles.push_back(shims_in(row)); }

void read_sizes(Service& service, const Row& row) {
  service.sizes.push_back({row_number(row), value_at(row, 0), value_at(row, 1), value_at(row, 2),
                           value_at(row, 3), value_at(row, 4)});
}

void read_arrival(Service& service, const Row& row) {
  service.arrivals.push_back({row_number(row), value_at(row, 0), value_at(row, 1), value_at(row, 2),
                              value_at(row, 3), value_at(row, 4), value_at(row, 5),
                              value_at(row, 6)});
}

void read_recheck(Service& service, const Row& row) {
  service.recheck.push_back({word_in(row[1]), value_at(row, 0), value_at(row, 1)});
}

void read_bench(Service& service, const Row& row) {
  const std::string kind = text_at(row, 0);
  if (kind.empty()) return;
  // Where the crank is turned the cell of the valve holds a word for the eye.
  const bool at_valve = kind != word_for(Step::Kind::turn) && kind != word_for(Step::Kind::finish);
  service.bench.push_back({kind, value_at(row, 1), at_valve ? text_at(row, 2) : std::string(),
                           value_at(row, 3), value_at(row, 4), text_at(row, 5), value_at(row, 6)});
}

void read_taken(Service& service, const Row& row) {
  service.bench_taken = text_at(row, 0);
  service.gaps_taken = text_at(row, 1);
}

void read_drawn(Service& service, const Row& row) { service.drawn = text_at(row, 0); }

void read_box(Service& service, const Row& row) {
  const int letters = whole_in(value_at(row, 0));
  const int lines = whole_in(value_at(row, 1));
  if (letters > 0 && lines > 0) service.boxes[lower_case(word_in(row[1]))] = {letters, lines};
}

constexpr std::pair<std::string_view, void (*)(Service&, const Row&)> kinds[] = {
    {"setting", read_setting}, {"side", read_side},       {"valve", read_valve},
    {"spare", read_spare},     {"note", read_note},       {"sizes", read_sizes},
    {"single", read_single},   {"arrival", read_arrival}, {"recheck", read_recheck},
    {"bench", read_bench},     {"taken", read_taken},     {"drawn", read_drawn},
    {"box", read_box},         {kind_of_gaps, read_gap}};

}  // namespace

Service service_of(const EntryTable& entries) {
  Service service;
  for (const Row& row : entries) {
    if (row.size() < 2) continue;
    for (const auto& [kind, read] : kinds)
      if (same_word(word_in(row[0]), kind)) read(service, row);
  }
  return service;
}

}  // namespace shimwright
