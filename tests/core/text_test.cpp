// SPDX-License-Identifier: MPL-2.0
#include "core/values/text.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <locale>
#include <string>

namespace shimwright {
namespace {

TEST(Trimmed, takes_white_space_off_both_ends_only) {
  EXPECT_EQ(trimmed("  good \t\r\n"), "good");
  EXPECT_EQ(trimmed("\u00a0 good\u00a0\u00a0"), "good");
  EXPECT_EQ(trimmed("touch good"), "touch good");
  EXPECT_EQ(trimmed(""), "");
  EXPECT_EQ(trimmed(" \u00a0 "), "");
  EXPECT_EQ(trimmed("\u00e0"), "\u00e0") << "shares a byte with the no-break space";
  EXPECT_EQ(trimmed("\xC2"), "\xC2") << "half a character is left alone";
}

TEST(LowerCase, changes_ascii_letters_only) {
  EXPECT_EQ(lower_case("TOUCH Good 9.5"), "touch good 9.5");
  EXPECT_EQ(lower_case("AZ az"), "az az");
  EXPECT_EQ(lower_case("\u00c4\u00b5"), "\u00c4\u00b5");
  EXPECT_EQ(lower_case("@[`{"), "@[`{") << "the neighbours of the letters";
}

TEST(Text, plain_letters_have_no_accents_and_no_capitals) {
  EXPECT_EQ(plain_letters("Pl\u00e4ttchen, \u00c9PAISSEUR"), "plattchen, epaisseur");
  EXPECT_EQ(plain_letters("Spaltma\u00df"), "spaltmass");
  EXPECT_EQ(plain_letters("\u00c0\u00cf\u00d1\u00d6\u00dc\u00dd\u00ff"), "ainouyy");
  EXPECT_EQ(plain_letters("e\u0301tat"), "etat") << "the accent as a letter of its own";
  EXPECT_EQ(plain_letters("12 \u00b5m \u00d7 2 \u00f7 3, 5 \u20ac"),
            "12 \u00b5m \u00d7 2 \u00f7 3, 5 \u20ac")
      << "signs stay";
  for (const char* cut : {"\xC3", "a\xC3z", "\xCC", "\xC3\xFF"}) EXPECT_EQ(plain_letters(cut), cut);
}

TEST(SameWord, does_not_mind_case_and_outer_spaces) {
  EXPECT_TRUE(same_word(" Spare\u00a0", "spare"));
  EXPECT_TRUE(same_word("", "  "));
  EXPECT_FALSE(same_word("touch  good", "touch good"));
  EXPECT_FALSE(same_word("spares", "spare"));
}

TEST(TextOf, a_number_reads_as_a_person_writes_it) {
  EXPECT_EQ(text_of(275), "275");
  EXPECT_EQ(text_of(2.75), "2.75");
  EXPECT_EQ(text_of(0.1 + 0.2), "0.3");
  EXPECT_EQ(text_of(-0.05), "-0.05");
  EXPECT_EQ(text_of(0.0), "0");
  EXPECT_EQ(text_of(-0.0), "0");
  EXPECT_EQ(text_of(9999), "9999");
  EXPECT_EQ(text_of(1234567), "1234567");
  EXPECT_EQ(text_of(1e300), "1e+300");
  EXPECT_EQ(text_of(std::numeric_limits<double>::infinity()), "inf");
}

struct DecimalComma : std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
};

TEST(TextOf, a_number_does_not_follow_the_locale_of_the_program) {
  const std::locale before =
      std::locale::global(std::locale(std::locale::classic(), new DecimalComma));
  const std::string text = text_of(2.75);
  std::locale::global(before);
  EXPECT_EQ(text, "2.75");
}

TEST(Text, is_broken_into_lines_at_spaces_by_letters_not_bytes) {
  using Lines = std::vector<std::string>;
  EXPECT_EQ(broken_into_lines("one two three", 7), (Lines{"one two", "three"}));
  EXPECT_EQ(broken_into_lines("\u00b0\u00b0\u00b0 \u00b0", 5), Lines{"\u00b0\u00b0\u00b0 \u00b0"});
  EXPECT_EQ(broken_into_lines("a longestword b", 5), (Lines{"a", "longestword", "b"}));
  EXPECT_TRUE(broken_into_lines("", 5).empty());
}

TEST(Shortened, text_of_sixty_letters_stays_whole) {
  EXPECT_EQ(shortened(std::string(60, 'a')), std::string(60, 'a'));
  EXPECT_EQ(shortened(std::string(61, 'a')), std::string(60, 'a') + "\u2026");
}

}  // namespace
}  // namespace shimwright
