// SPDX-License-Identifier: MPL-2.0
#include "core/service/next_check_words.hpp"

#include <cstdint>
#include <utility>

#include "core/service/boxes.hpp"
#include "core/service/view_drift.hpp"

namespace shimwright {
namespace {

constexpr double checks_due = 3;

class NextCheckTeller {
 public:
  NextCheckTeller(const Service& service, const DriftFindings& found)
      : service_(service), found_(found) {}

  NextCheckWords all() const {
    NextCheckWords words{at(), why(), {}, 1};
    if (!is_sooner_than_planned(found_)) return words;
    const bool tight = goes_tight(found_, *found_.first_due);
    words.aim_nearer_to = tight ? 1 : 0;
    words.longer =
        tell(tight ? Say::drift_longer_thinner : Say::drift_longer_thicker, {asking_for_it(tight)});
    return words;
  }

 private:
  std::string at() const {
    if (!found_.next) return tell(Say::drift_not_known);
    if (is_due_now(found_)) return tell(Say::drift_at_once);
    return tell(Say::drift_at, {distance(found_.next->at), unit()});
  }

  std::string why() const {
    if (!found_.last) return tell(Say::drift_why_empty);
    const std::string few =
        static_cast<double>(found_.checks) < checks_due
            ? " " + tell(Say::drift_why_few, {static_cast<std::int64_t>(found_.checks)})
            : std::string();
    if (!found_.next)
      return (few.empty() ? tell(Say::drift_why_steady) + " " : std::string()) +
             tell(Say::drift_why_no_interval) + few;
    if (found_.next->by_manual)
      return tell(Say::drift_why_manual,
                  {distance(*found_.interval), unit(), distance(*found_.last)}) +
             few;
    if (is_due_now(found_)) return tell(Say::drift_why_now, {names(valves_at_a_limit(found_))});
    const std::size_t first = *found_.first_due;
    const double cautious = *found_.drift.valves[first].due->cautious;
    return tell(goes_tight(found_, first) ? Say::drift_why_tight : Say::drift_why_loose,
                {service_.valves[first].name, distance(cautious), unit()});
  }

  // The valves that ask for the check, as far as they go the way of the first.
  Word asking_for_it(bool tight) const {
    std::vector<std::size_t> valves;
    if (is_due_now(found_)) valves = valves_at_a_limit(found_);
    std::erase_if(valves, [&](std::size_t one) { return goes_tight(found_, one) != tight; });
    return names(valves.empty() ? std::vector{*found_.first_due} : valves);
  }

  std::string tell(Say what, std::initializer_list<Word> words = {}) const {
    return found_.teller.say(what, words);
  }
  const std::string& unit() const { return found_.distance_unit; }
  std::string distance(double value) const { return distance_in_words(value, found_.teller); }
  Word names(const std::vector<std::size_t>& valves) const {
    std::vector<std::string> all;
    for (const std::size_t valve : valves) all.push_back(service_.valves[valve].name);
    return named(all, found_.teller);
  }

  const Service& service_;
  const DriftFindings& found_;
};

}  // namespace

NextCheckWords next_check_in_words(const Service& service, const DriftFindings& found) {
  return NextCheckTeller(service, found).all();
}

std::vector<Told> next_check_after(const Service& service, EntryTable log,
                                   const std::vector<LogRow>& rows) {
  for (const LogRow& row : rows) log.push_back(cells_of(row, unit_of(service)));
  const NextCheckWords words = next_check_in_words(service, drift_findings_in(service, log));
  std::vector<Told> told{{Say::drift_next_line, {words.at, words.why}}};
  if (!words.longer.empty())
    told.push_back({service.bench.empty() ? Say::close_too_soon : Say::close_too_soon_round,
                    {words.longer, words.aim_nearer_to}});
  return told;
}

}  // namespace shimwright
