// SPDX-License-Identifier: MPL-2.0
#include "core/service/readings_off.hpp"

#include <algorithm>
#include <string_view>

#include "core/entries/entry_row.hpp"
#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/service/kept_length.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

struct ReadingLeft {
  std::optional<Length> gap;
  std::optional<Length> shim;
  std::optional<Length> off;
};

std::vector<ReadingLeft> readings_in(std::string_view text) {
  std::vector<ReadingLeft> readings;
  while (!text.empty()) {
    std::string_view word = taken_off(text, " ");
    ReadingLeft& reading = readings.emplace_back();
    for (auto* length : {&reading.gap, &reading.shim, &reading.off})
      read_kept(taken_off(word, "/"), *length);
  }
  return readings;
}

// The sentence with those valves in its blank, `2 IN L (off by 0.06)`; blank where there are none.
std::string say_of_readings_off(Say what, const Service& service, const Findings& found) {
  std::vector<std::string> told;
  for (std::size_t i = 0; i < found.valves.size(); ++i)
    if (const auto& off = found.valves[i].off)
      told.push_back(
          found.teller.say(Say::reading_off_of, {service.valves[i].name, LengthToType{abs(*off)}}));
  return told.empty() ? std::string() : found.teller.say(what, {named(told, found.teller)});
}

}  // namespace

std::string readings_off_written(const std::vector<ValveRecheck>& valves) {
  std::string text;
  bool any = false;
  for (const ValveRecheck& valve : valves) {
    const bool is_off = is_off_without_reason(valve);
    any = any || is_off;
    text += text.empty() ? "" : " ";
    text += is_off ? kept(valve.gap_left) + "/" + kept(valve.shim_fitted) + "/" + kept(valve.off)
                   : std::string(kept_none);
  }
  return any ? text : std::string();
}

void find_readings_off(const Service& service, Findings& found) {
  if (!service.readings_off) return;
  const auto readings = readings_in(word_in(*service.readings_off));
  if (readings.size() != found.valves.size()) return;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    ValveFindings& valve = found.valves[i];
    if (readings[i].off && valve.gap && valve.gap == readings[i].gap &&
        valve.shim == readings[i].shim)
      valve.off = readings[i].off;
  }
}

bool is_any_reading_off(const Findings& found) {
  return std::ranges::any_of(found.valves, [](const auto& valve) { return valve.off.has_value(); });
}

std::string readings_off_in_words(const Service& service, const Findings& found) {
  return say_of_readings_off(Say::readings_off, service, found);
}

std::string question_on_readings_off(const Service& service, const Findings& found) {
  return say_of_readings_off(Say::readings_off_ask, service, found);
}

std::vector<EntryWrite> readings_off_to_clear(const Service& service) {
  if (!service.readings_off || not_given(*service.readings_off)) return {};
  return {{"setting", "readings off", 0, Entry()}};
}

}  // namespace shimwright
