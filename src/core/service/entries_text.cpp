// SPDX-License-Identifier: MPL-2.0
#include "core/service/entries_text.hpp"

#include <charconv>
#include <string>

#include "core/service/table_marks.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// A number stands as it is, a text behind its mark.
constexpr std::string_view text_mark = "\ue004";
constexpr std::string_view lead_of_private_use = "\ue000";

constexpr std::size_t longest_number = 32;

void add(std::string& to, double number) {
  char digits[longest_number];
  to.append(digits, std::to_chars(digits, digits + longest_number, number).ptr);
}

void add(std::string& to, std::string_view text) {
  to += text_mark;
  while (!text.empty()) {
    const std::size_t next = text.find(lead_of_private_use.front());
    to += text.substr(0, next);
    if (next == std::string_view::npos) return;
    text.remove_prefix(next);
    const bool is_ours =
        text.starts_with(cell_end) || text.starts_with(row_end) || text.starts_with(text_mark);
    if (!is_ours) to += text.front();
    text.remove_prefix(is_ours ? cell_end.size() : 1);
  }
}

Entry entry_in(std::string_view cell) {
  if (cell.starts_with(text_mark)) return std::string(cell.substr(text_mark.size()));
  double number = 0;
  const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), number);
  if (cell.empty() || read.ec != std::errc() || read.ptr != cell.data() + cell.size()) return {};
  return number;
}

}  // namespace

std::string as_text(const EntryTable& entries) {
  std::string text;
  for (const auto& row : entries) {
    std::size_t cells = row.size();
    while (cells > 0 && std::holds_alternative<std::monostate>(row[cells - 1])) --cells;
    for (std::size_t i = 0; i < cells; ++i) {
      if (const auto* number = std::get_if<double>(&row[i])) add(text, *number);
      if (const auto* words = std::get_if<std::string>(&row[i]))
        add(text, std::string_view(*words));
      text += cell_end;
    }
    text += row_end;
  }
  return text;
}

EntryTable entries_in(std::string_view text) {
  EntryTable entries;
  while (!text.empty()) {
    std::string_view row = taken_off(text, row_end);
    auto& cells = entries.emplace_back();
    while (!row.empty()) cells.push_back(entry_in(taken_off(row, cell_end)));
  }
  return entries;
}

}  // namespace shimwright
