// SPDX-License-Identifier: MPL-2.0
//
// The book on paper, as it is taken to the bench: one sheet, one A4 page.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <fstream>
#include <iostream>
#include <map>
#include <regex>
#include <sstream>
#include <tuple>

#include "bench_list.hpp"
#include "book/fit_map.hpp"
#include "book/look/style_names.hpp"
#include "core/engine/presets.hpp"
#include "job.hpp"
#include "on_sheets.hpp"
#include "open_book.hpp"
#include "printed_pages.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using book::FitMap;
using book::to_office;
using book::recheck_place::at;
using book::recheck_place::Column;

class Paper {
 public:
  explicit Paper(const OpenBook& book) {
    const auto file = the_office().profile().folder() / "paper.pdf";
    book.save(file, "calc_pdf_Export");
    pages_ = printed_pages(file);
  }

  int pages() const { return static_cast<int>(pages_.size()); }
  const PrintedPage& page(int number) const { return pages_.at(number - 1); }  // from 1
  const std::string& text(int number) const { return page(number).text; }

  // By the sheet's name in the foot.
  std::vector<int> pages_of(std::string_view sheet) const {
    const std::regex foot("(^|\n) *" + std::string(sheet) + "  .*printed ");
    std::vector<int> found;
    for (int number = 1; number <= pages(); ++number)
      if (std::regex_search(text(number), foot)) found.push_back(number);
    return found;
  }

  // Whose sheet's each page is, for messages.
  std::string feet() const {
    const std::regex foot("(^|\n) *([A-Z][a-z ]+?)  .*printed ");
    std::string all;
    for (const PrintedPage& page : pages_) {
      std::smatch found;
      all += std::regex_search(page.text, found, foot) ? found.str(2) + ", " : "?, ";
    }
    return all;
  }

 private:
  std::vector<PrintedPage> pages_;
};

int printed_sheets(const OpenBook& book) {
  int count = 0;
  for (const rtl::OUString& name : book.document()->getSheets()->getElementNames())
    count += as<css::sheet::XPrintAreas>(book.document()->getSheets()->getByName(name))
                     ->getPrintAreas()
                     .hasElements()
                 ? 1
                 : 0;
  return count;
}

constexpr double points_a_mm = 72 / 25.4;

void expect_a4(const Paper& paper, int page, bool landscape) {
  const PrintedPage& size = paper.page(page);
  EXPECT_NEAR(size.width, (landscape ? 297 : 210) * points_a_mm, 1) << "page " << page;
  EXPECT_NEAR(size.height, (landscape ? 210 : 297) * points_a_mm, 1) << "page " << page;
}

void expect_sheets_on_one_page_each(const OpenBook& book) {
  const Paper paper(book);
  ASSERT_EQ(paper.pages(), printed_sheets(book));
  const std::map<std::string_view, bool> landscape{
      {book::sheet_name::read_me, false}, {book::sheet_name::engine, false},
      {book::sheet_name::head, true},     {book::sheet_name::measure, false},
      {book::sheet_name::plan, true},     {book::sheet_name::arrivals, false},
      {book::sheet_name::fit, false},     {book::sheet_name::recheck, false}};
  int page = 0;
  for (const std::string_view sheet : faces) {
    ++page;
    const PrintedPage& size = paper.page(page);
    expect_a4(paper, page, size.width > size.height);
    if (const auto due = landscape.find(sheet); due != landscape.end()) {
      EXPECT_EQ(size.width > size.height, due->second) << sheet;
    }
    const std::string text = paper.text(page);
    EXPECT_NE(text.find(sheet), std::string::npos) << "the foot of page " << page;
    for (const char* sign : {"###", "Err:", "#N/A", "#NAME?", "#VALUE!", "#REF!", "#DIV/0!"})
      EXPECT_EQ(text.find(sign), std::string::npos) << sign << " on " << sheet << ":\n" << text;
    EXPECT_EQ(text.find("Go on to"), std::string::npos) << "a link on " << sheet << ":\n" << text;
  }
}

