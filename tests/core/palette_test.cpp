// SPDX-License-Identifier: MPL-2.0
#include "core/values/palette.hpp"

#include <gtest/gtest.h>

#include <cstdio>
#include <set>
#include <string>
#include <vector>

#include "colour_science.hpp"

namespace shimwright {
namespace {

constexpr double apart_in_colour = 15;
constexpr double apart_in_grey = 8;
constexpr double readable = 4.5;  // WCAG 2, 1.4.3, level AA

struct Nearest {
  double difference = 1000;
  std::string pair;
};

Nearest nearest_fills(Sight sight) {
  Nearest nearest;
  for (const State first : all_states) {
    for (const State second : all_states) {
      if (first >= second) continue;
      const double apart = difference(look_of(first).fill, look_of(second).fill, sight);
      if (apart < nearest.difference)
        nearest = {apart, std::string(word_for(first)) + " and " + std::string(word_for(second))};
    }
  }
  return nearest;
}

double lightness(Rgb colour) { return lab(linear(colour)).lightness; }

struct Pair {
  Lab first;
  Lab second;
  double apart;
};

// Sharma, Wu & Dalal 2005, Color Research and Application 30:21-30, pairs 1 to 34: read in a public
// program's copy of the authors' file of test data (ciede2000testdata.txt).
TEST(Ciede2000, agrees_with_the_published_pairs_to_four_decimals) {
  const std::vector<Pair> pairs{
      {{50, 2.6772, -79.7751}, {50, 0, -82.7485}, 2.0425},
      {{50, 3.1571, -77.2803}, {50, 0, -82.7485}, 2.8615},
      {{50, 2.8361, -74.0200}, {50, 0, -82.7485}, 3.4412},
      {{50, -1.3802, -84.2814}, {50, 0, -82.7485}, 1.0000},
      {{50, -1.1848, -84.8006}, {50, 0, -82.7485}, 1.0000},
      {{50, -0.9009, -85.5211}, {50, 0, -82.7485}, 1.0000},
      {{50, 0, 0}, {50, -1, 2}, 2.3669},
      {{50, -1, 2}, {50, 0, 0}, 2.3669},
      {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0009}, 7.1792},
      {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0010}, 7.1792},
      {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0011}, 7.2195},
      {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0012}, 7.2195},
      {{50, -0.0010, 2.4900}, {50, 0.0009, -2.4900}, 4.8045},
      {{50, -0.0010, 2.4900}, {50, 0.0010, -2.4900}, 4.8045},
      {{50, -0.0010, 2.4900}, {50, 0.0011, -2.4900}, 4.7461},
      {{50, 2.5, 0}, {50, 0, -2.5}, 4.3065},
      {{50, 2.5, 0}, {73, 25, -18}, 27.1492},
      {{50, 2.5, 0}, {61, -5, 29}, 22.8977},
      {{50, 2.5, 0}, {56, -27, -3}, 31.9030},
      {{50, 2.5, 0}, {58, 24, 15}, 19.4535},
      {{50, 2.5, 0}, {50, 3.1736, 0.5854}, 1.0000},
      {{50, 2.5, 0}, {50, 3.2972, 0}, 1.0000},
      {{50, 2.5, 0}, {50, 1.8634, 0.5757}, 1.0000},
      {{50, 2.5, 0}, {50, 3.2592, 0.3350}, 1.0000},
      {{60.2574, -34.0099, 36.2677}, {60.4626, -34.1751, 39.4387}, 1.2644},
      {{63.0109, -31.0961, -5.8663}, {62.8187, -29.7946, -4.0864}, 1.2630},
      {{61.2901, 3.7196, -5.3901}, {61.4292, 2.2480, -4.9620}, 1.8731},
      {{35.0831, -44.1164, 3.7933}, {35.0232, -40.0716, 1.5901}, 1.8645},
      {{22.7233, 20.0904, -46.6940}, {23.0331, 14.9730, -42.5619}, 2.0373},
      {{36.4612, 47.8580, 18.3852}, {36.2715, 50.5065, 21.2231}, 1.4146},
      {{90.8027, -2.0831, 1.4410}, {91.1528, -1.6435, 0.0447}, 1.4441},
      {{90.9257, -0.5406, -0.9208}, {88.6381, -0.8985, -0.7239}, 1.5381},
      {{6.7747, -0.2908, -2.4247}, {5.8714, -0.0985, -2.2286}, 0.6377},
      {{2.0776, 0.0795, -1.1350}, {0.9033, -0.0636, -0.5514}, 0.9082},
  };
  for (const Pair& pair : pairs) {
    EXPECT_NEAR(difference(pair.first, pair.second), pair.apart, 5e-5)
        << pair.first.lightness << ", " << pair.first.a << ", " << pair.first.b;
    EXPECT_NEAR(difference(pair.second, pair.first), pair.apart, 5e-5);
  }
}

// sRGB primaries in L*a*b* under D65: read in the tests of rgb2lab in Octave's package image.
TEST(Lab, of_the_primaries_is_as_tabulated) {
  const Lab red = lab(linear({255, 0, 0}));
  EXPECT_NEAR(red.lightness, 53.24, 0.02);
  EXPECT_NEAR(red.a, 80.09, 0.05);
  EXPECT_NEAR(red.b, 67.20, 0.05);
  const Lab blue = lab(linear({0, 0, 255}));
  EXPECT_NEAR(blue.lightness, 32.30, 0.02);
  EXPECT_NEAR(blue.a, 79.19, 0.05);
  EXPECT_NEAR(blue.b, -107.86, 0.05);
}

