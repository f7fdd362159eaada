// SPDX-License-Identifier: MPL-2.0
#include "core/plan/plan.hpp"

#include <algorithm>
#include <array>
#include <compare>
#include <map>
#include <tuple>
#include <utility>

#include "core/plan/assignment.hpp"
#include "core/plan/nearest.hpp"
#include "core/values/choice.hpp"

namespace shimwright {
namespace {

// The aims in their order, each summed over the valves. One weighted number would have to hold
// some 170 bits for the largest question; six numbers compared one after another are exact.
struct Aims {
  std::array<std::int64_t, 6> sums{};

  friend Aims operator+(Aims a, const Aims& b) {
    for (std::size_t i = 0; i < a.sums.size(); ++i) a.sums[i] += b.sums[i];
    return a;
  }
  friend Aims operator-(Aims a, const Aims& b) {
    for (std::size_t i = 0; i < a.sums.size(); ++i) a.sums[i] -= b.sums[i];
    return a;
  }
  friend bool operator==(const Aims& a, const Aims& b) {
    std::int64_t different = 0;
    for (std::size_t i = 0; i < a.sums.size(); ++i) different |= a.sums[i] ^ b.sums[i];
    return different == 0;
  }
  friend std::strong_ordering operator<=>(const Aims& a, const Aims& b) {
    for (std::size_t i = 0; i < a.sums.size(); ++i)
      if (a.sums[i] != b.sums[i]) return a.sums[i] <=> b.sums[i];
    return std::strong_ordering::equal;
  }
};

// How far a valve is outside, in nanometres, and whether on the tight side, as one number that sums
// up to the one before the other: no engine has as many valves as one nanometre weighs, and the
// sum for 10 000 valves that are 100 mm off still fits.
constexpr std::int64_t nanometre_outside = 1 << 20;

// Shims of one series and size that are to be had alike: the owner's own (spares and those in the
// valves in play, which cost nothing), or one row of the sizes on sale.
struct ShimClass {
  std::size_t series = 0;  // its place among those of the question, by name
  Length size;
  bool owned = false;
  Money price;
  std::size_t spares = 0;
  std::size_t room = 0;  // shims of it, at most as many as there are valves in play
};

bool before(const ShimClass& a, const ShimClass& b) {
  return std::tie(a.series, a.size, b.owned, a.price) <
         std::tie(b.series, b.size, a.owned, b.price);
}

// A valve that the plan may open, and what it may get: classes[first] up to, not with,
// classes[last] bring it inside its limits or, where it may have the nearest, nearer to them.
struct Candidate {
  std::size_t valve = 0;
  std::size_t series = 0;
  std::size_t own = 0;  // the class of the shim that is in it
  std::size_t first = 0;
  std::size_t last = 0;
};

class Planner {
 public:
  explicit Planner(const PlanQuestion& question) : question_(question) {
    for (std::size_t i = 0; i < question.valves.size(); ++i)
      if (in_play(question.valves[i])) candidates_.push_back({.valve = i});
    list_series();
    for (Candidate& candidate : candidates_)
      candidate.series = series_of(valve_of(candidate).series);
    list_classes();
    for (Candidate& candidate : candidates_) find_reach(candidate);
  }

  Plan plan() const {
    std::vector<std::size_t> room;
    room.reserve(classes_.size());
    for (const ShimClass& c : classes_) room.push_back(c.room);
    // Own code, because LEMON and Boost.Graph take one number a cost, which 64 bits hold only up to
    // a thousand valves or so, and want every edge stored. Measured beside LEMON's network simplex
    // and cost scaling and Boost's successive shortest paths (tests/bench), this is the fastest at
    // every size from 16 valves to 10 000.
    const auto taken = cheapest_assignment<Aims>(
        candidates_.size(), room,
        [this](std::size_t row, auto&& offer) { offer_classes(candidates_[row], offer); });
    return written_out(taken.value());  // there is one: every valve may keep its shim
  }

 private:
  Length doubt_of(const Valve& valve) const {
    return question_.rules.use_doubt ? valve.doubt : Length();
  }

  bool in_play(const Valve& valve) const {
    return valve.clearance && valve.shim && !valve.locked &&
           (question_.rules.touch_good ||
            state_of(valve.clearance, valve.limits, doubt_of(valve)) != State::good);
  }

  const Valve& valve_of(const Candidate& candidate) const {
    return question_.valves[candidate.valve];
  }

