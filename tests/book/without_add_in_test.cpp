// SPDX-License-Identifier: MPL-2.0
//
// The books on a computer where Shimwright is not installed: they say so, and lose nothing.
#include <gtest/gtest.h>

#include "job.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

class WithoutAddIn : public ::testing::Test {
 protected:
  static void SetUpTestSuite() { bare = new office::Office(); }
  static void TearDownTestSuite() {
    delete bare;
    bare = nullptr;
  }

  // The cells of a sheet that show what the banner says then.
  static int banners(const OpenBook& book, std::string_view sheet) {
    int count = 0;
    for (const auto& [at, text] : book.texts(sheet))
      count += text.starts_with("The Shimwright add-in is missing") ? 1 : 0;
    return count;
  }

  static bool is_banner(std::string_view text) {
    return text.starts_with("Shimwright ") || text.starts_with("The Shimwright add-in is missing");
  }

  static office::Office* bare;
};

office::Office* WithoutAddIn::bare = nullptr;

TEST_F(WithoutAddIn, the_demo_says_what_is_missing_as_soon_as_it_is_opened) {
  OpenBook demo(*bare, demo_file());
  for (const std::string_view sheet : faces)
    EXPECT_EQ(banners(demo, sheet), sheet == book::sheet_name::shims ? 0 : 1) << sheet;
  for (const char* words :
       {"figures are those of the last calculation", "Buttons and menu need it: install it"})
    EXPECT_TRUE(demo.tells(book::sheet_name::head, words)) << words;
}

// Every cell that a person sees, on every sheet.
TEST_F(WithoutAddIn, every_result_stays_readable_as_it_was_last_worked_out) {
  OpenBook there(the_office(), demo_file());
  OpenBook demo(*bare, demo_file());
  std::size_t compared = 0;
  for (const std::string_view sheet : faces) {
    const auto with = there.texts(sheet);
    const auto without = demo.texts(sheet);
    ASSERT_EQ(with.size(), without.size()) << sheet;
    for (std::size_t i = 0; i < with.size(); ++i) {
      if (is_banner(with[i].second)) continue;
      EXPECT_EQ(without[i].second, with[i].second) << book::on(sheet, with[i].first);
      ++compared;
    }
    EXPECT_EQ(demo.errors(sheet), "") << sheet;
  }
  EXPECT_GT(compared, 600U);
}

TEST_F(WithoutAddIn, after_an_entry_is_changed_results_are_blank_and_never_an_error) {
  OpenBook demo(*bare, demo_file());
  const book::Card& card = the_places().head.cards.front();
  EXPECT_NE(demo.shown(book::sheet_name::head, card.at(book::card::banner)), "");
  demo.type(book::sheet_name::head, card.value(book::card::gap), 0.30);
  demo.recalculate();
  EXPECT_EQ(demo.shown(book::sheet_name::head, card.at(book::card::banner)), "");
  for (const std::string_view sheet : faces) {
    EXPECT_EQ(demo.errors(sheet), "") << sheet;
    EXPECT_EQ(banners(demo, sheet), sheet == book::sheet_name::shims ? 0 : 1) << sheet;
  }
}

TEST_F(WithoutAddIn, a_new_book_says_what_is_missing) {
  OpenBook book(*bare, template_file());
  for (const bool recalculated : {false, true}) {
    if (recalculated) book.recalculate();
    EXPECT_EQ(banners(book, book::sheet_name::read_me), 1);
    EXPECT_EQ(banners(book, book::sheet_name::head), 1);
  }
}

TEST_F(WithoutAddIn, entries_are_taken_and_not_judged_to_be_wrong) {
  OpenBook demo(*bare, demo_file());
  demo.type(book::sheet_name::head, the_places().head.cards.front().value(book::card::gap), 0.30);
  demo.recalculate();
  for (const std::string_view sheet : faces)
    EXPECT_FALSE(demo.tells(sheet, "no faults found")) << sheet;
}

TEST_F(WithoutAddIn, a_book_edited_and_saved_recovers_where_the_add_in_is) {
  const auto& layout = the_places().layout;
  Job job = made_up_job(2, layout);
  const auto folder = the_office().profile().folder();
  const auto made = folder / "made.ods";
  const auto edited = folder / "edited.ods";
  {
    OpenBook book(the_office(), template_file());
    type_job(book, job, the_places());
    book.save(made);
  }
  job.readings[7].gap = job.inlet.limits.min - Length::nanometres(40'000);
  {
    OpenBook book(*bare, made);
    book.type(book::sheet_name::head, the_places().head.cards[7].value(book::card::gap),
              job.readings[7].gap->mm());
    book.recalculate();
    book.save(edited);
  }
  OpenBook again(the_office(), edited);
  again.recalculate();
  expect_plan(again, job, the_places());
}

}  // namespace
}  // namespace shimwright::tests
