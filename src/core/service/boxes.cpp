// SPDX-License-Identifier: MPL-2.0
#include "core/service/boxes.hpp"

#include <algorithm>
#include <utility>

#include "core/service/arrivals.hpp"
#include "core/service/before_next_step.hpp"
#include "core/service/bench.hpp"
#include "core/service/entered.hpp"
#include "core/service/gaps_taken.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/rules.hpp"
#include "core/service/stage.hpp"
#include "core/service/view_parts.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

using Lines = std::vector<BoxLine>;

std::string words_of(const Remark& remark, const Teller& teller) {
  const std::string said = std::visit(
      [&teller](const auto& what) {
        if constexpr (std::is_same_v<std::decay_t<decltype(what)>, Told>)
          return in_words(what, teller);
        else
          return sentence(what, teller);
      },
      remark.said);
  return remark.lead ? teller.say(Say::led_by, {in_words(*remark.lead, teller), said}) : said;
}

// A remark that names no valve is told with its sheet.
std::string with_sheet(Page page, const std::string& words, const Teller& teller) {
  if (page == Page::shims) return teller.say(Say::on_shims, {words});
  if (page == Page::arrivals) return teller.say(Say::on_arrivals, {words});
  return words;
}

bool is_calm(const BoxLine& line) { return line.mood == Mood::calm; }

void add(Lines& lines, const Findings& found, Mood mood, const Told& told) {
  lines.push_back({in_words(told, found.teller), mood});
}

void add_remarks_on(Page page, Lines& lines, const Findings& found) {
  for (const Remark& remark : found.remarks)
    if (remark.page == page)
      lines.push_back({words_of(remark, found.teller), remark.grave ? Mood::loud : Mood::remark});
}

void add_mend_first(Lines& lines, const Findings& found, Say sheet) {
  add(lines, found, Mood::loud, {Say::mend_first, {sheet}});
}

bool limits_are_entered(const Findings& found) {
  return found.exhaust.limits || found.inlet.limits || found.remarks_on(Page::engine) > 1;
}

// Where there is nothing to tell.
void add_calm(Lines& lines, const Findings& found, Say begin) {
  if (!lines.empty()) return;
  add(lines, found, Mood::calm, {limits_are_entered(found) ? Say::no_faults : begin});
}

// ---- Plan and Fit.

template <class Condition>
std::vector<std::string> valves_where(const Service& service, const Findings& found,
                                      Condition condition) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i)
    if (condition(found.valve_plans[i])) names.push_back(service.valves[i].name);
  return names;
}

void add_valves_that_stay_outside(Lines& lines, const Service& service, const Findings& found) {
  const auto left =
      valves_where(service, found, [](const ValvePlan& valve) { return valve.left_outside; });
  if (!left.empty())
    add(lines, found, Mood::loud, {Say::stays_left_alone, {named(left, found.teller)}});
  const auto none = valves_where(
      service, found, [](const ValvePlan& valve) { return valve.action == Action::none; });
  const auto nearest =
      valves_where(service, found, [](const ValvePlan& valve) { return valve.fitted_outside; });
  if (!nearest.empty())
    add(lines, found, Mood::loud, {Say::stays_nearest, {named(nearest, found.teller)}});
  if (none.empty()) return;
  if (found.nothing_listed)
    add(lines, found, Mood::remark, {Say::list_first});
  else
    add(lines, found, Mood::loud, {Say::stays_none_serves, {named(none, found.teller)}});
}

// What the nearest size would leave, for each valve that none serves.
void add_nearest(Lines& lines, const Service& service, const Findings& found) {
  std::vector<std::string> valves;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i) {
    const ValvePlan& plan = found.valve_plans[i];
    if (!plan.nearest) continue;
    const auto& valve = service.valves[i];
    valves.push_back(found.teller.say(Say::nearest_of,
                                      {valve.name, found.teller.column(*plan.nearest),
                                       nearest_leaves(plan, found.of(valve.side), found.teller)}));
  }
  if (!valves.empty()) add(lines, found, Mood::remark, {Say::nearest_listed, {valves}});
}

