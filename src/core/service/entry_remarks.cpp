// SPDX-License-Identifier: MPL-2.0
#include "core/service/entry_remarks.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/entered.hpp"
#include "core/service/rules.hpp"
#include "core/values/choice.hpp"
#include "core/values/share.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

bool is_of_limits(const Trouble& trouble) {
  constexpr std::array columns{"series", "min", "max", "aim", "doubt"};
  return std::ranges::find(columns, trouble.column) != columns.end();
}

Word side_word(Side side) { return side == Side::exhaust ? Say::exhaust : Say::inlet; }

void add(Findings& found, Page page, Told said) {
  found.remarks.push_back({.page = page, .said = std::move(said)});
}

void add_failed(Findings& found, Page page, const Entry& entry, Told name) {
  if (has_failed(entry)) add(found, page, {Say::entry_failed, {in_words(name, found.teller)}});
}

void tell_failures_on_engine(const Service& service, Findings& found) {
  constexpr std::array<std::pair<Entry Service::*, Say>, 18> settings{
      {{&Service::engine, Say::name_of_engine},
       {&Service::unit, Say::name_of_unit},
       {&Service::doubt, Say::name_of_doubt},
       {&Service::allowed_difference, Say::name_of_allowed},
       {&Service::marks, Say::name_of_marks},
       {&Service::stay_clear, Say::name_of_stay_clear},
       {&Service::touch_good, Say::name_of_touch_good},
       {&Service::first, Say::name_of_first},
       {&Service::work, Say::name_of_work},
       {&Service::nearest, Say::name_of_nearest},
       {&Service::currency, Say::name_of_currency},
       {&Service::firing, Say::name_of_firing},
       {&Service::margin, Say::name_of_margin},
       {&Service::camshafts_out, Say::name_of_camshafts},
       {&Service::distance_unit, Say::engine_distance_unit},
       {&Service::interval, Say::engine_interval},
       {&Service::earlier, Say::engine_earlier},
       {&Service::language, Say::name_of_language}}};
  for (const auto& [entry, name] : settings)
    add_failed(found, Page::engine, service.*entry, {name});
  constexpr std::array<std::pair<Entry Service::SideEntries::*, Say>, 6> of_side{
      {{&Service::SideEntries::min, Say::name_of_min},
       {&Service::SideEntries::max, Say::name_of_max},
       {&Service::SideEntries::bias, Say::name_of_bias},
       {&Service::SideEntries::series, Say::name_of_series},
       {&Service::SideEntries::opens, Say::name_of_opens},
       {&Service::SideEntries::closes, Say::name_of_closes}}};
  for (const auto& [entry, name] : of_side)
    for (const Side side : {Side::exhaust, Side::inlet})
      add_failed(found, Page::engine, service.of(side).*entry,
                 {Say::name_on_side, {name, side_word(side)}});
}

void tell_of_limits(const Service& service, Findings& found, const EntryTable& limits,
                    const EntryTable& rules) {
  bool told_of_doubt = false;
  for (const Trouble& trouble : read_entries(limits, {}, rules).troubles) {
    if (trouble.column == "doubt" && std::exchange(told_of_doubt, true)) continue;
    Remark remark{.page = Page::engine, .said = trouble, .grave = trouble.grave};
    if (trouble.table == "valves") {
      // Each row stands for a side; the doubt is that of both.
      const Say side = trouble.row == 1 ? Say::exhaust_side : Say::inlet_side;
      remark.lead = Told{trouble.column == "doubt" ? Say::name_of_doubt : side};
      std::get<Trouble>(remark.said).about = {};
    }
    found.remarks.push_back(std::move(remark));
  }
  const bool any_reading = std::ranges::any_of(
      found.valves, [](const ValveFindings& valve) { return valve.gap.has_value(); });
  for (const Side side : {Side::exhaust, Side::inlet}) {
    const Service::SideEntries& entries = service.of(side);
    const auto bias = number_entered(entries.bias);
    if (!not_given(entries.bias) && !(bias && *bias >= 0 && *bias <= 1))
      add(found, Page::engine, {Say::bias_wrong, {side_word(side)}});
    const bool missing = not_given(entries.min) || not_given(entries.max);
    if (any_reading && missing) add(found, Page::engine, {Say::limits_missing, {side_word(side)}});
  }
}

