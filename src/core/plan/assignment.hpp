// SPDX-License-Identifier: MPL-2.0
//
// Assigning every row a place, all together at least cost, where a place may take several rows
// and not every row may go everywhere. Rows are the valves, places the sizes of shims to be had.
//
//   const std::vector<std::size_t> room{1, 2};  // two places
//   const auto places = cheapest_assignment<int>(3, room, [](std::size_t row, auto&& offer) {
//     offer(0, 5);                              // row may go to place 0 at cost 5
//     if (row != 1) offer(1, 7);
//   });                                         // {1, 0, 1}
//
// Method: successive shortest paths with prices kept on the places (Jonker & Volgenant 1987,
// Computing 38:325-340, for places of one row each; Ahuja, Magnanti & Orlin 1993, Network Flows,
// 9.7 and 12.4). Rows come in one by one; each looks by Dijkstra's search, over costs less prices,
// for the cheapest chain of rows moving on that ends in a free place.
//
// Bound: a row needs no more than its cheapest places that together hold all n rows, so at most n.
// Proof: take a best assignment with as few rows as can be at places that are not among those of
// their own list. Were there such a row, the other n - 1 rows could not fill the n or more rooms of
// its list, so it could move to a free room there. That costs no more, as the list holds its
// cheapest places, and no other row moves: one row fewer, against the choice of the assignment.
#pragma once

#include <algorithm>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace shimwright {

template <typename Cost>
struct PlaceChoice {
  Cost cost;
  std::uint32_t place;
  std::uint32_t order;  // in which it was offered

  friend bool operator<(const PlaceChoice& a, const PlaceChoice& b) {
    const auto by_cost = a.cost <=> b.cost;
    return by_cost != 0 ? by_cost < 0 : a.order < b.order;
  }
};

// Of each row the choices that it can need (see above), cheapest first; between equal ones the
// first offered. Time grows with what is offered, space with the rows times the choices that a row
// needs.
template <typename Cost>
class NeededChoices {
 public:
  template <typename Choices>
  NeededChoices(std::size_t rows, std::span<const std::size_t> room, const Choices& choices)
      : rows_(rows), room_(room), begin_{0} {
    begin_.reserve(rows + 1);
    all_.reserve(usual_choices * rows);
    for (std::size_t row = 0; row < rows; ++row) {
      take_offers(row, choices);
      keep_needed();
      begin_.push_back(all_.size());
    }
  }

  std::span<const PlaceChoice<Cost>> of(std::size_t row) const {
    return std::span(all_).subspan(begin_[row], begin_[row + 1] - begin_[row]);
  }

 private:
  static constexpr std::size_t usual_choices = 8;  // of a row, about

  auto first() { return all_.begin() + static_cast<std::ptrdiff_t>(begin_.back()); }

  template <typename Choices>
  void take_offers(std::size_t row, const Choices& choices) {
    certain_.reset();
    std::uint32_t order = 0;
    choices(row, [&](std::size_t place, const Cost& cost) {
      if (room_[place] == 0 || (certain_ && cost >= *certain_)) return;
      if (room_[place] >= rows_) certain_ = cost;
      all_.push_back({cost, static_cast<std::uint32_t>(place), order++});
    });
  }

  void keep_needed() {
    if (certain_)
      all_.erase(std::remove_if(first(), all_.end(),
                                [this](const auto& choice) { return choice.cost > *certain_; }),
                 all_.end());
    if (static_cast<std::size_t>(all_.end() - first()) > rows_) {
      const auto end = first() + static_cast<std::ptrdiff_t>(rows_);
      std::nth_element(first(), end, all_.end());
      all_.erase(end, all_.end());
    }
    std::sort(first(), all_.end());
    std::size_t held = 0;
    const auto enough = std::find_if(first(), all_.end(), [&](const auto& choice) {
      held += std::min(room_[choice.place], rows_);
      return held >= rows_;
    });
    if (enough != all_.end()) all_.erase(enough + 1, all_.end());
  }

  std::size_t rows_;
  std::span<const std::size_t> room_;
  std::vector<PlaceChoice<Cost>> all_;
  std::vector<std::size_t> begin_;  // of each row, and the end
  std::optional<Cost> certain_;     // the least cost of a place that holds all rows by itself
};

