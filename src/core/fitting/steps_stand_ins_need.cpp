// SPDX-License-Identifier: MPL-2.0
//
// How many stand-ins a chain needs beyond those settled, and whether any at all.
#include <algorithm>
#include <bit>

#include "core/fitting/steps_stand_ins.hpp"

namespace shimwright::fitting {

// Whether a stand-in may go in at all.
bool StandIns::may_wait(std::size_t job) const {
  const std::uint64_t open = times_[job].open_in;
  return !candidates_[job].empty() && (open & (open - 1)) != 0;
}

// When each job could at the earliest be opened and at the latest finished, the chain considered.
void StandIns::find_bounds() {
  const auto not_settled = [this](std::size_t job) {
    return times_[job].time == Time::open && may_wait(job);
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
      else if (not_settled(job))
        bound = first_of(time.open_in);
      else
        bound = first_open(job, std::max<std::size_t>(bound, time.finished_from));
      time.earliest = bound;
    }
    bound = visits_.size();
    for (std::size_t i = steps; i-- > 0;) {
      const std::size_t job = chain.jobs[i % chain.jobs.size()];
      JobTime& time = times_[job];
      if (time.time == Time::waits)
        bound = time.finished;
      else if (not_settled(job))
        bound = time.last;
      else
        bound = last_open(job, std::min<std::size_t>(bound, time.opened_by));
      time.latest = bound;
    }
  }
}

// Whether the chain can do with the stand-ins settled: all else opened and finished in one visit,
// as early as may be.
bool StandIns::needs_none(const Chain& chain) const {
  std::size_t start = 0;
  std::size_t from = 0;
  if (chain.ring) {
    start = waiting_in(chain);
    if (start == nobody) return in_all(chain) != 0;
  }
  const std::size_t count = chain.jobs.size();
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t job = chain.jobs[(start + i) % count];
    const JobTime& time = times_[job];
    if (time.time == Time::waits) {
      if (from > time.finished) return false;
      from = time.opened;
    } else {
      from = first_open(job, std::max<std::size_t>(from, time.finished_from));
      if (from >= visits_.size() || from > time.opened_by) return false;
    }
  }
  // Round to where it began: the shim of the last goes into the first.
  return !chain.ring || from <= times_[chain.jobs[start]].finished;
}

// The visits in which every job of the ring can be done at once.
std::uint64_t StandIns::in_all(const Chain& ring) const {
  std::uint64_t all = ~std::uint64_t{0};
  for (const std::size_t job : ring.jobs) {
    const JobTime& time = times_[job];
    all &= time.open_in >> time.finished_from << time.finished_from;
    all &= (std::uint64_t{2} << std::min<Visit>(time.opened_by, 63)) - 1;
  }
  return all;
}

// The place in the ring of a job that waits; nobody where none does.
std::size_t StandIns::waiting_in(const Chain& ring) const {
  for (std::size_t i = 0; i < ring.jobs.size(); ++i)
    if (times_[ring.jobs[i]].time == Time::waits) return i;
  return nobody;
}

void StandIns::find_gaps() {
  gaps_.resize(work_.shims.size());
  for (std::size_t x = 0; x < gaps_.size(); ++x) gaps_[x] = free_gaps(x);
}

// For each job of the chain that is not settled and each visit in which it may be opened: how long
// a stand-in could then last, one alone or one after another, were it the only one in need.
void StandIns::find_lasts(const Chain& chain, Effort* effort) {
  const std::size_t count = visits_.size();
  for (const std::size_t j : chain.jobs) {
    const JobTime& time = times_[j];
    if (time.time != Time::open) continue;
    Lasts* const of_job = &lasts_[j * count];
    std::fill(of_job, of_job + count, Lasts());
    if (!may_wait(j)) continue;
    std::uint64_t looked = 2 * candidates_[j].size();
    for (const std::size_t shim : candidates_[j]) {
      if (shim == j) continue;
      const std::uint64_t gaps = gaps_[shim];
      for (std::uint64_t open = time.open_in & gaps; open != 0; open &= open - 1) {
        const std::size_t from = first_of(open);
        ++looked;
        const auto length = static_cast<std::size_t>(std::countr_one(gaps >> from));
        const std::size_t to = last_open(j, from + length);
        if (to <= from) continue;
        ++of_job[from].ways;
        of_job[from].one = std::max(of_job[from].one, static_cast<Visit>(to));
      }
    }
    for (std::size_t from = count; from-- > 0;) {
      Lasts& lasts = of_job[from];
      lasts.more = lasts.one;
      if (lasts.one > from) looked += (lasts.one - from) / 2;
      for (std::size_t next = from + 1; next <= lasts.one; ++next)
        if (in_set(time.open_in, next)) lasts.more = std::max(lasts.more, of_job[next].more);
    }
    if (effort != nullptr) effort->use(looked);
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
// for the last of so many jobs of the chain, from the one at place `first` on.
void StandIns::go_along(const Chain& chain, std::size_t first, std::size_t jobs,
                        Costs& cost) const {
  const std::size_t count = visits_.size();
  for (std::size_t i = first; i < first + jobs; ++i) {
    const std::size_t job = chain.jobs[i < chain.jobs.size() ? i : i - chain.jobs.size()];
    Costs before;
    std::copy_n(cost.begin(), count, before.begin());
    std::uint16_t best = never;
    for (std::size_t t = 0; t < count; ++t) {
      best = std::min(best, static_cast<std::uint16_t>(cost_if_opened(job, t, before)));
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
    cost = std::min<std::size_t>(cost, before[lasts.one] + 1U);
  if (lasts.more > lasts.one && lasts.more >= time.finished_from)
    cost = std::min<std::size_t>(cost, before[lasts.more] + 2U);
  return cost;
}

// Stand-ins that the chain needs beyond those settled.
std::size_t StandIns::need_of(const Chain& chain) const {
  const std::size_t count = visits_.size();
  const std::size_t jobs = chain.jobs.size();
  Costs cost;
  if (!chain.ring) {
    std::fill_n(cost.begin(), count, std::uint16_t{0});
    go_along(chain, 0, jobs, cost);
    return std::min<std::size_t>(never, cost[count - 1]);
  }
  const auto begin_at = [&](std::size_t t) {
    for (std::size_t i = 0; i < count; ++i) cost[i] = i < t ? never : 0;
  };
  if (const std::size_t start = waiting_in(chain); start != nobody) {
    const JobTime& first = times_[chain.jobs[start]];
    begin_at(first.opened);
    go_along(chain, start + 1, jobs - 1, cost);
    return std::min<std::size_t>(never, cost[first.finished]);
  }
  std::size_t need = never;
  for (std::size_t t = 0; t < count && need > 0; ++t) {
    begin_at(t);
    go_along(chain, 1, jobs - 1, cost);
    need = std::min(need, cost_if_opened(chain.jobs.front(), t, cost));
  }
  return need;
}

}  // namespace shimwright::fitting
