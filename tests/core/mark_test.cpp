// SPDX-License-Identifier: MPL-2.0
#include "core/values/mark.hpp"

#include <gtest/gtest.h>

#include <string>

#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

TEST(Mark, schemes_are_known_by_name) {
  EXPECT_EQ(mark_scheme_named("auto"), MarkScheme::automatic);
  EXPECT_EQ(mark_scheme_named(" Hundredths "), MarkScheme::hundredths);
  EXPECT_EQ(mark_scheme_named("thousandths"), MarkScheme::thousandths);
  EXPECT_EQ(mark_scheme_named("MM"), MarkScheme::mm);
  EXPECT_EQ(mark_scheme_named("in"), MarkScheme::inch);
  EXPECT_EQ(mark_scheme_named("thou"), MarkScheme::thou);
  try {
    mark_scheme_named("tenths");
    FAIL() << "not refused";
  } catch (const BadInput& bad) {
    EXPECT_STREQ(
        bad.what(),
        "the mark scheme 'tenths' is unknown: use auto, hundredths, thousandths, mm, in, thou or "
        "a table of marks and sizes");
  }
}

// That the mark 275 is 2.75 mm is common practice, no source.
TEST(Mark, automatic_tells_hundredths_thousandths_and_mm_apart) {
  struct Case {
    const char* mark;
    std::optional<Length> size;
  };
  for (const Case& c : {Case{"275", 2.75_mm},      {"2755", 2.755_mm},       {"2.75", 2.75_mm},
                        {"2,75", 2.75_mm},         {" 275 ", 2.75_mm},       {"100", 1.0_mm},
                        {"999", 9.99_mm},          {"1000", 1.0_mm},         {"9999", 9.999_mm},
                        {"3.0", 3.0_mm},           {".9", 0.9_mm},           {"0275", 2.75_mm},
                        {"99", std::nullopt},      {"10000", std::nullopt},  {"3", std::nullopt},
                        {"0", std::nullopt},       {"0.0", std::nullopt},    {"-275", std::nullopt},
                        {"", std::nullopt},        {"A", std::nullopt},      {"275A", std::nullopt},
                        {"2.75 mm", std::nullopt}, {"1,234.5", std::nullopt}})
    EXPECT_EQ(thickness_marked(c.mark), c.size) << c.mark;
}

TEST(Mark, a_number_from_a_cell_reads_like_its_text) {
  EXPECT_EQ(thickness_marked(text_of(275)), 2.75_mm);
  EXPECT_EQ(thickness_marked(text_of(2755)), 2.755_mm);
  EXPECT_EQ(thickness_marked(text_of(2.75)), 2.75_mm);
  EXPECT_EQ(thickness_marked(text_of(0)), std::nullopt);
}

