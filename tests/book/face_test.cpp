// SPDX-License-Identifier: MPL-2.0
//
// What meets the eye: what is amiss stands in sight of the entries, what to buy beside the plan,
// and every length is told in the unit chosen on Engine.
#include <gtest/gtest.h>

#include <algorithm>

#include "book/fit_map.hpp"
#include "job.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace engine = book::engine_place;
namespace shims = book::shims_place;
namespace card = book::card;
using book::FitMap;
constexpr auto on_engine = book::sheet_name::engine;
constexpr auto on_head = book::sheet_name::head;
constexpr auto on_shims = book::sheet_name::shims;
constexpr auto on_plan = book::sheet_name::plan;
constexpr auto on_fit = book::sheet_name::fit;

const WorkingsMap map(the_places().count());

void type_limits(OpenBook& book, double min, double max) {
  for (const Side side : {Side::exhaust, Side::inlet}) {
    book.type(on_engine, engine::of(side, engine::min_row), min);
    book.type(on_engine, engine::of(side, engine::max_row), max);
  }
}

// The cell that shows these words among others.
std::pair<At, std::string> cell_with(const OpenBook& book, std::string_view sheet,
                                     std::string_view words) {
  for (const auto& cell : book.texts(sheet))
    if (cell.second.find(words) != std::string::npos) return cell;
  ADD_FAILURE() << "no cell of " << sheet << " tells: " << words;
  return {};
}

TEST(Engine, tells_every_trouble_in_the_rows_that_stay_in_sight) {
  OpenBook book(the_office(), template_file());
  const std::vector<std::pair<At, std::string>> slips{
      {engine::of(Side::exhaust, engine::max_row), "wide"},
      {engine::touch_good, "maybe"},
      {engine::firing, "1-3-3-2"}};
  for (const auto& [at, entry] : slips) book.type(on_engine, at, entry);
  book.recalculate();
  const auto [at, told] = cell_with(book, on_engine, "wide");
  EXPECT_LT(at.row, engine::first_row);
  EXPECT_EQ(told,
            "Exhaust side: the largest gap, \"wide\", is text where a number is due: it does not "
            "count\n"
            "Change shims of good valves too: \"maybe\" is neither yes nor no\n"
            "Firing order: name each cylinder once, as 1-3-4-2; or give the degrees at which each "
            "fires, from 0 to below 720, as 1 at 0, 2 at 270.");
}

TEST(Engine, counts_the_troubles_there_is_no_room_for) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.3, 0.2);
  book.type(on_engine, engine::doubt, -0.01);
  book.type(on_engine, engine::touch_good, "maybe");
  book.type(on_engine, engine::of(Side::inlet, engine::bias_row), 7.0);
  book.type(on_engine, engine::firing, "1-3-3-2");
  book.recalculate();
  const std::string told = cell_with(book, on_engine, "is above").second;
  EXPECT_EQ(told,
            "Exhaust side: the smallest gap, 0.30 mm, is above the largest, 0.20 mm\n"
            "The doubt, -0.01 mm, is negative\n"
            "Inlet side: the smallest gap, 0.30 mm, is above the largest, 0.20 mm\n"
            "and 3 more: all stand on Read me first");
  EXPECT_EQ(book.worked(map.trouble_lines(WorkingsMap::all_count)), "6");
}

TEST(Engine, shows_the_aim_that_is_taken_in_place_of_an_impossible_one) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.16, 0.20);
  book.type(on_engine, engine::of(Side::inlet, engine::bias_row), 7.0);
  book.recalculate();
  EXPECT_EQ(book.shown(on_engine, engine::of(Side::inlet, engine::aim_row)), "0.190");
}

// A limit that is wrong is wrong for each valve: more rows than there are shims.
TEST(Shims, tells_its_own_troubles_though_every_limit_is_wrong) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places());
  for (const Side side : {Side::exhaust, Side::inlet})
    for (const int row : {engine::min_row, engine::max_row})
      book.type(on_engine, engine::of(side, row), "wide");
  for (const int row : {0, 1, 2, 3})
    book.type(on_shims, right_of(below(shims::first_spare, row)), 275.0);
  book.recalculate();
  const std::string told = cell_with(book, on_shims, "275 mm").second;
  // The box has room for these.
  EXPECT_EQ(std::ranges::count(told, '\n'), 3) << told;
  EXPECT_TRUE(told.starts_with("Engine has entries to be mended first\nRow 1: ")) << told;
  // Plan tells on which sheet.
  cell_with(book, on_plan, "Shims, row 1: ");
}

