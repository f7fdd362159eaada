// SPDX-License-Identifier: MPL-2.0
//
// No shim is lost and none comes into being: over made-up services, what is in the engine, in the
// drawer and on Arrivals is the same before and after, but for what was bought on the way.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/service/arrivals.hpp"
#include "core/service/bench.hpp"
#include "core/service/bench_commands.hpp"
#include "core/service/shim_moves.hpp"
#include "made_up_service.hpp"

namespace shimwright::tests {
namespace {

using Shims = std::map<std::pair<std::string, Length>, int>;

// What was bought past Arrivals, or had not come by its rows there, comes in by being fitted.
Shims bought_beside(const Service& service, const Findings& found) {
  Shims bought;
  for (const MovedShim& shim : shim_moves(service, found).bought_fitted)
    ++bought[{shim.series, shim.size}];
  for (const FittedArrival& one : arrivals_fitted(service, found)) {
    const ArrivalFindings& shim = found.arrivals[one.row];
    if (shim.state == ArrivalState::arrived) --bought[{shim.series, *shim.size}];
  }
  return bought;
}

Shims sum(Shims one, const Shims& other) {
  for (const auto& [shim, count] : other) one[shim] += count;
  std::erase_if(one, [](const auto& shim) { return shim.second == 0; });
  return one;
}

constexpr std::uint64_t services = 500;

TEST(Shims, are_neither_lost_nor_made_by_closing_a_check_or_a_round) {
  int closed = 0;
  int rounds = 0;
  int with_spares = 0;
  int with_arrivals = 0;
  for (std::uint64_t seed = 1; seed <= services; ++seed) {
    MadeUpService made(seed);
    ClosingBook& book = made.book;
    if (rows_for_bench(book.service(), findings_in(book.service())).empty()) continue;
    book.take_to_bench();
    made.work(1);
    book.recheck_as_predicted();
    for (const std::string& valve : book.valves()) book.set("recheck", valve, 1, "left as it is");
    const ClosingEntries said{.date = "2026-11-26",
                              .distance = "1000",
                              .temperature = {},
                              .who = {},
                              .note = {},
                              .another_round = made.chance(0.5)};
    const Service before = book.service();
    const Findings found = findings_in(before);
    const Closing closing = book.closing(said, {});
    if (!closing.refusals.empty()) continue;
    const Shims expected = sum(book.shims(), bought_beside(before, found));
    const ShimMoves moves = shim_moves(before, found);
    book.close(said, {});
    ASSERT_EQ(sum(book.shims(), {}), expected) << "seed " << seed;
    ++(said.another_round ? rounds : closed);
    with_spares += moves.spares_fitted.empty() ? 0 : 1;
    with_arrivals += arrivals_fitted(before, found).empty() ? 0 : 1;
  }
  EXPECT_GT(closed, 100);
  EXPECT_GT(rounds, 100);
  EXPECT_GT(with_spares, 100);
  EXPECT_GT(with_arrivals, 20);
}

// A list half done: a shim on the bench is left over, as nobody knows yet where it goes.
TEST(Shims, are_where_the_ticks_say_at_every_step_of_the_list) {
  int looked_at = 0;
  for (std::uint64_t seed = 1; seed <= services; ++seed) {
    MadeUpService made(seed);
    ClosingBook& book = made.book;
    if (rows_for_bench(book.service(), findings_in(book.service())).empty()) continue;
    book.take_to_bench();
    made.work(0.01 * made.whole(0, 100));
    const Service service = book.service();
    const Findings found = findings_in(service);
    const ShimMoves moves = shim_moves(service, found);
    std::size_t opened = 0;
    std::size_t filled = 0;
    for (const auto& valve : service.valves) {
      const auto ticked = [&](Entry Service::BenchEntries::*what) {
        return std::ranges::any_of(service.bench, [&](const auto& step) {
          return step.valve == valve.name && is_ticked(step) &&
                 std::holds_alternative<double>(step.*what);
        });
      };
      opened += ticked(&Service::BenchEntries::out) ? 1 : 0;
      filled += ticked(&Service::BenchEntries::out) || ticked(&Service::BenchEntries::in) ? 1 : 0;
    }
    const std::size_t empty = valves_standing_empty(service).size();
    // What is in the opened valves came out of them, out of the drawer, or was bought.
    ASSERT_EQ(filled - empty + moves.left_over.size(),
              opened + moves.spares_fitted.size() + moves.bought_fitted.size())
        << "seed " << seed;
    ++looked_at;
  }
  EXPECT_GT(looked_at, 250);
}

}  // namespace
}  // namespace shimwright::tests
