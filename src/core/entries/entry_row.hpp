// SPDX-License-Identifier: MPL-2.0
//
// One row of a table as a person filled it in: its cells read as words, numbers and lengths, and
// what is wrong with them told with its place. Helper of the readers of tables.
#pragma once

#include <cstddef>
#include <functional>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/entries/entries.hpp"
#include "core/values/length.hpp"
#include "core/values/money.hpp"

namespace shimwright {

// Beyond it a slip of unit or decimal mark is likelier than a shim so thick (common practice, no
// source).
inline constexpr Length unlikely_thickness = Length::nanometres(20'000'000);

struct EntryColumn {
  std::string_view name;
  std::optional<Say> the = {};          // how a sentence calls the number there; none: text is due
  std::optional<Length> unlikely = {};  // a length above it is sound but worth a second look
  bool of_shim = false;                 // where a shim's mark may be typed for its thickness
};

// A number of things, as a word of a sentence.
inline Word counted(std::size_t count) { return static_cast<std::int64_t>(count); }

struct TableDescription {
  std::string_view table;
  std::span<const EntryColumn> columns;
  std::size_t least;  // so many columns are due
  // Text in each of them that the table has makes its first row a heading; none: no heading.
  std::span<const std::size_t> number_columns = {};
  // What would be a grave trouble leaves its row out instead.
  bool rows_may_be_left_out = false;
};

// Nothing, or text of nothing but spaces.
bool is_blank(const Entry& entry);

// As text without outer spaces: a number as a person writes it, nothing as empty text.
std::string word_in(const Entry& entry);

struct GivenLength {
  std::optional<Length> value;
  bool entered = false;  // a number stands there, though it may be one that cannot be
};

class EntryRow {
 public:
  // `number` counts from 1 as the table was given. Keeps references to all the rest.
  EntryRow(const TableDescription& layout, std::size_t number, std::span<const Entry> cells,
           std::vector<Trouble>& troubles)
      : layout_(&layout), number_(number), cells_(cells), troubles_(&troubles) {}

  std::size_t number() const { return number_; }
  const Entry& at(std::size_t column) const;
  std::string word_at(std::size_t column) const { return word_in(at(column)); }
  bool all_blank() const;
  // Text in every number column, none of it a length, and no number anywhere: a row taken for a
  // heading is dropped without a word, so one that may hold a reading is none.
  bool is_heading() const;

  // Something in it cannot be, and the table can do without it.
  bool is_left_out() const { return left_out_; }

  // Every later trouble in this row is about it.
  void call_it(About about) { about_ = std::move(about); }
  void grave(std::size_t column, Say what, std::initializer_list<Word> words = {}) {
    left_out_ = left_out_ || layout_->rows_may_be_left_out;
    add(column, what, words, Weight::grave);
  }
  void note(std::size_t column, Say what, std::initializer_list<Word> words = {}) {
    add(column, what, words, Weight::note);
  }

  // Text where the number is due gets a note and counts as not given, as a blank does.
  std::optional<double> number_at(std::size_t column);

  // In mm. Zero counts as not given unless it can be meant; negative, beyond largest_length_mm or
  // not finite is a grave trouble.
  enum class Zero { not_given, is_meant };
  GivenLength length_at(std::size_t column, Zero zero = Zero::not_given);

  // A sum of money; none where nothing is given. What cannot be is a grave trouble or, where it
  // does not matter, a note.
  Money money_at(std::size_t column, bool matters = true);

 private:
  enum class Weight { note, grave };

  Say noun_at(std::size_t column) const { return layout_->columns[column].the.value(); }
  void tell_of_too_large(std::size_t column, double mm);
  void add(std::size_t column, Say what, std::initializer_list<Word> words, Weight weight);

  const TableDescription* layout_;
  std::size_t number_;
  std::span<const Entry> cells_;
  std::vector<Trouble>* troubles_;
  About about_;
  bool left_out_ = false;
};

// Where a table's rows begin, after a heading; none where nothing was given or the table is too
// narrow, which is a grave trouble. A first row that `is_data` says yes to is no heading.
std::optional<std::size_t> first_row(const TableDescription& layout, const EntryTable& table,
                                     std::vector<Trouble>& troubles,
                                     const std::function<bool(const EntryRow&)>& is_data = {});

}  // namespace shimwright
