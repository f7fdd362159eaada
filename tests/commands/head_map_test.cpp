// SPDX-License-Identifier: MPL-2.0
//
// The chart of the valves for every layout a book can be asked for.
#include "book/head/head_map.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <set>
#include <utility>
#include <vector>

#include "book/head/head_words.hpp"
#include "core/engine/presets.hpp"

namespace shimwright::book {
namespace {

std::vector<EngineLayout> every_layout() {
  std::vector<EngineLayout> all;
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

bool holds(const Area& outer, const Area& inner) {
  return outer.from.column <= inner.from.column && inner.to.column <= outer.to.column &&
         outer.from.row <= inner.from.row && inner.to.row <= outer.to.row;
}

Area whole(const Card& card) { return {card.at(card::name), card.value(card::then)}; }

TEST(HeadMap, no_two_cards_share_a_cell_and_each_lies_on_its_head) {
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    ASSERT_EQ(map.cards.size(), valves_of(layout).size());
    std::set<std::pair<int, int>> taken;
    for (const Card& card : map.cards) {
      const Area area = whole(card);
      for (int row = area.from.row; row <= area.to.row; ++row)
        for (int column = area.from.column; column <= area.to.column; ++column)
          EXPECT_TRUE(taken.emplace(column, row).second);
      EXPECT_TRUE(std::ranges::any_of(map.banks, [&](const BankDeck& deck) {
        return holds(deck.deck, area) &&
               std::ranges::any_of(deck.strips, [&](const CylinderStrip& strip) {
                 return strip.cylinder == card.valve.cylinder;
               });
      }));
    }
  }
}

double mm_before(const HeadMap& map, int column) {
  return std::accumulate(map.column_mm.begin(), map.column_mm.begin() + column, 0.0);
}

double middle_of(const HeadMap& map, const Area& area) {
  return (mm_before(map, area.from.column) + mm_before(map, area.to.column + 1)) / 2;
}

TEST(HeadMap, all_cards_are_equally_wide) {
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (const Card& card : map.cards)
      EXPECT_NEAR(
          mm_before(map, card.value(card::name).column + 1) - mm_before(map, card.corner.column),
          card::wide_mm, 1e-9);
  }
}

// The office draws the button of a choice over the next column, no wider than that.
TEST(HeadMap, beside_each_card_is_room_for_the_button_of_a_choice) {
  constexpr double least_mm = 4.2;  // about 16 pixels
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (const Card& card : map.cards)
      EXPECT_GE(map.column_mm.at(static_cast<std::size_t>(card.value(card::exception).column + 1)),
                least_mm);
  }
}

// A valve alone stands midway between the two opposite, two midway among three.
TEST(HeadMap, the_valves_of_each_side_stand_about_the_middle_of_their_cylinder) {
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (const BankDeck& deck : map.banks)
      for (const CylinderStrip& strip : deck.strips)
        for (const Side side : {Side::exhaust, Side::inlet}) {
          double sum = 0;
          int valves = 0;
          for (const Card& card : map.cards)
            if (card.valve.cylinder == strip.cylinder && card.valve.side == side) {
              sum += middle_of(map, whole(card));
              ++valves;
            }
          EXPECT_NEAR(sum / valves, middle_of(map, strip.area), 1e-9);
        }
  }
}

TEST(HeadMap, two_valves_opposite_three_stand_between_them) {
  EngineLayout layout = inline_four();
  layout.inlet_valves = 3;
  const HeadMap map = head_map(layout);
  const auto middle = [&map](const ValveId& valve) {
    return middle_of(map, whole(*std::ranges::find(map.cards, valve, &Card::valve)));
  };
  for (int place = 0; place < 2; ++place)
    EXPECT_NEAR(middle({1, Side::exhaust, place}),
                (middle({1, Side::inlet, place}) + middle({1, Side::inlet, place + 1})) / 2, 1e-9);
}

