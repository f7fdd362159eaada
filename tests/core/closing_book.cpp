// SPDX-License-Identifier: MPL-2.0
#include "closing_book.hpp"

#include <stdexcept>

#include "core/service/bench_commands.hpp"
#include "core/service/entered.hpp"
#include "core/service/recheck.hpp"

namespace shimwright::tests {
namespace {

std::vector<std::string> sentences(const std::vector<Told>& all, const Teller& teller) {
  std::vector<std::string> words;
  for (const Told& one : all) words.push_back(in_words(one, teller));
  return words;
}

}  // namespace

void ClosingBook::all_good() {
  limits(0.15, 0.25);
  for (const std::string& valve : valves()) gap(valve, 0.20).micrometer(valve, 2.70);
}

void ClosingBook::drawer_rows(int rows) {
  for (int row = 1; row <= rows; ++row) {
    const std::string name = std::to_string(row);
    const auto keep = [&](const std::string& kind, std::size_t value) {
      set(kind, name, value, entry(kind, name, value));
    };
    for (std::size_t value = 0; value < 3; ++value) keep("spare", value);
    keep("note", 0);
  }
}

ClosingBook& ClosingBook::arrival(int row, Entry ordered, Entry arrived) {
  const std::string name = std::to_string(row);
  set("arrival", name, 6, entry("arrival", name, 6));
  set("arrival", name, 1, std::move(ordered)).set("arrival", name, 4, std::move(arrived));
  return *this;
}

void ClosingBook::write(const std::vector<EntryWrite>& writes) {
  for (const EntryWrite& one : writes)
    set(one.kind, one.name, static_cast<std::size_t>(one.value), one.what);
}

void ClosingBook::take_to_bench() {
  clear_bench();
  const Service now = service();
  const auto rows = rows_for_bench(now, findings_in(now));
  if (rows.empty()) throw std::logic_error("there is nothing to take to the bench");
  steps_ = static_cast<int>(rows.size());
  for (int i = 1; i <= steps_; ++i) {
    const Service::BenchEntries& step = rows[static_cast<std::size_t>(i) - 1].step;
    const std::string name = std::to_string(i);
    std::size_t value = 0;
    for (const Entry& what : {Entry(step.kind), step.stop, Entry(step.valve), step.out, step.in,
                              Entry(step.from), Entry()})
      set("bench", name, value++, what);
  }
}

void ClosingBook::clear_bench() {
  for (int i = 1; i <= steps_; ++i)
    for (std::size_t value = 0; value < 7; ++value) set("bench", std::to_string(i), value, Entry());
  steps_ = 0;
}

void ClosingBook::tick(int step, Entry mark) {
  set("bench", std::to_string(step), 6, std::move(mark));
}

void ClosingBook::tick_all() {
  for (int i = 1; i <= steps_; ++i) tick(i);
}

void ClosingBook::recheck_as_predicted() {
  const Service now = service();
  const auto all = recheck_in(now, findings_in(now));
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].opened && all[i].predicted)
      set("recheck", now.valves[i].name, 0,
          in_unit(std::max(Length(), *all[i].predicted), unit_of(now)));
}

Entry ClosingBook::entry(const std::string& kind, const std::string& name,
                         std::size_t value) const {
  for (const auto& row : rows())
    if (row[0] == Entry(kind) && row[1] == Entry(name))
      return value + 2 < row.size() ? row[value + 2] : Entry();
  return {};
}

Closing ClosingBook::closing(const ClosingEntries& said, const EntryTable& log) const {
  const Service now = service();
  return closing_of(now, findings_in(now), log, said, closing_today);
}

std::vector<std::string> ClosingBook::refusals(const ClosingEntries& said,
                                               const EntryTable& log) const {
  return sentences(closing(said, log).refusals, findings_in(service()).teller);
}

std::vector<std::string> ClosingBook::questions(const ClosingEntries& said,
                                                const EntryTable& log) const {
  return sentences(closing(said, log).questions, findings_in(service()).teller);
}

std::string ClosingBook::deeds(const ClosingEntries& said, const EntryTable& log) const {
  return in_words(closing(said, log).deeds, findings_in(service()).teller);
}

void ClosingBook::close(const ClosingEntries& said, const EntryTable& log) {
  const Closing done = closing(said, log);
  if (!done.refusals.empty()) throw std::logic_error("the check cannot be closed");
  write(done.writes);
  clear_bench();
}

std::vector<std::string> ClosingBook::drawer() const {
  std::vector<std::string> rows;
  const Service now = service();
  const Findings found = findings_in(now);
  for (const auto& spare : now.spares)
    if (const auto size = length_entered(spare.size, found.teller.unit())) {
      const Entry note = entry("note", std::to_string(spare.row), 0);
      rows.push_back(found.teller.column(*size) + " x" +
                     std::to_string(static_cast<int>(number_entered(spare.count).value_or(1))) +
                     (note == Entry() ? "" : " " + std::get<std::string>(note)));
    }
  return rows;
}

std::map<std::pair<std::string, Length>, int> ClosingBook::shims() const {
  std::map<std::pair<std::string, Length>, int> all;
  const Service now = service();
  const Findings found = findings_in(now);
  for (std::size_t i = 0; i < now.valves.size(); ++i)
    if (found.valves[i].shim) ++all[{found.of(now.valves[i].side).series, *found.valves[i].shim}];
  for (const auto& spare : now.spares)
    if (const auto size = length_entered(spare.size, found.teller.unit()))
      all[{not_given(spare.series) ? found.one_series : std::get<std::string>(spare.series),
           *size}] += static_cast<int>(number_entered(spare.count).value_or(1));
  for (const ArrivalFindings& shim : found.arrivals)
    if (shim.state == ArrivalState::arrived && shim.size) ++all[{shim.series, *shim.size}];
  return all;
}

}  // namespace shimwright::tests