TEST(Mark, every_mark_of_a_hundredth_stands_for_its_size) {
  for (int mark = 100; mark <= 999; ++mark) {
    ASSERT_EQ(thickness_marked(std::to_string(mark)), Length::nanometres(mark * 10'000));
    ASSERT_EQ(thickness_marked(std::to_string(mark), MarkScheme::hundredths),
              Length::nanometres(mark * 10'000));
  }
  for (int mark = 1000; mark <= 9999; ++mark)
    ASSERT_EQ(thickness_marked(std::to_string(mark)), Length::nanometres(mark * 1'000));
}

TEST(Mark, a_scheme_said_is_followed) {
  EXPECT_EQ(thickness_marked("75", MarkScheme::hundredths), 0.75_mm);
  EXPECT_EQ(thickness_marked("275.5", MarkScheme::hundredths), 2.755_mm);
  EXPECT_EQ(thickness_marked("950", MarkScheme::thousandths), 0.95_mm);
  EXPECT_EQ(thickness_marked("3", MarkScheme::mm), 3.0_mm);
  EXPECT_EQ(thickness_marked(".108", MarkScheme::inch), 2.7432_mm);
  EXPECT_EQ(thickness_marked("102", MarkScheme::thou), 2.5908_mm) << "0.102 in";
  EXPECT_EQ(thickness_marked("102.5", MarkScheme::thou), 2.6035_mm);
  EXPECT_EQ(thickness_marked("0", MarkScheme::thou), std::nullopt);
  EXPECT_EQ(thickness_marked("0", MarkScheme::mm), std::nullopt);
  EXPECT_EQ(thickness_marked("A", MarkScheme::hundredths), std::nullopt);
}

TEST(Mark, a_thickness_that_cannot_be_is_refused) {
  EXPECT_THROW(thickness_marked("-2.75"), BadInput);
  EXPECT_THROW(thickness_marked("-275", MarkScheme::hundredths), BadInput);
  EXPECT_THROW(thickness_marked("275.0"), BadInput) << "275 mm";
  EXPECT_THROW(thickness_marked("275", MarkScheme::mm), BadInput);
  EXPECT_THROW(thickness_marked("-102", MarkScheme::thou), BadInput);
}

TEST(Mark, own_marks_are_looked_up_exactly_but_for_case) {
  const MarkTable table{
      {"A", 2.40_mm}, {"b2", 2.42_mm}, {"275", 1.23_mm}, {"zero", Length()}, {"minus", -(1.0_mm)}};
  EXPECT_EQ(thickness_marked("a", table), 2.40_mm);
  EXPECT_EQ(thickness_marked(" B2 ", table), 2.42_mm);
  EXPECT_EQ(thickness_marked("275", table), 1.23_mm) << "the user's table, not the scheme";
  EXPECT_EQ(thickness_marked("B", table), std::nullopt);
  EXPECT_EQ(thickness_marked("2.75", table), std::nullopt);
  EXPECT_EQ(thickness_marked("zero", table), std::nullopt);
  EXPECT_THROW(thickness_marked("minus", table), BadInput);
}

TEST(Mark, listed_twice_in_the_users_table_is_what_its_first_row_says) {
  EXPECT_EQ(thickness_marked("A", MarkTable{{"a ", 2.40_mm}, {"A", 2.50_mm}}), 2.40_mm);
}

TEST(Trust, the_ends_of_the_allowance_are_still_as_marked) {
  struct Case {
    std::optional<Length> marked;
    std::optional<Length> measured;
    const char* word;
  };
  for (const Case& c : {Case{2.75_mm, 2.75_mm, "as marked"},
                        {2.75_mm, 2.765_mm, "as marked"},
                        {2.75_mm, 2.735_mm, "as marked"},
                        {2.75_mm, 2.766_mm, "thicker"},
                        {2.75_mm, 2.734_mm, "thinner"},
                        {2.75_mm, 2.734999_mm, "thinner"},
                        {std::nullopt, 2.75_mm, "unmarked"},
                        {2.75_mm, std::nullopt, "unmeasured"},
                        {std::nullopt, std::nullopt, "unmeasured"}})
    EXPECT_EQ(word_for(trust_in(c.marked, c.measured)), c.word);
}

TEST(Trust, with_no_allowance_only_equality_is_as_marked) {
  EXPECT_EQ(trust_in(2.75_mm, 2.75_mm, Length()), Trust::as_marked);
  EXPECT_EQ(trust_in(2.75_mm, 2.750001_mm, Length()), Trust::thicker);
}

TEST(Trust, refuses_what_cannot_be) {
  EXPECT_THROW(trust_in(2.75_mm, 2.75_mm, -(0.01_mm)), BadInput);
  EXPECT_THROW(trust_in(Length(), 2.75_mm), BadInput);
  EXPECT_THROW(trust_in(2.75_mm, -(2.75_mm)), BadInput);
  EXPECT_THROW(trust_in(-(2.75_mm), std::nullopt), BadInput);
}

}  // namespace
}  // namespace shimwright
