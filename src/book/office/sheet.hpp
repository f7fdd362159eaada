// SPDX-License-Identifier: MPL-2.0
//
// One sheet of the book under construction, in the words of someone who lays it out: put this
// text here, merge that, check what is typed there, grade those cells by a condition.
#pragma once

#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "book/area.hpp"
#include "book/office/uno.hpp"

namespace shimwright::book {

// What may be typed into a cell, and what the person is told.
struct EntryCheck {
  enum class Kind { choice, condition, number, whole_number, text_length };
  Kind kind = Kind::condition;
  // choice: `"yes";"no"` or the name of a range. condition: a formula that is TRUE for a sound
  // entry, written for the first cell of the area. Else the least that may stand there, as a
  // formula; `most` likewise.
  std::string rule = {};
  std::string most = {};
  std::string title = {};
  std::string help = {};     // shown beside the cell while it is selected; empty: nothing is shown
  std::string refusal = {};  // what is wrong, when the rule is broken
  bool may_keep = false;     // only a warning: the entry may stay
};

// Where the condition holds, the cells wear the style; the first that holds wins. A relative
// reference in the condition counts from the first cell of the area.
struct Grade {
  std::string condition;
  std::string style;
};

class Sheet {
 public:
  Sheet(const Ref<css::sheet::XSpreadsheetDocument>& book, std::string_view name);

  const std::string& name() const { return name_; }

  // The page style over the whole sheet, so that the paper has no end.
  void paper();

  void text(At at, std::string_view words);
  void number(At at, double value);
  // As a person would type it: a number where it is one, else text; nothing where it is blank.
  void entry(At at, const std::string& typed);
  void formula(At at, std::string_view formula);
  // Every row of `formulas` must be as wide as the first; `from` is the first cell.
  void formulas(At from, const std::vector<std::vector<std::string>>& formulas);

  void style(const Area& area, std::string_view style);
  void merge(const Area& area);
  void column_width(int column, double mm);
  void row_height(int row, double mm);
  void row_heights(int first, int last, double mm);
  void check(const Area& area, const EntryCheck& check);
  void grade(const Area& area, const std::vector<Grade>& grades);

  // A number from 0 to 1 is shown as a bar of this colour instead.
  void bar(At at, std::int32_t colour);

  // A push button in the cells, at their left or right end, that runs a command by its URL. It
  // stays off paper and leaves room above, below and beside it. It works once the book has left
  // design mode (book.cpp).
  void button(const Area& area, std::string_view words, std::string_view url, bool at_left = false);

  // Text and style in one; merged where the area has more than one cell.
  void label(const Area& area, std::string_view words, std::string_view style);

  struct Size {
    double width;
    double height;
  };
  Size size_mm(const Area& area) const;

  // Prints this area and nothing else, as the page style says.
  void print(const Area& area, std::string_view page_style);
  void keep_off_paper();
  void hide();
  void new_page(int first_row);
  void repeat_rows(int first, int last);  // on top of every page
  // Without a password: it keeps the hand from slipping, no more.
  void protect();

  Ref<css::table::XCellRange> range(const Area& area) const;
  const Ref<css::sheet::XSpreadsheet>& sheet() const { return sheet_; }
  // What the document makes: shapes, fields, styles.
  const Ref<css::lang::XMultiServiceFactory>& maker() const { return maker_; }

 private:
  std::string name_;
  Ref<css::lang::XMultiServiceFactory> maker_;
  Ref<css::sheet::XSpreadsheet> sheet_;
};

}  // namespace shimwright::book
