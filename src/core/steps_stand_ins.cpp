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
    : work_(work),
      visits_(visits),
      times_(work.jobs.size()),
      candidates_(work.jobs.size()),
      lasts_(work.jobs.size() * visits.size()) {
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
    list_candidates(j);
  }
  find_lasts(nullptr);
  for (const Chain& chain : work.chains) {
    root_need_ += need_of(chain);
    if (root_need_ >= never) {
      root_need_ = never;
      return;
    }
  }
}

void StandIns::list_candidates(std::size_t job) {
  std::vector<std::size_t>& shims = candidates_[job];
  if (!work_.jobs[job].can_wait || std::has_single_bit(times_[job].open_in)) return;
  for (std::size_t x = 0; x < work_.shims.size(); ++x)
    if (work_.may_stand_in(x, job)) shims.push_back(x);
  // The nearest in thickness first: it keeps the clearance nearest to what it was.
  const auto rank = [this](std::size_t x) {
    const Shim& shim = work_.shims[x];
    return std::tuple(-shim.size, shim.name.origin != ShimAtBench::Origin::spare, x);
  };
  std::sort(shims.begin(), shims.end(),
            [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
}

// When each job could at the earliest be opened and at the latest finished, the chain considered.
void StandIns::find_bounds() {
  const auto may_wait = [this](std::size_t job) {
    return times_[job].time == Time::open && !candidates_[job].empty();
  };
  for (const Chain& chain : work_.chains) {
    // A second round lets what is known of the last job of a ring tell on the first.
    const std::size_t steps = chain.jobs.size() * (chain.ring ? 2 : 1);
    std::size_t bound = 0;
    for (std::size_t i = 0; i < steps; ++i) {
      const std::size_t job = chain.jobs[i % chain.jobs.size()];
      JobTime& time = times_[job];
      if (time.time == Time::waits)
        bound = time.opened;
      else if (may_wait(job))
        bound = first_of(time.open_in);
      else
        bound = first_open(job, std::max(bound, time.finished_from));
      time.earliest = bound;
    }
    bound = visits_.size();
    for (std::size_t i = steps; i-- > 0;) {
      const std::size_t job = chain.jobs[i % chain.jobs.size()];
      JobTime& time = times_[job];
      if (time.time == Time::waits)
        bound = time.finished;
      else if (may_wait(job))
        bound = time.last;
      else
        bound = last_open(job, std::min(bound, time.opened_by));
      time.latest = bound;
    }
  }
}

// For each job not settled and each visit in which it may be opened: how long a stand-in could
// then last, one alone or one after another, were it the only one in need.
void StandIns::find_lasts(Effort* effort) {
  const std::size_t count = visits_.size();
  find_bounds();
  std::vector<std::uint64_t> gaps;
  for (std::size_t x = 0; x < work_.shims.size(); ++x) gaps.push_back(free_gaps(x));
  for (std::size_t j = 0; j < times_.size(); ++j) {
    const JobTime& time = times_[j];
    if (time.time != Time::open) continue;
    for (std::size_t from = count; from-- > 0;) {
      Lasts& lasts = lasts_[j * count + from];
      lasts = {};
      if (!in_set(time.open_in, from) || from == time.last) continue;
      for (const std::size_t shim : candidates_[j]) {
        if (!in_set(gaps[shim], from) || shim == j) continue;
        const auto length = static_cast<std::size_t>(std::countr_one(gaps[shim] >> from));
        const std::size_t to = last_open(j, from + length);
        lasts.ways += to > from ? 1 : 0;
        if (to > from) lasts.one = std::max(lasts.one, to);
      }
      if (effort != nullptr) effort->use(candidates_[j].size());
      lasts.more = lasts.one;
      for (std::size_t next = from + 1; next <= lasts.one; ++next)
        if (in_set(time.open_in, next))
          lasts.more = std::max(lasts.more, lasts_[j * count + next].more);
    }
  }
}

// The first visit, not before `from`, in which the job is open; the number of visits if none.
std::size_t StandIns::first_open(std::size_t job, std::size_t from) const {
  const std::uint64_t open = from >= visits_.size() ? 0 : times_[job].open_in >> from << from;
  return open == 0 ? visits_.size() : first_of(open);
}

// The last visit, not after `by`, in which the job is open; 0 if none.
std::size_t StandIns::last_open(std::size_t job, std::size_t by) const {
  if (by >= times_[job].last) return times_[job].last;
  const std::uint64_t open = times_[job].open_in & ((std::uint64_t{2} << by) - 1);
  return open == 0 ? 0 : static_cast<std::size_t>(std::bit_width(open)) - 1;
}

// The turns over which the shim could stand in somewhere. Bit t: the turn after visit t.
std::uint64_t StandIns::free_gaps(std::size_t shim) const {
  const auto before = [](std::size_t t) {
    return t >= 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << t) - 1;
  };
  const std::size_t source = work_.shims[shim].out_of;
  const std::size_t due = work_.shims[shim].goes_to;
  std::uint64_t gaps = before(visits_.size() - 1);
  if (source != nobody) gaps &= ~before(times_[source].earliest);
  if (due != nobody) gaps &= before(times_[due].latest);
  for (const StandIn& use : stand_ins_)
    if (use.shim == shim) gaps &= ~(before(use.to) & ~before(use.from));
  return gaps;
}

// cost[t]: stand-ins needed so far if the giver is to be opened by visit t. Makes of it the same
// for the last job of the chain.
void StandIns::go_along(const Chain& chain, std::size_t first, Costs& cost) const {
  const std::size_t count = visits_.size();
  for (std::size_t i = first; i < chain.jobs.size(); ++i) {
    const std::size_t job = chain.jobs[i];
    const Costs before = cost;
    std::size_t best = never;
    for (std::size_t t = 0; t < count; ++t) {
      best = std::min(best, cost_if_opened(job, t, before));
      cost[t] = best;
    }
  }
}

// Of the job's chain so far, with before[t] the cost if the giver is to be opened by visit t.
std::size_t StandIns::cost_if_opened(std::size_t job, std::size_t t, const Costs& before) const {
  const JobTime& time = times_[job];
  if (time.time == Time::waits) return t == time.opened ? before[time.finished] : never;
  if (!in_set(time.open_in, t) || t > time.opened_by) return never;
  std::size_t cost = t >= time.finished_from ? before[t] : never;
  if (time.time != Time::open) return cost;
  const Lasts& lasts = lasts_[job * visits_.size() + t];
  if (lasts.one > 0 && lasts.one >= time.finished_from)
    cost = std::min(cost, before[lasts.one] + 1);
  if (lasts.more > lasts.one && lasts.more >= time.finished_from)
    cost = std::min(cost, before[lasts.more] + 2);
  return cost;
}

// Stand-ins that the chain needs beyond those settled.
std::size_t StandIns::need_of(const Chain& chain) const {
  const std::size_t count = visits_.size();
  Costs cost;
  if (!chain.ring) {
    cost.fill(0);
    go_along(chain, 0, cost);
    return std::min(never, cost[count - 1]);
  }
  std::size_t need = never;
  for (std::size_t t = 0; t < count && need > 0; ++t) {
    for (std::size_t i = 0; i < count; ++i) cost[i] = i < t ? never : 0;
    go_along(chain, 1, cost);
    need = std::min(need, cost_if_opened(chain.jobs.front(), t, cost));
  }
  return need;
}

std::optional<Schedule> StandIns::with_at_most(std::size_t most, Effort& effort) {
  if (root_need_ > most) return std::nullopt;
  cut_ = false;
  const std::vector<JobTime> fresh = times_;
  std::optional<Schedule> schedule;
  if (settle(0, most, effort)) schedule = written_out();
  times_ = fresh;
  stand_ins_.clear();
  find_lasts(nullptr);
  return schedule;
}

// Whether there is room for so many stand-ins more.
bool StandIns::affords(std::size_t need, std::size_t most) {
  if (need > most && need < never) cut_ = true;
  return need <= most;
}

bool StandIns::settle(std::size_t used, std::size_t most, Effort& effort) {
  if (effort.spent()) return false;
  effort.use(times_.size() * visits_.size());
  find_lasts(&effort);
  const Chain* needy = nullptr;
  std::size_t needy_need = 0;
  std::size_t fewest_ways = 0;
  std::size_t need = used;
  for (const Chain& chain : work_.chains) {
    const std::size_t more = need_of(chain);
    need += more;
    if (need >= never) return false;
    if (more == 0) continue;
    std::size_t ways = 0;
    for (const std::size_t job : chain.jobs)
      if (times_[job].time == Time::open)
        for (std::size_t t = 0; t < visits_.size(); ++t)
          ways += lasts_[job * visits_.size() + t].ways;
    if (needy != nullptr && ways >= fewest_ways) continue;
    needy = &chain;
    needy_need = more;
    fewest_ways = ways;
  }
  if (!affords(need, most)) return false;
  if (needy == nullptr) return true;
  const std::size_t others = need - needy_need;  // used ones included
  const std::vector<JobTime> before = times_;
  const std::vector<Lasts> lasts = lasts_;
  for (const std::size_t job : needy->jobs) {
    if (times_[job].time != Time::open || candidates_[job].empty()) continue;
    if (let_wait(*needy, job, used, others, most, effort)) return true;
    lasts_ = lasts;
    times_[job].time = Time::one_visit;  // the ways in which it waits have all been tried
    if (!affords(others + need_of(*needy), most)) break;
  }
  times_ = before;
  return false;
}

bool StandIns::let_wait(const Chain& chain, std::size_t job, std::size_t used, std::size_t others,
                        std::size_t most, Effort& effort) {
  const JobTime before = times_[job];
  const std::vector<Lasts> lasts = lasts_;
  for (std::size_t from = 0; from < before.last && from <= before.opened_by; ++from) {
    if (!in_set(before.open_in, from)) continue;
    for (std::size_t to = before.last; to > from && to >= before.finished_from; --to) {
      if (!in_set(before.open_in, to)) continue;
      times_[job].time = Time::waits;
      times_[job].opened = from;
      times_[job].finished = to;
      effort.use(chain.jobs.size());
      if (affords(others + 1 + need_of(chain), most) && cover(job, from, used, most, effort))
        return true;
      times_[job] = before;
      lasts_ = lasts;
    }
  }
  return false;
}

// Finds a stand-in from this visit on, and where it does not last, another after it.
bool StandIns::cover(std::size_t job, std::size_t from, std::size_t used, std::size_t most,
                     Effort& effort) {
  if (!affords(used + 1, most) || effort.spent()) return false;
  const std::size_t end = times_[job].finished;
  for (std::size_t to = end; to > from; --to) {
    if (!in_set(times_[job].open_in, to)) continue;
    std::optional<ShimAtBench> tried;
    for (const std::size_t shim : candidates_[job]) {
      effort.use(1);
      // Its own old shim may be put back, but cannot be what comes in for it.
      if (shim == job && from == times_[job].opened) continue;
      if ((~free_gaps(shim) >> from & ((std::uint64_t{1} << (to - from)) - 1)) != 0) continue;
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
      from = first_open(job, std::max(from, times_[job].finished_from));
      schedule.opened[job] = schedule.finished[job] = from;
    }
  }
}

}  // namespace shimwright::fitting
