// SPDX-License-Identifier: MPL-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/values/palette.hpp"
#include "job.hpp"

namespace shimwright::tests {
namespace {

namespace card = book::card;
using book::WorkingsMap;

// A length in a cell, in mm, where one stands there.
std::optional<double> length_in(const OpenBook& book, std::string_view sheet, At at, Unit unit) {
  if (book.shown(sheet, at).empty()) return std::nullopt;
  return Length::of(book.number(sheet, at), unit).mm();
}

std::optional<double> mm(const std::optional<Length>& length) {
  if (!length) return std::nullopt;
  return length->mm();
}

std::string signed_word(State state) {
  return std::string(look_of(state).sign) + " " + std::string(word_for(state));
}

bool changes(Action action) {
  return action == Action::move || action == Action::spare || action == Action::buy;
}

// The plan as the book tells it: the function plans nothing for a valve whose shim is unknown, but
// one that keeps its shim whatever that is has nothing to wait for.
PlanLine told_line(const Valve& valve, const PlanRules& rules, PlanLine line) {
  if (line.action != Action::unread || !valve.clearance) return line;
  const State state =
      state_of(valve.clearance, valve.limits, rules.use_doubt ? valve.doubt : Length());
  if (!valve.locked && (rules.touch_good || state != State::good)) return line;
  line.action = Action::keep;
  line.after = valve.clearance;
  line.state = state;
  line.margin = margin_of(*valve.clearance, valve.limits);
  return line;
}

bool left_outside(const PlanLine& line) {
  return line.action == Action::keep && *line.margin < Length();
}

// No blade goes: the gap may be anything below, and after fitting too.
bool only_known_below(const Valve& valve, const PlanLine& line) {
  return valve.clearance == Length() && line.action != Action::unread && line.state != State::tight;
}

void expect_workings(const OpenBook& book, const WorkingsMap& map, int i, const PlanLine& line,
                     const std::string& from) {
  const auto worked = [&](WorkingsMap::Valve column) { return book.worked(map.at(i, column)); };
  const auto length = [&](WorkingsMap::Valve column) {
    return length_in(book, book::sheet_name::workings, map.at(i, column), Unit::mm);
  };
  EXPECT_EQ(worked(WorkingsMap::action), word_for(line.action));
  EXPECT_EQ(worked(WorkingsMap::from), from);
  EXPECT_EQ(worked(WorkingsMap::then), word_for(line.state));
  EXPECT_EQ(length(WorkingsMap::size), mm(line.size));
  EXPECT_EQ(length(WorkingsMap::after), mm(line.after));
  EXPECT_EQ(length(WorkingsMap::margin), mm(line.margin));
  EXPECT_EQ(book.number(book::sheet_name::workings, map.at(i, WorkingsMap::cost)),
            line.cost.amount());
}

void expect_card(const OpenBook& book, const book::Card& card, const Valve& valve,
                 const PlanLine& line, const std::string& from, Unit unit) {
  constexpr auto head = book::sheet_name::head;
  const State now = state_of(valve.clearance, valve.limits, valve.doubt);
  EXPECT_EQ(book.shown(head, card.at(card::banner)), signed_word(now));
  EXPECT_EQ(length_in(book, head, card.value(card::after), unit), mm(line.after));
  const std::string foot = book.shown(head, card.at(card::then));
  EXPECT_EQ(foot, line.action == Action::unread   ? ""
                  : only_known_below(valve, line) ? "then measure again"
                                                  : "then " + signed_word(line.state));
  const std::string to_do = book.shown(head, card.at(card::action));
  if (changes(line.action)) {
    const auto word = std::string(word_for(line.action));
    ASSERT_TRUE(to_do.starts_with(word)) << to_do;
    const auto size = number_written(to_do.substr(word.size()));
    ASSERT_TRUE(size) << to_do;
    EXPECT_NEAR(Length::of(*size, unit).mm(), line.size->mm(), unit == Unit::mm ? 0.0005 : 0.0013);
  }
  const std::string source = book.shown(head, card.at(card::from));
  if (left_outside(line)) {
    EXPECT_EQ(to_do, "stays " + std::string(word_for(line.state)));
    EXPECT_EQ(source, "left alone as told");
    return;
  }
  if (line.action == Action::keep && !valve.shim) {
    EXPECT_EQ(to_do, "keep");
    EXPECT_EQ(source, "shim may stay unread");
    return;
  }
  EXPECT_EQ(source.empty(), !changes(line.action) && line.action != Action::none) << source;
  const std::map<Action, std::string> due{
      {Action::move, from}, {Action::spare, "spares"}, {Action::buy, "order"}};
  if (const auto words = due.find(line.action); words != due.end()) {
    EXPECT_NE(source.find(words->second), std::string::npos) << source;
  }
  if (line.action == Action::none) {
    EXPECT_EQ(to_do, "none fits");
  }
}

// The table on Plan, its columns known by their heads.
class PlanTable {
 public:
  explicit PlanTable(const OpenBook& book) : book_(book), head_(book.find(sheet, "valve")) {
    for (const auto& [at, text] : book.texts(sheet))
      if (at.row == head_.row) columns_[text] = at.column;
  }

  At at(int valve, const std::string& head) const {
    return {columns_.at(head), head_.row + 1 + valve};
  }
  std::string shown(int valve, const std::string& head) const {
    return book_.shown(sheet, at(valve, head));
  }
  std::optional<double> length(int valve, const std::string& head, Unit unit) const {
    return length_in(book_, sheet, at(valve, head), unit);
  }

