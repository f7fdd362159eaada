// SPDX-License-Identifier: MPL-2.0
#include "core/steps_stand_ins.hpp"

#include <algorithm>
#include <bit>
#include <tuple>

namespace shimwright::fitting {
namespace {

bool in_set(std::uint64_t set, std::size_t t) { return (set >> t & 1) != 0; }

std::size_t first_of(std::uint64_t set) { return static_cast<std::size_t>(std::countr_zero(set)); }

}  // namespace

StandIns::StandIns(const Work& work, const std::vector<std::size_t>& visits)
    : work_(work), visits_(visits), times_(work.jobs.size()) {
  for (std::size_t j = 0; j < times_.size(); ++j) {
    JobTime& time = times_[j];
    for (std::size_t t = 0; t < visits.size(); ++t)
      if (in_set(work.jobs[j].open, visits[t])) time.open_in |= std::uint64_t{1} << t;
    if (time.open_in == 0) {
      root_need_ = never;
      return;
    }
    time.last = static_cast<std::size_t>(std::bit_width(time.open_in)) - 1;
    time.opened_by = visits.size();
  }
  for (const Chain& chain : work.chains) {
    root_need_ += need_of(chain);
    if (root_need_ >= never) {
      root_need_ = never;
      return;
    }
  }
}

// cost[t]: stand-ins needed so far if the giver is to be opened by visit t. Returns the same for
// the last job of the chain.
std::vector<std::size_t> StandIns::along(const Chain& chain, std::size_t first,
                                         std::vector<std::size_t> cost) const {
  std::vector<std::size_t> next(cost.size());
  for (std::size_t i = first; i < chain.jobs.size(); ++i) {
    const std::size_t job = chain.jobs[i];
    const JobTime& time = times_[job];
    std::size_t best = never;
    for (std::size_t t = 0; t < cost.size(); ++t) {
      if (time.time == Time::waits) {
        if (t == time.opened) best = std::min(best, cost[time.finished]);
      } else if (in_set(time.open_in, t) && t <= time.opened_by) {
        if (t >= time.finished_from) best = std::min(best, cost[t]);
        if (time.time == Time::open && work_.jobs[job].can_wait && t < time.last &&
            time.last >= time.finished_from)
          best = std::min(best, cost[time.last] + 1);
      }
      next[t] = best;
    }
    std::swap(cost, next);
  }
  return cost;
}

// Stand-ins that the chain needs beyond those settled.
std::size_t StandIns::need_of(const Chain& chain) const {
  const std::size_t count = visits_.size();
  if (!chain.ring) return std::min(never, along(chain, 0, std::vector<std::size_t>(count)).back());
  const JobTime& time = times_[chain.jobs.front()];
  std::size_t need = never;
  for (std::size_t t = 0; t < count && need > 0; ++t) {
    const bool waits = time.time == Time::waits;
    if (waits ? t != time.opened : !in_set(time.open_in, t) || t > time.opened_by) continue;
    std::vector<std::size_t> cost(count, never);
    std::fill(cost.begin() + static_cast<std::ptrdiff_t>(t), cost.end(), std::size_t{0});
    cost = along(chain, 1, std::move(cost));
    if (waits) {
      need = std::min(need, cost[time.finished]);
      continue;
    }
    if (t >= time.finished_from) need = std::min(need, cost[t]);
    if (time.time == Time::open && work_.jobs[chain.jobs.front()].can_wait && t < time.last &&
        time.last >= time.finished_from)
      need = std::min(need, cost[time.last] + 1);
  }
  return need;
}

std::optional<Schedule> StandIns::least(std::size_t most, Effort& effort) {
  std::optional<Schedule> best;
  if (root_need_ >= never) return best;
  if (candidates_.empty()) {
    candidates_.resize(times_.size());
    for (std::size_t j = 0; j < times_.size(); ++j) {
      for (std::size_t x = 0; x < work_.shims.size(); ++x)
        if (work_.may_stand_in(x, j)) candidates_[j].push_back(x);
      // Spares lie about anyhow; and the nearest in thickness keeps the clearance nearest to what
      // it was.
      const auto rank = [this](std::size_t x) {
        const Shim& shim = work_.shims[x];
        return std::tuple(shim.name.origin != ShimAtBench::Origin::spare, -shim.size, x);
      };
      std::sort(candidates_[j].begin(), candidates_[j].end(),
                [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    }
  }
  const std::vector<JobTime> fresh = times_;
  while (root_need_ <= most && settle(0, most, effort)) {
    best = written_out();
    times_ = fresh;
    const std::size_t used = stand_ins_.size();
    stand_ins_.clear();
    if (used == root_need_) break;
    most = used - 1;
  }
  times_ = fresh;
  stand_ins_.clear();
  return best;
}

bool StandIns::settle(std::size_t used, std::size_t most, Effort& effort) {
  if (effort.spent()) return false;
  effort.use(times_.size() * visits_.size());
  const Chain* needy = nullptr;
  std::size_t need = used;
  for (const Chain& chain : work_.chains) {
    const std::size_t more = need_of(chain);
    need += more;
    if (need > most) return false;
    if (more > 0 && (needy == nullptr || chain.jobs.size() < needy->jobs.size())) needy = &chain;
  }
  if (needy == nullptr) return true;
  const std::vector<JobTime> before = times_;
  for (const std::size_t job : needy->jobs) {
    if (times_[job].time != Time::open || !work_.jobs[job].can_wait) continue;
    if (let_wait(job, used, most, effort)) return true;
    times_[job].time = Time::one_visit;  // the ways in which it waits have all been tried
    if (used + need_of(*needy) > most) break;
  }
  times_ = before;
  return false;
}

bool StandIns::let_wait(std::size_t job, std::size_t used, std::size_t most, Effort& effort) {
  const JobTime before = times_[job];
  for (std::size_t from = 0; from < before.last && from <= before.opened_by; ++from) {
    if (!in_set(before.open_in, from)) continue;
    for (std::size_t to = before.last; to > from && to >= before.finished_from; --to) {
      if (!in_set(before.open_in, to)) continue;
      times_[job].time = Time::waits;
      times_[job].opened = from;
      times_[job].finished = to;
      if (cover(job, from, used, most, effort)) return true;
      times_[job] = before;
    }
  }
  return false;
}

// Finds a stand-in from this visit on, and where it does not last, another after it.
bool StandIns::cover(std::size_t job, std::size_t from, std::size_t used, std::size_t most,
                     Effort& effort) {
  if (used + 1 > most || effort.spent()) return false;
  const std::size_t end = times_[job].finished;
  for (std::size_t to = end; to > from; --to) {
    if (!in_set(times_[job].open_in, to)) continue;
    std::optional<ShimAtBench> tried;
    for (const std::size_t shim : candidates_[job]) {
      effort.use(1);
      if (!at_hand(shim, job, from, to)) continue;
      // Of spares alike and yet unused, one is as good as another.
      if (work_.shims[shim].name.origin == ShimAtBench::Origin::spare && unused(shim)) {
        if (tried == work_.shims[shim].name) continue;
        tried = work_.shims[shim].name;
      }
      const std::vector<JobTime> before = times_;
      reserve(shim, from, to);
      stand_ins_.push_back({.job = job, .shim = shim, .from = from, .to = to});
      if (to == end ? settle(used + 1, most, effort) : cover(job, to, used + 1, most, effort))
        return true;
      stand_ins_.pop_back();
      times_ = before;
    }
  }
  return false;
}

bool StandIns::unused(std::size_t shim) const {
  return std::none_of(stand_ins_.begin(), stand_ins_.end(),
                      [shim](const StandIn& use) { return use.shim == shim; });
}

bool StandIns::at_hand(std::size_t shim, std::size_t job, std::size_t from, std::size_t to) const {
  for (const StandIn& other : stand_ins_)
    if (other.shim == shim && other.from < to && from < other.to) return false;
  const std::size_t source = work_.shims[shim].out_of;
  if (source != nobody) {
    const JobTime& time = times_[source];
    // Its own old shim may be put back, but cannot be what comes in for it.
    if (source == job && from == time.opened) return false;
    if ((time.time == Time::waits ? time.opened : first_of(time.open_in)) > from) return false;
  }
  const std::size_t due = work_.shims[shim].goes_to;
  if (due == nobody) return true;
  const JobTime& time = times_[due];
  return (time.time == Time::waits ? time.finished : time.last) >= to;
}

void StandIns::reserve(std::size_t shim, std::size_t from, std::size_t to) {
  const std::size_t source = work_.shims[shim].out_of;
  const std::size_t due = work_.shims[shim].goes_to;
  if (source != nobody) times_[source].opened_by = std::min(times_[source].opened_by, from);
  if (due != nobody) times_[due].finished_from = std::max(times_[due].finished_from, to);
}

// No chain needs a stand-in any more: what waits is settled, all else is opened and finished in
// one visit, as early as may be.
Schedule StandIns::written_out() const {
  Schedule schedule{.visits = visits_,
                    .opened = std::vector<std::size_t>(times_.size(), nobody),
                    .finished = std::vector<std::size_t>(times_.size(), nobody),
                    .stand_ins = stand_ins_};
  for (const Chain& chain : work_.chains) write_in_one_visit(chain, schedule);
  return schedule;
}

void StandIns::write_in_one_visit(const Chain& chain, Schedule& schedule) const {
  const auto waits = [this](std::size_t job) { return times_[job].time == Time::waits; };
  const auto earliest = [this](std::size_t job, std::size_t from) {
    const std::uint64_t open = times_[job].open_in >> from << from;
    return open == 0 ? visits_.size() : first_of(open);
  };
  // A ring begins after a job that waits, whose shim is out from a settled visit on; where none
  // waits, all of it is done in one visit.
  std::size_t start = 0;
  std::size_t from = 0;
  if (chain.ring) {
    const auto at = std::find_if(chain.jobs.begin(), chain.jobs.end(), waits);
    if (at != chain.jobs.end()) {
      start = static_cast<std::size_t>(at - chain.jobs.begin());
    } else {
      std::uint64_t all = ~std::uint64_t{0};
      for (const std::size_t job : chain.jobs) {
        all &= times_[job].open_in;
        from = std::max(from, times_[job].finished_from);
      }
      from = first_of(all >> from << from);
    }
  }
  for (std::size_t i = 0; i < chain.jobs.size(); ++i) {
    const std::size_t job = chain.jobs[(start + i) % chain.jobs.size()];
    if (waits(job)) {
      schedule.opened[job] = from = times_[job].opened;
      schedule.finished[job] = times_[job].finished;
    } else {
      from = earliest(job, std::max(from, times_[job].finished_from));
      schedule.opened[job] = schedule.finished[job] = from;
    }
  }
}

}  // namespace shimwright::fitting
