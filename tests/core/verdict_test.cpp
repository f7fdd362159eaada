// SPDX-License-Identifier: MPL-2.0
#include "core/values/verdict.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>
#include <string>

#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

constexpr Limits usual_limits{0.16_mm, 0.20_mm};

template <typename Check>
std::string refusal_of(const Check& check) {
  try {
    check();
  } catch (const BadInput& bad) {
    return bad.what();
  }
  return "";
}

TEST(State, a_reading_at_the_limit_is_good) {
  EXPECT_EQ(state_of(0.16_mm, usual_limits), State::good);
  EXPECT_EQ(state_of(0.20_mm, usual_limits), State::good);
  EXPECT_EQ(state_of(0.159999_mm, usual_limits), State::tight);
  EXPECT_EQ(state_of(0.200001_mm, usual_limits), State::loose);
  EXPECT_EQ(state_of(Length(), usual_limits), State::tight);
  EXPECT_EQ(state_of(0.18_mm, usual_limits), State::good);
}

TEST(State, without_a_reading_is_unread) {
  EXPECT_EQ(state_of(std::nullopt, usual_limits), State::unread);
}

// ILAC-G8:09/2019, 4.2.3 with w = U, for an upper limit TL: pass y <= TL-w; conditional pass
// (TL-w, TL]; conditional fail (TL, TL+w]; fail > TL+w. Mirrored at the lower limit. U = 0.01 mm.
TEST(State, zones_are_those_of_the_guarded_decision_rule) {
  struct Case {
    Length clearance;
    const char* word;
  };
  for (const Case& c : {Case{0.149999_mm, "tight"},
                        {0.15_mm, "tight?"},
                        {0.155_mm, "tight?"},
                        {0.159999_mm, "tight?"},
                        {0.16_mm, "tight?"},
                        {0.169999_mm, "tight?"},
                        {0.17_mm, "good"},
                        {0.18_mm, "good"},
                        {0.19_mm, "good"},
                        {0.190001_mm, "loose?"},
                        {0.20_mm, "loose?"},
                        {0.200001_mm, "loose?"},
                        {0.21_mm, "loose?"},
                        {0.210001_mm, "loose"}})
    EXPECT_EQ(word_for(state_of(c.clearance, usual_limits, 0.01_mm)), c.word)
        << text_of(c.clearance);
}

TEST(State, the_middle_alone_is_good_where_the_guard_bands_meet) {
  EXPECT_EQ(state_of(0.18_mm, usual_limits, 0.02_mm), State::good);
  EXPECT_EQ(state_of(0.179999_mm, usual_limits, 0.02_mm), State::tight_doubtful);
  EXPECT_EQ(state_of(0.180001_mm, usual_limits, 0.02_mm), State::loose_doubtful);
}

