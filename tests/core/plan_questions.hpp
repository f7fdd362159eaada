// SPDX-License-Identifier: MPL-2.0
//
// Made-up questions for the plan's tests and its benchmark: the same seed, the same question, on
// every machine (only the generator's own numbers are used, no library distribution).
#pragma once

#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "core/plan/plan.hpp"
#include "core/values/choice.hpp"

namespace shimwright::questions {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : numbers_(seed) {}
  std::int64_t between(std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(numbers_() % static_cast<std::uint64_t>(high - low + 1));
  }
  bool one_in(std::int64_t n) { return between(1, n) == 1; }

 private:
  std::mt19937_64 numbers_;
};

inline Length micrometres(std::int64_t count) { return Length::nanometres(1000 * count); }

inline Stock spare(std::string series, Length size, std::int64_t count = 1) {
  return {Stock::Kind::spare, std::move(series), size, count, Money()};
}

inline Stock sale(std::string series, Length size, Money price,
                  std::optional<std::int64_t> count = std::nullopt) {
  return {Stock::Kind::sale, std::move(series), size, count, price};
}

// A head as it might be measured: inlet and exhaust series, marks by 0.05 mm worn or measured a
// few micrometres off, clearances mostly closed up, some spares, a ladder on sale.
inline PlanQuestion service(std::size_t valves, std::uint64_t seed) {
  Dice dice(seed);
  PlanQuestion question;
  question.rules.touch_good = dice.one_in(2);
  question.rules.work = Money::thousandths(500 * dice.between(0, 2));
  for (std::size_t i = 0; i < valves; ++i) {
    const bool inlet = i % 2 == 0;
    Valve valve;
    valve.name = "v" + std::to_string(i + 1);
    valve.series = inlet ? "inlet" : "exhaust";
    valve.limits = inlet ? Limits{micrometres(130), micrometres(190)}
                         : Limits{micrometres(220), micrometres(300)};
    valve.aim = aim_between(valve.limits);
    const auto step = dice.between(46, 62);
    valve.shim = micrometres(50 * step + dice.between(-12, 4));
    valve.clearance = valve.limits.min + micrometres(10 * dice.between(-6, 7));
    valve.doubt = micrometres(dice.between(0, 12));
    valve.locked = dice.one_in(40);
    if (dice.one_in(40)) valve.clearance.reset();
    question.valves.push_back(std::move(valve));
  }
  for (const char* series : {"inlet", "exhaust"}) {
    for (std::size_t i = 0; i < valves / 8; ++i) {
      const auto step = dice.between(46, 62);
      const Length size = micrometres(50 * step + dice.between(-8, 2));
      question.stock.push_back(spare(series, size));
    }
    for (std::int64_t step = 44; step <= 64; ++step) {
      const Money price = Money::thousandths(500 * dice.between(7, 10));
      question.stock.push_back(sale(series, micrometres(50 * step), price));
    }
  }
  return question;
}

// The same with every shim worn to a size of its own in one series, where nearly all shims compete.
inline PlanQuestion scattered(std::size_t valves, std::uint64_t seed) {
  PlanQuestion question = service(valves, seed);
  Dice dice(seed + 1);
  question.rules.touch_good = true;
  for (Valve& valve : question.valves) {
    valve.series = "inlet";
    valve.limits = {micrometres(130), micrometres(190)};
    valve.aim = aim_between(valve.limits);
    if (valve.shim) valve.shim = micrometres(dice.between(2250, 3150));
    if (valve.clearance) valve.clearance = micrometres(dice.between(70, 200));
  }
  return question;
}

// The same head with limits narrower than the step of the sizes, where most valves stay outside and
// half of them may have the nearest shim.
inline PlanQuestion narrow(std::size_t valves, std::uint64_t seed) {
  PlanQuestion question = service(valves, seed);
  Dice dice(seed + 2);
  for (Valve& valve : question.valves) {
    valve.limits.max = valve.limits.min + micrometres(dice.between(5, 20));
    valve.aim = aim_between(valve.limits);
    valve.nearest = dice.one_in(2);
  }
  return question;
}