TEST(BookInInches, tells_troubles_in_inches) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places(), Unit::inch);
  type_limits(book, 0.012, 0.008);
  book.type(on_head, card_of("1 EX L").value(card::gap), -0.1);
  book.type(on_shims, right_of(shims::first_spare), 10.8);
  book.type(on_shims, shims::first_spare, "31 mm");
  book.recalculate();
  EXPECT_TRUE(cell_with(book, on_engine, "is above")
                  .second.starts_with("Exhaust side: the smallest gap, 0.0120 in, is above the "
                                      "largest, 0.0080 in\n"));
  cell_with(book, on_head, "Valve 1 EX L: the gap, -0.1000 in, is negative");
  cell_with(book, on_shims, "a length of 10.8000 in is beyond the 3.9370 in");
  book.type(on_shims, right_of(shims::first_spare), 0.1);
  book.recalculate();
  // What a person typed stays as it is.
  cell_with(book, on_shims, "Row 1: spare 0.1000 in: no valve takes series \"31 mm\"");
}

TEST(BookInInches, has_no_other_length_in_its_steps) {
  OpenBook book(the_office(), template_file());
  Job job = made_up_job(3, the_places().layout);
  job.exhaust.series = job.inlet.series = "A";
  for (Job::Spare& spare : job.spares) spare.series = "A";
  for (Job::Ladder& row : job.ladders) row.series = "A";
  job.singles.clear();
  type_job(book, job, the_places(), Unit::inch);
  const FitMap fit(the_places());
  int notes = 0;
  for (int row = 0; row < fit.rows; ++row) {
    const std::string note = book.shown(on_fit, fit.at(row, FitMap::note));
    notes += note.empty() ? 0 : 1;
    EXPECT_EQ(note.find("mm"), std::string::npos) << note;
  }
  EXPECT_GT(notes, 4);
  EXPECT_NO_THROW(book.find(on_fit, "Valve by valve, cams in place; sizes in inches"));
}

// Two inlet valves at two stops, each of which wants the other's shim, and none to stand in.
TEST(BookInInches, says_in_inches_what_to_borrow) {
  OpenBook book(the_office(), template_file());
  book.type(on_engine, engine::unit, "inch");
  type_limits(book, 0.006, 0.010);
  const std::pair<const char*, std::pair<double, double>> readings[] = {{"1 IN L", {0.016, 0.100}},
                                                                        {"4 IN L", {0.0, 0.108}}};
  for (const auto& [valve, reading] : readings) {
    book.type(on_head, card_of(valve).value(card::gap), reading.first);
    book.type(on_head, card_of(valve).value(card::micrometer), reading.second);
  }
  book.recalculate();
  EXPECT_EQ(book.shown(on_fit, FitMap(the_places()).at(0, FitMap::note)),
            "No stand-in is there: borrow or buy a shim no thicker than 0.1080 in, series A. Until "
            "then 1 IN L and 4 IN L keep their shims.");
}

TEST(Plan, shows_what_to_buy_beside_the_valves_and_counts_every_valve_once) {
  OpenBook demo(the_office(), demo_file());
  const At valves = demo.find(on_plan, "Valve by valve; lengths in mm");
  EXPECT_EQ(demo.find(on_plan, "To order; sums in EUR").row, valves.row);
  EXPECT_EQ(demo.find(on_plan, "Left over").row, valves.row);
  double counted = 0;
  for (const char* words :
       {"keep", "move", "spare", "buy", "none fits", "left outside", "to measure"}) {
    const At figure = below(demo.find(on_plan, words));
    EXPECT_LT(figure.row, valves.row) << words;
    counted += demo.number(on_plan, figure);
  }
  EXPECT_EQ(counted, the_places().count());
  EXPECT_EQ(demo.shown(on_plan, below(demo.find(on_plan, "to pay"))), "11.40 EUR");
}

TEST(Plan, gives_the_size_needed_where_none_fits) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.16, 0.20);
  book.type(on_head, card_of("2 IN R").value(card::gap), 0.10);
  book.type(on_head, card_of("2 IN R").value(card::micrometer), 2.85);
  book.type(on_shims, right_of(shims::first_spare), 2.5);
  book.recalculate();
  const At valve = book.find(on_plan, "2 IN R");
  EXPECT_EQ(book.shown(on_plan, right_of(valve, 3)), "none fits");
  EXPECT_EQ(book.number(on_plan, below(book.find(on_plan, "none fits"))), 1);
  EXPECT_EQ(book.shown(on_plan, right_of(valve, 4)), "needs 2.75\u20132.79");
  cell_with(book, on_plan, "2 IN R stays outside its limits: no size listed on Shims serves.");
}

