// SPDX-License-Identifier: MPL-2.0
#include "core/service/view_drift.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/service/boxes.hpp"
#include "core/service/entered.hpp"
#include "core/service/next_check_words.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::array<std::string_view, 2> tables{"drift", "next check"};

class DriftShower {
 public:
  DriftShower(const Service& service, const DriftFindings& found)
      : service_(service), found_(found), next_(next_check_in_words(service, found)) {}

  ShownTable valves() const {
    ShownTable table{{"valve", "course", "rate", "meets", "cautious", "words"}, {}};
    for (std::size_t i = 0; i < service_.valves.size(); ++i)
      table.rows.push_back({name(i), course(i), rate(i), meets(i), cautious(i), words(i)});
    return table;
  }

  ShownTable next_check() const {
    ShownTable table;
    table.put("heading") =
        tell(Say::drift_heading, {teller().unit() == Unit::inch ? Say::inches : Say::mm, unit()});
    table.put("tally") = found_.last
                             ? tell(Say::drift_tally, {static_cast<std::int64_t>(found_.checks),
                                                       distance(*found_.last), unit()})
                             : std::string();
    table.put("at") = next_.at;
    table.put("why") = next_.why;
    table.put("line") = tell(Say::drift_next_line, {next_.at, next_.why});
    table.put("mark") = drawing_mark(found_);
    const auto given = service_.boxes.find("drift");
    const Service::Room room = given == service_.boxes.end() ? Service::Room() : given->second;
    std::size_t row = 0;
    for (const BoxLine& line : fitted_into(room, box(), teller(), Say::more_on_drift)) {
      table.put("box", ++row) = line.words;
      table.put("mood", row) = word_for(line.mood);
    }
    return table;
  }

 private:
  const Teller& teller() const { return found_.teller; }
  std::string tell(Say what, std::initializer_list<Word> words = {}) const {
    return teller().say(what, words);
  }
  const std::string& unit() const { return found_.distance_unit; }
  const std::string& name(std::size_t valve) const { return service_.valves[valve].name; }
  const ValveDrift& drift(std::size_t valve) const { return found_.drift.valves[valve]; }
  std::string distance(double value) const { return distance_in_words(value, teller()); }
  std::vector<std::string> names(const std::vector<std::size_t>& valves) const {
    std::vector<std::string> all;
    for (const std::size_t valve : valves) all.push_back(name(valve));
    return all;
  }

  // ---- A row of a valve.

  // Of the slope alone, where no limits are given.
  Course course_of(std::size_t valve) const {
    const ValveDrift& own = drift(valve);
    if (own.due) return own.due->course;
    return due_of(*own.line, found_.drift.degrees, found_.valves[valve].points.back().x,
                  Length::nanometres(1), {Length(), Length::nanometres(1)})
        .course;
  }

  std::string course(std::size_t valve) const {
    const ValveDrift& own = drift(valve);
    if (own.checks == 0) return {};
    if (!own.line) return tell(Say::drift_checks_of, {static_cast<std::int64_t>(own.checks)});
    switch (course_of(valve)) {
      case Course::tight:
        return tell(Say::drift_closing);
      case Course::loose:
        return tell(Say::drift_opening);
      case Course::steady:
        break;
    }
    return tell(Say::drift_steady);
  }

  // In the book's unit, to two more decimals than a length.
  std::string small_length(double mm) const {
    const bool inch = teller().unit() == Unit::inch;
    const double step = inch ? 1e6 : 1e5;
    const double rounded = std::round(in_book(mm) * step) / step;
    // No exponent: a rate is told with its noughts.
    std::string text =
        std::to_string(static_cast<std::int64_t>(std::round(std::abs(rounded) * step)));
    const std::size_t decimals = inch ? 6 : 5;
    if (text.size() <= decimals) text.insert(0, decimals + 1 - text.size(), '0');
    text.insert(text.size() - decimals, teller().number(0.5).substr(1, 1));
    return text;
  }
  double in_book(double mm) const { return teller().unit() == Unit::inch ? mm / 25.4 : mm; }

  std::string rate(std::size_t valve) const {
    const auto& line = drift(valve).line;
    if (!line) return {};
    const double mm_per_1000 = line->slope / 1e3;
    const std::string size = small_length(mm_per_1000);
    const bool none = size.find_first_not_of("0.,") == std::string::npos;
    const std::string sign = none ? "" : mm_per_1000 < 0 ? "\u2212" : "+";
    return tell(Say::drift_rate, {sign + size, small_length(line->slope_error / 1e3)});
  }

  std::string meets(std::size_t valve) const {
    const auto& due = drift(valve).due;
    if (!due || !due->distance) return {};
    return tell(due->course == Course::tight ? Say::drift_tight_at : Say::drift_loose_at,
                {distance(std::round(*due->distance))});
  }

  std::string cautious(std::size_t valve) const {
    const auto& due = drift(valve).due;
    return due && due->cautious ? distance(*due->cautious) : std::string();
  }

