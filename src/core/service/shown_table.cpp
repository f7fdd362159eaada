// SPDX-License-Identifier: MPL-2.0
#include "core/service/shown_table.hpp"

#include <algorithm>

#include "core/service/table_marks.hpp"

namespace shimwright {
namespace {

constexpr std::string_view line_break = "\ue003";

void replace_all(std::string& text, std::string_view what, std::string_view by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
    text.replace(at, what.size(), by);
}

std::string row_text(const std::vector<std::string>& cells) {
  std::string row;
  for (std::string cell : cells) {
    for (const auto mark : {cell_end, row_end, line_break}) replace_all(cell, mark, "");
    replace_all(cell, "\n", line_break);
    row += cell;
    row += cell_end;
  }
  row += row_end;
  return row;
}

std::vector<std::string> cells_in(std::string_view row) {
  std::vector<std::string> cells;
  for (std::size_t end; (end = row.find(cell_end)) != std::string_view::npos;
       row.remove_prefix(end + cell_end.size())) {
    cells.emplace_back(row.substr(0, end));
    replace_all(cells.back(), line_break, "\n");
  }
  return cells;
}

}  // namespace

const std::string& ShownTable::at(std::string_view column, std::size_t row) const {
  static const std::string nothing;
  const auto found = std::ranges::find(columns, column);
  if (found == columns.end() || row == 0 || row > rows.size()) return nothing;
  return rows[row - 1][static_cast<std::size_t>(found - columns.begin())];
}

std::string& ShownTable::put(std::string_view column, std::size_t row) {
  auto found = std::ranges::find(columns, column);
  if (found == columns.end()) {
    columns.emplace_back(column);
    for (auto& cells : rows) cells.emplace_back();
    found = columns.end() - 1;
  }
  while (rows.size() < row) rows.emplace_back(columns.size());
  return rows[row - 1][static_cast<std::size_t>(found - columns.begin())];
}

std::string as_text(const ShownTable& table) {
  std::string text = row_text(table.columns);
  for (const auto& cells : table.rows) {
    const std::string row = row_text(cells);
    if (text.size() + row.size() > longest_answer) break;
    text += row;
  }
  return text;
}

ShownTable table_in(std::string_view text) {
  ShownTable table;
  bool first = true;
  for (std::size_t end; (end = text.find(row_end)) != std::string_view::npos;
       text.remove_prefix(end + row_end.size())) {
    auto cells = cells_in(text.substr(0, end));
    if (first) {
      table.columns = std::move(cells);
    } else {
      cells.resize(table.columns.size());
      table.rows.push_back(std::move(cells));
    }
    first = false;
  }
  return table;
}

}  // namespace shimwright
