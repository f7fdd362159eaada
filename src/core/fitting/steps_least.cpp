// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_least.hpp"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>
#include <vector>

#include "core/fitting/steps_visits.hpp"

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
  Among(const Work& work, const Candidates& candidates, Effort& effort)
      : work_(work), candidates_(candidates), effort_(effort) {
    for (const Chain& chain : work.chains) floor_ += chain.ring && chain.common == 0 ? 1U : 0U;
  }

  // A ring across stops needs one stand-in at least.
  std::size_t floor() const { return floor_; }

  // With fewer stand-ins than `below`.
  std::optional<Schedule> find(const std::vector<std::vector<std::size_t>>& found,
                               std::size_t below) {
    std::vector<Order> orders;
    for (const auto& visits : found)
      orders.push_back({0, way_of(visits, work_.stops.size()), visits});
    std::sort(orders.begin(), orders.end(), sooner);
    for (Order& order : orders) {
      if (effort_.spent()) return std::nullopt;
      effort_.use(4 * work_.jobs.size() * order.visits.size());
      order.need = StandIns(work_, candidates_, order.visits).least_possible();
      if (order.need <= floor_ && order.need < below)
        if (auto schedule = look_at(order)) return schedule;  // no other could be better
    }
    for (;;) {
      std::erase_if(orders, [below](const Order& order) { return order.need >= below; });
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
    StandIns search(work_, candidates_, order.visits);
    auto schedule = search.with_at_most(order.need, effort_);
    if (!schedule) order.need = search.more_might_help() ? order.need + 1 : never;
    return schedule;
  }

  const Work& work_;
  const Candidates& candidates_;
  Effort& effort_;
  std::size_t floor_ = 0;
};

}  // namespace

Least least_schedule(const Work& work, std::size_t most, Effort& effort) {
  Least least;
  Visits visits(work);
  const Candidates candidates = candidates_of(work);
  most = std::min(most, most_visits);
  for (std::size_t count = visits.least_possible(); count <= most && !least.schedule; ++count) {
    // First the orders that differ by more than neighbouring visits changing places, then all. One
    // number of visits that is hard to rule out must not use up the effort: with one more it is
    // often easy.
    std::vector<std::vector<std::size_t>> seen;
    bool certain = false;
    for (const bool distinct : {true, false}) {
      const std::uint64_t given = effort.left / 4;
      Effort share{given};
      auto [found, all] = visits.orders_of(count, distinct, share);
      certain = all && !share.spent();
      if (certain && found.empty()) break;
      std::sort(found.begin(), found.end());
      std::vector<std::vector<std::size_t>> fresh;
      std::set_difference(found.begin(), found.end(), seen.begin(), seen.end(),
                          std::back_inserter(fresh));
      Among among(work, candidates, share);
      const std::size_t below = least.schedule ? least.schedule->stand_ins.size() : never;
      if (auto better = among.find(fresh, below)) least.schedule = std::move(better);
      certain = all && !share.spent();
      effort.use(given - share.left);
      if (least.schedule && least.schedule->stand_ins.size() <= among.floor()) {
        certain = true;
        break;
      }
      if (share.spent()) break;
      seen = std::move(found);
    }
    least.proved = least.proved && certain;
  }
  return least;
}

Schedule with_visits_left_out(const Work& work, Schedule schedule, Effort& effort) {
  // An attempt that takes long is not likely to come to anything.
  constexpr std::uint64_t one_attempt = 400'000;
  const Candidates candidates = candidates_of(work);
  std::size_t failed = 0;  // attempts since the last that came to something
  for (std::size_t i = 0; failed < schedule.visits.size() && !effort.spent(); ++failed) {
    if (i >= schedule.visits.size()) i = 0;
    std::vector<std::size_t> visits = schedule.visits;
    visits.erase(visits.begin() + static_cast<std::ptrdiff_t>(i));
    visits.erase(std::unique(visits.begin(), visits.end()), visits.end());
    ++i;
    if (visits.empty() || visits.size() > most_visits) continue;
    Effort share{std::min(one_attempt, effort.left)};
    const std::uint64_t given = share.left;
    if (auto shorter = Among(work, candidates, share).find({visits}, never)) {
      schedule = *std::move(shorter);
      --i;
      failed = static_cast<std::size_t>(-1);
    }
    effort.use(given - share.left);
  }
  return schedule;
}

}  // namespace shimwright::fitting
