// SPDX-License-Identifier: MPL-2.0
#include "core/service/drawer_after.hpp"

#include <algorithm>
#include <optional>

#include "core/entries/entry_row.hpp"
#include "core/service/arrivals.hpp"
#include "core/service/entered.hpp"
#include "core/service/entry_value.hpp"
#include "core/service/rules.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::size_t letters_of_a_note = 80;

// A row of the drawer, as it is and as it will be.
struct DrawerRow {
  int number = 0;
  std::string series = {};
  std::optional<Length> size = {};
  std::int64_t count = 0;
  std::string note = {};
  bool is_blank = false;
  bool is_changed = false;
};

class Drawer {
 public:
  Drawer(const Service& service, const Findings& found)
      : found_(found), unit_(found.teller.unit()) {
    for (const auto& spare : service.spares) rows_.push_back(row_of(service, spare));
  }

  // False where no row has one.
  bool take(const MovedShim& shim) {
    DrawerRow* row = holding(shim, 1);
    if (row == nullptr) return false;
    row->is_changed = true;
    if (--row->count == 0) *row = {.number = row->number, .is_blank = true, .is_changed = true};
    return true;
  }

  // False where there is no room.
  bool put(const MovedShim& shim, const std::string& note) {
    DrawerRow* row = holding(shim, 0);
    if (row == nullptr) {
      const auto blank = std::ranges::find_if(rows_, &DrawerRow::is_blank);
      if (blank == rows_.end()) return false;
      *blank = {.number = blank->number, .series = shim.series, .size = shim.size};
      row = &*blank;
    }
    ++row->count;
    row->is_changed = true;
    const std::string both = row->note.empty() ? note : row->note + "; " + note;
    if (both.size() <= letters_of_a_note) row->note = both;
    return true;
  }

  std::vector<EntryWrite> writes() const {
    std::vector<EntryWrite> all;
    for (const DrawerRow& row : rows_) {
      if (!row.is_changed) continue;
      const auto put = [&](const char* kind, int value, Entry what) {
        all.push_back({kind, std::to_string(row.number), value, std::move(what)});
      };
      const auto text = [](const std::string& words) {
        return words.empty() ? Entry() : Entry(words);
      };
      put("spare", entry_value::spare_series, text(row.series));
      put("spare", entry_value::spare_size, row.size ? Entry(in_unit(*row.size, unit_)) : Entry());
      put("spare", entry_value::spare_count,
          row.count > 0 ? Entry(static_cast<double>(row.count)) : Entry());
      put("note", 0, text(row.note));
    }
    return all;
  }

 private:
  DrawerRow row_of(const Service& service, const Service::ShimEntries& spare) const {
    const auto note = service.spare_notes.find(spare.row);
    const Entry words = note == service.spare_notes.end() ? Entry() : note->second;
    DrawerRow row{.number = spare.row,
                  .series = not_given(spare.series) ? found_.one_series : word_in(spare.series),
                  .size = length_entered(spare.size, unit_),
                  .note = not_given(words) ? std::string() : word_in(words)};
    row.is_blank = true;
    for (const Entry* entry : {&spare.series, &spare.size, &spare.count, &words})
      if (!not_given(*entry) || has_failed(*entry)) row.is_blank = false;
    // A count that is left out is one.
    if (row.size) row.count = static_cast<std::int64_t>(number_entered(spare.count).value_or(1));
    return row;
  }

  DrawerRow* holding(const MovedShim& shim, std::int64_t least) {
    const auto row = std::ranges::find_if(rows_, [&](const DrawerRow& one) {
      return one.size == shim.size && one.count >= least && same_word(one.series, shim.series);
    });
    return row == rows_.end() ? nullptr : &*row;
  }

  const Findings& found_;
  Unit unit_;
  std::vector<DrawerRow> rows_;
};

bool is_fitted(const std::vector<FittedArrival>& fitted, std::size_t row) {
  return std::ranges::find(fitted, row, &FittedArrival::row) != fitted.end();
}

// Out of that valve, as its card has it.
MovedShim with_its_mark(MovedShim shim, const Service& service, const Findings& found) {
  for (std::size_t i = 0; i < found.valves.size(); ++i) {
    const ValveFindings& valve = found.valves[i];
    if (service.valves[i].name == shim.valve && differs_from_mark(valve.trust) &&
        valve.shim == shim.size)
      shim.marked = valve.marked;
  }
  return shim;
}

}  // namespace

DrawerAfter drawer_after(const Service& service, const Findings& found, bool arrivals,
                         std::string_view day) {
  DrawerAfter after;
  Drawer drawer(service, found);
  const ShimMoves moves = shim_moves(service, found);
  for (const MovedShim& shim : moves.spares_fitted)
    (drawer.take(shim) ? after.out : after.not_listed).push_back(shim);
  const auto put = [&](const MovedShim& shim, std::string note) {
    if (shim.marked) note = found.teller.say(Say::close_marked, {*shim.marked, note});
    if (drawer.put(shim, note))
      after.in.push_back(shim);
    else
      ++after.rows_short;
  };
  for (const MovedShim& shim : moves.left_over)
    put(with_its_mark(shim, service, found),
        found.teller.say(Say::close_out_of_valve, {shim.valve, std::string(day)}));
  if (arrivals) {
    const auto fitted = arrivals_fitted(service, found);
    for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
      const ArrivalFindings& shim = found.arrivals[i];
      if (shim.state != ArrivalState::arrived || !shim.size || is_fitted(fitted, i)) continue;
      const bool differs = differs_from_its_mark(shim, found.allowed);
      put({shim.series, *shim.size, {}, differs ? shim.marked : std::nullopt},
          found.teller.say(Say::close_bought_unused, {std::string(day)}));
      after.arrivals.push_back(i);
    }
  }
  if (after.rows_short == 0) after.writes = drawer.writes();
  return after;
}

}  // namespace shimwright