void add_near_limits(Lines& lines, const Findings& found) {
  const std::size_t count = gaps_near_a_limit(found);
  if (count > 0)
    add(lines, found, Mood::remark,
        {Say::near_a_limit, {static_cast<std::int64_t>(count), near_a_limit}});
}

void add_moved_by_mark(Lines& lines, const Service& service, const Findings& found) {
  std::vector<std::string> names;
  for (const std::size_t valve : moved_by_mark_alone(found))
    names.push_back(service.valves[valve].name);
  if (!names.empty()) add(lines, found, Mood::remark, {Say::known_by_mark, {names}});
}

std::vector<std::string> still_to_measure(const Service& service, const Findings& found) {
  return valves_where(service, found,
                      [](const ValvePlan& valve) { return valve.action == Action::unread; });
}

// `2.60 mm for 1 EX L`, a text each; counted where they are many.
Word shims_listed(const Service& service, const Findings& found,
                  const std::vector<MissingShim>& shims) {
  constexpr std::size_t most_listed = 8;
  if (shims.size() > most_listed)
    return found.teller.say(Say::shims_counted, {static_cast<std::int64_t>(shims.size())});
  std::vector<std::string> listed;
  for (const MissingShim& shim : shims)
    listed.push_back(
        found.teller.say(Say::shim_for_valve, {shim.size, service.valves[shim.valve].name}));
  return listed;
}

std::vector<MissingShim> missing_shims(const Findings& found, bool on_order) {
  auto missing = shims_not_in_hand(found);
  std::erase_if(missing, [on_order](const auto& shim) { return shim.on_order != on_order; });
  return missing;
}

void add_still_to_come(Lines& lines, const Service& service, const Findings& found) {
  const auto missing = missing_shims(found, true);
  if (!missing.empty())
    add(lines, found, Mood::remark,
        {Say::arrivals_to_come, {shims_listed(service, found, missing)}});
}

void add_rows(Lines& lines, const Findings& found, Say what, const std::vector<std::string>& rows) {
  if (!rows.empty()) add(lines, found, Mood::remark, {what, {rows}});
}

void add_what_to_send_back(Lines& lines, const Service& service, const Findings& found) {
  const auto rows = arrivals_with(ArrivalVerdict::send_back, service, found);
  const Money money = money_to_send_back(found);
  if (rows.empty() || money == Money())
    add_rows(lines, found, Say::arrivals_back, rows);
  else
    add(lines, found, Mood::remark,
        {Say::arrivals_back_money, {rows, sum_in_currency(money, service, found.teller)}});
}

bool waits_for_stand_in(const Findings& found) { return found.steps && found.steps->waiting > 0; }

// So that it can be ordered with the rest, and not be missed at the bench.
void add_stand_ins_wanted(Lines& lines, const Service& service, const Findings& found) {
  if (!found.steps || !service.bench.empty()) return;
  for (std::size_t i = 0; i < found.steps->steps.size(); ++i)
    if (found.steps->steps[i].kind == Step::Kind::wait)
      lines.push_back({bench_note(found, i), Mood::remark});
}

// What to know before the first step, and while it is not done yet.
void add_cautions_of_fitting(Lines& lines, const Service& service, const Findings& found) {
  if (std::string missing = missing_in_words(service, found); !missing.empty())
    lines.push_back({std::move(missing), Mood::loud});
  add_valves_that_stay_outside(lines, service, found);
  add_near_limits(lines, found);
  add_moved_by_mark(lines, service, found);
  if (!found.remarks.empty())
    add(lines, found, Mood::remark,
        {Say::bench_read_remarks, {static_cast<std::int64_t>(found.remarks.size())}});
  const auto unread = still_to_measure(service, found);
  if (!unread.empty())
    add(lines, found, Mood::remark, {Say::bench_keep_all, {named(unread, found.teller)}});
}

