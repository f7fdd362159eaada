// SPDX-License-Identifier: MPL-2.0
//
// What the book shows as lists: what to order, what is left over, the steps, the stops of the
// crank, the sizes on sale, the boxes and the remarks.
#include <algorithm>
#include <map>

#include "core/entries/entry_row.hpp"
#include "core/service/bench.hpp"
#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/service/view_parts.hpp"
#include "core/service/words/crank_words.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// In the first row of a list that is empty: `nothing`, or a dash where no plan stands.
void show_no_rows(ShownTable& table, const Findings& found) {
  if (!table.rows.empty()) return;
  table.put("series") = found.plan ? found.teller.say(Say::nothing) : "\u2013";
}

std::string number_shown(const Entry& entry, const Teller& teller) {
  const auto number = number_entered(entry);
  return number ? teller.number(*number) : std::string();
}

std::string size_shown(const std::optional<Length>& size, const Teller& teller) {
  return size ? teller.column(*size) : std::string();
}

// How the row is to look: `done`, `turn`, `wait`, `stand-in` or `step`.
std::string_view look_of(const Service::BenchEntries& step, const Teller& teller) {
  if (is_ticked(step)) return "done";
  if (step.kind == word_for(Step::Kind::turn) || step.kind == word_for(Step::Kind::finish))
    return "turn";
  if (step.kind == word_for(Step::Kind::wait)) return "wait";
  return step.from == teller.say(Say::stand_in) ? "stand-in" : "step";
}

}  // namespace

ShownTable show_order(const Service&, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{{"series", "size", "count", "price", "cost"}, {}};
  if (found.plan)
    for (const Purchase& bought : found.plan->order)
      table.rows.push_back({bought.series, teller.column(bought.size), std::to_string(bought.count),
                            teller.sum(bought.price), teller.sum(bought.count * bought.price)});
  show_no_rows(table, found);
  return table;
}

ShownTable show_surplus(const Service&, const Findings& found) {
  ShownTable table{{"series", "size", "count"}, {}};
  if (found.plan)
    for (const Leftover& left : found.plan->surplus)
      table.rows.push_back(
          {left.series, found.teller.column(left.size), std::to_string(left.count)});
  show_no_rows(table, found);
  return table;
}

ShownTable show_steps(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{{"kind", "step", "stop", "valve", "out", "in", "from", "note"}, {}};
  const auto rows = bench_steps(service, found);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Step& step = found.steps->steps[i];
    table.rows.push_back({rows[i].kind, std::to_string(i + 1), number_shown(rows[i].stop, teller),
                          rows[i].valve, size_shown(step.out, teller), size_shown(step.in, teller),
                          rows[i].from, bench_note(found, i)});
  }
  return table;
}

ShownTable show_bench(const Service& service, const Findings& found) {
  ShownTable table{{"kind", "ticked", "look"}, {}};
  for (const auto& step : service.bench)
    table.rows.push_back(
        {step.kind, yes_if(is_ticked(step)), std::string(look_of(step, found.teller))});
  return table;
}

ShownTable show_stops(const Service&, const Findings& found) {
  ShownTable table{{"stop", "words"}, {}};
  for (std::size_t i = 0; i < found.stops.size(); ++i)
    table.rows.push_back(
        {std::to_string(i + 1), stop_in_words(*found.firing, found.stops, i, found.teller)});
  return table;
}

ShownTable show_sizes(const Service&, const Findings& found) {
  const Teller& teller = found.teller;
  ShownTable table{{"comes to", "offered"}, {}};
  for (const SizesFindings& row : found.sizes) {
    const auto count = static_cast<std::int64_t>(row.sizes.size());
    std::string offered;
    if (count > 0) {
      offered = count == 1 ? teller.say(Say::offers_one, {teller.column(row.sizes.front())})
                           : teller.say(Say::offers,
                                        {count, teller.column(row.sizes.front()),
                                         teller.column(row.sizes.back()), teller.column(row.step)});
      if (!row.series.empty()) offered = teller.say(Say::led_by, {row.series, offered});
      if (row.cheaper > 0)
        offered += teller.say(Say::offers_cheaper, {static_cast<std::int64_t>(row.cheaper)});
    }
    table.rows.push_back({!row.entered   ? std::string()
                          : row.too_many ? teller.say(Say::sizes_beyond)
                          : count == 0   ? teller.say(Say::sizes_none)
                                         : teller.say(Say::sizes_counted, {count}),
                          offered});
  }
  return table;
}

ShownTable show_boxes(const Service& service, const Findings& found) {
  ShownTable table;
  const std::pair<std::string, std::vector<BoxLine>> boxes[] = {
      {"engine", box_of_engine(service, found)},     {"head", box_of_head(service, found)},
      {"shims", box_of_shims(service, found)},       {"plan", box_of_plan(service, found)},
      {"arrivals", box_of_arrivals(service, found)}, {"fit", box_of_fit(service, found)},
      {"recheck", box_of_recheck(service, found)}};
  for (const auto& [name, sentences] : boxes) {
    const auto given = service.boxes.find(name);
    const Service::Room room = given == service.boxes.end() ? Service::Room() : given->second;
    std::size_t row = 0;
    for (const BoxLine& line : fitted_into(room, sentences, found.teller)) {
      table.put(name, ++row) = line.words;
      table.put("mood " + name, row) = word_for(line.mood);
    }
  }
  return table;
}

// Those on the entries first, then what else Plan, Arrivals, Fit and Recheck have to say, as their
// boxes may have no room.
ShownTable show_remarks(const Service& service, const Findings& found) {
  constexpr std::size_t most = 200;
  std::vector<std::string> all = all_remarks(found);
  for (const auto& box : {box_of_plan(service, found), box_of_arrivals(service, found),
                          box_of_fit(service, found), box_of_recheck(service, found)})
    for (const BoxLine& line : box)
      if (line.mood != Mood::calm && !line.is_of_entry &&
          std::ranges::find(all, line.words) == all.end())
        all.push_back(line.words);
  ShownTable table{{"words"}, {}};
  for (const std::string& words : all)
    if (table.rows.size() < most) table.rows.push_back({words});
  return table;
}

}  // namespace shimwright
