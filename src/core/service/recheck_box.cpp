// SPDX-License-Identifier: MPL-2.0
//
// What Recheck says at its top: what must not be done yet, which valves are not in order, and what
// is next.
#include <cstdint>
#include <utility>

#include "core/service/bench.hpp"
#include "core/service/boxes.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/recheck.hpp"
#include "core/service/stage.hpp"

namespace shimwright {
namespace {

class RecheckBox {
 public:
  RecheckBox(const Service& service, const Findings& found)
      : service_(service), found_(found), valves_(recheck_in(service, found)) {}

  std::vector<BoxLine> lines() && {
    if (std::string words = changed_gaps_in_words(service_, found_); !words.empty())
      lines_.push_back({std::move(words), Mood::loud});
    if (service_.bench.empty())
      without_list();
    else if (!is_bench_done(service_))
      while_fitting();
    else
      after_fitting();
    return std::move(lines_);
  }

 private:
  void add(Mood mood, Say what, std::initializer_list<Word> words = {}) {
    lines_.push_back({found_.teller.say(what, words), mood});
  }

  template <class Condition>
  std::vector<std::string> valves_where(Condition condition) const {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < valves_.size(); ++i)
      if (condition(valves_[i])) names.push_back(service_.valves[i].name);
    return names;
  }

  void add_valves(Mood mood, Say what, const std::vector<std::string>& names) {
    if (!names.empty()) add(mood, what, {named(names, found_.teller)});
  }

  // Until the list is done, a gap found out of limits is only what is being put right.
  void add_verdicts(bool is_of_all) {
    const auto is_outside = [is_of_all](const ValveRecheck& valve) {
      return valve.outside && (is_of_all || valve.gap_left);
    };
    add_valves(Mood::loud, Say::recheck_outside, valves_where([&](const ValveRecheck& valve) {
                 return is_outside(valve) && valve.left_open.empty();
               }));
    add_valves(Mood::remark, Say::recheck_off, valves_where([](const ValveRecheck& valve) {
                 return valve.verdict == RecheckVerdict::off && valve.left_open.empty();
               }));
    add_valves(Mood::remark, Say::recheck_left, valves_where([&](const ValveRecheck& valve) {
                 return (is_outside(valve) || valve.verdict == RecheckVerdict::off) &&
                        !valve.left_open.empty();
               }));
  }

  void without_list() {
    if (std::string words = readings_off_in_words(service_, found_); !words.empty())
      lines_.push_back({std::move(words), Mood::loud});
    const bool is_nothing = is_nothing_to_fit(service_, found_);
    add_verdicts(is_nothing);
    if (is_nothing)
      add(Mood::calm, Say::recheck_nothing);
    else if (!is_any_reading_off(found_))
      add(Mood::calm, Say::recheck_fit_first);
  }

  void while_fitting() {
    if (const auto empty = valves_standing_empty(service_); !empty.empty())
      add(Mood::loud, Say::bench_valve_empty, {empty});
    add(Mood::remark, Say::recheck_not_yet,
        {static_cast<std::int64_t>(ticked_steps(service_)),
         static_cast<std::int64_t>(service_.bench.size())});
    add_verdicts(false);
  }

  void after_fitting() {
    add_verdicts(true);
    const auto due = valves_where([](const ValveRecheck& valve) {
      return valve.verdict == RecheckVerdict::due || valve.verdict == RecheckVerdict::unreadable;
    });
    add_valves(Mood::remark, Say::recheck_to_measure, due);
    if (due.empty()) {
      const bool is_in_order = lines_.empty();
      add(Mood::calm, is_in_order ? Say::recheck_in_order : Say::recheck_again);
    }
    add_valves(Mood::calm, Say::recheck_also, valves_where([](const ValveRecheck& valve) {
                 return valve.verdict == RecheckVerdict::asked;
               }));
  }

  const Service& service_;
  const Findings& found_;
  std::vector<ValveRecheck> valves_;
  std::vector<BoxLine> lines_;
};

}  // namespace

std::vector<BoxLine> box_of_recheck(const Service& service, const Findings& found) {
  return RecheckBox(service, found).lines();
}

}  // namespace shimwright
