// SPDX-License-Identifier: MPL-2.0
//
// For given visits to the stops: when each valve is opened and finished, and where stand-ins are
// needed, with as few of them as can be. Used by the steps alone.
//
// For every job j there are two visits to a stop where it is open, opened(j) <= finished(j), and
//   opened(giver of j) <= finished(j).
// A job with opened < finished has stand-ins meanwhile; a shim is at hand as a stand-in from the
// visit in which it comes out (a shim not in a valve: always) to the visit in which it is fitted
// where it is meant for (one left over: always). Within a visit all goes hand to hand.
//
// How many jobs of a chain must wait is found by going along the chain (dynamic programming over
// the visits; for a ring once for every visit of its first job): exact as long as no two
// stand-ins compete. Which shims stand in is then settled by branch and bound: a chain that still
// needs a stand-in is taken, each of its jobs tried as the one that waits, each pair of visits,
// each shim; the choice narrows the times of the valve that the shim comes out of and the one it
// goes to, so that the other chains may come to need more. With no need left the rest follows.
// Nothing is passed over, so that asking with ever
// more stand-ins finds the least.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "core/fitting/steps_work.hpp"

namespace shimwright::fitting {

inline constexpr std::size_t never = std::numeric_limits<std::uint16_t>::max() / 4;

inline constexpr std::size_t most_visits = 64;

// Of visits, bit by bit.
inline bool in_set(std::uint64_t set, std::size_t t) { return (set >> t & 1) != 0; }
inline std::size_t first_of(std::uint64_t set) {
  return static_cast<std::size_t>(std::countr_zero(set));
}

// Counts what a search has done, so that it ends on every machine at the same point.
struct Effort {
  std::uint64_t left = 0;
  bool spent() const { return left == 0; }
  void use(std::uint64_t amount) { left -= amount < left ? amount : left; }
};

// By job: the shims that may stand in, the nearest in thickness first, as it keeps the clearance
// nearest to what it was.
using Candidates = std::vector<std::vector<std::size_t>>;
Candidates candidates_of(const Work& work);

class StandIns {
 public:
  // At most `most_visits` visits. `candidates` are those of the work.
  StandIns(const Work& work, const Candidates& candidates, const std::vector<std::size_t>& visits);

  // A lower bound: were shims enough at hand at any time. `never` where even so it cannot be done.
  std::size_t least_possible() const { return root_need_; }

  // A schedule with at most so many stand-ins; none where there is none, or where the effort was
  // spent before one was found.
  std::optional<Schedule> with_at_most(std::size_t most, Effort& effort);

  // Whether, in the last search, more stand-ins might have helped.
  bool more_might_help() const { return cut_; }

 private:
  enum class Time : std::uint8_t {
    open,
    one_visit,
    waits
  };                           // not settled; opened == finished; settled
  using Visit = std::uint8_t;  // copied often, so kept small
  struct JobTime {
    std::uint64_t open_in = 0;  // bit t: in visit t
    Visit last = 0;             // the last of these
    Time time = Time::open;
    Visit opened = 0;  // where it waits
    Visit finished = 0;
    Visit opened_by = 0;      // at the latest
    Visit finished_from = 0;  // at the earliest
    Visit earliest = 0;       // to be opened, as the chain allows
    Visit latest = 0;         // to be finished, as the chain allows
  };

  using Costs = std::array<std::uint16_t, most_visits>;
  struct Lasts {  // visits; 0: not at all
    Visit one = 0;
    Visit more = 0;
    std::uint32_t ways = 0;
  };

  bool may_wait(std::size_t job) const;
  void find_bounds();
  bool needs_none(const Chain& chain) const;
  void find_gaps();
  void find_lasts(const Chain& chain, Effort* effort);
  std::vector<Lasts> lasts_of(const Chain& chain) const;
  void put_back(const Chain& chain, const std::vector<Lasts>& lasts);
  std::size_t first_open(std::size_t job, std::size_t from) const;
  std::size_t last_open(std::size_t job, std::size_t by) const;
  std::uint64_t free_gaps(std::size_t shim) const;
  std::uint64_t in_all(const Chain& ring) const;
  std::size_t waiting_in(const Chain& ring) const;
  void go_along(const Chain& chain, std::size_t first, std::size_t jobs, Costs& cost) const;
  std::size_t cost_if_opened(std::size_t job, std::size_t t, const Costs& before) const;
  std::size_t need_of(const Chain& chain) const;
  bool settle(std::size_t used, std::size_t most, Effort& effort);
  bool affords(std::size_t need, std::size_t most);
  bool affords(std::size_t others, const Chain& chain, std::size_t most);
  bool let_wait(const Chain& chain, const std::vector<Lasts>& lasts, std::size_t job,
                std::size_t used, std::size_t others, std::size_t most, Effort& effort);
  bool cover(std::size_t job, std::size_t from, std::size_t used, std::size_t most, Effort& effort);
  bool unused(std::size_t shim) const;
  void reserve(std::size_t shim, std::size_t from, std::size_t to);
  Schedule written_out() const;
  void write_in_one_visit(const Chain& chain, Schedule& schedule) const;

  const Work& work_;
  const std::vector<std::size_t>& visits_;
  std::vector<JobTime> times_;
  std::vector<StandIn> stand_ins_;
  const Candidates& candidates_;
  std::vector<std::uint64_t> gaps_;  // by shim: where it is free
  std::vector<Lasts> lasts_;         // by job and visit, of the chains that need a stand-in
  std::size_t root_need_ = 0;
  bool cut_ = false;
};

}  // namespace shimwright::fitting
