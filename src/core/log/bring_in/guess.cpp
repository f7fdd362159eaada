// SPDX-License-Identifier: MPL-2.0
#include <algorithm>
#include <map>

#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/heading_words.hpp"
#include "core/log/bring_in/mapping.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// What stands below a column's heading, counted.
struct Contents {
  std::size_t filled = 0;
  std::size_t dates = 0;
  std::size_t valves = 0;
  std::size_t texts = 0;        // that are neither number, length nor date
  std::vector<double> numbers;  // as they stand, without a unit behind them

  bool mostly(std::size_t count) const { return filled > 0 && 5 * count >= 3 * filled; }
  double median() const {
    if (numbers.empty()) return 0;
    std::vector<double> sorted = numbers;
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::nth_element(sorted.begin(), middle, sorted.end());
    return *middle;
  }
};

bool is_any_length(const std::string& text) {
  try {
    return length_written(text).has_value();
  } catch (const std::exception&) {
    return true;
  }
}

Contents contents_of(const OwnerTable& table, std::size_t heading_rows, std::size_t column,
                     const ValveNames* names) {
  Contents found;
  for (std::size_t row = heading_rows; row < table.rows.size(); ++row) {
    const OwnerCell& cell = table.at(row, column);
    if (says_nothing(cell)) continue;
    ++found.filled;
    if (cell.is_date) {
      ++found.dates;
      continue;
    }
    if (const auto* number = std::get_if<double>(&cell.value)) {
      found.numbers.push_back(*number);
      continue;
    }
    const std::string text = word_in(cell.value);
    if (const auto number = number_written(text))
      found.numbers.push_back(*number);
    else if (date_written(text))
      ++found.dates;
    else if (!is_any_length(text) && !distance_written(text))
      ++found.texts;
    if (names != nullptr && !names->fitting(text).empty()) ++found.valves;
  }
  return found;
}

// Texts only, at least two of them or as many as there are columns.
bool may_be_heading(const OwnerTable& table, std::size_t row) {
  std::size_t words = 0;
  for (std::size_t column = 0; column < table.columns(); ++column) {
    const OwnerCell& cell = table.at(row, column);
    if (is_blank(cell.value)) continue;
    const auto* text = std::get_if<std::string>(&cell.value);
    if (text == nullptr || number_written(*text) || date_written(*text) || is_any_length(*text))
      return false;
    ++words;
  }
  return words >= std::min<std::size_t>(2, table.columns());
}

std::size_t heading_rows_in(const OwnerTable& table, const ValveNames& names) {
  if (table.rows.empty() || !may_be_heading(table, 0)) return 0;
  if (table.rows.size() < 2 || !may_be_heading(table, 1)) return 1;
  std::size_t filled = 0;
  std::size_t known = 0;
  for (std::size_t column = 0; column < table.columns(); ++column) {
    const std::string word = word_in(table.at(1, column).value);
    if (word.empty()) continue;
    ++filled;
    const HeadingWords said = heading_words_in(word, names);
    if (said.what || said.valve || said.after) ++known;
  }
  return 2 * known > filled ? 2 : 1;
}

bool is_of_a_valve(LogColumn column) {
  return is_gap(column) || is_shim(column) || column == LogColumn::state;
}

