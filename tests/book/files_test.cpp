// SPDX-License-Identifier: MPL-2.0
//
// A filled book put by and taken up again.
#include <gtest/gtest.h>

#include "job.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

std::filesystem::path kept(std::string_view name) { return the_office().profile().folder() / name; }

TEST(SavedBook, shows_every_cell_as_before) {
  const Job job = made_up_job(3, the_places().layout);
  OpenBook before(the_office(), template_file());
  type_job(before, job, the_places());
  before.save(kept("kept.ods"));
  OpenBook after(the_office(), kept("kept.ods"));
  for (const bool recalculated : {false, true}) {
    if (recalculated) after.recalculate();
    for (const rtl::OUString& name : before.document()->getSheets()->getElementNames()) {
      const std::string sheet = office::from_office(name);
      const auto was = before.texts(sheet);
      const auto is = after.texts(sheet);
      EXPECT_GT(was.size(), 10) << sheet;
      EXPECT_EQ(is.size(), was.size()) << sheet;
      for (std::size_t i = 0; i < std::min(was.size(), is.size()); ++i) {
        ASSERT_EQ(book::relative(is[i].first), book::relative(was[i].first)) << sheet;
        ASSERT_EQ(is[i].second, was[i].second) << book::on(sheet, is[i].first);
      }
    }
  }
  expect_plan(after, job, the_places());
}

TEST(SavedBook, takes_new_readings) {
  {
    OpenBook book(the_office(), template_file());
    type_job(book, made_up_job(1, the_places().layout), the_places());
    book.save(kept("first.ods"));
  }
  OpenBook again(the_office(), kept("first.ods"));
  Job job = made_up_job(1, the_places().layout);
  const book::Card& card = the_places().head.cards.front();
  job.readings.front().gap = job.exhaust.limits.min - Length::nanometres(30'000);
  again.type(book::sheet_name::head, card.value(book::card::gap), job.readings.front().gap->mm());
  expect_plan(again, job, the_places());
}

// Another program's format: it need not be as handsome, but no answer may differ.
TEST(SavedBook, keeps_its_answers_in_xlsx) {
  const Job job = made_up_job(3, the_places().layout);
  {
    OpenBook book(the_office(), template_file());
    type_job(book, job, the_places());
    book.save(kept("kept.xlsx"), xlsx);
  }
  OpenBook again(the_office(), kept("kept.xlsx"));
  expect_plan(again, job, the_places());
  again.recalculate();
  expect_plan(again, job, the_places());
}

}  // namespace
}  // namespace shimwright::tests
