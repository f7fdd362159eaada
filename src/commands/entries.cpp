// SPDX-License-Identifier: MPL-2.0
#include "commands/entries.hpp"

#include <algorithm>
#include <cmath>

#include "book/places.hpp"
#include "core/crank/firing.hpp"
#include "core/engine/presets.hpp"
#include "core/values/length.hpp"
#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

constexpr std::array<std::string_view, field_count> keys = {
    "Engine",      "Arrangement",   "Cylinders",     "Banks",       "Firing",       "ShimsChanged",
    "InletValves", "ExhaustValves", "Unit",          "InletMin",    "InletMax",     "ExhaustMin",
    "ExhaustMax",  "InletSeries",   "ExhaustSeries", "InletFrom",   "InletTo",      "InletStep",
    "InletPrice",  "ExhaustFrom",   "ExhaustTo",     "ExhaustStep", "ExhaustPrice", "Currency"};

void lay_out_as(NewBookEntries& entries, const EngineLayout& layout) {
  entries[Field::arrangement] = word_for(layout.arrangement);
  entries[Field::cylinders] = std::to_string(cylinders_of(layout));
  entries[Field::banks] = banks_written(layout.banks);
  entries[Field::firing] = layout.firing;
}

// Its firing aside: engines that lie alike fire in more than one way.
bool laid_out_as(const NewBookEntries& entries, const EngineLayout& layout) {
  NewBookEntries other;
  lay_out_as(other, layout);
  return std::ranges::all_of(std::array{Field::arrangement, Field::cylinders, Field::banks},
                             [&](Field field) { return entries[field] == other[field]; });
}

constexpr std::array inlet_sale = {Field::inlet_from, Field::inlet_to, Field::inlet_step,
                                   Field::inlet_price};

void take_inlet_sale_for_exhaust(NewBookEntries& entries) {
  for (std::size_t i = 0; i < exhaust_sale.size(); ++i)
    entries[exhaust_sale[i]] = entries[inlet_sale[i]];
}

bool has_exhaust_sale(const NewBookEntries& entries) {
  return std::ranges::any_of(exhaust_sale,
                             [&](Field field) { return !trimmed(entries[field]).empty(); });
}

void settle_series(NewBookEntries& entries) {
  if (one_series(entries)) {
    // A start that was never changed is none to come back to.
    if (as_seen(entries) == entries) entries = without_unseen(entries);
  } else if (!has_exhaust_sale(entries)) {
    take_inlet_sale_for_exhaust(entries);
  }
}

}  // namespace

std::string_view key_of(Field field) { return keys[static_cast<std::size_t>(field)]; }

NewBookEntries first_entries() {
  NewBookEntries entries;
  entries[Field::engine] = "inline four";
  settle(entries, Field::engine);
  entries[Field::shims_changed] = book::engine_place::cams_in_place;
  entries[Field::inlet_valves] = "2";
  entries[Field::exhaust_valves] = "2";
  entries[Field::unit] = "mm";
  entries[Field::inlet_series] = "A";
  entries[Field::exhaust_series] = "A";
  return entries;
}

bool one_series(const NewBookEntries& entries) {
  return same_word(entries[Field::inlet_series], entries[Field::exhaust_series]);
}

NewBookEntries as_seen(NewBookEntries entries) {
  if (one_series(entries)) take_inlet_sale_for_exhaust(entries);
  return entries;
}

NewBookEntries without_unseen(NewBookEntries entries) {
  if (one_series(entries))
    for (const Field field : exhaust_sale) entries[field].clear();
  return entries;
}

void settle(NewBookEntries& entries, Field changed) {
  if (changed == Field::inlet_series || changed == Field::exhaust_series) settle_series(entries);
  const auto all = presets();
  if (changed == Field::engine) {
    const auto chosen = std::ranges::find(all, entries[Field::engine], &Preset::name);
    if (chosen != all.end()) lay_out_as(entries, chosen->layout);
    return;
  }
  if (changed == Field::arrangement || changed == Field::cylinders) {
    const auto arrangement = arrangement_named(entries[Field::arrangement]);
    const auto cylinders = count_written(entries[Field::cylinders], Firing::most_cylinders);
    if (arrangement && cylinders)
      entries[Field::banks] = banks_written(usual_banks(*arrangement, *cylinders));
  }
  const auto like = std::ranges::find_if(
      all, [&](const Preset& preset) { return laid_out_as(entries, preset.layout); });
  entries[Field::engine] = like == all.end() ? std::string(own_layout) : like->name;
}

std::optional<int> count_written(std::string_view text, int most) {
  const auto number = number_written(text);
  if (!number || *number < 1 || *number > most || *number != std::floor(*number))
    return std::nullopt;
  return static_cast<int>(*number);
}

std::optional<Arrangement> arrangement_named(std::string_view word) {
  for (const Arrangement each : arrangements)
    if (word_for(each) == word) return each;
  return std::nullopt;
}

std::string banks_written(const std::vector<Bank>& banks) {
  std::string text;
  for (const Bank& bank : banks) {
    if (!text.empty()) text += " / ";
    text += bank.name;
    char mark = bank.name.empty() ? '\0' : ' ';
    for (const int cylinder : bank.cylinders) {
      if (mark != '\0') text += mark;
      text += std::to_string(cylinder);
      mark = '-';
    }
  }
  return text;
}

}  // namespace shimwright::commands
