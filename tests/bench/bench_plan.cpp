// SPDX-License-Identifier: MPL-2.0
//
// How long the plan takes, from 16 valves to 10 000, beside the same question put to LEMON and
// Boost.Graph, and that all find the same optimum. Ours is timed from the question to the finished
// plan; the others from a ready list of edges to the edges chosen, which is less. Prints a table.
//   bench_plan [most valves]
#include <cstdio>
#include <cstdlib>
#include <map>
#include <utility>

#include "../core/plan_audit.hpp"
#include "../core/plan_questions.hpp"
#include "core/plan/plan.hpp"
#include "rivals.hpp"
#include "timing.hpp"

namespace shimwright::bench {
namespace {

// Every valve in play joined to every class it may have, with nothing clever.
Network network_of(const PlanQuestion& question, Score& fixed) {
  Network network;
  std::vector<const Valve*> playing;
  for (const Valve& valve : question.valves) {
    if (audit::may_be_opened(question, valve))
      playing.push_back(&valve);
    else if (audit::reads(valve))
      audit::operator+=(fixed, audit::score_of(question, valve, *valve.shim, false, Money()));
  }
  network.valves = static_cast<int>(playing.size());
  struct Place {
    std::string series;
    Length size;
    Money price;
  };
  std::vector<Place> places;
  std::map<std::pair<std::string, Length>, int> owned;
  const auto own = [&](const std::string& series, Length size) {
    const auto [at, fresh] = owned.try_emplace({series, size}, static_cast<int>(places.size()));
    if (fresh) {
      places.push_back({series, size, Money()});
      network.room.push_back(0);
    }
    return at->second;
  };
  for (const Valve* valve : playing)
    ++network.room[static_cast<std::size_t>(own(valve->series, *valve->shim))];
  for (const Stock& stock : question.stock) {
    if (stock.kind == Stock::Kind::spare) {
      network.room[static_cast<std::size_t>(own(stock.series, stock.size))] +=
          static_cast<int>(stock.count.value_or(1));
    } else {
      places.push_back({stock.series, stock.size, stock.price});
      network.room.push_back(static_cast<int>(stock.count.value_or(network.valves)));
    }
  }
  for (int v = 0; v < network.valves; ++v) {
    const Valve& valve = *playing[static_cast<std::size_t>(v)];
    network.edges.push_back({v, own(valve.series, *valve.shim),
                             audit::score_of(question, valve, *valve.shim, false, Money())});
    for (std::size_t p = 0; p < places.size(); ++p) {
      if (places[p].series != valve.series || places[p].size == *valve.shim ||
          !audit::may_be_fitted(question, valve, places[p].size))
        continue;
      network.edges.push_back(
          {v, static_cast<int>(p),
           audit::score_of(question, valve, places[p].size, true, places[p].price)});
    }
  }
  return network;
}

struct Rival {
  std::vector<std::size_t> (*solve)(const Network&, bool);
  std::size_t edges_at_most;  // beyond, it did not finish in minutes
};

const Rival rivals[] = {
    {by_network_simplex, 500'000}, {by_cost_scaling, 50'000}, {by_boost, 50'000}};

// False where someone found a better plan than another.
bool compare(const char* kind, const PlanQuestion& question) {
  Plan plan;
  const double ours = timed([&] { plan = best_plan(question); });
  const audit::Report report = audit::look_over(question, plan);
  bool same = report.faults.empty();
  std::printf("%-9s %6zu", kind, question.valves.size());
  // Too many edges to list them all.
  if (question.valves.size() * question.stock.size() > 5'000'000 && question.stock.size() > 5'000) {
    std::printf(" %7s %8s %5s %10.3f  %s\n", "-", "-", "-", ours, same ? "sound" : "NOT SOUND");
    return same;
  }
  Score fixed{};
  const Network network = network_of(question, fixed);
  const double bits = bits_needed(network);
  const bool wide = bits > 48;  // LEMON multiplies the largest cost by the nodes
  std::printf(" %7d %8zu %5.0f %10.3f", network.valves, network.edges.size(), bits, ours);
  for (const Rival& rival : rivals) {
    if (network.edges.size() > rival.edges_at_most) {
      std::printf(" %11s %7s", "-", "-");
      continue;
    }
    std::vector<std::size_t> taken;
    const double theirs = timed([&] { taken = rival.solve(network, wide); });
    Score score = fixed;
    for (const std::size_t edge : taken) audit::operator+=(score, network.edges[edge].cost);
    same = same && score == report.score;
    std::printf(" %11.3f %7.1f", theirs, theirs / ours);
    std::fflush(stdout);
  }
  std::printf("  %s\n", same ? "same optimum" : "NOT THE SAME");
  return same;
}

}  // namespace
}  // namespace shimwright::bench

int main(int argc, char** argv) {
  using namespace shimwright;
  const std::size_t most = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 10'000;
  std::printf("Processor time in ms, middle of several runs; 'times' is theirs over ours.\n");
  std::printf("%-9s %6s %7s %8s %5s %10s %11s %7s %11s %7s %11s %7s\n", "question", "valves",
              "in play", "edges", "bits", "ours", "LEMON simpl", "times", "LEMON scal", "times",
              "Boost SSP", "times");
  bool same = true;
  for (const std::size_t valves : {16, 48, 200, 1000, 10'000})
    if (valves <= most) same = bench::compare("service", questions::service(valves, 1)) && same;
  for (const std::size_t valves : {16, 48, 200, 1000, 10'000})
    if (valves <= most) same = bench::compare("scattered", questions::scattered(valves, 1)) && same;
  for (const std::size_t valves : {16, 48, 200})
    if (valves <= most) same = bench::compare("nearest", questions::narrow(valves, 1)) && same;
  // The worst that a pasted drawer may ask.
  struct Worst {
    const char* kind;
    PlanQuestion question;
  };
  if (most >= 1000) {
    const Worst worst[] = {{"alike", questions::alike(300, 1000, true)},
                           {"unlike", questions::unlike(300, 1000, true, 1)},
                           {"alike", questions::alike(400, 10'000, false)},
                           {"alike", questions::alike(400, 10'000, true)},
                           {"unlike", questions::unlike(400, 10'000, true, 1)},
                           {"alike", questions::alike(1000, 20'000, true)},
                           {"unlike", questions::unlike(1000, 20'000, true, 1)}};
    for (const auto& [kind, question] : worst) same = bench::compare(kind, question) && same;
  } else {
    same = bench::compare("alike", questions::alike(30, 100, true)) && same;
  }
  return same ? EXIT_SUCCESS : EXIT_FAILURE;
}
