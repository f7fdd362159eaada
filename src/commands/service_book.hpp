// SPDX-License-Identifier: MPL-2.0
//
// A service book that is open: its entries, read from the range `entries` that the book gathers
// them in, and written back to where a person sees them.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "book/area.hpp"
#include "book/office/uno.hpp"
#include "core/entries/entries.hpp"

namespace shimwright::commands {

namespace css = com::sun::star;
using book::Ref;

class ServiceBook {
 public:
  using Document = Ref<css::sheet::XSpreadsheetDocument>;

  // None where the document is no book of ours.
  static std::optional<ServiceBook> in(const Document& document);

  const EntryTable& entries() const { return entries_; }
  const Document& document() const { return document_; }

  struct Place {
    Ref<css::sheet::XSpreadsheet> sheet;
    book::At at;
  };
  // Where that value of the entries stands. Throws css::uno::RuntimeException where it does
  // nowhere.
  Place place_of(std::string_view kind, std::string_view name, int value) const;

 private:
  ServiceBook(Document document, Ref<css::table::XCellRange> gathered, EntryTable entries)
      : document_(std::move(document)),
        gathered_(std::move(gathered)),
        entries_(std::move(entries)) {}

  Document document_;
  Ref<css::table::XCellRange> gathered_;
  EntryTable entries_;
};

// Every cell of the range; one that holds neither a number nor words, such as a formula that came
// to an error, as blank.
EntryTable table_in(const Ref<css::table::XCellRange>& range);

// What is printed of the sheet ends with that row. Where a person has parted it, it stays so.
void print_down_to(const Ref<css::sheet::XSpreadsheet>& sheet, int row);

// Lifts the protection of a sheet, if it has any, until relock(). False from unlock() where a
// password keeps it.
class Lock {
 public:
  explicit Lock(const Ref<css::sheet::XSpreadsheet>& sheet) : sheet_(sheet) {}
  bool unlock();
  void relock();

 private:
  Ref<css::sheet::XSpreadsheet> sheet_;
  bool was_locked_ = false;
};

}  // namespace shimwright::commands
