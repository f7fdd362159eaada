// SPDX-License-Identifier: MPL-2.0
#include "core/entries/entry_row.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

#include "core/values/bad_input.hpp"
#include "core/values/mark.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

bool is_number(const Entry& entry) { return std::holds_alternative<double>(entry); }

bool reads_as_length(const std::string& text) {
  try {
    return length_written(text).has_value();
  } catch (const BadInput&) {
    return true;  // one that cannot be, but a length
  }
}

}  // namespace

bool is_blank(const Entry& entry) {
  const auto* text = std::get_if<std::string>(&entry);
  return std::holds_alternative<std::monostate>(entry) || (text && trimmed(*text).empty());
}

std::string word_in(const Entry& entry) {
  if (const auto* number = std::get_if<double>(&entry)) return text_of(*number);
  if (const auto* text = std::get_if<std::string>(&entry)) return std::string(trimmed(*text));
  return {};
}

const Entry& EntryRow::at(std::size_t column) const {
  static const Entry nothing;
  return column < cells_.size() ? cells_[column] : nothing;
}

void EntryRow::call_it(std::string_view subject) { subject_ = shortened(subject) + ": "; }

bool EntryRow::all_blank() const { return std::ranges::all_of(cells_, is_blank); }

bool EntryRow::is_heading() const {
  if (layout_.number_columns.empty()) return false;
  const auto heads = [this](std::size_t column) {
    return column >= cells_.size() || (!is_blank(at(column)) && !reads_as_length(word_at(column)));
  };
  const auto described = cells_.first(std::min(cells_.size(), layout_.columns.size()));
  return std::ranges::none_of(described, is_number) &&
         std::ranges::all_of(layout_.number_columns, heads);
}

std::optional<double> EntryRow::number_at(std::size_t column) {
  if (const auto* number = std::get_if<double>(&at(column))) return *number;
  if (!is_blank(at(column)))
    note(column, quoted(word_at(column)) + " where " + std::string(layout_.columns[column].due) +
                     " is due: counted as not given");
  return std::nullopt;
}

GivenLength EntryRow::length_at(std::size_t column, Zero zero) {
  const auto number = number_at(column);
  if (!number) return {};
  const std::string the(layout_.columns[column].the);
  try {
    const Length length = Length::of(*number);
    if (length == Length() && zero == Zero::not_given) return {};
    if (length < Length()) {
      grave(column, the + ", " + text_of(length) + ", is negative");
      return {std::nullopt, true};
    }
    if (const auto unlikely = layout_.columns[column].unlikely; unlikely && length > *unlikely)
      note(column,
           the + ", " + text_of(length) + ", is unlikely: are unit and decimal mark right?");
    return {length, true};
  } catch (const BadInput& bad) {
    std::string words = the + " cannot be: " + bad.what();
    if (layout_.columns[column].of_shim && *number == std::floor(*number))
      if (const auto marked = thickness_marked(text_of(*number)))
        words += "; is it the mark for " + text_of(*marked) + "?";
    grave(column, words);
  }
  return {std::nullopt, true};
}

void EntryRow::add(std::size_t column, const std::string& words, bool grave) {
  troubles_.push_back({std::string(layout_.table), number_,
                       std::string(layout_.columns[column].name), subject_ + words, grave});
}

std::optional<std::size_t> first_row(const TableDescription& layout, const EntryTable& table,
                                     std::vector<Trouble>& troubles,
                                     const std::function<bool(const EntryRow&)>& is_data) {
  const auto row_is_blank = [](const auto& row) { return std::ranges::all_of(row, is_blank); };
  if (std::ranges::all_of(table, row_is_blank)) return std::nullopt;
  const std::size_t width = table.front().size();
  // One blank cell comes out of a sheet as a zero.
  if (table.size() == 1 && width == 1 && table[0][0] == Entry(0.0)) return std::nullopt;
  if (width < layout.least) {
    std::vector<std::string> due;
    for (std::size_t i = 0; i < layout.least; ++i) due.emplace_back(layout.columns[i].name);
    troubles.push_back({std::string(layout.table), 0, "",
                        "the table has " + std::to_string(width) +
                            (width == 1 ? " column" : " columns") + "; at least " +
                            std::to_string(layout.least) + " are due: " + listed(due),
                        true});
    return std::nullopt;
  }
  const EntryRow row(layout, 1, table.front(), troubles);
  return row.is_heading() && !(is_data && is_data(row)) ? 1 : 0;
}

}  // namespace shimwright
