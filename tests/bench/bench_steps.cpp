// SPDX-License-Identifier: MPL-2.0
//
// How long the steps of fitting take, from 4 valves to 48, beside the greedy way (as safe, but with
// more turns of the crank), and on the smallest beside a search through every way there is; then
// the worst questions known. Prints a table; fails where greedy has fewer turns, where every way
// has a better one, or where one of the worst takes more memory than it may.
//   bench_steps [most valves]
#include <sys/resource.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

#include "../core/steps_questions.hpp"
#include "../core/steps_search.hpp"
#include "core/crank/crank.hpp"
#include "core/fitting/greedy.hpp"
#include "timing.hpp"

namespace shimwright::bench {
namespace {

constexpr std::size_t questions_a_row = 100;
constexpr std::size_t valves_for_every_way = 4;

// Four valves a cylinder, even firing: at which of the least stops each of them is open.
std::vector<OpenAt> open_at_stops(std::size_t valves) {
  std::string order = "1";
  for (std::size_t i = 2; i <= valves / 4; ++i) order += "-" + std::to_string(i);
  const auto stops = crank_stops(Firing::in_order(order));
  std::vector<OpenAt> open;
  for (std::size_t s = 0; s < stops.size(); ++s)
    for (const auto& [place, clear] : stops[s].reachable)
      for (std::size_t i = 0; i < 4; ++i)
        if ((i % 2 == 0) == (place.side == Side::inlet))
          open.push_back(
              {4 * (static_cast<std::size_t>(place.cylinder) - 1) + i, static_cast<int>(s + 1)});
  return open;
}

FittingQuestion at_stops(const PlanQuestion& head) {
  return fitting_of(head, best_plan(head), open_at_stops(head.valves.size()));
}

// A head as it might be measured, its best plan.
FittingQuestion service(std::size_t valves, std::uint64_t seed) {
  return at_stops(questions::service(valves, seed));
}

// Every shim of a size of its own: most of them change places.
FittingQuestion scattered(std::size_t valves, std::uint64_t seed) {
  return at_stops(questions::scattered(valves, seed));
}

// What no plan would do: shims go anywhere, from six stops to any other, and spares are few.
FittingQuestion adverse(std::size_t valves, std::uint64_t seed) {
  const questions::FittingShape shape{
      .valves = static_cast<std::int64_t>(valves), .stops = 6, .spares = 3, .sizes = 20};
  for (;; seed += 1'000'000)
    if (FittingQuestion question = questions::shuffled(shape, seed);
        4 * question.valves.size() >= 3 * valves)
      return question;
}

struct Sums {
  std::vector<double> ours, greedy, every_way;
  std::size_t turns = 0, turns_greedy = 0, proved = 0;
  bool sound = true;
};

double once(const std::function<void()>& run) {
  const double start = read_ms(CLOCK_THREAD_CPUTIME_ID);
  run();
  return read_ms(CLOCK_THREAD_CPUTIME_ID) - start;
}

void take(const FittingQuestion& question, Sums& sums) {
  FittingSteps steps;
  sums.ours.push_back(once([&] { steps = fitting_steps(question); }));
  fitting::Schedule plain;
  sums.greedy.push_back(
      once([&] { plain = fitting::greedy_schedule(fitting::work_of(question, {})); }));
  sums.turns += steps.turns;
  sums.turns_greedy += plain.visits.size();
  sums.proved += steps.least;
  sums.sound = sums.sound && (steps.waiting > 0 || steps.turns <= plain.visits.size());
  if (question.valves.size() > valves_for_every_way || steps.waiting > 0) return;
  std::optional<search::Least> least;
  sums.every_way.push_back(once(
      [&] { least = search::every_way(question, std::vector<bool>(question.valves.size())); }));
  sums.sound =
      sums.sound && least && least->turns == steps.turns && least->stand_ins == steps.stand_ins;
}

bool row(const char* kind, FittingQuestion (*question)(std::size_t, std::uint64_t),
         std::size_t valves) {
  Sums sums;
  for (std::uint64_t seed = 1; seed <= questions_a_row; ++seed) take(question(valves, seed), sums);
  std::printf("%-9s %6zu %9.3f %9.3f %11.4f %7zu %7zu %6zu%%", kind, valves, median(sums.ours),
              std::ranges::max(sums.ours), median(sums.greedy), sums.turns, sums.turns_greedy,
              100 * sums.proved / questions_a_row);
  if (!sums.every_way.empty())
    std::printf(" %9.3f %9.3f", median(sums.every_way), std::ranges::max(sums.every_way));
  std::printf("%s\n", sums.sound ? "" : "  NOT THE LEAST");
  std::fflush(stdout);
  return sums.sound;
}

// At most so much memory was in use so far, in MB.
long peak_memory() {
  rusage usage{};
  if (getrusage(RUSAGE_SELF, &usage) != 0) throw std::runtime_error("memory in use cannot be read");
  return usage.ru_maxrss / 1024;
}

FittingQuestion drawer(std::size_t valves, std::int64_t stops, std::int64_t rows,
                       std::int64_t count) {
  const questions::FittingShape shape{.valves = static_cast<std::int64_t>(valves),
                                      .stops = stops,
                                      .spares = 0,
                                      .sizes = 400,
                                      .series = 0};
  FittingQuestion question;
  for (std::uint64_t seed = 1; 50 * question.valves.size() < 49 * valves; ++seed)
    question = questions::shuffled(shape, seed);
  questions::Dice dice(valves);
  for (std::int64_t row = 0; row < rows; ++row)
    question.spares.push_back({"A", questions::micrometres(dice.between(2400, 12'500)), count});
  return question;
}

// Far beyond any engine, as a pasted drawer or a table can pose them.
bool worst_questions() {
  using questions::long_ring;
  using questions::pairs;
  struct Row {
    const char* what;
    FittingQuestion question;
  };
  const Row rows[] = {
      {"48 valves in pairs, 100 rows of 48 spares", pairs(48, 100, 48)},
      {"48 valves in pairs, 1000 rows of 48 spares", pairs(48, 1'000, 48)},
      {"48 valves in pairs, 1 row of 5 spares", pairs(48, 1, 5)},
      {"a ring of 96 valves, 1 spare", long_ring(96, 1)},
      {"a ring of 96 valves, 5 spares", long_ring(96, 5)},
      {"a ring of 96 valves, 48 spares", long_ring(96, 48)},
      {"256 valves, 2 stops, 10000 rows of 1000000", drawer(256, 2, 10'000, 1'000'000)},
      {"256 valves, 6 stops, 10000 rows of 1000000", drawer(256, 6, 10'000, 1'000'000)},
      {"1000 valves in pairs, 20000 rows of 1000", pairs(1'000, 20'000, 1'000)},
      {"1000 valves, 2 stops, 3 rows of 1", drawer(1'000, 2, 3, 1)},
      {"1000 valves, 12 stops, no spares", drawer(1'000, 12, 0, 0)},
      {"1000 valves, 64 stops, 300 rows of 1", drawer(1'000, 64, 300, 1)},
      {"a ring of 1000 valves, 1 spare", long_ring(1'000, 1)},
  };
  const long before = peak_memory();
  std::printf("%-44s %9s %9s %7s %9s %7s %7s\n", "the worst known", "ms", "greedy", "ratio",
              "turns", "its", "proved");
  for (const Row& row : rows) {
    FittingSteps steps;
    const double ours = once([&] { steps = fitting_steps(row.question); });
    fitting::Schedule plain;
    const double greedy =
        once([&] { plain = fitting::greedy_schedule(fitting::work_of(row.question, {})); });
    std::printf("%-44s %9.2f %9.2f %7.0f %9zu %7zu %7s\n", row.what, ours, greedy, ours / greedy,
                steps.turns, plain.visits.size(), steps.least ? "yes" : "no");
    std::fflush(stdout);
  }
  const long taken = peak_memory() - before;
  std::printf("Memory: %ld MB more than before them.\n", taken);
  return taken <= 100;
}

}  // namespace
}  // namespace shimwright::bench

int main(int argc, char** argv) {
  using namespace shimwright;
  const std::size_t most = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 48;
  std::printf("Processor time in ms, of %zu questions each; turns of them all.\n",
              bench::questions_a_row);
  std::printf("%-9s %6s %9s %9s %11s %7s %7s %7s %9s %9s\n", "question", "valves", "middle",
              "longest", "greedy", "turns", "its", "proved", "every way", "longest");
  bool sound = true;
  for (const std::size_t valves : {4, 8, 16, 24, 32, 48}) {
    if (valves > most) break;
    sound = bench::row("service", bench::service, valves) && sound;
    sound = bench::row("scattered", bench::scattered, valves) && sound;
    sound = bench::row("adverse", bench::adverse, valves) && sound;
  }
  if (most >= 48) sound = bench::worst_questions() && sound;
  return sound ? EXIT_SUCCESS : EXIT_FAILURE;
}
