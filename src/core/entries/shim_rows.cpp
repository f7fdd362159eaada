// SPDX-License-Identifier: MPL-2.0
#include "core/entries/shim_rows.hpp"

#include <array>
#include <cmath>
#include <cstdint>
#include <optional>
#include <tuple>

#include "core/values/bounds.hpp"

namespace shimwright {
namespace {

namespace shim {
enum { kind, series, size, count, price };
constexpr std::array<EntryColumn, 5> columns{{{"kind"},
                                              {"series"},
                                              {"size", Say::the_size, unlikely_thickness, true},
                                              {"count", Say::the_count},
                                              {"price", Say::the_price}}};
constexpr std::array<std::size_t, 3> number_columns{size, count, price};
constexpr TableDescription layout{"shims", columns, size + 1, number_columns, true};
}  // namespace shim

constexpr std::size_t most_rows = 20'000;

// Rows of which the same is to be told, once, in the first of them.
struct SeveralRows {
  std::optional<EntryRow> first;
  std::int64_t more = 0;

  void add(const EntryRow& row) {
    if (first)
      ++more;
    else
      first = row;
  }
};

class ShimReader {
 public:
  ShimReader(const std::set<std::string>& valve_series, SeriesSpellings& spellings,
             Entries& entries)
      : valve_series_(valve_series), spellings_(spellings), entries_(entries) {}

  void read(const EntryTable& shims) {
    const auto says_kind = [](const EntryRow& row) { return kind_named(row).has_value(); };
    const auto first = first_row(shim::layout, shims, entries_.troubles, says_kind);
    if (!first) return;
    for (std::size_t i = *first; i < shims.size() && rows_ <= most_rows; ++i)
      read_row({shim::layout, i + 1, shims[i], entries_.troubles});
    tell_of_missing_prices();
    tell_of_other_series();
  }

 private:
  void read_row(EntryRow row) {
    const auto* number = std::get_if<double>(&row.at(shim::size));
    const bool no_size = is_blank(row.at(shim::size)) || (number && *number == 0);
    const auto blank_at = [&row](std::size_t column) { return is_blank(row.at(column)); };
    if (no_size && blank_at(shim::kind) && blank_at(shim::series) && blank_at(shim::count) &&
        blank_at(shim::price))
      return;
    if (++rows_ > most_rows) {
      entries_.troubles.push_back(
          trouble_with_table(shim::layout.table, Say::too_many_rows, {counted(most_rows)}));
      return;
    }
    const auto thickness = row.length_at(shim::size);
    const auto which = kind_in(row);
    if (thickness.value) row.call_it({.kind = about_kind(which), .size = *thickness.value});
    const std::string& of = spellings_.first_seen(row.word_at(shim::series));
    if (!valve_series_.empty() && !valve_series_.contains(of)) {
      other_series_[of].add(row);
      return;
    }
    const bool is_sale = which == Stock::Kind::sale;
    const auto how_many = count_in(row);
    const Money price_each = row.money_at(shim::price, is_sale);
    if (no_size) row.note(shim::size, Say::size_missing);
    if (!thickness.value || row.is_left_out()) return;
    const Stock one{*which, of, *thickness.value, how_many, is_sale ? price_each : Money()};
    check_listed_once(row, one);
    if (is_sale) {
      prices_known_ = prices_known_ || std::holds_alternative<double>(row.at(shim::price));
      if (blank_at(shim::price)) without_price_.add(row);
    }
    entries_.question.stock.push_back(one);
  }

  static std::optional<Stock::Kind> kind_named(const EntryRow& row) {
    const std::string word = row.word_at(shim::kind);
    if (same_word(word, "spare")) return Stock::Kind::spare;
    if (same_word(word, "sale")) return Stock::Kind::sale;
    return std::nullopt;
  }