void add_changed_gaps(Lines& lines, const Service& service, const Findings& found) {
  if (std::string words = changed_gaps_in_words(service, found); !words.empty())
    lines.push_back({std::move(words), Mood::loud});
}

void add_readings_off(Lines& lines, const Service& service, const Findings& found) {
  if (std::string words = readings_off_in_words(service, found); !words.empty())
    lines.push_back({std::move(words), Mood::loud});
}

void add_state_of_bench(Lines& lines, const Service& service, const Findings& found) {
  lines = before_next_step(service, found);
  if (is_bench_done(service)) {
    const bool measured = stage_of(service, found) == Stage::record;
    add(lines, found, Mood::remark, {measured ? Say::bench_measured : Say::bench_done});
    return;
  }
  if (std::ranges::any_of(service.bench, [](const auto& step) { return step.kind == "wait"; }))
    add(lines, found, Mood::loud, {Say::bench_ring});
  add_cautions_of_fitting(lines, service, found);
  add(lines, found, Mood::calm, {Say::bench_go_on});
}

void add_steps_that_are_ready(Lines& lines, const Service& service, const Findings& found) {
  if (!found.plan) {
    add(lines, found, Mood::loud, {Say::bench_no_plan});
    return;
  }
  if (found.no_stop_for_work) add(lines, found, Mood::loud, {Say::bench_no_stop});
  if (const Told* trouble = found.crank_trouble(); trouble && !found.camshafts_out)
    add(lines, found, Mood::loud, *trouble);
  if (!found.steps) return;
  add_readings_off(lines, service, found);
  if (found.steps->steps.empty()) {
    add_valves_that_stay_outside(lines, service, found);
    const auto unread = still_to_measure(service, found);
    add(lines, found, unread.empty() ? Mood::calm : Mood::remark,
        unread.empty() ? Told{Say::bench_nothing}
                       : Told{Say::bench_nothing_yet, {named(unread, found.teller)}});
    return;
  }
  if (waits_for_stand_in(found)) add(lines, found, Mood::loud, {Say::bench_ring});
  add_cautions_of_fitting(lines, service, found);
  if (!is_any_reading_off(found))
    add(lines, found, Mood::calm,
        {Say::bench_ready, {static_cast<std::int64_t>(found.steps->steps.size())}});
}

// It serves, as what was ordered would have, but not as well.
void add_arrivals_at_the_edge(Lines& lines, const Service& service, const Findings& found) {
  const auto rows = arrivals_with(ArrivalVerdict::will_do, service, found);
  for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
    const auto& valve = found.arrivals[i].valve;
    const std::int64_t row = service.arrivals[i].row;
    if (!valve || std::ranges::find(rows, std::to_string(row)) == rows.end()) continue;
    const ValvePlan& plan = found.valve_plans[*valve];
    if (!plan.after || plan.then == State::good || plan.then == State::unread) continue;
    add(lines, found, Mood::remark,
        {Say::arrivals_at_the_edge,
         {row, service.valves[*valve].name, *plan.after, say_of(plan.then)}});
  }
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

std::vector<BoxLine> box_of_engine(const Findings& found) {
  Lines lines;
  if (found.any_grave(Page::head)) add_mend_first(lines, found, Say::sheet_head);
  add_remarks_on(Page::engine, lines, found);
  add_calm(lines, found, Say::begin_here);
  return lines;
}

// Without its limits Head has no verdict, so there every remark on Engine counts.
std::vector<BoxLine> box_of_head(const Service& service, const Findings& found) {
  Lines lines;
  add_changed_gaps(lines, service, found);
  add_readings_off(lines, service, found);
  if (is_any_shim_changed(service)) add(lines, found, Mood::remark, {Say::head_as_found});
  if (found.remarks_on(Page::engine) > 0) add_mend_first(lines, found, Say::sheet_engine);
  add_remarks_on(Page::head, lines, found);
  add_calm(lines, found, Say::begin_on_engine);
  return lines;
}

