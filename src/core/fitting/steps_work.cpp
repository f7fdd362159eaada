// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_work.hpp"

#include <algorithm>
#include <map>
#include <string>

#include "core/values/bad_input.hpp"

namespace shimwright::fitting {
namespace {

using Supply = FittingValve::Supply;

void check(const FittingQuestion& question) {
  std::vector<bool> gave(question.valves.size());
  for (const FittingValve& valve : question.valves) {
    if (valve.supply == Supply::keep) continue;
    const std::string subject = "valve \"" + valve.name + "\": ";
    if (!valve.shim) throw BadInput(subject + "its shim is not known, so none can be fitted");
    if (!question.camshafts_out && valve.stops.empty())
      throw BadInput(subject +
                     "its shim is to be changed, but it can be worked on at no stop of the crank");
    if (valve.supply != Supply::valve) continue;
    if (valve.giver >= question.valves.size() || &question.valves[valve.giver] == &valve)
      throw BadInput(subject + "the valve its shim is to come from does not exist");
    const FittingValve& giver = question.valves[valve.giver];
    if (giver.supply == Supply::keep)
      throw BadInput(subject + "its shim is to come from \"" + giver.name + "\", which keeps it");
    if (gave[valve.giver])
      throw BadInput(subject + "the shim of \"" + giver.name + "\" is given away twice");
    gave[valve.giver] = true;
    if (giver.shim && giver.shim != valve.fit)
      throw BadInput(subject + text_of(valve.fit) + " is to come from \"" + giver.name +
                     "\", which has another size");
  }
}

class JobTable {
 public:
  JobTable(const FittingQuestion& question, const std::vector<bool>& left_out)
      : question_(question), job_of_(question.valves.size(), nobody) {
    for (std::size_t i = 0; i < question.valves.size(); ++i) {
      if (question.valves[i].supply == Supply::keep || (i < left_out.size() && left_out[i]))
        continue;
      job_of_[i] = work_.jobs.size();
      work_.jobs.push_back({.valve = i});
    }
    number_stops();
    list_shims();
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      for (std::size_t x = 0; x < work_.shims.size() && !work_.jobs[j].can_wait; ++x)
        work_.jobs[j].can_wait = x != j && work_.may_stand_in(x, j);
    list_chains();
  }

  Work take() { return std::move(work_); }

 private:
  const FittingValve& valve_of(const Job& job) const { return question_.valves[job.valve]; }

  void number_stops() {
    if (question_.camshafts_out) {
      work_.stops = {1};
      for (Job& job : work_.jobs) job.open = 1;
      return;
    }
    for (const Job& job : work_.jobs)
      for (const int stop : valve_of(job).stops) work_.stops.push_back(stop);
    std::sort(work_.stops.begin(), work_.stops.end());
    work_.stops.erase(std::unique(work_.stops.begin(), work_.stops.end()), work_.stops.end());
    if (work_.stops.size() > most_stops)
      throw BadInput("there are more than " + std::to_string(most_stops) + " stops of the crank");
    for (Job& job : work_.jobs)
      for (const int stop : valve_of(job).stops) {
        const auto at = std::lower_bound(work_.stops.begin(), work_.stops.end(), stop);
        job.open |= StopSet{1} << (at - work_.stops.begin());
      }
  }

  std::size_t series_number(const std::string& series) {
    return series_.try_emplace(series, series_.size()).first->second;
  }

  void list_shims() {
    using Origin = ShimAtBench::Origin;
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      const FittingValve& valve = valve_of(work_.jobs[j]);
      work_.shims.push_back({.size = *valve.shim,
                             .series = series_number(valve.series),
                             .out_of = j,
                             .name = {Origin::out_of_valve, work_.jobs[j].valve}});
    }
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      Job& job = work_.jobs[j];
      const FittingValve& valve = valve_of(job);
      if (valve.supply == Supply::valve) {
        job.giver = job_of_[valve.giver];
        job.fresh = job.giver;
        work_.jobs[job.giver].taker = j;
      } else {
        job.fresh = work_.shims.size();
        work_.shims.push_back({.size = valve.fit,
                               .series = work_.shims[j].series,
                               .name = {Origin::meant_for_valve, job.valve}});
      }
      work_.shims[job.fresh].goes_to = j;
    }
    for (std::size_t row = 0; row < question_.spares.size(); ++row) {
      const FittingQuestion::Spare& spare = question_.spares[row];
      const auto most = static_cast<std::int64_t>(work_.jobs.size());  // more can be of no use
      for (std::int64_t n = std::min(spare.count, most); n > 0; --n)
        work_.shims.push_back({.size = spare.size,
                               .series = series_number(spare.series),
                               .name = {Origin::spare, row}});
    }
  }

  void list_chains() {
    std::vector<bool> placed(work_.jobs.size());
    const auto follow = [&](std::size_t first, bool ring) {
      Chain chain{.jobs = {}, .ring = ring, .common = ~StopSet{0}};
      for (std::size_t j = first; j != nobody && !placed[j]; j = work_.jobs[j].taker) {
        placed[j] = true;
        chain.jobs.push_back(j);
        chain.common &= work_.jobs[j].open;
      }
      work_.chains.push_back(std::move(chain));
    };
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      if (work_.jobs[j].giver == nobody) follow(j, false);
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      if (!placed[j]) follow(j, true);
  }

  const FittingQuestion& question_;
  std::vector<std::size_t> job_of_;  // by valve
  std::map<std::string, std::size_t> series_;
  Work work_;
};

}  // namespace

Work work_of(const FittingQuestion& question, const std::vector<bool>& left_out) {
  check(question);
  return JobTable(question, left_out).take();
}

}  // namespace shimwright::fitting
