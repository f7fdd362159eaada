// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/visits.hpp"

#include <algorithm>
#include <array>
#include <bit>

namespace shimwright::fitting {
namespace {

constexpr char untouched = 'u';
constexpr char opened = 'o';
constexpr char finished = 'f';

using Links = std::array<StopSet, most_stops>;  // by stop: to which stops shims go from it

// The stops on a shortest way round, from a stop along links back to it. There is one.
StopSet shortest_way_round(const Links& links, StopSet among) {
  for (std::size_t length = 2;; ++length)
    for (StopSet starts = among; starts != 0; starts &= starts - 1) {
      std::array<StopSet, most_stops + 1> reached{starts & -starts};  // by so many links
      for (std::size_t i = 0; i < length; ++i)
        for (StopSet from = reached[i]; from != 0; from &= from - 1)
          reached[i + 1] |= links[first_of(from)] & among;
      if ((reached[length] & reached[0]) == 0) continue;
      StopSet way = 0;
      std::size_t at = first_of(starts);
      for (std::size_t i = length; i-- > 0;) {
        StopSet from = reached[i];
        while (!in_set(links[first_of(from)], at)) from &= from - 1;
        at = first_of(from);
        way |= StopSet{1} << at;
      }
      return way;
    }
}

// Where shims go from stop to stop and, however far round, back again, one of the stops on that way
// must be come to twice. Counts such ways that have no stop in common, short ones first.
std::size_t ways_round(const Links& links, StopSet left) {
  for (std::size_t count = 0;; ++count) {
    for (StopSet seen = 0; seen != left;) {  // a stop from which no link goes on is on no way
      seen = left;
      for (StopSet rest = left; rest != 0; rest &= rest - 1)
        if ((links[first_of(rest)] & left) == 0) left &= ~(rest & -rest);
    }
    if (left == 0) return count;
    left &= ~shortest_way_round(links, left);
  }
}

}  // namespace

OrderSearch::OrderSearch(const Work& work) : work_(work), open_at_(work.stops.size()) {
  for (std::size_t job = 0; job < work.jobs.size(); ++job)
    for (const std::size_t stop : work.jobs[job].stops) open_at_[stop].push_back(job);
}

void OrderSearch::visit(State& state, std::size_t stop) const {
  // Opened here or not at all: start from all, and strike out what can neither wait nor get its
  // shim, and then what was to get its shim from that. So a ring within this stop stays in.
  constexpr char opened_here = 'h';
  for (const std::size_t job : open_at_[stop])
    if (state[job] == untouched) state[job] = opened_here;
  const auto fresh_is_out = [&](std::size_t job) {
    const std::size_t giver = work_.jobs[job].giver;
    return giver == no_index || state[giver] != untouched;
  };
  for (std::size_t job : open_at_[stop])
    while (job != no_index && state[job] == opened_here && !work_.jobs[job].can_wait &&
           !fresh_is_out(job)) {
      state[job] = untouched;
      job = work_.jobs[job].taker;
    }
  for (const std::size_t job : open_at_[stop]) {
    if (state[job] == opened_here) state[job] = opened;
    if (state[job] == opened && fresh_is_out(job)) state[job] = finished;
  }
}

// No visit once all is finished. Else each stop at which alone some valve is open must come, and
// one of those on each way round twice; and along a chain, a valve that gets its shim from a stop
// to come, at a stop of its own, is one visit later than its giver.
std::size_t OrderSearch::at_least(const State& state) const {
  StopSet needed = 0;
  Links links{};
  std::size_t longest = 0;
  for (const Chain& chain : work_.chains) {
    std::size_t giver_after = 0;  // visits until the giver is opened; 0: it is, or none is needed
    StopSet giver_open = 0;
    for (const std::size_t job : chain.jobs) {
      const Job& it = work_.jobs[job];
      std::size_t after = 0;
      if (state[job] != finished) {
        const bool one_stop = !has_several(it.open);
        if (one_stop) needed |= it.open;
        if (one_stop && it.giver != no_index && state[it.giver] == untouched) {
          const StopSet from = work_.jobs[it.giver].open;
          if (!has_several(from) && from != it.open) links[first_of(from)] |= it.open;
        }
        const bool here = giver_after == 0 || (it.open & giver_open) != 0;
        after = std::max<std::size_t>(giver_after, 1) + (here ? 0 : 1);
        longest = std::max(longest, after);
        if (state[job] == opened) after = 0;
        else if (it.can_wait) after = 1;
      }
      giver_after = after;
      giver_open = it.open;
    }
  }
  const auto stops = static_cast<std::size_t>(std::popcount(needed));
  return std::max(stops + ways_round(links, needed), longest);
}

std::size_t OrderSearch::least_possible() const {
  return at_least(State(work_.jobs.size(), untouched));
}

OrderSearch::Orders OrderSearch::orders_of(std::size_t visits, std::size_t most, Effort& effort) {
  orders_ = {};
  path_.clear();
  extend(State(work_.jobs.size(), untouched), visits, most, effort);
  return std::move(orders_);
}

// Whether any order came of it. Stops when there are `most` orders in all.
bool OrderSearch::extend(const State& state, std::size_t left, std::size_t most, Effort& effort) {
  effort.use(50 + 2 * state.size() + work_.stops.size() * work_.stops.size() / 2);
  if (at_least(state) > left) return false;
  if (left == 0) {
    orders_.found.push_back(path_);
    return true;
  }
  if (effort.spent() || orders_.found.size() >= most) {
    orders_.all = false;
    return true;
  }
  if (const auto at = too_few_.find(state); at != too_few_.end() && at->second >= left)
    return false;
  bool any = false;
  const std::size_t stops = work_.stops.size();
  const std::size_t here = path_.empty() ? 0 : path_.back();
  for (std::size_t i = path_.empty() ? 0 : 1; i < stops; ++i) {
    const std::size_t stop = (here + i) % stops;
    State next = state;
    visit(next, stop);
    path_.push_back(stop);
    any |= extend(next, left - 1, most, effort);
    path_.pop_back();
  }
  if (!any) {
    std::size_t& few = too_few_[state];
    few = std::max(few, left);
  }
  return any;
}

}  // namespace shimwright::fitting
