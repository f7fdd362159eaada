// SPDX-License-Identifier: MPL-2.0
#include "core/steps_least.hpp"

#include <algorithm>
#include <tuple>
#include <utility>
#include <vector>

#include "core/steps_visits.hpp"

namespace shimwright::fitting {
namespace {

constexpr std::size_t longest_search = 64;  // visits

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

std::vector<Order> promising(const Work& work, std::vector<std::vector<std::size_t>> found) {
  std::vector<Order> orders;
  for (auto& visits : found) {
    const std::size_t need = StandIns(work, visits).least_possible();
    if (need < never)
      orders.push_back({need, way_of(visits, work.stops.size()), std::move(visits)});
  }
  std::sort(orders.begin(), orders.end(), sooner);
  return orders;
}

}  // namespace

Least least_schedule(const Work& work, std::size_t most_visits, Effort& effort) {
  Least least;
  Visits visits(work);
  const std::size_t end = std::min(most_visits, longest_search);
  for (std::size_t count = visits.least_possible(); count <= end && !least.schedule; ++count) {
    auto [found, all] = visits.orders_of(count, effort);
    least.proved = least.proved && all;
    std::vector<Order> orders = promising(work, std::move(found));
    while (!orders.empty() && !least.schedule) {
      const std::size_t most = orders.front().need;
      for (Order& order : orders) {
        if (order.need > most) break;
        StandIns search(work, order.visits);
        least.schedule = search.with_at_most(most, effort);
        if (least.schedule || effort.spent()) break;
        order.need = search.more_might_help() ? most + 1 : never;
      }
      if (effort.spent()) break;
      std::erase_if(orders, [](const Order& order) { return order.need >= never; });
      std::sort(orders.begin(), orders.end(), sooner);
    }
    if (effort.spent()) {
      least.proved = false;
      break;
    }
  }
  return least;
}

}  // namespace shimwright::fitting
