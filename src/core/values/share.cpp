// SPDX-License-Identifier: MPL-2.0
#include "core/values/share.hpp"

#include <algorithm>
#include <numeric>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

constexpr std::int64_t most_told = 10;  // terms that are easily pictured

}  // namespace

Share gaps_served(const Limits& limits, Length step, Length doubt) {
  check_limits(limits);
  check_doubt(doubt);
  if (step <= Length())
    throw BadInput("a step of " + text_of(step) + " leads nowhere: it must be above zero");
  const std::int64_t band = (limits.max - limits.min - 2 * doubt).nanometres();
  const std::int64_t served = std::clamp<std::int64_t>(band, 0, step.nanometres());
  const std::int64_t shared = std::gcd(served, step.nanometres());
  return {served / shared, step.nanometres() / shared};
}

std::string text_of(const Share& share) {
  if (share.served == 0) return "none";
  if (share.of <= most_told)
    return std::to_string(share.served) + " of " + std::to_string(share.of);
  return "about " + std::to_string(share.of_a_hundred()) + " of 100";
}

}  // namespace shimwright
