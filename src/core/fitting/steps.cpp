// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/fitting/carry.hpp"
#include "core/fitting/greedy.hpp"
#include "core/fitting/least.hpp"
#include "core/fitting/rows.hpp"
#include "core/fitting/work.hpp"

namespace shimwright {
namespace {

using fitting::Chain;
using fitting::Effort;
using fitting::no_index;
using fitting::Schedule;
using fitting::StandIn;
using fitting::Work;

// A cell waits for the answer while a person types: all told, it comes in less than a tenth of a
// second on a machine of its time, even where the effort is used up (which is rare).
constexpr std::uint64_t most_effort = 30'000'000;

// The rings that no shim serves as a stand-in and that do not go without one. Those that do are
// tried together with others that do, whose shims may help.
std::vector<std::size_t> rings_that_wait(const Work& work, Effort& effort, bool& proved) {
  auto [lent, waiting, helpers] = fitting::lending_of(work);
  std::vector<std::size_t> done;
  for (bool again = true; again;) {
    again = false;
    for (const std::size_t ring : std::vector(waiting)) {
      done.push_back(ring);
      Effort share{effort.left / 2};
      const std::uint64_t given = share.left;
      const auto carried = fitting::carried_among(work, done, helpers, share);
      effort.use(given - share.left);
      if (carried.schedule) {
        std::erase(waiting, ring);
        again = true;
      } else {
        done.pop_back();
        proved = proved && carried.proved;
      }
    }
  }
  return waiting;
}

// Greedy, and after it the rings that go without a stand-in.
Schedule safe_schedule(const Work& work, Effort& effort) {
  Schedule schedule = fitting::greedy_schedule(work);
  const auto [lent, rings, helpers] = fitting::lending_of(work);
  const auto carried = fitting::carried_among(work, rings, helpers, effort).schedule;
  if (!carried) return schedule;
  if (!schedule.visits.empty() && schedule.visits.back() == carried->visits.front())
    schedule.visits.pop_back();
  const std::size_t first = schedule.visits.size();
  schedule.visits.insert(schedule.visits.end(), carried->visits.begin(), carried->visits.end());
  for (std::size_t job = 0; job < work.jobs.size(); ++job) {
    if (carried->opened[job] == no_index) continue;
    schedule.opened[job] = first + carried->opened[job];
    schedule.finished[job] = first + carried->finished[job];
  }
  for (const StandIn& use : carried->stand_ins)
    schedule.stand_ins.push_back({use.job, use.shim, first + use.from, first + use.to});
  return schedule;
}

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
  for (StandIn& use : schedule.stand_ins) use = {use.job, use.shim, number[use.from], number[use.to]};
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

FittingSteps fitting_steps(const FittingQuestion& question) {
  fitting::check(question);
  FittingSteps result;
  Effort effort{.left = most_effort};
  std::vector<bool> left_out(question.valves.size());
  Work all = fitting::work_of(question, left_out);
  Effort for_rings{.left = most_effort / 4};
  for (const std::size_t c : rings_that_wait(all, for_rings, result.least)) {
    const Chain& ring = all.chains[c];
    result.steps.push_back(fitting::waiting_row(question, all, ring));
    result.waiting += ring.jobs.size();
    for (const std::size_t job : ring.jobs) left_out[all.jobs[job].valve] = true;
  }

  const Work work =
      result.waiting == 0 ? std::move(all) : fitting::work_of(question, left_out);
  if (work.jobs.empty()) return result;
  for_rings = {.left = most_effort / 4};
  Schedule schedule = safe_schedule(work, for_rings);
  auto [found, proved] = fitting::least_schedule(work, schedule.visits.size(), effort);
  result.least = result.least && found && proved;
  if (found && proved) {
    schedule = *std::move(found);
  } else {
    schedule = fitting::shortened(work, std::move(schedule), for_rings);
    if (found && is_better(*found, schedule)) schedule = *std::move(found);
    schedule = without_idle_visits(std::move(schedule));
  }
  if (!question.camshafts_out) result.turns = schedule.visits.size();
  result.stand_ins = schedule.stand_ins.size();
  for (Step& step : fitting::rows_of(question, work, schedule))
    result.steps.push_back(std::move(step));
  return result;
}

}  // namespace shimwright
