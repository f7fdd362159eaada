// SPDX-License-Identifier: MPL-2.0
#include "core/service/boxes.hpp"

#include <algorithm>
#include <utility>

#include "core/service/bench.hpp"
#include "core/service/box_writer.hpp"
#include "core/service/gaps_taken.hpp"
#include "core/service/view_parts.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

bool is_calm(const BoxLine& line) { return line.mood == Mood::calm; }

// What the nearest size would leave, for each valve that none serves.
std::vector<std::string> nearest_of_each(const Service& service, const Findings& found) {
  std::vector<std::string> valves;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i) {
    const ValvePlan& plan = found.valve_plans[i];
    if (!plan.nearest) continue;
    const auto& valve = service.valves[i];
    valves.push_back(found.teller.say(Say::nearest_of,
                                      {valve.name, found.teller.column(*plan.nearest),
                                       nearest_leaves(plan, found.of(valve.side), found.teller)}));
  }
  return valves;
}

// The crank was turned after that step, counted from 1, by the ticks.
bool is_turned_since(const Service& service, int step) {
  return std::any_of(service.bench.begin() + step, service.bench.end(), [](const auto& later) {
    const bool turns =
        later.kind == word_for(Step::Kind::turn) || later.kind == word_for(Step::Kind::finish);
    return turns && is_ticked(later);
  });
}

}  // namespace

std::string_view word_for(Mood mood) {
  switch (mood) {
    case Mood::calm:
      return "calm";
    case Mood::remark:
      return "remark";
    case Mood::loud:
      return "loud";
  }
  return {};
}

std::vector<BoxLine> box_of_engine(const Service& service, const Findings& found) {
  BoxWriter box(service, found);
  box.add_mend_first(Page::head, Say::sheet_head);
  box.add_remarks_on(Page::engine);
  box.add_calm(Say::begin_here);
  return std::move(box).lines();
}

std::vector<BoxLine> box_of_head(const Service& service, const Findings& found) {
  BoxWriter box(service, found);
  box.add_changed_gaps();
  box.add_readings_off();
  if (is_any_shim_changed(service)) box.add(Mood::remark, {Say::head_as_found});
  // Without its limits Head has no verdict, so here every remark on Engine counts.
  if (found.remarks_on(Page::engine) > 0)
    box.add(Mood::loud, {Say::mend_first, {Say::sheet_engine}});
  box.add_remarks_on(Page::head);
  box.add_calm(Say::begin_on_engine);
  return std::move(box).lines();
}

std::vector<BoxLine> box_of_shims(const Service& service, const Findings& found) {
  BoxWriter box(service, found);
  box.add_mend_first(Page::engine, Say::sheet_engine);
  box.add_mend_first(Page::head, Say::sheet_head);
  box.add_remarks_on(Page::shims);
  for (const Told& note : found.notes_on_shims) box.add(Mood::remark, note);
  box.add_calm(Say::begin_on_engine);
  return std::move(box).lines();
}

std::vector<BoxLine> box_of_plan(const Service& service, const Findings& found) {
  BoxWriter box(service, found);
  box.add_changed_gaps();
  box.add_readings_off();
  box.add_valves_that_stay_outside();
  if (const auto nearest = nearest_of_each(service, found); !nearest.empty())
    box.add(Mood::remark, {Say::nearest_listed, {nearest}});
  box.add_all_remarks();
  box.add_stand_ins_wanted();
  box.add_near_limits();
  box.add_still_to_come();
  box.add_calm(Say::begin_on_engine);
  return std::move(box).lines();
}

Word named(const std::vector<std::string>& names, const Teller& teller) {
  constexpr std::size_t most_named = 8;
  if (names.size() <= most_named) return names;
  return teller.say(Say::valves_counted, {static_cast<std::int64_t>(names.size())});
}

std::string changed_gaps_in_words(const Service& service, const Findings& found) {
  std::vector<std::string> told;
  for (const ChangedGap& gap : gaps_changed_since_taken(service, found)) {
    const std::string& valve = service.valves[gap.valve].name;
    told.push_back(gap.then ? found.teller.say(Say::gap_was, {valve, *gap.then})
                            : found.teller.say(Say::gap_was_blank, {valve}));
  }
  return told.empty() ? std::string() : found.teller.say(Say::gaps_changed_on_head, {told});
}

std::string missing_in_words(const Service& service, const Findings& found) {
  auto missing = shims_not_in_hand(found);
  // What is in by the ticks is there, whatever Arrivals says.
  for (const FittedShim& shim : shims_fitted(service))
    std::erase_if(missing, [&](const MissingShim& one) {
      return service.valves[one.valve].name == shim.valve;
    });
  if (missing.empty()) return {};
  return found.teller.say(Say::shims_missing, {shims_listed(service, found, missing)});
}

Told left_out_in_words(const Service& service) {
  const int step = step_left_out(service).value();
  if (const auto stop = stop_of_step(service, step); stop && is_turned_since(service, step))
    return {Say::bench_left_out_stop, {std::int64_t{step}, std::int64_t{*stop}}};
  return {Say::bench_left_out, {std::int64_t{step}}};
}

std::vector<BoxLine> fitted_into(const Service::Room& room, const std::vector<BoxLine>& sentences,
                                 const Teller& teller, Say more_words) {
  // Calm words below a remark stand on its ground: it is one box.
  const bool all_calm = std::ranges::all_of(sentences, is_calm);
  std::vector<BoxLine> lines;
  for (const BoxLine& sentence : sentences) {
    const Mood mood = is_calm(sentence) && !all_calm ? Mood::remark : sentence.mood;
    const std::string words =
        sentences.size() > 1 ? teller.say(Say::bullet, {sentence.words}) : sentence.words;
    for (std::string& line : broken_into_lines(words, static_cast<std::size_t>(room.letters)))
      lines.push_back({std::move(line), mood});
  }
  const auto most = static_cast<std::size_t>(room.lines);
  if (lines.size() <= most) return lines;
  const auto more = static_cast<std::int64_t>(lines.size() - (most - 1));
  const Mood mood = lines[most - 1].mood;
  lines.resize(most - 1);
  lines.push_back({teller.say(more_words, {more}), mood});
  return lines;
}

}  // namespace shimwright
