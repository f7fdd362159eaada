// SPDX-License-Identifier: MPL-2.0
#include "steps_search.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace shimwright::search {
namespace {

using Supply = FittingValve::Supply;

class Search {
 public:
  Search(const FittingQuestion& question, const std::vector<bool>& left_out,
         const std::optional<Least>& known)
      : known_(known) {
    std::vector<std::size_t> shim_of(question.valves.size());
    std::vector<std::size_t> at;
    for (std::size_t i = 0; i < question.valves.size(); ++i) {
      const FittingValve& valve = question.valves[i];
      if (valve.supply == Supply::keep || left_out[i]) continue;
      at.push_back(i);
      shim_of[i] = add(*valve.shim, valve.series);
    }
    for (const std::size_t i : at) {
      const FittingValve& valve = question.valves[i];
      valves_.push_back({.old = shim_of[i],
                         .fresh = valve.supply == Supply::valve ? shim_of[valve.giver]
                                                                : add(valve.fit, valve.series),
                         .stops = {valve.stops.begin(), valve.stops.end()}});
      for (const int stop : valve.stops) stops_.insert(stop);
    }
    for (const auto& spare : question.spares)
      for (std::int64_t n = 0; n < spare.count; ++n) add(spare.size, spare.series);
  }

  std::optional<Least> run() {
    std::string start, end;
    for (const Valve& valve : valves_) {
      start += static_cast<char>(valve.old);
      end += static_cast<char>(valve.fresh);
    }
    std::map<std::string, std::size_t> cheapest{{start, 0}};
    std::map<std::string, std::size_t> level = cheapest;
    for (std::size_t turns = 0; !level.empty(); ++turns) {
      if (const auto found = level.find(end); found != level.end())
        return Least{turns, found->second};
      next_.clear();
      for (const auto& [state, cost] : level) {
        if (is_worse(state, turns, cost)) continue;
        for (const int stop : stops_) {
          std::vector<bool> free(shims_.size(), true);
          for (std::size_t v = 0; v < valves_.size(); ++v)
            if (!workable(state, v, stop)) free[held(state, v)] = false;
          std::string after = state;
          fill(0, state, stop, free, after, cost);
        }
      }
      level.clear();
      for (const auto& [state, cost] : next_) {
        const auto known = cheapest.find(state);
        if (known != cheapest.end() && known->second <= cost) continue;
        cheapest[state] = cost;
        level.emplace(state, cost);
      }
    }
    return std::nullopt;
  }

 private:
  struct Shim {
    Length size;
    std::string series;
  };
  struct Valve {
    std::size_t old;
    std::size_t fresh;
    std::set<int> stops;
  };

  std::size_t add(Length size, const std::string& series) {
    shims_.push_back({size, series});
    return shims_.size() - 1;
  }

  static std::size_t held(const std::string& state, std::size_t v) {
    return static_cast<std::size_t>(state[v]);
  }

  bool workable(const std::string& state, std::size_t v, int stop) const {
    return valves_[v].stops.contains(stop) && held(state, v) != valves_[v].fresh;
  }

  // Whether this state, come to so, cannot end as well as what is known: valves not done that have
  // no stop in common take a turn each.
  bool is_worse(const std::string& state, std::size_t turns, std::size_t cost) const {
    if (!known_) return false;
    std::set<int> seen;
    for (std::size_t v = 0; v < valves_.size(); ++v) {
      const std::set<int>& stops = valves_[v].stops;
      if (held(state, v) == valves_[v].fresh ||
          std::any_of(stops.begin(), stops.end(), [&](int stop) { return seen.contains(stop); }))
        continue;
      seen.insert(stops.begin(), stops.end());
      ++turns;
    }
    return turns > known_->turns || (turns == known_->turns && cost > known_->stand_ins);
  }

  void fill(std::size_t v, const std::string& before, int stop, std::vector<bool>& free,
            std::string& after, std::size_t cost) {
    if (v == valves_.size()) {
      const auto [at, is_new] = next_.try_emplace(after, cost);
      if (!is_new) at->second = std::min(at->second, cost);
      return;
    }
    if (!workable(before, v, stop)) {
      fill(v + 1, before, stop, free, after, cost);
      return;
    }
    const Shim& old = shims_[valves_[v].old];
    for (std::size_t x = 0; x < shims_.size(); ++x) {
      if (!free[x]) continue;
      const bool fresh = x == valves_[v].fresh;
      if (!fresh && (shims_[x].series != old.series || shims_[x].size > old.size)) continue;
      free[x] = false;
      after[v] = static_cast<char>(x);
      fill(v + 1, before, stop, free, after, cost + (!fresh && x != held(before, v) ? 1 : 0));
      free[x] = true;
    }
    after[v] = before[v];
  }

  std::optional<Least> known_;
  std::vector<Shim> shims_;
  std::vector<Valve> valves_;
  std::set<int> stops_;
  std::map<std::string, std::size_t> next_;
};

}  // namespace

std::optional<Least> every_way(const FittingQuestion& question, const std::vector<bool>& left_out,
                               const std::optional<Least>& known) {
  return Search(question, left_out, known).run();
}

}  // namespace shimwright::search
