// SPDX-License-Identifier: MPL-2.0
#include "core/plan/assignment.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

#include "plan_questions.hpp"

namespace shimwright {
namespace {

constexpr int forbidden = std::numeric_limits<int>::max();
using Matrix = std::vector<std::vector<int>>;
using Places = std::vector<std::size_t>;

std::optional<Places> assign(const Matrix& costs, const Places& room) {
  return cheapest_assignment<int>(costs.size(), room, [&](std::size_t row, auto&& offer) {
    for (std::size_t place = 0; place < costs[row].size(); ++place)
      if (costs[row][place] != forbidden) offer(place, costs[row][place]);
  });
}

// One row a place.
std::optional<Places> assign(const Matrix& costs) {
  return assign(costs, Places(costs.empty() ? 0 : costs.front().size(), 1));
}

std::vector<int> costs_of(const Matrix& costs, const Places& places) {
  std::vector<int> each;
  for (std::size_t row = 0; row < places.size(); ++row) each.push_back(costs[row][places[row]]);
  return each;
}

int sum_of(const Matrix& costs, const Places& places) {
  const std::vector<int> each = costs_of(costs, places);
  return std::accumulate(each.begin(), each.end(), 0);
}

TEST(Assignment, agrees_with_published_rows) {
  // scipy 1.10.1, sparse/csgraph/tests/test_matching.py: the costs picked in each row.
  struct Case {
    Matrix costs;
    std::vector<int> picked;
  };
  const Case cases[] = {
      {{{400, 150, 400}, {400, 450, 600}, {300, 225, 300}}, {150, 400, 300}},
      {{{400, 150, 400, 1}, {400, 450, 600, 2}, {300, 225, 300, 3}}, {150, 2, 300}},
      {{{10, 10, 8}, {9, 8, 1}, {9, 7, 4}}, {10, 1, 7}},
      {{{10, 10, 8, 11}, {9, 8, 1, 1}, {9, 7, 4, 10}}, {10, 1, 4}},
      {{{10, forbidden, forbidden}, {forbidden, forbidden, 1}, {forbidden, 7, forbidden}},
       {10, 1, 7}},
  };
  for (const Case& c : cases) {
    const auto places = assign(c.costs);
    ASSERT_TRUE(places);
    EXPECT_EQ(costs_of(c.costs, *places), c.picked);
  }
}

TEST(Assignment, finds_27_for_the_rating_matrix_of_kuhn) {
  // After Kuhn 1955, Naval Research Logistics Quarterly 2:83-97. The paper was not read: that the
  // matrix is his is common practice, no source; that 27 is the best, the loop below shows. Ratings
  // are to be greatest, so their negatives least.
  const Matrix rating{{8, 7, 9, 9}, {5, 2, 7, 8}, {6, 1, 4, 9}, {2, 3, 2, 6}};
  Matrix costs = rating;
  for (auto& row : costs)
    for (int& cost : row) cost = -cost;
  const auto places = assign(costs);
  ASSERT_TRUE(places);
  EXPECT_EQ(sum_of(rating, *places), 27);
  int best = 0;
  std::array<std::size_t, 4> each{0, 1, 2, 3};
  do {
    int sum = 0;
    for (std::size_t i = 0; i < each.size(); ++i) sum += rating[i][each[i]];
    best = std::max(best, sum);
  } while (std::ranges::next_permutation(each).found);
  EXPECT_EQ(best, 27);
}

TEST(Assignment, finds_14_for_the_flow_sample_of_dimacs) {
  // DIMACS minimum-cost flow format note, 1991: 4 units from node 1 to node 4 cost 14. As an
  // assignment each unit of an arc's capacity is a row: it goes to the arc's head at the arc's cost
  // (it flows) or to its tail for nothing (it does not); a node has room for the capacity that
  // leaves it less what is supplied there (common practice, no source).
  struct Arc {
    std::size_t from, to;
    int capacity, cost;
  };
  const Arc arcs[] = {{0, 1, 4, 2}, {0, 2, 2, 2}, {1, 2, 2, 1}, {1, 3, 3, 3}, {2, 3, 5, 1}};
  const int supply[] = {4, 0, 0, -4};
  Matrix costs;
  std::vector<int> node_room{-supply[0], -supply[1], -supply[2], -supply[3]};
  for (const Arc& arc : arcs) {
    node_room[arc.from] += arc.capacity;
    for (int unit = 0; unit < arc.capacity; ++unit) {
      costs.emplace_back(4, forbidden);
      costs.back()[arc.from] = 0;
      costs.back()[arc.to] = arc.cost;
    }
  }
  const auto places = assign(costs, Places(node_room.begin(), node_room.end()));
  ASSERT_TRUE(places);
  EXPECT_EQ(sum_of(costs, *places), 14);
}

TEST(Assignment, is_empty_where_not_all_rows_can_be_placed) {
  EXPECT_FALSE(assign({{1}, {1}}));
  EXPECT_FALSE(assign({{forbidden, forbidden}}));
  EXPECT_FALSE(assign({{1, forbidden}, {1, forbidden}}));
  EXPECT_FALSE(assign({{1, 2}}, {0, 0}));
}

TEST(Assignment, of_no_rows_is_no_places) { EXPECT_EQ(assign(Matrix{}), Places{}); }

TEST(Assignment, fills_a_place_no_further_than_its_room) {
  EXPECT_EQ(assign({{5, 7}, {5, forbidden}, {5, 7}}, {1, 2}), (Places{1, 0, 1}));
}

TEST(Assignment, between_equal_places_takes_the_first_offered) {
  EXPECT_EQ(assign({{3, 3, 3}}), Places{0});
  using Offers = std::vector<std::vector<std::pair<std::size_t, int>>>;
  const auto offered = [](const Offers& offers, const Places& room) {
    return cheapest_assignment<int>(offers.size(), room, [&](std::size_t row, auto&& offer) {
      for (const auto& [place, cost] : offers[row]) offer(place, cost);
    });
  };
  EXPECT_EQ(offered({{{2, 3}, {0, 3}, {1, 3}}}, {1, 1, 1}), Places{2});
  EXPECT_EQ(offered({{{1, 4}, {2, 3}, {0, 3}}}, {5, 5, 5}), Places{2}) << "each holds all rows";
  EXPECT_EQ(offered({{{0, 3}, {2, 3}, {1, 3}}, {{0, 3}}}, {1, 1, 1}), (Places{2, 0}))
      << "the row that moves on likewise";
}

// The bound that keeps a search short: choices as many as hold all rows, the cheapest.
TEST(Assignment, needs_of_each_row_no_more_than_its_cheapest_places_that_hold_all_rows) {
  const auto needed = [](std::size_t rows, const Places& room, const std::vector<int>& costs) {
    const NeededChoices<int> choices(rows, room, [&costs](std::size_t, auto&& offer) {
      for (std::size_t i = 0; i < costs.size(); ++i) offer(i, costs[i]);
    });
    Places places;
    for (const auto& choice : choices.of(rows - 1)) places.push_back(choice.place);
    return places;
  };
  EXPECT_EQ(needed(2, {1, 1, 1, 1}, {4, 2, 3, 1}), (Places{3, 1}));
  EXPECT_EQ(needed(3, {1, 1, 1, 1}, {4, 2, 3, 1}), (Places{3, 1, 2}));
  EXPECT_EQ(needed(9, {1, 1, 1, 1}, {4, 2, 3, 1}), (Places{3, 1, 2, 0}));
  EXPECT_EQ(needed(3, {9, 1, 2, 1}, {4, 2, 3, 1}), (Places{3, 1, 2})) << "1 + 1 + 2 hold three";
  EXPECT_EQ(needed(3, {9, 1, 9, 1}, {4, 2, 3, 1}), (Places{3, 1, 2}));
  EXPECT_EQ(needed(3, {9, 1, 1, 3}, {4, 2, 3, 1}), Places{3}) << "one place holds all";
  EXPECT_EQ(needed(2, {1, 0, 1, 0}, {4, 2, 3, 1}), (Places{2, 0})) << "no room, no choice";
  EXPECT_EQ(needed(2, {1, 1, 1}, {5, 5, 5}), (Places{0, 1})) << "of equals the first offered";
}

// The least sum over all assignments, by trying them all.
std::optional<int> least_sum(const Matrix& costs, Places& room, std::size_t row = 0) {
  if (row == costs.size()) return 0;
  std::optional<int> least;
  for (std::size_t place = 0; place < room.size(); ++place) {
    if (costs[row][place] == forbidden || room[place] == 0) continue;
    --room[place];
    if (const auto rest = least_sum(costs, room, row + 1))
      least = std::min(least.value_or(forbidden), costs[row][place] + *rest);
    ++room[place];
  }
  return least;
}

TEST(Assignment, none_is_cheaper_among_all_small_ones) {
  int impossible = 0;
  for (std::uint64_t seed = 1; seed <= 20'000; ++seed) {
    questions::Dice dice(seed);
    const auto rows = static_cast<std::size_t>(dice.between(1, 6));
    Places room(static_cast<std::size_t>(dice.between(1, 5)));
    for (std::size_t& r : room) r = static_cast<std::size_t>(dice.between(0, 4));
    Matrix costs(rows, std::vector<int>(room.size(), forbidden));
    for (auto& row : costs)
      for (int& cost : row)
        if (!dice.one_in(3)) cost = static_cast<int>(dice.between(-9, 9));
    const auto least = least_sum(costs, room);
    const auto places = assign(costs, room);
    ASSERT_EQ(places.has_value(), least.has_value()) << "seed " << seed;
    if (!places) {
      ++impossible;
      continue;
    }
    ASSERT_EQ(sum_of(costs, *places), *least) << "seed " << seed;
    Places used(room.size());
    for (std::size_t row = 0; row < rows; ++row) {
      ASSERT_NE(costs[row][(*places)[row]], forbidden);
      ++used[(*places)[row]];
    }
    for (std::size_t place = 0; place < room.size(); ++place)
      ASSERT_LE(used[place], room[place]) << "seed " << seed;
  }
  EXPECT_GT(impossible, 1000);
  EXPECT_LT(impossible, 15'000);
}

}  // namespace
}  // namespace shimwright
