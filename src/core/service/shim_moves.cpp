// SPDX-License-Identifier: MPL-2.0
#include "core/service/shim_moves.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/bench.hpp"
#include "core/service/entered.hpp"
#include "core/service/rules.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

class Follower {
 public:
  Follower(const Service& service, const Findings& found)
      : service_(service), found_(found), arrivals_(arrivals_fitted(service, found)) {}

  ShimMoves follow() && {
    for (const auto& step : service_.bench) {
      if (!is_ticked(step) || step.valve.empty()) continue;
      if (const auto out = length_entered(step.out, found_.teller.unit())) take_out(step, *out);
      if (const auto in = length_entered(step.in, found_.teller.unit())) put_in(step, *in);
    }
    ShimMoves moves;
    for (Valve& valve : valves_) {
      if (!valve.shim) continue;
      MovedShim moved{valve.shim->series, valve.shim->size, valve.name};
      if (valve.shim->origin == Origin::drawer) moves.spares_fitted.push_back(std::move(moved));
      if (valve.shim->origin == Origin::shop) {
        const auto row = std::ranges::find(arrivals_, valve.name, &FittedArrival::valve);
        if (row != arrivals_.end())
          moved.size = found_.arrivals[row->row].size.value_or(moved.size);
        moves.bought_fitted.push_back(std::move(moved));
      }
    }
    for (const Shim& shim : bench_)
      if (shim.origin == Origin::engine)
        moves.left_over.push_back({shim.series, size_found(shim), shim.valve});
    return moves;
  }

 private:
  enum class Origin { engine, drawer, shop };
  struct Shim {
    Origin origin = Origin::engine;
    std::string series;
    Length listed;           // its size by the list
    Length size;             // as Head has it for a shim that was in the engine, else as listed
    std::string valve = {};  // that it was in before the work began; none: in no valve
  };
  struct Valve {
    std::string name;
    std::optional<Shim> shim;
  };

  std::optional<std::size_t> index_of(const std::string& valve) const {
    const auto known = std::ranges::find(service_.valves, valve, &Service::ValveEntries::name);
    if (known == service_.valves.end()) return std::nullopt;
    return static_cast<std::size_t>(known - service_.valves.begin());
  }

  std::string series_of(const std::string& valve) const {
    const auto index = index_of(valve);
    return index ? found_.of(service_.valves[*index].side).series : std::string();
  }

  // A shim may be measured once it is out.
  Shim as_found(const std::string& valve, Length listed) const {
    const auto index = index_of(valve);
    const auto on_head = index ? found_.valves[*index].shim : std::nullopt;
    // Far apart from the list, it is another shim that stands there by now.
    const bool is_that = on_head && !are_far_apart(listed, on_head, found_.allowed);
    return {Origin::engine, series_of(valve), listed, is_that ? *on_head : listed, valve};
  }

  // As the log has it: by Head, however far that is from the list.
  Length size_found(const Shim& shim) const {
    const auto index = index_of(shim.valve);
    return index ? found_.valves[*index].shim.value_or(shim.size) : shim.size;
  }

  Valve* known(const std::string& name) {
    const auto valve = std::ranges::find(valves_, name, &Valve::name);
    return valve == valves_.end() ? nullptr : &*valve;
  }

  void take_out(const Service::BenchEntries& step, Length size) {
    Valve* valve = known(step.valve);
    if (valve == nullptr) {
      valves_.push_back({step.valve, std::nullopt});
      bench_.push_back(as_found(step.valve, size));
    } else if (valve->shim) {
      bench_.push_back(*std::exchange(valve->shim, std::nullopt));
    }
  }

  std::optional<Shim> from_bench(const std::function<bool(const Shim&)>& is_it) {
    const auto lies = std::ranges::find_if(bench_, is_it);
    if (lies == bench_.end()) return std::nullopt;
    Shim shim = *lies;
    bench_.erase(lies);
    return shim;
  }

  void put_in(const Service::BenchEntries& step, Length size) {
    Valve* valve = known(step.valve);
    if (valve == nullptr) valve = &valves_.emplace_back(Valve{step.valve, std::nullopt});
    if (valve->shim) bench_.push_back(*std::exchange(valve->shim, std::nullopt));
    const std::string series = series_of(step.valve);
    const Origin origin =
        step.from == found_.teller.say(Say::bought) ? Origin::shop : Origin::drawer;
    const bool stands_in = step.from == found_.teller.say(Say::stand_in);
    const bool is_spare = step.from == found_.teller.say(Say::spare);
    if (stands_in || is_spare || origin == Origin::shop) {
      // One of that size that has stood in already lies on the bench.
      valve->shim = from_bench([&](const Shim& shim) {
        return shim.listed == size && same_word(shim.series, series) &&
               (stands_in || shim.origin == origin);
      });
      if (!valve->shim)
        valve->shim = stands_in ? from_elsewhere(series, size) : Shim{origin, series, size, size};
    } else {
      valve->shim = from_bench([&](const Shim& shim) { return shim.valve == step.from; });
      if (!valve->shim) {
        // It is taken for a stand-in that is in a valve still, or its giver's own step is not
        // ticked.
        for (Valve& other : valves_)
          if (other.shim && other.shim->valve == step.from)
            other.shim = from_elsewhere(other.shim->series, other.shim->listed);
        valve->shim = as_found(step.from, size);
      }
    }
  }

  // A stand-in that comes from no valve and is no spare is a bought shim meant for another valve.
  Shim from_elsewhere(const std::string& series, Length size) const {
    const bool is_spare = std::ranges::any_of(service_.spares, [&](const auto& spare) {
      const std::string own = not_given(spare.series) ? found_.one_series : word_in(spare.series);
      return same_word(own, series) && length_entered(spare.size, found_.teller.unit()) == size;
    });
    return {is_spare ? Origin::drawer : Origin::shop, series, size, size};
  }

  const Service& service_;
  const Findings& found_;
  std::vector<FittedArrival> arrivals_;
  std::vector<Valve> valves_;
  std::vector<Shim> bench_;
};

}  // namespace

ShimMoves shim_moves(const Service& service, const Findings& found) {
  return Follower(service, found).follow();
}

}  // namespace shimwright