// ---- Head.

// `1 EX L (275)`.
std::string named(const std::string& name, const std::string& what) {
  return name + " (" + what + ")";
}

void tell_of_marks(const Service& service, Findings& found) {
  std::vector<std::string> unknown;
  for (std::size_t i = 0; i < found.valves.size(); ++i) {
    const ValveFindings& valve = found.valves[i];
    // Whoever measured the shim may note any mark.
    if (!not_given(service.valves[i].mark) && !valve.marked && !valve.measured)
      unknown.push_back(named(service.valves[i].name, word_in(service.valves[i].mark)));
  }
  if (!unknown.empty()) add(found, Page::head, {Say::marks_unknown, {std::move(unknown)}});
}

// The first in full, of the others the names.
void tell_of_misread_shims(const Service& service, Findings& found) {
  std::vector<std::string> likewise;
  bool told = false;
  for (std::size_t i = 0; i < found.valves.size(); ++i) {
    const ValveFindings& valve = found.valves[i];
    if (!is_far_apart(valve, found.allowed)) continue;
    const std::string& name = service.valves[i].name;
    if (std::exchange(told, true)) {
      likewise.push_back(name);
      continue;
    }
    Told said{Say::far_apart,
              {name, *valve.measured, *valve.marked, abs(*valve.measured - *valve.marked)}};
    if (const auto scheme = scheme_that_agrees(word_in(service.valves[i].mark), *valve.marked,
                                               *valve.measured, found.allowed)) {
      said.what = Say::far_apart_scheme;
      said.words.emplace_back(*scheme);
    }
    add(found, Page::head, std::move(said));
  }
  if (!likewise.empty()) add(found, Page::head, {Say::far_apart_likewise, {std::move(likewise)}});
}

// Pasted, for the checks of the cells refuse them.
void tell_of_numbers_as_text(const Service& service, Findings& found) {
  std::vector<std::string> where;
  const Unit unit = found.teller.unit();
  for (std::size_t i = 0; i < service.valves.size(); ++i) {
    const auto& valve = service.valves[i];
    std::string texts;
    const auto note = [&texts](const Entry& entry) {
      texts += (texts.empty() ? "" : ", ") + word_in(entry);
    };
    if (is_length_as_text(valve.gap, unit)) note(valve.gap);
    if (std::holds_alternative<std::string>(valve.mark) && found.valves[i].marked) note(valve.mark);
    if (is_length_as_text(valve.micrometer, unit)) note(valve.micrometer);
    if (!texts.empty()) where.push_back(named(valve.name, texts));
  }
  if (!where.empty()) add(found, Page::head, {Say::numbers_as_text, {std::move(where)}});
}

void tell_of_exceptions(const Service& service, Findings& found) {
  for (const auto& valve : service.valves)
    if (!exception_named(valve.exception))
      add(found, Page::head,
          {Say::exception_unclear, {valve.name, shortened(word_in(valve.exception))}});
}

void tell_failures_on_head(const Service& service, Findings& found) {
  constexpr std::array<std::pair<Entry Service::ValveEntries::*, Say>, 4> entries{
      {{&Service::ValveEntries::gap, Say::name_of_gap},
       {&Service::ValveEntries::mark, Say::name_of_mark},
       {&Service::ValveEntries::micrometer, Say::name_of_micrometer},
       {&Service::ValveEntries::exception, Say::name_of_exception}}};
  for (const auto& valve : service.valves)
    for (const auto& [entry, name] : entries)
      add_failed(found, Page::head, valve.*entry, {Say::name_on_valve, {valve.name, name}});
}

// ---- Shims.