  bool may_have_nearest(const Valve& valve) const {
    return valve.nearest || question_.rules.nearest;
  }

  void list_series() {
    const auto list = [this](std::string_view series) {
      if (series_.empty() || series_.back() != series) series_.push_back(series);
    };
    for (const Stock& stock : question_.stock) list(stock.series);
    for (const Candidate& candidate : candidates_) list(valve_of(candidate).series);
    std::sort(series_.begin(), series_.end());
    series_.erase(std::unique(series_.begin(), series_.end()), series_.end());
  }

  std::size_t series_of(std::string_view series) const {
    return static_cast<std::size_t>(std::lower_bound(series_.begin(), series_.end(), series) -
                                    series_.begin());
  }

  void list_classes() {
    const auto most = static_cast<std::int64_t>(candidates_.size());
    const auto at_most = [most](std::optional<std::int64_t> count, std::int64_t otherwise) {
      return static_cast<std::size_t>(std::clamp(count.value_or(otherwise), std::int64_t{0}, most));
    };
    std::map<std::pair<std::size_t, Length>, ShimClass> owned;
    const auto owned_class = [&owned](std::size_t series, Length size) -> ShimClass& {
      ShimClass& c = owned[{series, size}];
      c.series = series;
      c.size = size;
      c.owned = true;
      return c;
    };
    for (const Stock& stock : question_.stock) {
      const std::size_t series = series_of(stock.series);
      if (stock.kind == Stock::Kind::spare) {
        owned_class(series, stock.size).spares += at_most(stock.count, 1);
      } else {
        classes_.push_back({.series = series,
                            .size = stock.size,
                            .price = stock.price,
                            .room = at_most(stock.count, most)});
      }
    }
    for (const Candidate& candidate : candidates_)
      ++owned_class(candidate.series, *valve_of(candidate).shim).room;
    for (auto& [key, c] : owned) {
      c.room += c.spares;
      classes_.push_back(c);
    }
    std::stable_sort(classes_.begin(), classes_.end(), before);
    drop_dearer_ones();
  }

  // Of one series and size the cheapest that together serve all valves are enough.
  void drop_dearer_ones() {
    std::size_t kept = 0;
    std::size_t room = 0;  // of the kept ones of this series and size
    for (std::size_t i = 0; i < classes_.size(); ++i) {
      const ShimClass& c = classes_[i];
      const bool alike =
          kept > 0 && classes_[kept - 1].series == c.series && classes_[kept - 1].size == c.size;
      if (!alike) room = 0;
      if (alike && room >= candidates_.size()) continue;
      room += c.room;
      classes_[kept++] = c;
    }
    classes_.resize(kept);
  }

  // The first class of this series that is not thinner than `size`.
  std::size_t first_from(std::size_t series, Length size) const {
    const auto at = std::lower_bound(
        classes_.begin(), classes_.end(), std::tie(series, size),
        [](const ShimClass& c, const auto& wanted) { return std::tie(c.series, c.size) < wanted; });
    return static_cast<std::size_t>(at - classes_.begin());
  }

  void find_reach(Candidate& candidate) const {
    const Valve& valve = valve_of(candidate);
    candidate.own = first_from(candidate.series, *valve.shim);  // the owned class comes first
    auto range = serving_shims(*valve.clearance, *valve.shim, valve.limits);
    if (may_have_nearest(valve)) {
      const auto nearer = nearer_shims(*valve.clearance, *valve.shim, valve.limits);
      if (nearer) range = nearer;
    }
    if (range) {
      candidate.first = first_from(candidate.series, range->thinnest);
      candidate.last = first_from(candidate.series, range->thickest + Length::nanometres(1));
    }
  }

  Aims aims_for(const Valve& valve, Length size, bool opened, Money price) const {
    const Length after = clearance_after(*valve.clearance, *valve.shim, size);
    const Length band = doubt_of(valve);
    const bool tight = after < valve.limits.min;
    const bool outside = tight || after > valve.limits.max;
    const bool outside_band = after < valve.limits.min + band || after > valve.limits.max - band;
    const std::int64_t outside_by =
        !outside || !may_have_nearest(valve)
            ? 0
            : nanometre_outside *
                      (tight ? valve.limits.min - after : after - valve.limits.max).nanometres() +
                  tight;
    const Money money = opened ? price + question_.rules.work : Money();
    const std::int64_t off_aim = abs(after - valve.aim).nanometres();
    if (question_.rules.aim_first)
      return {{outside, outside_by, outside_band, off_aim, money.thousandths(), opened}};
    return {{outside, outside_by, outside_band, money.thousandths(), opened, off_aim}};
  }

