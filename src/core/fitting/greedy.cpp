// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/greedy.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace shimwright::fitting {
namespace {

std::size_t thickest_of(const Work& work, const Chain& ring) {
  return *std::max_element(
      ring.jobs.begin(), ring.jobs.end(),
      [&work](std::size_t a, std::size_t b) { return work.shims[a].size < work.shims[b].size; });
}

class GreedyFitter {
 public:
  explicit GreedyFitter(const Work& work)
      : work_(work),
        lending_(lending_of(work)),
        started_(work.chains.size()),
        places_(work.shims.size()),
        stand_in_(work.jobs.size()) {
    out_.opened.assign(work.jobs.size(), no_index);
    out_.finished.assign(work.jobs.size(), no_index);
    for (const Shim& shim : work.shims) units_.push_back(shim.is_spare() ? shim.count : 0);
    for (std::size_t place = 0; place < work.by_size.size(); ++place) {
      places_[work.by_size[place]] = place;
      if (units_[work.by_size[place]] > 0) free_.insert(place);
    }
    for (std::size_t c = 0; c < work.chains.size(); ++c) {
      if (!work.chains[c].ring) ready_.push_back(work.chains[c].jobs.front());
      if (lending_.lent[c] != no_index) borrowers_[lending_.lent[c]].push_back(c);
    }
    for (const std::size_t ring : lending_.has_none) started_[ring] = true;
  }

  Schedule work() {
    for (std::size_t c = 0; c < work_.chains.size(); ++c)
      if (work_.chains[c].common != 0 && lends(c) && lending_.lent[c] == no_index &&
          work_.chains[c].ring)
        go_round(c, spare_for(thickest_of(work_, work_.chains[c])).value());
    for (std::size_t x = 0; x < work_.shims.size(); ++x)
      if (work_.shims[x].out_of == no_index) lend(x);
    while (const auto stop = best_stop()) {
      finish_at(*stop);
      open_at(*stop);
    }
    return std::move(out_);
  }

 private:
  std::size_t now() const { return out_.visits.size() - 1; }
  bool untouched(std::size_t job) const { return out_.opened[job] == no_index; }
  bool unfinished(std::size_t job) const { return out_.finished[job] == no_index; }
  bool is_open(std::size_t job, std::size_t stop) const {
    return in_set(work_.jobs[job].open, stop);
  }
  bool lends(std::size_t c) const {
    return std::any_of(work_.chains[c].jobs.begin(), work_.chains[c].jobs.end(),
                       [this](std::size_t job) { return borrowers_.contains(job); });
  }
  // A ring within one stop goes without a stand-in, unless it is to lend a shim.
  bool is_at_once(std::size_t c) const {
    return work_.chains[c].ring && work_.chains[c].common != 0 && !lends(c);
  }
  // Not begun, and a spare is to be its stand-in.
  bool is_to_start(std::size_t c) const {
    return work_.chains[c].ring && !started_[c] && work_.chains[c].common == 0 &&
           lending_.lent[c] == no_index;
  }

  // Stays where the crank is if that serves.
  void go_where_open(StopSet open) {
    if (!out_.visits.empty() && in_set(open, out_.visits.back())) return;
    out_.visits.push_back(first_of(open));
  }

  // The nearest in thickness that is free.
  std::optional<std::size_t> spare_for(std::size_t job) const {
    const auto place = free_.lower_bound(work_.from[job]);
    if (place == free_.end() || *place >= work_.series_end[work_.shims[job].series]) return {};
    return work_.by_size[*place];
  }

  void open_with(std::size_t job, std::size_t stand_in) {
    stand_in_[job] = StandIn{.job = job, .shim = stand_in, .from = now(), .to = 0};
    if (work_.shims[stand_in].is_spare() && --units_[stand_in] == 0) free_.erase(places_[stand_in]);
    out_.opened[job] = now();
    pass_on(job);
  }

  void finish(std::size_t job) {
    const bool comes_out = untouched(job);
    if (comes_out) out_.opened[job] = now();
    out_.finished[job] = now();
    if (auto& use = stand_in_[job]) {
      if (work_.shims[use->shim].is_spare() && ++units_[use->shim] == 1)
        free_.insert(places_[use->shim]);
      use->to = now();
      if (use->from < use->to) out_.stand_ins.push_back(*use);
    }
    if (comes_out) pass_on(job);
  }

  // Before the shim that came out goes to its valve it is lent to the rings that need it.
  void pass_on(std::size_t job) {
    const std::size_t taker = work_.jobs[job].taker;
    if (taker != no_index) ready_.push_back(taker);
    lend(job);
  }

  void lend(std::size_t shim) {
    const auto found = borrowers_.find(shim);
    if (found == borrowers_.end()) return;
    for (const std::size_t ring : found->second)
      if (!is_at_once(ring)) go_round(ring, shim);
  }

  void go_round(std::size_t ring, std::size_t stand_in) {
    started_[ring] = true;
    const std::size_t first = thickest_of(work_, work_.chains[ring]);
    go_where_open(work_.jobs[first].open);
    open_with(first, stand_in);
    for (std::size_t job = work_.jobs[first].taker; job != first; job = work_.jobs[job].taker) {
      go_where_open(work_.jobs[job].open);
      finish(job);
    }
    go_where_open(work_.jobs[first].open);
    finish(first);
  }

  // How many jobs could be finished there, one giving to the next.
  std::size_t run_from(std::size_t job, std::size_t stop) const {
    std::size_t run = 0;
    while (job != no_index && unfinished(job) && is_open(job, stop)) {
      ++run;
      if (!untouched(job)) break;  // its shim went on before
      job = work_.jobs[job].taker;
    }
    return run;
  }