  static constexpr std::string_view sheet = book::sheet_name::plan;

 private:
  const OpenBook& book_;
  At head_;
  std::map<std::string, int> columns_;
};

void expect_row(const PlanTable& table, int i, const Valve& valve, const PlanLine& line,
                const std::string& from, Unit unit) {
  EXPECT_EQ(table.shown(i, "valve"), valve.name);
  EXPECT_EQ(table.length(i, "gap", unit), mm(valve.clearance));
  EXPECT_EQ(table.length(i, "shim now", unit), mm(valve.shim));
  EXPECT_EQ(table.shown(i, "do"), left_outside(line) ? "stays " + std::string(word_for(line.state))
                                  : line.action == Action::none ? "none fits"
                                  : line.action == Action::unread
                                      ? "measure"
                                      : std::string(word_for(line.action)));
  EXPECT_EQ(table.length(i, "fit", unit), changes(line.action) ? mm(line.size) : std::nullopt);
  EXPECT_EQ(table.length(i, "gap after", unit), mm(line.after));
  EXPECT_EQ(table.length(i, "inside limits by", unit),
            only_known_below(valve, line) ? std::nullopt : mm(line.margin));
  if (line.action == Action::move) {
    EXPECT_NE(table.shown(i, "from").find(from), std::string::npos) << table.shown(i, "from");
  }
}

// Every valve is counted once.
void expect_figures(const OpenBook& book, const std::vector<PlanLine>& lines) {
  const auto figure = [&book](const char* words) {
    return book.number(PlanTable::sheet, below(book.find(PlanTable::sheet, words)));
  };
  const auto count = [&lines](Action action) {
    return std::ranges::count(lines, action, &PlanLine::action);
  };
  const auto left = std::ranges::count_if(lines, left_outside);
  EXPECT_EQ(figure("keep"), count(Action::keep) - left);
  EXPECT_EQ(figure("move"), count(Action::move));
  EXPECT_EQ(figure("spare"), count(Action::spare));
  EXPECT_EQ(figure("buy"), count(Action::buy));
  EXPECT_EQ(figure("none fits"), count(Action::none));
  EXPECT_EQ(figure("left outside"), left);
  EXPECT_EQ(figure("to measure"), count(Action::unread));
}

void expect_lists(const OpenBook& book, const WorkingsMap& map, const Plan& plan) {
  constexpr auto workings = book::sheet_name::workings;
  const auto rows = [&](Area area) {
    int count = 0;
    for (int row = area.from.row; row <= area.to.row; ++row)
      count += book.error(workings, {area.from.column, row}) == 0 &&
                       !book.shown(workings, {area.from.column, row}).empty()
                   ? 1
                   : 0;
    return count;
  };
  ASSERT_EQ(rows(map.order(WorkingsMap::order_size)), static_cast<int>(plan.order.size()));
  for (std::size_t i = 0; i < plan.order.size(); ++i) {
    const auto at = [&](int column) { return below(map.order(column).from, static_cast<int>(i)); };
    const Purchase& bought = plan.order[i];
    EXPECT_EQ(book.worked(at(WorkingsMap::order_series)), bought.series);
    EXPECT_EQ(book.number(workings, at(WorkingsMap::order_size)), bought.size.mm());
    EXPECT_EQ(book.number(workings, at(WorkingsMap::order_count)), bought.count);
    EXPECT_EQ(book.number(workings, at(WorkingsMap::order_price)), bought.price.amount());
    EXPECT_EQ(book.number(workings, at(WorkingsMap::order_cost)),
              (bought.count * bought.price).amount());
  }
  ASSERT_EQ(rows(map.surplus(WorkingsMap::surplus_size)), static_cast<int>(plan.surplus.size()));
  for (std::size_t i = 0; i < plan.surplus.size(); ++i) {
    const auto at = [&](int column) {
      return below(map.surplus(column).from, static_cast<int>(i));
    };
    EXPECT_EQ(book.number(workings, at(WorkingsMap::surplus_size)), plan.surplus[i].size.mm());
    EXPECT_EQ(book.number(workings, at(WorkingsMap::surplus_count)), plan.surplus[i].count);
  }
}

}  // namespace

void expect_plan(const OpenBook& book, const Job& job, const book::Places& places, Unit unit) {
  const PlanQuestion question = question_of(job, places.layout);
  const Plan plan = best_plan(question);
  const WorkingsMap map(places.count());
  ASSERT_TRUE(book.holds(map.fact(WorkingsMap::plan_stands)))
      << book.worked(map.trouble_lines(WorkingsMap::all_box));
  const PlanTable table(book);
  std::vector<PlanLine> told;
  for (int i = 0; i < places.count(); ++i) {
    const auto index = static_cast<std::size_t>(i);
    const PlanLine& line = plan.lines[index];
    const Valve& valve = question.valves[index];
    const std::string from = line.from ? question.valves[*line.from].name : std::string();
    const ::testing::ScopedTrace place(__FILE__, __LINE__, "valve " + valve.name);
    expect_workings(book, map, i, line, from);
    told.push_back(told_line(valve, question.rules, line));
    expect_card(book, places.head.cards[index], valve, told.back(), from, unit);
    expect_row(table, i, valve, told.back(), from, unit);
  }
  expect_figures(book, told);
  expect_lists(book, map, plan);
}

}  // namespace shimwright::tests
