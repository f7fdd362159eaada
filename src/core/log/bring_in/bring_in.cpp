// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/bring_in.hpp"

#include <algorithm>

#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/lines.hpp"
#include "core/log/bring_in/read_cell.hpp"

namespace shimwright {
namespace {

std::size_t filled_in(const std::vector<OwnerCell>& row) {
  return static_cast<std::size_t>(
      std::ranges::count_if(row, [](const OwnerCell& cell) { return !is_blank(cell.value); }));
}

}  // namespace

std::vector<LogRow> present_rows(const EntryTable& log) {
  std::vector<LogRow> rows;
  for (const std::vector<Entry>& cells : log) {
    const auto at = [&](LogColumn column) {
      const auto place = static_cast<std::size_t>(column);
      return OwnerCell{place < cells.size() ? cells[place] : Entry(), column == LogColumn::date};
    };
    LogRow row;
    row.check = number_in(at(LogColumn::check), LogColumn::check).value.value_or(0);
    row.round = number_in(at(LogColumn::round), LogColumn::round).value.value_or(0);
    row.date = date_in(at(LogColumn::date), DateOrder::day_first).value;
    const OwnerCell distance = at(LogColumn::distance);
    if (const auto* number = std::get_if<double>(&distance.value)) row.distance = *number;
    row.valve = word_in(at(LogColumn::valve).value);
    if (row.check > 0 || !row.valve.empty()) rows.push_back(std::move(row));
  }
  return rows;
}

OwnerTable without_title(OwnerTable table) {
  while (!table.rows.empty() && filled_in(table.rows.back()) == 0) table.rows.pop_back();
  const std::size_t least = table.columns() >= 3 ? 2 : 1;
  const auto first =
      std::ranges::find_if(table.rows, [&](const auto& row) { return filled_in(row) >= least; });
  if (first == table.rows.end()) return table;
  table.first_row += static_cast<int>(first - table.rows.begin());
  table.rows.erase(table.rows.begin(), first);
  return table;
}

BringIn::BringIn(OwnerTable table, BringInBook book, Teller teller)
    : table_(without_title(std::move(table))), book_(std::move(book)), teller_(std::move(teller)) {
  mapping_ = guessed(table_, book_);
  read();
}

void BringIn::read() {
  preview_ = previewed(table_, mapping_, book_);
  ticks_ = usual_ticks(preview_);
  for (std::size_t i = 0; i < ticks_.size(); ++i) {
    const Reading& reading = preview_.readings[i];
    const auto set = by_hand_.find({reading.source_row, reading.source_column});
    if (set != by_hand_.end() && reading.can_be_taken()) ticks_[i] = set->second;
  }
  pick_lines();
}

void BringIn::pick_lines() {
  lines_.clear();
  for (std::size_t i = 0; i < ticks_.size(); ++i)
    if (all_ || !ticks_[i]) lines_.push_back(i);
}

void BringIn::set_form(LogForm form) {
  mapping_.form = form;
  read();
}

void BringIn::set_heading_rows(std::size_t rows) {
  mapping_.heading_rows = rows;
  read();
}

void BringIn::set_order(DateOrder order) {
  mapping_.order = order;
  mapping_.order_asked = false;
  read();
}

void BringIn::set_what(std::size_t column, std::optional<LogColumn> what) {
  mapping_.columns[column].what = what;
  mapping_.columns[column].unit = unit_guessed(table_, mapping_.heading_rows, column, what, book_);
  read();
}

void BringIn::set_valve(std::size_t column, std::optional<std::size_t> valve) {
  mapping_.columns[column].valve = valve;
  read();
}

void BringIn::set_unit(std::size_t column, ColumnUnit unit) {
  mapping_.columns[column].unit = unit;
  read();
}

void BringIn::show(bool all) {
  all_ = all;
  pick_lines();
}

void BringIn::turn_tick(std::size_t line) {
  const std::size_t at = lines_.at(line);
  const Reading& reading = preview_.readings[at];
  if (!reading.can_be_taken()) return;
  ticks_[at] = !ticks_[at];
  by_hand_[{reading.source_row, reading.source_column}] = ticks_[at];
}

void BringIn::tick_all(bool tick) {
  for (std::size_t i = 0; i < ticks_.size(); ++i) {
    const Reading& reading = preview_.readings[i];
    if (!reading.can_be_taken()) continue;
    ticks_[i] = tick;
    by_hand_[{reading.source_row, reading.source_column}] = tick;
  }
}

std::string BringIn::columns_heading() const { return shimwright::columns_heading(teller_); }

std::vector<std::string> BringIn::column_lines() const {
  std::vector<std::string> lines;
  for (std::size_t column = 0; column < mapping_.columns.size(); ++column)
    lines.push_back(column_line(table_, mapping_, column, book_, teller_));
  return lines;
}

std::string BringIn::rows_heading() const { return readings_heading(teller_); }

std::vector<std::string> BringIn::row_lines() const {
  std::vector<std::string> lines;
  lines.reserve(lines_.size());
  for (std::size_t line = 0; line < lines_.size(); ++line) lines.push_back(row_line(line));
  return lines;
}

std::string BringIn::row_line(std::size_t line) const {
  const std::size_t at = lines_.at(line);
  return reading_line(preview_.readings[at], ticks_[at], teller_);
}

std::string BringIn::outcome() const {
  return outcome_in_words(preview_, ticks_, mapping_, book_, teller_);
}

std::vector<LogRow> BringIn::rows() const { return rows_taken(preview_, ticks_, book_); }

}  // namespace shimwright
