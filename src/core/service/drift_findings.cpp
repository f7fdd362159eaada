// SPDX-License-Identifier: MPL-2.0
#include "core/service/drift_findings.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/service/findings.hpp"
#include "core/service/recheck.hpp"
#include "core/values/bounds.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::optional<Limits> limits_of(const Service::SideEntries& entries, Unit unit) {
  const auto min = length_entered(entries.min, unit);
  const auto max = length_entered(entries.max, unit);
  if (!min || !max || *min < Length() || *max < *min || *max == Length()) return std::nullopt;
  return Limits{*min, *max};
}

std::string unit_of_distance(const Service& service) {
  for (const std::string_view unit : {"km", "miles", "hours"})
    if (same_word(word_in(service.distance_unit), unit)) return std::string(unit);
  return "km";
}

// Rows in the order in which they were made: by the day of their check. One without a day has that
// of another row of its check; a check without any comes before the others, by its distance.
// Numbers of checks decide only where those are the same: what is brought in later may well be
// older.
class TimeOrder {
 public:
  explicit TimeOrder(const ReadLog& log) {
    for (const LoggedRow& one : log.rows) {
      if (one.row.check <= 0) continue;
      if (one.row.date) keep_largest(days_, one.row.check, *one.row.date);
      if (one.row.distance) keep_largest(distances_, one.row.check, *one.row.distance);
    }
  }

  auto key(const LoggedRow& one) const {
    const std::int64_t check = one.row.check;
    const double own_distance = one.row.distance.value_or(0);
    const auto day = one.row.date ? one.row.date : known_in(days_, check);
    const double distance = day ? 0 : known_in(distances_, check).value_or(own_distance);
    return std::tuple(day.value_or(0), distance, check, one.row.round, own_distance, one.number);
  }

 private:
  using OfChecks = std::map<std::int64_t, double>;

  static void keep_largest(OfChecks& all, std::int64_t check, double value) {
    double& largest = all.try_emplace(check, value).first->second;
    largest = std::max(largest, value);
  }
  static std::optional<double> known_in(const OfChecks& all, std::int64_t check) {
    const auto known = all.find(check);
    return known == all.end() ? std::nullopt : std::optional(known->second);
  }

  OfChecks days_;
  OfChecks distances_;
};

class DriftFinder {
 public:
  DriftFinder(const Service& service, const EntryTable& log) : service_(service) {
    const Unit unit = unit_of(service);
    const std::string half = word_in(service.half);
    found_.teller = Teller(language_named(word_in(service.language)), unit,
                           half.find(',') == std::string::npos ? "." : ",", Terms::book);
    found_.distance_unit = unit_of_distance(service);
    if (const auto interval = number_entered(service.interval); interval && *interval > 0)
      found_.interval = *interval;
    std::vector<std::string> names;
    for (const auto& valve : service.valves) names.push_back(valve.name);
    found_.log = read_log(log, unit, names);
    const auto doubt = length_entered(service.doubt, unit);
    doubt_ = std::max(doubt.value_or(Length()), Length());
    recheck_doubt_ = doubt && *doubt >= Length() ? *doubt : usual_doubt;
    open_check_ = number_entered(service.check_number);
    for (const auto& valve : service.valves)
      found_.valves.push_back(
          {.side = valve.side, .limits = limits_of(service.of(valve.side), unit)});
    for (std::size_t i = 0; i < names.size(); ++i) index_[names[i]] = i;
    found_.lacks.resize(names.size());
    leave_out_slips();
  }

  DriftFindings found() && {
    follow();
    found_.drift = judge_together(found_.valves, doubt_);
    look_ahead();
    return std::move(found_);
  }

 private:
  void leave_out_slips() {
    SlipsBlanked slips =
        blank_slips(found_.log, [this](const std::string& name) -> std::optional<Limits> {
          const auto known = index_.find(name);
          return known == index_.end() ? std::nullopt : found_.valves[known->second].limits;
        });
    found_.slips = std::move(slips.told);
    for (const std::string& name : slips.valves) found_.lacks[index_[name]] = LogLack::wrong_gap;
  }