  static std::optional<Stock::Kind> kind_in(EntryRow& row) {
    const auto named = kind_named(row);
    if (named) return named;
    const std::string word = row.word_at(shim::kind);
    if (word.empty())
      row.grave(shim::kind, Say::kind_missing);
    else
      row.grave(shim::kind, Say::neither_spare_nor_sale, {shortened(word)});
    return std::nullopt;
  }

  static About::Kind about_kind(std::optional<Stock::Kind> named) {
    if (!named) return About::Kind::shim;
    return *named == Stock::Kind::spare ? About::Kind::spare : About::Kind::sale;
  }

  static std::optional<std::int64_t> count_in(EntryRow& row) {
    const auto number = row.number_at(shim::count);
    if (!number) return std::nullopt;
    if (*number >= 0 && *number <= most_shims && *number == std::floor(*number))
      return static_cast<std::int64_t>(*number);
    if (!std::isfinite(*number))
      row.grave(shim::count, Say::not_finite, {Say::the_count});
    else if (*number > most_shims)
      row.grave(shim::count, Say::more_than_a_million, {Say::the_count, *number});
    else if (*number < 0)
      row.grave(shim::count, Say::negative, {Say::the_count, *number});
    else
      row.grave(shim::count, Say::not_whole, {Say::the_count, *number});
    return std::nullopt;
  }

  // Two spares of one size may well lie in two rows, and a size be on sale new and used, which
  // count or price tell apart.
  void check_listed_once(EntryRow& row, const Stock& one) {
    const bool is_spare = one.kind == Stock::Kind::spare;
    const auto [earlier, is_new] = listed_.try_emplace(
        {one.kind, one.series, one.size, is_spare ? std::nullopt : one.count, one.price},
        row.number());
    if (is_new) return;
    row.note(shim::size, is_spare ? Say::spare_twice : Say::sale_twice, {counted(earlier->second)});
  }

  // Where prices are known, a size without one would look like a gift and be bought first.
  void tell_of_missing_prices() {
    if (!prices_known_ || !without_price_.first) return;
    if (without_price_.more == 0)
      without_price_.first->note(shim::price, Say::price_missing);
    else
      without_price_.first->note(shim::price, Say::prices_missing, {without_price_.more});
  }

  // A drawer may well hold shims for two engines: once for each series.
  void tell_of_other_series() {
    if (other_series_.empty()) return;
    const Names there = series_of_valves();
    for (auto& [other, rows] : other_series_) {
      EntryRow& row = *rows.first;
      if (other.empty() && rows.more == 0)
        row.note(shim::series, Say::series_missing, {there});
      else if (other.empty())
        row.note(shim::series, Say::series_missing_more, {there, rows.more});
      else if (rows.more == 0)
        row.note(shim::series, Say::series_unknown, {shortened(other), there});
      else
        row.note(shim::series, Say::series_unknown_more, {shortened(other), there, rows.more});
    }
  }

  Names series_of_valves() const {
    constexpr std::size_t most_listed = 6;
    Names there;
    for (const std::string& one : valve_series_) {
      if (there.size() == most_listed) {
        there.emplace_back(Say::other_series);
        break;
      }
      if (one.empty())
        there.emplace_back(Say::no_series);
      else
        there.emplace_back(in_quotes(one));
    }
    return there;
  }

  const std::set<std::string>& valve_series_;
  SeriesSpellings& spellings_;
  Entries& entries_;
  std::size_t rows_ = 0;
  std::map<std::tuple<Stock::Kind, std::string, Length, std::optional<std::int64_t>, Money>,
           std::size_t>
      listed_;  // to the row
  bool prices_known_ = false;
  SeveralRows without_price_;
  std::map<std::string, SeveralRows> other_series_;  // that no valve takes
};

}  // namespace

const TableDescription& shim_table() { return shim::layout; }

void read_shim_rows(const EntryTable& shims, const std::set<std::string>& valve_series,
                    SeriesSpellings& spellings, Entries& entries) {
  ShimReader(valve_series, spellings, entries).read(shims);
}

}  // namespace shimwright
