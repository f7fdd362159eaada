// SPDX-License-Identifier: MPL-2.0
//
// Entries that make no sense, as paste brings them past the rules of entry: a sentence says so
// beside the table, nothing entered is changed, and no error code stands on the paper.
#include <gtest/gtest.h>

#include <cctype>
#include <string>
#include <tuple>
#include <variant>
#include <vector>

#include "job.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;
constexpr auto on_engine = book::sheet_name::engine;
constexpr auto on_head = book::sheet_name::head;
constexpr auto on_shims = book::sheet_name::shims;

using Entered = std::variant<double, std::string>;

struct Slip {
  const char* what;
  std::vector<std::tuple<std::string_view, At, Entered>> entries;
  WorkingsMap::Box box;
  std::string_view sheet;  // where that box is
  const char* sentence;    // a part of it
  bool plan_stands;        // the rest of the engine is planned all the same
};

At of_card(std::size_t valve, card::Row row) { return the_places().head.cards[valve].value(row); }
At spare(int row, int column) { return right_of(below(shims::first_spare, row), column); }
At ladder_row(int row, int column) { return right_of(below(shims::first_ladder, row), column); }
At single(int row, int column) { return right_of(below(shims::first_single, row), column); }

using Box = WorkingsMap::Box;

const Slip slips[] = {
    {"letters pasted into a gap",
     {{on_head, of_card(0, card::gap), "abc"}},
     Box::head_box,
     on_head,
     "the gap, \"abc\", is text where a number is due: it does not count",
     true},
    {"words in a gap",
     {{on_head, of_card(0, card::gap), "tight"}},
     Box::head_box,
     on_head,
     "tight",
     true},
    {"a negative gap",
     {{on_head, of_card(5, card::gap), -0.1}},
     Box::head_box,
     on_head,
     "negative",
     false},
    {"a slipped decimal in a gap",
     {{on_head, of_card(0, card::gap), 0.9}},
     Box::head_box,
     on_head,
     "the gap, 0.90 mm, is at least twice the largest allowed, 0.28 mm: measure it again",
     true},
    {"a gap of a tenth of the limits",
     {{on_head, of_card(0, card::gap), 0.024}},
     Box::head_box,
     on_head,
     "is at most a fifth of the smallest allowed",
     true},
    {"a gap of zero",
     {{on_head, of_card(5, card::gap), 0.0}},
     Box::head_box,
     on_head,
     "the gap is 0, no blade goes: the valve may even be held open, so the gap after fitting is "
     "only the most it can be",
     true},
    {"a mark in the micrometer's cell",
     {{on_head, of_card(2, card::micrometer), 275.0}},
     Box::head_box,
     on_head,
     "275",
     false},
    {"a gap pasted as text",
     {{on_head, of_card(0, card::gap), "0,15"}},
     Box::head_box,
     on_head,
     " (0,15). They are read, but type them anew",
     true},
    {"a mark pasted as text",
     {{on_head, of_card(2, card::mark), "2755"}, {on_head, of_card(2, card::micrometer), 2.755}},
     Box::head_box,
     on_head,
     " (2755). They are read, but type them anew",
     true},
    {"a size pasted as text",
     {{on_shims, right_of(below(shims::first_spare, 4)), "2,80"}},
     Box::shims_box,
     on_shims,
     "Numbers that are text: row 5. They are read",
     true},
    {"a mark that stands for nothing",
     {{on_head, of_card(3, card::mark), "Q9"}, {on_head, of_card(3, card::micrometer), ""}},
     Box::head_box,
     on_head,
     "Q9",
     true},
    {"a micrometer size far from the mark",
     {{on_head, of_card(3, card::mark), 275.0}, {on_head, of_card(3, card::micrometer), 2.57}},
     Box::head_box,
     on_head,
     "micrometer 2.570 and mark 2.750 differ by 0.180 mm",
     true},
    {"leave alone said in another way",
     {{on_head, of_card(4, card::alone), "perhaps"}},
     Box::head_box,
     on_head,
     "perhaps",
     false},
    {"the smallest gap above the largest",
     {{on_engine, engine::of(Side::exhaust, engine::min_row), 0.4}},
     Box::engine_box,
     on_engine,
     "0.4",
     false},
    {"a limit in words",
     {{on_engine, engine::of(Side::inlet, engine::max_row), "wide"}},
     Box::engine_box,
     on_engine,
     "wide",
     false},
    {"an aim beyond the largest",
     {{on_engine, engine::of(Side::inlet, engine::bias_row), 7.0}},
     Box::engine_box,
     on_engine,
     "aim",
     true},
    {"a doubt below zero",
     {{on_engine, engine::doubt, -0.01}},
     Box::engine_box,
     on_engine,
     "doubt",
     false},
    {"work paid to the owner",
     {{on_engine, engine::work, -2.0}},
     Box::engine_box,
     on_engine,
     "Work for each shim changed",
     false},
    {"a rule that is neither yes nor no",
     {{on_engine, engine::touch_good, "maybe"}},
     Box::engine_box,
     on_engine,
     "maybe",
     false},
    {"a series no valve takes",
     {{on_shims, spare(0, 0), "31 mm"}},
     Box::shims_box,
     on_shims,
     "31 mm",
     false},
    {"a spare listed twice",
     {{on_shims, spare(5, 0), "28 mm"},
      {on_shims, spare(5, 1), 2.777},
      {on_shims, spare(6, 0), "28 mm"},
      {on_shims, spare(6, 1), 2.777}},
     Box::shims_box,
     on_shims,
     "it stands in row 6 too: counted as one more",
     true},
    {"half a shim", {{on_shims, spare(0, 2), 1.5}}, Box::shims_box, on_shims, "1.5", false},
    {"a spare's size in hundredths",
     {{on_shims, spare(0, 1), 275.0}},
     Box::shims_box,
     on_shims,
     "275",
     false},
    {"a spare's size in words",
     {{on_shims, spare(0, 1), "thin"}},
     Box::shims_box,
     on_shims,
     "thin",
     true},
    {"a price below zero",
     {{on_shims, single(0, 3), -1.0}},
     Box::shims_box,
     on_shims,
     "negative",
     false},
    {"a row of sizes that runs downwards",
     {{on_shims, ladder_row(0, 1), 3.2}},
     Box::shims_box,
     on_shims,
     "from",
     true},
    {"a row of sizes too fine for the list",
     {{on_shims, ladder_row(0, 3), 0.001}},
     Box::shims_box,
     on_shims,
     "too many",
     true},
    {"a row of sizes without a step",
     {{on_shims, ladder_row(0, 3), "fine"}},
     Box::shims_box,
     on_shims,
     "step",
     true},
};