// Where 2w exceeds max - min, the acceptance usual_limits min + w and max - w cross, so that no
// reading lies between them: arithmetic, no source needed.
TEST(State, where_the_guard_bands_overlap_nothing_is_good_and_a_tie_is_tight) {
  EXPECT_EQ(state_of(0.18_mm, usual_limits, 0.03_mm), State::tight_doubtful);
  EXPECT_EQ(state_of(0.180001_mm, usual_limits, 0.03_mm), State::loose_doubtful);
  EXPECT_EQ(state_of(0.179999_mm, usual_limits, 0.03_mm), State::tight_doubtful);
  for (std::int64_t nm = 0; nm <= 400'000; nm += 500)
    ASSERT_NE(state_of(Length::nanometres(nm), usual_limits, 0.03_mm), State::good);
}

TEST(State, limits_may_be_one_size) {
  const Limits one{0.2_mm, 0.2_mm};
  EXPECT_EQ(state_of(0.2_mm, one), State::good);
  EXPECT_EQ(state_of(0.199999_mm, one), State::tight);
  EXPECT_EQ(state_of(0.2_mm, one, 0.01_mm), State::tight_doubtful);
}

TEST(State, never_goes_back_as_the_clearance_grows) {
  for (const Length doubt : {Length(), 0.003_mm, 0.01_mm, 0.02_mm, 0.05_mm}) {
    State last = State::tight;
    for (std::int64_t nm = 0; nm <= 400'000; nm += 100) {
      const State state = state_of(Length::nanometres(nm), usual_limits, doubt);
      ASSERT_GE(state, last) << nm;
      last = state;
    }
    EXPECT_EQ(last, State::loose);
  }
}

TEST(State, more_doubt_never_makes_a_sure_state_of_another_kind) {
  for (std::int64_t nm = 0; nm <= 400'000; nm += 500) {
    const Length c = Length::nanometres(nm);
    const State exact = state_of(c, usual_limits);
    for (const Length doubt : {0.002_mm, 0.01_mm, 0.02_mm, 0.03_mm}) {
      const State state = state_of(c, usual_limits, doubt);
      if (state == State::good || state == State::tight || state == State::loose) {
        ASSERT_EQ(state, exact) << nm;
      }
    }
  }
}

// The definition once more, written from the words of the rule and not from the code.
TEST(State, agrees_with_the_rule_on_random_questions) {
  std::mt19937 random(7);
  std::uniform_int_distribution<std::int64_t> length(0, 60);
  for (int i = 0; i < 200'000; ++i) {
    std::int64_t min = length(random);
    std::int64_t max = length(random);
    if (min > max) std::swap(min, max);
    max = std::max<std::int64_t>(max, 1);
    const std::int64_t u = length(random) / 2;
    const std::int64_t c = length(random);
    const bool pass_low = c >= min + u;
    const bool pass_high = c <= max - u;
    State expected = State::good;
    if (!pass_low || !pass_high) {
      const bool low = c < min + u && c >= min - u;
      const bool high = c > max - u && c <= max + u;
      if (c < min - u)
        expected = State::tight;
      else if (c > max + u)
        expected = State::loose;
      else if (low && high)
        expected =
            std::abs(max - c) < std::abs(c - min) ? State::loose_doubtful : State::tight_doubtful;
      else
        expected = low ? State::tight_doubtful : State::loose_doubtful;
    }
    ASSERT_EQ(state_of(Length::nanometres(c), {Length::nanometres(min), Length::nanometres(max)},
                       Length::nanometres(u)),
              expected)
        << c << " in " << min << " to " << max << ", doubt " << u;
  }
}

TEST(Margin, is_the_distance_from_the_nearer_limit) {
  EXPECT_EQ(margin_of(0.18_mm, usual_limits), 0.02_mm);
  EXPECT_EQ(margin_of(0.17_mm, usual_limits), 0.01_mm);
  EXPECT_EQ(margin_of(0.195_mm, usual_limits), 0.005_mm);
  EXPECT_EQ(margin_of(0.16_mm, usual_limits), Length());
  EXPECT_EQ(margin_of(0.10_mm, usual_limits), -(0.06_mm));
  EXPECT_EQ(margin_of(0.25_mm, usual_limits), -(0.05_mm));
}

TEST(Margin, is_not_negative_exactly_where_the_state_is_good) {
  for (std::int64_t nm = 0; nm <= 400'000; nm += 250) {
    const Length c = Length::nanometres(nm);
    ASSERT_EQ(margin_of(c, usual_limits) >= Length(), state_of(c, usual_limits) == State::good)
        << nm;
  }
}

TEST(Verdict, what_cannot_be_is_refused_with_its_values) {
  EXPECT_EQ(refusal_of([] {
              check_limits({0.3_mm, 0.2_mm});
            }),
            "the minimum clearance, 0.30 mm, is above the maximum, 0.20 mm");
  EXPECT_EQ(refusal_of([] {
              check_limits({-(0.1_mm), 0.2_mm});
            }),
            "the minimum clearance, -0.10 mm, is negative");
  EXPECT_EQ(refusal_of([] {
              check_limits({Length(), Length()});
            }),
            "the maximum clearance, 0.00 mm, is not above zero");
  EXPECT_EQ(refusal_of([] { check_limits({Length(), 0.2_mm}); }), "");
  EXPECT_EQ(refusal_of([] { check_doubt(-(0.01_mm)); }), "the doubt, -0.01 mm, is negative");
  EXPECT_THROW(state_of(0.1_mm, {0.3_mm, 0.2_mm}), BadInput);
  EXPECT_THROW(state_of(std::nullopt, {0.3_mm, 0.2_mm}), BadInput);
  EXPECT_THROW(state_of(0.1_mm, usual_limits, -(0.01_mm)), BadInput);
  EXPECT_THROW(margin_of(0.1_mm, {0.3_mm, 0.2_mm}), BadInput);
}

TEST(Verdict, each_state_has_a_word_of_its_own) {
  std::set<std::string_view> words;
  for (const State state : all_states) words.insert(word_for(state));
  EXPECT_EQ(words,
            (std::set<std::string_view>{"unread", "tight", "tight?", "good", "loose?", "loose"}));
}

}  // namespace
}  // namespace shimwright
