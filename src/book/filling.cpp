// SPDX-License-Identifier: MPL-2.0
#include "book/filling.hpp"

#include <algorithm>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <map>
#include <string>
#include <vector>

#include "book/office/sheet.hpp"
#include "book/places.hpp"
#include "core/log/log_row.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright::book {
namespace {

std::vector<std::string> fields_of(const std::string& line, char mark) {
  std::vector<std::string> fields;
  std::size_t start = 0;
  for (;;) {
    const std::size_t end = line.find(mark, start);
    fields.emplace_back(trimmed(std::string_view(line).substr(start, end - start)));
    if (end == std::string::npos) return fields;
    start = end + 1;
  }
}

class Filler {
 public:
  Filler(const Ref<css::sheet::XSpreadsheetDocument>& book, const EngineLayout& layout)
      : places_(layout),
        engine_(book, sheet_name::engine),
        head_(book, sheet_name::head),
        shims_(book, sheet_name::shims),
        log_(book, sheet_name::log) {}

  void take(const std::string& section, const std::string& line) {
    const auto row = fields_of(line, '|');
    if (section == "engine")
      engine(fields_of(line, '='));
    else if (section == "valves")
      valve(row);
    else if (section == "spares")
      list(section, row, shims_place::first_spare, shims_place::spares);
    else if (section == "rows of sizes")
      list(section, row, shims_place::first_ladder, shims_place::ladders);
    else if (section == "single sizes")
      list(section, row, shims_place::first_single, shims_place::singles);
    else if (section == "log")
      check(row);
    else
      throw BadInput("there is no section \"" + section + "\"");
  }

 private:
  void engine(const std::vector<std::string>& pair) {
    namespace place = engine_place;
    if (pair.size() != 2) throw BadInput("a key and a value are due, parted by =");
    if (pair[0] == "exhaust" || pair[0] == "inlet") {
      const Side side = pair[0] == "inlet" ? Side::inlet : Side::exhaust;
      const auto values = fields_of(pair[1], '|');
      const int rows[] = {place::min_row, place::max_row, place::bias_row, place::series_row};
      for (std::size_t i = 0; i < values.size() && i < std::size(rows); ++i)
        engine_.entry(place::of(side, rows[i]), values[i]);
      return;
    }
    const std::map<std::string, At> cells{{"name", place::name},
                                          {"unit", place::unit},
                                          {"doubt", place::doubt},
                                          {"allowed", place::allowed},
                                          {"marks", place::scheme},
                                          {"use doubt", place::use_doubt},
                                          {"first", place::first},
                                          {"touch good", place::touch_good},
                                          {"work", place::work},
                                          {"currency", place::currency},
                                          {"firing", place::firing},
                                          {"opened", place::opened},
                                          {"distance unit", place::distance_unit},
                                          {"interval", place::interval}};
    const auto cell = cells.find(pair[0]);
    if (cell == cells.end()) throw BadInput("the engine has no \"" + pair[0] + "\"");
    engine_.entry(cell->second, pair[1]);
  }

  void valve(const std::vector<std::string>& row) {
    constexpr card::Row entries[] = {card::gap, card::mark, card::micrometer, card::exception};
    for (const Card& card : places_.head.cards) {
      if (name_of(card.valve, places_.layout) != row[0]) continue;
      for (std::size_t i = 1; i < row.size() && i <= std::size(entries); ++i)
        head_.entry(card.value(entries[i - 1]), row[i]);
      return;
    }
    throw BadInput("there is no valve \"" + row[0] + "\"");
  }

  void list(const std::string& section, const std::vector<std::string>& row, At first, int most) {
    const int index = listed_[section]++;
    if (index >= most) throw BadInput("more rows than the sheet has");
    for (std::size_t i = 0; i < row.size(); ++i)
      shims_.entry(right_of(below(first, index), static_cast<int>(i)), row[i]);
  }

  void check(const std::vector<std::string>& row) {
    if (row.size() > log_columns) throw BadInput("more columns than the log has");
    for (std::size_t i = 0; i < row.size(); ++i)
      log_.entry(right_of(below(log_place::first, checks_), static_cast<int>(i)), row[i]);
    ++checks_;
  }

  Places places_;
  Sheet engine_;
  Sheet head_;
  Sheet shims_;
  Sheet log_;
  std::map<std::string, int> listed_;
  int checks_ = 0;  // rows of the log
};

}  // namespace

void fill(const Ref<css::sheet::XSpreadsheetDocument>& book, const EngineLayout& layout,
          std::string_view entries) {
  Filler filler(book, layout);
  std::string section;
  int number = 0;
  while (!entries.empty()) {
    const std::string_view raw = entries.substr(0, entries.find('\n'));
    entries.remove_prefix(std::min(entries.size(), raw.size() + 1));
    ++number;
    const std::string line(trimmed(raw.substr(0, raw.find('#'))));
    if (line.empty()) continue;
    try {
      if (line.front() == '[')
        section = line.substr(1, line.size() - 2);
      else
        filler.take(section, line);
    } catch (const BadInput& bad) {
      throw BadInput("line " + std::to_string(number) + ": " + bad.what());
    }
  }
  as<css::sheet::XCalculatable>(book)->calculateAll();
}

}  // namespace shimwright::book
