// SPDX-License-Identifier: MPL-2.0
#include "commands/request.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <initializer_list>
#include <string>
#include <utility>

#include "book/places.hpp"
#include "typed_entries.hpp"

namespace shimwright::commands {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

using Change = std::pair<Field, const char*>;

NewBookEntries entries_with(std::initializer_list<Change> changes) {
  NewBookEntries entries = inline_four_entries();
  for (const auto& [field, text] : changes) type(entries, field, text);
  return entries;
}

BookRequest request_for(std::initializer_list<Change> changes) {
  const auto result = read_request(entries_with(changes));
  if (const auto* refusal = std::get_if<Refusal>(&result)) ADD_FAILURE() << refusal->sentence;
  return std::holds_alternative<BookRequest>(result) ? std::get<BookRequest>(result)
                                                     : BookRequest();
}

Refusal refusal_of(std::initializer_list<Change> changes) {
  const auto result = read_request(entries_with(changes));
  if (const auto* refusal = std::get_if<Refusal>(&result)) return *refusal;
  return {Field::count, "none"};
}

TEST(Request, sound_entries_make_a_book) {
  const BookRequest request = request_for({{Field::currency, "EUR"}, {Field::inlet_price, "6.90"}});
  EXPECT_EQ(request.title, "Valve service, inline four, 16 valves");
  EXPECT_EQ(request.layout.firing, "1-3-4-2");
  EXPECT_EQ(request.unit, "mm");
  EXPECT_EQ(request.inlet.min, "0.16");
  EXPECT_EQ(request.exhaust.max, "0.28");
  ASSERT_EQ(request.ladders.size(), 1U);
  EXPECT_EQ(request.ladders[0].series, "A");
  EXPECT_EQ(request.ladders[0].step, "0.05");
  EXPECT_EQ(request.ladders[0].price, "6.90");
  EXPECT_EQ(request.currency, "EUR");
}

TEST(Request, each_usual_engine_makes_a_book) {
  for (const char* engine : {"single", "parallel twin", "V-twin", "inline three", "inline four",
                             "inline six", "flat four", "flat six", "V4", "V6", "V8"})
    EXPECT_THAT(request_for({{Field::engine, engine}}).title,
                StartsWith("Valve service, " + std::string(engine)));
}

TEST(Request, an_engine_has_1_to_16_cylinders) {
  for (const char* count : {"0", "17", "-4", "4.5", "four", "1e1", ""}) {
    const Refusal refusal = refusal_of({{Field::cylinders, count}});
    EXPECT_EQ(refusal.field, Field::cylinders) << count;
    EXPECT_THAT(refusal.sentence, HasSubstr("1 to 16")) << count;
  }
}

TEST(Request, a_book_has_room_for_48_valves) {
  const char* twelve = "1-2-3-4-5-6-7-8-9-10-11-12";
  EXPECT_EQ(request_for({{Field::cylinders, "12"}, {Field::firing, twelve}}).layout.name,
            "in line, 12 cylinders, 48 valves");
  const Refusal refusal =
      refusal_of({{Field::cylinders, "12"}, {Field::firing, twelve}, {Field::inlet_valves, "3"}});
  EXPECT_EQ(refusal.sentence,
            "12 cylinders with 5 valves each make 60 valves: a book has room for 48.");
}

TEST(Request, a_cylinder_has_two_to_five_valves) {
  EXPECT_EQ(request_for({{Field::inlet_valves, "1"}, {Field::exhaust_valves, "1"}}).layout.name,
            "inline four, 8 valves");
  EXPECT_EQ(request_for({{Field::inlet_valves, "3"}}).layout.name, "inline four, 20 valves");
  EXPECT_EQ(refusal_of({{Field::inlet_valves, "3"}, {Field::exhaust_valves, "3"}}).sentence,
            "A cylinder may have two to five valves: 3 inlet and 3 exhaust make 6.");
  EXPECT_EQ(refusal_of({{Field::exhaust_valves, "0"}}).field, Field::exhaust_valves);
}

TEST(Request, a_firing_order_names_each_cylinder_once) {
  EXPECT_EQ(refusal_of({{Field::firing, "1-3-4"}}).sentence,
            "The firing order leaves out cylinder 2.");
  EXPECT_EQ(refusal_of({{Field::firing, "1-3-4-3"}}).sentence,
            "The firing order names cylinder 3 more than once and leaves out cylinder 2.");
  EXPECT_EQ(refusal_of({{Field::firing, "1-3-2"}}).sentence,
            "The firing order leaves out cylinder 4.");
  EXPECT_EQ(refusal_of({{Field::firing, "x"}}).field, Field::firing);
}

TEST(Request, a_firing_order_names_no_cylinder_that_the_engine_has_not) {
  const auto of_a_twin = [](const char* firing) {
    return refusal_of({{Field::engine, "parallel twin"}, {Field::firing, firing}}).sentence;
  };
  EXPECT_EQ(of_a_twin("1-3"),
            "The firing order names cylinder 3 and leaves out cylinder 2: the engine has cylinders "
            "1 and 2.");
  EXPECT_EQ(of_a_twin("1-2-3"),
            "The firing order names cylinder 3: the engine has cylinders 1 and 2.");
  EXPECT_EQ(of_a_twin("1 at 0, 2 at 270, 3 at 400"), of_a_twin("1-2-3"));
}

TEST(Request, firing_angles_stay_within_two_turns) {
  EXPECT_EQ(request_for({{Field::engine, "V-twin"}, {Field::firing, "1:0 2:285"}}).layout.firing,
            "1:0 2:285");
  const Refusal refusal = refusal_of({{Field::engine, "V-twin"}, {Field::firing, "1:0 2:750"}});
  EXPECT_EQ(refusal.field, Field::firing);
  EXPECT_THAT(refusal.sentence, HasSubstr("between 0\u00b0 and 720\u00b0"));
}

TEST(Request, a_firing_order_yet_to_be_typed_is_missing_and_not_wrong) {
  const Refusal refusal = refusal_of({{Field::firing, " "}});
  EXPECT_TRUE(refusal.missing);
  EXPECT_EQ(refusal.field, Field::firing);
}

TEST(Request, a_smallest_clearance_is_not_above_the_largest) {
  EXPECT_EQ(refusal_of({{Field::inlet_min, "0.23"}}).sentence,
            "The smallest inlet clearance, 0.23, is above the largest, 0.22.");
  EXPECT_EQ(request_for({{Field::inlet_min, "0.22"}}).inlet.min, "0.22");
}

TEST(Request, a_clearance_may_have_a_comma_or_a_unit_of_its_own) {
  EXPECT_EQ(request_for({{Field::inlet_min, "0,16"}}).inlet.min, "0,16");
  EXPECT_EQ(request_for({{Field::inlet_min, "6 thou"}}).inlet.min, "6 thou");
}

TEST(Request, a_clearance_that_cannot_be_is_told) {
  EXPECT_EQ(refusal_of({{Field::inlet_min, "x"}}).sentence,
            "The smallest inlet clearance is not a number of mm: \"x\".");
  EXPECT_EQ(
      refusal_of({{Field::exhaust_max, "28"}}).sentence,
      "The largest exhaust clearance is \"28\": it can only lie between 0.00 mm and 5.00 mm.");
  EXPECT_EQ(refusal_of({{Field::inlet_min, "-0.1"}}).field, Field::inlet_min);
  EXPECT_EQ(refusal_of({{Field::inlet_max, "999"}}).field, Field::inlet_max);
  // Typed in mm, but the book is in inches.
  EXPECT_EQ(refusal_of({{Field::unit, "inch"}}).sentence,
            "The largest inlet clearance is \"0.22\": it can only lie between 0 inch and "
            "0.1969 inch.");
}

TEST(Request, a_largest_clearance_of_nothing_is_refused) {
  EXPECT_EQ(refusal_of({{Field::inlet_min, "0"}, {Field::inlet_max, "0"}}).sentence,
            "The largest inlet clearance is 0: every engine has some.");
  EXPECT_EQ(request_for({{Field::inlet_min, "0"}}).inlet.min, "0");
}

TEST(Request, a_clearance_may_be_as_wide_as_the_cells_of_engine_take_it) {
  EXPECT_EQ(request_for({{Field::inlet_max, "5"}}).inlet.max, "5");
  EXPECT_EQ(refusal_of({{Field::inlet_max, "5.001"}}).field, Field::inlet_max);
}

TEST(Request, clearances_may_be_left_for_later_but_not_by_half) {
  const BookRequest request = request_for({{Field::inlet_min, ""}, {Field::inlet_max, ""}});
  EXPECT_EQ(request.inlet.min, "");
  const Refusal refusal = refusal_of({{Field::exhaust_min, ""}});
  EXPECT_TRUE(refusal.missing);
  EXPECT_EQ(refusal.sentence, "The smallest exhaust clearance is still missing.");
}

TEST(Request, sizes_on_sale_may_be_left_for_later_but_not_by_half) {
  EXPECT_TRUE(request_for({{Field::inlet_from, ""}, {Field::inlet_to, ""}, {Field::inlet_step, ""}})
                  .ladders.empty());
  const Refusal refusal = refusal_of({{Field::inlet_from, ""}, {Field::inlet_to, ""}});
  EXPECT_TRUE(refusal.missing);
  EXPECT_EQ(refusal.sentence, "Of the sizes on sale, from and to are still missing.");
  EXPECT_EQ(refusal.field, Field::inlet_from);
  const Refusal step = refusal_of({{Field::inlet_step, ""}});
  EXPECT_EQ(step.sentence, "Of the sizes on sale, step is still missing.");
  EXPECT_EQ(step.field, Field::inlet_step);
  EXPECT_EQ(refusal_of({{Field::inlet_from, ""},
                        {Field::inlet_to, ""},
                        {Field::inlet_step, ""},
                        {Field::inlet_price, "6.90"}})
                .sentence,
            "Of the sizes on sale, from, to and step are still missing.");
}

TEST(Request, a_row_of_sizes_that_holds_none_makes_no_book) {
  EXPECT_EQ(refusal_of({{Field::inlet_from, "3.30"}}).sentence,
            "There are no sizes on sale: they begin at 3.30, above their end at 3.20.");
  EXPECT_EQ(refusal_of({{Field::inlet_step, "0"}}).field, Field::inlet_step);
  EXPECT_EQ(refusal_of({{Field::inlet_step, "-0.05"}}).field, Field::inlet_step);
  EXPECT_EQ(refusal_of({{Field::inlet_to, "21"}}).field, Field::inlet_to);
}

TEST(Request, more_sizes_than_the_book_holds_are_refused) {
  EXPECT_EQ(refusal_of({{Field::exhaust_series, "B"},
                        {Field::exhaust_from, "2"},
                        {Field::exhaust_to, "9"},
                        {Field::exhaust_step, "0.001"},
                        {Field::inlet_from, "2"},
                        {Field::inlet_to, "9"},
                        {Field::inlet_step, "0.001"}})
                .sentence,
            "The sizes on sale come to 14002: the book has room for 10000.");
  EXPECT_THAT(refusal_of({{Field::inlet_to, "20"}, {Field::inlet_step, "0.001"}}).sentence,
              HasSubstr("10000"));
}

TEST(Request, two_series_have_a_row_of_sizes_each) {
  EXPECT_EQ(refusal_of({{Field::exhaust_series, "B"}, {Field::exhaust_to, ""}}).sentence,
            "Of the exhaust sizes on sale, to is still missing.");
  const BookRequest request = request_for({{Field::exhaust_series, "B"},
                                           {Field::exhaust_from, "1.5"},
                                           {Field::exhaust_to, "2"},
                                           {Field::exhaust_step, "0.1"}});
  ASSERT_EQ(request.ladders.size(), 2U);
  EXPECT_EQ(request.ladders[1].series, "B");
  EXPECT_EQ(request.ladders[1].from, "1.5");
}

TEST(Request, of_one_series_the_exhaust_sizes_do_not_count) {
  EXPECT_EQ(request_for({{Field::exhaust_from, "nonsense"}}).ladders.size(), 1U);
  EXPECT_EQ(request_for({{Field::exhaust_series, " a "}}).exhaust.series, "A");
  EXPECT_EQ(request_for({{Field::inlet_series, ""}, {Field::exhaust_series, ""}}).inlet.series,
            "A");
}

TEST(Request, sizes_seen_twice_are_asked_for_once) {
  // 201 sizes: twice over they would not find room.
  const auto result =
      read_request(as_seen(entries_with({{Field::inlet_to, "6.20"}, {Field::inlet_step, "0.02"}})));
  ASSERT_TRUE(std::holds_alternative<BookRequest>(result));
  EXPECT_EQ(std::get<BookRequest>(result).ladders.size(), 1U);
}

TEST(Request, a_series_is_named_on_both_sides_or_on_none) {
  const Refusal refusal = refusal_of({{Field::exhaust_series, ""}});
  EXPECT_EQ(refusal.field, Field::exhaust_series);
  EXPECT_TRUE(refusal.missing);
}

TEST(Request, a_price_is_a_sum_of_money_or_blank) {
  EXPECT_EQ(refusal_of({{Field::inlet_price, "7 EUR"}}).field, Field::inlet_price);
  EXPECT_EQ(refusal_of({{Field::inlet_price, "-7"}}).sentence, "A price of -7 is negative.");
  EXPECT_EQ(request_for({{Field::inlet_price, "6,90"}}).ladders[0].price, "6,90");
  EXPECT_EQ(refusal_of({{Field::exhaust_series, "B"}, {Field::exhaust_price, "-7"}}).sentence,
            "The exhaust shims: a price of -7 is negative.");
}

TEST(Request, a_currency_is_no_number) {
  for (const char* currency : {"-1", "6.90", "6,90"})
    EXPECT_EQ(refusal_of({{Field::currency, currency}}).field, Field::currency) << currency;
  for (const char* currency : {"EUR", "\u20ac", ""})
    EXPECT_EQ(request_for({{Field::currency, currency}}).currency, currency);
}

TEST(Request, what_is_wrong_comes_before_what_is_missing) {
  const Refusal refusal = refusal_of({{Field::firing, ""}, {Field::inlet_price, "x"}});
  EXPECT_EQ(refusal.field, Field::inlet_price);
  EXPECT_FALSE(refusal.missing);
}

TEST(Request, words_too_long_for_their_cell_are_refused) {
  const char* novel = "a very long word that no cell has any room to show to anybody";
  EXPECT_EQ(refusal_of({{Field::currency, novel}}).field, Field::currency);
  EXPECT_EQ(refusal_of({{Field::inlet_series, novel}}).field, Field::inlet_series);
}

TEST(Request, shims_are_changed_with_the_camshafts_in_place_unless_they_are_said_to_be_out) {
  EXPECT_EQ(request_for({}).shims_changed, book::engine_place::cams_in_place);
  const std::string out(book::engine_place::cams_out);
  EXPECT_EQ(request_for({{Field::shims_changed, out.c_str()}}).shims_changed, out);
  for (const char* nonsense : {"", "somehow"})
    EXPECT_EQ(refusal_of({{Field::shims_changed, nonsense}}).field, Field::shims_changed)
        << nonsense;
}

TEST(Request, nothing_at_all_is_refused_and_not_a_crash) {
  const auto result = read_request(NewBookEntries());
  ASSERT_TRUE(std::holds_alternative<Refusal>(result));
  EXPECT_EQ(std::get<Refusal>(result).field, Field::arrangement);
}

TEST(Request, every_refusal_is_a_sentence) {
  for (const Refusal& refusal :
       {refusal_of({{Field::cylinders, "0"}}), refusal_of({{Field::firing, "1-1"}}),
        refusal_of({{Field::banks, "1-2"}}), refusal_of({{Field::inlet_step, ""}})}) {
    EXPECT_TRUE(refusal.sentence[0] >= 'A' && refusal.sentence[0] <= 'Z') << refusal.sentence;
    EXPECT_TRUE(refusal.sentence.ends_with('.')) << refusal.sentence;
  }
}

}  // namespace
}  // namespace shimwright::commands
