// SPDX-License-Identifier: MPL-2.0
#include "book/sheets.hpp"
#include "core/crank/firing_written.hpp"
#include "core/service/words/crank_words.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright::book {

int stops_of(const EngineLayout& layout) try {
  return static_cast<int>(crank_stops(firing_written(layout.firing)).size());
} catch (const BadInput&) {
  return 2;  // of nearly every engine
}

int lines_of_stops(const EngineLayout& layout, int letters) {
  const std::size_t below = said(Say::manual_first).size() + said(Say::usual_timing).size();
  try {
    const Firing firing = firing_written(layout.firing);
    const std::vector<CrankStop> stops = crank_stops(firing);
    std::size_t lines = 1 + below / static_cast<std::size_t>(letters);
    for (std::size_t i = 0; i < stops.size(); ++i)
      lines +=
          1 + stop_in_words(firing, stops, i, Teller()).size() / static_cast<std::size_t>(letters);
    return static_cast<int>(lines);
  } catch (const BadInput&) {
    return 6;  // of an engine whose firing is still to be entered
  }
}

}  // namespace shimwright::book
