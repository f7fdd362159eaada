// SPDX-License-Identifier: MPL-2.0
//
// What the hidden sheet holds, derived from the descriptions of all other sheets: the entries, a
// row for each kind and name (the protocol of service.hpp); one answer for each table of the View;
// and the pieces of these that conditional formats look at. Nothing is decided there.
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "book/description.hpp"

namespace shimwright::book {

// By which name formulas call all entries, and the table in which they are told as one text.
inline constexpr std::string_view entries_name = "entries";
inline constexpr std::string_view drift_entries_name = "drift_entries";
inline constexpr std::string_view entries_as_text = "entries";
// The same but for the gaps, of which most tables are not told: what a gap does not change is not
// worked out anew when one is typed.
inline constexpr std::string_view lasting_entries_name = "lasting_entries";
inline constexpr std::string_view lasting_as_text = "lasting";

class Gathered {
 public:
  explicit Gathered(std::span<const SheetDescription> sheets);

  // The hidden sheet itself.
  SheetDescription sheet() const;

  // By which names formulas call its cells, and what each stands for: `entries`, `tells_book`, ...
  std::vector<std::pair<std::string, std::string>> names() const;

  // Where an entry's copy stands. Throws std::out_of_range where no sheet takes it.
  At entry(std::string_view kind, std::string_view name, int value) const;

  // Where a table of the View is told. Throws std::out_of_range where there is none of that name.
  At tells(std::string_view table) const;

  // Where a piece stands that a format or a chart looks at; of a column, in its row.
  At piece(const Shows& piece) const;

 private:
  struct Row {
    std::string kind;
    std::string name;
    std::map<int, Content> values;
  };

  std::vector<Row> drift_rows() const;
  Area drift_area() const;
  void gather_for_drift(std::vector<Field>& fields) const;

  // The last of them hold the gaps.
  Area rows_area() const;
  Area lasting_area() const;
  Area half_with(int row) const;
  Row& row(const std::string& kind, const std::string& name);
  void note_table(const std::string& table);
  void note_tables(const Field& field);
  void watch(const Field& field);
  void watch(const Content& content, const Shows& piece);
  void watch(const Shows& piece);

  int first_tells_column() const { return 2 + values_ + 1; }
  int first_piece_column() const { return first_tells_column() + 3; }

  std::vector<Row> rows_;
  int lasting_ = 0;  // of them, above the gaps
  int values_ = 0;   // of the longest row
  std::map<std::pair<std::string, std::string>, std::size_t, std::less<>> index_;
  // The entries as one text, with the gaps and without, and the tables of the View that some sheet
  // shows; the steps for formulas of people's own.
  std::vector<std::string> tables_{std::string(entries_as_text), std::string(lasting_as_text),
                                   "steps"};
  std::vector<Shows> watched_;  // `row` is the last of them that is looked at
};

// The name by which formulas call that table of the View.
std::string tells_name(std::string_view table);

}  // namespace shimwright::book
