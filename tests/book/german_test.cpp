// SPDX-License-Identifier: MPL-2.0
//
// The book of a user whose decimal mark is the comma.
#include <gtest/gtest.h>

#include "job.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace card = book::card;

const book::Card& first_card() { return the_places().head.cards.front(); }

TEST(GermanBook, shows_lengths_with_a_comma) {
  OpenBook demo(the_office(), demo_file());
  const auto shown = [&](card::Row row) {
    return demo.shown(book::sheet_name::head, first_card().value(row));
  };
  EXPECT_EQ(shown(card::gap), "0,250");
  EXPECT_EQ(shown(card::micrometer), "2,651");
  demo.recalculate();
  const std::string limits = demo.shown(book::sheet_name::head, first_card().at(card::limits));
  EXPECT_NE(limits.find("0,22"), std::string::npos) << limits;
  EXPECT_EQ(limits.find('.'), std::string::npos) << limits;
}

TEST(GermanBook, shows_no_decimal_point_among_its_answers) {
  OpenBook demo(the_office(), demo_file());
  demo.recalculate();
  EXPECT_NO_THROW(demo.find(book::sheet_name::measure, "0,16\u20130,22"));
  for (const std::string_view sheet :
       {book::sheet_name::head, book::sheet_name::measure, book::sheet_name::plan}) {
    for (const auto& [at, text] : demo.texts(sheet)) {
      const bool is_number = text.find_first_not_of("0123456789.,") == std::string::npos;
      EXPECT_FALSE(is_number && text.find('.') != std::string::npos)
          << book::on(sheet, at) << ": " << text;
    }
  }
}

// The demo was last saved under a locale with a point.
TEST(GermanBook, shows_no_decimal_point_as_soon_as_it_is_opened) {
  OpenBook demo(the_office(), demo_file());
  const std::string limits = demo.shown(book::sheet_name::head, first_card().at(card::limits));
  EXPECT_NE(limits.find("0,22"), std::string::npos) << limits;
  EXPECT_NO_THROW(demo.find(book::sheet_name::measure, "0,16\u20130,22"));
  EXPECT_EQ(demo.text_of(book::sheet_name::plan, "=BOOK.SHOWS(tells_picture;\"least\")").find('.'),
            std::string::npos);
}

TEST(GermanBook, takes_entries_as_they_are_typed) {
  Job job = made_up_job(4, the_places().layout);
  OpenBook book(the_office(), template_file());
  type_job(book, job, the_places());
  book.strike(book::sheet_name::head, first_card().value(card::gap), "0,17");
  book.strike(book::sheet_name::head, first_card().value(card::micrometer), "2,708");
  job.readings.front().gap = Length::nanometres(170'000);
  job.readings.front().micrometer = Length::nanometres(2'708'000);
  expect_plan(book, job, the_places());
}

// What an English hand types stays text, and text with a decimal mark of either kind is read.
TEST(GermanBook, takes_a_point_for_a_decimal_mark_too) {
  OpenBook book(the_office(), template_file());
  book.strike(book::sheet_name::head, first_card().value(card::gap), "0.17");
  EXPECT_EQ(book.text_of(book::sheet_name::head, "=BOOK.SHOWS(tells_valves;\"gap\";1)"), "0,170");
}

TEST(GermanBook, knows_its_choices_by_the_same_words) {
  OpenBook book(the_office(), template_file());
  book.strike(book::sheet_name::engine, book::engine_place::unit, "inch");
  EXPECT_EQ(book.text_of(book::sheet_name::head, "=BOOK.SHOWS(tells_book;\"unit\")"), "in");
}

}  // namespace
}  // namespace shimwright::tests
