// SPDX-License-Identifier: MPL-2.0
#include "rivals.hpp"

#include <lemon/cost_scaling.h>
#include <lemon/network_simplex.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/successive_shortest_path_nonnegative_weights.hpp>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <string>

namespace shimwright::bench {
namespace {

__extension__ typedef __int128 Wide;

// Aims in their greatest common unit, and the most that all valves together can make of each.
struct Ranges {
  Score unit{};
  Score most{};
};

Ranges ranges_of(const Network& network) {
  Ranges ranges;
  std::vector<Score> worst(static_cast<std::size_t>(network.valves));
  for (const Edge& edge : network.edges)
    for (std::size_t i = 0; i < Score().size(); ++i) {
      ranges.unit[i] = std::gcd(ranges.unit[i], edge.cost[i]);
      auto& w = worst[static_cast<std::size_t>(edge.valve)][i];
      w = std::max(w, edge.cost[i]);
    }
  for (std::size_t i = 0; i < Score().size(); ++i) {
    ranges.unit[i] = std::max<std::int64_t>(ranges.unit[i], 1);
    for (const Score& w : worst) ranges.most[i] += w[i] / ranges.unit[i];
  }
  return ranges;
}

template <typename Number>
std::vector<Number> single_costs(const Network& network) {
  const Ranges ranges = ranges_of(network);
  std::vector<Number> costs;
  costs.reserve(network.edges.size());
  for (const Edge& edge : network.edges) {
    Number cost = 0;
    for (std::size_t i = 0; i < Score().size(); ++i)
      cost = cost * static_cast<Number>(ranges.most[i] + 1) +
             static_cast<Number>(edge.cost[i] / ranges.unit[i]);
    costs.push_back(cost);
  }
  return costs;
}

template <typename Number>
struct WideScaling {
  using Digraph = lemon::SmartDigraph;
  using Value = int;
  using Cost = Number;
  using LargeCost = Wide;
  using LargeCostMap = lemon::SmartDigraph::ArcMap<Wide>;
  using Path = lemon::Path<Digraph>;
};

template <typename Solver, typename Number>
std::vector<std::size_t> by_lemon(const Network& network) {
  lemon::SmartDigraph graph;
  const auto places = static_cast<int>(network.room.size());
  graph.reserveNode(network.valves + places + 1);
  graph.reserveArc(static_cast<int>(network.edges.size()) + places);
  for (int i = 0; i < network.valves + places + 1; ++i) graph.addNode();
  const auto sink = graph.nodeFromId(network.valves + places);
  lemon::SmartDigraph::NodeMap<int> supply(graph, 0);
  lemon::SmartDigraph::ArcMap<int> upper(graph);
  lemon::SmartDigraph::ArcMap<Number> cost(graph, 0);
  const std::vector<Number> costs = single_costs<Number>(network);
  for (std::size_t i = 0; i < network.edges.size(); ++i) {
    const auto arc = graph.addArc(graph.nodeFromId(network.edges[i].valve),
                                  graph.nodeFromId(network.valves + network.edges[i].place));
    cost[arc] = costs[i];
    upper[arc] = 1;
  }
  for (int i = 0; i < places; ++i) {
    const auto arc = graph.addArc(graph.nodeFromId(network.valves + i), sink);
    upper[arc] = network.room[static_cast<std::size_t>(i)];
  }
  for (int i = 0; i < network.valves; ++i) supply[graph.nodeFromId(i)] = 1;
  supply[sink] = -network.valves;
  Solver solver(graph);
  solver.upperMap(upper).costMap(cost).supplyMap(supply);
  if (const auto found = solver.run(); found != Solver::OPTIMAL)
    throw std::runtime_error("LEMON found no optimum: " + std::to_string(found));
  std::vector<std::size_t> taken(static_cast<std::size_t>(network.valves));
  for (std::size_t i = 0; i < network.edges.size(); ++i)
    if (solver.flow(graph.arcFromId(static_cast<int>(i))) > 0)
      taken[static_cast<std::size_t>(network.edges[i].valve)] = i;
  return taken;
}

template <typename Number>
std::vector<std::size_t> with_boost(const Network& network) {
  using Traits = boost::adjacency_list_traits<boost::vecS, boost::vecS, boost::directedS>;
  struct Arc {
    int capacity = 0;
    int residual = 0;
    Number weight = 0;
    Traits::edge_descriptor reverse;
  };
  using Graph =
      boost::adjacency_list<boost::vecS, boost::vecS, boost::directedS, boost::no_property, Arc>;
  const auto valves = static_cast<std::size_t>(network.valves);
  const std::size_t source = valves + network.room.size();
  const std::size_t sink = source + 1;
  Graph graph(sink + 1);
  const auto connect = [&graph](std::size_t from, std::size_t to, int capacity, Number weight) {
    const auto there = boost::add_edge(from, to, graph).first;
    const auto back = boost::add_edge(to, from, graph).first;
    graph[there] = Arc{capacity, 0, weight, back};
    graph[back] = Arc{0, 0, -weight, there};
    return there;
  };
  const std::vector<Number> costs = single_costs<Number>(network);
  std::vector<Traits::edge_descriptor> arcs;
  for (std::size_t i = 0; i < network.edges.size(); ++i)
    arcs.push_back(connect(static_cast<std::size_t>(network.edges[i].valve),
                           valves + static_cast<std::size_t>(network.edges[i].place), 1, costs[i]));
  for (std::size_t i = 0; i < valves; ++i) connect(source, i, 1, 0);
  for (std::size_t i = 0; i < network.room.size(); ++i)
    connect(valves + i, sink, network.room[i], 0);
  boost::successive_shortest_path_nonnegative_weights(
      graph, source, sink,
      boost::capacity_map(boost::get(&Arc::capacity, graph))
          .residual_capacity_map(boost::get(&Arc::residual, graph))
          .reverse_edge_map(boost::get(&Arc::reverse, graph))
          .weight_map(boost::get(&Arc::weight, graph)));
  std::vector<std::size_t> taken(valves);
  for (std::size_t i = 0; i < arcs.size(); ++i)
    if (graph[arcs[i]].residual == 0) taken[static_cast<std::size_t>(network.edges[i].valve)] = i;
  return taken;
}

}  // namespace

double bits_needed(const Network& network) {
  double bits = 0;
  for (const std::int64_t most : ranges_of(network).most)
    bits += std::log2(static_cast<double>(most) + 1);
  return bits;
}

std::vector<std::size_t> by_network_simplex(const Network& network, bool wide) {
  using Graph = lemon::SmartDigraph;
  return wide ? by_lemon<lemon::NetworkSimplex<Graph, int, Wide>, Wide>(network)
              : by_lemon<lemon::NetworkSimplex<Graph, int, std::int64_t>, std::int64_t>(network);
}

std::vector<std::size_t> by_cost_scaling(const Network& network, bool wide) {
  using Graph = lemon::SmartDigraph;
  return wide ? by_lemon<lemon::CostScaling<Graph, int, Wide, WideScaling<Wide>>, Wide>(network)
              : by_lemon<lemon::CostScaling<Graph, int, std::int64_t, WideScaling<std::int64_t>>,
                         std::int64_t>(network);
}

std::vector<std::size_t> by_boost(const Network& network, bool wide) {
  return wide ? with_boost<Wide>(network) : with_boost<std::int64_t>(network);
}

}  // namespace shimwright::bench
