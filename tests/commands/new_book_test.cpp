// SPDX-License-Identifier: MPL-2.0
//
// The command New service book in an office with a window: the menu, the dialog, the book.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <com/sun/star/awt/XWindow2.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <string>

#include "book/places.hpp"
#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

TEST_F(NewBook, the_menu_opens_the_dialog_and_escape_closes_it) {
  screen_->focus("Calc");
  screen_->press("alt+l");
  screen_->picture(PICTURES "/menu.png");
  screen_->press("n");
  dialog();
  screen_->focus(dialog_title);
  screen_->press("Escape");
  EXPECT_TRUE(dialog_closes());
  EXPECT_TRUE(new_documents().empty());
}

TEST_F(NewBook, what_is_left_for_later_is_told_before_anything_is_typed) {
  const Window window = ask();
  EXPECT_EQ(sentence(window), "Ready: a book for inline four, 16 valves.");
  EXPECT_NE(remarks(window).find("Left for later"), std::string::npos) << remarks(window);
  EXPECT_TRUE(window.can_press(make_button));
  EXPECT_EQ(window.entry("Shims changed"), book::engine_place::cams_in_place);
  screen_->picture(PICTURES "/dialog.png");
}

TEST_F(NewBook, what_is_missing_is_told_and_makes_no_book) {
  const Window window = ask();
  window.enter("On sale from", 0, "2.20");
  EXPECT_EQ(sentence(window), "Of the sizes on sale, to and step are still missing.");
  EXPECT_FALSE(window.can_press(make_button));
}

TEST_F(NewBook, makes_a_book_that_holds_what_was_entered) {
  const Window window = ask();
  fill_in(window);
  window.choose("Kind", 0, "V8");
  window.choose("Shims changed", 0, book::engine_place::cams_out);
  window.choose("Valves per cylinder", 0, "3");
  window.enter("Shim series", 1, "B");
  window.enter("On sale from", 1, "1.5");
  window.enter("On sale to", 1, "2,5");
  window.enter("On sale in steps of", 1, "0.1");
  window.enter("Price each", 1, "4.20");
  window.enter("Currency", 0, "EUR");
  EXPECT_EQ(sentence(window), "Ready: a book for V8, 40 valves.");
  screen_->picture(PICTURES "/dialog-v8.png");
  const Document document = make(window);
  namespace place = book::engine_place;
  const auto engine = [&](book::At at) { return text_in(document, book::sheet_name::engine, at); };
  EXPECT_EQ(engine(place::unit), "mm");
  EXPECT_EQ(engine(place::of(Side::inlet, place::min_row)), "0.160");
  EXPECT_EQ(engine(place::of(Side::inlet, place::max_row)), "0.220");
  EXPECT_EQ(engine(place::of(Side::exhaust, place::min_row)), "0.220");
  EXPECT_EQ(engine(place::of(Side::exhaust, place::max_row)), "0.280");
  EXPECT_EQ(engine(place::of(Side::inlet, place::series_row)), "A");
  EXPECT_EQ(engine(place::of(Side::exhaust, place::series_row)), "B");
  EXPECT_EQ(engine(place::currency), "EUR");
  EXPECT_EQ(engine(place::opened), place::cams_out);
  const auto ladder = [&](int row, int column) {
    return text_in(document, book::sheet_name::shims,
                   right_of(below(book::shims_place::first_ladder, row), column));
  };
  EXPECT_EQ(ladder(0, 0), "A");
  EXPECT_EQ(ladder(0, 5), "21 sizes");
  EXPECT_EQ(ladder(1, 0), "B");
  EXPECT_EQ(ladder(1, 5), "11 sizes");
  EXPECT_EQ(ladder(2, 0), "");

  // Closing it asks whether to keep what was typed.
  EXPECT_TRUE(Reference<css::util::XModifiable>(document, UNO_QUERY_THROW)->isModified());
  const auto undo =
      Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager();
  EXPECT_FALSE(undo->isUndoPossible());
  const Reference<css::awt::XWindow2> frame(Reference<css::frame::XModel>(document, UNO_QUERY_THROW)
                                                ->getCurrentController()
                                                ->getFrame()
                                                ->getContainerWindow(),
                                            UNO_QUERY_THROW);
  EXPECT_TRUE(comes_true([&] { return frame->isVisible(); }));
  screen_->maximize("Untitled");
  screen_->picture(PICTURES "/new-book.png");
}