// Head's, of which there may be 48 cards, have a test of their own.
TEST(Paper, has_letters_of_seven_points_or_more) {
  const auto expect_large = [](const OpenBook& book, const std::string& what) {
    const Paper paper(book);
    for (const std::string_view sheet : {book::sheet_name::read_me, book::sheet_name::shims,
                                         book::sheet_name::plan, book::sheet_name::recheck}) {
      const auto page = static_cast<int>(std::ranges::find(faces, sheet) - std::begin(faces)) + 1;
      EXPECT_GE(paper.page(page).smallest_letters_pt(), 7) << sheet << " of " << what;
      std::cout << sheet << " of " << what << ": " << paper.page(page).smallest_letters_pt()
                << " pt\n";
    }
  };
  expect_large(OpenBook(the_office(), template_file()), "an empty book");
  expect_large(OpenBook(the_office(), demo_file()), "the demo");
}

TEST(Paper, of_an_empty_book_is_one_page_for_each_sheet) {
  OpenBook book(the_office(), template_file());
  expect_sheets_on_one_page_each(book);
}

TEST(Paper, of_the_demo_is_one_page_for_each_sheet) {
  OpenBook demo(the_office(), demo_file());
  expect_sheets_on_one_page_each(demo);
}

TEST(Paper, of_a_full_book_in_inches_is_one_page_for_each_sheet) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places(), Unit::inch);
  expect_sheets_on_one_page_each(book);
}

// The widest numbers that the rules of entry let pass.
TEST(Paper, has_room_for_the_largest_numbers) {
  OpenBook book(the_office(), template_file());
  Job job = made_up_job(3, the_places().layout);
  job.rules.work = Money::thousandths(99'999'990);
  for (Job::Ladder& row : job.ladders) row.price = Money::thousandths(99'999'990);
  for (Job::Spare& spare : job.spares) spare.count = 1000;
  type_job(book, job, the_places());
  expect_sheets_on_one_page_each(book);
}

TEST(Paper, of_a_book_with_bad_entries_shows_no_error_code) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places());
  for (const book::Card& card : the_places().head.cards)
    book.type(book::sheet_name::head, card.value(book::card::gap), -1.0);
  book.recalculate();
  expect_sheets_on_one_page_each(book);
}

// The bars of progress hold numbers, which are not to be read beside them. The office ties them to
// their cells at once only where it is told in one of its two ways.
TEST(Paper, of_a_book_never_saved_shows_bars_without_their_numbers) {
  const OpenBook book(the_office(), the_places().layout);
  const std::string text = Paper(book).text(1);
  EXPECT_TRUE(std::regex_search(text, std::regex("gaps measured +0 of 16"))) << text;
  EXPECT_TRUE(std::regex_search(text, std::regex("needed shims known +0 of 16"))) << text;
}

EngineLayout twelve_in_a_vee() {
  EngineLayout layout{.name = "V, 12 cylinders, 48 valves",
                      .arrangement = Arrangement::vee,
                      .banks = usual_banks(Arrangement::vee, 12),
                      .exhaust_valves = 2,
                      .inlet_valves = 2,
                      .firing = "1-12-5-8-3-10-6-7-2-11-4-9"};
  return layout;
}

// Where the office chose the scale itself, it would part cards.
TEST(Paper, of_a_head_on_two_pages_parts_no_card_when_saved_and_opened_again) {
  EngineLayout layout = twelve_in_a_vee();
  layout.exhaust_valves = 1;
  layout.inlet_valves = 3;
  const book::Places places(layout);
  ASSERT_GT(places.head.second_page_row, 0);
  const auto file = the_office().profile().folder() / "two pages.ods";
  OpenBook(the_office(), layout).save(file);
  const Paper paper(OpenBook(the_office(), file));
  for (const int page : {3, 4}) {
    const auto cards = std::ranges::count_if(places.head.cards, [&](const book::Card& card) {
      return (card.corner.row < places.head.second_page_row) == (page == 3);
    });
    const std::string text = paper.text(page);
    const std::regex micrometer("micrometer");
    const auto printed =
        std::distance(std::sregex_iterator(text.begin(), text.end(), micrometer), {});
    EXPECT_EQ(printed, cards) << "page " << page << ":\n" << text;
  }
}

