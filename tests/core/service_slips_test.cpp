// SPDX-License-Identifier: MPL-2.0
//
// Entries that make no sense, as paste brings them past the checks: a sentence says so on their own
// sheet, on Plan and on Read me first, and no plan stands where none can be trusted.
#include <gtest/gtest.h>

#include <cctype>
#include <string>
#include <vector>

#include "core/service/findings.hpp"
#include "job_entries.hpp"

namespace shimwright::tests {
namespace {

struct EntrySlip {
  const char* kind;
  const char* name;
  std::size_t value;
  Entry entry;
};

struct Slip {
  const char* what;
  std::vector<EntrySlip> entries;
  const char* sheet;
  const char* sentence;  // a part of it
  bool plan_stands;      // the rest of the engine is planned all the same
};

const Slip slips[] = {
    {"letters in a gap",
     {{"valve", "1 EX L", 0, "abc"}},
     "head",
     "the gap, \"abc\", is text where a number is due: it does not count",
     true},
    {"words in a gap",
     {{"valve", "1 EX L", 0, "tight"}},
     "head",
     "the gap, \"tight\", is text",
     true},
    {"a negative gap", {{"valve", "2 EX R", 0, -0.1}}, "head", "is negative", false},
    {"a slipped decimal in a gap",
     {{"valve", "1 EX L", 0, 0.9}},
     "head",
     "the gap, 0.90 mm, is at least twice the largest allowed, 0.28 mm: measure it again",
     true},
    {"a gap a tenth of the limits",
     {{"valve", "1 EX L", 0, 0.024}},
     "head",
     "the gap, 0.024 mm, is at most a fifth of the smallest allowed, 0.22 mm: measure it again",
     true},
    {"a gap of zero",
     {{"valve", "2 EX R", 0, 0.0}},
     "head",
     "the gap is 0, no blade goes: the valve may even be held open, so the gap after fitting is "
     "only the most it can be",
     true},
    {"a mark as micrometer",
     {{"valve", "1 IN L", 2, 275.0}},
     "head",
     "275 mm is no shim size. Did you mean 2.75?",
     false},
    {"a gap as text",
     {{"valve", "1 EX L", 0, "0,15"}},
     "head",
     "(0,15). They are read, but type them again",
     true},
    {"a mark as text",
     {{"valve", "1 IN L", 1, "2755"}, {"valve", "1 IN L", 2, 2.755}},
     "head",
     "(2755). They are read, but type them again",
     true},
    {"a size as text",
     {{"spare", "5", 0, "28 mm"}, {"spare", "5", 1, "2,80"}},
     "shims",
     "Numbers that are text: Row 5. They are read",
     true},
    {"a mark that stands for nothing",
     {{"valve", "1 IN R", 1, "Q9"}, {"valve", "1 IN R", 2, ""}},
     "head",
     "Marks that stand for no size: 1 IN R (Q9).",
     true},
    {"a micrometer size far from the mark",
     {{"valve", "1 IN R", 1, 275.0}, {"valve", "1 IN R", 2, 2.57}},
     "head",
     "micrometer 2.57 mm and mark 2.75 mm are 0.18 mm apart",
     true},
    {"leave alone in another way",
     {{"valve", "2 EX L", 3, "perhaps"}},
     "head",
     "2 EX L: \"perhaps\" is neither leave nor nearest. Until then this valve is left alone.",
     true},
    {"the smallest gap above the largest",
     {{"side", "exhaust", 0, 0.4}},
     "engine",
     "the smallest gap allowed, 0.40 mm, is above the largest, 0.28 mm",
     false},
    {"a limit in words", {{"side", "inlet", 1, "wide"}}, "engine", "\"wide\", is text", false},
    {"an aim beyond the largest",
     {{"side", "inlet", 2, 7.0}},
     "engine",
     "Where to aim, inlet side: enter a number from 0 to 1. Until then 0.75 is taken.",
     true},
    {"a doubt below zero", {{"setting", "doubt", 0, -0.01}}, "engine", "is negative", false},
    {"work paid to the owner",
     {{"setting", "work", 0, -2.0}},
     "engine",
     "Work for each shim changed",
     false},
    {"a rule that is neither yes nor no",
     {{"setting", "touch good", 0, "maybe"}},
     "engine",
     "Change shims of good valves too: \"maybe\" is neither yes nor no",
     false},
    {"a unit that is none",
     {{"setting", "unit", 0, "inlet"}},
     "engine",
     "Unit: enter mm or inch. Until then every length is taken in mm.",
     true},
    {"a series no valve takes",
     {{"spare", "1", 0, "31 mm"}},
     "shims",
     "no valve takes series \"31 mm\"",
     true},
    {"a spare listed twice",
     {{"spare", "11", 0, "28 mm"},
      {"spare", "11", 1, 2.777},
      {"spare", "12", 0, "28 mm"},
      {"spare", "12", 1, 2.777}},
     "shims",
     "it stands in row 11 too: counted as one more",
     true},
    {"half a shim", {{"spare", "1", 2, 1.5}}, "shims", "1.5, is not a whole number", true},
    {"a spare in hundredths",
     {{"spare", "1", 1, 275.0}},
     "shims",
     "275 mm is no shim size. Did you mean 2.75?",
     true},
    {"a spare in words", {{"spare", "1", 1, "thin"}}, "shims", "\"thin\", is text", true},
    {"a price below zero", {{"single", "21", 3, -1.0}}, "shims", "is negative", true},
    {"a row of sizes that runs downwards",
     {{"sizes", "1", 1, 3.2}},
     "shims",
     "Row of sizes 1: from, to and step give no size.",
     true},
    {"a row of sizes too fine for the list",
     {{"sizes", "1", 1, 0.3}, {"sizes", "1", 2, 20.0}, {"sizes", "1", 3, 0.001}},
     "shims",
     "Row of sizes 1: all rows together may come to",
     true},
    {"a row of sizes without a step",
     {{"sizes", "1", 3, "fine"}},
     "shims",
     "Row of sizes 1: from, to and step give no size.",
     true},
};

ServiceEntries sound_entries() {
  const EngineLayout layout = inline_four();
  return entries_of(made_up_job(1, layout), layout);
}

class SlippedEntry : public ::testing::TestWithParam<Slip> {};

TEST_P(SlippedEntry, is_told_on_its_sheet_on_plan_and_on_read_me_first) {
  const Slip& slip = GetParam();
  ServiceEntries book = sound_entries();
  for (const auto& [kind, name, value, entry] : slip.entries) book.set(kind, name, value, entry);
  const View view = book.view();
  EXPECT_TRUE(tells(box_of(view, slip.sheet), slip.sentence)) << box_of(view, slip.sheet);
  EXPECT_TRUE(tells(box_of(view, "plan"), slip.sentence)) << box_of(view, "plan");
  int listed = 0;
  for (std::size_t i = 1; i <= view["remarks"].rows.size(); ++i)
    listed += tells(view["remarks"].at("words", i), slip.sentence) ? 1 : 0;
  EXPECT_EQ(listed, 1);
  EXPECT_EQ(view["book"].at("total") != "\u2013", slip.plan_stands);
  if (!slip.plan_stands) {
    for (const std::string& valve : book.valves())
      EXPECT_EQ(book.of_valve(view, valve, "card do"), "correct entries") << valve;
  }
}

INSTANTIATE_TEST_SUITE_P(typed_or_pasted, SlippedEntry, ::testing::ValuesIn(slips),
                         [](const auto& info) {
                           std::string name = info.param.what;
                           for (char& letter : name)
                             if (!std::isalnum(static_cast<unsigned char>(letter))) letter = '_';
                           return name;
                         });

TEST(SlippedEntries, are_not_found_where_all_is_sound) {
  const View view = sound_entries().view();
  EXPECT_EQ(view["book"].at("remarks count"), "0") << box_of(view, "plan");
  for (const char* sheet : {"engine", "head", "shims"})
    EXPECT_EQ(box_of(view, sheet), "Entries checked: no faults found.");
}

TEST(SlippedEntries, are_counted_as_the_sentences_told) {
  ServiceEntries book = sound_entries();
  for (const char* valve : {"1 EX L", "1 EX R", "1 IN L", "1 IN R"}) book.gap(valve, -0.1);
  EXPECT_EQ(book.view()["book"].at("remarks count"), "4");
  book.setting("doubt", -0.01);
  EXPECT_EQ(book.view()["book"].at("remarks count"), "5");
}

// A price is that of each size of the row, but was typed once.
TEST(SlippedEntries, in_a_row_of_sizes_are_told_once_and_by_its_number) {
  ServiceEntries book = sound_entries();
  book.set("sizes", "1", 4, -4.0);
  const View view = book.view();
  EXPECT_EQ(view["book"].at("remarks count"), "1") << box_of(view, "shims");
  EXPECT_TRUE(box_of(view, "shims").starts_with("Row of sizes 1: ")) << box_of(view, "shims");
  EXPECT_TRUE(tells(box_of(view, "shims"), "-4, is negative")) << box_of(view, "shims");
  book.set("sizes", "1", 4, 4.0).set("sizes", "1", 0, "31 mm");
  EXPECT_EQ(book.view()["book"].at("remarks count"), "1");
  EXPECT_TRUE(box_of(book.view(), "shims").starts_with("Row of sizes 1: "));
}

TEST(SlippedEntries, on_shims_are_told_by_the_number_before_the_row) {
  ServiceEntries book = sound_entries();
  book.set("spare", "2", 1, 275.0).set("single", "22", 0, "28 mm").set("single", "22", 1, -2.0);
  const std::string box = box_of(book.view(), "shims");
  EXPECT_TRUE(tells(box, "Row 2: ")) << box;
  EXPECT_TRUE(tells(box, "Row 22: ")) << box;
}

// The owner may note any mark on a shim that was measured.
TEST(SlippedEntries, are_not_found_in_a_mark_beside_a_measured_size) {
  ServiceEntries book = sound_entries();
  book.mark("1 IN R", "X").micrometer("1 IN R", 2.6);
  EXPECT_EQ(book.view()["book"].at("remarks count"), "0") << box_of(book.view(), "head");
  EXPECT_EQ(book.of_valve("1 IN R", "shim is"), "shim has no mark");
}

// Paste goes round the checks.
TEST(PastedText, that_is_a_number_with_a_blank_counts_as_that_number) {
  for (const char* text : {"0.15 ", " 0.15", "0.15\u00a0"}) {
    ServiceEntries book = sound_entries();
    book.gap("1 EX L", text);
    EXPECT_EQ(book.of_valve("1 EX L", "gap"), "0.150") << text;
    EXPECT_TRUE(box_of(book.view(), "head").starts_with("Numbers that are text: 1 EX L ("));
    EXPECT_EQ(book.view()["book"].at("remarks count"), "1");
  }
}

// Two dealers' rows may cover the same sizes: nobody did anything wrong, and the cheaper is taken.
TEST(RowsOfSizes, that_overlap_count_at_the_lower_price) {
  const EngineLayout layout = inline_four();
  for (const int dearer : {-1, 0, 1}) {
    Job job = made_up_job(1, layout);
    Job::Ladder other = job.ladders.front();
    other.from = Length::nanometres(2'500'000);
    other.to = Length::nanometres(2'700'000);
    other.step = Length::nanometres(100'000);
    other.price = Money::thousandths(other.price->thousandths() + 1000 * dearer);
    job.ladders.push_back(other);
    EXPECT_EQ(entries_of(job, layout).view()["book"].at("remarks count"), "0") << dearer;
    expect_best_plan(job, layout);
  }
}

// A used shim at less, of a size that is to be had new too.
TEST(RowsOfSizes, and_single_sizes_may_have_a_size_in_common) {
  const EngineLayout layout = inline_four();
  Job job = made_up_job(1, layout);
  const Job::Ladder& row = job.ladders.front();
  job.singles.push_back({row.series, Length::nanometres(2'300'000), 1,
                         Money::thousandths(row.price->thousandths() - 1000)});
  EXPECT_EQ(entries_of(job, layout).view()["book"].at("remarks count"), "0");
  expect_best_plan(job, layout);
}

TEST(RowsOfSizes, of_two_series_do_not_disturb_each_other) {
  const EngineLayout layout = inline_four();
  Job job = made_up_job(1, layout);
  job.inlet.series = "25 mm";
  job.ladders.push_back(job.ladders.front());
  job.ladders.back().series = "25 mm";
  job.ladders.back().price = Money::thousandths(job.ladders.front().price->thousandths() - 1000);
  EXPECT_EQ(entries_of(job, layout).view()["book"].at("remarks count"), "0");
  expect_best_plan(job, layout);
}

// The true gap may be anything below: nothing is promised for after fitting.
TEST(GapOfZero, is_to_be_measured_again_after_fitting) {
  const EngineLayout layout = inline_four();
  Job job = made_up_job(1, layout);
  job.readings[2].gap = Length();
  job.readings[2].micrometer = Length::nanometres(2'700'000);
  EXPECT_EQ(entries_of(job, layout).of_valve("1 IN L", "then"), "measure again");
  expect_best_plan(job, layout);
}

TEST(RowsOfSizes, are_told_apart_by_what_they_offer) {
  ServiceEntries book;
  book.set("side", "inlet", 3, "B");
  book.sizes(1, "A", 2.2, 3.2, 0.05, 6.9).sizes(2, "B", 2.2, 3.2, 0.025, 6.9);
  book.sizes(3, "A", 2.4, 2.6, 0.05, 5.9).sizes(4, "B", 1.9, 1.9, 0.05, 6.9);
  const View view = book.view();
  const char* offered[] = {"A: 21 sizes, 2.200 to 3.200 by 0.050; 5 cheaper in another row",
                           "B: 41 sizes, 2.200 to 3.200 by 0.025",
                           "A: 5 sizes, 2.400 to 2.600 by 0.050", "B: 1 size, 1.900"};
  std::size_t row = 0;
  for (const char* words : offered) EXPECT_EQ(view["sizes"].at("offered", ++row), words);
}

// A gap typed a row too low.
TEST(MarkOfAGap, stands_for_no_shim_and_is_told) {
  ServiceEntries book;
  book.limits(0.15, 0.25).gap("1 IN L", 0.20).mark("1 IN L", 0.18);
  EXPECT_EQ(book.of_valve("1 IN L", "shim"), "");
  EXPECT_NE(box_of(book.view(), "head").find("1 IN L (0.18)"), std::string::npos)
      << box_of(book.view(), "head");
  book.mark("1 IN L", 0.3);
  EXPECT_EQ(book.of_valve("1 IN L", "shim"), "0.300");
}

// Limits of 0.02 against steps of 0.05: told once where both sides are alike, else for each.
TEST(LimitsNarrowerThanTheStep, are_told_once_where_both_sides_are_alike) {
  ServiceEntries book;
  book.limits(0.20, 0.22).sizes(1, "", 2.0, 3.0, 0.05, 5);
  EXPECT_EQ(findings_in(book.service()).notes_on_shims.size(), 1u);
  book.set("side", "inlet", 1, 0.23);
  EXPECT_EQ(findings_in(book.service()).notes_on_shims.size(), 2u);
}

}  // namespace
}  // namespace shimwright::tests
