// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "core/fitting/steps_least.hpp"
#include "core/fitting/steps_one_by_one.hpp"
#include "core/fitting/steps_rows.hpp"
#include "core/fitting/steps_work.hpp"

namespace shimwright {
namespace {

using fitting::Chain;
using fitting::Effort;
using fitting::Work;

// A cell waits for the answer while a person types: all told, it comes in less than a tenth of a
// second on a machine of its time, even where the effort is used up (which is rare).
constexpr std::uint64_t most_effort = 12'000'000;

// No engine has so many valves; a table might.
constexpr std::size_t most_jobs = 256;

void leave_out(const Work& work, const Chain& ring, bool left, std::vector<bool>& left_out) {
  for (const std::size_t job : ring.jobs) left_out[work.jobs[job].valve] = left;
}

bool some_open_at_several(const Work& work) {
  return std::any_of(work.jobs.begin(), work.jobs.end(),
                     [](const fitting::Job& job) { return (job.open & (job.open - 1)) != 0; });
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
  std::vector<bool> left_out(question.valves.size());
  const Work all = fitting::work_of(question, left_out);
  const auto stuck = fitting::one_by_one(all).waiting;
  for (const std::size_t ring : stuck) leave_out(all, all.chains[ring], true, left_out);

  FittingSteps result;
  Effort effort{.left = most_effort};
  Work work = fitting::work_of(question, left_out);
  auto schedule = fitting::one_by_one(work).schedule;
  fitting::Least least{.schedule = {}, .proved = false};
  const bool few = all.jobs.size() <= most_jobs;
  if (few) least = fitting::least_schedule(work, schedule.visits.size(), effort);

  // Where valves are open at several stops, one of them may carry a shim from stop to stop, and a
  // ring may so be done without a stand-in from outside.
  std::vector<std::size_t> waiting = stuck;
  if (few && !stuck.empty() && some_open_at_several(all)) {
    const std::size_t most = 2 * all.stops.size() + 2;
    Effort extra{most_effort / 4};
    for (const std::size_t ring : stuck) {
      leave_out(all, all.chains[ring], false, left_out);
      Work more = fitting::work_of(question, left_out);
      auto found = fitting::least_schedule(more, most, extra);
      if (found.schedule) {
        work = std::move(more);
        least = std::move(found);
        std::erase(waiting, ring);
      } else {
        leave_out(all, all.chains[ring], true, left_out);
        least.proved = least.proved && found.proved;
      }
    }
  }

  if (least.schedule) {
    schedule = *std::move(least.schedule);
  } else if (few) {
    Effort extra{effort.left + most_effort};
    schedule = fitting::with_visits_left_out(work, std::move(schedule), extra);
  }
  result.least = least.proved;
  for (const std::size_t ring : waiting) {
    result.steps.push_back(fitting::waiting_row(question, all, all.chains[ring]));
    result.waiting += all.chains[ring].jobs.size();
  }
  if (work.jobs.empty()) return result;
  if (!question.camshafts_out) result.turns = schedule.visits.size();
  result.stand_ins = schedule.stand_ins.size();
  for (Step& step : fitting::rows_of(question, work, schedule))
    result.steps.push_back(std::move(step));
  return result;
}

}  // namespace shimwright
