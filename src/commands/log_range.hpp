// SPDX-License-Identifier: MPL-2.0
//
// The rows of the log in an open book: read, and added to. What stands there is never changed.
#pragma once

#include <optional>
#include <span>

#include "commands/service_book.hpp"
#include "commands/undo_step.hpp"
#include "core/log/log_row.hpp"

namespace shimwright::commands {

class LogRange {
 public:
  // None where the document has no log.
  static std::optional<LogRange> in(const ServiceBook::Document& document);

  // From the first row to the last that holds anything, blank ones between them too; below the
  // named range as well, where a person typed on. In the order of LogColumn.
  EntryTable rows() const;

  // Below the last row that holds anything; the named range, and what is printed, grow so that
  // blank rows remain. With the sheet unlocked.
  void append(UndoStep& step, std::span<const LogRow> rows, Unit unit) const;

  // Has all rows printed that hold anything, also those that were not appended here.
  void print_used() const;

  const Ref<css::sheet::XSpreadsheet>& sheet() const { return sheet_; }
  // Of the last row that holds anything, counted from 0; that of the headings where none does.
  int last_used_row() const;

 private:
  LogRange(ServiceBook::Document document, Ref<css::sheet::XSpreadsheet> sheet, book::At first,
           int rows)
      : document_(std::move(document)), sheet_(std::move(sheet)), first_(first), rows_(rows) {}

  void grow_to(UndoStep& step, int rows) const;
  void print(int rows) const;

  ServiceBook::Document document_;
  Ref<css::sheet::XSpreadsheet> sheet_;
  book::At first_;
  int rows_ = 0;  // of the named range
};

}  // namespace shimwright::commands