std::vector<BoxLine> box_of_shims(const Findings& found) {
  Lines lines;
  if (found.any_grave(Page::engine)) add_mend_first(lines, found, Say::sheet_engine);
  if (found.any_grave(Page::head)) add_mend_first(lines, found, Say::sheet_head);
  add_remarks_on(Page::shims, lines, found);
  for (const Told& note : found.notes_on_shims) add(lines, found, Mood::remark, note);
  add_calm(lines, found, Say::begin_on_engine);
  return lines;
}

std::vector<BoxLine> box_of_plan(const Service& service, const Findings& found) {
  Lines lines;
  add_changed_gaps(lines, service, found);
  add_readings_off(lines, service, found);
  add_valves_that_stay_outside(lines, service, found);
  add_nearest(lines, service, found);
  for (const Remark& remark : found.remarks) {
    lines.push_back({with_sheet(remark.page, words_of(remark, found.teller), found.teller),
                     remark.grave ? Mood::loud : Mood::remark});
  }
  add_stand_ins_wanted(lines, service, found);
  add_near_limits(lines, found);
  add_still_to_come(lines, service, found);
  add_calm(lines, found, Say::begin_on_engine);
  return lines;
}

std::vector<BoxLine> box_of_fit(const Service& service, const Findings& found) {
  Lines lines;
  if (service.bench.empty())
    add_steps_that_are_ready(lines, service, found);
  else
    add_state_of_bench(lines, service, found);
  return lines;
}

std::vector<BoxLine> box_of_arrivals(const Service& service, const Findings& found) {
  Lines lines;
  if (found.any_grave(Page::engine)) add_mend_first(lines, found, Say::sheet_engine);
  if (found.any_grave(Page::head)) add_mend_first(lines, found, Say::sheet_head);
  add_remarks_on(Page::arrivals, lines, found);
  if (!is_anything_ordered(found)) {
    add(lines, found, Mood::calm, {Say::arrivals_none});
    return lines;
  }
  add_what_to_send_back(lines, service, found);
  add_readings_off(lines, service, found);
  add_arrivals_at_the_edge(lines, service, found);
  add_rows(lines, found, Say::arrivals_not_needed,
           arrivals_with(ArrivalVerdict::not_needed, service, found));
  add_rows(lines, found, Say::arrivals_to_measure, arrivals_to_measure(service, found));
  add_still_to_come(lines, service, found);
  if (const auto missing = missing_shims(found, false); !missing.empty())
    add(lines, found, Mood::remark,
        {Say::arrivals_to_order, {shims_listed(service, found, missing)}});
  add_stand_ins_wanted(lines, service, found);
  const bool is_to_be_fitted = found.steps && !found.steps->steps.empty();
  if (is_to_be_fitted && shims_not_in_hand(found).empty() && !waits_for_stand_in(found) &&
      !is_any_reading_off(found))
    add(lines, found, Mood::calm, {Say::arrivals_complete});
  return lines;
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
  if (const auto stop = stop_of_step(service, step))
    return {Say::bench_left_out_stop, {std::int64_t{step}, std::int64_t{*stop}}};
  return {Say::bench_left_out, {std::int64_t{step}}};
}

std::vector<std::string> all_remarks(const Findings& found) {
  std::vector<std::string> all;
  for (const Remark& remark : found.remarks)
    all.push_back(with_sheet(remark.page, words_of(remark, found.teller), found.teller));
  return all;
}

std::vector<BoxLine> fitted_into(const Service::Room& room, const std::vector<BoxLine>& sentences,
                                 const Teller& teller, Say more_words) {
  // Calm words below a remark stand on its ground: it is one box.
  const bool all_calm = std::ranges::all_of(sentences, is_calm);
  Lines lines;
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
