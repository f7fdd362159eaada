// SPDX-License-Identifier: MPL-2.0
//
// The plan looked over by someone who did not make it: every shim is counted as a thing of its
// own, every line is worked out again, and the aims are summed up.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "core/plan/plan.hpp"

namespace shimwright::audit {

// In the order of the aims that the rules ask for; less is better.
using Score = std::array<std::int64_t, 7>;

inline bool reads(const Valve& valve) { return valve.clearance && valve.shim; }

inline Length doubt_of(const PlanQuestion& question, const Valve& valve) {
  return question.rules.use_doubt ? valve.doubt : Length();
}

inline bool may_be_opened(const PlanQuestion& question, const Valve& valve) {
  if (!reads(valve) || valve.locked) return false;
  const Length doubt = doubt_of(question, valve);
  const bool good =
      *valve.clearance >= valve.limits.min + doubt && *valve.clearance <= valve.limits.max - doubt;
  return !good || question.rules.touch_good;
}

inline bool may_have_nearest(const PlanQuestion& question, const Valve& valve) {
  return valve.nearest || question.rules.nearest;
}

inline std::int64_t outside_by(const Valve& valve, Length after) {
  if (after < valve.limits.min) return (valve.limits.min - after).nanometres();
  return after > valve.limits.max ? (after - valve.limits.max).nanometres() : 0;
}

// By what it would leave: inside, or less far outside than now where that is allowed, and open
// never.
inline bool may_be_fitted(const PlanQuestion& question, const Valve& valve, Length size) {
  const Length after = *valve.clearance + *valve.shim - size;
  const std::int64_t outside = outside_by(valve, after);
  if (outside == 0) return true;
  return may_have_nearest(question, valve) && after > Length() &&
         outside < outside_by(valve, *valve.clearance);
}

// What one valve adds, with a shim of this size in it.
inline Score score_of(const PlanQuestion& question, const Valve& valve, Length size, bool opened,
                      Money price) {
  const Length after = *valve.clearance + *valve.shim - size;
  const Length doubt = doubt_of(question, valve);
  const std::int64_t outside = after < valve.limits.min || valve.limits.max < after;
  const bool nearest = may_have_nearest(question, valve);
  const std::int64_t by = nearest ? outside_by(valve, after) : 0;
  const std::int64_t tight = nearest && after < valve.limits.min;
  const std::int64_t outside_band =
      after < valve.limits.min + doubt || valve.limits.max - doubt < after;
  const std::int64_t money =
      opened ? price.thousandths() + question.rules.work.thousandths() : std::int64_t{0};
  const std::int64_t off = abs(after - valve.aim).nanometres();
  if (question.rules.aim_first)
    return {outside, by, tight, outside_band, off, money, opened ? 1 : 0};
  return {outside, by, tight, outside_band, money, opened ? 1 : 0, off};
}

inline Score& operator+=(Score& sum, const Score& part) {
  for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += part[i];
  return sum;
}

struct Report {
  Score score{};
  std::vector<std::string> faults;  // none where the plan can be carried out as it stands
};

inline Report look_over(const PlanQuestion& question, const Plan& plan) {
  Report report;
  const auto expect = [&report](bool holds, const std::string& valve, const char* what) {
    if (!holds) report.faults.push_back(valve + ": " + what);
  };
  using Key = std::pair<std::string, Length>;
  using Priced = std::tuple<std::string, Length, Money>;
  std::map<Key, std::int64_t> spares_used, came_out, still_out;
  std::map<Priced, std::int64_t> bought;
  std::set<std::size_t> gave;

  expect(plan.lines.size() == question.valves.size(), "plan", "one line a valve");
  if (!report.faults.empty()) return report;
  const auto opened = [&](std::size_t i) {
    const Action action = plan.lines[i].action;
    return action == Action::move || action == Action::spare || action == Action::buy;
  };
  for (std::size_t i = 0; i < question.valves.size(); ++i) {
    const Valve& valve = question.valves[i];
    const PlanLine& line = plan.lines[i];
    expect((line.action == Action::move) == line.from.has_value(), valve.name, "from with move");
    if (!reads(valve)) {
      expect(line.action == Action::unread && line.size == valve.shim && !line.after &&
                 !line.margin && line.state == State::unread && line.cost == Money(),
             valve.name, "an unread valve is left alone");
      continue;
    }
    expect(line.size && line.after && line.margin, valve.name, "a read valve has an outcome");
    if (!line.size || !line.after || !line.margin) continue;
    const Limits& limits = valve.limits;
    expect(*line.after == *valve.clearance + *valve.shim - *line.size, valve.name, "after");
    expect(*line.margin == std::min(*line.after - limits.min, limits.max - *line.after), valve.name,
           "margin");
    expect(line.state == state_of(line.after, limits, doubt_of(question, valve)), valve.name,
           "state");
    const bool outside = *line.margin < Length();
    if (!opened(i)) {
      expect(line.action == Action::keep || line.action == Action::none, valve.name, "action");
      expect(line.size == valve.shim, valve.name, "a valve left shut keeps its shim");
      expect(line.cost == Money(), valve.name, "a valve left shut costs nothing");
      expect((line.action == Action::none) == (outside && !valve.locked), valve.name,
             "none where it stays outside its limits, and only there");
      report.score += score_of(question, valve, *line.size, false, Money());
      continue;
    }
    expect(may_be_opened(question, valve), valve.name, "opened though it may not be");
    expect(!outside || may_be_fitted(question, valve, *line.size), valve.name,
           "fitted outside its limits, though not nearer");
    expect(line.size != valve.shim, valve.name, "an equal shim fitted for its own");
    const Key key{valve.series, *line.size};
    ++came_out[{valve.series, *valve.shim}];
    ++still_out[{valve.series, *valve.shim}];
    Money price;
    if (line.action == Action::buy) {
      price = Money::thousandths(line.cost.thousandths() - question.rules.work.thousandths());
      ++bought[{valve.series, *line.size, price}];
    } else {
      expect(line.cost == question.rules.work, valve.name, "the owner's own shims cost nothing");
      if (line.action == Action::spare) ++spares_used[key];
    }
    if (line.action == Action::move && line.from) {
      const std::size_t giver = *line.from;
      expect(giver < plan.lines.size() && giver != i, valve.name, "from another valve");
      if (giver >= plan.lines.size()) continue;
      expect(opened(giver), valve.name, "from a valve that is opened");
      expect(
          question.valves[giver].series == valve.series && question.valves[giver].shim == line.size,
          valve.name, "the shim that the giver has");
      expect(gave.insert(giver).second, valve.name, "no shim given twice");
    }
    report.score += score_of(question, valve, *line.size, true, price);
  }
  for (const std::size_t giver : gave)
    --still_out[{question.valves[giver].series, *question.valves[giver].shim}];

  // As many as there are, and the lists say what the lines say.
  std::map<Key, std::int64_t> spares;
  std::map<Priced, std::int64_t> on_sale;
  for (const Stock& stock : question.stock) {
    if (stock.kind == Stock::Kind::spare)
      spares[{stock.series, stock.size}] += stock.count.value_or(1);
    else
      on_sale[{stock.series, stock.size, stock.price}] += stock.count.value_or(1'000'000);
  }
  for (const auto& [key, count] : spares_used)
    expect(count <= spares[key], key.first, "more spares than there are");
  for (const auto& [key, count] : bought)
    expect(count <= on_sale[key], std::get<0>(key), "more bought than is on sale");
  std::map<Priced, std::int64_t> ordered;
  Priced last_ordered;
  for (const Purchase& row : plan.order) {
    const Priced key{row.series, row.size, row.price};
    expect(ordered.empty() || last_ordered < key, row.series, "the order's rows are in order");
    expect(row.count > 0, row.series, "no empty row in the order");
    ordered[key] += row.count;
    last_ordered = key;
  }
  expect(ordered == bought, "order", "buys what the lines buy");
  std::erase_if(still_out, [](const auto& entry) { return entry.second == 0; });
  std::map<Key, std::int64_t> surplus;
  Key last_left;
  for (const Leftover& row : plan.surplus) {
    const Key key{row.series, row.size};
    expect(surplus.empty() || last_left < key, row.series, "the surplus' rows are in order");
    surplus[key] += row.count;
    last_left = key;
  }
  expect(surplus == still_out, "surplus", "is what comes out and is not used again");
  return report;
}

}  // namespace shimwright::audit
