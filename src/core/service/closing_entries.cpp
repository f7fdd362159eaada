// SPDX-License-Identifier: MPL-2.0
#include "core/service/closing_entries.hpp"

#include <cmath>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/log/day.hpp"
#include "core/service/closing_words.hpp"
#include "core/service/entered.hpp"
#include "core/values/bounds.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// A number that is written with a mark between thousands would be read as a thousandth of itself.
std::optional<double> distance_typed(std::string_view text) {
  std::string plain;
  for (const char c : trimmed(text))
    if (c != ' ') plain += c;
  const auto mark = plain.find_first_of(".,");
  if (mark != std::string::npos && plain.size() - mark == 4 && mark > 0) return std::nullopt;
  const auto number = number_written(plain);
  return number && std::isfinite(*number) && *number >= 0 ? number : std::nullopt;
}

// Of a setting that a command writes: a whole number from 1 on.
std::optional<std::int64_t> whole_entered(const Entry& entry) {
  constexpr double most = 1e6;
  const auto number = number_entered(entry);
  if (!number || *number < 1 || *number > most) return std::nullopt;
  return static_cast<std::int64_t>(*number);
}

class FactsReader {
 public:
  FactsReader(const Service& service, const LogSoFar& so_far, const ClosingEntries& entries,
              std::string_view today)
      : service_(service), so_far_(so_far), entries_(entries), today_(today) {}

  FactsRead read() && {
    read_facts();
    return std::move(read_);
  }

 private:
  void read_facts() {
    const auto open = whole_entered(service_.check_number);
    read_.facts.check = open.value_or(so_far_.last_check + 1);
    read_.facts.round = open ? whole_entered(service_.round).value_or(1) : 1;
    read_.facts.who = trimmed(entries_.who);
    read_.facts.note = trimmed(entries_.note);
    read_day();
    read_distance();
    read_temperature();
  }

  void read_day() {
    const auto day = day_written(entries_.date);
    if (!day) {
      refuse(trimmed(entries_.date).empty()
                 ? Told{Say::close_date_missing, {std::string(today_)}}
                 : Told{Say::close_date_unclear, {shortened(entries_.date), std::string(today_)}});
      return;
    }
    read_.facts.day = *day;
    if (const auto today = day_written(today_); today && *day > *today)
      ask({Say::close_date_ahead, {day_in_figures(*day)}});
    if (so_far_.last_day && std::floor(*so_far_.last_day) > *day)
      ask({Say::close_date_back, {day_in_figures(*day), day_in_figures(*so_far_.last_day)}});
  }

  void read_distance() {
    const std::string unit = distance_unit_of(service_);
    if (trimmed(entries_.distance).empty()) {
      ask({Say::close_distance_missing, {unit}});
      return;
    }
    const auto read = distance_typed(entries_.distance);
    if (!read) {
      refuse({Say::close_distance_unclear, {shortened(entries_.distance)}});
      return;
    }
    read_.facts.distance = *read + number_entered(service_.earlier).value_or(0);
    const auto longest = so_far_.longest_distance;
    if (!longest) return;
    // A figure too many makes it ten times as far; few engines go so far from one check to the next
    // (common practice, no source).
    constexpr double too_many_times = 8;
    if (*longest > *read_.facts.distance)
      ask({Say::close_distance_back, {*read_.facts.distance, *longest, unit}});
    else if (*longest > 0 && *read_.facts.distance >= too_many_times * *longest)
      ask({Say::close_distance_leap, {*read_.facts.distance, *longest, unit}});
  }

  void read_temperature() {
    if (trimmed(entries_.temperature).empty()) return;
    read_.facts.temperature = number_written(entries_.temperature);
    if (!read_.facts.temperature)
      refuse({Say::close_temperature_unclear, {shortened(entries_.temperature)}});
    else if (!can_be_of_an_engine(*read_.facts.temperature))
      refuse({Say::close_temperature_beyond, {*read_.facts.temperature}});
  }

  void refuse(Told why) { read_.refusals.push_back(std::move(why)); }
  void ask(Told question) { read_.questions.push_back(std::move(question)); }

  const Service& service_;
  const LogSoFar& so_far_;
  const ClosingEntries& entries_;
  std::string_view today_;
  FactsRead read_;
};

}  // namespace

ClosingEntries entries_to_begin_with(const Service& service, const Findings& found,
                                     const EntryTable& log, std::string_view today) {
  ClosingEntries entries;
  entries.date = today;
  const auto check = whole_entered(service.check_number);
  if (!check) return entries;
  const CheckSoFar so_far = check_so_far(log, *check);
  if (so_far.distance) {
    const double read = *so_far.distance - number_entered(service.earlier).value_or(0);
    const std::string typed = found.teller.number(read);
    // One that could not be read back is left to the person.
    if (distance_typed(typed)) entries.distance = typed;
  }
  if (so_far.temperature) entries.temperature = found.teller.number(*so_far.temperature);
  entries.who = so_far.who;
  return entries;
}

FactsRead facts_in(const Service& service, const LogSoFar& so_far, const ClosingEntries& entries,
                   std::string_view today) {
  return FactsReader(service, so_far, entries, today).read();
}

}  // namespace shimwright
