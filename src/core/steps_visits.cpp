// SPDX-License-Identifier: MPL-2.0
#include "core/steps_visits.hpp"

#include <algorithm>
#include <bit>

namespace shimwright::fitting {
namespace {

constexpr char untouched = 'u';
constexpr char opened = 'o';
constexpr char finished = 'f';
constexpr std::size_t most_orders = 10'000;
constexpr std::size_t most_states = 200'000;

}  // namespace

void Visits::visit(State& state, std::size_t stop) const {
  const auto open = [&](std::size_t job) { return (work_.jobs[job].open >> stop & 1) != 0; };
  // Opened here or not at all: start from all, and strike out what can neither wait nor get its
  // shim, until nothing more is struck out. So a ring within this stop stays in.
  std::vector<std::size_t> here;
  for (std::size_t job = 0; job < state.size(); ++job)
    if (state[job] == untouched && open(job)) {
      state[job] = opened;
      here.push_back(job);
    }
  const auto fresh_is_out = [&](std::size_t job) {
    const std::size_t giver = work_.jobs[job].giver;
    return giver == nobody || state[giver] != untouched;
  };
  for (bool again = true; again;) {
    again = false;
    for (const std::size_t job : here)
      if (state[job] == opened && !work_.jobs[job].can_wait && !fresh_is_out(job)) {
        state[job] = untouched;
        again = true;
      }
  }
  for (std::size_t job = 0; job < state.size(); ++job)
    if (state[job] == opened && open(job) && fresh_is_out(job)) state[job] = finished;
}

// No visit once all is finished. Else each stop at which alone some valve is open must come; and a
// valve that gets its shim from a stop to come, at a stop of its own, is one visit later than its
// giver.
std::size_t Visits::at_least(const State& state) const {
  StopSet needed = 0;
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
          if (std::has_single_bit(it.open))
            needed |= it.open;
          else
            elsewhere = true;
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
  return std::max({static_cast<std::size_t>(std::popcount(needed)), longest,
                   static_cast<std::size_t>(elsewhere ? 1 : 0)});
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
  effort.use(4 * state.size() * work_.stops.size());
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