  template <typename Offer>
  void offer_classes(const Candidate& candidate, Offer&& offer) const {
    const Valve& valve = valve_of(candidate);
    offer(candidate.own, aims_for(valve, *valve.shim, false, Money()));
    for (std::size_t i = candidate.first; i < candidate.last; ++i)
      if (classes_[i].size != *valve.shim)  // an equal shim for one's own would be work for nothing
        offer(i, aims_for(valve, classes_[i].size, true, classes_[i].price));
  }

  // From the class that each candidate takes to the shim itself. In each owned class the spares
  // go first, as they need no other valve to be open.
  Plan written_out(const std::vector<std::size_t>& taken) const {
    std::vector<std::size_t> spares_left;
    for (const ShimClass& c : classes_) spares_left.push_back(c.spares);
    std::vector<std::vector<std::size_t>> come_out(classes_.size());  // of which valves
    std::vector<std::size_t> moved(classes_.size());                  // the first so many of them
    std::vector<std::int64_t> bought(classes_.size());
    for (std::size_t i = 0; i < candidates_.size(); ++i)
      if (taken[i] != candidates_[i].own)
        come_out[candidates_[i].own].push_back(candidates_[i].valve);

    Plan plan;
    for (const Valve& valve : question_.valves) plan.lines.push_back(left_alone(valve));
    for (std::size_t i = 0; i < candidates_.size(); ++i) {
      const Valve& valve = valve_of(candidates_[i]);
      PlanLine& line = plan.lines[candidates_[i].valve];
      if (taken[i] == candidates_[i].own) {
        if (*line.margin < Length()) line.action = Action::none;
        continue;
      }
      const ShimClass& c = classes_[taken[i]];
      line = judged(valve, c.size);
      line.cost = question_.rules.work + c.price;
      if (!c.owned) {
        line.action = Action::buy;
        ++bought[taken[i]];
      } else if (spares_left[taken[i]] > 0) {
        line.action = Action::spare;
        --spares_left[taken[i]];
      } else {
        line.action = Action::move;
        line.from = come_out[taken[i]][moved[taken[i]]++];
      }
    }
    for (std::size_t i = 0; i < classes_.size(); ++i) {
      const ShimClass& c = classes_[i];
      if (come_out[i].size() > moved[i])
        plan.surplus.push_back({std::string(series_[c.series]), c.size,
                                static_cast<std::int64_t>(come_out[i].size() - moved[i])});
      if (bought[i] == 0) continue;
      if (!plan.order.empty() && plan.order.back().series == series_[c.series] &&
          plan.order.back().size == c.size && plan.order.back().price == c.price)
        plan.order.back().count += bought[i];
      else
        plan.order.push_back({std::string(series_[c.series]), c.size, bought[i], c.price});
    }
    return plan;
  }

  PlanLine judged(const Valve& valve, Length size) const {
    PlanLine line;
    line.size = size;
    line.after = clearance_after(*valve.clearance, *valve.shim, size);
    line.state = state_of(line.after, valve.limits, doubt_of(valve));
    line.margin = margin_of(*line.after, valve.limits);
    return line;
  }

  PlanLine left_alone(const Valve& valve) const {
    PlanLine line;
    line.size = valve.shim;
    if (!valve.clearance || !valve.shim) return line;
    line = judged(valve, *valve.shim);
    line.action = Action::keep;
    return line;
  }

  const PlanQuestion& question_;
  std::vector<std::string_view> series_;  // by name
  std::vector<Candidate> candidates_;     // in the order of the valves
  std::vector<ShimClass> classes_;        // by series, size; owned before sale; cheapest first
};

}  // namespace

std::string_view word_for(Action action) {
  switch (action) {
    case Action::keep:
      return "keep";
    case Action::move:
      return "move";
    case Action::spare:
      return "spare";
    case Action::buy:
      return "buy";
    case Action::none:
      return "none";
    case Action::unread:
      return "unread";
  }
  return "unread";
}

Plan best_plan(const PlanQuestion& question) { return Planner(question).plan(); }

}  // namespace shimwright
