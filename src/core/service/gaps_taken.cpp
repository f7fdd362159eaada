// SPDX-License-Identifier: MPL-2.0
#include "core/service/gaps_taken.hpp"

#include <string_view>

#include "core/service/bench.hpp"
#include "core/service/kept_length.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// Nothing where it is not what gaps_as_taken writes for so many valves.
std::vector<std::optional<Length>> gaps_in(std::string_view written, std::size_t valves) {
  std::vector<std::optional<Length>> gaps;
  while (!written.empty())
    if (!read_kept(taken_off(written, " "), gaps.emplace_back())) return {};
  if (gaps.size() != valves) gaps.clear();
  return gaps;
}

}  // namespace

std::string gaps_as_taken(const Findings& found) {
  std::string written;
  for (const ValveFindings& valve : found.valves) {
    if (!written.empty()) written += ' ';
    written += kept(valve.gap);
  }
  return written;
}

std::vector<ChangedGap> gaps_changed_since_taken(const Service& service, const Findings& found) {
  std::vector<ChangedGap> changed;
  if (!is_any_shim_changed(service)) return changed;
  const auto gaps = gaps_in(service.gaps_taken, found.valves.size());
  for (std::size_t i = 0; i < gaps.size(); ++i)
    if (found.valves[i].gap != gaps[i] && (gaps[i] || is_opened(service, service.valves[i].name)))
      changed.push_back({i, gaps[i]});
  return changed;
}

}  // namespace shimwright
