// SPDX-License-Identifier: MPL-2.0
#include "book/layouter.hpp"

#include "book/formula.hpp"
#include "book/look/styles.hpp"
#include "book/places.hpp"
#include "core/service/service.hpp"
#include "core/service/view.hpp"
#include "core/service/view_drift.hpp"
#include "core/values/text.hpp"

namespace shimwright::book {
namespace {

// As text in a formula.
std::string literal(std::string_view words) {
  std::string text = "\"";
  for (const char letter : words) {
    if (letter == '"') text += '"';
    text += letter;
  }
  return text + "\"";
}

std::string piece_of(const Shows& piece) {
  return written(
      "BOOK.SHOWS({answer};{column};{row})",
      {{"answer", tells_name(piece.table)}, {"column", literal(piece.column)}, {"row", piece.row}});
}

std::string shown(const Shows& piece) {
  return piece.as_number ? written("=IFERROR(VALUE({x});\"\")", {{"x", piece_of(piece)}})
                         : written("=IFERROR({x};\"\")", {{"x", piece_of(piece)}});
}

std::string copied(const Copies& copy) {
  const std::string cell = on(copy.sheet, copy.at);
  std::string value = written("IF({x}=\"\";\"\";{x})", {{"x", cell}});
  for (const Choice::Option& option : copy.options)
    if (!option.entered.empty())
      value = written("IF({x}={shown};{entered};{else})", {{"x", cell},
                                                           {"shown", literal(option.shown)},
                                                           {"entered", literal(option.entered)},
                                                           {"else", value}});
  return written("=IFERROR({value};{failed})",
                 {{"value", value}, {"failed", literal(failed_entry)}});
}

std::string add_in_version(const Banner& banner) {
  // NOW is worked out anew whenever the book is opened; the text kept from the last time would
  // tell a reader without the add-in that it is there.
  return written("=IFERROR(IF(NOW()>0;\"Shimwright \";\"\")&SHIM.VERSION();{missing})",
                 {{"missing", literal(banner.missing)}});
}

// A bound of a length in the book's unit.
std::string bound(double mm, bool is_length) {
  const std::string number = text_of(mm);
  if (!is_length || mm == 0) return number;
  return written("{mm}*IF({unit}=\"inch\";1/25.4;1)",
                 {{"mm", number}, {"unit", on(sheet_name::engine, engine_place::unit)}});
}

std::string series_offered(const Gathered& gathered) {
  const auto of = [&gathered](Side side) {
    return gathered.entry("side", word_for(side), entry_value::series);
  };
  const At exhaust = of(Side::exhaust);
  const At inlet = of(Side::inlet);
  return written("IF({one}={other};{one};{both})",
                 {{"one", on(sheet_name::workings, exhaust)},
                  {"other", on(sheet_name::workings, inlet)},
                  {"both", on(sheet_name::workings, Area(exhaust, inlet))}});
}

// The rule alone, without words.
EntryCheck rule_of(const Check& check, const Gathered& gathered) {
  using Kind = EntryCheck::Kind;
  struct Rules {
    const Gathered& gathered;
    EntryCheck operator()(const Number& number) const {
      return {.kind = number.whole ? Kind::whole_number : Kind::number,
              .rule = bound(number.least, number.length),
              .most = bound(number.most, number.length)};
    }
    EntryCheck operator()(const Letters& letters) const {
      return {.kind = Kind::text_length, .rule = "0", .most = std::to_string(letters.most)};
    }
    EntryCheck operator()(const Choice& choice) const {
      std::string words;
      for (const Choice::Option& option : choice.options)
        words += (words.empty() ? "" : ";") + literal(option.shown);
      return {.kind = Kind::choice, .rule = words};
    }
    EntryCheck operator()(const SeriesChoice&) const {
      return {.kind = Kind::choice, .rule = series_offered(gathered)};
    }
  };
  return std::visit(Rules{gathered}, check);
}

bool shows(const Content& content, const Shows& piece) {
  const auto* own = std::get_if<Shows>(&content);
  return own != nullptr && *own == piece;
}

// The condition for the first cell of the area that the content fills; `moves` with its rows.
std::string condition_of(const Wears& grade, const Content& content, At first, bool moves,
                         const Gathered& gathered) {
  const auto call = [moves](At at) {
    return moves ? "$" + column_name(at.column) + std::to_string(at.row + 1) : absolute(at);
  };
  const auto cell_of = [&](const Shows& piece) {
    if (shows(content, piece)) return call(first);
    const At at = gathered.piece(piece);
    return "$'" + std::string(sheet_name::workings) + "'." +
           (piece.table == "book" ? absolute(at) : call(at));
  };
  const std::string cell = cell_of(grade.piece);
  std::string condition;
  if (grade.words.empty()) {
    condition = cell + "<>\"\"";
  } else if (grade.words.size() == 1) {
    condition = cell + "=" + literal(grade.words.front());
  } else {
    for (const std::string& word : grade.words)
      condition += (condition.empty() ? "OR(" : ";") + cell + "=" + literal(word);
    condition += ")";
  }
  if (grade.unless) condition = "NOT(" + condition + ")";
  if (grade.also)
    condition = "AND(" + condition + ";" + cell_of(grade.also->piece) + "=" +
                literal(grade.also->word) + ")";
  return condition;
}

class Layouter {
 public:
  Layouter(Sheet& sheet, const SheetDescription& description, const Gathered& gathered,
           std::string_view number)
      : sheet_(sheet), description_(description), gathered_(gathered), number_(number) {}

