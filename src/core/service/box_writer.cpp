// SPDX-License-Identifier: MPL-2.0
#include "core/service/box_writer.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <type_traits>

#include "core/service/bench.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/rules.hpp"
#include "core/service/valve_names.hpp"

namespace shimwright {
namespace {

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
std::string words_with_sheet(const Remark& remark, const Teller& teller) {
  std::string words = words_of(remark, teller);
  if (remark.page == Page::shims) return teller.say(Say::on_shims, {words});
  if (remark.page == Page::arrivals) return teller.say(Say::on_arrivals, {words});
  return words;
}

Mood mood_of(const Remark& remark) { return remark.grave ? Mood::loud : Mood::remark; }

bool limits_are_entered(const Findings& found) {
  return found.exhaust.limits || found.inlet.limits || found.remarks_on(Page::engine) > 1;
}

}  // namespace

void BoxWriter::add_words(Mood mood, std::string words) {
  if (!words.empty()) lines_.push_back({std::move(words), mood});
}

void BoxWriter::add_valves(Mood mood, Say what, const std::vector<std::string>& names) {
  if (!names.empty()) add(mood, {what, {named(names, found_.teller)}});
}

void BoxWriter::add_list(Say what, const std::vector<std::string>& names) {
  if (!names.empty()) add(Mood::remark, {what, {names}});
}

void BoxWriter::add(std::vector<BoxLine> lines) {
  std::ranges::move(lines, std::back_inserter(lines_));
}

void BoxWriter::add_remarks_on(Page page) {
  for (const Remark& remark : found_.remarks)
    if (remark.page == page)
      lines_.push_back({words_of(remark, found_.teller), mood_of(remark), true});
}

void BoxWriter::add_all_remarks() {
  for (const Remark& remark : found_.remarks)
    lines_.push_back({words_with_sheet(remark, found_.teller), mood_of(remark), true});
}

void BoxWriter::add_mend_first(Page page, Say sheet) {
  if (found_.any_grave(page)) add(Mood::loud, {Say::mend_first, {sheet}});
}

void BoxWriter::add_calm(Say begin) {
  if (lines_.empty()) add(Mood::calm, {limits_are_entered(found_) ? Say::no_faults : begin});
}

void BoxWriter::add_changed_gaps() {
  add_words(Mood::loud, changed_gaps_in_words(service_, found_));
}

void BoxWriter::add_readings_off() {
  add_words(Mood::loud, readings_off_in_words(service_, found_));
}

void BoxWriter::add_valves_that_stay_outside() {
  const auto valves_where = [this](auto condition) {
    return names_where(service_, found_.valve_plans, condition);
  };
  add_valves(Mood::loud, Say::stays_left_alone,
             valves_where([](const ValvePlan& valve) { return valve.left_outside; }));
  add_valves(Mood::loud, Say::stays_nearest,
             valves_where([](const ValvePlan& valve) { return valve.fitted_outside; }));
  const auto none =
      valves_where([](const ValvePlan& valve) { return valve.action == Action::none; });
  if (found_.nothing_listed && !none.empty())
    add(Mood::remark, {Say::list_first});
  else
    add_valves(Mood::loud, Say::stays_none_serves, none);
}

void BoxWriter::add_near_limits() {
  const std::size_t count = gaps_near_a_limit(found_);
  if (count > 0)
    add(Mood::remark, {Say::near_a_limit, {static_cast<std::int64_t>(count), near_a_limit}});
}

void BoxWriter::add_still_to_come() {
  const auto missing = missing_shims(found_, true);
  if (!missing.empty())
    add(Mood::remark, {Say::arrivals_to_come, {shims_listed(service_, found_, missing)}});
}

void BoxWriter::add_stand_ins_wanted() {
  if (!found_.steps || !service_.bench.empty()) return;
  for (std::size_t i = 0; i < found_.steps->steps.size(); ++i)
    if (found_.steps->steps[i].kind == Step::Kind::wait)
      lines_.push_back({bench_note(found_, i), Mood::remark});
}

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

bool waits_for_stand_in(const Findings& found) { return found.steps && found.steps->waiting > 0; }

std::vector<std::string> all_remarks(const Findings& found) {
  std::vector<std::string> all;
  for (const Remark& remark : found.remarks) all.push_back(words_with_sheet(remark, found.teller));
  return all;
}

}  // namespace shimwright
