// SPDX-License-Identifier: MPL-2.0
//
// What a command writes into the cells of a book, with what stood there before, so that Undo and
// Redo put it back by themselves: values, words and formulas, not looks. The office's own record of
// a cell goes to its sheet and scrolls to it each time: 5 to 10 s for a check of 16 valves.
#pragma once

#include <com/sun/star/uno/Sequence.hxx>
#include <string>
#include <variant>
#include <vector>

#include "commands/service_book.hpp"

namespace shimwright::commands {

class CellChanges {
 public:
  // Each writes at once, to sheets that are not protected. A cell that holds that already is passed
  // over. Nothing clears the cell.
  void put(const ServiceBook::Place& place, const Entry& what);
  void clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area);

  // Rows of one width into cells that are blank, all at once: 5 000 rows of the log in under 2 s
  // with all that follows, where one by one they took 9.
  void fill(const ServiceBook::Place& first, const EntryTable& rows);

  void undo(const ServiceBook::Document& document) const;
  void redo(const ServiceBook::Document& document) const;

 private:
  struct Formula {
    rtl::OUString written;
    bool operator==(const Formula&) const = default;
  };
  using Content = std::variant<std::monostate, double, rtl::OUString, Formula>;
  struct Change {
    std::size_t sheet = 0;
    book::At at;
    Content before;
    Content after;
  };
  struct Filled {
    std::size_t sheet = 0;
    book::Area area;
    css::uno::Sequence<css::uno::Sequence<css::uno::Any>> rows;
  };
  using One = std::variant<Change, Filled>;

  static Content content_of(const Ref<css::table::XCell>& cell);
  static void write(const Ref<css::sheet::XSpreadsheet>& sheet, book::At at, const Content& what);
  static void write(const Ref<css::sheet::XSpreadsheet>& sheet, const Filled& rows);
  void change(const Ref<css::sheet::XSpreadsheet>& sheet, book::At at, Content what);
  std::size_t numbered(const Ref<css::sheet::XSpreadsheet>& sheet);

  std::vector<rtl::OUString> sheets_;
  std::vector<One> changes_;
};

}  // namespace shimwright::commands
