// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/fitting/carried.hpp"
#include "core/fitting/greedy.hpp"
#include "core/fitting/least.hpp"
#include "core/fitting/rows.hpp"
#include "core/fitting/work.hpp"

namespace shimwright {
namespace {

using fitting::Carried;
using fitting::Effort;
using fitting::Schedule;
using fitting::StandIn;
using fitting::Work;

// A search that was cut short may come to a stop and do nothing there.
Schedule without_idle_visits(Schedule schedule) {
  std::vector<bool> busy(schedule.visits.size());
  for (const std::size_t visit : schedule.finished) busy[visit] = true;
  for (const StandIn& use : schedule.stand_ins) busy[use.from] = true;
  std::vector<std::size_t> number;  // by visit: what it becomes
  std::vector<std::size_t> visits;
  for (std::size_t visit = 0; visit < busy.size(); ++visit) {
    const std::size_t stop = schedule.visits[visit];
    if (busy[visit] && (visits.empty() || visits.back() != stop)) visits.push_back(stop);
    number.push_back(visits.empty() ? 0 : visits.size() - 1);
  }
  for (std::size_t& visit : schedule.opened) visit = number[visit];
  for (std::size_t& visit : schedule.finished) visit = number[visit];
  for (StandIn& use : schedule.stand_ins)
    use = {use.job, use.shim, number[use.from], number[use.to]};
  std::erase_if(schedule.stand_ins, [](const StandIn& use) { return use.from == use.to; });
  schedule.visits = std::move(visits);
  return schedule;
}

bool is_better(const Schedule& a, const Schedule& b) {
  return std::pair(a.visits.size(), a.stand_ins.size()) <
         std::pair(b.visits.size(), b.stand_ins.size());
}

}  // namespace

FittingQuestion fitting_of(const PlanQuestion& question, const Plan& plan,
                           std::span<const OpenAt> open) {
  using Supply = FittingValve::Supply;
  FittingQuestion fitting;
  fitting.camshafts_out = open.empty();
  std::map<std::pair<std::string, Length>, std::int64_t> used;
  for (std::size_t i = 0; i < question.valves.size(); ++i) {
    const Valve& valve = question.valves[i];
    const PlanLine& line = plan.lines.at(i);
    FittingValve& job = fitting.valves.emplace_back();
    job.name = valve.name;
    job.series = valve.series;
    job.shim = valve.shim;
    if (line.action == Action::move) {
      job.supply = Supply::valve;
      job.giver = line.from.value();
    } else if (line.action == Action::spare) {
      job.supply = Supply::spare;
      ++used[{valve.series, line.size.value()}];
    } else if (line.action == Action::buy) {
      job.supply = Supply::bought;
    }
    if (job.supply != Supply::keep) job.fit = line.size.value();
  }
  for (const OpenAt& at : open) fitting.valves.at(at.valve).stops.push_back(at.stop);
  for (const Stock& stock : question.stock) {
    if (stock.kind != Stock::Kind::spare) continue;
    std::int64_t& taken = used[{stock.series, stock.size}];
    const std::int64_t count = stock.count.value_or(1);
    const std::int64_t gone = std::min(taken, count);
    taken -= gone;
    if (count > gone) fitting.spares.push_back({stock.series, stock.size, count - gone});
  }
  return fitting;
}

std::string_view word_for(Step::Kind kind) {
  switch (kind) {
    case Step::Kind::wait:
      return "wait";
    case Step::Kind::turn:
      return "turn";
    case Step::Kind::take_out:
      return "take out";
    case Step::Kind::change:
      return "change";
    case Step::Kind::fit:
      return "fit";
    case Step::Kind::finish:
      return "finish";
  }
  return {};
}

FittingSteps fitting_steps(const FittingQuestion& question, std::uint64_t effort) {
  fitting::check(question);
  std::vector<bool> left_out(question.valves.size());
  const Work all = fitting::work_of(question, left_out);
  fitting::Lending lending = fitting::lending_of(all);
  Effort extra{.left = effort / 4};
  const std::vector<Carried> carried = fitting::carried_rings(question, all, lending, extra);
  const std::vector<std::size_t>& waiting = lending.has_none;
  for (const std::size_t ring : waiting)
    for (const std::size_t job : all.chains[ring].jobs) left_out[all.jobs[job].valve] = true;
  std::optional<Work> some;
  if (!waiting.empty()) some = fitting::work_of(question, left_out);
  const Work* work = some ? &*some : &all;

  Schedule schedule = fitting::greedy_schedule(*work);
  for (const Carried& rings : carried) fitting::append(rings, *work, schedule);
  schedule = without_idle_visits(std::move(schedule));
  Effort rest{.left = effort};
  auto [found, proved] = fitting::least_schedule(*work, schedule.visits.size(), rest);
  proved = proved && found;
  if (found && (proved || is_better(*found, schedule))) schedule = *std::move(found);

  FittingSteps result;
  result.least = proved || work->jobs.empty();
  for (const std::size_t ring : waiting) {
    result.steps.push_back(fitting::waiting_row(question, all, all.chains[ring]));
    result.waiting += all.chains[ring].jobs.size();
  }
  if (work->jobs.empty()) return result;
  if (!proved) schedule = without_idle_visits(std::move(schedule));
  if (!question.camshafts_out) result.turns = schedule.visits.size();
  result.stand_ins = schedule.stand_ins.size();
  for (Step& step : fitting::rows_of(question, *work, schedule))
    result.steps.push_back(std::move(step));
  return result;
}

void renumber_stops(FittingSteps& steps, const std::map<int, int>& numbers) {
  for (Step& step : steps.steps) {
    if (step.stop) step.stop = numbers.at(*step.stop);
    for (Told& note : step.notes)
      for (auto& value : note.words)  // a whole number in a note is a stop
        if (auto* stop = std::get_if<std::int64_t>(&value))
          *stop = numbers.at(static_cast<int>(*stop));
  }
}

}  // namespace shimwright
