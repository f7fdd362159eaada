// SPDX-License-Identifier: MPL-2.0
//
// Bringing in an old log, from the first guess to the rows that are taken: what its owner changes
// on the way, and what is shown of it, a line a column and a line a row. The dialog only hands this
// through.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/log/bring_in/preview.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

// The log as it stands in a book, read as far as rows are told apart by: check, round, date,
// distance and valve.
std::vector<LogRow> present_rows(const EntryTable& log);

// The table without blank rows at its ends, and without a title: rows with one cell filled above
// the rest.
OwnerTable without_title(OwnerTable table);

class BringIn {
 public:
  BringIn(OwnerTable table, BringInBook book, Teller teller);

  const OwnerTable& table() const { return table_; }
  const BringInBook& book() const { return book_; }
  const Mapping& mapping() const { return mapping_; }
  const Preview& preview() const { return preview_; }

  // Each reads all rows anew; ticks that were set by hand stay. Another meaning of a column gets
  // its unit guessed.
  void set_form(LogForm form);
  void set_heading_rows(std::size_t rows);
  void set_order(DateOrder order);
  void set_what(std::size_t column, std::optional<LogColumn> what);
  void set_valve(std::size_t column, std::optional<std::size_t> valve);
  void set_unit(std::size_t column, ColumnUnit unit);

  // Which rows have a line: all, or those that had no tick when this was asked for.
  void show(bool all);

  // By the line's number. A row that makes no sense gets no tick.
  void turn_tick(std::size_t line);
  void tick_all(bool tick);

  std::string columns_heading() const;
  std::vector<std::string> column_lines() const;
  std::string rows_heading() const;
  std::vector<std::string> row_lines() const;
  std::string row_line(std::size_t line) const;
  std::string outcome() const;  // rows taken, rows not taken and why, what to look at

  std::vector<LogRow> rows() const;  // that are taken

 private:
  void read();
  void pick_lines();

  OwnerTable table_;
  BringInBook book_;
  Teller teller_;
  Mapping mapping_;
  Preview preview_;
  std::vector<bool> ticks_;                      // a reading each
  std::map<std::pair<int, int>, bool> by_hand_;  // by source row and column
  bool all_ = true;
  std::vector<std::size_t> lines_;  // the readings shown
};

}  // namespace shimwright