template <class Entries>
void tell_failed_row(const Entries& row, Findings& found, Say which,
                     std::initializer_list<Entry Entries::*> entries) {
  for (const auto entry : entries)
    add_failed(found, Page::shims, row.*entry, {which, {std::int64_t{row.row}}});
}

void tell_failures_on_shims(const Service& service, Findings& found) {
  using Shim = Service::ShimEntries;
  using Sizes = Service::SizesEntries;
  for (const auto* list : {&service.spares, &service.singles})
    for (const Shim& row : *list)
      tell_failed_row(row, found, Say::name_of_row,
                      {&Shim::series, &Shim::size, &Shim::count, &Shim::price});
  for (const Sizes& row : service.sizes)
    tell_failed_row(row, found, Say::name_of_row_of_sizes,
                    {&Sizes::series, &Sizes::from, &Sizes::to, &Sizes::step, &Sizes::price});
}

void tell_of_sizes(Findings& found, const StockFindings& stock) {
  for (const SizesFindings& sizes : stock.sizes) {
    const std::int64_t row = sizes.row;
    if (sizes.too_many)
      add(found, Page::shims,
          {Say::sizes_too_many, {row, static_cast<std::int64_t>(longest_ladder)}});
    else if (sizes.entered && sizes.sizes.empty())
      add(found, Page::shims, {Say::sizes_give_none, {row}});
  }
}

// Where the limits are narrower than the step of the sizes on sale, no size may serve a gap.
void note_narrow_limits(Findings& found, const StockFindings& stock) {
  struct Note {
    Side side;
    Length width;
    Length step;
    std::int64_t share;  // of a hundred gaps
  };
  std::vector<Note> notes;
  for (const Side side : {Side::exhaust, Side::inlet}) {
    const SideFindings& own = found.of(side);
    if (!own.limits) continue;
    std::optional<Length> step;
    for (const SizesFindings& sizes : stock.sizes)
      if (sizes.sizes.size() > 1 && same_word(sizes.series, own.series))
        step = step ? std::min(*step, sizes.step) : sizes.step;
    const Length doubt = found.question.rules.use_doubt ? found.doubt : Length();
    const Length width = std::max(Length(), own.limits->max - own.limits->min - 2 * doubt);
    if (step && width < *step)
      notes.push_back({side, width, *step, gaps_served(*own.limits, *step, doubt).of_a_hundred()});
  }
  const bool alike = notes.size() == 2 && notes[0].width == notes[1].width &&
                     notes[0].step == notes[1].step && notes[0].share == notes[1].share;
  if (alike) {
    found.notes_on_shims = {
        {Say::sizes_narrow_both, {notes[0].width, notes[0].step, notes[0].share}}};
    return;
  }
  for (const Note& note : notes)
    found.notes_on_shims.push_back(
        {Say::sizes_narrow, {side_word(note.side), note.width, note.step, note.share}});
}

}  // namespace

void tell_remarks_on_engine(const Service& service, Findings& found, const EntryTable& limits,
                            const EntryTable& rules) {
  const std::string unit = word_in(service.unit);
  if (!not_given(service.unit) && !same_word(unit, "mm") && !same_word(unit, "inch"))
    add(found, Page::engine, {Say::unit_unknown});
  tell_failures_on_engine(service, found);
  tell_of_limits(service, found, limits, rules);
}

void tell_remarks_on_head(const Service& service, Findings& found,
                          const std::vector<Trouble>& troubles) {
  tell_failures_on_head(service, found);
  tell_of_marks(service, found);
  tell_of_misread_shims(service, found);
  tell_of_numbers_as_text(service, found);
  tell_of_exceptions(service, found);
  for (const Trouble& trouble : troubles)
    if (trouble.table == "valves" && !is_of_limits(trouble))
      found.remarks.push_back({.page = Page::head, .said = trouble, .grave = trouble.grave});
}