// The place of each row, at the least sum of costs; empty where not all rows can be placed.
// `Cost` is any ordered group: Cost{} is zero, with +, - and <=> that sums keep; costs may be
// negative, and sums of `rows` costs must fit. `choices(row, offer)` calls offer(place, cost) for
// each place open to the row; it is asked once for each row. The same question gets the same
// answer; between equal places for one row the first offered is taken. Time grows with the choices
// offered, and beyond that at worst with the cube of the rows; space with the rows times the
// choices that a row needs.
template <typename Cost, typename Choices>
std::optional<std::vector<std::size_t>> cheapest_assignment(std::size_t rows,
                                                            std::span<const std::size_t> room,
                                                            const Choices& choices) {
  struct Place {
    std::vector<std::size_t> taken_by;
    Cost price{};           // never above zero; zero while there is room left
    Cost distance{};        // in the present search, from the new row
    std::size_t reached{};  // the last search that came here
    std::size_t left{};     // the last search that went on from here
    std::size_t via{};      // the row that would move here
    Cost via_cost{};        // what it would cost here
  };
  struct Step {
    Cost distance;
    std::size_t place;
  };
  // For std's heaps, which keep the greatest on top: the nearest place is wanted there.
  const auto farther = [](const Step& a, const Step& b) {
    const auto by_distance = a.distance <=> b.distance;
    return by_distance != 0 ? by_distance > 0 : a.place > b.place;
  };
  constexpr auto nowhere = static_cast<std::size_t>(-1);

  const NeededChoices<Cost> needed(rows, room, choices);
  std::vector<Place> places(room.size());
  std::vector<std::size_t> place_of(rows, nowhere);
  std::vector<Cost> cost_of(rows);
  std::vector<Step> heap;
  std::vector<std::size_t> passed;

  for (std::size_t row = 0; row < rows; ++row) {
    const std::size_t search = row + 1;
    std::optional<Cost> bound;  // distance of the nearest free place seen
    heap.clear();
    passed.clear();
    const auto look_from = [&](std::size_t mover, const Cost& start) {
      for (const auto& [cost, to, order] : needed.of(mover)) {
        // Prices only add to a distance, and all further choices cost as much or more.
        const Cost least = start + cost;
        if (bound && least >= *bound) return;
        Place& place = places[to];
        if (place.left == search) continue;
        const Cost distance = least - place.price;
        if (bound && distance >= *bound) continue;
        if (place.reached == search && distance >= place.distance) continue;
        if (place.taken_by.size() < room[to]) bound = distance;
        place.reached = search;
        place.distance = distance;
        place.via = mover;
        place.via_cost = cost;
        heap.push_back({distance, to});
        std::push_heap(heap.begin(), heap.end(), farther);
      }
    };

    look_from(row, Cost{});
    std::size_t end = nowhere;
    while (!heap.empty()) {
      const auto [distance, at] = heap.front();
      std::pop_heap(heap.begin(), heap.end(), farther);
      heap.pop_back();
      Place& place = places[at];
      if (place.left == search || distance != place.distance) continue;  // since found nearer
      if (place.taken_by.size() < room[at]) {
        end = at;
        break;
      }
      place.left = search;
      passed.push_back(at);
      for (const std::size_t mover : place.taken_by)
        look_from(mover, distance + (place.price - cost_of[mover]));
    }
    if (end == nowhere) return std::nullopt;

    // Prices fall by what each passed place lies nearer than the end, so that on every chain that
    // may still move the costs less prices stay at or above zero.
    for (const std::size_t at : passed)
      places[at].price = places[at].price + (places[at].distance - places[end].distance);
    for (std::size_t to = end; to != nowhere;) {
      const std::size_t mover = places[to].via;
      const std::size_t before = place_of[mover];
      places[to].taken_by.push_back(mover);
      place_of[mover] = to;
      cost_of[mover] = places[to].via_cost;
      if (before != nowhere) std::erase(places[before].taken_by, mover);
      to = before;
    }
  }
  return place_of;
}

}  // namespace shimwright
