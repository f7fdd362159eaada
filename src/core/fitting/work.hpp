// SPDX-License-Identifier: MPL-2.0
//
// The fitting work laid out: the valves to open (jobs), the shims in them and on the bench, and how
// shims pass from valve to valve. Each valve gives its shim to one other at most, so the jobs stand
// in chains (the first takes a spare or bought shim, the last one's is left over) and in rings. And
// a schedule of that work. Used by the steps alone.
#pragma once

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "core/fitting/steps.hpp"

namespace shimwright::fitting {

inline constexpr std::size_t no_index = static_cast<std::size_t>(-1);

using StopSet = std::uint64_t;  // bit i: the i-th stop of Work::stops
inline constexpr std::size_t most_stops = 64;

inline bool in_set(std::uint64_t set, std::size_t i) { return (set >> i & 1) != 0; }
inline std::size_t first_of(std::uint64_t set) {
  return static_cast<std::size_t>(std::countr_zero(set));
}
inline bool has_several(std::uint64_t set) { return (set & (set - 1)) != 0; }

// What the search may still do, in steps of about a nanosecond: counted, not timed, so that it ends
// at the same point on every machine.
struct Effort {
  std::uint64_t left = 0;
  bool spent() const { return left == 0; }
  void use(std::uint64_t amount) { left -= std::min(amount, left); }
};

struct Job {
  std::size_t valve = 0;            // index in the question
  std::size_t giver = no_index;     // the job whose old shim goes in
  std::size_t taker = no_index;     // the job that takes this one's old shim
  std::size_t fresh = 0;            // the shim that goes in; the old one has the job's own number
  StopSet open = 0;                 // where it can be worked on
  std::vector<std::uint8_t> stops;  // the same, the best liked first
  bool can_wait = false;            // there is a shim that could stand in
};

// One shim, or spares alike: of one series, and each fits as a stand-in under the same old shims.
struct Shim {
  Length size;  // of spares: the thickest
  std::size_t series = 0;
  std::size_t out_of = no_index;   // the job in which it is at first
  std::size_t goes_to = no_index;  // the job for which it is meant
  ShimAtBench name = {};           // not of spares alike
  std::size_t count = 1;
  std::size_t first_row = 0;  // of spares: their part of Work::spares
  std::size_t last_row = 0;

  bool is_spare() const { return out_of == no_index && goes_to == no_index; }
};

struct SpareRow {
  std::size_t row = 0;  // index in FittingQuestion::spares
  Length size;
  std::size_t series = 0;
  std::size_t count = 0;
};

struct Chain {
  std::vector<std::size_t> jobs;  // each gives to the next
  bool ring = false;              // and the last to the first
  StopSet common = 0;             // stops at which all of them are open
};

struct Work {
  std::vector<int> stops;        // at which a job is open, in order
  std::vector<Job> jobs;         // in the order of the valves
  std::vector<Shim> shims;       // the jobs' old ones, those meant for jobs, the spares
  std::vector<SpareRow> spares;  // series by series, the thickest first
  std::vector<Chain> chains;

  // The shims of the job's series no thicker than its old one, the nearest in thickness first,
  // which keeps the clearance nearest to what it was. Its old one is among them; its fresh one may
  // be, and is no stand-in.
  std::span<const std::size_t> no_thicker(std::size_t job) const {
    return {by_size.data() + from[job], by_size.data() + series_end[shims[job].series]};
  }

  std::vector<std::size_t> by_size;     // shims series by series, the thickest first
  std::vector<std::size_t> from;        // by job: its first place in by_size
  std::vector<std::size_t> series_end;  // by series: the place in by_size after its last
};

// Throws BadInput as fitting_steps.
void check(const FittingQuestion& question);

// Leaves out the valves so marked (whole rings; may be empty). The question has been checked but
// for too many stops, which throw BadInput. Time n log n.
Work work_of(const FittingQuestion& question, const std::vector<bool>& left_out);

struct StandIn {
  std::size_t job = 0;
  std::size_t shim = 0;
  std::size_t from = 0;  // visit in which it goes in
  std::size_t to = 0;    // visit in which it comes out
};

struct Schedule {
  std::vector<std::size_t> visits;    // indices into Work::stops
  std::vector<std::size_t> opened;    // by job: the visit in which its old shim comes out first
  std::vector<std::size_t> finished;  // by job: the visit in which its fresh one goes in
  std::vector<StandIn> stand_ins;     // those of one job without gaps from opened to finished
};

}  // namespace shimwright::fitting