  // Where most can be finished; where nothing can, where most rings can be begun.
  std::optional<std::size_t> best_stop() {
    std::erase_if(ready_, [this](std::size_t job) { return !unfinished(job); });
    std::vector<std::size_t> jobs(work_.stops.size());
    for (const std::size_t job : ready_)
      for (const std::size_t stop : work_.jobs[job].stops) jobs[stop] += run_from(job, stop);
    std::vector<std::size_t> rings(work_.stops.size());
    for (std::size_t c = 0; c < work_.chains.size(); ++c) {
      const Chain& ring = work_.chains[c];
      StopSet stops = 0;
      if (is_to_start(c))
        for (const std::size_t job : ring.jobs) stops |= spare_for(job) ? work_.jobs[job].open : 0;
      for (; stops != 0; stops &= stops - 1) ++rings[first_of(stops)];
      if (!is_at_once(c) || started_[c]) continue;
      for (stops = ring.common; stops != 0; stops &= stops - 1)
        jobs[first_of(stops)] += ring.jobs.size();
    }
    for (const auto& count : {jobs, rings})
      if (const auto most = std::max_element(count.begin(), count.end());
          most != count.end() && *most > 0)
        return static_cast<std::size_t>(most - count.begin());
    return std::nullopt;
  }

  void finish_at(std::size_t stop) {
    const StopSet here = StopSet{1} << stop;
    for (std::size_t c = 0; c < work_.chains.size(); ++c) {
      const Chain& ring = work_.chains[c];
      if (!is_at_once(c) || started_[c] || !in_set(ring.common, stop)) continue;
      go_where_open(here);
      started_[c] = true;
      for (const std::size_t job : ring.jobs) out_.opened[job] = out_.finished[job] = now();
    }
    finish_ready(here);
  }

  void finish_ready(StopSet here) {
    for (std::size_t i = 0; i < ready_.size(); ++i) {
      if (!unfinished(ready_[i]) || (work_.jobs[ready_[i]].open & here) == 0) continue;
      go_where_open(here);
      finish(ready_[i]);
    }
  }

  // Opens with a spare what then gives its shim on: in rings not yet begun first.
  void open_at(std::size_t stop) {
    const StopSet here = StopSet{1} << stop;
    for (const bool first : {true, false})
      for (std::size_t c = 0; c < work_.chains.size(); ++c) {
        if (first ? !is_to_start(c) : work_.chains[c].ring && !started_[c]) continue;
        for (const std::size_t job : work_.chains[c].jobs) {
          const Job& it = work_.jobs[job];
          if (!untouched(job) || !is_open(job, stop) || it.taker == no_index) continue;
          if (it.giver == no_index || !untouched(it.giver)) continue;  // to be finished, not opened
          const auto spare = spare_for(job);
          if (!spare) continue;
          go_where_open(here);
          started_[c] = true;
          open_with(job, *spare);
          finish_ready(here);
          if (first) break;
        }
      }
  }

  const Work& work_;
  Lending lending_;
  std::vector<bool> started_;                                  // by chain; rings only
  std::map<std::size_t, std::vector<std::size_t>> borrowers_;  // by shim lent: rings
  std::vector<std::size_t> units_;   // by shim: spares that lie on the bench
  std::vector<std::size_t> places_;  // by shim: its place in Work::by_size
  std::set<std::size_t> free_;       // places of those of which some lie on the bench
  std::vector<std::size_t> ready_;  // jobs whose fresh shim is out; finished ones may be among them
  std::vector<std::optional<StandIn>> stand_in_;  // by job
  Schedule out_;
};

}  // namespace

Lending lending_of(const Work& work) {
  struct Thinnest {
    std::optional<std::size_t> spare, other;
  };
  std::vector<Thinnest> thinnest(work.series_end.size());  // by series
  const auto offer = [&](std::size_t shim) {
    const Shim& it = work.shims[shim];
    auto& best = it.is_spare() ? thinnest[it.series].spare : thinnest[it.series].other;
    if (!best || it.size < work.shims[*best].size) best = shim;
  };
  std::vector<std::pair<std::size_t, std::size_t>>
      rings;  // with the job that has the thickest shim
  for (std::size_t x = work.jobs.size(); x < work.shims.size(); ++x) offer(x);
  for (std::size_t c = 0; c < work.chains.size(); ++c) {
    const Chain& chain = work.chains[c];
    if (chain.ring)
      rings.emplace_back(thickest_of(work, chain), c);
    else
      for (const std::size_t job : chain.jobs) offer(job);
  }
  std::stable_sort(rings.begin(), rings.end(), [&work](const auto& a, const auto& b) {
    return work.shims[a.first].size > work.shims[b.first].size;
  });
  Lending lending;
  lending.lent.assign(work.chains.size(), no_index);
  for (const auto& [job, c] : rings) {
    const auto& [spare, other] = thinnest[work.shims[job].series];
    const Length thickest = work.shims[job].size;
    const auto fits = [&](const std::optional<std::size_t>& shim) {
      return shim && work.shims[*shim].size <= thickest;
    };
    if (!fits(spare) && !fits(other)) {
      (work.chains[c].common == 0 ? lending.has_none : lending.needs_none).push_back(c);
      continue;
    }
    if (!fits(spare)) lending.lent[c] = *other;
    for (const std::size_t member : work.chains[c].jobs) offer(member);
  }
  return lending;
}

Schedule greedy_schedule(const Work& work) { return GreedyFitter(work).work(); }

}  // namespace shimwright::fitting
