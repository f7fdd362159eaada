// SPDX-License-Identifier: MPL-2.0
#include "core/plan/other_ways.hpp"

#include <algorithm>

namespace shimwright {
namespace {

// None where the question asks so already.
std::optional<PlanQuestion> asked_otherwise(const PlanQuestion& question, WayKind kind) {
  PlanQuestion other = question;
  switch (kind) {
    case WayKind::as_chosen:
      return std::nullopt;
    case WayKind::nearest_the_aim:
      if (question.rules.aim_first) return std::nullopt;
      other.rules.aim_first = true;
      return other;
    case WayKind::nothing_bought:
      if (std::erase_if(other.stock,
                        [](const Stock& row) { return row.kind == Stock::Kind::sale; }) == 0)
        return std::nullopt;
      return other;
    case WayKind::good_valves_opened:
      if (question.rules.touch_good) return std::nullopt;
      other.rules.touch_good = true;
      return other;
    case WayKind::nearest_shims:
      if (question.rules.nearest) return std::nullopt;
      other.rules.nearest = true;
      return other;
  }
  return std::nullopt;
}

}  // namespace

PlanSum sum_of(const PlanQuestion& question, const Plan& plan) {
  PlanSum sum;
  std::int64_t known = 0;
  Length distances;
  for (std::size_t i = 0; i < plan.lines.size(); ++i) {
    const PlanLine& line = plan.lines[i];
    if (line.margin && *line.margin < Length())
      ++sum.outside;
    else if (line.state == State::tight_doubtful || line.state == State::loose_doubtful)
      ++sum.in_doubt;
    if (changes_shim(line.action)) ++sum.changed;
    if (line.action == Action::buy) ++sum.bought;
    sum.money += line.cost;
    if (line.state == State::unread || !line.after) continue;
    ++known;
    distances += abs(*line.after - question.valves[i].aim);
  }
  if (known > 0) sum.from_aim = Length::nanometres(distances.nanometres() / known);
  return sum;
}

std::vector<Way> other_ways(const PlanQuestion& question, const Plan& chosen) {
  std::vector<Way> ways;
  const PlanSum as_chosen = sum_of(question, chosen);
  for (const WayKind kind : all_ways) {
    const auto other = asked_otherwise(question, kind);
    ways.push_back({.kind = kind,
                    .chosen = !other,
                    .sum = other ? sum_of(*other, best_plan(*other)) : as_chosen});
  }
  return ways;
}

}  // namespace shimwright