  void lay_out() {
    for (std::size_t i = 0; i < description_.column_mm.size(); ++i)
      sheet_.column_width(static_cast<int>(i), description_.column_mm[i]);
    if (description_.row_mm > 0) sheet_.row_heights(0, description_.last_row, description_.row_mm);
    for (const auto& [row, mm] : description_.row_heights) sheet_.row_height(row, mm);
    for (const Table& table : description_.tables) widths_of(table);
    for (const Ground& ground : description_.grounds) {
      sheet_.style(ground.where, ground.style);
      grade(ground.where, ground.grades, {}, true);
    }
    for (const Field& field : description_.fields) make(field);
    for (const Table& table : description_.tables) make(table);
  }

 private:
  void widths_of(const Table& table) {
    for (std::size_t c = 0; c < table.columns.size(); ++c)
      if (table.columns[c].width_mm > 0)
        sheet_.column_width(top_of(table, c).column, table.columns[c].width_mm);
    if (table.row_mm > 0)
      sheet_.row_heights(table.first.row, table.first.row + static_cast<int>(table.rows.size()) - 1,
                         table.row_mm);
  }

  void make(const Field& field) {
    sheet_.style(field.where, field.style);
    if (!(field.where.from == field.where.to)) sheet_.merge(field.where);
    fill(field.where, field.content);
    grade(field.where, field.grades, field.content, false);
  }

  void fill(const Area& where, const Content& content) {
    if (const auto* fixed = std::get_if<Fixed>(&content)) {
      if (!fixed->words.empty()) sheet_.text(where.from, fixed->words);
    } else if (const auto* entry = std::get_if<Takes>(&content)) {
      // A firing order of one cylinder is no number.
      if (std::holds_alternative<Letters>(entry->check) && !entry->at_first.empty())
        sheet_.text(where.from, entry->at_first);
      else
        sheet_.entry(where.from, entry->at_first);
      sheet_.check(where, entry_check(*entry, gathered_, number_));
    } else if (const auto* typed = std::get_if<Typed>(&content)) {
      sheet_.entry(where.from, typed->words);
    } else if (const auto* button = std::get_if<Button>(&content)) {
      sheet_.button(where, button->words, button->command, button->at_left);
    } else if (!std::holds_alternative<std::monostate>(content)) {
      sheet_.formula(where.from, formula_of(content));
      if (std::holds_alternative<Progress>(content)) sheet_.bar(where.from, style::bar_colour);
    }
  }

  void grade(const Area& where, const std::vector<Wears>& looks, const Content& content,
             bool moves) {
    std::vector<Grade> grades;
    if (const auto* banner = std::get_if<Banner>(&content))
      grades.push_back({absolute(where.from) + "=" + literal(banner->missing),
                        std::string(style::trouble_found)});
    for (const Wears& look : looks)
      grades.push_back({condition_of(look, content, where.from, moves, gathered_), look.style});
    if (!grades.empty()) sheet_.grade(where, grades);
  }

