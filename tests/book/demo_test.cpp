// SPDX-License-Identifier: MPL-2.0
//
// The demo book: an engine that has something of everything to show.
#include <gtest/gtest.h>

#include <map>

#include "core/plan/plan.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

class Demo : public ::testing::Test {
 protected:
  std::map<std::string, int> tally(std::string_view column,
                                   std::string_view table = "valves") const {
    std::map<std::string, int> counts;
    for (int i = 1; i <= the_places().count(); ++i) ++counts[demo.piece(table, column, i)];
    return counts;
  }

  OpenBook demo{the_office(), demo_file()};
};

TEST_F(Demo, keeps_moves_takes_a_spare_and_buys) {
  auto actions = tally("action");
  for (const Action action : {Action::keep, Action::move, Action::spare, Action::buy})
    EXPECT_GE(actions[std::string(word_for(action))], 1) << word_for(action);
  EXPECT_EQ(actions["unread"], 1);
  EXPECT_EQ(actions["none"], 0);
}

TEST_F(Demo, saves_buying_by_moving) {
  auto actions = tally("action");
  EXPECT_GT(actions["move"], actions["buy"]);
}

TEST_F(Demo, has_valves_of_every_sure_state_and_one_in_doubt) {
  auto states = tally("state");
  EXPECT_EQ(states["unread"], 1);
  EXPECT_EQ(states["loose"], 1);
  EXPECT_GE(states["tight"], 4);
  EXPECT_GE(states["tight?"], 1);
  EXPECT_GE(states["good"], 4);
}

TEST_F(Demo, ends_with_every_read_valve_inside_its_limits) {
  auto states = tally("then state");
  EXPECT_EQ(states["good"], the_places().count() - 1);
  EXPECT_EQ(states["unread"], 1);
}

TEST_F(Demo, has_a_worn_off_mark_and_a_shim_worn_thin) {
  auto trust = tally("shim is", "cards");
  EXPECT_EQ(trust["shim has no mark"], 1);
  EXPECT_EQ(trust["0.03 thinner than marked"], 1);
  EXPECT_GE(trust["shim not measured"], 1);
}

TEST_F(Demo, has_nothing_amiss) { EXPECT_EQ(demo.piece("book", "remarks count"), "0"); }

// What it does with the valves are words that compare equal, so that a person may count them.
TEST_F(Demo, can_be_counted_by_a_formula_of_ones_own) {
  const auto actions = tally("do");
  const At first = right_of(demo.find(book::sheet_name::plan, "1 EX L"), 3);
  const Area column = block(first, 1, the_places().count());
  for (const auto& [word, count] : actions)
    EXPECT_EQ(demo.value_of(book::sheet_name::plan,
                            "=COUNTIF(" + book::absolute(column) + ";\"" + word + "\")"),
              count)
        << word;
}

TEST_F(Demo, tells_on_head_what_the_function_tells) {
  namespace engine = book::engine_place;
  const auto on_engine = [](At at) { return book::on(book::sheet_name::engine, at); };
  for (const book::Card& one : the_places().head.cards) {
    const std::string gap = book::relative(one.value(book::card::gap));
    const auto limit = [&](int row) { return on_engine(engine::of(one.valve.side, row)); };
    const std::string state = demo.text_of(
        book::sheet_name::head, "=IF(" + gap + "=\"\";\"unread\";CLEARANCE.STATE(" + gap + ";" +
                                    limit(engine::min_row) + ";" + limit(engine::max_row) + ";" +
                                    on_engine(engine::doubt) + "))");
    const std::string shown = demo.shown(book::sheet_name::head, one.at(book::card::banner));
    EXPECT_TRUE(shown.ends_with(" " + state)) << shown << " / " << state;
  }
}

TEST_F(Demo, is_kept_as_calculated) {
  std::map<std::string, std::vector<std::pair<At, std::string>>> kept;
  for (const std::string_view sheet : faces) kept[std::string(sheet)] = demo.texts(sheet);
  demo.recalculate();
  for (const auto& [sheet, texts] : kept) {
    const auto now = demo.texts(sheet);
    ASSERT_EQ(now.size(), texts.size()) << sheet;
    for (std::size_t i = 0; i < texts.size(); ++i)
      EXPECT_EQ(now[i].second, texts[i].second) << book::on(sheet, now[i].first);
  }
}

}  // namespace
}  // namespace shimwright::tests
