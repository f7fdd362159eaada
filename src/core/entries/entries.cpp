// SPDX-License-Identifier: MPL-2.0
#include "core/entries/entries.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/entries/shim_rows.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/choice.hpp"
#include "core/values/gap_slip.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

// Beyond it a slip of unit or decimal mark is likelier than the size (common practice, no source).
constexpr Length unlikely_clearance = Length::nanometres(5'000'000);

namespace valve {
enum { name, series, clearance, shim, min, max, aim, doubt, locked, nearest };
constexpr std::array<EntryColumn, 10> columns{
    {{"name"},
     {"series"},
     {"clearance", Say::the_clearance, unlikely_clearance},
     {"shim", Say::the_shim, unlikely_thickness, true},
     {"min", Say::the_min},
     {"max", Say::the_max},
     {"aim", Say::the_aim},
     {"doubt", Say::the_doubt},
     {"locked"},
     {"nearest"}}};
constexpr std::array<std::size_t, 4> number_columns{clearance, shim, min, max};
constexpr TableDescription layout{"valves", columns, max + 1, number_columns};
}  // namespace valve

namespace rule {
enum { name, value };
constexpr std::array<EntryColumn, 2> columns{{{"name"}, {"value", Say::the_work}}};
constexpr TableDescription layout{"rules", columns, value + 1};
const std::vector<std::string> known{"touch good", "work", "doubt", "first", "nearest"};
}  // namespace rule

constexpr std::size_t most_valves = 1'000;

class EntriesReader {
 public:
  Entries read(const EntryTable& valves, const EntryTable& shims, const EntryTable& rules) && {
    if (const auto first = first_row(valve::layout, valves, entries_.troubles))
      for (std::size_t i = *first; i < valves.size() && !too_many_valves_; ++i)
        read_valve({valve::layout, i + 1, valves[i], entries_.troubles});
    while (!entries_.valve_rows.empty() && !entries_.valve_rows.back())
      entries_.valve_rows.pop_back();
    read_shim_rows(shims, valve_series_, series_, entries_);
    if (first_row(rule::layout, rules, entries_.troubles))
      for (std::size_t i = 0; i < rules.size(); ++i)
        read_rule({rule::layout, i + 1, rules[i], entries_.troubles});
    put_in_order();
    return std::move(entries_);
  }

 private:
  void read_valve(EntryRow row) {
    const std::string name = row.word_at(valve::name);
    if (!name.empty()) row.call_it({About::Kind::valve, name});
    const auto clearance = row.length_at(valve::clearance, EntryRow::Zero::is_meant);
    const auto shim = row.length_at(valve::shim);
    if (name.empty() && !clearance.entered && !shim.entered) {
      entries_.valve_rows.emplace_back();
      return;
    }
    if (entries_.question.valves.size() == most_valves) {
      too_many_valves_ = true;
      entries_.troubles.push_back(
          trouble_with_table(valve::layout.table, Say::too_many_valves, {counted(most_valves)}));
      return;
    }
    Valve read{.name = name,
               .series = series_.first_seen(row.word_at(valve::series)),
               .clearance = clearance.value,
               .shim = shim.value,
               .limits = {},
               .aim = {},
               .doubt = {}};
    check_name(row, name);
    valve_series_.insert(read.series);
    read_limits(row, read);
    check_clearance(row, read);
    const auto doubt = row.length_at(valve::doubt, EntryRow::Zero::is_meant);
    read.doubt = doubt.value.value_or(Length());
    check_doubt_leaves_room(row, read);
    // What cannot be read must not lead to a shim changed by mistake.
    read.locked = yes_or_no_in(row, valve::locked, Say::locked_unclear, true);
    read.nearest = yes_or_no_in(row, valve::nearest, Say::nearest_unclear, false);
    entries_.valve_rows.emplace_back(entries_.question.valves.size());
    entries_.question.valves.push_back(std::move(read));
  }

  static bool yes_or_no_in(EntryRow& row, std::size_t column, Say unclear, bool otherwise) {
    const auto answer = yes_or_no(row.at(column));
    if (!answer) row.note(column, unclear, {shortened(row.word_at(column))});
    return answer.value_or(otherwise);
  }

  void check_name(EntryRow& row, const std::string& name) {
    if (name.empty()) {
      row.grave(valve::name, Say::valve_without_name);
      return;
    }
    const auto [earlier, is_new] = valve_names_.try_emplace(lower_case(name), row.number());
    if (!is_new) row.grave(valve::name, Say::name_twice, {counted(earlier->second)});
  }

  // A valve not yet read may still lack its limits; one that is read cannot be judged without.
  void read_limits(EntryRow& row, Valve& read) {
    const auto min = row.length_at(valve::min, EntryRow::Zero::is_meant);
    const auto max = row.length_at(valve::max);
    const auto aim = row.length_at(valve::aim);
    if (!min.value || !max.value) {
      if (!read.clearance || !read.shim) return;
      if (!min.entered) row.grave(valve::min, Say::reading_without_min);
      if (!max.entered) row.grave(valve::max, Say::reading_without_max);
      return;
    }
    read.limits = {*min.value, *max.value};
    if (*min.value > *max.value) {
      row.grave(valve::min, Say::min_above_max, {*min.value, *max.value});
      return;
    }
    read.aim = aim.value.value_or(aim_between(read.limits));
    if (read.aim < *min.value || read.aim > *max.value)
      row.grave(valve::aim, Say::aim_outside, {read.aim, *min.value, *max.value});
  }