TEST_F(NewBook, remembers_the_last_entries_and_forgets_those_cancelled) {
  Window window = ask();
  fill_in(window);
  window.choose("Kind", 0, "flat four");
  window.choose("Shims changed", 0, book::engine_place::cams_out);
  window.enter("Currency", 0, "crowns");
  make(window);

  window = ask();
  window.enter("Currency", 0, "beads");
  window.press("Cancel");
  ASSERT_TRUE(dialog_closes());

  window = ask();
  EXPECT_EQ(window.entry("Kind"), "flat four");
  EXPECT_EQ(window.entry("Banks"), "right 1-3 / left 2-4");
  EXPECT_EQ(window.entry("Shims changed"), book::engine_place::cams_out);
  EXPECT_EQ(window.entry("Currency"), "crowns");
  EXPECT_EQ(window.entry("On sale from"), "2.20");
  EXPECT_TRUE(window.can_press(make_button));
}

// Remembered by an older version, which did not ask it.
TEST_F(NewBook, what_the_last_dialog_did_not_ask_has_its_usual_answer) {
  Window window = ask();
  fill_in(window);
  window.choose("Shims changed", 0, book::engine_place::cams_out);
  window.enter("Currency", 0, "shells");
  make(window);

  set_option(*office_, "/org.shimwright.NewBook/Last", "ShimsChanged", {});
  window = ask();
  EXPECT_EQ(window.entry("Shims changed"), book::engine_place::cams_in_place);
  EXPECT_EQ(window.entry("Currency"), "shells");
}

TEST_F(NewBook, cancel_leaves_nothing_behind) {
  const Window window = ask();
  fill_in(window);
  window.press("Cancel");
  EXPECT_TRUE(dialog_closes());
  EXPECT_TRUE(new_documents().empty());
  EXPECT_FALSE(Reference<css::util::XModifiable>(sheet_, UNO_QUERY_THROW)->isModified());
  EXPECT_FALSE(Reference<css::document::XUndoManagerSupplier>(sheet_, UNO_QUERY_THROW)
                   ->getUndoManager()
                   ->isUndoPossible());
}

TEST_F(NewBook, a_bad_entry_keeps_the_dialog_open_with_a_sentence) {
  struct Bad {
    const char* label;
    int place;
    const char* entry;
    const char* sentence;
  };
  const Bad all[] = {
      {"Firing order", 0, "1-3-4", "leaves out cylinder 2"},
      {"Firing order", 0, "1-3-3-2", "names cylinder 3 more than once"},
      {"Firing order", 0, "1-3-4-2-5", "names cylinder 5: the engine has cylinders 1 to 4"},
      {"Firing order", 0, "1 at 0, 2 at 180, 3 at 360, 4 at 730", "between 0\u00b0 and 720\u00b0"},
      {"Cylinders", 0, "0", "1 to 16 cylinders"},
      {"Cylinders", 0, "17", "1 to 16 cylinders"},
      {"Cylinders", 0, "13", "a book has room for 48"},
      {"Banks", 0, "1-2-3", "leave out cylinder 4"},
      {"Smallest clearance", 0, "0.23", "above the largest"},
      {"Largest clearance", 1, "wide", "not a number"},
      {"On sale to", 0, "2.10", "no sizes on sale"},
      {"On sale in steps of", 0, "0", "can only lie between"},
      {"On sale in steps of", 0, "", "still missing"},
  };
  const Window window = ask();
  for (const Bad& bad : all) {
    fill_in(window);
    window.choose("Kind", 0, "V8");  // so that the next line fills in everything afresh
    window.choose("Kind", 0, "inline four");
    ASSERT_TRUE(window.can_press(make_button)) << sentence(window);
    window.enter(bad.label, bad.place, bad.entry);
    EXPECT_THAT(sentence(window), HasSubstr(bad.sentence)) << bad.entry;
    EXPECT_THAT(window.labels_cut(), IsEmpty()) << bad.entry;
    EXPECT_FALSE(window.can_press(make_button)) << bad.entry;
    screen_->focus(dialog_title);
    screen_->press("alt+f");  // a field: in a list Enter would not make a book anyway
    screen_->press("Return");
    EXPECT_TRUE(window_titled(*office_, dialog_title)) << bad.entry;
    EXPECT_TRUE(new_documents().empty()) << bad.entry;
    if (std::string(bad.sentence) == "above the largest")
      screen_->picture(PICTURES "/dialog-refuses.png");
    // What was typed stays.
    EXPECT_EQ(window.entry(bad.label, bad.place), bad.entry);
  }
}

TEST_F(NewBook, an_uneven_v_is_refused_when_it_is_chosen) {
  const Window window = ask();
  fill_in(window);
  window.enter("Cylinders", 0, "5");
  window.choose("Arrangement", 0, "V");
  EXPECT_EQ(window.entry("Kind"), "own layout");
  EXPECT_THAT(sentence(window), HasSubstr("5 do not come out even"));
}

