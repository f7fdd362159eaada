// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/preview.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <unordered_map>

#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/check_numbers.hpp"
#include "core/log/bring_in/read_cell.hpp"
#include "core/log/bring_in/valve_words.hpp"
#include "core/values/gap_slip.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// What holds for all valves of a check.
struct CheckCells {
  LogRow row;
  std::vector<Told> why;
  std::vector<Told> notes;
  bool told = false;  // it has a date, a distance or a number
};

class Previewer {
 public:
  Previewer(const OwnerTable& table, const Mapping& mapping, const BringInBook& book)
      : table_(table), mapping_(mapping), book_(book), names_(book.valves) {
    mapping_.columns.resize(table.columns());
    for (std::size_t i = 0; i < mapping_.columns.size(); ++i) sort_in(i);
    if (const auto distance = column_of(LogColumn::distance)) {
      std::vector<std::string> texts;
      for (std::size_t row = first_row(); row < table_.rows.size(); ++row)
        if (const auto* text = std::get_if<std::string>(&table_.at(row, *distance).value))
          texts.push_back(*text);
      decimal_mark_ = decimal_mark_in(texts);
    }
    for (const LogRow& row : book_.log) in_log_.insert(log_key(row));
  }

  Preview run() {
    for (std::size_t row = first_row(); row < table_.rows.size(); ++row) {
      if (is_blank_row(row)) continue;
      if (is_heading_again(row))
        refuse(row, {Told{Say::bring_heading_again}});
      else if (mapping_.form == LogForm::row_a_valve)
        read_valve_row(row);
      else
        read_check_row(row);
    }
    preview_.own_numbers = settle_own_numbers(preview_, book_);
    tell_doubles();
    return std::move(preview_);
  }

 private:
  std::size_t first_row() const { return std::min(mapping_.heading_rows, table_.rows.size()); }

  // The columns by what they hold; of two of a kind the first counts, and the other is told.
  void sort_in(std::size_t column) {
    const ColumnMapping& mapped = mapping_.columns[column];
    if (!mapped.what) return;
    const LogColumn what = *mapped.what;
    if (mapping_.form == LogForm::row_a_check) {
      if (what == LogColumn::valve) return;
      if (is_gap(what) || is_shim(what) || what == LogColumn::state) {
        if (!mapped.valve || *mapped.valve >= book_.valves.size()) return;
        auto group = std::ranges::find(groups_, *mapped.valve, &Group::valve);
        if (group == groups_.end()) group = groups_.insert(groups_.end(), {*mapped.valve, {}});
        add(group->columns, column, what);
        return;
      }
    }
    add(columns_, column, what);
  }

  using Columns = std::vector<std::pair<LogColumn, std::size_t>>;
  struct Group {  // of one valve, where a row is a check
    std::size_t valve;
    Columns columns;
  };

  void add(Columns& columns, std::size_t column, LogColumn what) {
    const bool many = what == LogColumn::valve || what == LogColumn::note;
    const bool used =
        std::ranges::any_of(columns, [&](const auto& one) { return one.first == what; });
    if (used && !many)
      preview_.notes.push_back({Say::bring_column_twice, {word_for(what)}});
    else
      columns.emplace_back(what, column);
  }

  std::optional<std::size_t> column_of(LogColumn what) const {
    const auto found =
        std::ranges::find_if(columns_, [&](const auto& one) { return one.first == what; });
    return found == columns_.end() ? std::nullopt : std::optional(found->second);
  }

  bool is_blank_row(std::size_t row) const {
    for (const OwnerCell& cell : table_.rows[row])
      if (!is_blank(cell.value)) return false;
    return true;
  }

  bool is_heading_again(std::size_t row) const {
    for (std::size_t heading = 0; heading < first_row(); ++heading) {
      std::size_t same = 0;
      bool all = true;
      for (std::size_t column = 0; column < table_.columns() && all; ++column) {
        const auto* text = std::get_if<std::string>(&table_.at(row, column).value);
        if (is_blank(table_.at(row, column).value)) continue;
        all = text != nullptr && same_word(*text, word_in(table_.at(heading, column).value));
        ++same;
      }
      if (all && same > 0) return true;
    }
    return false;
  }

  int as_counted(std::size_t row) const { return table_.first_row + static_cast<int>(row); }

  void refuse(std::size_t row, std::vector<Told> why) {
    Reading reading;
    reading.source_row = as_counted(row);
    reading.standing = Standing::refused;
    reading.why = std::move(why);
    preview_.readings.push_back(std::move(reading));
  }

  template <class Value, class Into>
  static void put(CellRead<Value> read, Into& into, std::vector<Told>& told) {
    if (read.value) into = *read.value;
    if (read.why) told.push_back(std::move(*read.why));
  }

