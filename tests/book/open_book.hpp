// SPDX-License-Identifier: MPL-2.0
//
// A service book open in an office, as its owner meets it: cells are typed into only where they
// are unlocked, and read as they are displayed.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "book/area.hpp"
#include "book/office/uno.hpp"
#include "book/places.hpp"
#include "office/office.hpp"

namespace shimwright::tests {

namespace css = com::sun::star;
using book::Area;
using book::At;
using book::Ref;

// The sheets a person works with, left to right: all but Workings.
inline constexpr std::string_view faces[] = {
    book::sheet_name::read_me,  book::sheet_name::engine, book::sheet_name::head,
    book::sheet_name::measure,  book::sheet_name::shims,  book::sheet_name::plan,
    book::sheet_name::arrivals, book::sheet_name::fit,    book::sheet_name::recheck,
    book::sheet_name::log,      book::sheet_name::drift};

class OpenBook {
 public:
  // A template opens as a new book, a book as itself.
  OpenBook(const office::Office& office, const std::filesystem::path& file);
  // As it comes from the builder, never saved.
  OpenBook(const office::Office& office, const EngineLayout& layout);
  ~OpenBook();
  OpenBook(const OpenBook&) = delete;
  OpenBook& operator=(const OpenBook&) = delete;

  const Ref<css::sheet::XSpreadsheetDocument>& document() const { return document_; }
  Ref<css::sheet::XSpreadsheet> sheet(std::string_view name) const;
  Ref<css::table::XCell> cell(std::string_view sheet, At at) const;

  // Typing. Throws std::logic_error where the cell is locked: a person could not.
  void type(std::string_view sheet, At at, double number);
  void type(std::string_view sheet, At at, std::string_view text);
  // As the keys are struck, with the decimal mark of the user's language.
  void strike(std::string_view sheet, At at, std::string_view keys);
  void clear(std::string_view sheet, At at);

  bool locked(std::string_view sheet, At at) const;
  std::string shown(std::string_view sheet, At at) const;  // as displayed
  double number(std::string_view sheet, At at) const;
  int error(std::string_view sheet, At at) const;  // 0: none
  std::string formula(std::string_view sheet, At at) const;

  // A piece of what the add-in tells of the book: `valves`, `state`, row 3.
  std::string piece(std::string_view table, std::string_view column, int row = 1) const;

  // Every filled cell's displayed text, row by row; errors as they are displayed.
  std::vector<std::pair<At, std::string>> texts(std::string_view sheet) const;
  // Whether a cell displays these words, among others or alone.
  bool tells(std::string_view sheet, std::string_view words) const;
  // What stands in every cell up to the last used one, row by row: formulas and entries.
  std::vector<std::string> contents(std::string_view sheet) const;
  // Where formulas came to an error: `$D$5`; empty where none did.
  std::string errors(std::string_view sheet) const;
  // The first cell that displays this, row by row. Throws std::logic_error where none does.
  At find(std::string_view sheet, std::string_view text) const;

  // A formula's value in a cell of no one's, which is then cleared.
  double value_of(std::string_view sheet, std::string_view formula) const;
  std::string text_of(std::string_view sheet, std::string_view formula) const;

  void recalculate() const;
  void save(const std::filesystem::path& file, std::string_view filter = "calc8") const;

 private:
  Ref<css::table::XCell> unlocked_cell(std::string_view sheet, At at) const;

  Ref<css::sheet::XSpreadsheetDocument> document_;
  mutable std::map<std::string, Ref<css::sheet::XSpreadsheet>, std::less<>> sheets_;
};

// A copy in the office's own folder, of the same name: an office locks what it opens, and one that
// is killed would leave the lock beside the build's own file.
std::filesystem::path own_copy(const office::Office& office, const std::filesystem::path& file);

// What the build made, beside the package: `Valve service, demo.ods`.
std::filesystem::path demo_file();
std::filesystem::path template_file();

inline constexpr std::string_view xlsx = "Calc MS Excel 2007 XML";

}  // namespace shimwright::tests
