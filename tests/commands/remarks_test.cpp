// SPDX-License-Identifier: MPL-2.0
#include "commands/remarks.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <variant>
#include <vector>

#include "typed_entries.hpp"

namespace shimwright::commands {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

constexpr const char* as_last_time =
    "Filled in as for the last book: check the clearances and the sizes on sale against this "
    "engine\u2019s own manual.";

std::vector<std::string> remarks(const NewBookEntries& entries, const NewBookEntries& opened) {
  const auto result = read_request(entries);
  if (const auto* refusal = std::get_if<Refusal>(&result)) {
    ADD_FAILURE() << refusal->sentence;
    return {};
  }
  return remarks_on(std::get<BookRequest>(result), opened);
}

NewBookEntries with(NewBookEntries entries, Field field, std::string_view text) {
  type(entries, field, text);
  return entries;
}

// An inline four whose firing is not the one that was filled in.
NewBookEntries looked_at() { return with(inline_four_entries(), Field::firing, "1-2-4-3"); }

// On an engine's firing alone: nothing stands as in the last book.
std::vector<std::string> firing_remarks(std::string_view engine, std::string_view firing) {
  const NewBookEntries entries = with(looked_at(), Field::engine, engine);
  return remarks(with(entries, Field::firing, firing), first_entries());
}

TEST(Remarks, a_first_book_whose_entries_were_looked_at_has_none) {
  EXPECT_THAT(remarks(looked_at(), first_entries()), IsEmpty());
  EXPECT_THAT(firing_remarks("single", "1"), IsEmpty());
}

TEST(Remarks, the_firing_that_was_filled_in_is_asked_about) {
  EXPECT_THAT(
      firing_remarks("inline three", "1-2-3"),
      ElementsAre("Check the firing order: 1-2-3 is usual in this layout, and not the only one. "
                  "The engine\u2019s own manual has it."));
  EXPECT_THAT(firing_remarks("inline three", "1-3-2"), IsEmpty());
  EXPECT_THAT(remarks(inline_four_entries(), first_entries()),
              ElementsAre(StartsWith("Check the firing order: 1-3-4-2 is usual")));
}

TEST(Remarks, entries_of_the_last_book_are_told_whatever_the_engine) {
  const NewBookEntries last = looked_at();
  EXPECT_THAT(remarks(last, last), ElementsAre(as_last_time));
  EXPECT_THAT(remarks(with(last, Field::engine, "single"), last), ElementsAre(as_last_time));
  for (const char* engine : {"inline six", "V8"})
    EXPECT_THAT(remarks(with(last, Field::engine, engine), last),
                ElementsAre(as_last_time, StartsWith("Check the firing order:")))
        << engine;
  EXPECT_THAT(remarks(with(last, Field::currency, "EUR"), last), ElementsAre(as_last_time));
}

TEST(Remarks, one_clearance_changed_shows_that_they_were_looked_at) {
  const NewBookEntries last = looked_at();
  EXPECT_THAT(remarks(with(last, Field::inlet_min, "0.15"), last), IsEmpty());
  EXPECT_THAT(remarks(with(last, Field::inlet_max, "0.23"), last), IsEmpty());
  EXPECT_THAT(remarks(with(last, Field::exhaust_min, "0.21"), last), IsEmpty());
  EXPECT_THAT(remarks(with(last, Field::exhaust_max, "0.29"), last), IsEmpty());
  EXPECT_THAT(remarks(with(last, Field::inlet_min, " 0.16 "), last), ElementsAre(as_last_time));
}

TEST(Remarks, sizes_of_the_last_book_are_told_where_its_clearances_were_left_blank) {
  NewBookEntries last = looked_at();
  for (const Field field :
       {Field::inlet_min, Field::inlet_max, Field::exhaust_min, Field::exhaust_max})
    last[field].clear();
  EXPECT_THAT(remarks(last, last),
              ElementsAre(as_last_time, "Left for later, in the book: clearances on Engine."));
}

// Intervals of two cylinders: common practice, no source.
TEST(Remarks, the_firing_of_a_v_of_two_is_asked_about) {
  EXPECT_THAT(
      firing_remarks("V-twin", "1 at 0, 2 at 270"),
      ElementsAre("Check the firing order: cylinder 2 fires 270\u00b0 after cylinder 1. In a V "
                  "it depends on the angle between the two and on the crank pins (at "
                  "90\u00b0 on one pin it is 270\u00b0 or 450\u00b0): the engine\u2019s "
                  "own manual has it."));
  EXPECT_THAT(firing_remarks("V-twin", "1-2"),
              ElementsAre(StartsWith("Check the firing order: cylinder 2 fires 360\u00b0 after")));
  EXPECT_THAT(firing_remarks("V-twin", "1:0 2:292,5"),
              ElementsAre(HasSubstr("cylinder 2 fires 292.5\u00b0 after cylinder 1.")));
}

TEST(Remarks, the_firing_of_two_in_line_is_asked_about) {
  EXPECT_THAT(
      firing_remarks("parallel twin", "1-2"),
      ElementsAre("Check the firing order: cylinder 2 fires 360\u00b0 after cylinder 1. In line "
                  "it depends on the crank (180\u00b0, 270\u00b0 and 360\u00b0 are all "
                  "usual): the engine\u2019s own manual has it."));
}

TEST(Remarks, a_flat_twin_fires_a_turn_apart_and_is_not_asked_about) {
  NewBookEntries entries = with(looked_at(), Field::arrangement, "flat");
  entries = with(with(entries, Field::cylinders, "2"), Field::firing, "1-2");
  EXPECT_THAT(remarks(entries, first_entries()), IsEmpty());
}

TEST(Remarks, cylinders_that_fire_together_are_named) {
  EXPECT_THAT(firing_remarks("V-twin", "1 at 0, 2 at 0"),
              ElementsAre("Cylinders 1 and 2 fire together: is that so? In most engines each "
                          "fires by itself."));
  EXPECT_THAT(firing_remarks("parallel twin", "1 at 0, 2 at 720"),
              ElementsAre(StartsWith("Cylinders 1 and 2 fire together:")));
  EXPECT_THAT(firing_remarks("inline four", "1 at 0, 2 at 292, 3 at 292, 4 at 0"),
              ElementsAre(StartsWith("Cylinders 1 and 4 fire together, and so do 2 and 3:")));
  EXPECT_THAT(firing_remarks("inline three", "1 at 0, 2 at 240, 3 at 240"),
              ElementsAre(StartsWith("Cylinders 2 and 3 fire together:")));
  EXPECT_THAT(firing_remarks("inline four", "1 at 0, 2 at 0, 3 at 0, 4 at 360"),
              ElementsAre(StartsWith("Cylinders 1, 2 and 3 fire together:")));
}

TEST(Remarks, uneven_firing_of_more_than_two_is_no_cause_for_one) {
  EXPECT_THAT(firing_remarks("inline four", "1 at 0, 3 at 180, 2 at 450, 4 at 630"), IsEmpty());
}

TEST(Remarks, two_series_in_the_same_sizes_are_asked_about) {
  const NewBookEntries two = with(looked_at(), Field::exhaust_series, "B");
  EXPECT_THAT(remarks(two, first_entries()),
              ElementsAre("Inlet and exhaust shims are on sale in the same sizes: is that so?"));
  EXPECT_THAT(remarks(with(two, Field::exhaust_to, "3.00"), first_entries()), IsEmpty());
}

TEST(Remarks, the_last_books_entries_and_the_firing_are_told_one_after_the_other) {
  const NewBookEntries last = with(looked_at(), Field::engine, "V-twin");
  EXPECT_THAT(remarks(last, last),
              ElementsAre(as_last_time, StartsWith("Check the firing order:")));
}

TEST(Remarks, tell_what_is_left_for_later) {
  EXPECT_THAT(remarks(first_entries(), first_entries()),
              ElementsAre("Left for later, in the book: clearances on Engine and sizes on sale on "
                          "Shims.",
                          StartsWith("Check the firing order:")));
  NewBookEntries entries = looked_at();
  entries[Field::inlet_from] = entries[Field::inlet_to] = entries[Field::inlet_step] = "";
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("Left for later, in the book: sizes on sale on Shims."));
}