  void follow() {
    const TimeOrder order(found_.log);
    std::vector<const LoggedRow*> rows;
    for (const LoggedRow& one : found_.log.rows) rows.push_back(&one);
    std::ranges::sort(rows, {}, [&order](const LoggedRow* one) { return order.key(*one); });
    std::vector<Followed> followed(service_.valves.size());
    found_.changes.resize(service_.valves.size());
    std::set<double> distances;
    for (const LoggedRow* one : rows) note_round(one->row);
    for (const LoggedRow* one : rows) {
      const auto known = index_.find(one->row.valve);
      if (known == index_.end()) continue;
      found_.lacks[known->second] = std::max(found_.lacks[known->second], lack_in(one->row));
      follow(one->row, known->second, followed[known->second], distances);
    }
    for (std::size_t i = 0; i < followed.size(); ++i)
      found_.valves[i].points = followed[i].points();
    found_.checks = distances.size();
    if (!distances.empty()) found_.last = *distances.rbegin();
  }

  // Of a check with several rounds.
  void note_round(const LogRow& row) {
    if (row.check <= 0) return;
    const auto [of_valve, is_new] =
        rounds_.try_emplace({row.check, row.valve}, std::pair(row.round, row.round));
    auto& [first, last] = of_valve->second;
    first = std::min(first, row.round);
    last = std::max(last, row.round);
    auto& [of_check, distance] =
        last_round_.try_emplace(row.check, row.round, row.distance).first->second;
    if (row.round > of_check) {
      of_check = row.round;
      if (row.distance) distance = row.distance;
    }
  }

  // A valve goes into another round because its gap was not what it should be: the shim sat askew,
  // or the gauge slipped. So of such a check only what was found first and what was left last are
  // readings of its wear, at the distance of the last round.
  bool is_first_round(const LogRow& row) const {
    const auto known = rounds_.find({row.check, row.valve});
    return known == rounds_.end() || row.round == known->second.first;
  }
  bool is_last_round(const LogRow& row) const {
    const auto known = rounds_.find({row.check, row.valve});
    return known == rounds_.end() || row.round == known->second.second;
  }
  std::optional<double> distance_of(const LogRow& row) const {
    const auto known = last_round_.find(row.check);
    return known != last_round_.end() && row.round < known->second.first ? known->second.second
                                                                         : row.distance;
  }

  // In a check of which another round is open: not as predicted, so that it is this gap that the
  // round is for. Once the check is closed, somebody has said why it may stay so.
  bool is_to_be_measured_anew(const LogRow& row) const {
    return open_check_ && static_cast<double>(row.check) == *open_check_ && row.predicted &&
           row.gap_left && !is_within_doubt_of_both(*row.gap_left - *row.predicted, recheck_doubt_);
  }

  // Found over the shim found, and left over the shim fitted.
  void follow(const LogRow& row, std::size_t valve, Followed& followed,
              std::set<double>& distances) {
    const auto fitted = row.shim_fitted ? row.shim_fitted : row.shim_found;
    if (fitted) found_.valves[valve].fitted = fitted;
    const std::optional<double> distance = distance_of(row);
    if (!distance || std::abs(*distance) > largest_distance) return;
    const bool is_found = row.gap_found && row.shim_found && is_first_round(row);
    const bool is_left =
        row.gap_left && row.shim_fitted && is_last_round(row) && !is_to_be_measured_anew(row);
    if (is_found) followed.add(*distance, *row.gap_found, *row.shim_found);
    if (is_left) followed.add(*distance, *row.gap_left, *row.shim_fitted);
    if (is_found || is_left) distances.insert(*distance);
    if (row.shim_found && row.shim_fitted && *row.shim_found != *row.shim_fitted)
      found_.changes[valve].push_back(*distance);
  }