TEST(Paper, of_plan_for_32_valves_is_one_page_in_letters_of_seven_points) {
  const EngineLayout layout{.name = "V, 8 cylinders, 32 valves",
                            .arrangement = Arrangement::vee,
                            .banks = usual_banks(Arrangement::vee, 8),
                            .exhaust_valves = 2,
                            .inlet_valves = 2,
                            .firing = "1-8-4-3-6-5-7-2"};
  const book::Places places(layout);
  OpenBook book(the_office(), layout);
  type_job(book, made_up_job(3, layout), places);
  const Paper paper(book);
  int pages = 0;
  for (int page = 1; page <= paper.pages(); ++page) {
    if (paper.text(page).find("Valve by valve; lengths in mm") == std::string::npos) continue;
    ++pages;
    EXPECT_GE(paper.page(page).smallest_letters_pt(), 7);
    for (const char* valve : {"1 EX L", "8 IN R", "total"})
      EXPECT_NE(paper.text(page).find(valve), std::string::npos) << valve;
  }
  EXPECT_EQ(pages, 1);
}

// Its rows are two lines high, so that 48 of them come out smaller.
TEST(Paper, of_recheck_is_one_page_up_to_48_valves) {
  const book::Places places(twelve_in_a_vee());
  OpenBook book(the_office(), places.layout);
  type_job(book, made_up_job(3, places.layout), places);
  ASSERT_GT(take_to_bench(the_office(), book), 2);
  for (int row = 0; !book.formula(on_fit, {FitMap::step, FitMap::first_row + row}).empty(); ++row)
    book.type(on_fit, {FitMap::done, FitMap::first_row + row}, "x");
  for (int row = 0; row < places.count(); ++row)
    book.type(on_recheck, at(row, Column::gap), row % 3 == 0 ? 0.60 : 0.20);
  book.recalculate();
  const Paper paper(book);
  const auto pages = paper.pages_of(on_recheck);
  ASSERT_EQ(pages.size(), 1U);
  const std::string text = paper.text(pages.front());
  for (const ValveId& valve : places.valves)
    EXPECT_NE(text.find(name_of(valve, places.layout)), std::string::npos);
  EXPECT_EQ(text.find("###"), std::string::npos) << text;
  constexpr double smallest_pt = 5.3;
  EXPECT_GE(paper.page(pages.front()).smallest_letters_pt(), smallest_pt);
}

EngineLayout five_valves_a_cylinder() {
  EngineLayout layout = inline_four();
  layout.inlet_valves = 3;
  return layout;
}

// As an office in America prints it.
void change_paper_to_letter(const OpenBook& book) {
  const auto pages =
      as<css::container::XNameAccess>(as<css::style::XStyleFamiliesSupplier>(book.document())
                                          ->getStyleFamilies()
                                          ->getByName("PageStyles"));
  for (const auto& [style, width, height] : {std::tuple(book::style::portrait, 215.9, 279.4),
                                             std::tuple(book::style::landscape, 279.4, 215.9)}) {
    const auto page = as<css::beans::XPropertySet>(pages->getByName(to_office(style)));
    book::set(page, "Width", book::hundredths(width));
    book::set(page, "Height", book::hundredths(height));
  }
}

