// SPDX-License-Identifier: MPL-2.0
#include "cells/encode.hpp"

#include <algorithm>
#include <com/sun/star/uno/Sequence.hxx>
#include <string>

#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"
#include "office/text.hpp"

namespace shimwright::cells {
namespace {

using com::sun::star::uno::Any;
using com::sun::star::uno::Sequence;

rtl::OUString as_cell_text(const Entry& answer) {
  const std::string* text = std::get_if<std::string>(&answer);
  return text == nullptr ? rtl::OUString() : office::to_office(*text);
}

template <class T, class Convert>
Any range_of(const EntryTable& answers, Convert convert) {
  Sequence<Sequence<T>> range(static_cast<sal_Int32>(answers.size()));
  auto* row = range.getArray();
  for (const auto& entries : answers) {
    row->realloc(static_cast<sal_Int32>(entries.size()));
    std::ranges::transform(entries, row->getArray(), convert);
    ++row;
  }
  return Any(range);
}

std::string names_of(const std::vector<Column>& columns) {
  std::string names;
  for (const Column& column : columns) {
    if (!names.empty()) names += ", ";
    names += column.name;
  }
  return names;
}

}  // namespace

Any single_result(const Entry& answer) {
  if (const double* number = std::get_if<double>(&answer)) return Any(*number);
  if (std::holds_alternative<std::string>(answer)) return Any(as_cell_text(answer));
  return Any();
}

Any number_range(const EntryTable& answers) {
  return range_of<Any>(answers, [](const Entry& answer) {
    return std::holds_alternative<std::monostate>(answer) ? Any(rtl::OUString())
                                                          : single_result(answer);
  });
}

Any text_range(const EntryTable& answers) { return range_of<rtl::OUString>(answers, as_cell_text); }

Any table_result(const std::vector<Column>& columns, EntryTable rows, std::string_view part) {
  if (rows.empty()) rows.emplace_back(columns.size(), Entry(std::string()));
  if (trimmed(part).empty()) {
    const auto width = std::ranges::count(columns, true, &Column::in_whole);
    for (auto& row : rows) row.resize(static_cast<std::size_t>(width));
    return number_range(rows);
  }
  const auto column = std::ranges::find_if(
      columns, [&](const Column& candidate) { return same_word(candidate.name, part); });
  if (column == columns.end())
    throw BadInput("part '" + std::string(part) + "' is none of " + names_of(columns));
  const auto index = static_cast<std::size_t>(column - columns.begin());
  for (auto& row : rows) row = {row[index]};
  return column->kind == Column::text ? text_range(rows) : number_range(rows);
}

}  // namespace shimwright::cells
