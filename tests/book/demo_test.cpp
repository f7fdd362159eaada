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
  std::map<std::string, int> tally(WorkingsMap::Valve column) const {
    std::map<std::string, int> counts;
    for (int i = 0; i < the_places().count(); ++i) ++counts[demo.worked(map.at(i, column))];
    return counts;
  }

  const WorkingsMap map{the_places().count()};
  OpenBook demo{the_office(), demo_file()};
};

TEST_F(Demo, keeps_moves_takes_a_spare_and_buys) {
  auto actions = tally(WorkingsMap::action);
  for (const Action action : {Action::keep, Action::move, Action::spare, Action::buy})
    EXPECT_GE(actions[std::string(word_for(action))], 1) << word_for(action);
  EXPECT_EQ(actions["unread"], 1);
  EXPECT_EQ(actions["none"], 0);
}

TEST_F(Demo, saves_buying_by_moving) {
  auto actions = tally(WorkingsMap::action);
  EXPECT_GT(actions["move"], actions["buy"]);
}

TEST_F(Demo, has_valves_of_every_sure_state_and_one_in_doubt) {
  auto states = tally(WorkingsMap::now);
  EXPECT_EQ(states["unread"], 1);
  EXPECT_EQ(states["loose"], 1);
  EXPECT_GE(states["tight"], 4);
  EXPECT_GE(states["tight?"], 1);
  EXPECT_GE(states["good"], 4);
}

TEST_F(Demo, ends_with_every_read_valve_inside_its_limits) {
  auto states = tally(WorkingsMap::then);
  EXPECT_EQ(states["good"], the_places().count() - 1);
  EXPECT_EQ(states["unread"], 1);
}

TEST_F(Demo, has_a_worn_off_mark_and_a_shim_worn_thin) {
  auto trust = tally(WorkingsMap::trust);
  EXPECT_EQ(trust["unmarked"], 1);
  EXPECT_GE(trust["thinner"], 1);
  EXPECT_GE(trust["unmeasured"], 1);
}

TEST_F(Demo, has_nothing_amiss) {
  for (const auto box : {WorkingsMap::head_box, WorkingsMap::shims_box, WorkingsMap::engine_box})
    EXPECT_EQ(demo.worked(map.trouble_lines(box)), "");
}

// Its states are words that compare equal, so that a person may count them.
TEST_F(Demo, can_be_counted_by_a_formula_of_ones_own) {
  const auto states = tally(WorkingsMap::now);
  const auto actions = tally(WorkingsMap::action);
  for (const auto& [word, count] : states)
    EXPECT_EQ(demo.value_of(book::sheet_name::workings, "=COUNTIF(states_now;\"" + word + "\")"),
              count)
        << word;
  for (const auto& [word, count] : actions)
    EXPECT_EQ(demo.value_of(book::sheet_name::workings, "=COUNTIF(actions;\"" + word + "\")"),
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
