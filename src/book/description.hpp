// SPDX-License-Identifier: MPL-2.0
//
// What a sheet is, as plain data: where it shows a piece of the View, where it takes an entry, and
// what it says in fixed words. The layouter makes cells of it, the hidden sheet gathers its entries
// from it, and the tests walk it. No formula stands in it, and no sentence: words come from the
// catalogue (said()).
#pragma once

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "book/area.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright::book {

// A text of the catalogue in the language of the books that are built.
std::string said(Say what, std::initializer_list<shimwright::Word> words = {});

// A piece of the View. In a column of a table, `row` is that of the first line.
struct Shows {
  std::string table = {};
  std::string column = {};
  int row = 1;
  bool as_number = false;  // for a bar or a chart; empty text where there is none
  bool operator==(const Shows&) const = default;
};

// What may be typed. A blank may always stand. Checks need no add-in, so that they hold in .xlsx,
// and refuse text where a number is due: Calc would complete the next number from it.
struct Number {
  double least = 0;
  double most = 0;
  bool length = false;  // in mm, and typed in the book's unit
  bool whole = false;
};
struct Letters {
  int most = 0;
};
struct Choice {
  struct Option {
    std::string shown = {};
    std::string entered = {};  // what it stands for among the entries; blank: the same
  };
  std::vector<Option> options = {};
};
// One of the two shim series named on Engine, offered once where both are the same.
struct SeriesChoice {};
using Check = std::variant<Number, Letters, Choice, SeriesChoice>;

// One value of the entries (service.hpp): `setting | unit | mm` is value 0 of setting, unit.
struct Takes {
  std::string kind = {};
  std::string name = {};  // in a column of a table: left blank, the name of the row
  int value = 0;
  Check check = Number{};
  std::string title = {};     // above help and refusal
  std::string help = {};      // blank: none comes up beside the cell
  int help_letters = 42;      // of a line of it
  std::string due = {};       // what is due, for the refusal
  std::string place = {};     // where to go back to; in a column {0} is the name of the row
  std::string at_first = {};  // as typed
};

// An entry that a command of ours writes, and no hand: a blank, locked cell until then.
struct Holds {
  std::string kind = {};
  std::string name = {};  // in a column of a table: left blank, the name of the row
  int value = 0;
};

// `words` may hold {0} in a column: the name of the row.
struct Fixed {
  std::string words = {};
};
// As a person would type it: a number where it is one.
struct Typed {
  std::string words = {};
};
struct Link {
  std::string sheet = {};
  std::string words = {};  // blank: its name
};
// Runs a command of ours (`org.shimwright:...`), and stays off paper.
struct Button {
  std::string words = {};
  std::string command = {};
  bool at_left = false;  // of its cells; else at their right
};
// A share from 0 to 1 as a bar.
struct Progress {
  Shows share = {};
};
// The version of the add-in, or that it is missing.
struct Banner {
  std::string missing = {};
};
// Of the hidden sheet: the entry in that cell, and one table of the View.
struct Copies {
  std::string sheet = {};
  At at = {};
  std::vector<Choice::Option> options = {};
};
struct Tells {
  std::string table = {};
};
// A half as this office writes it, from which the answers take their decimal mark: worked out anew
// with any of those cells, as a book made in one office may be filled in in another.
struct Half {
  Area with = At{};
};
using Content = std::variant<std::monostate, Fixed, Typed, Shows, Takes, Holds, Link, Button,
                             Progress, Banner, Copies, Tells, Half>;

// Where the piece is one of the words, the cell wears the style; the first that holds wins. Without
// words: where there is any text at all. `unless` turns it round. `also`: and that piece is the
// word.
struct Wears {
  struct Also {
    Shows piece = {};
    std::string word = {};
  };
  Shows piece = {};
  std::vector<std::string> words = {};
  std::string style = {};
  bool unless = false;
  std::optional<Also> also = {};
};

struct Field {
  std::string name = {};  // stable: tests find the field by it
  Area where = At{};      // merged where it has more than one cell
  std::string style = {};
  Content content = {};
  std::vector<Wears> grades = {};
};

struct Column {
  std::string name = {};
  std::string heading = {};
  double width_mm = 0;  // 0: as the sheet says
  std::string style = {};
  Content content = {};
  std::vector<Wears> grades = {};
  std::string heading_style = {};  // blank: as that of a column of numbers
  int cells = 1;                   // merged across, from its first
};

