// SPDX-License-Identifier: MPL-2.0
#include "core/service/words/crank_words.hpp"

#include <cmath>
#include <map>
#include <vector>

namespace shimwright {
namespace {

// For a hand: a tenth of a degree is more than it can set.
double to_a_tenth(CrankAngle angle) { return std::round(angle.degrees() * 10) / 10; }

std::string side_in_words(Side side, const Teller& teller) {
  return teller.say(side == Side::exhaust ? Say::exhaust : Say::inlet);
}

}  // namespace

std::string turn_in_words(const Firing& firing, std::span<const CrankStop> stops, std::size_t index,
                          std::optional<std::size_t> from, const Teller& teller) {
  const CrankAngle angle = stops[index].angle;
  int last = 1;  // the cylinder that fired last before the stop, or fires there
  std::vector<std::string> firing_here;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder) {
    const CrankAngle past = (angle - firing.angle_of(cylinder)).in_cycle();
    if (past < (angle - firing.angle_of(last)).in_cycle()) last = cylinder;
    if (past == CrankAngle()) firing_here.push_back(std::to_string(cylinder));
  }
  std::string words =
      firing_here.empty()
          ? teller.say(Say::turn_past_tdc,
                       {to_a_tenth((angle - firing.angle_of(last)).in_cycle()), std::int64_t{last}})
          : teller.say(Say::turn_to_tdc, {firing_here});
  if (from && *from != index)
    words += teller.say(Say::turn_on_from, {to_a_tenth((angle - stops[*from].angle).in_cycle()),
                                            static_cast<std::int64_t>(*from + 1)});
  return words;
}

std::string measured_in_words(std::span<const CrankStop> stops, std::size_t index,
                              const Teller& teller) {
  std::map<int, std::vector<std::string>> sides;  // by cylinder
  for (const ReachableValve& valve : stops[index].reachable)
    if (clearest_stop(stops, valve.place) == index)
      sides[valve.place.cylinder].push_back(side_in_words(valve.place.side, teller));
  std::string words;
  for (const auto& [cylinder, here] : sides)
    words += (words.empty() ? "" : "; ") +
             teller.say(Say::cylinder_and_sides, {std::int64_t{cylinder}, here});
  return words;
}

std::string stop_in_words(const Firing& firing, std::span<const CrankStop> stops, std::size_t index,
                          const Teller& teller) {
  return teller.say(
      Say::stop_line,
      {static_cast<std::int64_t>(index + 1),
       turn_in_words(firing, stops, index, index > 0 ? std::optional<std::size_t>(0) : std::nullopt,
                     teller),
       measured_in_words(stops, index, teller)});
}

}  // namespace shimwright
