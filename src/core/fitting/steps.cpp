// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/fitting/greedy.hpp"
#include "core/fitting/least.hpp"
#include "core/fitting/rows.hpp"
#include "core/fitting/work.hpp"

namespace shimwright {
namespace {

using fitting::Effort;
using fitting::Schedule;
using fitting::StandIn;
using fitting::Work;

// A cell waits for the answer while a person types: all told, it comes within a tenth of a second
// on a machine of its time, even where the effort is used up (which is rare).
constexpr std::uint64_t most_effort = 30'000'000;

bool any_open_at_several(const Work& work) {
  return std::any_of(work.jobs.begin(), work.jobs.end(),
                     [](const fitting::Job& job) { return fitting::has_several(job.open); });
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

FittingSteps fitting_steps(const FittingQuestion& question) {
  fitting::check(question);
  std::vector<bool> left_out(question.valves.size());
  const Work all = fitting::work_of(question, left_out);
  std::vector<std::size_t> waiting = fitting::lending_of(all).has_none;
  const auto leave_out = [&](std::size_t ring, bool left) {
    for (const std::size_t job : all.chains[ring].jobs) left_out[all.jobs[job].valve] = left;
  };
  for (const std::size_t ring : waiting) leave_out(ring, true);

  Effort effort{.left = most_effort};
  std::optional<Work> some;
  if (!waiting.empty()) some = fitting::work_of(question, left_out);
  const Work* work = some ? &*some : &all;
  Schedule schedule = fitting::greedy_schedule(*work);
  auto [found, proved] = fitting::least_schedule(*work, schedule.visits.size(), effort);
  proved = proved && found;
  if (found && (proved || is_better(*found, schedule))) schedule = *std::move(found);

  // A valve that is open at several stops may carry shims from stop to stop, and a ring for which
  // there is no stand-in may so be done.
  if (!waiting.empty() && any_open_at_several(all)) {
    Effort extra{.left = most_effort / 4};
    for (const std::size_t ring : std::vector(waiting)) {
      leave_out(ring, false);
      Work more = fitting::work_of(question, left_out);
      auto carried = fitting::least_schedule(more, 2 * all.stops.size() + 2, extra);
      if (carried.schedule) {
        some = std::move(more);
        work = &*some;
        schedule = *std::move(carried.schedule);
        proved = carried.proved;
        std::erase(waiting, ring);
      } else {
        leave_out(ring, true);
      }
    }
  }

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

}  // namespace shimwright
