// SPDX-License-Identifier: MPL-2.0
//
// What stands in the fields of the dialog for a new service book: texts, as typed. They are kept
// for the next time, and what one field says of another (a usual engine fills in how it lies and
// fires) is settled here.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/engine/layout.hpp"

namespace shimwright::commands {

enum class Field : std::size_t {
  engine,  // one of the usual engines by name, or own_layout
  arrangement,
  cylinders,
  banks,
  firing,
  shims_changed,  // one of the words of the Engine sheet
  inlet_valves,
  exhaust_valves,
  unit,
  inlet_min,
  inlet_max,
  exhaust_min,
  exhaust_max,
  inlet_series,
  exhaust_series,
  inlet_from,
  inlet_to,
  inlet_step,
  inlet_price,
  exhaust_from,
  exhaust_to,
  exhaust_step,
  exhaust_price,
  currency,
  count
};

inline constexpr std::size_t field_count = static_cast<std::size_t>(Field::count);

// The name under which a field is remembered: `InletMin`.
std::string_view key_of(Field field);

class NewBookEntries {
 public:
  std::string& operator[](Field field) { return texts_[static_cast<std::size_t>(field)]; }
  const std::string& operator[](Field field) const {
    return texts_[static_cast<std::size_t>(field)];
  }
  bool operator==(const NewBookEntries&) const = default;

 private:
  std::array<std::string, field_count> texts_;
};

inline constexpr std::string_view own_layout = "own layout";

// What a person meets who has never made a book: an inline four in mm, camshafts in place, limits
// and sizes blank.
NewBookEntries first_entries();

// Both sides take shims of one series, so one row of sizes serves both: the inlet's.
bool one_series(const NewBookEntries& entries);

// The exhaust's sizes on sale and their price. Of one series they show the inlet's (as_seen); what
// they held before is kept for the time when the series differ again, and is not wanted in the next
// dialog (without_unseen).
inline constexpr std::array exhaust_sale = {Field::exhaust_from, Field::exhaust_to,
                                            Field::exhaust_step, Field::exhaust_price};
NewBookEntries as_seen(NewBookEntries entries);
NewBookEntries without_unseen(NewBookEntries entries);

// The entries once `changed` has been typed or chosen: choosing an engine fills in how it lies
// and fires; another number of cylinders lets them lie in the usual way; an engine that lies like
// none of the usual ones (any more) is called own layout; and an exhaust series that has come to be
// one of its own, and has no sizes yet, begins with the inlet's.
void settle(NewBookEntries& entries, Field changed);

// The whole number from 1 to `most` that was typed, or none.
std::optional<int> count_written(std::string_view text, int most);

inline constexpr std::array arrangements = {Arrangement::in_line, Arrangement::vee,
                                            Arrangement::flat};
std::optional<Arrangement> arrangement_named(std::string_view word);

// How the cylinders lie, in one line: `1-2-3-4`, `right 2-4 / left 1-3`.
std::string banks_written(const std::vector<Bank>& banks);

}  // namespace shimwright::commands
