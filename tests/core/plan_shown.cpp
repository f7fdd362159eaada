// SPDX-License-Identifier: MPL-2.0
#include <gtest/gtest.h>

#include <algorithm>

#include "core/service/words/teller.hpp"
#include "core/values/palette.hpp"
#include "made_up_job.hpp"

namespace shimwright::tests {
namespace {

std::string word(State state) { return std::string(word_for(state)); }

std::string signed_word(State state) {
  return std::string(look_of(state).sign) + " " + word(state);
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

class Expected {
 public:
  Expected(const Piece& shown, const Job& job, const EngineLayout& layout, const Teller& teller)
      : shown_(shown),
        job_(job),
        teller_(teller),
        question_(question_of(job, layout)),
        plan_(best_plan(question_)) {}

  void hold() {
    for (std::size_t i = 0; i < question_.valves.size(); ++i) {
      const Valve& valve = question_.valves[i];
      const ::testing::ScopedTrace place(__FILE__, __LINE__, "valve " + valve.name);
      told_.push_back(told_line(valve, question_.rules, plan_.lines[i]));
      const auto row = static_cast<int>(i) + 1;
      hold_reading(valve, row);
      hold_action(valve, told_.back(), row);
      hold_result(valve, told_.back(), row);
    }
    hold_figures();
    hold_lists();
  }

 private:
  std::string of_valve(std::string_view column, int row) const {
    return shown_("valves", column, row);
  }
  std::string figure(std::string_view column) const { return shown_("book", column, 1); }
  std::string length(const std::optional<Length>& length) const {
    return length ? teller_.column(*length) : std::string();
  }

  void hold_reading(const Valve& valve, int row) const {
    EXPECT_EQ(of_valve("name", row), valve.name);
    EXPECT_EQ(of_valve("gap", row), length(valve.clearance));
    EXPECT_EQ(of_valve("shim", row), length(valve.shim));
    EXPECT_EQ(of_valve("now", row),
              signed_word(state_of(valve.clearance, valve.limits, valve.doubt)));
  }

  void hold_action(const Valve& valve, const PlanLine& line, int row) const {
    const std::string action(word_for(line.action));
    const std::string to_do = of_valve("do", row);
    const std::string on_card = of_valve("card do", row);
    const std::string from = of_valve("from", row);
    EXPECT_EQ(of_valve("fit", row), changes(line.action) ? length(line.size) : "");
    EXPECT_EQ(of_valve("kept", row),
              line.action == Action::keep && !left_outside(line) ? "yes" : "");
    if (left_outside(line)) {
      EXPECT_EQ(to_do, "stays " + word(line.state));
      EXPECT_EQ(on_card, to_do);
      EXPECT_EQ(from, "left alone, as entered");
      EXPECT_EQ(of_valve("card from", row), from);
    } else if (line.action == Action::keep) {
      EXPECT_EQ(to_do, "keep");
      EXPECT_EQ(on_card, "keep");
      EXPECT_EQ(from, valve.shim ? "" : "no need to measure this shim");
      EXPECT_EQ(of_valve("card from", row), valve.shim ? "" : "no need to measure");
    } else if (line.action == Action::none) {
      EXPECT_EQ(to_do, "none fits");
      EXPECT_EQ(on_card, "none fits");
      EXPECT_TRUE(from.starts_with("needs ") || from == "no size serves") << from;
    } else if (line.action == Action::unread) {
      EXPECT_EQ(to_do, "measure");
      EXPECT_EQ(on_card, valve.clearance ? "measure shim" : valve.shim ? "measure gap" : "");
      EXPECT_EQ(from, "");
    } else {
      EXPECT_EQ(to_do, action);
      EXPECT_EQ(on_card, action + " " + length(line.size));
      EXPECT_EQ(from, source(line));
    }
  }

  std::string source(const PlanLine& line) const {
    if (line.action == Action::spare) return "spares";
    if (line.action == Action::buy) return "order";
    const std::string& giver = question_.valves[*line.from].name;
    return job_.readings[*line.from].micrometer ? giver : giver + ", measure it";
  }

  void hold_result(const Valve& valve, const PlanLine& line, int row) const {
    const bool again = only_known_below(valve, line);
    const bool lacks_shim =
        line.action == Action::unread && valve.clearance.has_value() && !valve.shim;
    const std::string then = again        ? "measure again"
                             : lacks_shim ? "shim unknown"
                                          : signed_word(line.state);
    EXPECT_EQ(of_valve("after", row), length(line.after));
    EXPECT_EQ(of_valve("margin", row), again ? "" : length(line.margin));
    EXPECT_EQ(of_valve("then", row), then);
    EXPECT_EQ(of_valve("then state", row), again ? "again" : word(line.state));
    EXPECT_EQ(of_valve("card then", row), line.action == Action::unread ? "" : "then " + then);
    EXPECT_EQ(of_valve("cost", row),
              changes(line.action) && line.cost > Money() ? teller_.sum(line.cost) : "");
  }

  // Every valve is counted once.
  void hold_figures() const {
    const auto count = [this](Action action) {
      return std::ranges::count(told_, action, &PlanLine::action);
    };
    const auto left = std::ranges::count_if(told_, left_outside);
    EXPECT_EQ(figure("count keep"), std::to_string(count(Action::keep) - left));
    EXPECT_EQ(figure("count move"), std::to_string(count(Action::move)));
    EXPECT_EQ(figure("count spare"), std::to_string(count(Action::spare)));
    EXPECT_EQ(figure("count buy"), std::to_string(count(Action::buy)));
    EXPECT_EQ(figure("count none"), std::to_string(count(Action::none)));
    EXPECT_EQ(figure("count outside"), std::to_string(left));
    EXPECT_EQ(figure("count unread"), std::to_string(count(Action::unread)));
    EXPECT_EQ(figure("label none"), "none fits");
    Money pay;
    for (const PlanLine& line : told_) pay += line.cost;
    EXPECT_EQ(figure("total"), teller_.sum(pay));
    EXPECT_TRUE(figure("to pay").starts_with(teller_.sum(pay))) << figure("to pay");
  }

  // Row by row, and nothing below.
  void hold_list(std::string_view table, const std::vector<std::string>& columns,
                 std::vector<std::vector<std::string>> rows) const {
    const std::size_t listed = rows.size();
    if (listed == 0) rows.push_back({"nothing"});
    if (listed < question_.valves.size()) rows.emplace_back();
    int number = 0;
    for (std::vector<std::string>& row : rows) {
      row.resize(columns.size());
      ++number;
      for (std::size_t i = 0; i < columns.size(); ++i)
        EXPECT_EQ(shown_(table, columns[i], number), row[i])
            << table << ", " << columns[i] << ", row " << number;
    }
  }

  void hold_lists() const {
    std::vector<std::vector<std::string>> order;
    for (const Purchase& bought : plan_.order)
      order.push_back({bought.series, length(bought.size), std::to_string(bought.count),
                       teller_.sum(bought.price), teller_.sum(bought.count * bought.price)});
    hold_list("order", {"series", "size", "count", "price", "cost"}, std::move(order));
    std::vector<std::vector<std::string>> surplus;
    for (const Leftover& left : plan_.surplus)
      surplus.push_back({left.series, length(left.size), std::to_string(left.count)});
    hold_list("left over", {"series", "size", "count"}, std::move(surplus));
  }

  const Piece& shown_;
  const Job& job_;
  Teller teller_;
  PlanQuestion question_;
  Plan plan_;
  std::vector<PlanLine> told_;
};

}  // namespace

void expect_plan_shown(const Piece& shown, const Job& job, const EngineLayout& layout, Unit unit,
                       std::string_view decimal_mark) {
  Expected(shown, job, layout, Teller(Language::english, unit, decimal_mark)).hold();
}

}  // namespace shimwright::tests