// Rows alike: a name for each, which stands for {0} in the columns.
struct Table {
  std::string name = {};
  At first = {};                       // the first cell below the headings
  std::vector<std::string> rows = {};  // their names
  std::vector<Column> columns = {};
  double row_mm = 0;  // 0: as the sheet says
};

// An entry that the engine's layout gives, not a person.
struct Constant {
  std::string kind = {};
  std::string name = {};
  int value = 0;
  std::string what = {};
};

// The office's own chart over some cells, by the rows of two tables of the View: a band from
// `least` up by `room` for each row, and marks in it. A row without the number has no such mark.
struct BandChart {
  struct Marks {
    std::string column = {};
    enum class Shape { down, round, up } shape = Shape::round;
    std::int32_t colour = 0;
    double mm = 2;
  };
  std::string name = {};
  Area where = At{};
  std::string bands = {};  // the table of the names and the band
  std::string table = {};  // that of the marks
  int rows = 0;
  std::string names = {};  // columns of the first: along the foot, and the band
  std::string least = {};
  std::string room = {};
  std::vector<Marks> marks = {};
  std::string upright = {};  // what is measured, along the side

  // The pieces of the View it is drawn from: names, band, then each of the marks.
  std::vector<Shows> pieces() const;
};

// What cells wear that hold nothing, under those that do.
struct Ground {
  Area where = At{};
  std::string style = {};
  std::vector<Wears> grades = {};
};

// A name by which formulas and commands call a range of the sheet.
struct NamedArea {
  std::string name = {};
  Area where = At{};
};

struct SheetDescription {
  std::string name = {};
  std::vector<double> column_mm = {};
  double row_mm = 0;  // of rows to `last_row` that `row_heights` does not name
  std::vector<std::pair<int, double>> row_heights = {};
  int last_row = 0;
  std::vector<Ground> grounds = {};
  std::vector<Field> fields = {};
  std::vector<Table> tables = {};
  std::vector<Constant> constants = {};
  std::vector<BandChart> charts = {};
  std::vector<NamedArea> names = {};
  int frozen_rows = 0;
  At cursor = {};                    // where one begins to type
  std::optional<Area> printed = {};  // nothing: it is kept off paper
  std::string page_style = {};
  double page_scale = 0;  // where pages are parted by hand; 0: as the page style says
  std::optional<std::pair<int, int>> repeated_rows = {};  // on top of every page
  std::vector<int> page_breaks = {};                      // rows that begin a page
  bool is_protected = true;
  bool hidden = false;

  void add(std::string field, const Area& where, std::string_view style, Content content,
           std::vector<Wears> grades = {});
};

// Every cell of the sheet, with those of its tables written out row by row.
std::vector<Field> all_fields(const SheetDescription& sheet);

// A column's content in a row counted from 0.
Content content_in(const Table& table, const Column& column, int row);

// Where a column begins, its headings left out.
At top_of(const Table& table, std::size_t column);

// Its help in short lines: the office draws a long one over the cells that are filled in next.
std::string help_of(const Takes& entry);

// What is told when the check refuses: what is due, that nothing was kept, where to go back to.
// `number` is one as this office writes it; blank where the book goes to any office.
std::string refusal_of(const Takes& entry, std::string_view number = {});

// The decimals of inches in a book in inches.
Wears in_inches();

// What stands at the head of every sheet: the engine's name, and the version of the add-in. `sheet`
// is its word in the View's columns: `title engine`.
Field title_field(std::string_view sheet, const Area& where);
Field banner_field(const Area& where);

// Leads on to the sheet on which the service goes on.
Field next_sheet_field(std::string_view sheet, const Area& where);

// The box that says what is amiss, a line in each row of the area, and coloured no further than it
// has words. The widths of the sheet's columns are to be set before.
void add_box(SheetDescription& to, const std::string& sheet, const Area& where);
// The same of lines that stand in these columns of the View.
void add_box(SheetDescription& to, const std::string& sheet, const Area& where, const Shows& words,
             const Shows& mood);

// A heading over one row of cells, which are not merged: its line reaches to their end.
std::vector<Field> heading_fields(const std::string& name, const Area& where, std::string words);

}  // namespace shimwright::book