  bool is_at_a_limit(std::size_t valve) const {
    const auto& due = drift(valve).due;
    return due && due->cautious && *due->cautious <= found_.valves[valve].points.back().x;
  }

  std::string words(std::size_t valve) const {
    const ValveDrift& own = drift(valve);
    const ValveToJudge& judged = found_.valves[valve];
    if (own.checks == 0) return found_.log.rows.empty() ? std::string() : why_no_check(valve);
    if (own.checks == 1) return tell(Say::drift_one_check);
    if (!own.line)
      return tell(Say::drift_two_checks,
                  {Length::nanometres(static_cast<std::int64_t>(own.moved))});
    // The gravest first; the box names the valve for the other as well.
    if (judged.limits && judged.fitted && is_at_a_limit(valve))
      return tell(goes_tight(found_, valve) ? Say::drift_now_tight : Say::drift_now_loose);
    if (own.kinship != Kinship::alike)
      return tell(own.kinship == Kinship::closes_faster ? Say::drift_unlike_closing
                                                        : Say::drift_unlike_opening);
    if (!judged.limits) return tell(Say::drift_no_limits);
    if (!judged.fitted) return tell(Say::drift_no_shim);
    if (own.stood_still) return tell(Say::drift_still);
    switch (own.due->course) {
      case Course::tight:
        return tell(Say::drift_means_closing);
      case Course::loose:
        return tell(Say::drift_means_opening);
      case Course::steady:
        break;
    }
    return tell(Say::drift_means_steady);
  }

  std::string why_no_check(std::size_t valve) const {
    switch (found_.lacks[valve]) {
      case LogLack::no_gap:
        return tell(Say::drift_lacks_gap);
      case LogLack::no_distance:
        return tell(Say::drift_lacks_distance);
      case LogLack::no_shim:
        return tell(Say::drift_lacks_shim);
      case LogLack::wrong_gap:
        return tell(Say::drift_wrong_gap);
      case LogLack::no_row:
        break;
    }
    return tell(Say::drift_no_check);
  }

  // ---- Said once.

  Word few_of(const std::vector<std::size_t>& valves) const {
    return named(names(valves), teller());
  }

  template <class Condition>
  std::vector<std::size_t> valves_where(Condition condition) const {
    std::vector<std::size_t> valves;
    for (std::size_t i = 0; i < found_.drift.valves.size(); ++i)
      if (condition(found_.drift.valves[i])) valves.push_back(i);
    return valves;
  }

  std::vector<BoxLine> box() const {
    std::vector<BoxLine> lines;
    const auto add = [&](Mood mood, std::string words) {
      lines.push_back({std::move(words), mood});
    };
    if (!found_.slips.empty()) add(Mood::loud, in_words(found_.slips, teller()));
    if (const auto now = valves_at_a_limit(found_); !now.empty())
      add(Mood::loud, tell(Say::drift_box_now, {few_of(now)}));
    const auto unlike =
        valves_where([](const ValveDrift& own) { return own.kinship != Kinship::alike; });
    if (!unlike.empty()) add(Mood::loud, tell(Say::drift_box_unlike, {names(unlike)}));
    if (!next_.longer.empty()) add(Mood::remark, next_.longer);
    if (found_.last && service_.drawn != drawing_mark(found_))
      add(Mood::remark, tell(service_.drawn.empty() ? Say::drift_undrawn : Say::drift_changed));
    for (const Told& odd : found_.log.odd) add(Mood::remark, in_words(odd, teller()));
    const auto still = valves_where([](const ValveDrift& own) { return own.stood_still; });
    if (!still.empty()) add(Mood::remark, tell(Say::drift_odd_still, {few_of(still)}));
    if (found_.log.rows.empty())
      add(Mood::calm, tell(Say::drift_empty));
    else
      add(Mood::calm, tell(Say::drift_calm));
    return lines;
  }

  const Service& service_;
  const DriftFindings& found_;
  NextCheckWords next_;
};

}  // namespace

bool is_told_of_log(std::string_view table) {
  return std::ranges::find(tables, table) != tables.end();
}

View drift_view_of(const Service& service, const EntryTable& log) {
  const DriftFindings found = drift_findings_in(service, log);
  const DriftShower shower(service, found);
  return View({{tables[0], shower.valves()}, {tables[1], shower.next_check()}});
}

std::string distance_in_words(double distance, const Teller& teller) {
  constexpr double grouped_from = 1e4;
  constexpr double most_grouped = 1e15;
  const double whole = std::floor(distance);
  if (std::abs(whole) < grouped_from || std::abs(whole) > most_grouped) return teller.number(whole);
  std::string figures = std::to_string(static_cast<std::int64_t>(std::abs(whole)));
  for (std::size_t at = figures.size(); at > 3; at -= 3) figures.insert(at - 3, "\u00a0");
  return (whole < 0 ? "\u2212" : "") + figures;
}

}  // namespace shimwright
