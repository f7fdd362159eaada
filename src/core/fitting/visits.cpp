// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/visits.hpp"

#include <algorithm>
#include <bit>

namespace shimwright::fitting {
namespace {

constexpr char untouched = 'u';
constexpr char opened = 'o';
constexpr char finished = 'f';

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

// No visit once all is finished; else one at least to each stop at which alone some valve is open.
std::size_t OrderSearch::at_least(const State& state) const {
  StopSet needed = 0;
  bool any = false;
  for (std::size_t job = 0; job < state.size(); ++job) {
    if (state[job] == finished) continue;
    any = true;
    if (!has_several(work_.jobs[job].open)) needed |= work_.jobs[job].open;
  }
  return needed == 0 && any ? 1 : static_cast<std::size_t>(std::popcount(needed));
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
  effort.use(50 + 2 * state.size());
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