// A price is that of each size of the row, but was typed once.
TEST(BadEntries, in_a_row_of_sizes_are_told_once_and_by_its_number) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  book.type(on_shims, ladder_row(0, 4), -4.0);
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::shims_box)),
            "Row of sizes 1: the price, -4, is negative");
  EXPECT_EQ(book.number(book::sheet_name::workings, map.trouble_lines(WorkingsMap::all_count)), 1);
  EXPECT_EQ(book.shown(on_shims, ladder_row(0, -1)), "1");
  book.type(on_shims, ladder_row(0, 4), 4.0);
  book.type(on_shims, ladder_row(0, 0), "31 mm");
  const std::string told = book.worked(map.trouble_lines(WorkingsMap::shims_box));
  EXPECT_TRUE(told.starts_with("Row of sizes 1: no valve takes series \"31 mm\": ")) << told;
  EXPECT_EQ(told.find('\n'), std::string::npos) << told;
}

// Paste goes round the rules of entry.
TEST(PastedText, that_is_a_number_with_a_blank_counts_as_that_number) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  for (const char* text : {"0.15 ", " 0.15", "0.15\u00a0"}) {
    book.type(on_head, of_card(0, card::gap), text);
    book.recalculate();
    EXPECT_EQ(book.worked(map.at(0, WorkingsMap::clearance)), "0.15") << text;
    const std::string told = book.worked(map.trouble_lines(WorkingsMap::head_box));
    EXPECT_TRUE(told.starts_with("Numbers that are text: 1 EX L (")) << told;
    EXPECT_EQ(told.find('\n'), std::string::npos) << told;
  }
}

