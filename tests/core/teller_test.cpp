// SPDX-License-Identifier: MPL-2.0
#include "core/service/words/teller.hpp"

#include <gtest/gtest.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace shimwright {
namespace {

const Teller metric;
const Teller inches(Language::english, Unit::inch);
const Teller metric_with_comma(Language::english, Unit::mm, ",");
const Teller inches_with_comma(Language::english, Unit::inch, ",");
const Teller book(Language::english, Unit::mm, ".", Terms::book);

constexpr Length inch(std::int64_t ten_thousandths) {
  return Length::nanometres(ten_thousandths * 2540);
}

TEST(Teller, a_column_has_three_decimals_in_mm_and_four_in_inches) {
  EXPECT_EQ(metric.column(0.16_mm), "0.160");
  EXPECT_EQ(metric.column(2.4567_mm), "2.457");
  EXPECT_EQ(metric.column(Length()), "0.000");
  EXPECT_EQ(metric.column(-0.02_mm), "-0.020");
  EXPECT_EQ(inches.column(0.16_mm), "0.0063");
  EXPECT_EQ(inches.column(inch(1020)), "0.1020");
  EXPECT_EQ(inches.column(Length()), "0.0000");
}

TEST(Teller, half_of_the_last_place_is_rounded_away_from_nought) {
  EXPECT_EQ(metric.column(Length::nanometres(2'425'500)), "2.426");
  EXPECT_EQ(metric.column(Length::nanometres(2'425'499)), "2.425");
  EXPECT_EQ(metric.column(Length::nanometres(1'000'500)), "1.001")
      << "1.0005 is a little less in binary";
  EXPECT_EQ(metric.column(Length::nanometres(-1'000'500)), "-1.001");
}

TEST(Teller, nought_has_no_sign) {
  EXPECT_EQ(metric.column(Length::nanometres(-499)), "0.000");
  EXPECT_EQ(inches.column(Length::nanometres(-1000)), "0.0000");
}

TEST(Teller, a_length_in_a_sentence_has_its_unit_and_no_more_decimals_than_it_needs) {
  EXPECT_EQ(metric.with_unit(0.16_mm), "0.16 mm");
  EXPECT_EQ(metric.with_unit(2.0_mm), "2.00 mm");
  EXPECT_EQ(metric.with_unit(2.425_mm), "2.425 mm");
  EXPECT_EQ(metric.with_unit(Length::nanometres(1)), "0.000001 mm");
  EXPECT_EQ(inches.with_unit(0.16_mm), "0.0063 in");
  EXPECT_EQ(inches.with_unit(inch(1000)), "0.1000 in");
}

TEST(Teller, the_decimal_mark_is_the_one_asked_for_in_every_number) {
  EXPECT_EQ(metric_with_comma.column(0.16_mm), "0,160");
  EXPECT_EQ(inches_with_comma.column(0.16_mm), "0,0063");
  EXPECT_EQ(metric_with_comma.with_unit(0.16_mm), "0,16 mm");
  EXPECT_EQ(metric_with_comma.span(2.47_mm, 2.49_mm), "2,47\u20132,49");
  EXPECT_EQ(inches_with_comma.span(inch(930), inch(945)), "0,0930\u20130,0945");
  EXPECT_EQ(metric_with_comma.sum(Money::of(1234.5)), "1234,50");
  EXPECT_EQ(metric_with_comma.number(1.5), "1,5");
  EXPECT_EQ(metric_with_comma.say(Say::no_shim_size_but_mark,
                                  {TypedLength{242.5}, LengthToType{2.425_mm}}),
            "242,5 mm is no shim size. Did you mean 2,425?");
}

TEST(Teller, a_span_in_mm_leaves_out_a_nought_that_ends_both) {
  EXPECT_EQ(metric.span(2.47_mm, 2.49_mm), "2.47\u20132.49");
  EXPECT_EQ(metric.span(2.475_mm, 2.49_mm), "2.475\u20132.490");
  EXPECT_EQ(metric.span(2.4_mm, 2.5_mm), "2.40\u20132.50");
}

TEST(Teller, a_length_in_inches_has_one_form_wherever_it_stands) {
  EXPECT_EQ(inches.column(inch(80)), "0.0080");
  EXPECT_EQ(inches.short_of(inch(80)), "0.0080");
  EXPECT_EQ(inches.with_unit(inch(80)), "0.0080 in");
  EXPECT_EQ(inches.span(inch(80), inch(120)), "0.0080\u20130.0120");
  EXPECT_EQ(inches.span(inch(930), inch(945)), "0.0930\u20130.0945");
}

TEST(Teller, money_has_two_decimals) {
  EXPECT_EQ(metric.sum(Money::of(6.5)), "6.50");
  EXPECT_EQ(metric.sum(Money()), "0.00");
}

TEST(Teller, a_word_of_a_text_follows_one_or_many) {
  const auto columns = [](std::int64_t count) {
    return metric.say(Say::too_few_columns,
                      {count, std::int64_t{2}, std::vector<std::string>{"name", "value"}});
  };
  EXPECT_EQ(columns(1), "the table has 1 column; at least 2 are due: name and value");
  EXPECT_EQ(columns(0), "the table has 0 columns; at least 2 are due: name and value");
  EXPECT_EQ(columns(3), "the table has 3 columns; at least 2 are due: name and value");
}

TEST(Teller, a_list_ends_with_and) {
  const auto rules = [](std::vector<std::string> known) {
    return metric.say(Say::rule_unknown, {std::move(known)});
  };
  EXPECT_EQ(rules({"work"}), "it is not known: the rules are work");
  EXPECT_EQ(rules({"work", "first"}), "it is not known: the rules are work and first");
  EXPECT_EQ(rules({"a", "b", "c"}), "it is not known: the rules are a, b and c");
  EXPECT_EQ(
      metric.say(Say::series_missing, {Names{Say::no_series, "\"A\"", Say::other_series}}),
      "no series is given, so it is passed over: the valves have no series, \"A\" and others");
}

TEST(Teller, a_length_that_cannot_be_is_told_as_typed) {
  const auto told = [](const Teller& teller, double mm) {
    return teller.say(Say::no_shim_size, {TypedLength{mm}});
  };
  EXPECT_EQ(told(metric, 2425), "2425 mm is no shim size: check the unit and the decimal mark");
  EXPECT_EQ(told(metric, 1e300), "1e+300 mm is no shim size: check the unit and the decimal mark");
  EXPECT_EQ(told(inches, 102 * 25.4),
            "102 in is no shim size: check the unit and the decimal mark");
}

TEST(Teller, a_length_to_type_comes_in_the_unit_without_naming_it) {
  const auto told = [](const Teller& teller) {
    return teller.say(Say::no_shim_size_but_mark, {TypedLength{2540}, LengthToType{2.54_mm}});
  };
  EXPECT_EQ(told(metric), "2540 mm is no shim size. Did you mean 2.54?");
  EXPECT_EQ(told(inches), "100 in is no shim size. Did you mean 0.1000?");
}

TEST(Teller, the_book_has_nouns_of_its_own) {
  EXPECT_EQ(metric.say(Say::negative, {Say::the_min, TypedLength{-0.2}}),
            "the minimum clearance, -0.2 mm, is negative");
  EXPECT_EQ(book.say(Say::negative, {Say::the_min, TypedLength{-0.2}}),
            "the smallest gap allowed, -0.2 mm, is negative");
  EXPECT_EQ(metric.say(Say::rule_work), "rule \"work\"");
  EXPECT_EQ(book.say(Say::rule_work), "Work for each shim changed");
  EXPECT_EQ(book.say(Say::the_shim), metric.say(Say::the_shim)) << "one text for both";
}

TEST(Teller, a_blank_without_a_word_is_refused) {
  EXPECT_THROW(metric.say(Say::negative, {Say::the_shim}), std::logic_error);
  EXPECT_THROW(metric.say(Say::too_many_rows), std::logic_error);
}

TEST(Teller, a_language_is_english_where_none_is_known) {
  EXPECT_EQ(language_named("en"), Language::english);
  EXPECT_EQ(language_named(""), Language::english);
  EXPECT_EQ(language_named("xx"), Language::english);
}

}  // namespace
}  // namespace shimwright
