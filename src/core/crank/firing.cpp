// SPDX-License-Identifier: MPL-2.0
#include "core/crank/firing.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

#include "core/crank/cylinders.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::string_view separators = "-,;/";

void check_number(double cylinder) {
  if (!(cylinder >= 1) || cylinder != std::floor(cylinder))
    throw BadInput("the firing order names cylinder " + text_of(cylinder) +
                   ": cylinders count 1, 2, 3 and so on");
  if (cylinder > Firing::most_cylinders)
    throw BadInput("the firing order names cylinder " + text_of(cylinder) +
                   ": an engine may have 1 to " + std::to_string(Firing::most_cylinders) +
                   " cylinders");
}

void check_each_once(const std::vector<int>& named, std::optional<int> cylinders) {
  if (named.empty()) throw BadInput("the firing order is empty");
  check_each_named_once("the firing order", Grammar::singular, named, cylinders);
}

// With every dash a hyphen and every no-break space a space.
std::string plain_separators(std::string_view text) {
  static constexpr std::pair<std::string_view, char> others[] = {{"\u2010", '-'},  // hyphen
                                                                 {"\u2011", '-'},  // non-breaking
                                                                 {"\u2013", '-'},  // en dash
                                                                 {"\u2014", '-'},  // em dash
                                                                 {"\u2212", '-'},  // minus
                                                                 {"\u00a0", ' '}, {"\t", ' '}};
  std::string plain;
  while (!text.empty()) {
    const auto* other = std::ranges::find_if(
        others, [&](const auto& candidate) { return text.starts_with(candidate.first); });
    const bool found = other != std::end(others);
    plain += found ? other->second : text.front();
    text.remove_prefix(found ? other->first.size() : 1);
  }
  return plain;
}

std::vector<int> numbers_in(std::string_view text) {
  const std::string plain = plain_separators(trimmed(text));
  std::vector<int> numbers;
  const char* at = plain.data();
  const char* const end = at + plain.size();
  const auto skip_spaces = [&] {
    while (at != end && *at == ' ') ++at;
  };
  while (at != end) {
    int number = 0;
    const auto [after, error] = std::from_chars(at, end, number);
    if (error != std::errc{} || number < 0)
      throw BadInput("the firing order " + in_quotes(text) +
                     " is not numbers of cylinders with a hyphen between, such as 1-3-4-2");
    numbers.push_back(number);
    at = after;
    skip_spaces();
    if (at == end || separators.find(*at) == std::string_view::npos) continue;
    ++at;
    skip_spaces();
    if (at == end)
      throw BadInput("the firing order " + in_quotes(text) + " breaks off after its last hyphen");
  }
  return numbers;
}

}  // namespace

CrankAngle CrankAngle::of(double degrees) {
  if (!std::isfinite(degrees)) throw BadInput("a crank angle is not a finite number");
  if (std::abs(degrees) > whole_cycle.degrees())
    throw BadInput("a crank angle of " + text_of(degrees) +
                   "\u00b0 is beyond the 720\u00b0 of two turns");
  return CrankAngle(std::llround(degrees * static_cast<double>(parts_in_degree)));
}

Firing Firing::in_order(std::string_view text, std::optional<int> cylinders) {
  const std::vector<int> order = numbers_in(text);
  for (const int cylinder : order) check_number(cylinder);
  check_each_once(order, cylinders);
  const auto count = static_cast<std::int64_t>(order.size());
  const std::int64_t interval = whole_cycle.parts() / count;
  const auto first = std::ranges::find(order, 1) - order.begin();
  std::vector<CrankAngle> angles(order.size());
  for (std::int64_t place = 0; place < count; ++place) {
    const auto cylinder = static_cast<std::size_t>(order[static_cast<std::size_t>(place)]);
    angles[cylinder - 1] = CrankAngle::parts((place - first) * interval).in_cycle();
  }
  return Firing(std::move(angles));
}

Firing Firing::at_angles(std::span<const FiringRow> rows, std::optional<int> cylinders) {
  std::vector<int> named;
  for (const FiringRow& row : rows) {
    check_number(row.cylinder);
    named.push_back(static_cast<int>(row.cylinder));
    if (!(row.angle >= 0) || row.angle > whole_cycle.degrees())
      throw BadInput("cylinder " + text_of(row.cylinder) + " is said to fire at " +
                     text_of(row.angle) +
                     "\u00b0: a firing angle lies between 0\u00b0 and 720\u00b0");
  }
  check_each_once(named, cylinders);
  std::vector<CrankAngle> angles(rows.size());
  for (const FiringRow& row : rows)
    angles[static_cast<std::size_t>(row.cylinder) - 1] = CrankAngle::of(row.angle).in_cycle();
  if (angles.front() != CrankAngle())
    throw BadInput("cylinder 1 is said to fire at " + text_of(angles.front().degrees()) +
                   "\u00b0: the angles count from its own firing dead centre, so its own is "
                   "0\u00b0");
  return Firing(std::move(angles));
}

}  // namespace shimwright
