// SPDX-License-Identifier: MPL-2.0
//
// A log written down as an owner might and brought in again is the same log; and whatever stands in
// a table, each of its rows is answered once.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>
#include <map>
#include <random>

#include "core/log/bring_in/lines.hpp"
#include "core/log/bring_in/preview.hpp"
#include "owner_log.hpp"

namespace shimwright {
namespace {

using Random = std::mt19937;

template <class T>
const T& one_of(const std::vector<T>& all, Random& random) {
  return all[random() % all.size()];
}

// As written with a comma, or with its unit behind it.
Typed written(double number, Random& random, const char* unit) {
  if (random() % 4 == 0) return number;
  std::array<char, 32> figures{};
  const auto end = std::to_chars(figures.data(), figures.data() + figures.size(), number);
  std::string text(figures.data(), end.ptr);
  if (random() % 2 == 0) std::ranges::replace(text, '.', ',');
  if (random() % 3 == 0) text += unit;
  return text;
}

struct Style {
  bool inches = false;
  bool miles = false;
  bool day_first = true;
};

Typed date_cell(double date, const Style& style, Random& random) {
  if (random() % 3 == 0) {
    Typed typed(date);
    typed.cell.is_date = true;
    return typed;
  }
  const std::string iso = iso_day(date);
  if (random() % 3 == 0) return iso;
  const std::string year = iso.substr(0, 4);
  const std::string month = iso.substr(5, 2);
  const std::string of_month = iso.substr(8, 2);
  const std::string mark(1, "./"[style.day_first ? random() % 2 : 1]);
  return style.day_first ? of_month + mark + month + mark + year
                         : month + mark + of_month + mark + year;
}

std::string valve_words(const std::string& name, Random& random) {
  // `1 EX L`
  const std::string cylinder = name.substr(0, 1);
  const std::string side = name.substr(2, 2);
  const std::string place = name.substr(5);
  switch (random() % 4) {
    case 0:
      return side + cylinder + place;
    case 1:
      return cylinder + " " + (side == "EX" ? "exhaust" : "Inlet") + ", " +
             (place == "L" ? "left" : "right");
    case 2:
      return " cyl. " + cylinder + side + place;
    default:
      return name;
  }
}

struct Cells {
  std::string heading;
  std::vector<Typed> below;
};

Typed length_cell(const std::optional<Length>& length, const Style& style, Random& random) {
  if (!length) return "";
  return style.inches ? written(length->mm() / 25.4, random, " in")
                      : written(length->mm(), random, " mm");
}

OwnerTable shuffled_log(const std::vector<LogRow>& log, const Style& style, Random& random) {
  std::vector<Cells> columns{
      {"Check", {}},     {"Round", {}},       {"Date", {}}, {"Odometer", {}}, {"Valve", {}},
      {"Gap", {}},       {"State", {}},       {"Shim", {}}, {"New shim", {}}, {"Gap after", {}},
      {"Predicted", {}}, {"Temperature", {}}, {"By", {}},   {"Note", {}},     {"Fuel", {}}};
  if (style.miles) columns[3].heading = "Miles";
  for (const LogRow& row : log) {
    const double distance = row.distance.value() / (style.miles ? 1.609344 : 1);
    const std::vector<Typed> cells{
        static_cast<double>(row.check),
        static_cast<double>(row.round),
        date_cell(*row.date, style, random),
        distance,
        valve_words(row.valve, random),
        length_cell(row.gap_found, style, random),
        row.state,
        length_cell(row.shim_found, style, random),
        length_cell(row.shim_fitted, style, random),
        length_cell(row.gap_left, style, random),
        length_cell(row.predicted, style, random),
        random() % 2 == 0 ? Typed(*row.temperature) : Typed("18 \u00b0C"),
        row.who,
        row.note,
        "95"};
    for (std::size_t i = 0; i < cells.size(); ++i) columns[i].below.push_back(cells[i]);
  }
  std::ranges::shuffle(columns, random);
  OwnerTable table;
  auto& heading = table.rows.emplace_back();
  for (const Cells& column : columns) heading.push_back(Typed(column.heading).cell);
  for (std::size_t row = 0; row < log.size(); ++row) {
    auto& cells = table.rows.emplace_back();
    for (const Cells& column : columns) cells.push_back(column.below[row].cell);
  }
  return table;
}

void expect_same(const LogRow& got, const LogRow& due) {
  EXPECT_EQ(got.check, due.check);
  EXPECT_EQ(got.round, due.round);
  EXPECT_EQ(got.date, due.date);
  EXPECT_NEAR(got.distance.value(), due.distance.value(), 1e-6);
  EXPECT_EQ(got.valve, due.valve);
  EXPECT_EQ(got.gap_found, due.gap_found);
  EXPECT_EQ(got.state, due.state);
  EXPECT_EQ(got.shim_found, due.shim_found);
  EXPECT_EQ(got.shim_fitted, due.shim_fitted);
  EXPECT_EQ(got.gap_left, due.gap_left);
  EXPECT_EQ(got.predicted, due.predicted);
  EXPECT_EQ(got.temperature, due.temperature);
  EXPECT_EQ(got.who, due.who);
  EXPECT_EQ(got.note, due.note);
}

TEST(BringIn, a_log_written_down_in_any_way_and_brought_in_is_the_same_log) {
  const std::vector<LogRow> log = invented_log();
  const BringInBook book = invented_log_book();
  for (unsigned seed = 1; seed <= 200; ++seed) {
    Random random(seed);
    const Style style{random() % 2 == 0, random() % 2 == 0, random() % 2 == 0};
    const OwnerTable table = shuffled_log(log, style, random);
    Mapping mapping = guessed(table, book);
    // A column of dates may not tell which comes first: its owner does.
    if (mapping.order_asked)
      mapping.order = style.day_first ? DateOrder::day_first : DateOrder::month_first;
    const Preview preview = previewed(table, mapping, book);
    const auto rows = rows_taken(preview, usual_ticks(preview), book);
    for (const Reading& reading : preview.readings)
      EXPECT_EQ(in_words(reading.why, Teller()), "") << seed << ", row " << reading.source_row;
    ASSERT_EQ(rows.size(), log.size()) << seed;
    for (std::size_t i = 0; i < log.size(); ++i) expect_same(rows[i], log[i]);
    ASSERT_FALSE(HasFailure()) << seed;
  }
}

TEST(BringIn, what_was_brought_in_once_is_not_offered_again) {
  BringInBook book = invented_log_book();
  Random random(5);
  const OwnerTable table = shuffled_log(invented_log(), {}, random);
  const Preview first = previewed(table, guessed(table, book), book);
  book.log = rows_taken(first, usual_ticks(first), book);
  const Preview second = previewed(table, guessed(table, book), book);
  EXPECT_TRUE(rows_taken(second, usual_ticks(second), book).empty());
}

Typed any_cell(Random& random) {
  static const std::vector<Typed> cells{"",
                                        "",
                                        "",
                                        "-",
                                        " ",
                                        "1 EX L",
                                        "ex1r",
                                        "4 IN R",
                                        "2 in",
                                        "total",
                                        "Date",
                                        "Gap",
                                        "Shim",
                                        "New",
                                        "1 EX L gap",
                                        "1 EX L shim",
                                        "in2l",
                                        "4.5.2019",
                                        "13/13/2013",
                                        "05/04/2019",
                                        "2019-05-04",
                                        "0,15",
                                        "0.15 mm",
                                        ".006 in",
                                        "12 500 km",
                                        "310 h",
                                        "12.500",
                                        "7 800 mi",
                                        "#error",
                                        "275",
                                        "x",
                                        "99999999999999999999999",
                                        "-0",
                                        "1e308",
                                        ",",
                                        ".",
                                        "\"",
                                        "(",
                                        "\u2611\u00b0",
                                        "\xC2",
                                        "4 may",
                                        0.15,
                                        0.006,
                                        2.7,
                                        275,
                                        15,
                                        12500,
                                        0,
                                        -1,
                                        1e300,
                                        -1e300,
                                        43589,
                                        1e-300,
                                        20190504,
                                        std::numeric_limits<double>::infinity(),
                                        std::numeric_limits<double>::quiet_NaN()};
  Typed cell = one_of(cells, random);
  if (std::holds_alternative<double>(cell.cell.value) && random() % 3 == 0)
    cell.cell.is_date = true;
  return cell;
}

// Of columns that hold date, valve, gap, shim and distance.
Typed likely_cell(std::size_t column, Random& random) {
  static const std::vector<std::vector<Typed>> cells{
      {"4.5.2019", "13.6.2020", "2021-01-01", day(2022, 2, 2)},
      {"1 EX L", "ex1r", "4 IN R", "in 2 l", "3 EX L"},
      {0.15, "0,2", "0.18 mm", 0.21, ""},
      {2.7, "2,65", 270, "2.7 mm", ""},
      {12500, "12 500", "20.000 km", "", 31000}};
  return one_of(cells[column], random);
}

Mapping any_mapping(std::size_t columns, const BringInBook& book, Random& random) {
  Mapping mapping;
  mapping.form = random() % 2 == 0 ? LogForm::row_a_valve : LogForm::row_a_check;
  mapping.heading_rows = random() % 3;
  mapping.order = random() % 2 == 0 ? DateOrder::day_first : DateOrder::month_first;
  mapping.columns.resize(columns);
  for (ColumnMapping& column : mapping.columns) {
    if (random() % 5 == 0) continue;
    column.what = static_cast<LogColumn>(random() % log_columns);
    if (random() % 2 == 0) column.valve = random() % (book.valves.size() + 1);
    const auto units = units_of(column.what, book);
    if (!units.empty()) column.unit = one_of(units, random);
  }
  return mapping;
}

bool is_blank_cell(const OwnerCell& cell) {
  const auto* text = std::get_if<std::string>(&cell.value);
  return std::holds_alternative<std::monostate>(cell.value) ||
         (text != nullptr && text->find_first_not_of(' ') == std::string::npos);
}

TEST(BringIn, every_row_of_any_table_is_answered_once_and_nothing_is_thrown) {
  BringInBook book = invented_log_book();
  book.log = invented_log();
  const Teller teller;
  std::size_t sound = 0;
  for (unsigned seed = 1; seed <= 3000; ++seed) {
    Random random(seed);
    OwnerTable table;
    table.first_row = static_cast<int>(random() % 10) + 1;
    const bool mostly_sense = seed % 2 == 0;
    const std::size_t columns = mostly_sense ? 5 : random() % 7;
    const std::size_t row_count = random() % 12;
    if (mostly_sense) table = sheet({{"Date", "Valve", "Gap", "Shim", "km"}});
    for (std::size_t row = 0; row < row_count; ++row) {
      auto& cells = table.rows.emplace_back();
      const std::size_t width = columns - (columns > 0 && random() % 4 == 0 ? 1 : 0);
      for (std::size_t column = 0; column < width; ++column)
        cells.push_back(mostly_sense && random() % 8 != 0 ? likely_cell(column, random).cell
                                                          : any_cell(random).cell);
    }
    const Mapping guess = guessed(table, book);
    ASSERT_EQ(guess.columns.size(), table.columns());
    for (const Mapping& mapping : {guess, any_mapping(table.columns(), book, random)}) {
      const Preview preview = previewed(table, mapping, book);
      // By row: as many as it is, and each valve of it once.
      std::map<int, std::vector<int>> answered;
      for (const Reading& reading : preview.readings) {
        answered[reading.source_row].push_back(reading.source_column);
        EXPECT_EQ(reading.why.empty(), reading.standing == Standing::sound) << seed;
      }
      for (std::size_t row = 0; row < table.rows.size(); ++row) {
        auto places = answered[table.first_row + static_cast<int>(row)];
        const bool blank = std::ranges::all_of(table.rows[row], is_blank_cell);
        const bool is_row = row >= mapping.heading_rows && !blank;
        EXPECT_EQ(places.empty(), !is_row) << seed;
        if (mapping.form == LogForm::row_a_valve) {
          EXPECT_LE(places.size(), 1U) << seed;
        }
        std::ranges::sort(places);
        EXPECT_EQ(std::ranges::adjacent_find(places), places.end()) << seed;
      }
      const std::vector<bool> all(preview.readings.size(), true);
      const auto taken = rows_taken(preview, all, book);
      const auto refused =
          std::ranges::count(preview.readings, Standing::refused, &Reading::standing);
      ASSERT_EQ(taken.size() + static_cast<std::size_t>(refused), preview.readings.size()) << seed;
      for (const LogRow& row : taken) {
        EXPECT_GT(row.check, 0) << seed;
        EXPECT_GT(row.round, 0) << seed;
        EXPECT_NE(std::ranges::find(book.valves, row.valve), book.valves.end()) << seed;
      }
      sound += taken.size();
      for (std::size_t i = 0; i < preview.readings.size(); ++i)
        EXPECT_FALSE(reading_line(preview.readings[i], i % 2 == 0, teller).empty());
      for (std::size_t column = 0; column < table.columns(); ++column)
        EXPECT_FALSE(column_line(table, mapping, column, book, teller).empty());
      EXPECT_FALSE(outcome_in_words(preview, all, mapping, book, teller).empty());
    }
  }
  EXPECT_GT(sound, 500U) << "the tables are not all nonsense";
}

TEST(BringIn, five_thousand_rows_are_taken) {
  std::vector<LogRow> log;
  for (int i = 0; log.size() < 5000; ++i)
    for (LogRow row : invented_log()) {
      row.check += 4 * i;
      row.date = *row.date - 3 * i;
      log.push_back(row);
    }
  Random random(1);
  const OwnerTable table = shuffled_log(log, {}, random);
  const BringInBook book = invented_log_book();
  const Preview preview = previewed(table, guessed(table, book), book);
  EXPECT_GE(rows_taken(preview, usual_ticks(preview), book).size(), 4900U);
}

}  // namespace
}  // namespace shimwright
