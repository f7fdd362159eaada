// SPDX-License-Identifier: MPL-2.0
//
// Entries that make no sense, as paste brings them past the checks: nothing entered is changed, no
// error code stands on the paper, and Plan tells them. What each is told:
// core/service_slips_test.cpp.
#include <gtest/gtest.h>

#include <string>
#include <tuple>
#include <variant>
#include <vector>

#include "box_lines.hpp"
#include "job.hpp"
#include "on_sheets.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;

struct Slip {
  std::string_view sheet;
  At at;
  std::variant<double, std::string> entry;
  const char* sentence;  // a part of it
};

At of_card(std::size_t valve, card::Row row) { return the_places().head.cards[valve].value(row); }
At spare(int row, int column) { return right_of(below(shims::first_spare, row), column); }
At ladder_row(int row, int column) { return right_of(below(shims::first_ladder, row), column); }
At single(int row, int column) { return right_of(below(shims::first_single, row), column); }

// One of each kind of cell.
const Slip slips[] = {
    {on_head, of_card(0, card::gap), "abc", "\"abc\", is text where a number is due"},
    {on_head, of_card(5, card::gap), -0.1, "-0.1 mm, is negative"},
    {on_head, of_card(2, card::micrometer), 275.0, "Did you mean 2.75?"},
    {on_head, of_card(4, card::exception), "perhaps", "\"perhaps\" is neither leave nor nearest"},
    {on_engine, engine::of(Side::inlet, engine::max_row), "wide", "\"wide\", is text"},
    {on_engine, engine::of(Side::inlet, engine::bias_row), 7.0, "Where to aim, inlet side"},
    {on_engine, engine::doubt, -0.01, "-0.01 mm, is negative"},
    {on_engine, engine::touch_good, "maybe", "\"maybe\" is neither yes nor no"},
    {on_shims, spare(0, 0), "31 mm", "no valve takes series \"31 mm\""},
    {on_shims, spare(1, 1), "thin", "\"thin\", is text"},
    {on_shims, spare(2, 2), 1.5, "1.5, is not a whole number"},
    {on_shims, ladder_row(0, 3), "fine", "Row of sizes 1: from, to and step give no size."},
    {on_shims, single(0, 3), -1.0, "-1, is negative"},
};

void type(OpenBook& book, const Slip& slip) {
  std::visit([&](const auto& value) { book.type(slip.sheet, slip.at, value); }, slip.entry);
}

// Everything that stands in a cell of the sheets a person works with.
std::vector<std::vector<std::string>> contents(const OpenBook& book) {
  std::vector<std::vector<std::string>> all;
  for (const std::string_view sheet : faces) all.push_back(book.contents(sheet));
  return all;
}

TEST(BadEntries, are_all_told_change_nothing_and_bring_no_error_code) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  for (const Slip& slip : slips) type(book, slip);
  const auto as_entered = contents(book);
  book.recalculate();
  for (const Slip& slip : slips)
    EXPECT_TRUE(book.tells(on_read_me, slip.sentence)) << slip.sentence;
  EXPECT_TRUE(book.tells(on_plan, "more lines: all stand on Read me first."));
  EXPECT_TRUE(book.tells(on_plan, "Correct the entries first: no plan can be trusted until then"));
  for (const book::Card& one : the_places().head.cards)
    EXPECT_EQ(book.shown(on_head, one.at(card::action)), "correct entries");
  for (const std::string_view sheet : faces) EXPECT_EQ(book.errors(sheet), "");
  EXPECT_EQ(contents(book), as_entered);
}

TEST(BadEntries, are_told_on_their_own_sheet_and_on_plan) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  for (const Slip& slip : slips) {
    const auto cell = book.cell(slip.sheet, slip.at);
    const rtl::OUString before = cell->getFormula();
    type(book, slip);
    book.recalculate();
    for (const std::string_view sheet : {slip.sheet, on_plan}) {
      const std::string told = told_by_box(book, sheet);
      EXPECT_NE(told.find(slip.sentence), std::string::npos) << sheet << ": " << told;
    }
    cell->setFormula(before);
  }
}

TEST(BadEntries, are_gone_from_the_boxes_once_mended) {
  const Job job = made_up_job(1, the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  book.type(on_head, of_card(5, card::gap), -0.1);
  book.recalculate();
  EXPECT_TRUE(book.tells(on_plan, "is negative"));
  if (job.readings[5].gap)
    book.type(on_head, of_card(5, card::gap), job.readings[5].gap->mm());
  else
    book.clear(on_head, of_card(5, card::gap));
  book.recalculate();
  EXPECT_FALSE(book.tells(on_plan, "is negative"));
  EXPECT_TRUE(book.tells(on_head, "Entries checked: no faults found."));
  expect_plan(book, job, the_places());
}

TEST(BadEntries, on_shims_are_told_by_the_number_that_stands_before_the_row) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(1, the_places().layout), the_places());
  book.type(on_shims, spare(1, 1), 275.0);
  book.type(on_shims, single(1, 1), -2.0);
  book.recalculate();
  for (const At at : {spare(1, -1), single(1, -1)})
    EXPECT_TRUE(book.tells(on_shims, "Row " + book.shown(on_shims, at) + ": "));
}

}  // namespace
}  // namespace shimwright::tests
