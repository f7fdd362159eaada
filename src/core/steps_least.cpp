// SPDX-License-Identifier: MPL-2.0
#include "core/steps_least.hpp"

#include <algorithm>
#include <tuple>
#include <utility>
#include <vector>

#include "core/steps_visits.hpp"

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

  // A ring across stops needs one stand-in at least.
  std::size_t floor() const { return floor_; }

  std::optional<Schedule> find(std::vector<std::vector<std::size_t>> found) {
    std::vector<Order> orders;
    for (auto& visits : found)
      orders.push_back({0, way_of(visits, work_.stops.size()), std::move(visits)});
    std::sort(orders.begin(), orders.end(), sooner);
    for (Order& order : orders) {
      if (effort_.spent()) return std::nullopt;
      effort_.use(work_.jobs.size() * order.visits.size());
      order.need = StandIns(work_, order.visits).least_possible();
      if (order.need <= floor_)
        if (auto schedule = look_at(order)) return schedule;  // no other could be better
    }
    for (;;) {
      std::erase_if(orders, [](const Order& order) { return order.need >= never; });
      std::sort(orders.begin(), orders.end(), sooner);
      if (orders.empty()) return std::nullopt;
      const std::size_t stand_ins = orders.front().need;
      for (Order& order : orders) {
        if (order.need > stand_ins) break;
        if (auto schedule = look_at(order)) return schedule;
        if (effort_.spent()) return std::nullopt;
      }
    }
  }

 private:
  std::optional<Schedule> look_at(Order& order) {
    StandIns search(work_, order.visits);
    auto schedule = search.with_at_most(order.need, effort_);
    if (!schedule) order.need = search.more_might_help() ? order.need + 1 : never;
    return schedule;
  }

  const Work& work_;
  Effort& effort_;
  std::size_t floor_ = 0;
};

}  // namespace

Least least_schedule(const Work& work, std::size_t most, Effort& effort) {
  Least least;
  Visits visits(work);
  most = std::min(most, most_visits);
  for (std::size_t count = visits.least_possible(); count <= most && !least.schedule; ++count) {
    // One number of visits that is hard to rule out must not use up all: with one more it is
    // often easy.
    Effort share{effort.left / 4};
    const std::uint64_t given = share.left;
    auto [found, all] = visits.orders_of(count, share);
    Among among(work, share);
    least.schedule = among.find(std::move(found));
    const bool at_floor = least.schedule && least.schedule->stand_ins.size() <= among.floor();
    least.proved = least.proved && (at_floor || (all && !share.spent()));
    effort.use(given - share.left);
  }
  return least;
}

}  // namespace shimwright::fitting
