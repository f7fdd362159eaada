// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/carry.hpp"

#include <algorithm>
#include <iterator>
#include <string>
#include <unordered_map>

namespace shimwright::fitting {
namespace {

class CarrySearch {
 public:
  CarrySearch(const Work& work, const std::vector<std::size_t>& rings, Effort& effort)
      : work_(work), effort_(effort) {
    for (const std::size_t ring : rings)
      jobs_.insert(jobs_.end(), work.chains[ring].jobs.begin(), work.chains[ring].jobs.end());
  }

  Carried run() {
    State start, end;
    StopSet stops = 0;
    for (const std::size_t job : jobs_) {
      start += static_cast<char16_t>(job);  // each shim has its job's number
      end += static_cast<char16_t>(work_.jobs[job].fresh);
      stops |= work_.jobs[job].open;
    }
    reached_.emplace(start, Came{});
    std::vector<const State*> level{&reached_.begin()->first};
    while (!level.empty()) {
      next_.clear();
      for (const State* state : level)
        for (StopSet rest = stops; rest != 0; rest &= rest - 1) {
          stop_ = first_of(rest);
          from_ = state;
          State after = *state;
          change(0, after);
          if (effort_.spent()) return {.schedule = std::nullopt, .proved = false};
          if (reached_.contains(end)) return {.schedule = schedule_to(end)};
        }
      level = next_;
    }
    return {};
  }

 private:
  using State = std::u16string;  // by place in jobs_: the shim in the valve
  struct Came {
    const State* from = nullptr;
    std::size_t stop = 0;
  };

  bool is_workable(std::size_t i) const {
    const Job& job = work_.jobs[jobs_[i]];
    return in_set(job.open, stop_) && (*from_)[i] != job.fresh;
  }

  // Every way to fill the valves from this place on with the shims not yet used.
  void change(std::size_t i, State& after) {
    effort_.use(4);
    if (effort_.spent()) return;
    while (i < jobs_.size() && !is_workable(i)) ++i;
    if (i == jobs_.size()) {
      effort_.use(50 + jobs_.size());
      const auto [at, is_new] = reached_.try_emplace(after, Came{from_, stop_});
      if (is_new) next_.push_back(&at->first);
      return;
    }
    for (std::size_t k = i; k < jobs_.size(); ++k) {
      if (!is_workable(k)) continue;
      std::swap(after[i], after[k]);
      const std::size_t shim = after[i];
      const std::size_t job = jobs_[i];
      if (shim == work_.jobs[job].fresh ||
          (work_.shims[shim].series == work_.shims[job].series &&
           work_.shims[shim].size <= work_.shims[job].size))
        change(i + 1, after);
      std::swap(after[i], after[k]);
    }
  }

  Schedule schedule_to(const State& end) const {
    std::vector<const State*> states;
    Schedule schedule;
    for (auto at = reached_.find(end); at->second.from != nullptr;
         at = reached_.find(*at->second.from)) {
      states.push_back(&at->first);
      schedule.visits.push_back(at->second.stop);
    }
    std::reverse(states.begin(), states.end());
    std::reverse(schedule.visits.begin(), schedule.visits.end());
    schedule.opened.assign(work_.jobs.size(), no_index);
    schedule.finished.assign(work_.jobs.size(), no_index);
    for (std::size_t i = 0; i < jobs_.size(); ++i) {
      const std::size_t job = jobs_[i];
      std::size_t held = job;
      std::size_t since = 0;
      for (std::size_t visit = 0; visit < states.size(); ++visit) {
        const std::size_t now = (*states[visit])[i];
        if (now == held) continue;
        if (schedule.opened[job] == no_index)
          schedule.opened[job] = visit;
        else
          schedule.stand_ins.push_back({job, held, since, visit});
        if (now == work_.jobs[job].fresh) schedule.finished[job] = visit;
        held = now;
        since = visit;
      }
    }
    return schedule;
  }

  const Work& work_;
  Effort& effort_;
  std::vector<std::size_t> jobs_;
  std::unordered_map<State, Came> reached_;
  std::vector<const State*> next_;
  const State* from_ = nullptr;
  std::size_t stop_ = 0;
};

}  // namespace

Carried carried_among(const Work& work, const std::vector<std::size_t>& rings,
                      const std::vector<std::size_t>& helpers, Effort& effort) {
  const auto may_carry = [&work](std::size_t ring) {
    const auto& jobs = work.chains[ring].jobs;
    return std::any_of(jobs.begin(), jobs.end(),
                       [&work](std::size_t job) { return has_several(work.jobs[job].open); });
  };
  Carried carried;
  std::vector<std::size_t> among = rings;
  if (std::any_of(among.begin(), among.end(), may_carry))
    carried = CarrySearch(work, among, effort).run();
  std::copy_if(helpers.begin(), helpers.end(), std::back_inserter(among), may_carry);
  if (carried.schedule || among.size() == rings.size()) return carried;
  return CarrySearch(work, among, effort).run();
}

}  // namespace shimwright::fitting
