// SPDX-License-Identifier: MPL-2.0
//
// In which order to come to the stops: every order of so many visits in which the work could be
// done if stand-ins never ran short. Used by the steps alone.
//
// Where stand-ins never run short it is best to open at once what can be opened and to finish at
// once what can be finished, so that an order of visits either does the work or does not; and the
// state after some visits (what is opened, what is finished) settles how many more are needed.
#pragma once

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/fitting/steps_stand_ins.hpp"
#include "core/fitting/steps_work.hpp"

namespace shimwright::fitting {

class Visits {
 public:
  explicit Visits(const Work& work);

  // No order has fewer visits than this.
  std::size_t least_possible() const;

  struct Orders {
    std::vector<std::vector<std::size_t>> found;  // indices into Work::stops
    bool all = true;                              // false: there may be more
  };
  // `distinct`: of two orders that differ only in neighbouring visits of which neither helps the
  // other, one. (It may still matter to the stand-ins which of them comes first.)
  Orders orders_of(std::size_t count, bool distinct, Effort& effort);

 private:
  // By job: not touched, opened, finished. A string, so that it can be looked up.
  using State = std::string;

  void visit(State& state, std::size_t stop) const;
  std::size_t at_least(const State& state) const;
  bool extend(const State& before, const State& state, std::size_t left, Effort& effort);
  bool either_way(const State& before, const State& after, std::size_t stop) const;

  const Work& work_;
  std::vector<std::vector<std::size_t>> open_at_;  // by stop: jobs
  std::vector<std::size_t> path_;
  bool distinct_ = false;
  Orders orders_;
  // A state after a visit to the stop in its last character: so many further visits are too few.
  std::unordered_map<State, std::size_t> too_few_;
};

}  // namespace shimwright::fitting
