// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/heading_words.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

enum class Hint {
  gap,
  shim,
  after,
  before,
  predicted,
  date,
  valve,
  distance,
  temperature,
  who,
  note,
  check,
  round,
  state
};

struct HintWord {
  std::string_view word;
  Hint hint;
};
constexpr std::array hint_words{
    HintWord{"gap", Hint::gap},
    HintWord{"gaps", Hint::gap},
    HintWord{"clearance", Hint::gap},
    HintWord{"clearances", Hint::gap},
    HintWord{"lash", Hint::gap},
    HintWord{"shim", Hint::shim},
    HintWord{"shims", Hint::shim},
    HintWord{"thickness", Hint::shim},
    HintWord{"after", Hint::after},
    HintWord{"left", Hint::after},
    HintWord{"new", Hint::after},
    HintWord{"fitted", Hint::after},
    HintWord{"final", Hint::after},
    HintWord{"set", Hint::after},
    HintWord{"before", Hint::before},
    HintWord{"found", Hint::before},
    HintWord{"old", Hint::before},
    HintWord{"measured", Hint::before},
    HintWord{"present", Hint::before},
    HintWord{"predicted", Hint::predicted},
    HintWord{"expected", Hint::predicted},
    HintWord{"date", Hint::date},
    HintWord{"day", Hint::date},
    HintWord{"when", Hint::date},
    HintWord{"valve", Hint::valve},
    HintWord{"valves", Hint::valve},
    HintWord{"position", Hint::valve},
    HintWord{"cylinder", Hint::valve},
    HintWord{"cyl", Hint::valve},
    HintWord{"side", Hint::valve},
    HintWord{"distance", Hint::distance},
    HintWord{"odometer", Hint::distance},
    HintWord{"odo", Hint::distance},
    HintWord{"mileage", Hint::distance},
    HintWord{"km", Hint::distance},
    HintWord{"kms", Hint::distance},
    HintWord{"kilometres", Hint::distance},
    HintWord{"kilometers", Hint::distance},
    HintWord{"miles", Hint::distance},
    HintWord{"mi", Hint::distance},
    HintWord{"hours", Hint::distance},
    HintWord{"hrs", Hint::distance},
    HintWord{"h", Hint::distance},
    HintWord{"temperature", Hint::temperature},
    HintWord{"temp", Hint::temperature},
    HintWord{"who", Hint::who},
    HintWord{"by", Hint::who},
    HintWord{"mechanic", Hint::who},
    HintWord{"note", Hint::note},
    HintWord{"notes", Hint::note},
    HintWord{"remark", Hint::note},
    HintWord{"remarks", Hint::note},
    HintWord{"comment", Hint::note},
    HintWord{"comments", Hint::note},
    HintWord{"check", Hint::check},
    HintWord{"service", Hint::check},
    HintWord{"no", Hint::check},
    HintWord{"nr", Hint::check},
    HintWord{"round", Hint::round},
    HintWord{"state", Hint::state},
    HintWord{"verdict", Hint::state},
};

struct UnitWord {
  std::string_view word;
  ColumnUnit unit;
};
constexpr std::array unit_words{
    UnitWord{"mm", ColumnUnit::mm},         UnitWord{"in", ColumnUnit::inch},
    UnitWord{"inch", ColumnUnit::inch},     UnitWord{"inches", ColumnUnit::inch},
    UnitWord{"\"", ColumnUnit::inch},       UnitWord{"thou", ColumnUnit::thou},
    UnitWord{"mark", ColumnUnit::mark},     UnitWord{"marks", ColumnUnit::mark},
    UnitWord{"marked", ColumnUnit::mark},   UnitWord{"hundredths", ColumnUnit::hundredths},
    UnitWord{"km", ColumnUnit::km},         UnitWord{"kms", ColumnUnit::km},
    UnitWord{"kilometres", ColumnUnit::km}, UnitWord{"kilometers", ColumnUnit::km},
    UnitWord{"miles", ColumnUnit::miles},   UnitWord{"mi", ColumnUnit::miles},
    UnitWord{"mileage", ColumnUnit::miles}, UnitWord{"hours", ColumnUnit::hours},
    UnitWord{"hrs", ColumnUnit::hours},     UnitWord{"h", ColumnUnit::hours},
};

ColumnUnit unit_named_by(std::string_view word) {
  const auto found = std::ranges::find(unit_words, word, &UnitWord::word);
  return found == unit_words.end() ? ColumnUnit::none : found->unit;
}

class Hints {
 public:
  void add(std::string_view word) {
    const auto found = std::ranges::find(hint_words, word, &HintWord::word);
    if (found != hint_words.end()) given_[static_cast<std::size_t>(found->hint)] = true;
  }
  bool has(Hint hint) const { return given_[static_cast<std::size_t>(hint)]; }

  // The first that holds: `measured by` is who measured, `check date` a date.
  std::optional<LogColumn> what() const {
    if (has(Hint::predicted)) return LogColumn::predicted;
    if (has(Hint::state)) return LogColumn::state;
    if (has(Hint::gap)) return has(Hint::after) ? LogColumn::gap_left : LogColumn::gap_found;
    if (has(Hint::shim)) return has(Hint::after) ? LogColumn::shim_fitted : LogColumn::shim_found;
    static constexpr std::array<std::pair<Hint, LogColumn>, 8> plain{
        {{Hint::date, LogColumn::date},
         {Hint::temperature, LogColumn::temperature},
         {Hint::who, LogColumn::who},
         {Hint::note, LogColumn::note},
         {Hint::distance, LogColumn::distance},
         {Hint::valve, LogColumn::valve},
         {Hint::round, LogColumn::round},
         {Hint::check, LogColumn::check}}};
    for (const auto& [hint, column] : plain)
      if (has(hint)) return column;
    return std::nullopt;
  }

 private:
  std::array<bool, 14> given_{};
};

// Words of letters, and `"`, in lower case.
std::vector<std::string> words_in(std::string_view text) {
  std::vector<std::string> words;
  bool open = false;
  for (const char c : lower_case(text)) {
    const bool letter = (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) & 0x80) != 0;
    if (c == '"') words.emplace_back(1, c);
    if (letter && !open) words.emplace_back();
    if (letter) words.back() += c;
    open = letter;
  }
  return words;
}

// Takes what stands in brackets out of the heading: units stand there.
std::string bracketed_in(std::string& heading) {
  const std::size_t open = heading.find_first_of("([");
  if (open == std::string::npos) return {};
  const std::size_t close = std::min(heading.find_first_of(")]", open), heading.size());
  const std::string inside = heading.substr(open + 1, close - open - 1);
  heading.erase(open, close - open + (close < heading.size() ? 1 : 0));
  return inside;
}

}  // namespace

HeadingWords heading_words_in(std::string_view heading, const ValveNames& names) {
  HeadingWords said;
  std::string open(heading);
  Hints hints;
  for (const std::string& word : words_in(bracketed_in(open))) {
    if (said.unit == ColumnUnit::none) said.unit = unit_named_by(word);
    hints.add(word);
  }
  // A valve has a number, or is the only one of its side; without either `in` is a unit and `left`
  // no place.
  const ValveWords valve = valve_words_in(open);
  if (valve.side || valve.cylinder)
    if (const auto fits = names.fitting(valve); fits.size() == 1) said.valve = fits.front();
  for (const std::string& word : said.valve ? valve.rest : words_in(open)) {
    hints.add(word);
    if (said.unit == ColumnUnit::none) said.unit = unit_named_by(word);
  }
  said.what = hints.what();
  said.after = hints.has(Hint::after);
  return said;
}

}  // namespace shimwright
