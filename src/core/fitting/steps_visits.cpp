// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_visits.hpp"

#include <algorithm>
#include <array>
#include <bit>

namespace shimwright::fitting {
namespace {

constexpr char untouched = 'u';
constexpr char opened = 'o';
constexpr char finished = 'f';
constexpr std::size_t most_orders = 10'000;
constexpr std::size_t most_states = 200'000;

// Where shims go both from stop a to stop b and, however far round, back from b to a, one of the
// stops on that way must be come to twice. Counts such ways that have no stop in common.
// `leads[a]`: the stops to which shims go from a.
std::size_t ways_round(const std::array<StopSet, most_stops>& leads, StopSet left) {
  std::size_t count = 0;
  for (StopSet rest = left; rest != 0; rest &= rest - 1) {  // there and back
    const StopSet here = rest & -rest;
    if ((left & here) == 0) continue;
    for (StopSet to = leads[first_of(here)] & left; to != 0; to &= to - 1)
      if ((leads[first_of(to)] & here) != 0) {
        left &= ~(here | (to & -to));
        ++count;
        break;
      }
  }
  for (;;) {  // longer ones
    for (StopSet before = 0; before != left;) {
      before = left;
      for (StopSet rest = left; rest != 0; rest &= rest - 1)
        if ((leads[first_of(rest)] & left) == 0) left &= ~(rest & -rest);
    }
    if (left == 0) return count;
    std::vector<std::size_t> walk{first_of(left)};
    StopSet walked = 0;
    while ((walked >> walk.back() & 1) == 0) {
      walked |= StopSet{1} << walk.back();
      walk.push_back(first_of(leads[walk.back()] & left));
    }
    const std::size_t met = walk.back();
    do {
      walk.pop_back();
      left &= ~(StopSet{1} << walk.back());
    } while (walk.back() != met);
    ++count;
  }
}

}  // namespace

Visits::Visits(const Work& work) : work_(work), open_at_(work.stops.size()) {
  for (std::size_t stop = 0; stop < open_at_.size(); ++stop)
    for (std::size_t job = 0; job < work.jobs.size(); ++job)
      if ((work.jobs[job].open >> stop & 1) != 0) open_at_[stop].push_back(job);
}

void Visits::visit(State& state, std::size_t stop) const {
  // Opened here or not at all: start from all, and strike out what can neither wait nor get its
  // shim, until nothing more is struck out. So a ring within this stop stays in.
  constexpr char opened_here = 'h';
  for (const std::size_t job : open_at_[stop])
    if (state[job] == untouched) state[job] = opened_here;
  const auto fresh_is_out = [&](std::size_t job) {
    const std::size_t giver = work_.jobs[job].giver;
    return giver == nobody || state[giver] != untouched;
  };
  for (bool again = true; again;) {
    again = false;
    for (const std::size_t job : open_at_[stop])
      if (state[job] == opened_here && !work_.jobs[job].can_wait && !fresh_is_out(job)) {
        state[job] = untouched;
        again = true;
      }
  }
  for (const std::size_t job : open_at_[stop]) {
    if (state[job] == opened_here) state[job] = opened;
    if (state[job] == opened && fresh_is_out(job)) state[job] = finished;
  }
}

// No visit once all is finished. Else each stop at which alone some valve is open must come; and a
// valve that gets its shim from a stop to come, at a stop of its own, is one visit later than its
// giver.
std::size_t Visits::at_least(const State& state) const {
  const auto one_stop = [](const Job& job) { return (job.open & (job.open - 1)) == 0; };
  StopSet needed = 0;
  std::array<StopSet, most_stops> leads{};
  bool elsewhere = false;
  std::size_t longest = 0;
  for (const Chain& chain : work_.chains) {
    std::size_t after = 0;  // visits until the giver is opened; 0: it is, or none is needed
    StopSet giver_open = ~StopSet{0};
    // A ring of which nothing is out may begin anywhere with a stand-in: bound each valve alone.
    bool known = !chain.ring;
    for (std::size_t turn = 0; turn < (chain.ring ? 2U : 1U); ++turn)
      for (const std::size_t job : chain.jobs) {
        const Job& it = work_.jobs[job];
        if (state[job] == finished) {
          after = 0;
          known = true;
          continue;
        }
        if (turn == 0) {
          if (one_stop(it))
            needed |= it.open;
          else
            elsewhere = true;
          if (it.giver != nobody && state[it.giver] == untouched && one_stop(it)) {
            const Job& giver = work_.jobs[it.giver];
            if (one_stop(giver) && giver.open != it.open)
              leads[static_cast<std::size_t>(std::countr_zero(giver.open))] |= it.open;
          }
        }
        std::size_t finish = 1;
        if (known && after > 0) finish = (it.open & giver_open) != 0 ? after : after + 1;
        longest = std::max(longest, finish);
        if (state[job] == opened)
          after = 0;
        else
          after = it.can_wait ? 1 : finish;
        giver_open = it.open;
        known = true;
      }
  }
  const auto stops = static_cast<std::size_t>(std::popcount(needed));
  return std::max(
      {stops + ways_round(leads, needed), longest, static_cast<std::size_t>(elsewhere ? 1 : 0)});
}

std::size_t Visits::least_possible() const { return at_least(State(work_.jobs.size(), untouched)); }

Visits::Orders Visits::orders_of(std::size_t count, bool distinct, Effort& effort) {
  orders_ = {};
  path_.clear();
  distinct_ = distinct;
  const State start(work_.jobs.size(), untouched);
  extend(start, start, count, effort);
  return std::move(orders_);
}

// Whether this stop might as well have been come to before the last one: all the same either way.
bool Visits::either_way(const State& before, const State& after, std::size_t stop) const {
  State swapped = before;
  visit(swapped, stop);
  visit(swapped, path_.back());
  return swapped == after;
}

// Whether any order came of it. `before`: the state before the last visit.
bool Visits::extend(const State& before, const State& state, std::size_t left, Effort& effort) {
  if (at_least(state) > left) return false;
  if (left == 0) {
    orders_.found.push_back(path_);
    return true;
  }
  if (effort.spent() || orders_.found.size() >= most_orders) {
    orders_.all = false;
    return true;
  }
  effort.use(state.size() * work_.stops.size());
  State key = state + static_cast<char>('!' + (path_.empty() ? work_.stops.size() : path_.back()));
  if (const auto at = too_few_.find(key); at != too_few_.end() && at->second >= left) return false;
  bool any = false;
  bool skipped = false;
  for (std::size_t stop = 0; stop < work_.stops.size(); ++stop) {
    if (!path_.empty() && path_.back() == stop) continue;
    State next = state;
    visit(next, stop);
    if (distinct_ && !path_.empty() && stop < path_.back() && either_way(before, next, stop)) {
      skipped = true;
      continue;
    }
    path_.push_back(stop);
    any |= extend(state, next, left - 1, effort);
    path_.pop_back();
  }
  if (!any && !skipped && too_few_.size() < most_states) {
    std::size_t& few = too_few_[std::move(key)];
    few = std::max(few, left);
  }
  return any;
}

}  // namespace shimwright::fitting
