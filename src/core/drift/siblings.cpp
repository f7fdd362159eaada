// SPDX-License-Identifier: MPL-2.0
#include "core/drift/siblings.hpp"

#include <algorithm>
#include <cmath>

#include "core/drift/student_t.hpp"

namespace shimwright {
namespace {

struct Others {
  std::vector<double> rates;
  double error_squares = 0;  // of their rates

  double count() const { return static_cast<double>(rates.size()); }
  double mean() const {
    double sum = 0;
    for (const double rate : rates) sum += rate;
    return sum / count();
  }
  double spread() const {
    const double middle = mean();
    double squares = 0;
    for (const double rate : rates) squares += (rate - middle) * (rate - middle);
    return std::sqrt(squares / (count() - 1));
  }
};

Others others_of(std::span<const Sibling> valves, std::size_t own) {
  Others others;
  for (std::size_t i = 0; i < valves.size(); ++i) {
    if (i == own || valves[i].side != valves[own].side || !valves[i].line) continue;
    others.rates.push_back(valves[i].line->slope);
    others.error_squares += valves[i].line->slope_error * valves[i].line->slope_error;
  }
  return others;
}

}  // namespace

std::vector<Kinship> kinship_of(std::span<const Sibling> valves, double risk) {
  std::vector<Kinship> all(valves.size(), Kinship::alike);
  const auto known =
      std::ranges::count_if(valves, [](const Sibling& valve) { return valve.line.has_value(); });
  for (std::size_t i = 0; i < valves.size(); ++i) {
    if (!valves[i].line) continue;
    const Others others = others_of(valves, i);
    if (others.rates.size() < least_siblings) continue;
    const Line& own = *valves[i].line;
    const double by_errors = std::sqrt(
        std::max(others.error_squares / others.count(), own.slope_error * own.slope_error));
    const double spread = std::max(others.spread(), by_errors);
    const double away = own.slope - others.mean();
    const double t = student_t(risk / (2 * static_cast<double>(known)), others.count() - 1);
    if (!(std::abs(away) > t * spread * std::sqrt(1 + 1 / others.count()))) continue;
    all[i] = away < 0 ? Kinship::closes_faster : Kinship::opens_faster;
  }
  return all;
}

}  // namespace shimwright