class BadEntry : public ::testing::TestWithParam<Slip> {};

void type(OpenBook& book, std::string_view sheet, At at, const Entered& entry) {
  std::visit([&](const auto& value) { book.type(sheet, at, value); }, entry);
}

// Everything that stands in a cell of the sheets a person works with.
std::vector<std::vector<std::string>> contents(const OpenBook& book) {
  std::vector<std::vector<std::string>> all;
  for (const std::string_view sheet : faces) all.push_back(book.contents(sheet));
  return all;
}

void expect_no_error_codes(const OpenBook& book) {
  for (const std::string_view sheet : faces) EXPECT_EQ(book.errors(sheet), "");
}

TEST_P(BadEntry, is_told_beside_its_table_and_changes_nothing) {
  const Slip& slip = GetParam();
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  for (const auto& [sheet, at, entry] : slip.entries) type(book, sheet, at, entry);
  const auto as_entered = contents(book);
  book.recalculate();

  const std::string sentence = book.worked(map.trouble_lines(slip.box));
  EXPECT_NE(sentence.find(slip.sentence), std::string::npos) << sentence;
  EXPECT_TRUE(book.tells(slip.sheet, sentence)) << sentence;
  EXPECT_TRUE(book.tells(book::sheet_name::plan, slip.sentence)) << sentence;
  EXPECT_EQ(book.holds(map.fact(WorkingsMap::plan_stands)), slip.plan_stands);
  if (!slip.plan_stands) {
    for (const book::Card& one : the_places().head.cards)
      EXPECT_EQ(book.shown(on_head, one.at(card::action)), "mend entries");
  }
  expect_no_error_codes(book);
  EXPECT_EQ(contents(book), as_entered);
}

INSTANTIATE_TEST_SUITE_P(typed_or_pasted, BadEntry, ::testing::ValuesIn(slips),
                         [](const auto& info) {
                           std::string name = info.param.what;
                           for (char& letter : name)
                             if (!std::isalnum(static_cast<unsigned char>(letter))) letter = '_';
                           return name;
                         });

TEST(BadEntries, are_gone_from_the_boxes_once_mended) {
  const WorkingsMap map(the_places().count());
  const Job job = made_up_job(1, the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  book.type(on_head, of_card(5, card::gap), -0.1);
  EXPECT_NE(book.worked(map.trouble_lines(WorkingsMap::head_box)), "");
  if (job.readings[5].gap)
    book.type(on_head, of_card(5, card::gap), job.readings[5].gap->mm());
  else
    book.clear(on_head, of_card(5, card::gap));
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::head_box)), "");
  expect_plan(book, job, the_places());
}

TEST(BadEntries, are_counted_as_the_sentences_told) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  const At count = map.trouble_lines(WorkingsMap::all_count);
  EXPECT_EQ(book.number(book::sheet_name::workings, count), 0);
  for (const std::size_t valve : {0, 1, 2, 3}) book.type(on_head, of_card(valve, card::gap), -0.1);
  EXPECT_EQ(book.number(book::sheet_name::workings, count), 4);
  book.type(on_engine, engine::doubt, -0.01);
  EXPECT_EQ(book.number(book::sheet_name::workings, count), 5);
}

// The owner may note any mark on a shim that was measured.
TEST(BadEntries, are_not_found_in_a_mark_beside_a_measured_size) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  book.type(on_head, of_card(3, card::mark), "X");
  book.type(on_head, of_card(3, card::micrometer), 2.6);
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::head_box)), "");
  EXPECT_EQ(book.shown(on_head, the_places().head.cards[3].at(card::shim_is)), "shim is unmarked");
}