TEST_F(NewBook, sizes_of_one_series_are_entered_once_and_seen_twice) {
  const Window window = ask();
  fill_in(window);
  EXPECT_FALSE(window.can_enter("On sale from", 1));
  EXPECT_EQ(window.entry("On sale from", 1), "2.20");
  EXPECT_EQ(window.entry("On sale to", 1), "3.20");
  EXPECT_EQ(window.entry("On sale in steps of", 1), "0.05");
  window.enter("On sale from", 0, "2.30");
  window.enter("Price each", 0, "6.90");
  EXPECT_EQ(window.entry("On sale from", 1), "2.30");
  EXPECT_EQ(window.entry("Price each", 1), "6.90");
  // The start of a series of its own.
  window.enter("Shim series", 1, "B");
  EXPECT_TRUE(window.can_enter("On sale from", 1));
  EXPECT_EQ(window.entry("On sale from", 1), "2.30");
  EXPECT_THAT(remarks(window), HasSubstr("in the same sizes: is that so?"));
  window.enter("On sale from", 0, "2.40");
  EXPECT_EQ(window.entry("On sale from", 1), "2.30");
  // Passing by the other's name loses nothing.
  window.enter("Shim series", 1, "A");
  EXPECT_EQ(window.entry("On sale from", 1), "2.40");
  window.enter("Shim series", 1, "A2");
  EXPECT_EQ(window.entry("On sale from", 1), "2.30");
}

TEST_F(NewBook, entries_of_the_last_book_are_told_until_a_clearance_is_changed) {
  Window window = ask();
  fill_in(window);
  window.choose("Valves per cylinder", 0, "2");
  close(make(window));

  window = ask();
  const auto as_last_time = StartsWith("\u25c6 Filled in as for the last book: check");
  EXPECT_THAT(remarks(window), as_last_time);
  EXPECT_TRUE(window.can_press(make_button));
  window.choose("Kind", 0, "V-twin");
  EXPECT_EQ(sentence(window), "Ready: a book for V-twin, 8 valves.");
  EXPECT_THAT(remarks(window), as_last_time);
  EXPECT_THAT(remarks(window), HasSubstr("\n\u25c6 Check the firing order: cylinder 2 fires 270"));
  EXPECT_TRUE(window.can_press(make_button));
  screen_->picture(PICTURES "/dialog-remarks.png");
  window.enter("Firing order", 0, "1");  // what is wrong is told alone
  EXPECT_EQ(remarks(window), "");
  EXPECT_FALSE(window.can_press(make_button));
  window.enter("Firing order", 0, "1 at 0, 2 at 0");
  EXPECT_THAT(remarks(window), as_last_time);
  window.enter("Largest clearance", 1, "0.30");
  EXPECT_THAT(remarks(window), StartsWith("\u25c6 Cylinders 1 and 2 fire together"));
  EXPECT_TRUE(window.can_press(make_button));
  screen_->picture(PICTURES "/dialog-together.png");
}

TEST_F(NewBook, the_longest_of_what_it_says_has_room) {
  Window window = ask();
  fill_in(window);
  close(make(window));

  window = ask();
  window.choose("Kind", 0, "V-twin");
  window.enter("Shim series", 1, "B");
  EXPECT_THAT(window.labels_cut(), IsEmpty());
  for (const int side : {0, 1}) {
    window.enter("On sale to", side, "3.19");
    window.enter("On sale in steps of", side, "0.07");
  }
  EXPECT_THAT(remarks(window), HasSubstr("serve 6 of 7 gaps"));
  EXPECT_THAT(remarks(window), HasSubstr("last size on sale is 3.18 mm"));
  EXPECT_THAT(remarks(window), HasSubstr("in the same sizes"));
  EXPECT_THAT(window.labels_cut(), IsEmpty());
  window.enter("Smallest clearance", 0, "2.16");
  window.enter("Largest clearance", 0, "2.20");
  EXPECT_THAT(remarks(window), HasSubstr("is the unit right?"));
  EXPECT_THAT(remarks(window), HasSubstr("4 of 7 inlet gaps"));
  EXPECT_THAT(remarks(window), HasSubstr("6 of 7 exhaust gaps"));
  EXPECT_THAT(window.labels_cut(), IsEmpty());
  screen_->picture(PICTURES "/dialog-eight-remarks.png");
  window.choose("Valves per cylinder", 0, "1");
  window.enter("Cylinders", 0, "16");
  window.enter("Firing order", 0,
               "1:0 2:0 3:90 4:90 5:180 6:180 7:270 8:270 9:360 10:360 11:450 12:450 13:540 "
               "14:540 15:630 16:630");
  EXPECT_THAT(remarks(window), HasSubstr("in the same sizes"));
  screen_->picture(PICTURES "/dialog-longest.png");
  EXPECT_THAT(window.labels_cut(), IsEmpty());
}

}  // namespace
}  // namespace shimwright::tests
