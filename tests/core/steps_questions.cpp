// SPDX-License-Identifier: MPL-2.0
#include "steps_questions.hpp"

#include <string>
#include <utility>
#include <vector>

namespace shimwright::questions {

FittingQuestion shuffled(const FittingShape& shape, std::uint64_t seed) {
  Dice dice(seed);
  const auto size = [&] { return micrometres(2500 + 25 * dice.between(0, shape.sizes - 1)); };
  const auto series = [&] {
    return std::string(1, shape.series > 0 && dice.one_in(shape.series) ? 'B' : 'A');
  };
  FittingQuestion question;
  const auto valves = static_cast<std::size_t>(dice.between(1, shape.valves));
  const std::int64_t stops = dice.between(1, shape.stops);
  for (std::size_t i = 0; i < valves; ++i) {
    FittingValve valve;
    valve.name = std::to_string(i + 1);
    valve.series = series();
    valve.shim = size();
    valve.stops.push_back(static_cast<int>(dice.between(1, stops)));
    if (dice.one_in(shape.several)) valve.stops.push_back(static_cast<int>(dice.between(1, stops)));
    question.valves.push_back(std::move(valve));
  }
  // Who gets whose: a permutation within each series; then some links are cut, and the valve
  // before the cut gets a shim of its own.
  const std::int64_t cut = dice.between(2, 8);
  for (const char* name : {"A", "B"}) {
    std::vector<std::size_t> members;
    for (std::size_t i = 0; i < valves; ++i)
      if (question.valves[i].series == name && !dice.one_in(6)) members.push_back(i);
    std::vector<std::size_t> givers = members;
    for (std::size_t i = givers.size(); i > 1; --i)
      std::swap(givers[i - 1],
                givers[static_cast<std::size_t>(dice.between(0, static_cast<int>(i) - 1))]);
    for (std::size_t m = 0; m < members.size(); ++m) {
      FittingValve& valve = question.valves[members[m]];
      if (givers[m] == members[m] || dice.one_in(cut)) {
        valve.supply = dice.one_in(2) ? FittingValve::Supply::spare : FittingValve::Supply::bought;
        valve.fit = size();
      } else {
        valve.supply = FittingValve::Supply::valve;
        valve.giver = givers[m];
        valve.fit = *question.valves[givers[m]].shim;
      }
    }
  }
  const std::int64_t spares = dice.between(0, shape.spares);
  for (std::int64_t i = 0; i < spares; ++i)
    question.spares.push_back({series(), size(), dice.between(1, 2)});
  return question;
}

FittingQuestion planned(const PlanQuestion& head, std::int64_t most_stops, std::int64_t several,
                        std::uint64_t seed) {
  Dice dice(seed);
  const std::int64_t stops = dice.between(1, most_stops);
  std::vector<OpenAt> open;
  for (std::size_t i = 0; i < head.valves.size(); ++i)
    for (bool more = true; more; more = dice.one_in(several))
      open.push_back({i, static_cast<int>(dice.between(1, stops))});
  return fitting_of(head, best_plan(head), open);
}

FittingQuestion serviced(std::size_t valves, bool scattered, std::int64_t most_stops,
                         std::int64_t several, std::uint64_t seed) {
  const PlanQuestion head = scattered ? questions::scattered(valves, seed) : service(valves, seed);
  return planned(head, most_stops, several, seed);
}

namespace {

// Valve i is given its shim by this one.
FittingQuestion at_two_stops(std::size_t valves,
                             std::size_t (*giver_of)(std::size_t, std::size_t)) {
  FittingQuestion question;
  const auto size = [](std::size_t i) {
    return micrometres(2500 + 5 * static_cast<std::int64_t>(i % 200));
  };
  for (std::size_t i = 0; i < valves; ++i) {
    const std::size_t giver = giver_of(i, valves);
    question.valves.push_back({.name = std::to_string(i + 1),
                               .series = "",
                               .shim = size(i),
                               .supply = FittingValve::Supply::valve,
                               .giver = giver,
                               .fit = size(giver),
                               .stops = {static_cast<int>(i % 2) + 1}});
  }
  return question;
}

}  // namespace

FittingQuestion pairs(std::size_t valves, std::int64_t rows, std::int64_t count) {
  FittingQuestion question =
      at_two_stops(valves, [](std::size_t i, std::size_t) { return i ^ 1U; });
  for (std::int64_t row = 0; row < rows; ++row)
    question.spares.push_back({"", micrometres(2400) + Length::nanometres(100 * row), count});
  return question;
}

FittingQuestion long_ring(std::size_t valves, std::int64_t spares) {
  FittingQuestion question =
      at_two_stops(valves, [](std::size_t i, std::size_t all) { return (i + all - 1) % all; });
  if (spares > 0) question.spares.push_back({"", micrometres(2400), spares});
  return question;
}

}  // namespace shimwright::questions
