// SPDX-License-Identifier: MPL-2.0
#include "book/description.hpp"

#include "book/look/style_names.hpp"
#include "core/values/text.hpp"

namespace shimwright::book {
namespace {

// {0} in words of the description's own.
std::string with_name(const std::string& words, const std::string& name) {
  constexpr std::string_view blank = "{0}";
  std::string filled = words;
  for (std::size_t at = 0; (at = filled.find(blank, at)) != std::string::npos; at += name.size())
    filled.replace(at, blank.size(), name);
  return filled;
}

}  // namespace

std::string said(Say what, std::initializer_list<shimwright::Word> words) {
  return Teller().say(what, words);
}

Content content_in(const Table& table, const Column& column, int row) {
  const std::string& name = table.rows[static_cast<std::size_t>(row)];
  Content content = column.content;
  if (auto* fixed = std::get_if<Fixed>(&content)) fixed->words = with_name(fixed->words, name);
  if (auto* typed = std::get_if<Typed>(&content)) typed->words = with_name(typed->words, name);
  if (auto* piece = std::get_if<Shows>(&content)) piece->row += row;
  if (auto* bar = std::get_if<Progress>(&content)) bar->share.row += row;
  if (auto* entry = std::get_if<Takes>(&content)) {
    if (entry->name.empty()) entry->name = name;
    entry->place = with_name(entry->place, name);
  }
  if (auto* entry = std::get_if<Holds>(&content))
    if (entry->name.empty()) entry->name = name;
  return content;
}

At top_of(const Table& table, std::size_t column) {
  At at = table.first;
  for (std::size_t i = 0; i < column; ++i) at = right_of(at, table.columns[i].cells);
  return at;
}

std::vector<Field> all_fields(const SheetDescription& sheet) {
  std::vector<Field> fields = sheet.fields;
  for (const Table& table : sheet.tables)
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
      const Column& column = table.columns[c];
      const At top = top_of(table, c);
      if (!column.heading.empty())
        fields.push_back({.name = table.name + "." + column.name + ".heading",
                          .where = block(below(top, -1), column.cells, 1),
                          .style = column.heading_style.empty() ? std::string(style::table_head)
                                                                : column.heading_style,
                          .content = Fixed{column.heading}});
      for (int row = 0; row < static_cast<int>(table.rows.size()); ++row) {
        Field field{.name = table.name + "." + column.name + "." +
                            table.rows[static_cast<std::size_t>(row)],
                    .where = block(below(top, row), column.cells, 1),
                    .style = column.style,
                    .content = content_in(table, column, row),
                    .grades = column.grades};
        for (Wears& grade : field.grades) {
          if (grade.piece.table != "book") grade.piece.row += row;
          if (grade.also && grade.also->piece.table != "book") grade.also->piece.row += row;
        }
        fields.push_back(std::move(field));
      }
    }
  return fields;
}

std::string help_of(const Takes& entry) {
  const auto letters = static_cast<std::size_t>(entry.help_letters);
  std::string help;
  for (const std::string& line : broken_into_lines(entry.help, letters))
    help += (help.empty() ? "" : "\n") + line;
  return help;
}

std::string refusal_of(const Takes& entry, std::string_view number) {
  if (!std::holds_alternative<Number>(entry.check))
    return said(Say::entry_refused, {entry.due, entry.place});
  return said(Say::number_refused,
              {entry.due, entry.place,
               number.empty() ? said(Say::either_decimal_mark) : std::string(number)});
}

std::vector<Shows> BandChart::pieces() const {
  std::vector<Shows> pieces{{bands, names},
                            {.table = bands, .column = least, .as_number = true},
                            {.table = bands, .column = room, .as_number = true}};
  for (const Marks& each : marks)
    pieces.push_back({.table = table, .column = each.column, .as_number = true});
  return pieces;
}

Wears in_inches() {
  return {.piece = {"book", "unit"}, .words = {"in"}, .style = std::string(style::in_inches)};
}

Field title_field(std::string_view sheet, const Area& where) {
  return {.name = "title",
          .where = where,
          .style = std::string(style::title),
          .content = Shows{"book", "title " + std::string(sheet)}};
}

void SheetDescription::add(std::string field, const Area& where, std::string_view style,
                           Content content, std::vector<Wears> grades) {
  fields.push_back({.name = std::move(field),
                    .where = where,
                    .style = std::string(style),
                    .content = std::move(content),
                    .grades = std::move(grades)});
}

Field next_sheet_field(std::string_view sheet, const Area& where) {
  return {.name = "next sheet",
          .where = where,
          .style = std::string(style::next_sheet),
          .content = Link{std::string(sheet), said(Say::go_on_to, {std::string(sheet)})}};
}

Field banner_field(const Area& where) {
  return {.name = "banner",
          .where = where,
          .style = std::string(where.from.row == where.to.row ? style::banner_line : style::banner),
          .content = Banner{said(Say::add_in_missing)}};
}

void add_box(SheetDescription& to, const std::string& sheet, const Area& where) {
  add_box(to, sheet, where, {"boxes", sheet}, {"boxes", "mood " + sheet});
}

void add_box(SheetDescription& to, const std::string& sheet, const Area& where, const Shows& words,
             const Shows& mood) {
  constexpr double letter_mm = 1.85;  // of the box's letters, on the average and rather too wide
  constexpr double edges_mm = 5;
  double width = -edges_mm;
  for (int column = where.from.column; column <= where.to.column; ++column)
    width += to.column_mm[static_cast<std::size_t>(column)];
  to.constants.push_back({"box", sheet, 0, std::to_string(static_cast<int>(width / letter_mm))});
  to.constants.push_back({"box", sheet, 1, std::to_string(where.rows())});
  Table lines{.name = "box", .first = where.from};
  for (int i = 1; i <= where.rows(); ++i) lines.rows.push_back(std::to_string(i));
  lines.columns = {{.name = "words",
                    .style = std::string(style::remark_box),
                    .content = words,
                    .grades = {{mood, {"remark"}, std::string(style::remark_told)},
                               {mood, {"loud"}, std::string(style::remark_loud)}},
                    .cells = where.columns()}};
  to.tables.push_back(std::move(lines));
}

std::vector<Field> heading_fields(const std::string& name, const Area& where, std::string words) {
  const std::string look(style::heading);
  std::vector<Field> fields;
  for (At at = where.from; at.column <= where.to.column; at = right_of(at))
    fields.push_back({.name = name + (at == where.from ? "" : "." + std::to_string(at.column)),
                      .where = at,
                      .style = look,
                      .content = at == where.from ? Content(Fixed{words}) : Content()});
  return fields;
}

}  // namespace shimwright::book
