// SPDX-License-Identifier: MPL-2.0
#include "core/engine/presets.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "core/crank/crank.hpp"
#include "core/crank/firing_written.hpp"

namespace shimwright {
namespace {

using testing::ElementsAre;

TEST(Presets, are_the_usual_engines) {
  std::vector<std::string> names;
  for (const Preset& preset : presets()) names.push_back(preset.name);
  EXPECT_THAT(names, ElementsAre("single", "parallel twin", "V-twin", "inline three", "inline four",
                                 "inline six", "flat four", "flat six", "V4", "V6", "V8"));
}

TEST(Presets, hold_each_cylinder_once_and_fire_each_once) {
  for (const Preset& preset : presets()) {
    std::set<int> cylinders;
    for (const Bank& bank : preset.layout.banks)
      cylinders.insert(bank.cylinders.begin(), bank.cylinders.end());
    const int count = cylinders_of(preset.layout);
    EXPECT_EQ(static_cast<int>(cylinders.size()), count) << preset.name;
    EXPECT_EQ(*cylinders.begin(), 1) << preset.name;
    EXPECT_EQ(*cylinders.rbegin(), count) << preset.name;
    EXPECT_EQ(firing_written(preset.layout.firing).cylinders(), count) << preset.name;
  }
}

TEST(Presets, have_four_valves_a_cylinder) {
  for (const Preset& preset : presets())
    EXPECT_EQ(valves_of(preset.layout).size(),
              4U * static_cast<unsigned>(cylinders_of(preset.layout)))
        << preset.name;
}

TEST(Presets, an_engine_has_one_bank_in_line_and_two_equal_ones_otherwise) {
  for (const Preset& preset : presets()) {
    const auto& banks = preset.layout.banks;
    ASSERT_EQ(banks.size(), preset.layout.arrangement == Arrangement::in_line ? 1U : 2U)
        << preset.name;
    EXPECT_EQ(banks.front().cylinders.size(), banks.back().cylinders.size()) << preset.name;
  }
}

TEST(Presets, between_two_banks_lie_the_inlet_valves) {
  for (const Preset& preset : presets()) {
    const auto& banks = preset.layout.banks;
    if (banks.size() < 2) continue;
    EXPECT_TRUE(banks.front().exhaust_above) << preset.name;
    EXPECT_FALSE(banks.back().exhaust_above) << preset.name;
  }
}

TEST(Presets, the_inline_four_is_the_one_the_book_began_with) {
  const EngineLayout first = inline_four();
  const Preset* preset = preset_like(first);
  ASSERT_NE(preset, nullptr);
  EXPECT_EQ(preset->layout.name, first.name);
}

TEST(Presets, one_is_known_again_by_how_it_lies_whatever_its_valves_and_its_firing) {
  EngineLayout five_valves = inline_four();
  five_valves.inlet_valves = 3;
  EXPECT_EQ(full_name(five_valves), "inline four, 20 valves");
  five_valves.firing = "1-2-4-3";
  EXPECT_EQ(full_name(five_valves), "inline four, 20 valves");
  five_valves.banks.front().cylinders = {4, 3, 2, 1};
  EXPECT_EQ(preset_like(five_valves), nullptr);
  EXPECT_EQ(full_name(five_valves), "in line, 4 cylinders, 20 valves");
}

TEST(Presets, a_flat_engine_numbered_like_a_v_is_no_v) {
  EngineLayout flat = preset_like({.name = "",
                                   .arrangement = Arrangement::vee,
                                   .banks = usual_banks(Arrangement::vee, 4),
                                   .firing = "1"})
                          ->layout;
  EXPECT_EQ(full_name(flat), "V4, 16 valves");
  flat.arrangement = Arrangement::flat;
  EXPECT_EQ(full_name(flat), "flat, 4 cylinders, 16 valves");
}

TEST(Presets, one_cylinder_is_told_in_the_singular) {
  EngineLayout turned = presets().front().layout;
  turned.banks.front().exhaust_above = false;
  EXPECT_EQ(full_name(turned), "in line, 1 cylinder, 4 valves");
}

// The banks of a V are listed one after the other; tables go by the cylinders' numbers.
TEST(Valves, are_listed_by_cylinder_whatever_its_bank_and_exhausts_first) {
  const EngineLayout layout{.name = "",
                            .arrangement = Arrangement::vee,
                            .banks = usual_banks(Arrangement::vee, 4),
                            .exhaust_valves = 1,
                            .inlet_valves = 3,
                            .firing = "1"};
  ASSERT_EQ(layout.banks.front().cylinders.front(), 2);
  std::vector<std::string> names;
  for (const ValveId& valve : valves_of(layout)) names.push_back(name_of(valve, layout));
  EXPECT_THAT(names, ElementsAre("1 EX", "1 IN L", "1 IN M", "1 IN R", "2 EX", "2 IN L", "2 IN M",
                                 "2 IN R", "3 EX", "3 IN L", "3 IN M", "3 IN R", "4 EX", "4 IN L",
                                 "4 IN M", "4 IN R"));
}

TEST(Presets, no_two_lie_alike) {
  for (const Preset& preset : presets())
    EXPECT_EQ(preset_like(preset.layout)->name, preset.name) << preset.name;
}

const Preset& preset_named(std::string_view name) {
  for (const Preset& preset : presets())
    if (preset.name == name) return preset;
  throw std::invalid_argument(std::string(name));
}

// Of a flat engine whose cranks are opposed, two opposite cylinders (1 and 2, 3 and 4, and so on)
// reach the top together and fire a full turn apart. Common practice, no source.
TEST(Presets, opposite_cylinders_of_a_flat_engine_fire_a_turn_apart) {
  for (const char* name : {"flat four", "flat six"}) {
    const Firing firing = firing_written(preset_named(name).layout.firing);
    for (int odd = 1; odd < firing.cylinders(); odd += 2)
      EXPECT_DOUBLE_EQ(
          std::abs(firing.angle_of(odd).degrees() - firing.angle_of(odd + 1).degrees()), 360)
          << name << ", cylinder " << odd;
  }
}

// On one crank pin the second of a V of 90 degrees reaches the top 90 (or, a turn later, 450)
// degrees after the first or before it.
TEST(Presets, two_on_one_pin_of_the_v4_are_90_degrees_of_crank_apart) {
  const Firing firing = firing_written(preset_named("V4").layout.firing);
  for (const int odd : {1, 3}) {
    const double apart = firing.angle_of(odd + 1).degrees() - firing.angle_of(odd).degrees();
    EXPECT_DOUBLE_EQ(apart, 450) << "cylinder " << odd;
  }
}

// Auto Engine Repair (Goodheart-Willcox 2021), figure 6-2.
TEST(Presets, the_v6_fires_in_the_published_order) {
  EXPECT_EQ(preset_named("V6").layout.firing, "1-6-5-4-3-2");
}

// Stops of the four and the six: common practice, no source; the rest follow from the angles.
TEST(Presets, every_one_has_crank_stops) {
  std::vector<std::size_t> stops;
  for (const Preset& preset : presets())
    stops.push_back(crank_stops(firing_written(preset.layout.firing)).size());
  EXPECT_THAT(stops, ElementsAre(1U, 2U, 2U, 2U, 2U, 2U, 2U, 2U, 2U, 2U, 2U));
}

TEST(UsualBanks, of_a_flat_engine_odd_numbers_lie_right_and_even_ones_left) {
  const auto banks = usual_banks(Arrangement::flat, 4);
  ASSERT_EQ(banks.size(), 2U);
  EXPECT_EQ(banks[0].name, "right");
  EXPECT_THAT(banks[0].cylinders, ElementsAre(1, 3));
  EXPECT_EQ(banks[1].name, "left");
  EXPECT_THAT(banks[1].cylinders, ElementsAre(2, 4));
}

TEST(UsualBanks, of_a_v_odd_numbers_lie_left_and_even_ones_right) {
  const auto banks = usual_banks(Arrangement::vee, 6);
  ASSERT_EQ(banks.size(), 2U);
  EXPECT_EQ(banks[0].name, "right");
  EXPECT_THAT(banks[0].cylinders, ElementsAre(2, 4, 6));
  EXPECT_EQ(banks[1].name, "left");
  EXPECT_THAT(banks[1].cylinders, ElementsAre(1, 3, 5));
}

TEST(UsualBanks, in_line_they_count_from_the_front) {
  const auto banks = usual_banks(Arrangement::in_line, 5);
  ASSERT_EQ(banks.size(), 1U);
  EXPECT_TRUE(banks[0].name.empty());
  EXPECT_THAT(banks[0].cylinders, ElementsAre(1, 2, 3, 4, 5));
}

}  // namespace
}  // namespace shimwright
