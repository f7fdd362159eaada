// SPDX-License-Identifier: MPL-2.0
//
// What a command writes into the cells of a book: cell by cell, so that the office's Undo takes it
// back; a cell that holds that already is passed over.
#pragma once

#include <optional>
#include <variant>

#include "commands/service_book.hpp"

namespace shimwright::commands {

class CellChanges {
 public:
  // Each writes at once, to sheets that are not protected. A cell that holds that already is passed
  // over. Nothing clears the cell.
  void put(const ServiceBook::Place& place, const Entry& what);
  void clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area);

  // Rows, each from its first cell on.
  void fill(const ServiceBook::Place& first, const EntryTable& rows);

 private:
  using Content = std::variant<std::monostate, double, rtl::OUString>;
  // None of a formula, which is never what is to be written.
  static std::optional<Content> content_of(const Ref<css::table::XCell>& cell);
  static void write(const Ref<css::sheet::XSpreadsheet>& sheet, book::At at, const Content& what);
  static void change(const Ref<css::sheet::XSpreadsheet>& sheet, book::At at, const Content& what);
};

}  // namespace shimwright::commands
