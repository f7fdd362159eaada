// SPDX-License-Identifier: MPL-2.0
#include "core/entries/entry_row.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <variant>

#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
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

bool EntryRow::all_blank() const { return std::ranges::all_of(cells_, is_blank); }

bool EntryRow::is_heading() const {
  if (layout_->number_columns.empty()) return false;
  const auto heads = [this](std::size_t column) {
    return column >= cells_.size() || (!is_blank(at(column)) && !reads_as_length(word_at(column)));
  };
  const auto described = cells_.first(std::min(cells_.size(), layout_->columns.size()));
  return std::ranges::none_of(described, is_number) &&
         std::ranges::all_of(layout_->number_columns, heads);
}

std::optional<double> EntryRow::number_at(std::size_t column) {
  if (const auto* number = std::get_if<double>(&at(column))) return *number;
  if (is_blank(at(column))) return std::nullopt;
  note(column, Say::text_where_number_due, {noun_at(column), shortened(word_at(column))});
  return std::nullopt;
}

GivenLength EntryRow::length_at(std::size_t column, Zero zero) {
  const auto number = number_at(column);
  if (!number) return {};
  const GivenLength impossible{std::nullopt, true};
  if (!std::isfinite(*number)) {
    grave(column, Say::not_finite, {noun_at(column)});
    return impossible;
  }
  if (std::abs(*number) > largest_length_mm) {
    tell_of_too_large(column, *number);
    return impossible;
  }
  const Length length = Length::of(*number);
  if (length == Length() && zero == Zero::not_given) return {};
  if (length < Length()) {
    grave(column, Say::negative, {noun_at(column), TypedLength{*number}});
    return impossible;
  }
  if (const auto unlikely = layout_->columns[column].unlikely; unlikely && length > *unlikely)
    note(column, Say::unlikely, {noun_at(column), length});
  return {length, true};
}

Money EntryRow::money_at(std::size_t column, bool matters) {
  const auto number = number_at(column);
  if (!number) return {};
  const auto wrong = [&](Say what, std::initializer_list<Word> words) {
    if (matters)
      grave(column, what, words);
    else
      note(column, what, words);
  };
  if (!std::isfinite(*number))
    wrong(Say::not_finite, {noun_at(column)});
  else if (*number < 0)
    wrong(Say::negative, {noun_at(column), *number});
  else if (*number > largest_sum)
    wrong(Say::more_than_a_million, {noun_at(column), *number});
  else
    return Money::of(*number);
  return {};
}

void EntryRow::tell_of_too_large(std::size_t column, double mm) {
  if (mm < 0) {
    grave(column, Say::negative, {noun_at(column), TypedLength{mm}});
  } else if (!layout_->columns[column].of_shim) {
    grave(column, Say::too_large, {noun_at(column), TypedLength{mm}});
  } else if (const auto marked =
                 mm == std::floor(mm) ? thickness_marked(text_of(mm)) : std::optional<Length>()) {
    grave(column, Say::no_shim_size_but_mark, {TypedLength{mm}, LengthToType{*marked}});
  } else {
    grave(column, Say::no_shim_size, {TypedLength{mm}});
  }
}

void EntryRow::add(std::size_t column, Say what, std::initializer_list<Word> words, Weight weight) {
  const bool is_grave = weight == Weight::grave;
  troubles_->push_back({.table = std::string(layout_->table),
                        .row = number_,
                        .column = std::string(layout_->columns[column].name),
                        .grave = is_grave && !layout_->rows_may_be_left_out,
                        .left_out = is_grave && layout_->rows_may_be_left_out,
                        .about = about_,
                        .what = what,
                        .words = words});
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
    troubles.push_back(trouble_with_table(
        layout.table, Say::too_few_columns,
        {static_cast<std::int64_t>(width), static_cast<std::int64_t>(layout.least), due}));
    return std::nullopt;
  }
  const EntryRow row(layout, 1, table.front(), troubles);
  return row.is_heading() && !(is_data && is_data(row)) ? 1 : 0;
}

}  // namespace shimwright
