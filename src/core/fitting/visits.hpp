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

#include "core/fitting/work.hpp"

namespace shimwright::fitting {

class OrderSearch {
 public:
  explicit OrderSearch(const Work& work);

  // No order has fewer visits than this.
  std::size_t least_possible() const;

  struct Orders {
    std::vector<std::vector<std::size_t>> found;  // indices into Work::stops
    bool all = true;                              // false: there may be more
  };
  // At most so many of them.
  Orders orders_of(std::size_t visits, std::size_t most, Effort& effort);

 private:
  // By job: untouched, opened, finished. A string, so that it can be looked up.
  using State = std::string;

  void visit(State& state, std::size_t stop) const;
  std::size_t at_least(const State& state) const;
  bool extend(const State& state, std::size_t left, std::size_t most, Effort& effort);

  const Work& work_;
  std::vector<std::vector<std::size_t>> open_at_;  // by stop: jobs
  std::vector<std::size_t> path_;
  Orders orders_;
  // From this state, so many visits and fewer do not do the work.
  std::unordered_map<State, std::size_t> too_few_;
};

}  // namespace shimwright::fitting
