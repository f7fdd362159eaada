// SPDX-License-Identifier: MPL-2.0
//
// The dialog of New service book by keys alone, as someone without a mouse uses it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <thread>
#include <vector>

#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

class NewBookKeys : public NewBook {
 protected:
  void SetUp() override {
    open();
    // A window just come up may not have the keyboard yet.
    ASSERT_TRUE(comes_true([&] {
      screen_->press("alt+f");
      return window_->focused() == "Firing order 0";
    })) << window_->focused();
    screen_->press("alt+k");
    ASSERT_TRUE(focus_comes_to("Kind 0")) << window_->focused();
  }
  void open() {
    window_.emplace(ask());
    fill_in(*window_);
    screen_->focus(dialog_title);
    ASSERT_TRUE(window_->can_press(make_button)) << sentence(*window_);
  }
  void TearDown() override {
    window_.reset();
    NewBook::TearDown();
  }

  bool comes_to(const char* label, const char* entry) {
    return comes_true([&] { return window_->entry(label) == entry; }, std::chrono::seconds(5));
  }
  bool focus_comes_to(const std::string& where) {
    return comes_true([&] { return window_->focused() == where; }, std::chrono::seconds(5));
  }

  // Whatever would come of the last key has come by then.
  bool stays_open() {
    return !comes_true([] { return !window_titled(*office_, dialog_title); },
                       std::chrono::milliseconds(1500)) &&
           new_documents().empty();
  }

  std::optional<Window> window_;
};

TEST_F(NewBookKeys, fill_in_all_that_is_needed) {
  screen_->press("alt+c");  // Cylinders
  screen_->type("3");
  screen_->press("Tab");  // Banks, filled in by the number
  screen_->press("Tab");
  screen_->type("1-3-2");
  screen_->press("alt+s");  // Smallest clearance, inlet
  screen_->type("0.1");
  screen_->press("Tab");
  screen_->type("0.2");
  ASSERT_TRUE(comes_true([&] { return window_->entry("Smallest clearance", 1) == "0.2"; }))
      << window_->entry("Smallest clearance", 1);
  EXPECT_EQ(window_->entry("Cylinders"), "3");
  EXPECT_EQ(window_->entry("Banks"), "1-2-3");
  EXPECT_EQ(window_->entry("Firing order"), "1-3-2");
  EXPECT_EQ(window_->entry("Smallest clearance", 0), "0.1");
  screen_->press("Return");
  EXPECT_TRUE(dialog_closes());
  new_document();
}

struct Stop {
  const char* where;  // label and place
  const char* key;    // the letter that leads there; none for the second column
};
constexpr Stop stops[] = {{"Kind 0", "k"},
                          {"Arrangement 0", "a"},
                          {"Cylinders 0", "c"},
                          {"Banks 0", "b"},
                          {"Firing order 0", "f"},
                          {"Shims changed 0", "n"},
                          {"Unit 0", "u"},
                          {"Currency 0", "e"},
                          {"Valves per cylinder 0", "v"},
                          {"Valves per cylinder 1", ""},
                          {"Smallest clearance 0", "s"},
                          {"Smallest clearance 1", ""},
                          {"Largest clearance 0", "l"},
                          {"Largest clearance 1", ""},
                          {"Shim series 0", "h"},
                          {"Shim series 1", ""},
                          {"On sale from 0", "r"},
                          {"On sale from 1", ""},
                          {"On sale to 0", "t"},
                          {"On sale to 1", ""},
                          {"On sale in steps of 0", "p"},
                          {"On sale in steps of 1", ""},
                          {"Price each 0", "i"},
                          {"Price each 1", ""},
                          {"Make the book", ""},
                          {"Cancel", ""}};

TEST_F(NewBookKeys, tab_goes_through_all_of_it_pane_by_pane_and_row_by_row) {
  window_->enter("Shim series", 1, "B");  // else the exhaust's sizes are passed over
  screen_->press("alt+k");
  for (const Stop& stop : stops) {
    EXPECT_TRUE(focus_comes_to(stop.where)) << window_->focused() << " for " << stop.where;
    screen_->press("Tab");
  }
  EXPECT_TRUE(focus_comes_to("Kind 0")) << window_->focused();
}

TEST_F(NewBookKeys, a_letter_leads_to_each_row) {
  for (const Stop& stop : stops) {
    if (*stop.key == 0) continue;
    screen_->press(std::string("alt+") + stop.key);
    EXPECT_TRUE(focus_comes_to(stop.where)) << stop.key << " leads to " << window_->focused();
  }
}

TEST_F(NewBookKeys, every_field_is_read_aloud_with_the_head_of_its_column) {
  for (const std::string label : {"Kind", "Arrangement", "Cylinders", "Banks", "Firing order",
                                  "Shims changed", "Unit", "Currency"})
    EXPECT_EQ(window_->spoken(label), label);
  for (const std::string label :
       {"Valves per cylinder", "Smallest clearance", "Largest clearance", "Shim series",
        "On sale from", "On sale to", "On sale in steps of", "Price each"}) {
    EXPECT_EQ(window_->spoken(label, 0), label + ", inlet");
    EXPECT_EQ(window_->spoken(label, 1), label + ", exhaust");
  }
}

TEST_F(NewBookKeys, enter_as_soon_as_the_dialog_is_open_makes_no_book) {
  window_->press("Cancel");
  ASSERT_TRUE(dialog_closes());
  open();
  ASSERT_TRUE(focus_comes_to("Kind 0")) << window_->focused();
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
}

TEST_F(NewBookKeys, enter_in_an_open_list_chooses_and_makes_no_book) {
  screen_->press("alt+Down");
  std::this_thread::sleep_for(std::chrono::milliseconds(500));
  screen_->picture(PICTURES "/dialog-list.png");
  screen_->press("Down");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
  EXPECT_TRUE(comes_to("Kind", "inline six")) << window_->entry("Kind");
}

TEST_F(NewBookKeys, enter_in_a_closed_list_makes_no_book) {
  screen_->press("Down");
  EXPECT_TRUE(comes_to("Kind", "inline six")) << window_->entry("Kind");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
}

TEST_F(NewBookKeys, enter_after_typing_a_choice_makes_no_book) {
  screen_->type("V");
  EXPECT_TRUE(comes_to("Kind", "V4")) << window_->entry("Kind");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
}

TEST_F(NewBookKeys, enter_in_a_field_makes_the_book) {
  screen_->press("alt+f");
  ASSERT_TRUE(focus_comes_to("Firing order 0")) << window_->focused();
  screen_->press("Return");
  EXPECT_TRUE(dialog_closes());
  new_document();
}

TEST_F(NewBookKeys, enter_on_the_button_makes_the_book) {
  screen_->press("shift+Tab");  // round to Cancel
  screen_->press("shift+Tab");
  ASSERT_TRUE(focus_comes_to(make_button)) << window_->focused();
  screen_->press("Return");
  EXPECT_TRUE(dialog_closes());
  new_document();
}

}  // namespace
}  // namespace shimwright::tests
