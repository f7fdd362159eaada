// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/least.hpp"

#include <algorithm>
#include <tuple>
#include <utility>
#include <vector>

#include "core/fitting/stand_ins.hpp"
#include "core/fitting/visits.hpp"

namespace shimwright::fitting {
namespace {

struct Order {
  std::size_t need = 0;  // stand-ins, at least
  std::size_t way = 0;   // stops passed, from the first one on
  std::vector<std::size_t> visits;
};

bool sooner(const Order& a, const Order& b) {
  return std::tie(a.need, a.way, a.visits) < std::tie(b.need, b.way, b.visits);
}

std::size_t way_of(const std::vector<std::size_t>& visits, std::size_t stops) {
  std::size_t way = 0;
  std::size_t at = 0;
  for (const std::size_t stop : visits) {
    way += (stop + stops - at) % stops;
    at = stop;
  }
  return way;
}

// Looks for the least among orders of equally many visits.
class Among {
 public:
  Among(const Work& work, Effort& effort) : work_(work), effort_(effort) {
    for (const Chain& chain : work.chains) floor_ += chain.ring && chain.common == 0 ? 1U : 0U;
  }

  // With no more stand-ins than are needed in any case: there can be no better.
  std::optional<Schedule> at_floor(const std::vector<std::vector<std::size_t>>& found) {
    orders_.clear();
    for (const auto& visits : found)
      orders_.push_back({0, way_of(visits, work_.stops.size()), visits});
    std::sort(orders_.begin(), orders_.end(), sooner);
    for (Order& order : orders_) {
      order.need = StandInSearch(work_, order.visits, effort_).least_possible();
      if (effort_.spent()) return std::nullopt;
      if (order.need > floor_) continue;
      if (auto schedule = look_at(order)) return schedule;
    }
    return std::nullopt;
  }

  // Of the same orders, where that gave none.
  std::optional<Schedule> above_floor() {
    while (!effort_.spent()) {
      std::erase_if(orders_, [](const Order& order) { return order.need >= never; });
      std::sort(orders_.begin(), orders_.end(), sooner);
      if (orders_.empty()) break;
      const std::size_t stand_ins = orders_.front().need;
      for (Order& order : orders_) {
        if (order.need > stand_ins || effort_.spent()) break;
        if (auto schedule = look_at(order)) return schedule;
      }
    }
    return std::nullopt;
  }

 private:
  std::optional<Schedule> look_at(Order& order) {
    StandInSearch search(work_, order.visits, effort_);
    auto schedule = search.with_at_most(order.need);
    if (!schedule) order.need = search.more_might_help() ? order.need + 1 : never;
    return schedule;
  }

  const Work& work_;
  Effort& effort_;
  std::size_t floor_ = 0;  // a ring across stops needs one stand-in at least
  std::vector<Order> orders_;
};

}  // namespace

Least least_schedule(const Work& work, std::size_t most, Effort& effort) {
  constexpr std::size_t few_orders = 100;
  constexpr std::size_t most_orders = 2000;
  Least least;
  OrderSearch search(work);
  most = std::min(most, most_visits);
  for (std::size_t count = search.least_possible(); count <= most && !effort.spent(); ++count) {
    // One number of visits that is hard to rule out must not use up the effort: with one more it
    // is often easy.
    const std::uint64_t given = effort.left / 4;
    Effort share{given};
    Among among(work, share);
    auto orders = search.orders_of(count, few_orders, share);
    least.schedule = among.at_floor(orders.found);
    if (!least.schedule && !orders.all) {
      orders = search.orders_of(count, most_orders, share);
      least.schedule = among.at_floor(orders.found);
    }
    const bool certain = least.schedule || orders.all;
    if (!least.schedule) least.schedule = among.above_floor();
    effort.use(given - share.left);
    least.proved = least.proved && certain && !share.spent();
    if (least.schedule) return least;
  }
  least.proved = least.proved && !effort.spent();
  return least;
}

}  // namespace shimwright::fitting