TEST(Lab, of_a_grey_is_neutral) {
  for (int level = 0; level <= 255; ++level) {
    const auto channel = static_cast<std::uint8_t>(level);
    const Lab grey = lab(linear({channel, channel, channel}));
    EXPECT_NEAR(grey.a, 0, 1e-9);
    EXPECT_NEAR(grey.b, 0, 1e-9);
  }
  EXPECT_NEAR(lightness({255, 255, 255}), 100, 1e-9);
  EXPECT_NEAR(lightness({0, 0, 0}), 0, 1e-9);
}

TEST(Sight, every_reader_sees_a_grey_as_it_is) {
  for (const Sight sight : all_sights) {
    for (int level = 0; level <= 255; level += 5) {
      const auto channel = static_cast<std::uint8_t>(level);
      const Rgb grey = encoded(seen(linear({channel, channel, channel}), sight));
      EXPECT_EQ(grey.red, channel) << word_for(sight);
      EXPECT_EQ(grey.green, channel) << word_for(sight);
      EXPECT_EQ(grey.blue, channel) << word_for(sight);
    }
  }
}

TEST(Sight, red_and_a_dark_yellow_look_much_nearer_without_red_cones) {
  const Rgb red{200, 60, 40};
  const Rgb olive{110, 110, 40};
  EXPECT_LT(difference(red, olive, Sight::protanopia), 0.5 * difference(red, olive, Sight::normal));
}

// WCAG 2: black on white is 21 to 1; #767676 on white is 4.54 to 1
// (auditbuffet.com/patterns/ab-000065).
TEST(Contrast, is_that_of_the_web_guidelines) {
  EXPECT_NEAR(contrast({0, 0, 0}, {255, 255, 255}), 21, 1e-9);
  EXPECT_NEAR(contrast({0x76, 0x76, 0x76}, {255, 255, 255}), 4.54, 0.005);
  EXPECT_NEAR(contrast({9, 99, 199}, {9, 99, 199}), 1, 1e-9);
}

TEST(Palette, fills_stay_apart_in_every_sight) {
  for (const Sight sight : all_sights) {
    const Nearest nearest = nearest_fills(sight);
    const double needed = sight == Sight::grey_print ? apart_in_grey : apart_in_colour;
    EXPECT_GE(nearest.difference, needed) << nearest.pair << ", " << word_for(sight);
    RecordProperty("nearest in " + std::string(word_for(sight)),
                   nearest.pair + " " + std::to_string(nearest.difference));
    std::printf("  %-12s nearest fills: %-18s %5.2f apart\n", word_for(sight).data(),
                nearest.pair.c_str(), nearest.difference);
  }
}

TEST(Palette, text_reads_well_on_its_fill) {
  for (const State state : all_states) {
    const StateLook& look = look_of(state);
    const double ratio = contrast(look.text, look.fill);
    EXPECT_GE(ratio, readable) << word_for(state);
    std::printf("  %-7s text on fill %5.2f to 1\n", word_for(state).data(), ratio);
  }
}

TEST(Palette, text_reads_well_for_every_sight) {
  for (const Sight sight : all_sights) {
    for (const State state : all_states) {
      const StateLook& look = look_of(state);
      EXPECT_GE(contrast(encoded(seen(linear(look.text), sight)),
                         encoded(seen(linear(look.fill), sight))),
                readable)
          << word_for(state) << ", " << word_for(sight);
    }
  }
}

TEST(Palette, a_border_is_darker_than_its_fill_and_can_be_told_from_it) {
  for (const State state : all_states) {
    const StateLook& look = look_of(state);
    EXPECT_LT(lightness(look.border), lightness(look.fill)) << word_for(state);
    EXPECT_GE(difference(look.border, look.fill, Sight::normal), 10) << word_for(state);
    EXPECT_GE(difference(look.border, look.fill, Sight::grey_print), 8) << word_for(state);
  }
}

TEST(Palette, tight_is_the_darkest_and_unread_the_lightest) {
  for (const State state : all_states) {
    if (state != State::tight) {
      EXPECT_LT(lightness(look_of(State::tight).fill), lightness(look_of(state).fill));
    }
    if (state != State::unread) {
      EXPECT_GT(lightness(look_of(State::unread).fill), lightness(look_of(state).fill));
    }
  }
}

TEST(Palette, no_fill_is_a_colour_of_the_traffic_light) {
  const std::vector<Rgb> lights{{255, 0, 0},     {220, 38, 38},  {255, 191, 0}, {255, 255, 0},
                                {0, 255, 0},     {0, 128, 0},    {34, 160, 74}, {255, 199, 206},
                                {255, 235, 156}, {198, 239, 206}};
  for (const State state : all_states)
    for (const Rgb light : lights)
      EXPECT_GE(difference(look_of(state).fill, light, Sight::normal), 10) << word_for(state);
}

TEST(Palette, signs_are_single_characters_all_different) {
  std::set<std::string> signs;
  for (const State state : all_states) {
    const std::string sign(look_of(state).sign);
    ASSERT_EQ(sign.size(), 3U) << word_for(state);  // three bytes of UTF-8: within the BMP
    EXPECT_EQ(static_cast<unsigned char>(sign[0]), 0xE2) << word_for(state);
    signs.insert(sign);
  }
  EXPECT_EQ(signs.size(), all_states.size());
}

}  // namespace
}  // namespace shimwright
