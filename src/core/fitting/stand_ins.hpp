// SPDX-License-Identifier: MPL-2.0
//
// For given visits to the stops: when each valve is opened and finished, and which shims stand in
// meanwhile, with as few of them as can be. Used by the steps alone.
//
// For every job j there are two visits to a stop where it is open, opened(j) <= finished(j), and
//   opened(giver of j) <= finished(j).
// A job with opened < finished waits: it has stand-ins meanwhile. A shim is at hand as a stand-in
// from the visit in which it comes out (a shim not in a valve: always) to the visit in which it is
// fitted where it is meant for (one left over: always). Within a visit all goes hand to hand.
//
// How many jobs of a chain must wait is found by going along the chain (dynamic programming over
// the visits; for a ring once for every visit of its first job): a lower bound, exact as long as no
// two stand-ins compete. Which shims stand in is then settled by branch and bound: a chain that
// still needs a stand-in is taken, each of its jobs tried as the one that waits, each pair of
// visits, each shim; the choice narrows the times of the valve that the shim comes out of and of
// the one it goes to, so that other chains may come to need more. With no need left, the rest is
// done in one visit each. Complete for each number of stand-ins, so the first that succeeds is the
// least.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "core/fitting/work.hpp"

namespace shimwright::fitting {

inline constexpr std::size_t never = std::numeric_limits<std::uint16_t>::max() / 4;
inline constexpr std::size_t most_visits = 64;

class StandInSearch {
 public:
  // At most `most_visits` visits. All it does is charged to the effort.
  StandInSearch(const Work& work, const std::vector<std::size_t>& visits, Effort& effort);

  // A lower bound: were shims enough at hand at any time. `never` where even so it cannot be done.
  std::size_t least_possible() const { return least_possible_; }

  // A schedule with at most so many stand-ins; none where there is none, or where the effort was
  // spent before one was found.
  std::optional<Schedule> with_at_most(std::size_t most);

  // Whether, in the last search, more stand-ins might have helped.
  bool more_might_help() const { return cut_; }

 private:
  using Visits = std::uint64_t;  // a set, bit by bit; of turns: bit t is the turn after visit t
  using Costs = std::array<std::uint16_t, most_visits>;

  enum class Kind : std::uint8_t { open, one_visit, waits };  // open: not settled
  struct JobTime {
    Visits open_in = 0;
    Visits covered = 0;  // turns over which another's shim could stand in
    Visits own = 0;      // turns over which its own might be put back after that
    Kind kind = Kind::open;
    std::uint8_t opened = 0;  // where it waits
    std::uint8_t finished = 0;
    std::uint8_t opened_by = 0;      // at the latest, as a stand-in demands
    std::uint8_t finished_from = 0;  // at the earliest, as a stand-in demands
    std::uint8_t earliest = 0;       // to be opened, as the chain allows
    std::uint8_t latest = 0;         // to be finished, as the chain allows
  };

  bool may_wait(std::size_t job) const;
  std::size_t first_open(std::size_t job, std::size_t from) const;
  std::size_t last_open(std::size_t job, std::size_t by) const;
  void find_bounds();
  Visits turns_free(std::size_t shim) const;
  void find_covered(const Chain& chain);
  Visits visits_for_all(const Chain& ring) const;
  std::size_t waiting_in(const Chain& ring) const;
  std::size_t last_with_one(std::size_t job, std::size_t from) const;
  std::size_t last_with_more(std::size_t job, std::size_t from) const;
  std::size_t cost_if_opened(std::size_t job, std::size_t t, const Costs& before) const;
  void go_along(const Chain& chain, std::size_t first, std::size_t jobs, Costs& cost) const;
  std::size_t need_of(const Chain& chain) const;
  bool settle(std::size_t used, std::size_t most);
  bool settle_neediest(std::size_t used, std::size_t most);
  bool affords(std::size_t need, std::size_t most);
  bool let_wait(const Chain& chain, std::size_t job, std::size_t used, std::size_t others,
                std::size_t most);
  bool cover(std::size_t job, std::size_t from, std::size_t used, std::size_t most);
  void find_used_up(std::size_t shim);
  Schedule written_out();
  std::size_t best_liked(const Chain& chain, std::size_t place, Visits visits) const;

  const Work& work_;
  const std::vector<std::size_t>& visits_;
  Effort& effort_;
  std::vector<JobTime> times_;
  std::vector<StandIn> stand_ins_;
  std::vector<Visits> used_up_;  // by shim: turns over which it stands in already
  std::size_t least_possible_ = 0;
  bool cut_ = false;
};

}  // namespace shimwright::fitting
