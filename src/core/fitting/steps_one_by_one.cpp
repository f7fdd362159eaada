// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_one_by_one.hpp"

#include <algorithm>
#include <bit>
#include <optional>

namespace shimwright::fitting {
namespace {

class Hand {
 public:
  explicit Hand(const Work& work) : work_(work), on_bench_(work.shims.size()) {
    out_.schedule.opened.assign(work.jobs.size(), nobody);
    out_.schedule.finished.assign(work.jobs.size(), nobody);
    for (std::size_t x = 0; x < work.shims.size(); ++x)
      on_bench_[x] = work.shims[x].out_of == nobody;
    for (std::size_t c = 0; c < work.chains.size(); ++c)
      if (work.chains[c].ring)
        (work.chains[c].common == 0 ? open_rings_ : easy_rings_).push_back(c);
  }

  OneByOne work() {
    do_rings();
    // A ring within one stop needs no stand-in, but going round it with one lays each of its
    // shims on the bench for a while.
    for (const std::size_t ring : easy_rings_)
      if (open_rings_.empty() || !go_round(ring)) do_at_once(work_.chains[ring]);
    do_chains();
    out_.waiting = open_rings_;
    return std::move(out_);
  }

 private:
  Schedule& schedule() { return out_.schedule; }

  std::size_t now() { return schedule().visits.size() - 1; }

  // Stays where the crank is if that serves.
  void go_where_open(StopSet open) {
    auto& visits = schedule().visits;
    if (!visits.empty() && (open >> visits.back() & 1) != 0) return;
    visits.push_back(static_cast<std::size_t>(std::countr_zero(open)));
  }

  void take_out(std::size_t job) {
    schedule().opened[job] = now();
    on_bench_[job] = true;
  }

  void fit(std::size_t job) {
    if (schedule().opened[job] == nobody) take_out(job);
    schedule().finished[job] = now();
    on_bench_[work_.jobs[job].fresh] = false;
  }

  void do_at_once(const Chain& ring) {
    go_where_open(ring.common);
    for (const std::size_t job : ring.jobs) take_out(job);
    for (const std::size_t job : ring.jobs) fit(job);
  }

  void do_rings() {
    for (bool more = true; more;) {
      more = false;
      for (const std::size_t ring : open_rings_)
        if (go_round(ring)) {
          more = true;
          break;
        }
    }
  }

  // The stand-in nearest in thickness, for any valve of the ring.
  std::optional<StandIn> stand_in_for(const Chain& ring) const {
    std::optional<StandIn> best;
    Length best_gap;
    for (const std::size_t job : ring.jobs)
      for (std::size_t x = 0; x < work_.shims.size(); ++x) {
        if (!on_bench_[x] || !work_.may_stand_in(x, job)) continue;
        const Length gap = work_.shims[job].size - work_.shims[x].size;
        if (best && best_gap <= gap) continue;
        best = StandIn{.job = job, .shim = x};
        best_gap = gap;
      }
    return best;
  }

  bool go_round(std::size_t number) {
    const Chain& ring = work_.chains[number];
    std::optional<StandIn> stand_in = stand_in_for(ring);
    if (!stand_in) return false;
    std::erase(open_rings_, number);
    const std::size_t first = stand_in->job;
    go_where_open(work_.jobs[first].open);
    stand_in->from = now();
    take_out(first);
    on_bench_[stand_in->shim] = false;
    do_rings();
    for (std::size_t job = work_.jobs[first].taker; job != first; job = work_.jobs[job].taker) {
      go_where_open(work_.jobs[job].open);
      fit(job);
      do_rings();
    }
    go_where_open(work_.jobs[first].open);
    fit(first);
    on_bench_[stand_in->shim] = true;
    stand_in->to = now();
    if (stand_in->from < stand_in->to) schedule().stand_ins.push_back(*stand_in);
    return true;
  }

  // Always on to the stop where most can be finished.
  void do_chains() {
    std::vector<std::size_t> place;  // in each chain: how many jobs are done
    for (const Chain& chain : work_.chains) place.push_back(chain.ring ? chain.jobs.size() : 0);
    const auto reach = [&](std::size_t c, std::size_t stop) {
      const auto& jobs = work_.chains[c].jobs;
      std::size_t end = place[c];
      while (end < jobs.size() && (work_.jobs[jobs[end]].open >> stop & 1) != 0) ++end;
      return end;
    };
    for (;;) {
      std::size_t best = 0;
      std::size_t most = 0;
      for (std::size_t stop = 0; stop < work_.stops.size(); ++stop) {
        std::size_t done = 0;
        for (std::size_t c = 0; c < place.size(); ++c) done += reach(c, stop) - place[c];
        if (done > most) best = stop;
        most = std::max(most, done);
      }
      if (most == 0) return;
      for (std::size_t c = 0; c < place.size(); ++c)
        for (const std::size_t end = reach(c, best); place[c] < end; ++place[c]) {
          go_where_open(StopSet{1} << best);
          fit(work_.chains[c].jobs[place[c]]);
          do_rings();
        }
    }
  }

  const Work& work_;
  OneByOne out_;
  std::vector<bool> on_bench_;           // by shim
  std::vector<std::size_t> open_rings_;  // across stops, not yet done
  std::vector<std::size_t> easy_rings_;  // within one stop
};

}  // namespace

OneByOne one_by_one(const Work& work) { return Hand(work).work(); }

}  // namespace shimwright::fitting
