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

  static office::Office* bare;
  const WorkingsMap map{the_places().count()};
};

office::Office* WithoutAddIn::bare = nullptr;

TEST_F(WithoutAddIn, the_demo_says_what_is_missing_as_soon_as_it_is_opened) {
  OpenBook demo(*bare, demo_file());
  for (const std::string_view sheet : faces)
    EXPECT_EQ(banners(demo, sheet), sheet == book::sheet_name::shims ? 0 : 1) << sheet;
  demo.recalculate();
  for (const std::string_view sheet : faces)
    EXPECT_EQ(banners(demo, sheet), sheet == book::sheet_name::shims ? 0 : 1) << sheet;
  EXPECT_FALSE(demo.holds(map.fact(WorkingsMap::tool_there)));
}

TEST_F(WithoutAddIn, a_new_book_says_what_is_missing) {
  OpenBook book(*bare, template_file());
  for (const bool recalculated : {false, true}) {
    if (recalculated) book.recalculate();
    EXPECT_EQ(banners(book, book::sheet_name::read_me), 1);
    EXPECT_EQ(banners(book, book::sheet_name::head), 1);
  }
}

TEST_F(WithoutAddIn, no_error_code_stands_on_a_sheet) {
  OpenBook demo(*bare, demo_file());
  demo.recalculate();
  for (const std::string_view sheet : faces) EXPECT_EQ(demo.errors(sheet), "");
}

TEST_F(WithoutAddIn, entries_are_not_judged_to_be_wrong) {
  OpenBook demo(*bare, demo_file());
  demo.recalculate();
  for (const auto box : {WorkingsMap::head_box, WorkingsMap::shims_box, WorkingsMap::engine_box})
    EXPECT_TRUE(demo.worked(map.trouble_lines(box)).starts_with("Not checked"))
        << demo.worked(map.trouble_lines(box));
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
