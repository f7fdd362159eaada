// SPDX-License-Identifier: MPL-2.0
//
// A sheet in a real LibreOffice with the extension installed, for tests: one office a test
// program, started by main.cpp.
#pragma once

#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "office/office.hpp"

namespace shimwright::tests {

namespace css = com::sun::star;

// What Calc calls an error (XFormulaTokens have no names for them).
inline constexpr int bad_argument = 502;    // Err:502
inline constexpr int argument_error = 504;  // Err:504
inline constexpr int no_answer = 32767;     // #N/A

// The office of this test program.
office::Office& the_office();
void start_office(const office::Settings& settings);
void end_office();

class Sheet {
 public:
  Sheet();                                            // a new document
  explicit Sheet(const std::filesystem::path& book);  // the first sheet of a file
  ~Sheet();
  Sheet(const Sheet&) = delete;
  Sheet& operator=(const Sheet&) = delete;

  // What is typed: a number, or a formula in English (=SUM(A1;B1)).
  void put(std::string_view place, double number);
  void put(std::string_view place, std::string_view text_or_formula);
  // Text as it stands, even where it looks like a number.
  void put_text(std::string_view place, std::string_view text);
  // As typed with the decimal mark of the user's language.
  void put_local(std::string_view place, std::string_view formula);
  void put_row(std::string_view first, const std::vector<std::string>& cells);
  void put_column(std::string_view first, const std::vector<double>& numbers);
  // Entered with Ctrl+Shift+Enter over a range.
  void put_matrix(std::string_view range, std::string_view formula);

  double number(std::string_view place) const;
  std::string text(std::string_view place) const;  // as displayed
  int error(std::string_view place) const;         // 0: none
  std::string formula(std::string_view place) const;
  std::vector<std::string> texts(std::string_view range) const;  // row by row

  // One formula in a cell of its own, and what it came to.
  double number_of(std::string_view formula);
  std::string text_of(std::string_view formula);
  int error_of(std::string_view formula);

  void save(const std::filesystem::path& file, std::string_view filter) const;
  void recalculate() const;

 private:
  css::uno::Reference<css::table::XCell> cell(std::string_view place) const;

  // Puts it in a cell not used before: a cell keeps the number format of its first formula.
  std::string scratch(std::string_view formula);

  int scratches_ = 0;
  css::uno::Reference<css::lang::XComponent> document_;
  css::uno::Reference<css::sheet::XSpreadsheet> sheet_;
};

// A function called through FunctionAccess, as macros do it.
css::uno::Any call(std::string_view name, const std::vector<css::uno::Any>& arguments);

// For arguments of call().
css::uno::Any number(double value);
css::uno::Any text(std::string_view value);
css::uno::Any column(const std::vector<css::uno::Any>& values);

}  // namespace shimwright::tests
