// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/carried.hpp"

#include <algorithm>
#include <utility>

#include "core/fitting/least.hpp"

namespace shimwright::fitting {
namespace {

std::optional<Carried> done_alone(const FittingQuestion& question, const Work& all,
                                  const std::vector<std::size_t>& rings, Effort& effort) {
  effort.use(question.valves.size() + question.spares.size());
  std::vector<bool> left_out(question.valves.size(), true);
  for (const std::size_t ring : rings)
    for (const std::size_t job : all.chains[ring].jobs) left_out[all.jobs[job].valve] = false;
  Carried carried{work_of(question, left_out), {}};
  auto found = least_schedule(carried.work, 2 * all.stops.size() + 2, effort).schedule;
  if (!found) return std::nullopt;
  carried.schedule = *std::move(found);
  return carried;
}

}  // namespace

std::vector<Carried> carried_rings(const FittingQuestion& question, const Work& all,
                                   Lending& lending, Effort& effort) {
  std::vector<Carried> carried;
  if (std::ranges::none_of(all.jobs, [](const Job& job) { return has_several(job.open); }))
    return carried;
  std::vector<std::size_t> can_be_done = lending.needs_none;
  const auto is_carried = [&](std::size_t ring) {
    auto alone = done_alone(question, all, {ring}, effort);
    can_be_done.push_back(ring);
    if (!alone && can_be_done.size() > 1) {
      alone = done_alone(question, all, can_be_done, effort);
      if (alone) carried.clear();
    }
    if (alone)
      carried.push_back(*std::move(alone));
    else
      can_be_done.pop_back();
    return alone.has_value();
  };
  // One that is carried may be what another needs.
  while (!effort.spent() && std::erase_if(lending.has_none, is_carried) > 0) {
  }
  return carried;
}

void append(const Carried& rings, const Work& work, Schedule& schedule) {
  std::vector<std::size_t> job_of;  // by job of the rings
  for (const Job& job : rings.work.jobs)
    job_of.push_back(static_cast<std::size_t>(std::ranges::find(work.jobs, job.valve, &Job::valve) -
                                              work.jobs.begin()));
  const std::size_t first = schedule.visits.size();
  for (const std::size_t visit : rings.schedule.visits)
    schedule.visits.push_back(static_cast<std::size_t>(
        std::ranges::find(work.stops, rings.work.stops[visit]) - work.stops.begin()));
  for (std::size_t i = 0; i < job_of.size(); ++i) {
    schedule.opened[job_of[i]] = first + rings.schedule.opened[i];
    schedule.finished[job_of[i]] = first + rings.schedule.finished[i];
  }
  // Only shims of their own stand in, which have the jobs' numbers.
  for (const StandIn& use : rings.schedule.stand_ins)
    schedule.stand_ins.push_back(
        {job_of[use.job], job_of.at(use.shim), first + use.from, first + use.to});
}

}  // namespace shimwright::fitting
