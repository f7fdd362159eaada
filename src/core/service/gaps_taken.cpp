// SPDX-License-Identifier: MPL-2.0
#include "core/service/gaps_taken.hpp"

#include <algorithm>
#include <charconv>
#include <string_view>

#include "core/service/bench.hpp"

namespace shimwright {
namespace {

constexpr std::string_view blank = "-";

// Nothing where it is not what gaps_as_taken writes for so many valves.
std::vector<std::optional<Length>> gaps_in(std::string_view written, std::size_t valves) {
  std::vector<std::optional<Length>> gaps;
  while (!written.empty()) {
    const std::string_view word = written.substr(0, written.find(' '));
    written.remove_prefix(std::min(written.size(), word.size() + 1));
    std::int64_t nanometres = 0;
    const auto end = std::from_chars(word.data(), word.data() + word.size(), nanometres);
    if (word == blank)
      gaps.emplace_back();
    else if (end.ec == std::errc() && end.ptr == word.data() + word.size())
      gaps.emplace_back(Length::nanometres(nanometres));
    else
      return {};
  }
  if (gaps.size() != valves) gaps.clear();
  return gaps;
}

}  // namespace

std::string gaps_as_taken(const Findings& found) {
  std::string written;
  for (const ValveFindings& valve : found.valves) {
    if (!written.empty()) written += ' ';
    written += valve.gap ? std::to_string(valve.gap->nanometres()) : std::string(blank);
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
