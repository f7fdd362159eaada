// SPDX-License-Identifier: MPL-2.0
//
// The way from readings to an order list, walked in the book: what it shows is what the plan says
// when asked without any book.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "book/layouter.hpp"
#include "core/plan/plan.hpp"
#include "job.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

class FilledBook : public ::testing::TestWithParam<int> {};

TEST_P(FilledBook, shows_the_same_plan_in_inches) {
  const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places(), Unit::inch);
  expect_plan(book, job, the_places(), Unit::inch);
}

// The same question, put to the function on a sheet of one's own.
class OwnSheet {
 public:
  explicit OwnSheet(const OpenBook& book) : book_(book) {
    book.document()->getSheets()->insertNewByName("own", 0);
  }

  void ask(const PlanQuestion& question) {
    for (const Valve& valve : question.valves) {
      words(0, valves_, valve.name);
      words(1, valves_, valve.series);
      if (valve.clearance) number(2, valves_, valve.clearance->mm());
      if (valve.shim) number(3, valves_, valve.shim->mm());
      number(4, valves_, valve.limits.min.mm());
      number(5, valves_, valve.limits.max.mm());
      number(6, valves_, valve.aim.mm());
      number(7, valves_, valve.doubt.mm());
      words(8, valves_++, valve.locked ? "yes" : "no");
    }
    for (const Stock& stock : question.stock) {
      words(10, shims_, stock.kind == Stock::Kind::spare ? "spare" : "sale");
      words(11, shims_, stock.series);
      number(12, shims_, stock.size.mm());
      if (stock.count) number(13, shims_, static_cast<double>(*stock.count));
      number(14, shims_++, stock.price.amount());
    }
    rule("touch good", question.rules.touch_good ? "yes" : "no");
    rule("doubt", question.rules.use_doubt ? "yes" : "no");
    rule("first", question.rules.aim_first ? "aim" : "cost");
    words(16, rules_, "work");
    number(17, rules_++, question.rules.work.amount());
  }

  // Of a valve counted from 1; empty where the function gives none.
  std::string answer(int valve, const std::string& part) const {
    return book_.text_of("own", "=IFERROR(INDEX(SHIM.PLAN(" + rows("A", "I", valves_) + ";" +
                                    rows("K", "O", shims_) + ";" + rows("Q", "R", rules_) + ";\"" +
                                    part + "\");" + std::to_string(valve) + ");\"\")");
  }
  double number(int valve, const std::string& part) const {
    return Length::of(number_written(answer(valve, part)).value_or(-1), Unit::mm).mm();
  }

 private:
  static std::string rows(const std::string& from, const std::string& to, int count) {
    return from + "1:" + to + std::to_string(count);
  }
  void words(int column, int row, std::string_view text) {
    book_.cell("own", {column, row})->setFormula(office::to_office("'" + std::string(text)));
  }
  void number(int column, int row, double value) {
    book_.cell("own", {column, row})->setValue(value);
  }
  void rule(const char* name, const char* choice) {
    words(16, rules_, name);
    words(17, rules_++, choice);
  }

  const OpenBook& book_;
  int valves_ = 0;
  int shims_ = 0;
  int rules_ = 0;
};

TEST_P(FilledBook, shows_the_best_plan_and_so_does_the_function_asked_the_same_question) {
  const Job job = made_up_job(static_cast<std::uint64_t>(GetParam()), the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  expect_plan(book, job, the_places());
  OwnSheet own(book);
  own.ask(question_of(job, the_places().layout));
  const auto shown = [&](const char* column, int row) {
    return book.text_of("own", book::formula_of(book::Shows{"valves", column, row}));
  };
  for (int row = 1; row <= the_places().count(); ++row) {
    const std::string action = own.answer(row, "action");
    // A valve whose shim nobody need see is kept by the book, and unread to the function.
    if (action == "unread") continue;
    const ::testing::ScopedTrace place(__FILE__, __LINE__, "valve " + shown("name", row));
    EXPECT_EQ(shown("action", row), action);
    EXPECT_EQ(number_written(shown("after", row)), own.number(row, "after"));
    if (action == "keep" || action == "none") continue;
    EXPECT_EQ(number_written(shown("fit", row)), own.number(row, "size"));
  }
}

constexpr int engines = 6;
INSTANTIATE_TEST_SUITE_P(of_made_up_engines, FilledBook, ::testing::Range(0, engines));

// Or the tests above would show little.
TEST(MadeUpEngines, need_everything_that_a_plan_can_say) {
  std::set<Action> said;
  for (int seed = 0; seed < engines; ++seed) {
    const Job job = made_up_job(static_cast<std::uint64_t>(seed), the_places().layout);
    for (const PlanLine& line : best_plan(question_of(job, the_places().layout)).lines)
      said.insert(line.action);
  }
  EXPECT_EQ(said, (std::set{Action::keep, Action::move, Action::spare, Action::buy, Action::none,
                            Action::unread}));
}

}  // namespace
}  // namespace shimwright::tests
