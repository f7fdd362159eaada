// SPDX-License-Identifier: MPL-2.0
//
// The chart of the valves for every layout a book can be asked for.
#include "book/head_map.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <set>
#include <utility>
#include <vector>

#include "book/presets.hpp"

namespace shimwright::book {
namespace {

std::vector<Layout> every_layout() {
  std::vector<Layout> all;
  for (const auto arrangement : {Arrangement::in_line, Arrangement::vee, Arrangement::flat})
    for (int cylinders = 1; cylinders <= 16; ++cylinders)
      for (int exhaust = 1; exhaust <= 3; ++exhaust)
        for (int inlet = 1; inlet <= 3; ++inlet) {
          if (arrangement != Arrangement::in_line && cylinders % 2 != 0) continue;
          if (exhaust + inlet > 5 || cylinders * (exhaust + inlet) > 48) continue;
          all.push_back({.name = {},
                         .arrangement = arrangement,
                         .banks = usual_banks(arrangement, cylinders),
                         .exhaust_valves = exhaust,
                         .inlet_valves = inlet,
                         .firing = {}});
        }
  return all;
}

TEST(HeadMap, no_two_cards_share_a_cell_and_each_lies_on_its_head) {
  for (const Layout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    ASSERT_EQ(map.cards.size(), valves_of(layout).size());
    std::set<std::pair<int, int>> taken;
    for (const Card& card : map.cards) {
      for (int row = 0; row < card::rows; ++row)
        for (int column = 0; column < 2; ++column)
          EXPECT_TRUE(taken.emplace(card.corner.column + column, card.corner.row + row).second);
      EXPECT_TRUE(std::ranges::any_of(map.banks, [&](const BankDeck& deck) {
        return card.corner.column > deck.deck.from.column &&
               card.corner.column + 1 < deck.deck.to.column &&
               card.corner.row > deck.deck.from.row &&
               card.corner.row + card::rows <= deck.deck.to.row &&
               std::ranges::any_of(deck.strips, [&](const CylinderStrip& strip) {
                 return strip.cylinder == card.valve.cylinder;
               });
      }));
    }
  }
}

TEST(HeadMap, every_bank_begins_once_and_keeps_its_order) {
  for (const Layout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (std::size_t bank = 0; bank < layout.banks.size(); ++bank) {
      std::vector<int> cylinders;
      for (const BankDeck& deck : map.banks) {
        if (deck.bank != bank) continue;
        EXPECT_EQ(deck.continued, !cylinders.empty());
        for (const CylinderStrip& strip : deck.strips) cylinders.push_back(strip.cylinder);
      }
      EXPECT_EQ(cylinders, layout.banks[bank].cylinders);
    }
  }
}

TEST(HeadMap, heads_lie_below_each_other) {
  for (const Layout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (std::size_t i = 1; i < map.banks.size(); ++i)
      EXPECT_GT(map.banks[i].deck.from.row, map.banks[i - 1].deck.to.row);
  }
}

TEST(HeadMap, the_usual_engines_banks_lie_in_one_row) {
  for (const Preset& preset : presets())
    EXPECT_EQ(head_map(preset.layout).banks.size(), preset.layout.banks.size()) << preset.name;
}

// Lying A4 has 277 mm between its margins. The widest is a V of twelve with three valves on one
// side: parted, it would be too tall.
TEST(HeadMap, no_chart_is_much_wider_than_can_be_read_on_paper) {
  for (const Layout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    EXPECT_LT(std::accumulate(map.column_mm.begin(), map.column_mm.end(), 0.0), 277 / 0.44);
  }
}

}  // namespace
}  // namespace shimwright::book