  static void add_words(const OwnerCell& cell, std::string& into) {
    if (says_nothing(cell)) return;
    into += (into.empty() ? "" : "; ") + shown(cell);
  }

  // Date, distance, numbers and words; lengths are passed over.
  CheckCells check_cells(std::size_t row) const {
    CheckCells cells;
    for (const auto& [what, column] : columns_) {
      const OwnerCell& cell = table_.at(row, column);
      switch (what) {
        case LogColumn::check:
          put(number_in(cell, what), cells.row.check, cells.notes);
          break;
        case LogColumn::round:
          put(number_in(cell, what), cells.row.round, cells.notes);
          break;
        case LogColumn::date:
          put(date_in(cell, mapping_.order), cells.row.date, cells.why);
          break;
        case LogColumn::distance:
          put(distance_in(cell, mapping_.columns[column], decimal_mark_, book_), cells.row.distance,
              cells.why);
          break;
        case LogColumn::temperature:
          put(temperature_in(cell), cells.row.temperature, cells.notes);
          break;
        case LogColumn::who:
          add_words(cell, cells.row.who);
          break;
        case LogColumn::note:
          add_words(cell, cells.row.note);
          break;
        default:
          break;
      }
    }
    cells.told = cells.row.date || cells.row.distance || cells.row.check > 0;
    return cells;
  }

  void read_lengths(std::size_t row, const Columns& columns, Reading& reading) const {
    for (const auto& [what, column] : columns) {
      const OwnerCell& cell = table_.at(row, column);
      const auto read = [&, column = column](std::optional<Length>& into) {
        put(length_in(cell, mapping_.columns[column], book_), into, reading.why);
      };
      if (what == LogColumn::gap_found) read(reading.row.gap_found);
      if (what == LogColumn::gap_left) read(reading.row.gap_left);
      if (what == LogColumn::predicted) read(reading.row.predicted);
      if (what == LogColumn::shim_found) read(reading.row.shim_found);
      if (what == LogColumn::shim_fitted) read(reading.row.shim_fitted);
      if (what == LogColumn::state) add_words(cell, reading.row.state);
    }
  }

  static bool has_reading(const LogRow& row) {
    return row.gap_found || row.gap_left || row.shim_found || row.shim_fitted;
  }

  // The valve that a row names, in one column or in several.
  void read_valve(std::size_t row, Reading& reading) {
    std::string text;
    for (const auto& [what, column] : columns_)
      if (what == LogColumn::valve && !says_nothing(table_.at(row, column)))
        text += (text.empty() ? "" : " ") + shown(table_.at(row, column));
    if (text.empty()) {
      reading.why.push_back({Say::bring_no_valve});
      return;
    }
    auto& fits = known_[text];
    if (!fits) fits = names_.fitting(text);
    if (fits->size() == 1) {
      reading.row.valve = book_.valves[fits->front()];
    } else if (fits->empty()) {
      reading.why.push_back({Say::bring_valve_unknown, {in_quotes(text)}});
    } else {
      Names names;
      constexpr std::size_t most = 4;
      for (const std::size_t valve : *fits)
        if (names.size() < most) names.emplace_back(book_.valves[valve]);
      reading.why.push_back(
          {fits->size() > most ? Say::bring_valve_unclear_more : Say::bring_valve_unclear,
           {in_quotes(text), std::move(names)}});
    }
  }

  // In many logs date and distance stand only beside a check's first valve. Below one that cannot
  // be read nothing is known.
  void carry_down(CheckCells& cells, const std::string& valve) {
    if (!cells.why.empty()) {
      above_.reset();
      return;
    }
    if (cells.told) {
      const bool same = above_ && cells.row.date && cells.row.date == above_->date;
      if (same && !cells.row.distance) cells.row.distance = above_->distance;
      if (!same || cells.row.distance != above_->distance) seen_.clear();
      above_ = cells.row;
    } else if (above_ && !valve.empty() && !seen_.contains(valve)) {
      cells.row.date = above_->date;
      cells.row.distance = above_->distance;
      cells.row.check = above_->check;
      cells.told = true;
    }
    if (!valve.empty()) seen_.insert(valve);
  }

  void read_valve_row(std::size_t row) {
    Reading reading;
    reading.source_row = as_counted(row);
    read_valve(row, reading);
    CheckCells cells = check_cells(row);
    carry_down(cells, reading.row.valve);
    const std::string valve = reading.row.valve;
    reading.row = cells.row;
    reading.row.valve = valve;
    if (!cells.told && cells.why.empty()) cells.why.push_back({Say::bring_no_date});
    std::ranges::move(cells.why, std::back_inserter(reading.why));
    reading.notes = std::move(cells.notes);
    read_lengths(row, columns_, reading);
    add(std::move(reading));
  }

