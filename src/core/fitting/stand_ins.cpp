// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/stand_ins.hpp"

#include <algorithm>
#include <bit>

namespace shimwright::fitting {
namespace {

// Those before t.
std::uint64_t before(std::size_t t) {
  return t >= 64 ? ~std::uint64_t{0} : (std::uint64_t{1} << t) - 1;
}

}  // namespace

StandInSearch::StandInSearch(const Work& work, const std::vector<std::size_t>& visits,
                             Effort& effort)
    : work_(work),
      visits_(visits),
      effort_(effort),
      times_(work.jobs.size()),
      used_up_(work.shims.size()) {
  effort_.use(times_.size() * visits.size() + used_up_.size());
  for (std::size_t j = 0; j < times_.size(); ++j) {
    JobTime& time = times_[j];
    for (std::size_t t = 0; t < visits.size(); ++t)
      if (in_set(work.jobs[j].open, visits[t])) time.open_in |= Visits{1} << t;
    time.opened_by = static_cast<std::uint8_t>(visits.size());
    if (time.open_in == 0) least_possible_ = never;
  }
  if (least_possible_ == never) return;
  find_bounds();
  for (const Chain& chain : work_.chains) {
    find_covered(chain);
    least_possible_ = std::min(never, least_possible_ + need_of(chain));
  }
}

std::optional<Schedule> StandInSearch::with_at_most(std::size_t most) {
  cut_ = false;
  if (least_possible_ == never || !settle(0, most)) return std::nullopt;
  return written_out();
}

// Whether a stand-in may go in at all.
bool StandInSearch::may_wait(std::size_t job) const {
  return work_.jobs[job].can_wait && has_several(times_[job].open_in);
}

// The first visit, not before `from`, in which the job is open; the number of visits if none.
std::size_t StandInSearch::first_open(std::size_t job, std::size_t from) const {
  const Visits open = times_[job].open_in & ~before(from);
  return open == 0 ? visits_.size() : first_of(open);
}

// The last visit, not after `by`, in which the job is open; 0 if none.
std::size_t StandInSearch::last_open(std::size_t job, std::size_t by) const {
  const Visits open = times_[job].open_in & before(by + 1);
  return open == 0 ? 0 : static_cast<std::size_t>(std::bit_width(open)) - 1;
}

// When each job could at the earliest be opened and at the latest finished, the chain considered.
void StandInSearch::find_bounds() {
  effort_.use(4 * times_.size());
  for (const Chain& chain : work_.chains) {
    // A second round lets what is known of the last job of a ring tell on the first.
    const std::size_t jobs = chain.jobs.size();
    const std::size_t steps = jobs * (chain.ring ? 2 : 1);
    std::size_t bound = 0;
    for (std::size_t i = 0; i < steps; ++i) {
      const std::size_t job = chain.jobs[i < jobs ? i : i - jobs];
      JobTime& time = times_[job];
      if (time.kind == Kind::waits)
        bound = time.opened;
      else if (time.kind == Kind::open && may_wait(job))
        bound = first_of(time.open_in);
      else
        bound = first_open(job, std::max<std::size_t>(bound, time.finished_from));
      time.earliest = static_cast<std::uint8_t>(bound);
    }
    bound = visits_.size();
    for (std::size_t i = steps; i-- > 0;) {
      const std::size_t job = chain.jobs[i < jobs ? i : i - jobs];
      JobTime& time = times_[job];
      if (time.kind == Kind::waits)
        bound = time.finished;
      else if (time.kind == Kind::open && may_wait(job))
        bound = last_open(job, visits_.size());
      else
        bound = last_open(job, std::min<std::size_t>(bound, time.opened_by));
      time.latest = static_cast<std::uint8_t>(bound);
    }
  }
}

// The turns over which the shim could stand in somewhere.
StandInSearch::Visits StandInSearch::turns_free(std::size_t shim) const {
  const Shim& it = work_.shims[shim];
  Visits turns = before(visits_.size() - 1) & ~used_up_[shim];
  if (it.out_of != no_index) turns &= ~before(times_[it.out_of].earliest);
  if (it.goes_to != no_index) turns &= before(times_[it.goes_to].latest);
  return turns;
}

// For each job of the chain that is not settled: over which turns stand-ins could fill its valve,
// were it the only one in need.
void StandInSearch::find_covered(const Chain& chain) {
  for (const std::size_t job : chain.jobs) {
    JobTime& time = times_[job];
    time.covered = time.own = 0;
    if (time.kind != Kind::open || !may_wait(job)) continue;
    const Visits wanted = before(last_open(job, visits_.size())) & ~before(first_of(time.open_in));
    std::uint64_t looked = 4;
    for (const std::size_t shim : work_.no_thicker(job)) {
      if (shim == job || shim == work_.jobs[job].fresh) continue;
      ++looked;
      time.covered |= turns_free(shim) & wanted;
      if (time.covered == wanted) break;
    }
    time.own = turns_free(job);
    effort_.use(2 * looked);
  }
}

// The last visit up to which others' shims could fill the valve, opened in this visit.
std::size_t StandInSearch::last_with_one(std::size_t job, std::size_t from) const {
  const Visits turns = times_[job].covered >> from;
  return last_open(job, from + static_cast<std::size_t>(std::countr_one(turns)));
}

// The same if its own may be put back.
std::size_t StandInSearch::last_with_more(std::size_t job, std::size_t from) const {
  const std::size_t one = last_with_one(job, from);
  if (one <= from) return one;
  const Visits turns = (times_[job].covered | times_[job].own) >> one;
  return last_open(job, one + static_cast<std::size_t>(std::countr_one(turns)));
}

// The visits in which every job of the ring can be done at once.
StandInSearch::Visits StandInSearch::visits_for_all(const Chain& ring) const {
  Visits all = before(visits_.size());
  for (const std::size_t job : ring.jobs) {
    const JobTime& time = times_[job];
    all &= time.open_in & ~before(time.finished_from) & before(time.opened_by + 1U);
  }
  return all;
}

// The place in the ring of a job that waits; no_index where none does.
std::size_t StandInSearch::waiting_in(const Chain& ring) const {
  for (std::size_t i = 0; i < ring.jobs.size(); ++i)
    if (times_[ring.jobs[i]].kind == Kind::waits) return i;
  return no_index;
}

// Of the job's chain so far, with before[t] the cost if the giver is to be opened by visit t.
std::size_t StandInSearch::cost_if_opened(std::size_t job, std::size_t t,
                                          const Costs& before) const {
  const JobTime& time = times_[job];
  if (time.kind == Kind::waits) return t == time.opened ? before[time.finished] : never;
  if (!in_set(time.open_in, t) || t > time.opened_by) return never;
  std::size_t cost = t >= time.finished_from ? before[t] : never;
  if (time.kind != Kind::open) return cost;
  const std::size_t one = last_with_one(job, t);
  if (one > t && one >= time.finished_from) cost = std::min<std::size_t>(cost, before[one] + 1U);
  const std::size_t more = last_with_more(job, t);
  if (more > one && more >= time.finished_from)
    cost = std::min<std::size_t>(cost, before[more] + 2U);
  return cost;
}

// cost[t]: stand-ins needed so far if the giver is to be opened by visit t. Makes of it the same
// for the last of so many jobs of the chain, from the one at place `first` on.
void StandInSearch::go_along(const Chain& chain, std::size_t first, std::size_t jobs,
                             Costs& cost) const {
  const std::size_t count = visits_.size();
  effort_.use(2 * jobs * count);
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

// Stand-ins that the chain needs beyond those settled, at least.
std::size_t StandInSearch::need_of(const Chain& chain) const {
  const std::size_t count = visits_.size();
  const std::size_t jobs = chain.jobs.size();
  Costs cost;
  const auto begin_at = [&](std::size_t t) {
    for (std::size_t i = 0; i < count; ++i) cost[i] = i < t ? never : 0;
  };
  if (!chain.ring) {
    begin_at(0);
    go_along(chain, 0, jobs, cost);
    return std::min<std::size_t>(never, cost[count - 1]);
  }
  if (const std::size_t start = waiting_in(chain); start != no_index) {
    const JobTime& first = times_[chain.jobs[start]];
    begin_at(first.opened);
    go_along(chain, start + 1, jobs - 1, cost);
    return std::min<std::size_t>(never, cost[first.finished]);
  }
  if (visits_for_all(chain) != 0) return 0;
  std::size_t need = never;
  for (std::size_t t = 0; t < count && need > 1; ++t) {
    if (!in_set(times_[chain.jobs.front()].open_in, t)) continue;
    begin_at(t);
    go_along(chain, 1, jobs - 1, cost);
    need = std::min(need, cost_if_opened(chain.jobs.front(), t, cost));
  }
  return need;
}

// Whether there is room for so many stand-ins.
bool StandInSearch::affords(std::size_t need, std::size_t most) {
  if (need > most && need < never) cut_ = true;
  return need <= most;
}

// Leaves all as it was where it fails.
bool StandInSearch::settle(std::size_t used, std::size_t most) {
  if (effort_.spent()) return false;
  effort_.use(4 * times_.size());
  const std::vector<JobTime> before = times_;
  if (settle_neediest(used, most)) return true;
  times_ = before;
  return false;
}

bool StandInSearch::settle_neediest(std::size_t used, std::size_t most) {
  find_bounds();
  const Chain* needy = nullptr;
  std::size_t need = used;
  std::size_t others = 0;
  std::size_t fewest_ways = 0;
  for (const Chain& chain : work_.chains) {
    find_covered(chain);
    const std::size_t more = need_of(chain);
    if (more == 0) continue;
    need += more;
    if (need >= never) return false;
    std::size_t ways = 0;
    for (const std::size_t job : chain.jobs)
      if (times_[job].kind == Kind::open)
        ways += static_cast<std::size_t>(std::popcount(times_[job].covered));
    if (needy != nullptr && ways >= fewest_ways) continue;
    needy = &chain;
    others = more;
    fewest_ways = ways;
  }
  if (!affords(need, most)) return false;
  if (needy == nullptr) return true;
  others = need - others;  // used ones included
  for (const std::size_t job : needy->jobs) {
    if (times_[job].kind != Kind::open || times_[job].covered == 0) continue;
    if (let_wait(*needy, job, used, others, most)) return true;
    times_[job].kind = Kind::one_visit;  // the ways in which it waits have all been tried
    if (effort_.spent() || !affords(others + need_of(*needy), most)) break;
  }
  return false;
}

bool StandInSearch::let_wait(const Chain& chain, std::size_t job, std::size_t used,
                             std::size_t others, std::size_t most) {
  const JobTime before_it = times_[job];
  const std::size_t end = last_open(job, visits_.size());
  for (std::size_t from = 0; from < end && from <= before_it.opened_by; ++from) {
    if (!in_set(before_it.open_in, from)) continue;
    for (std::size_t to = last_with_more(job, from); to > from && to >= before_it.finished_from;
         --to) {
      if (!in_set(before_it.open_in, to)) continue;
      times_[job].kind = Kind::waits;
      times_[job].opened = static_cast<std::uint8_t>(from);
      times_[job].finished = static_cast<std::uint8_t>(to);
      if (affords(others + 1 + need_of(chain), most) && cover(job, from, used, most)) return true;
      times_[job] = before_it;
      if (effort_.spent()) return false;
    }
  }
  return false;
}

// Finds a stand-in from this visit on, and where it does not last, another after it.
bool StandInSearch::cover(std::size_t job, std::size_t from, std::size_t used, std::size_t most) {
  if (!affords(used + 1, most)) return false;
  const std::size_t end = times_[job].finished;
  // Its own old shim may be put back, but cannot be what comes in for it.
  const std::size_t last = from == times_[job].opened ? job : stand_ins_.back().shim;
  for (std::size_t to = end; to > from; --to) {
    if (!in_set(times_[job].open_in, to)) continue;
    for (const std::size_t shim : work_.no_thicker(job)) {
      if (effort_.spent()) return false;
      effort_.use(2);
      if (shim == last || shim == work_.jobs[job].fresh) continue;
      if ((before(to) & ~before(from) & ~turns_free(shim)) != 0) continue;
      const Shim& it = work_.shims[shim];
      std::uint8_t unused = 0;
      std::uint8_t& opened_by = it.out_of == no_index ? unused : times_[it.out_of].opened_by;
      std::uint8_t& finished_from =
          it.goes_to == no_index ? unused : times_[it.goes_to].finished_from;
      const std::uint8_t opened_by_before = opened_by;
      const std::uint8_t finished_from_before = finished_from;
      opened_by = std::min(opened_by, static_cast<std::uint8_t>(from));
      finished_from = std::max(finished_from, static_cast<std::uint8_t>(to));
      stand_ins_.push_back({.job = job, .shim = shim, .from = from, .to = to});
      find_used_up(shim);
      if (to == end ? settle(used + 1, most) : cover(job, to, used + 1, most)) return true;
      stand_ins_.pop_back();
      find_used_up(shim);
      finished_from = finished_from_before;
      opened_by = opened_by_before;
    }
  }
  return false;
}

void StandInSearch::find_used_up(std::size_t shim) {
  effort_.use(stand_ins_.size() + visits_.size());
  std::array<std::size_t, most_visits> uses{};
  for (const StandIn& use : stand_ins_)
    if (use.shim == shim)
      for (std::size_t t = use.from; t < use.to; ++t) ++uses[t];
  used_up_[shim] = 0;
  for (std::size_t t = 0; t < visits_.size(); ++t)
    if (uses[t] >= work_.shims[shim].count) used_up_[shim] |= Visits{1} << t;
}

// Of these visits the one at the stop that the job at this place likes best; for a ring done at
// once, that all of them together like best.
std::size_t StandInSearch::best_liked(const Chain& chain, std::size_t place, Visits visits) const {
  const bool all = place == no_index;
  std::size_t best = first_of(visits);
  std::size_t least_regret = never;
  for (; visits != 0; visits &= visits - 1) {
    const std::size_t t = first_of(visits);
    std::size_t regret = 0;
    for (std::size_t i = all ? 0 : place; i < (all ? chain.jobs.size() : place + 1); ++i) {
      const auto& stops = work_.jobs[chain.jobs[i]].stops;
      regret += static_cast<std::size_t>(std::find(stops.begin(), stops.end(), visits_[t]) -
                                         stops.begin());
    }
    if (regret >= least_regret) continue;
    least_regret = regret;
    best = t;
  }
  return best;
}

// No chain needs a stand-in any more: what waits is settled, all else is opened and finished in
// one visit, where it is liked best.
Schedule StandInSearch::written_out() {
  Schedule schedule{.visits = visits_,
                    .opened = std::vector<std::size_t>(times_.size(), no_index),
                    .finished = std::vector<std::size_t>(times_.size(), no_index),
                    .stand_ins = stand_ins_};
  for (JobTime& time : times_)
    if (time.kind == Kind::open) time.kind = Kind::one_visit;
  find_bounds();
  for (const Chain& chain : work_.chains) {
    const std::size_t jobs = chain.jobs.size();
    const std::size_t start = chain.ring ? waiting_in(chain) : 0;
    std::size_t from = start == no_index ? best_liked(chain, no_index, visits_for_all(chain)) : 0;
    for (std::size_t i = 0; i < jobs; ++i) {
      const std::size_t place = start == no_index ? i : (start + i) % jobs;
      const std::size_t job = chain.jobs[place];
      const JobTime& time = times_[job];
      std::size_t finished = time.finished;
      if (time.kind == Kind::waits) {
        from = time.opened;
      } else if (start != no_index) {
        const Visits since = ~before(std::max<std::size_t>(from, time.finished_from));
        from = best_liked(chain, place, time.open_in & since & before(time.latest + 1U));
      }
      schedule.opened[job] = from;
      schedule.finished[job] = time.kind == Kind::waits ? finished : from;
    }
  }
  return schedule;
}

}  // namespace shimwright::fitting