// Nobody has looked yet whether a shim fits.
TEST(Plan, asks_for_the_shims_as_long_as_none_is_listed) {
  OpenBook book(the_office(), template_file());
  type_limits(book, 0.16, 0.20);
  book.type(on_head, card_of("2 IN R").value(card::gap), 0.10);
  book.type(on_head, card_of("2 IN R").value(card::micrometer), 2.85);
  book.recalculate();
  const At valve = book.find(on_plan, "2 IN R");
  EXPECT_EQ(book.shown(on_plan, right_of(valve, 3)), "list shims");
  EXPECT_EQ(book.number(on_plan, below(book.find(on_plan, "list shims first"))), 1);
  EXPECT_FALSE(book.tells(on_plan, "none fits"));
  const At want = book.find(book::sheet_name::read_me, "valves that want a shim");
  EXPECT_EQ(book.shown(book::sheet_name::read_me, right_of(want, 2)), "1");
  cell_with(book, on_plan, "list the spares and the sizes on sale on Shims first");
  EXPECT_EQ(book.shown(on_head, right_of(card_of("2 IN R").value(card::action), -1)), "list shims");
}

// Rows of spares of which there are fewer than none.
void type_bad_counts(OpenBook& book, int rows) {
  for (int row = 0; row < rows; ++row) {
    const At first = below(shims::first_spare, row);
    book.type(on_shims, first, "28 mm");
    book.type(on_shims, right_of(first), 2.3 + 0.01 * row);
    book.type(on_shims, right_of(first, 2), -1.0);
  }
}

TEST(Boxes, show_as_many_lines_as_they_have_room_for_and_say_where_all_stand) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places());
  for (const book::Card& one : the_places().head.cards)
    book.type(on_head, one.value(card::gap), -0.1);
  type_bad_counts(book, 12);
  book.recalculate();
  for (const std::string_view sheet : {on_head, on_shims, on_plan}) {
    const std::string told = cell_with(book, sheet, "is negative").second;
    EXPECT_GE(std::ranges::count(told, '\n'), sheet == on_plan ? 7 : 4) << sheet << ": " << told;
    EXPECT_TRUE(told.ends_with(" more: all stand on Read me first")) << told;
  }
  int listed = 0;
  for (const auto& [at, text] : book.texts(book::sheet_name::read_me))
    listed += text.ends_with("is negative") ? 1 : 0;
  EXPECT_EQ(listed, 28);
}

TEST(Boxes, say_how_many_remarks_even_the_longest_list_leaves_out) {
  OpenBook book(the_office(), template_file());
  type_job(book, made_up_job(3, the_places().layout), the_places());
  for (const book::Card& one : the_places().head.cards)
    for (const card::Row row : {card::gap, card::micrometer})
      book.type(on_head, one.value(row), -0.1);
  type_bad_counts(book, 20);
  book.recalculate();
  cell_with(book, book::sheet_name::read_me, "and 13 more: mend these first");
}

// Every card says "mend entries", so its sheet says where.
TEST(Boxes, name_the_sheet_that_the_plan_waits_for) {
  const auto names = [](const OpenBook& book, std::string_view sheet, const char* other) {
    return book.tells(sheet, std::string(other) + " has entries to be mended first");
  };
  struct Fault {
    std::string_view sheet;
    At at;
    double entry;
  };
  for (const Fault& fault : {Fault{on_shims, right_of(shims::first_spare), 275.0},
                             Fault{on_head, card_of("1 EX L").value(card::gap), -0.1},
                             Fault{on_engine, engine::doubt, -0.1}}) {
    OpenBook book(the_office(), template_file());
    type_job(book, made_up_job(3, the_places().layout), the_places());
    for (const std::string_view sheet : {on_engine, on_head, on_shims})
      for (const char* other : {"Engine", "Head", "Shims"})
        EXPECT_FALSE(names(book, sheet, other)) << sheet << " names " << other;
    book.type(fault.sheet, fault.at, fault.entry);
    book.recalculate();
    for (const std::string_view sheet : {on_engine, on_head, on_shims})
      for (const std::string_view other : {on_engine, on_head, on_shims})
        EXPECT_EQ(names(book, sheet, std::string(other).c_str()),
                  other == fault.sheet && sheet != other)
            << sheet << " names " << other;
  }
}

TEST(EmptyBook, has_a_dash_or_a_word_where_an_answer_will_stand) {
  OpenBook book(the_office(), template_file());
  for (const Side side : {Side::exhaust, Side::inlet})
    EXPECT_EQ(book.shown(on_engine, engine::of(side, engine::aim_row)), "\u2013");
  cell_with(book, on_engine, "Begin here: ");
  const At order = book.find(on_plan, "To order");
  EXPECT_EQ(book.shown(on_plan, below(order, 2)), "nothing");
  EXPECT_NO_THROW(book.find(on_plan, "Begin on Engine: the limits are not entered yet."));
  EXPECT_THROW(book.find(book::sheet_name::read_me, "0 of 0"), std::logic_error);
}

}  // namespace
}  // namespace shimwright::tests