  void make(const Table& table) {
    const auto rows = static_cast<int>(table.rows.size());
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      const Column& column = table.columns[c];
      const At top = top_of(table, c);
      if (!column.heading.empty())
        sheet_.label(block(below(top, -1), column.cells, 1), column.heading,
                     column.heading_style.empty() ? style::table_head
                                                  : std::string_view(column.heading_style));
      const Area cells = block(top, column.cells, rows);
      sheet_.style(cells, column.style);
      if (column.cells > 1)
        for (int row = 0; row < rows; ++row) sheet_.merge(block(below(top, row), column.cells, 1));
      if (std::holds_alternative<Shows>(column.content)) {
        std::vector<std::vector<std::string>> formulas;
        for (int row = 0; row < rows; ++row)
          formulas.push_back({formula_of(content_in(table, column, row))});
        sheet_.formulas(top, formulas);
      } else {
        for (int row = 0; row < rows; ++row)
          fill(block(below(top, row), column.cells, 1), content_in(table, column, row));
      }
      grade(cells, column.grades, column.content, true);
    }
  }

  Sheet& sheet_;
  const SheetDescription& description_;
  const Gathered& gathered_;
  std::string_view number_;
};

}  // namespace

std::string formula_of(const Content& content) {
  struct Formulas {
    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(const Fixed& fixed) const { return fixed.words; }
    std::string operator()(const Typed& typed) const { return typed.words; }
    std::string operator()(const Shows& piece) const { return shown(piece); }
    std::string operator()(const Takes& entry) const { return entry.at_first; }
    std::string operator()(const Holds&) const { return {}; }
    std::string operator()(const Link& link) const {
      return written("=HYPERLINK({place};{words})",
                     {{"place", literal("#'" + link.sheet + "'.A1")},
                      {"words", literal(link.words.empty() ? link.sheet : link.words)}});
    }
    std::string operator()(const Button&) const { return {}; }
    std::string operator()(const Progress& bar) const {
      Shows share = bar.share;
      share.as_number = true;
      return shown(share);
    }
    std::string operator()(const Banner& banner) const { return add_in_version(banner); }
    std::string operator()(const Copies& copy) const { return copied(copy); }
    std::string operator()(const Half& half) const {
      // Calls of an add-in are worked out anew when a book is opened; here, for a book that was
      // last open in an office of the other decimal mark.
      return written("=1/2+0*COUNTA({cells})&BOOK.SHOWS(\"\";\"half\")",
                     {{"cells", absolute(half.with)}});
    }
    std::string operator()(const Tells& answer) const {
      if (is_told_of_log(answer.table))
        return written("=BOOK.TELLS({entries};{table};{log})", {{"entries", drift_entries_name},
                                                                {"table", literal(answer.table)},
                                                                {"log", log_place::range_name}});
      // All others of that one text: the office hands it over sooner than the cells.
      const auto called = [&answer]() -> std::string {
        if (answer.table == entries_as_text) return std::string(entries_name);
        if (answer.table == lasting_as_text) return std::string(lasting_entries_name);
        return tells_name(is_told_without_gaps(answer.table) ? lasting_as_text : entries_as_text);
      };
      const std::string_view table =
          answer.table == lasting_as_text ? entries_as_text : std::string_view(answer.table);
      return written("=BOOK.TELLS({entries};{table})",
                     {{"entries", called()}, {"table", literal(std::string(table))}});
    }
  };
  return std::visit(Formulas{}, content);
}

EntryCheck entry_check(const Takes& entry, const Gathered& gathered, std::string_view number) {
  EntryCheck check = rule_of(entry.check, gathered);
  check.title = entry.title;
  check.help = help_of(entry);
  check.refusal = refusal_of(entry, number);
  return check;
}

void lay_out(Sheet& sheet, const SheetDescription& description, const Gathered& gathered,
             std::string_view number) {
  Layouter(sheet, description, gathered, number).lay_out();
}

void finish(Sheet& sheet, const SheetDescription& description) {
  if (description.printed)
    sheet.print(*description.printed, description.page_style);
  else
    sheet.keep_off_paper();
  if (description.repeated_rows)
    sheet.repeat_rows(description.repeated_rows->first, description.repeated_rows->second);
  for (const int row : description.page_breaks) sheet.new_page(row);
  if (description.page_scale > 0)
    style::scale_pages(sheet.maker(), description.page_style, description.page_scale);
  if (description.is_protected) sheet.protect();
}

}  // namespace shimwright::book