TEST(Remarks, a_clearance_typed_in_another_unit_is_asked_about) {
  NewBookEntries entries = with(looked_at(), Field::inlet_max, "2.5");
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("A clearance of 2.50 mm is unusually wide: is the unit right?"));
  EXPECT_THAT(remarks(with(entries, Field::inlet_max, "2"), first_entries()), IsEmpty());
  entries = with(with(entries, Field::inlet_max, "0.18"), Field::unit, "inch");
  for (const Field field : {Field::exhaust_min, Field::exhaust_max}) entries[field].clear();
  for (const Field field : {Field::inlet_from, Field::inlet_to, Field::inlet_step})
    entries[field].clear();
  EXPECT_THAT(remarks(entries, first_entries()),
              testing::Contains(
                  "A clearance of 0.18 inch (4.57 mm) is unusually wide: is the unit right?"));
}

// The share by hand: width of the limits over the step.
TEST(Remarks, limits_narrower_than_the_step_on_sale_are_told_with_the_share_of_gaps_served) {
  NewBookEntries entries = with(looked_at(), Field::inlet_max, "0.20");
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("Sizes on sale serve 4 of 5 inlet gaps: the limits are 0.04 mm wide, the "
                          "sizes step by 0.05 mm."));
  entries = with(entries, Field::exhaust_max, "0.26");
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("Sizes on sale serve 4 of 5 gaps: the limits are 0.04 mm wide, the sizes "
                          "step by 0.05 mm."));
  entries = with(entries, Field::exhaust_max, "0.24");
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre(HasSubstr("4 of 5 inlet gaps"), HasSubstr("2 of 5 exhaust gaps")));
  EXPECT_THAT(remarks(with(entries, Field::inlet_step, "0.02"), first_entries()), IsEmpty());
  entries = with(with(entries, Field::inlet_max, "0.16"), Field::exhaust_max, "0.22");
  EXPECT_THAT(remarks(entries, first_entries()), ElementsAre(HasSubstr("serve hardly any gaps")));
}

TEST(Remarks, each_side_is_held_against_the_step_of_its_own_series) {
  NewBookEntries entries = with(looked_at(), Field::exhaust_series, "B");
  entries = with(with(entries, Field::exhaust_step, "0.1"), Field::exhaust_to, "3.00");
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("Sizes on sale serve 3 of 5 exhaust gaps: the limits are 0.06 mm wide, "
                          "the sizes step by 0.10 mm."));
}

TEST(Remarks, tell_a_last_size_that_is_not_the_one_typed) {
  NewBookEntries entries = looked_at();
  entries[Field::inlet_from] = "3.5";
  entries[Field::inlet_to] = "4.5";
  entries[Field::inlet_step] = "0.03";
  EXPECT_THAT(remarks(entries, first_entries()),
              ElementsAre("In steps of 0.03 from 3.5 the last size on sale is 4.49 mm, not 4.5."));
  entries[Field::inlet_step] = "0.05";
  EXPECT_THAT(remarks(entries, first_entries()), IsEmpty());
}

}  // namespace
}  // namespace shimwright::commands