  // Sound as a number, but to be looked at again before a shim is chosen by it.
  void check_clearance(EntryRow& row, const Valve& read) {
    if (!read.clearance) return;
    const Length clearance = *read.clearance;
    // Said once for all valves: nothing is to be mended.
    if (clearance == Length() && !std::exchange(told_of_zero_, true))
      row.note(valve::clearance, Say::clearance_zero);
    const GapSlip slip = likely_slip(clearance, read.limits);
    if (slip == GapSlip::too_large && clearance <= unlikely_clearance)
      row.note(valve::clearance, Say::clearance_twice_max, {clearance, read.limits.max});
    if (slip == GapSlip::too_small)
      row.note(valve::clearance, Say::clearance_fifth_min, {clearance, read.limits.min});
  }

  // Said once for all valves of the same limits and doubt.
  void check_doubt_leaves_room(EntryRow& row, const Valve& read) {
    const Length width = read.limits.max - read.limits.min;
    if (width < Length() || 2 * read.doubt <= width || read.limits.max == Length()) return;
    if (!no_room_.insert({read.limits.min, read.limits.max, read.doubt}).second) return;
    row.note(valve::doubt, Say::doubt_leaves_no_room, {read.doubt, width});
  }

  void read_rule(EntryRow row) {
    if (row.all_blank()) return;
    const std::string name = lower_case(row.word_at(rule::name));
    PlanRules& rules = entries_.question.rules;
    if (name.empty()) {
      row.grave(rule::name, Say::rule_missing, {rule::known});
      return;
    }
    row.call_it({About::Kind::rule, name});
    if (const auto [earlier, is_new] = rule_rows_.try_emplace(name, row.number()); !is_new)
      row.grave(rule::name, Say::rule_twice, {counted(earlier->second)});
    if (name == "touch good") {
      read_yes_or_no(row, rules.touch_good);
    } else if (name == "doubt") {
      read_yes_or_no(row, rules.use_doubt);
    } else if (name == "nearest") {
      read_yes_or_no(row, rules.nearest);
    } else if (name == "work") {
      rules.work = row.money_at(rule::value);
    } else if (name == "first") {
      const std::string value = row.word_at(rule::value);
      rules.aim_first = same_word(value, "aim");
      if (!value.empty() && !rules.aim_first && !same_word(value, "cost"))
        row.grave(rule::value, Say::neither_cost_nor_aim, {shortened(value)});
    } else {
      row.grave(rule::name, Say::rule_unknown, {rule::known});
    }
  }

  // A blank leaves the rule as it is without being given.
  static void read_yes_or_no(EntryRow& row, bool& setting) {
    if (is_blank(row.at(rule::value))) return;
    if (const auto answer = yes_or_no(row.at(rule::value)))
      setting = *answer;
    else
      row.grave(rule::value, Say::neither_yes_nor_no, {shortened(row.word_at(rule::value))});
  }

  void put_in_order() {
    const std::array layouts{&valve::layout, &shim_table(), &rule::layout};
    const auto place = [&layouts](const Trouble& trouble) {
      const auto layout = std::ranges::find(layouts, trouble.table, &TableDescription::table);
      const auto columns = (*layout)->columns;
      const auto column = std::ranges::find(columns, trouble.column, &EntryColumn::name);
      return std::tuple(layout - layouts.begin(), trouble.row,
                        trouble.column.empty() ? -1 : column - columns.begin());
    };
    std::ranges::stable_sort(entries_.troubles, {}, place);
  }

  Entries entries_;
  SeriesSpellings series_;
  std::map<std::string, std::size_t> valve_names_;  // to the row
  std::set<std::string> valve_series_;
  bool too_many_valves_ = false;
  bool told_of_zero_ = false;
  std::set<std::tuple<Length, Length, Length>> no_room_;  // limits and doubt already told of
  std::map<std::string, std::size_t> rule_rows_;
};

}  // namespace

Entries read_entries(const EntryTable& valves, const EntryTable& shims, const EntryTable& rules) {
  return EntriesReader().read(valves, shims, rules);
}

const PlanQuestion& sound_question(const Entries& entries) {
  const auto first = std::ranges::find(entries.troubles, true, &Trouble::grave);
  if (first == entries.troubles.end()) return entries.question;
  throw BadInput(in_words(*first));
}

std::optional<bool> yes_or_no(const Entry& entry) {
  if (is_blank(entry)) return false;
  if (const auto* number = std::get_if<double>(&entry)) {
    if (*number == 1) return true;
    if (*number == 0) return false;
    return std::nullopt;
  }
  const std::string word = lower_case(word_in(entry));
  if (word == "yes" || word == "x" || word == "true") return true;
  if (word == "no" || word == "false") return false;
  return std::nullopt;
}

}  // namespace shimwright