// A gap or a shim, by the size of its numbers; the sizes of shims are common practice, no source.
std::optional<LogColumn> kind_by_size(const Contents& contents, const BringInBook& book) {
  if (!contents.mostly(contents.numbers.size()) || contents.numbers.empty()) return std::nullopt;
  const double median = contents.median();
  const bool shim_in_inches = book.unit == Unit::inch && median >= 0.04 && median <= 0.25;
  if ((median >= 1 && median <= 6) || (median >= 100 && median < 10'000) || shim_in_inches)
    return LogColumn::shim_found;
  if (median >= 0 && median < 100) return LogColumn::gap_found;
  return std::nullopt;
}

// The sizes of gaps and shims are common practice, no source.
ColumnUnit unit_by_size(double median, LogColumn what, const BringInBook& book) {
  const bool inches = book.unit == Unit::inch;
  if (is_gap(what)) {
    if (median >= 1) return inches ? ColumnUnit::thou : ColumnUnit::hundredths;
    return median > 0 && median < 0.03 ? ColumnUnit::inch : ColumnUnit::mm;
  }
  if (median <= 0) return inches ? ColumnUnit::inch : ColumnUnit::mm;
  if (median < 0.6) return ColumnUnit::inch;
  if (median < 20) return ColumnUnit::mm;
  constexpr double thickest_thou = 160;  // 4 mm; more is a mark in hundredths of a millimetre
  return inches && median <= thickest_thou ? ColumnUnit::thou : ColumnUnit::mark;
}

// By the heading, or where there is no choice; none where the size of the numbers is to tell.
std::optional<ColumnUnit> unit_without_size(std::optional<LogColumn> what, ColumnUnit said,
                                            const BringInBook& book) {
  const auto possible = units_of(what, book);
  if (possible.empty()) return ColumnUnit::none;
  if (std::ranges::find(possible, said) != possible.end()) return said;
  if (*what == LogColumn::distance) return possible.front();
  return std::nullopt;
}

class Guesser {
 public:
  Guesser(const OwnerTable& table, const BringInBook& book)
      : table_(table), book_(book), names_(book.valves) {}

  Mapping guess() {
    mapping_.heading_rows = heading_rows_in(table_, names_);
    const std::size_t columns = table_.columns();
    mapping_.columns.resize(columns);
    bool names_valves = false;
    bool has_valves = false;
    for (std::size_t column = 0; column < columns; ++column) {
      headings_.push_back(heading(column));
      said_.push_back(heading_words_in(headings_.back(), names_));
      if (said_.back().what && !is_of_a_valve(*said_.back().what)) said_.back().valve.reset();
      contents_.push_back(contents_of(table_, mapping_.heading_rows, column, &names_));
      names_valves = names_valves || said_.back().valve;
      has_valves = has_valves || said_.back().what == LogColumn::valve;
    }
    if (names_valves && !has_valves) mapping_.form = LogForm::row_a_check;
    by_headings();
    by_contents();
    guess_units();
    guess_order();
    return mapping_;
  }

 private:
  std::string heading(std::size_t column) const {
    return heading_of(table_, mapping_.heading_rows, column);
  }

  bool is_used(LogColumn what, std::optional<std::size_t> valve = {}) const {
    return std::ranges::any_of(mapping_.columns, [&](const ColumnMapping& column) {
      return column.what == what && column.valve == valve;
    });
  }

  // The second of a kind is what the work left.
  void take(std::size_t column, LogColumn what, std::optional<std::size_t> valve = {}) {
    const bool many = what == LogColumn::valve || what == LogColumn::note;
    if (!many && is_used(what, valve)) {
      if (what == LogColumn::gap_found && !is_used(LogColumn::gap_left, valve))
        what = LogColumn::gap_left;
      else if (what == LogColumn::shim_found && !is_used(LogColumn::shim_fitted, valve))
        what = LogColumn::shim_fitted;
      else
        return;
    }
    mapping_.columns[column].what = what;
    mapping_.columns[column].valve = valve;
  }

  void by_headings() {
    const bool wide = mapping_.form == LogForm::row_a_check;
    for (std::size_t column = 0; column < said_.size(); ++column) {
      const HeadingWords& said = said_[column];
      if (wide && said.valve) {
        auto what = said.what;
        if (!what) what = kind_by_size(contents_[column], book_);
        if (what && !said.what && said.after)
          what = is_gap(*what) ? LogColumn::gap_left : LogColumn::shim_fitted;
        if (what) take(column, *what, said.valve);
      } else if (said.what && (!wide || !is_of_a_valve(*said.what))) {
        take(column, *said.what);
      }
    }
  }

  void by_contents() {
    const bool wide = mapping_.form == LogForm::row_a_check;
    for (std::size_t column = 0; column < said_.size(); ++column) {
      if (mapping_.columns[column].what || said_[column].what || said_[column].valve) continue;
      const Contents& contents = contents_[column];
      const bool unnamed = headings_[column].empty();
      if (contents.mostly(contents.dates) && !is_used(LogColumn::date))
        take(column, LogColumn::date);
      else if (!wide && contents.mostly(contents.valves) && contents.numbers.empty() &&
               !is_used(LogColumn::valve))
        take(column, LogColumn::valve);
      else if (contents.mostly(contents.numbers.size()))
        by_size(column, unnamed);
      else if (unnamed && contents.texts > 0)
        take(column, LogColumn::note);
    }
  }

  void by_size(std::size_t column, bool unnamed) {
    constexpr double least_distance = 1000;
    if (unnamed && contents_[column].median() >= least_distance) {
      if (!is_used(LogColumn::distance)) take(column, LogColumn::distance);
      return;
    }
    if (mapping_.form == LogForm::row_a_check) return;
    const auto what = kind_by_size(contents_[column], book_);
    if (what && (unnamed || !is_used(*what))) take(column, *what);
  }

  // The valves' columns of one kind are written alike, so that of these the size of all numbers
  // tells, and not that of the few in one column.
  void guess_units() {
    std::map<LogColumn, Contents> of_kind;
    std::vector<std::size_t> by_size;
    for (std::size_t column = 0; column < mapping_.columns.size(); ++column) {
      ColumnMapping& mapped = mapping_.columns[column];
      if (const auto unit = unit_without_size(mapped.what, said_[column].unit, book_)) {
        mapped.unit = *unit;
        continue;
      }
      by_size.push_back(column);
      auto& numbers = of_kind[*mapped.what].numbers;
      numbers.insert(numbers.end(), contents_[column].numbers.begin(),
                     contents_[column].numbers.end());
    }
    for (const std::size_t column : by_size) {
      ColumnMapping& mapped = mapping_.columns[column];
      mapped.unit = unit_by_size(of_kind[*mapped.what].median(), *mapped.what, book_);
    }
  }

  void guess_order() {
    std::vector<std::string> texts;
    for (std::size_t column = 0; column < mapping_.columns.size(); ++column)
      if (mapping_.columns[column].what == LogColumn::date)
        for (std::size_t row = mapping_.heading_rows; row < table_.rows.size(); ++row)
          if (const auto* text = std::get_if<std::string>(&table_.at(row, column).value))
            texts.push_back(*text);
    const OrderGuess order = order_of(texts);
    mapping_.order = order.order;
    mapping_.order_asked = order.asked;
  }

  const OwnerTable& table_;
  const BringInBook& book_;
  ValveNames names_;
  Mapping mapping_;
  std::vector<std::string> headings_;
  std::vector<HeadingWords> said_;
  std::vector<Contents> contents_;
};

}  // namespace

bool is_gap(LogColumn column) {
  return column == LogColumn::gap_found || column == LogColumn::gap_left ||
         column == LogColumn::predicted;
}

bool is_shim(LogColumn column) {
  return column == LogColumn::shim_found || column == LogColumn::shim_fitted;
}

std::vector<ColumnUnit> units_of(std::optional<LogColumn> what, const BringInBook& book) {
  if (!what) return {};
  if (is_gap(*what))
    return {ColumnUnit::mm, ColumnUnit::hundredths, ColumnUnit::inch, ColumnUnit::thou};
  if (is_shim(*what)) return {ColumnUnit::mm, ColumnUnit::inch, ColumnUnit::thou, ColumnUnit::mark};
  if (what != LogColumn::distance) return {};
  switch (book.distance) {
    case DistanceUnit::km:
      return {ColumnUnit::km, ColumnUnit::miles, ColumnUnit::hours};
    case DistanceUnit::miles:
      return {ColumnUnit::miles, ColumnUnit::km, ColumnUnit::hours};
    case DistanceUnit::hours:
      break;
  }
  return {ColumnUnit::hours, ColumnUnit::km, ColumnUnit::miles};
}

std::string heading_of(const OwnerTable& table, std::size_t heading_rows, std::size_t column) {
  if (heading_rows == 0 || table.rows.empty()) return {};
  std::string top = word_in(table.at(0, column).value);
  if (heading_rows < 2 || table.rows.size() < 2) return top;
  const std::string below = word_in(table.at(1, column).value);
  // What holds for a whole check stands under no valve and no kind.
  const auto what = heading_words_in(below, ValveNames({})).what;
  if (top.empty() && what && !is_of_a_valve(*what)) return below;
  for (std::size_t left = column; top.empty() && !below.empty() && left-- > 0;)
    top = word_in(table.at(0, left).value);
  return top + (top.empty() || below.empty() ? "" : " ") + below;
}

ColumnUnit unit_guessed(const OwnerTable& table, std::size_t heading_rows, std::size_t column,
                        std::optional<LogColumn> what, const BringInBook& book) {
  const ColumnUnit said =
      heading_words_in(heading_of(table, heading_rows, column), ValveNames(book.valves)).unit;
  if (const auto unit = unit_without_size(what, said, book)) return *unit;
  return unit_by_size(contents_of(table, heading_rows, column, nullptr).median(), *what, book);
}

Mapping guessed(const OwnerTable& table, const BringInBook& book) {
  return Guesser(table, book).guess();
}

}  // namespace shimwright
