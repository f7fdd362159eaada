// SPDX-License-Identifier: MPL-2.0
#include "core/drift/drift.hpp"

#include <string>

#include "core/drift/line.hpp"
#include "core/drift/median_line.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr double nm_in_mm = 1e6;
constexpr double rate_unit = 1e3;  // nanometres by distance, in mm by 1000 of it

Drift figures(std::size_t checks, double slope, double slope_error, double intercept,
              double residual_sd, std::optional<double> r2) {
  return {slope / rate_unit,
          slope_error / rate_unit,
          intercept / nm_in_mm,
          residual_sd / nm_in_mm,
          checks,
          r2};
}

}  // namespace

Method method_named(std::string_view name) {
  if (same_word(name, "least")) return Method::least;
  if (same_word(name, "median")) return Method::median;
  throw BadInput(in_quotes(name) + " is unknown: use least or median");
}

std::optional<Drift> drift_of(const History& history, Method method) {
  if (method == Method::median) {
    const auto line = fit_median_line(history.checks());
    if (!line) return std::nullopt;
    return figures(line->n, line->slope, line->slope_error, line->intercept, line->residual_sd,
                   line->r2);
  }
  const auto line = fit_line(history.checks());
  if (!line) return std::nullopt;
  return figures(line->n, line->slope, line->slope_error, line->intercept(), line->residual_sd,
                 line->r2);
}

}  // namespace shimwright