  void read_check_row(std::size_t row) {
    CheckCells cells = check_cells(row);
    if (!cells.told && cells.why.empty()) cells.why.push_back({Say::bring_no_date});
    if (!cells.why.empty()) return refuse(row, std::move(cells.why));
    bool any = false;
    for (const Group& group : groups_) {
      const auto first = std::ranges::find_if(group.columns, [&](const auto& one) {
        return !says_nothing(table_.at(row, one.second));
      });
      if (first == group.columns.end()) continue;
      any = true;
      Reading reading;
      reading.source_row = as_counted(row);
      reading.source_column = table_.first_column + static_cast<int>(group.columns.front().second);
      reading.row = cells.row;
      reading.row.valve = book_.valves[group.valve];
      reading.notes = cells.notes;
      read_lengths(row, group.columns, reading);
      add(std::move(reading));
    }
    if (!any) refuse(row, {Told{Say::bring_no_reading}});
  }

  void add(Reading reading) {
    if (reading.why.empty() && !has_reading(reading.row))
      reading.why.push_back({Say::bring_no_reading});
    if (!reading.why.empty())
      reading.standing = Standing::refused;
    else
      tell_unlikely(reading);
    if (reading.row.round == 0) reading.row.round = 1;
    preview_.readings.push_back(std::move(reading));
  }

  void tell_unlikely(Reading& reading) const {
    const auto valve = std::ranges::find(book_.valves, reading.row.valve) - book_.valves.begin();
    const auto at = static_cast<std::size_t>(valve);
    if (at >= book_.limits.size() || !book_.limits[at]) return;
    const Limits& limits = *book_.limits[at];
    for (const auto& [column, gap] : {std::pair(LogColumn::gap_found, reading.row.gap_found),
                                      std::pair(LogColumn::gap_left, reading.row.gap_left)}) {
      const GapSlip slip = gap ? likely_slip(*gap, limits) : GapSlip::none;
      if (slip == GapSlip::none) continue;
      reading.standing = Standing::unlikely;
      const bool large = slip == GapSlip::too_large;
      reading.why.push_back({large ? Say::bring_gap_large : Say::bring_gap_small,
                             {word_for(column), large ? limits.max : limits.min}});
    }
  }

  // A valve at a date in a round; without a date, at a distance; without both, at a check.
  using Key = std::tuple<int, double, double, std::string, std::int64_t>;
  static Key log_key(const LogRow& row) {
    const std::int64_t round = std::max<std::int64_t>(row.round, 1);
    const std::string valve = lower_case(trimmed(row.valve));
    if (row.date) return {0, *row.date, 0, valve, round};
    if (row.distance) return {1, *row.distance, 0, valve, round};
    return {2, static_cast<double>(row.check), 0, valve, round};
  }

  // Among the owner's own rows two checks on one day are told apart by number or distance.
  Key own_key(const LogRow& row) const {
    Key key = log_key(row);
    if (preview_.own_numbers && row.check > 0)
      std::get<2>(key) = static_cast<double>(row.check);
    else if (row.date && row.distance)
      std::get<2>(key) = *row.distance;
    return key;
  }

  void tell_doubles() {
    std::map<Key, int> rows;
    for (Reading& reading : preview_.readings) {
      if (reading.standing == Standing::refused) continue;
      const auto [first, is_new] = rows.try_emplace(own_key(reading.row), reading.source_row);
      if (in_log_.contains(log_key(reading.row))) {
        reading.standing = Standing::in_log;
        reading.why.push_back({Say::bring_in_log_already});
      } else if (!is_new) {
        reading.standing = Standing::twice;
        reading.why.push_back({Say::bring_twice, {std::int64_t{first->second}}});
      }
    }
  }

  const OwnerTable& table_;
  Mapping mapping_;
  const BringInBook& book_;
  ValveNames names_;
  Columns columns_;            // of every row; where a row is a check, without those of valves
  std::vector<Group> groups_;  // none where a row is a valve
  char decimal_mark_ = 0;
  std::set<Key> in_log_;
  std::unordered_map<std::string, std::optional<std::vector<std::size_t>>> known_;
  std::optional<LogRow> above_;  // the last row that told its check
  std::set<std::string> seen_;   // valves of that check
  Preview preview_;
};

}  // namespace

Preview previewed(const OwnerTable& table, const Mapping& mapping, const BringInBook& book) {
  return Previewer(table, mapping, book).run();
}

std::vector<bool> usual_ticks(const Preview& preview) {
  std::vector<bool> ticks;
  for (const Reading& reading : preview.readings)
    ticks.push_back(reading.standing == Standing::sound);
  return ticks;
}

}  // namespace shimwright
