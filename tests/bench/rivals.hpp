// SPDX-License-Identifier: MPL-2.0
//
// The plan's assignment as general libraries would solve it: a flow network with one number a cost.
// Plain C++17, because LEMON's headers do not compile as C++20.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace shimwright::bench {

using Score = std::array<std::int64_t, 7>;

struct Edge {
  int valve = 0;
  int place = 0;
  Score cost{};
};

struct Network {
  int valves = 0;
  std::vector<int> room;  // of each place
  std::vector<Edge> edges;
};

// How many bits one number needs to hold any total of the aims in their order, each aim
// counted in its greatest common unit.
double bits_needed(const Network& network);

// The edge taken by each valve. `wide`: 128-bit costs, for where 64 bits overflow.
std::vector<std::size_t> by_network_simplex(const Network& network, bool wide);
std::vector<std::size_t> by_cost_scaling(const Network& network, bool wide);
std::vector<std::size_t> by_boost(const Network& network, bool wide);

}  // namespace shimwright::bench