// It is written on at the engine: nothing is made smaller for want of room.
TEST(Paper, of_the_measuring_sheet_is_one_page_in_full_size_on_a4_and_on_letter) {
  const EngineLayout layouts[] = {inline_four(), five_valves_a_cylinder(), twelve_in_a_vee()};
  for (const EngineLayout& layout : layouts) {
    const book::Places places(layout);
    OpenBook book(the_office(), layout);
    type_job(book, made_up_job(3, layout), places, Unit::inch);  // which are longer than mm
    for (const bool letter : {false, true}) {
      if (letter) change_paper_to_letter(book);
      const ::testing::ScopedTrace place(__FILE__, __LINE__, layout.name + (letter ? "L" : "A4"));
      const Paper paper(book);
      const auto pages = paper.pages_of(book::sheet_name::measure);
      EXPECT_EQ(pages.size(), 1U);
      for (const int page : pages) {
        const std::string text = paper.text(page);
        constexpr double smallest_pt = 8.5;
        EXPECT_NEAR(paper.page(page).smallest_letters_pt(), smallest_pt, 0.1);
        for (const ValveId& valve : places.valves)
          EXPECT_NE(text.find(name_of(valve, layout)), std::string::npos) << name_of(valve, layout);
        EXPECT_NE(text.find("Then type all of it into Head."), std::string::npos) << text;
        for (const char* heading : {"shim", "gap", "mark", "micrometer"})
          EXPECT_GE(std::ranges::count(paper.page(page).words, heading, &PrintedWord::text),
                    std::max(layout.exhaust_valves, layout.inlet_valves))
              << heading << ", in one piece over each column";
        EXPECT_EQ(text.find("###"), std::string::npos) << text;
      }
    }
  }
}

// Shims of most valves change places, so that there are more steps than a page holds.
TEST(Paper, of_plan_and_fit_for_48_valves_has_the_heads_of_its_lists_on_every_page) {
  const book::Places places(twelve_in_a_vee());
  for (const bool cams_out : {false, true}) {
    OpenBook book(the_office(), places.layout);
    Job job = made_up_job(3, places.layout);
    type_job(book, job, places, Unit::inch);
    for (std::size_t i = 0; i < places.head.cards.size(); ++i) {
      const book::Card& card = places.head.cards[i];
      book.type(book::sheet_name::head, card.value(book::card::gap), i % 2 == 0 ? 0.0160 : 0.0020);
      book.type(book::sheet_name::head, card.value(book::card::micrometer),
                0.1000 + 0.0004 * static_cast<double>(i * 7 % 31));
      book.clear(book::sheet_name::head, card.value(book::card::exception));
    }
    if (cams_out)
      book.type(book::sheet_name::engine, book::engine_place::opened, book::engine_place::cams_out);
    book.recalculate();
    // The lists of Plan take two pages, its picture a third, the table of Drift two, and Fit one as
    // long as nothing is on the bench.
    EXPECT_EQ(Paper(book).pages(), printed_sheets(book) + 3) << Paper(book).feet();
    ASSERT_GT(take_to_bench(the_office(), book), 40);
    const Paper paper(book);
    ASSERT_EQ(paper.pages(), printed_sheets(book) + 4) << paper.feet();
    const auto of_plan = paper.pages_of(book::sheet_name::plan);
    ASSERT_EQ(of_plan.size(), 3U);
    for (const int page : {of_plan[0], of_plan[1]}) {
      EXPECT_TRUE(std::regex_search(paper.text(page), std::regex("valve +gap")))
          << paper.text(page);
      EXPECT_GE(paper.page(page).smallest_letters_pt(), 7) << "page " << page;
    }
    const auto of_fit = paper.pages_of(book::sheet_name::fit);
    ASSERT_EQ(of_fit.size(), 2U);
    for (const int page : of_fit) {
      const std::string text = paper.text(page);
      EXPECT_TRUE(std::regex_search(
          text, std::regex("step +stop +valve +take out +put in +from +note +done")))
          << text;
      EXPECT_EQ(text.find("###"), std::string::npos) << text;
    }
    EXPECT_TRUE(std::regex_search(paper.text(of_fit.back()),
                                  std::regex("through two full turns|two full +turns")))
        << cams_out;
  }
}

}  // namespace
}  // namespace shimwright::tests
