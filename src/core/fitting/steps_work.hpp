// SPDX-License-Identifier: MPL-2.0
//
// The fitting work laid out: the valves to open, the shims on the bench and in those valves, and
// how shims pass from valve to valve. Each valve gives its shim to one other at most, so the
// valves stand in chains (the first takes a spare or bought shim, the last one's is left over) and
// in rings. And a schedule of that work. Used by the steps alone.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/fitting/steps.hpp"

namespace shimwright::fitting {

inline constexpr std::size_t nobody = static_cast<std::size_t>(-1);

using StopSet = std::uint64_t;  // bit i: the i-th stop of Work::stops
inline constexpr std::size_t most_stops = 64;

struct Job {
  std::size_t valve = 0;       // index in the question
  std::size_t giver = nobody;  // the job whose old shim goes in
  std::size_t taker = nobody;  // the job that takes this one's old shim
  std::size_t fresh = 0;       // the shim that goes in; the old one has the job's own number
  StopSet open = 0;
  bool can_wait = false;  // there is a shim somewhere that could stand in
};

struct Shim {
  Length size;
  std::size_t series = 0;
  std::size_t out_of = nobody;   // the job in which it is at first
  std::size_t goes_to = nobody;  // the job for which it is meant
  ShimAtBench name;
};

struct Chain {
  std::vector<std::size_t> jobs;  // each gives to the next
  bool ring = false;              // and the last to the first
  StopSet common = 0;             // stops at which all of them are open
};

struct Work {
  std::vector<int> stops;   // at which a job is open, in order
  std::vector<Job> jobs;    // in the order of the valves
  std::vector<Shim> shims;  // the jobs' old ones, the fresh ones not out of a valve, the spares
  std::vector<Chain> chains;

  bool may_stand_in(std::size_t shim, std::size_t job) const {
    return shims[shim].series == shims[job].series && shims[shim].size <= shims[job].size &&
           shim != jobs[job].fresh;
  }
};

// Leaves out the valves so marked (whole rings; may be empty). Throws BadInput as fitting_steps.
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