// A small question full of conflicts: few sizes, narrow limits, every rule and every kind of entry.
inline PlanQuestion crowded(std::int64_t most_valves, std::uint64_t seed) {
  Dice dice(seed);
  const auto series = [&] { return std::string(dice.one_in(4) ? "B" : "A"); };
  const auto size = [&] { return micrometres(2500 + 25 * dice.between(0, 6)); };
  PlanQuestion question;
  question.rules.touch_good = dice.one_in(2);
  question.rules.work = Money::thousandths(dice.one_in(2) ? 0 : 1000 * dice.between(1, 4));
  question.rules.use_doubt = !dice.one_in(4);
  question.rules.aim_first = dice.one_in(2);
  const std::int64_t valves = dice.between(1, most_valves);
  for (std::int64_t i = 0; i < valves; ++i) {
    Valve valve;
    valve.name = std::to_string(i + 1);
    valve.series = series();
    const auto width = 5 * dice.between(0, 16);
    valve.limits = {micrometres(150), micrometres(150 + width)};
    valve.aim = valve.limits.min + micrometres(dice.between(0, width));
    valve.shim = size();
    const auto off = 25 * dice.between(-4, 5);
    valve.clearance = micrometres(150 + off + 5 * dice.between(-1, 1));
    valve.doubt = dice.one_in(3) ? Length() : micrometres(5 * dice.between(0, 5));
    valve.locked = dice.one_in(10);
    if (dice.one_in(12)) valve.clearance.reset();
    if (dice.one_in(12)) valve.shim.reset();
    question.valves.push_back(std::move(valve));
  }
  const std::int64_t stock = dice.between(0, 5);
  for (std::int64_t i = 0; i < stock; ++i) {
    Stock row;
    row.kind = dice.one_in(2) ? Stock::Kind::spare : Stock::Kind::sale;
    row.series = series();
    row.size = size();
    if (!dice.one_in(2)) row.count = dice.between(0, 2);
    if (row.kind == Stock::Kind::sale) row.price = Money::thousandths(1000 * dice.between(0, 5));
    question.stock.push_back(std::move(row));
  }
  Dice more(seed + 3);
  if (more.one_in(2)) {
    question.rules.nearest = more.one_in(3);
    for (Valve& valve : question.valves) valve.nearest = more.one_in(2);
  }
  return question;
}

// Worst questions: what a pasted drawer may ask though no engine does. All valves alike and all
// sizes in reach of each of them, so that all compete for the same few: with one shim of each size
// or with as many as one likes.
inline PlanQuestion alike(std::size_t valves, std::size_t sizes, bool one_each) {
  PlanQuestion question;
  for (std::size_t i = 0; i < valves; ++i) {
    Valve valve;
    valve.name = std::to_string(i + 1);
    valve.limits = {micrometres(100), micrometres(4000)};
    valve.aim = micrometres(2000);
    valve.shim = micrometres(5000);
    valve.clearance = micrometres(50);
    question.valves.push_back(std::move(valve));
  }
  // From 1.1 to 4.9 mm.
  for (std::size_t i = 0; i < sizes; ++i) {
    const auto size =
        1'100'000 + 3'800'000 * static_cast<std::int64_t>(i) / static_cast<std::int64_t>(sizes);
    question.stock.push_back(sale("", Length::nanometres(size),
                                  Money::thousandths(4000 + static_cast<std::int64_t>(i * 7 % 90)),
                                  one_each ? std::optional<std::int64_t>(1) : std::nullopt));
  }
  return question;
}

// As above, but no two valves have a gap or a shim in common.
inline PlanQuestion unlike(std::size_t valves, std::size_t sizes, bool one_each,
                           std::uint64_t seed) {
  PlanQuestion question = alike(valves, sizes, one_each);
  Dice dice(seed);
  for (Valve& valve : question.valves) {
    valve.shim = Length::nanometres(dice.between(4'950'000, 5'050'000));
    valve.clearance = Length::nanometres(dice.between(10'000, 90'000));
    valve.aim = Length::nanometres(dice.between(500'000, 3'500'000));
  }
  return question;
}

}  // namespace shimwright::questions
