// SPDX-License-Identifier: MPL-2.0
#include "cells/book.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <optional>
#include <utility>
#include <vector>

#include "core/service/entries_text.hpp"
#include "core/service/view.hpp"
#include "core/service/view_drift.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"
#include "office/text.hpp"

namespace shimwright::cells {
namespace {

constexpr std::string_view table_of_entries = "entries";
constexpr std::size_t answers_kept = 24;  // more than a book has tables

// Texts are known again by their buffers, which they keep, so that no other text can come to have
// one: reading them each time would cost more than the answer.
struct Answer {
  rtl::OUString text;
  ShownTable table;
  std::vector<std::pair<rtl::OUString, std::size_t>> asked;  // columns, and which each is
};

Answer& answer_told(const rtl::OUString& text) {
  static thread_local std::deque<Answer> last;
  const auto same_buffer = [&text](const Answer& answer) {
    return answer.text.pData == text.pData;
  };
  if (const auto known = std::ranges::find_if(last, same_buffer); known != last.end())
    return *known;
  if (last.size() == answers_kept) last.pop_back();
  last.push_front({text, table_in(office::from_office(text)), {}});
  return last.front();
}

// As many as the table has columns where it has none of that name.
std::size_t column_of(Answer& answer, const rtl::OUString& name) {
  const auto same_buffer = [&name](const auto& one) { return one.first.pData == name.pData; };
  if (const auto known = std::ranges::find_if(answer.asked, same_buffer);
      known != answer.asked.end())
    return known->second;
  const auto& columns = answer.table.columns;
  const auto found = std::ranges::find(columns, office::from_office(name));
  const auto index = static_cast<std::size_t>(found - columns.begin());
  constexpr std::size_t most_asked = 64;
  if (answer.asked.size() < most_asked) answer.asked.emplace_back(name, index);
  return index;
}

rtl::OUString told(const View& view, std::string_view table) {
  const ShownTable* found = view.table(table);
  if (!found) throw BadInput("the book has no table " + in_quotes(table));
  return office::to_office(as_text(*found));
}

rtl::OUString told_of_log(const EntryTable& entries, std::string_view table,
                          const EntryTable& log) {
  struct Last {
    EntryTable entries;
    EntryTable log;
    View view;
  };
  static thread_local std::optional<Last> last;
  if (!last || last->entries != entries || last->log != log)
    last = Last{entries, log, drift_view_of(service_of(entries), log)};
  return told(last->view, table);
}

}  // namespace

rtl::OUString book_tells(const EntryTable& entries, std::string_view table, const EntryTable& log) {
  if (is_told_of_log(table)) return told_of_log(entries, table, log);
  if (same_word(table, table_of_entries)) return office::to_office(as_text(entries));
  static thread_local std::optional<std::pair<EntryTable, View>> last;
  if (!last || last->first != entries) last.emplace(entries, view_of(service_of(entries)));
  return told(last->second, table);
}

rtl::OUString book_tells(const rtl::OUString& entries, std::string_view table) {
  // A book hands over two: all its entries, and those but for the gaps.
  static thread_local std::deque<std::pair<rtl::OUString, View>> last;
  constexpr std::size_t views_kept = 4;
  auto known = std::ranges::find_if(
      last, [&entries](const auto& one) { return one.first.pData == entries.pData; });
  if (known == last.end()) {
    if (last.size() == views_kept) last.pop_back();
    last.emplace_front(entries, view_of(service_of(entries_in(office::from_office(entries)))));
    known = last.begin();
  }
  return told(known->second, table);
}

rtl::OUString book_shows(const rtl::OUString& answer, const rtl::OUString& column, double row) {
  Answer& told = answer_told(answer);
  if (!(row >= 1) || row >= static_cast<double>(told.table.rows.size()) + 1) return {};
  const std::size_t index = column_of(told, column);
  if (index >= told.table.columns.size()) return {};
  return office::to_office(told.table.rows[static_cast<std::size_t>(row) - 1][index]);
}

}  // namespace shimwright::cells