TEST(HeadMap, every_bank_begins_once_and_keeps_its_order) {
  for (const EngineLayout& layout : every_layout()) {
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

TEST(HeadMap, heads_lie_below_each_other_or_two_banks_side_by_side) {
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    for (std::size_t i = 1; i < map.banks.size(); ++i) {
      const Area& before = map.banks[i - 1].deck;
      const Area& deck = map.banks[i].deck;
      if (map.spread.beside) {
        EXPECT_EQ(map.banks.size(), 2);
        EXPECT_EQ(deck.from.row, before.from.row);
        EXPECT_TRUE(map.banks[i].upper_side.from.column > before.to.column ||
                    map.banks[i - 1].upper_side.from.column > deck.to.column);
      } else {
        EXPECT_GT(map.banks[i].heading.from.row, before.to.row);
      }
    }
  }
}

TEST(HeadMap, every_row_and_column_has_a_size) {
  for (const EngineLayout& layout : every_layout()) {
    const HeadMap map = head_map(layout);
    EXPECT_EQ(map.column_mm.size(), static_cast<std::size_t>(map.last_column) + 1);
    EXPECT_EQ(map.row_mm.size(), static_cast<std::size_t>(map.last_row) + 1);
    EXPECT_GT(std::ranges::min(map.column_mm), 0);
    EXPECT_GT(std::ranges::min(map.row_mm), 0);
  }
}

EngineLayout with_banks(Arrangement arrangement, int cylinders, int exhaust, int inlet) {
  return {.name = {},
          .arrangement = arrangement,
          .banks = usual_banks(arrangement, cylinders),
          .exhaust_valves = exhaust,
          .inlet_valves = inlet,
          .firing = {}};
}

TEST(HeadSpread, lays_banks_of_one_or_two_cylinders_side_by_side) {
  for (const Arrangement arrangement : {Arrangement::vee, Arrangement::flat})
    for (const int cylinders : {2, 4})
      EXPECT_TRUE(spread_of(with_banks(arrangement, cylinders, 2, 2)).beside);
}

// Else the first of them, `front` say, stands on the left.
TEST(HeadMap, a_bank_called_left_stands_on_the_left) {
  const auto first_at_left = [](const EngineLayout& layout) {
    const HeadMap map = head_map(layout);
    return map.banks[0].deck.from.column < map.banks[1].deck.from.column;
  };
  EngineLayout layout = with_banks(Arrangement::flat, 2, 2, 2);
  EXPECT_FALSE(first_at_left(layout));
  layout.banks[0].name = "Left";
  layout.banks[1].name = "Right";
  EXPECT_TRUE(first_at_left(layout));
  layout.banks[0].name = "front";
  layout.banks[1].name = "rear";
  EXPECT_TRUE(first_at_left(layout));
}

TEST(HeadSpread, leaves_longer_banks_one_over_the_other_as_they_lie) {
  for (const Arrangement arrangement : {Arrangement::vee, Arrangement::flat})
    for (const int cylinders : {6, 8, 10, 12})
      EXPECT_FALSE(spread_of(with_banks(arrangement, cylinders, 2, 2)).beside);
}

TEST(HeadSpread, parts_an_engine_onto_two_pages_where_its_letters_would_be_tiny) {
  EXPECT_TRUE(spread_of(with_banks(Arrangement::vee, 12, 1, 3)).two_pages);
  EXPECT_TRUE(spread_of(with_banks(Arrangement::in_line, 16, 1, 2)).two_pages);
  EXPECT_FALSE(spread_of(with_banks(Arrangement::vee, 8, 2, 2)).two_pages);
  const HeadMap map = head_map(with_banks(Arrangement::vee, 12, 1, 3));
  const auto second = std::ranges::find(map.banks, 1, &BankDeck::bank);
  EXPECT_EQ(map.second_page_row, second->heading.from.row);
}

TEST(HeadSpread, keeps_the_smallest_letters_of_every_engine_readable) {
  for (const EngineLayout& layout : every_layout())
    EXPECT_GE(spread_of(layout).scale * card::smallest_letter_pt, 4.4);
}

TEST(HeadMap, the_usual_engines_banks_lie_in_one_row) {
  for (const Preset& preset : presets())
    EXPECT_EQ(head_map(preset.layout).banks.size(), preset.layout.banks.size()) << preset.name;
}

TEST(SeenInWords, tells_how_to_stand_and_no_more_than_the_layout_holds) {
  EXPECT_EQ(seen_in_words(inline_four(), false),
            "Seen from above, exhaust side away from you, cylinder 1 at your left.");
  EXPECT_EQ(seen_in_words(with_banks(Arrangement::in_line, 1, 2, 2), false),
            "Seen from above, exhaust side away from you.");
  EXPECT_EQ(seen_in_words(with_banks(Arrangement::vee, 8, 2, 2), false),
            "Seen from above, right bank away from you, left bank near you.");
  EngineLayout unnamed = with_banks(Arrangement::flat, 4, 2, 2);
  for (Bank& bank : unnamed.banks) bank.name.clear();
  EXPECT_EQ(seen_in_words(unnamed, true),
            "Seen from above. Drawn at the left: cylinders 1 and 3, away from you; at the right: "
            "cylinders 2 and 4, near you.");
  EXPECT_EQ(seen_in_words(with_banks(Arrangement::flat, 4, 2, 2), true),
            "Seen from above. Drawn at the left: left bank, near you; at the right: right bank, "
            "away from you.");
}

}  // namespace
}  // namespace shimwright::book
