// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_stand_ins.hpp"

#include <algorithm>
#include <bit>
#include <tuple>

namespace shimwright::fitting {

Candidates candidates_of(const Work& work) {
  Candidates candidates(work.jobs.size());
  const auto rank = [&work](std::size_t x) {
    const Shim& shim = work.shims[x];
    return std::tuple(-shim.size, shim.name.origin != ShimAtBench::Origin::spare, x);
  };
  for (std::size_t j = 0; j < work.jobs.size(); ++j) {
    if (!work.jobs[j].can_wait) continue;
    for (std::size_t x = 0; x < work.shims.size(); ++x)
      if (work.may_stand_in(x, j)) candidates[j].push_back(x);
    std::sort(candidates[j].begin(), candidates[j].end(),
              [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
  }
  return candidates;
}

StandIns::StandIns(const Work& work, const Candidates& candidates,
                   const std::vector<std::size_t>& visits)
    : work_(work),
      visits_(visits),
      times_(work.jobs.size()),
      candidates_(candidates),
      lasts_(work.jobs.size() * visits.size()) {
  for (std::size_t j = 0; j < times_.size(); ++j) {
    JobTime& time = times_[j];
    for (std::size_t t = 0; t < visits.size(); ++t)
      if (in_set(work.jobs[j].open, visits[t])) time.open_in |= std::uint64_t{1} << t;
    if (time.open_in == 0) {
      root_need_ = never;
      return;
    }
    time.last = static_cast<Visit>(std::bit_width(time.open_in) - 1);
    time.opened_by = static_cast<Visit>(visits.size());
  }
  find_bounds();
  for (const Chain& chain : work_.chains) {
    if (needs_none(chain)) continue;
    if (gaps_.empty()) find_gaps();
    find_lasts(chain, nullptr);
    root_need_ += need_of(chain);
    if (root_need_ >= never) {
      root_need_ = never;
      return;
    }
  }
}

std::optional<Schedule> StandIns::with_at_most(std::size_t most, Effort& effort) {
  if (root_need_ > most) return std::nullopt;
  cut_ = false;
  const std::vector<JobTime> fresh = times_;
  std::optional<Schedule> schedule;
  if (settle(0, most, effort)) schedule = written_out();
  times_ = fresh;
  stand_ins_.clear();
  return schedule;
}

// Whether there is room for so many stand-ins more.
bool StandIns::affords(std::size_t need, std::size_t most) {
  if (need > most && need < never) cut_ = true;
  return need <= most;
}

// The same for what the chain still needs beside so many.
bool StandIns::affords(std::size_t others, const Chain& chain, std::size_t most) {
  if (others < most) return affords(others + need_of(chain), most);
  const bool none = needs_none(chain);
  cut_ |= !none;  // it may be that no number would help, but that takes longer to find
  return none && others == most;
}

bool StandIns::settle(std::size_t used, std::size_t most, Effort& effort) {
  if (effort.spent()) return false;
  effort.use(2 * times_.size());
  find_bounds();
  const Chain* needy = nullptr;
  std::size_t needy_need = 0;
  std::size_t fewest_ways = 0;
  std::size_t need = used;
  for (const Chain& chain : work_.chains) {
    if (needs_none(chain)) continue;
    if (needy == nullptr) find_gaps();
    if (needy == nullptr) effort.use(2 * gaps_.size());
    const bool anywhere = chain.ring && waiting_in(chain) == nobody;  // tried at each visit
    effort.use(2 * chain.jobs.size() * visits_.size() * (anywhere ? visits_.size() : 1));
    find_lasts(chain, &effort);
    const std::size_t more = need_of(chain);
    need += more;
    if (need >= never) return false;
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
  const std::vector<Lasts> lasts = lasts_of(*needy);
  for (const std::size_t job : needy->jobs) {
    if (times_[job].time != Time::open || !may_wait(job)) continue;
    if (let_wait(*needy, lasts, job, used, others, most, effort)) return true;
    times_[job].time = Time::one_visit;  // the ways in which it waits have all been tried
    if (!affords(others + need_of(*needy), most)) break;
  }
  times_ = before;
  return false;
}

std::vector<StandIns::Lasts> StandIns::lasts_of(const Chain& chain) const {
  const auto count = static_cast<std::ptrdiff_t>(visits_.size());
  std::vector<Lasts> lasts;
  lasts.reserve(chain.jobs.size() * visits_.size());
  for (const std::size_t j : chain.jobs) {
    const auto at = lasts_.begin() + static_cast<std::ptrdiff_t>(j) * count;
    lasts.insert(lasts.end(), at, at + count);
  }
  return lasts;
}

void StandIns::put_back(const Chain& chain, const std::vector<Lasts>& lasts) {
  auto from = lasts.begin();
  for (const std::size_t j : chain.jobs) {
    const auto end = from + static_cast<std::ptrdiff_t>(visits_.size());
    std::copy(from, end, lasts_.begin() + static_cast<std::ptrdiff_t>(j * visits_.size()));
    from = end;
  }
}

bool StandIns::let_wait(const Chain& chain, const std::vector<Lasts>& lasts, std::size_t job,
                        std::size_t used, std::size_t others, std::size_t most, Effort& effort) {
  const JobTime before = times_[job];
  for (std::size_t from = 0; from < before.last && from <= before.opened_by; ++from) {
    if (!in_set(before.open_in, from)) continue;
    for (std::size_t to = before.last; to > from && to >= before.finished_from; --to) {
      if (!in_set(before.open_in, to)) continue;
      times_[job].time = Time::waits;
      times_[job].opened = from;
      times_[job].finished = to;
      effort.use(2 * chain.jobs.size() * (others < most ? visits_.size() : 1));
      if (affords(others + 1, chain, most) && cover(job, from, used, most, effort)) return true;
      times_[job] = before;
      put_back(chain, lasts);
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
  if (source != nobody)
    times_[source].opened_by = std::min(times_[source].opened_by, static_cast<Visit>(from));
  if (due != nobody)
    times_[due].finished_from = std::max(times_[due].finished_from, static_cast<Visit>(to));
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
  // A ring begins after a job that waits, whose shim is out from a settled visit on; where none
  // waits, all of it is done in one visit.
  std::size_t start = 0;
  std::size_t from = 0;
  if (chain.ring) {
    start = waiting_in(chain);
    if (start == nobody) from = first_of(in_all(chain));
    if (start == nobody) start = 0;
  }
  for (std::size_t i = 0; i < chain.jobs.size(); ++i) {
    const std::size_t job = chain.jobs[(start + i) % chain.jobs.size()];
    if (times_[job].time == Time::waits) {
      schedule.opened[job] = from = times_[job].opened;
      schedule.finished[job] = times_[job].finished;
    } else {
      from = first_open(job, std::max<std::size_t>(from, times_[job].finished_from));
      schedule.opened[job] = schedule.finished[job] = from;
    }
  }
}

}  // namespace shimwright::fitting
