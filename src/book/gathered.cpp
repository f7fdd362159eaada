// SPDX-License-Identifier: MPL-2.0
#include "book/gathered.hpp"

#include <algorithm>
#include <stdexcept>

#include "book/look/style_names.hpp"
#include "book/places.hpp"

namespace shimwright::book {
namespace {

constexpr int first_row = 3;  // below the title and the headings
constexpr double row_mm = 5;

Field field(std::string name, At at, Content content, std::string_view look = style::working) {
  return {.name = std::move(name),
          .where = at,
          .style = std::string(look),
          .content = std::move(content)};
}

bool is_of_one_column(const Shows& one, const Shows& other) {
  return one.table == other.table && one.column == other.column && one.as_number == other.as_number;
}

const Shows* shown_by(const Content& content) { return std::get_if<Shows>(&content); }

}  // namespace

std::string tells_name(std::string_view table) {
  if (table == "left over") return "tells_surplus";
  std::string name = "tells_" + std::string(table);
  std::ranges::replace(name, ' ', '_');
  return name;
}

Gathered::Gathered(std::span<const SheetDescription> sheets) {
  row("setting", "language").values[0] = Fixed{"en"};
  row("setting", "half").values[0] = Half{};
  values_ = 1;
  for (const SheetDescription& sheet : sheets) {
    for (const Field& field : all_fields(sheet)) {
      if (const auto* entry = std::get_if<Takes>(&field.content)) {
        Copies copy{sheet.name, field.where.from};
        if (const auto* choice = std::get_if<Choice>(&entry->check)) copy.options = choice->options;
        const auto [kind, value] = held_as(entry->kind, entry->value);
        row(std::string(kind), entry->name).values[value] = std::move(copy);
        values_ = std::max(values_, entry->value + 1);
      } else if (const auto* held = std::get_if<Holds>(&field.content)) {
        row(held->kind, held->name).values[held->value] = Copies{sheet.name, field.where.from};
        values_ = std::max(values_, held->value + 1);
      }
      note_tables(field);
      watch(field);
    }
    for (const Ground& ground : sheet.grounds)
      for (const Wears& grade : ground.grades) {
        note_table(grade.piece.table);
        watch(grade.piece);
      }
    for (const BandChart& chart : sheet.charts) {
      for (Shows piece : chart.pieces()) {
        note_table(piece.table);
        piece.row = chart.rows;
        watch(piece);
      }
    }
    for (const Constant& constant : sheet.constants) {
      row(constant.kind, constant.name).values[constant.value] = Typed{constant.what};
      values_ = std::max(values_, constant.value + 1);
    }
  }
  const auto first_gap = std::stable_partition(
      rows_.begin(), rows_.end(), [](const Row& row) { return row.kind != kind_of_gaps; });
  const bool has_gaps = first_gap != rows_.end();
  lasting_ = static_cast<int>(first_gap - rows_.begin());
  for (std::size_t i = 0; i < rows_.size(); ++i) index_[{rows_[i].kind, rows_[i].name}] = i;
  if (has_gaps) rows_.push_back({"setting", "half", {{0, Half{}}}});  // the last one counts
}

Gathered::Row& Gathered::row(const std::string& kind, const std::string& name) {
  const auto [known, is_new] = index_.emplace(std::pair(kind, name), rows_.size());
  if (is_new) rows_.push_back({kind, name, {}});
  return rows_[known->second];
}

void Gathered::note_table(const std::string& table) {
  if (std::ranges::find(tables_, table) == tables_.end()) tables_.push_back(table);
}

void Gathered::note_tables(const Field& field) {
  if (const Shows* shown = shown_by(field.content)) note_table(shown->table);
  if (const auto* bar = std::get_if<Progress>(&field.content)) note_table(bar->share.table);
  for (const Wears& grade : field.grades) {
    note_table(grade.piece.table);
    if (grade.also) note_table(grade.also->piece.table);
  }
}

void Gathered::watch(const Field& field) {
  for (const Wears& grade : field.grades) {
    watch(field.content, grade.piece);
    if (grade.also) watch(field.content, grade.also->piece);
  }
}

// A cell that shows the piece itself is looked at where it is.
void Gathered::watch(const Content& content, const Shows& piece) {
  if (const auto* shown = shown_by(content); shown != nullptr && *shown == piece) return;
  watch(piece);
}

void Gathered::watch(const Shows& piece) {
  const auto known = std::ranges::find_if(
      watched_, [&piece](const Shows& one) { return is_of_one_column(one, piece); });
  if (known == watched_.end())
    watched_.push_back(piece);
  else
    known->row = std::max(known->row, piece.row);
}

At Gathered::entry(std::string_view kind, std::string_view name, int value) const {
  const auto [own_kind, own_value] = held_as(kind, value);
  const auto known = index_.find(std::pair(std::string(own_kind), std::string(name)));
  if (known == index_.end() || !rows_[known->second].values.contains(own_value))
    throw std::out_of_range("no sheet takes " + std::string(kind) + ", " + std::string(name));
  return {2 + own_value, first_row + static_cast<int>(known->second)};
}

At Gathered::tells(std::string_view table) const {
  const auto known = std::ranges::find(tables_, table);
  if (known == tables_.end()) throw std::out_of_range("no table " + std::string(table));
  return {first_tells_column() + 1, first_row + static_cast<int>(known - tables_.begin())};
}

At Gathered::piece(const Shows& piece) const {
  const auto known = std::ranges::find_if(
      watched_, [&piece](const Shows& one) { return is_of_one_column(one, piece); });
  if (known == watched_.end())
    throw std::out_of_range("no format looks at " + piece.table + ", " + piece.column);
  return {first_piece_column() + static_cast<int>(known - watched_.begin()),
          first_row + piece.row - 1};
}

SheetDescription Gathered::sheet() const {
  SheetDescription made{.name = std::string(sheet_name::workings), .row_mm = row_mm};
  const int columns = first_piece_column() + static_cast<int>(watched_.size());
  made.column_mm.assign(static_cast<std::size_t>(columns), 22);
  made.hidden = true;
  auto& fields = made.fields;
  fields.push_back(field("title", {0, 0}, Fixed{said(Say::entries_title)}, style::title));
  fields.push_back(field("note", {0, 1}, Fixed{said(Say::entries_note)}, style::subtitle));
  int at = first_row;
  for (const Row& row : rows_) {
    const std::string name = row.kind + "." + row.name;
    fields.push_back(field(name + ".kind", {0, at}, Fixed{row.kind}));
    fields.push_back(field(name + ".name", {1, at}, Fixed{row.name}));
    for (const auto& [value, content] : row.values) {
      Field& cell =
          fields.emplace_back(field(name + "." + std::to_string(value), {2 + value, at}, content));
      if (std::holds_alternative<Half>(cell.content)) cell.content = Half{half_with(at)};
    }
    ++at;
  }
  gather_for_drift(fields);
  made.last_row = at + 1 + static_cast<int>(drift_rows().size());
  at = first_row;
  for (const std::string& name : tables_) {
    fields.push_back(field("tells." + name + ".name", {first_tells_column(), at}, Fixed{name}));
    fields.push_back(field("tells." + name, {first_tells_column() + 1, at}, Tells{name}));
    ++at;
  }
  for (const auto& [table, column, rows, as_number] : watched_) {
    const At top = piece({table, column, 1, as_number});
    const std::string name = table + "." + column;
    fields.push_back(field(name + ".heading", below(top, -1), Fixed{name}, style::working_head));
    for (int i = 0; i < rows; ++i)
      fields.push_back(field(name + "." + std::to_string(i + 1), below(top, i),
                             Shows{table, column, i + 1, as_number}));
    made.last_row = std::max(made.last_row, top.row + rows);
  }
  return made;
}

Area Gathered::rows_area() const {
  return block({0, first_row}, 2 + values_, std::max(1, static_cast<int>(rows_.size())));
}

Area Gathered::lasting_area() const {
  return block({0, first_row}, 2 + values_, std::max(1, lasting_));
}

// The first with all that lasts, the one below the gaps with these.
Area Gathered::half_with(int row) const {
  const int gaps = first_row + lasting_;
  return row < gaps ? Area({2, row + 1}, {1 + values_, gaps - 1})
                    : Area({2, gaps}, {1 + values_, row - 1});
}

// Of what the log is judged by; the readings of the check that is under way are none of it, so that
// nothing hangs on them there.
std::vector<Gathered::Row> Gathered::drift_rows() const {
  const auto wanted = [](const Row& row, int value) {
    using namespace entry_value;
    if (row.kind == "side") return value == min || value == max;
    if (row.kind == "valve") return value == cylinder || value == side;
    if (row.kind == "box") return row.name == "drift";
    if (row.kind == "drawn") return true;
    constexpr std::string_view settings[] = {"language",      "half",     "unit", "doubt",
                                             "distance unit", "interval", "check"};
    return row.kind == "setting" && std::ranges::find(settings, row.name) != std::end(settings);
  };
  std::vector<Row> rows;
  for (int i = 0; i < lasting_; ++i) {
    Row row = rows_[static_cast<std::size_t>(i)];
    std::erase_if(row.values, [&](const auto& one) { return !wanted(row, one.first); });
    if (!row.values.empty()) rows.push_back(std::move(row));
  }
  return rows;
}

Area Gathered::drift_area() const {
  return block({0, first_row + static_cast<int>(rows_.size()) + 1}, 2 + values_,
               static_cast<int>(drift_rows().size()));
}

void Gathered::gather_for_drift(std::vector<Field>& fields) const {
  const Area area = drift_area();
  int at = area.from.row;
  for (const Row& row : drift_rows()) {
    const std::string name = "drift." + row.kind + "." + row.name;
    fields.push_back(field(name + ".kind", {0, at}, Fixed{row.kind}));
    fields.push_back(field(name + ".name", {1, at}, Fixed{row.name}));
    for (const auto& [value, content] : row.values)
      fields.push_back(field(
          name + "." + std::to_string(value), {2 + value, at},
          std::holds_alternative<Half>(content) ? Content(Half{{{2, at + 1}, area.to}}) : content));
    ++at;
  }
}

std::vector<std::pair<std::string, std::string>> Gathered::names() const {
  std::vector<std::pair<std::string, std::string>> named{
      {std::string(entries_name), on(sheet_name::workings, rows_area())},
      {std::string(lasting_entries_name), on(sheet_name::workings, lasting_area())}};
  if (!drift_rows().empty())
    named.emplace_back(drift_entries_name, on(sheet_name::workings, drift_area()));
  for (const std::string& table : tables_)
    named.emplace_back(tells_name(table), on(sheet_name::workings, tells(table)));
  return named;
}

}  // namespace shimwright::book
