// SPDX-License-Identifier: MPL-2.0
#include "cells/tables.hpp"

#include <string>
#include <utility>

#include "cells/encode.hpp"
#include "core/fitting/steps.hpp"
#include "core/fitting/steps_entries.hpp"
#include "core/plan/plan.hpp"
#include "core/service/words/crank_words.hpp"

namespace shimwright::cells {
namespace {

using com::sun::star::uno::Any;

Entry entry_of(std::string_view text) { return std::string(text); }
Entry entry_of(std::int64_t count) { return static_cast<double>(count); }
Entry entry_of(Length length) { return length.mm(); }
Entry entry_of(Money money) { return money.amount(); }

template <class T>
Entry entry_of(const std::optional<T>& value) {
  return value ? entry_of(*value) : Entry();
}

std::vector<Entry> row_of(const Valve& valve, const PlanLine& line,
                          const std::vector<Valve>& valves) {
  return {entry_of(valve.name),
          entry_of(word_for(line.action)),
          entry_of(line.from ? valves[*line.from].name : std::string()),
          entry_of(line.size),
          entry_of(line.after),
          entry_of(word_for(line.state)),
          entry_of(line.margin),
          entry_of(line.cost)};
}

// A blank row among the valves keeps its place.
std::vector<Entry> blank_row() {
  const Entry text = std::string();
  return {text, text, text, Entry(), Entry(), text, Entry(), Entry()};
}

EntryTable steps_rows(const StepsAsked& asked) {
  const Entries entries = read_entries(asked.valves, asked.shims, asked.rules);
  const PlanQuestion& question = sound_question(entries);
  EntryTable rows;
  for (const Step& step :
       told_steps(fitting_steps(read_fitting(question, best_plan(question), asked.stops)))) {
    const auto number = static_cast<std::int64_t>(rows.size() + 1);
    rows.push_back({entry_of(number), step.stop ? entry_of(std::int64_t{*step.stop}) : Entry(),
                    entry_of(step.valve ? question.valves[*step.valve].name : std::string()),
                    entry_of(step.out), entry_of(step.in), entry_of(step.from),
                    entry_of(in_words(step.notes, Teller()))});
  }
  return rows;
}

}  // namespace

Any plan_table(const Entries& entries, std::string_view part) {
  const PlanQuestion& question = sound_question(entries);
  const Plan plan = best_plan(question);
  EntryTable rows;
  for (const auto& valve : entries.valve_rows)
    rows.push_back(valve ? row_of(question.valves[*valve], plan.lines[*valve], question.valves)
                         : blank_row());
  return table_result({{"valve", Column::text},
                       {"action", Column::text},
                       {"from", Column::text},
                       {"size", Column::number},
                       {"after", Column::number},
                       {"state", Column::text},
                       {"margin", Column::number},
                       {"cost", Column::number}},
                      rows, part);
}

Any order_table(const Entries& entries, std::string_view part) {
  EntryTable rows;
  for (const Purchase& bought : best_plan(sound_question(entries)).order)
    rows.push_back({entry_of(bought.series), entry_of(bought.size), entry_of(bought.count),
                    entry_of(bought.price), entry_of(bought.count * bought.price)});
  return table_result({{"series", Column::text},
                       {"size", Column::number},
                       {"count", Column::number},
                       {"price", Column::number},
                       {"cost", Column::number}},
                      rows, part);
}

Any surplus_table(const Entries& entries, std::string_view part) {
  EntryTable rows;
  for (const Leftover& left : best_plan(sound_question(entries)).surplus)
    rows.push_back({entry_of(left.series), entry_of(left.size), entry_of(left.count)});
  return table_result(
      {{"series", Column::text}, {"size", Column::number}, {"count", Column::number}}, rows, part);
}

Any steps_table(StepsAsked asked, std::string_view part) {
  // A book asks for each column by itself, and the search can take long: the last answer is kept.
  static thread_local std::optional<std::pair<StepsAsked, EntryTable>> last;
  if (!last || last->first != asked) {
    EntryTable rows = steps_rows(asked);
    last.emplace(std::move(asked), std::move(rows));
  }
  return table_result({{"step", Column::number},
                       {"stop", Column::number},
                       {"valve", Column::text},
                       {"out", Column::number},
                       {"in", Column::number},
                       {"from", Column::text},
                       {"note", Column::text}},
                      last->second, part);
}

Any check_table(const Entries& entries, std::string_view part) {
  EntryTable rows;
  for (const Trouble& trouble : entries.troubles)
    rows.push_back({entry_of(trouble.table),
                    trouble.row == 0 ? Entry() : entry_of(static_cast<std::int64_t>(trouble.row)),
                    entry_of(trouble.column), entry_of(sentence(trouble))});
  if (rows.empty()) rows.push_back({Entry(), Entry(), Entry(), entry_of("nothing found")});
  return table_result({{"table", Column::text},
                       {"row", Column::number},
                       {"column", Column::text},
                       {"trouble", Column::text}},
                      rows, part);
}

Any stops_table(const std::optional<Firing>& firing, const ValveTiming& timing, CrankAngle margin,
                std::string_view part) {
  EntryTable rows;
  const auto stops = firing ? crank_stops(*firing, timing, margin) : std::vector<CrankStop>();
  for (std::size_t i = 0; i < stops.size(); ++i) {
    const std::string words = stop_in_words(*firing, stops, i, Teller());
    for (const auto& [place, clear] : stops[i].reachable)
      rows.push_back({entry_of(static_cast<std::int64_t>(i + 1)), stops[i].angle.degrees(),
                      entry_of(std::int64_t{place.cylinder}), entry_of(word_for(place.side)),
                      clear.degrees(), entry_of(words)});
  }
  return table_result({{"stop", Column::number},
                       {"angle", Column::number},
                       {"cylinder", Column::number},
                       {"side", Column::text},
                       {"clear", Column::number},
                       {"words", Column::text, false}},
                      rows, part);
}

}  // namespace shimwright::cells