TEST(BadEntries, are_told_in_inches_in_a_book_in_inches) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places(), Unit::inch);
  book.type(on_head, of_card(0, card::gap), 0.035);
  const std::string sentence = book.worked(map.trouble_lines(WorkingsMap::head_box));
  EXPECT_NE(sentence.find("the gap, 0.0350 in, is at least twice the largest allowed, "
                          "0.0110 in: measure it again"),
            std::string::npos)
      << sentence;
}

// The true gap may be anything below: nothing is promised for after fitting.
TEST(GapOfZero, is_to_be_measured_again_after_fitting) {
  Job job = made_up_job(1, the_places().layout);
  job.readings[2].gap = Length();
  job.readings[2].micrometer = Length::nanometres(2'700'000);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  EXPECT_EQ(book.shown(on_head, the_places().head.cards[2].at(card::then)), "then measure again");
  expect_plan(book, job, the_places());
}

TEST(BadEntries, on_shims_are_told_by_the_number_before_the_row) {
  const WorkingsMap map(the_places().count());
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  book.type(on_shims, spare(1, 1), 275.0);
  book.type(on_shims, single(1, 0), "28 mm");
  book.type(on_shims, single(1, 1), -2.0);
  const std::string sentences = book.worked(map.trouble_lines(WorkingsMap::shims_box));
  EXPECT_NE(sentences.find("Row 2: "), std::string::npos) << sentences;
  EXPECT_NE(sentences.find("Row 22: "), std::string::npos) << sentences;
  for (const At at : {spare(1, -1), single(1, -1)})
    EXPECT_NE(sentences.find("Row " + book.shown(on_shims, at) + ": "), std::string::npos);
}

// Types one more row of sizes on sale, in mm.
void type_row(OpenBook& book, const Job::Ladder& row, int index) {
  book.type(on_shims, ladder_row(index, 0), row.series);
  int column = 0;
  for (const Length size : {row.from, row.to, row.step})
    book.type(on_shims, ladder_row(index, ++column), size.mm());
  if (row.price) book.type(on_shims, ladder_row(index, 4), row.price->amount());
}

Money price(const Job::Ladder& row, int dearer) {
  return Money::thousandths(row.price->thousandths() + 1000 * dearer);
}

// Two dealers' rows may cover the same sizes: nobody did anything wrong, and the cheaper is taken.
TEST(RowsOfSizes, that_overlap_count_at_the_lower_price) {
  const WorkingsMap map(the_places().count());
  const Job first = made_up_job(1, the_places().layout);
  const auto row = static_cast<int>(first.ladders.size());
  for (const int dearer : {-1, 0, 1}) {
    OpenBook book(the_office(), template_file());
    type_job(book, first, the_places());
    Job::Ladder other = first.ladders.front();
    other.from = Length::nanometres(2'500'000);
    other.to = Length::nanometres(2'700'000);
    other.step = Length::nanometres(100'000);
    other.price = price(first.ladders.front(), dearer);
    type_row(book, other, row);
    book.recalculate();
    EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::shims_box)), "");
    Job both = first;
    both.ladders.push_back(other);
    expect_plan(book, both, the_places());
  }
}

// A used shim at less, of a size that is to be had new too.
TEST(RowsOfSizes, and_single_sizes_may_have_a_size_in_common) {
  const WorkingsMap map(the_places().count());
  Job job = made_up_job(1, the_places().layout);
  job.singles.push_back({job.ladders.front().series, Length::nanometres(2'300'000), 1,
                         price(job.ladders.front(), -1)});
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::shims_box)), "");
  expect_plan(book, job, the_places());
}

TEST(RowsOfSizes, of_two_series_do_not_disturb_each_other) {
  const WorkingsMap map(the_places().count());
  Job job = made_up_job(1, the_places().layout);
  job.inlet.series = "25 mm";
  job.ladders.push_back(job.ladders.front());
  job.ladders.back().series = "25 mm";
  job.ladders.back().price = price(job.ladders.front(), -1);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::shims_box)), "");
  expect_plan(book, job, the_places());
}

}  // namespace
}  // namespace shimwright::tests