  void look_ahead() {
    std::optional<double> cautious;
    for (std::size_t i = 0; i < found_.drift.valves.size(); ++i) {
      const auto& due = found_.drift.valves[i].due;
      if (!due || !due->cautious || (cautious && *cautious <= *due->cautious)) continue;
      cautious = due->cautious;
      found_.first_due = i;
    }
    if (found_.last) found_.next = next_check(*found_.last, cautious, found_.interval);
  }

  const Service& service_;
  Length doubt_;
  Length recheck_doubt_;  // as Recheck has it
  std::optional<double> open_check_;
  std::map<std::string, std::size_t> index_;  // of the valves by name
  // By check and valve: its first and last round. By check: its last round, and where that was.
  std::map<std::pair<std::int64_t, std::string>, std::pair<std::int64_t, std::int64_t>> rounds_;
  std::map<std::int64_t, std::pair<std::int64_t, std::optional<double>>> last_round_;
  DriftFindings found_;
};

// FNV-1a: of no use against malice, and of none needed.
class Mark {
 public:
  void add(std::uint64_t value) {
    for (int byte = 0; byte < 8; ++byte) {
      mark_ ^= value >> (8 * byte) & 0xFF;
      mark_ *= 0x100000001b3;
    }
  }
  void add(double value) { add(std::bit_cast<std::uint64_t>(value)); }
  void add(const std::optional<Length>& length) {
    add(static_cast<std::uint64_t>(length ? length->nanometres() : -1));
  }
  // A letter first, so that no cell takes it for a number.
  std::string text() const {
    constexpr std::string_view figures = "0123456789abcdef";
    std::string text = "m";
    for (int shift = 60; shift >= 0; shift -= 4) text += figures[mark_ >> shift & 0xF];
    return text;
  }

 private:
  std::uint64_t mark_ = 0xcbf29ce484222325;
};

}  // namespace

DriftFindings drift_findings_in(const Service& service, const EntryTable& log) {
  return DriftFinder(service, log).found();
}

std::vector<std::size_t> valves_at_a_limit(const DriftFindings& found) {
  std::vector<std::size_t> valves;
  for (std::size_t i = 0; i < found.valves.size(); ++i) {
    const auto& due = found.drift.valves[i].due;
    if (due && due->cautious && *due->cautious <= found.valves[i].points.back().x)
      valves.push_back(i);
  }
  return valves;
}

bool goes_tight(const DriftFindings& found, std::size_t valve) {
  const ValveDrift& own = found.drift.valves[valve];
  if (own.due->course != Course::steady) return own.due->course == Course::tight;
  const ValveToJudge& judged = found.valves[valve];
  const double gap =
      own.line->at(*own.due->cautious) - static_cast<double>(judged.fitted->nanometres());
  return gap - static_cast<double>(judged.limits->min.nanometres()) <=
         static_cast<double>(judged.limits->max.nanometres()) - gap;
}

bool is_due_now(const DriftFindings& found) {
  return found.next && found.last && found.next->at <= *found.last;
}

bool is_sooner_than_planned(const DriftFindings& found) {
  if (!found.next || found.next->by_manual || !found.first_due) return false;
  return is_due_now(found) || (found.interval && found.next->at < *found.last + *found.interval);
}

std::string drawing_mark(const DriftFindings& found) {
  Mark mark;
  mark.add(static_cast<std::uint64_t>(found.teller.unit()));
  for (const char letter : found.distance_unit) mark.add(static_cast<std::uint64_t>(letter));
  mark.add(found.interval.value_or(0));
  for (std::size_t i = 0; i < found.valves.size(); ++i) {
    const ValveToJudge& valve = found.valves[i];
    mark.add(static_cast<std::uint64_t>(valve.points.size()));
    for (const Point& point : valve.points) {
      mark.add(point.x);
      mark.add(point.y);
    }
    mark.add(valve.fitted);
    mark.add(valve.limits ? std::optional(valve.limits->min) : std::nullopt);
    mark.add(valve.limits ? std::optional(valve.limits->max) : std::nullopt);
    for (const double change : found.changes[i]) mark.add(change);
    if (const auto& line = found.drift.valves[i].line) mark.add(line->residual_sd);
  }
  return mark.text();
}

}  // namespace shimwright