void tell_remarks_on_shims(const Service& service, Findings& found,
                           const std::vector<Trouble>& troubles, const StockFindings& stock) {
  using List = StockFindings::Origin::List;
  tell_failures_on_shims(service, found);
  tell_of_sizes(found, stock);
  note_narrow_limits(found, stock);
  if (!stock.sizes_as_text.empty()) {
    std::vector<std::string> rows;
    for (const int row : stock.sizes_as_text)
      rows.push_back(found.teller.say(Say::name_of_row, {std::int64_t{row}}));
    add(found, Page::shims, {Say::numbers_as_text, {std::move(rows)}});
  }
  std::set<std::pair<int, std::string>> told_of_sizes;  // row and column
  for (const Trouble& trouble : troubles) {
    if (trouble.table != "shims") continue;
    Remark remark{.page = Page::shims, .said = trouble, .grave = trouble.grave};
    if (trouble.row > 0) {
      const auto& origin = stock.origins.at(trouble.row - 1);
      if (origin.list == List::arrival) {
        if (trouble.what == Say::spare_twice) continue;  // an order may well hold a size twice
        remark.page = Page::arrivals;
      }
      if (origin.list == List::row_of_sizes &&
          !told_of_sizes.insert({origin.row, trouble.column}).second)
        continue;
      remark.lead = {
          origin.list == List::row_of_sizes ? Say::name_of_row_of_sizes : Say::name_of_row,
          {std::int64_t{origin.row}}};
    }
    // The earlier row is one of the table too, which lists rows of sizes last and without doubles.
    if (trouble.what == Say::spare_twice || trouble.what == Say::sale_twice) {
      const auto earlier = std::get<std::int64_t>(trouble.words.front());
      std::get<Trouble>(remark.said).words = {
          std::int64_t{stock.origins.at(static_cast<std::size_t>(earlier) - 1).row}};
    }
    found.remarks.push_back(std::move(remark));
  }
}

namespace {

// The first in full, of the others the rows.
void tell_of_marks_that_differ(const Service& service, Findings& found) {
  std::vector<std::string> likewise;
  bool told = false;
  for (std::size_t i = 0; i < service.arrivals.size(); ++i) {
    const ArrivalFindings& shim = found.arrivals[i];
    if (!differs_from_its_mark(shim, found.allowed) ||
        are_far_apart(shim.marked, shim.measured, found.allowed))
      continue;
    std::string name = found.teller.say(Say::name_of_row, {std::int64_t{service.arrivals[i].row}});
    if (std::exchange(told, true))
      likewise.push_back(std::move(name));
    else
      add(found, Page::arrivals,
          {Say::arrival_mark_differs,
           {std::move(name), *shim.measured, *shim.marked, abs(*shim.measured - *shim.marked)}});
  }
  if (!likewise.empty())
    add(found, Page::arrivals, {Say::far_apart_likewise, {std::move(likewise)}});
}

}  // namespace

void tell_remarks_on_arrivals(const Service& service, Findings& found) {
  using Arrival = Service::ArrivalEntries;
  std::vector<std::string> unknown;
  for (std::size_t i = 0; i < service.arrivals.size(); ++i) {
    const Arrival& row = service.arrivals[i];
    const ArrivalFindings& shim = found.arrivals[i];
    const std::string name = found.teller.say(Say::name_of_row, {std::int64_t{row.row}});
    for (const auto entry : {&Arrival::series, &Arrival::ordered, &Arrival::price,
                             &Arrival::arrived, &Arrival::mark, &Arrival::micrometer})
      add_failed(found, Page::arrivals, row.*entry, {Say::name_of_row, {std::int64_t{row.row}}});
    if (!not_given(row.mark) && !shim.marked && !shim.measured)
      unknown.push_back(named(name, word_in(row.mark)));
    if (are_far_apart(shim.marked, shim.measured, found.allowed))
      add(found, Page::arrivals,
          {Say::far_apart,
           {name, *shim.measured, *shim.marked, abs(*shim.measured - *shim.marked)}});
  }
  tell_of_marks_that_differ(service, found);
  if (!unknown.empty()) add(found, Page::arrivals, {Say::marks_unknown, {std::move(unknown)}});
}

}  // namespace shimwright
