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
    dispatch();
    window_.emplace(dialog());
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

TEST_F(NewBookKeys, enter_in_an_open_list_chooses_and_makes_no_book) {
  screen_->press("alt+k");
  ASSERT_TRUE(focus_comes_to("Kind 0")) << window_->focused();
  screen_->press("alt+Down");
  std::this_thread::sleep_for(std::chrono::milliseconds(500));
  screen_->picture(PICTURES "/dialog-list.png");
  screen_->press("Down");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
  EXPECT_TRUE(comes_to("Kind", "inline six")) << window_->entry("Kind");
}

TEST_F(NewBookKeys, enter_in_a_closed_list_makes_no_book) {
  screen_->press("alt+k");
  screen_->press("Down");
  EXPECT_TRUE(comes_to("Kind", "inline six")) << window_->entry("Kind");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
}

TEST_F(NewBookKeys, enter_after_typing_a_choice_makes_no_book) {
  screen_->press("alt+k");
  screen_->type("V");
  EXPECT_TRUE(comes_to("Kind", "V8")) << window_->entry("Kind");
  screen_->press("Return");
  EXPECT_TRUE(stays_open());
}

TEST_F(NewBookKeys, enter_in_a_field_makes_the_book) {
  screen_->press("alt+k");
  screen_->press("alt+f");
  ASSERT_TRUE(focus_comes_to("Firing 0")) << window_->focused();
  screen_->press("Return");
  EXPECT_TRUE(dialog_closes());
  new_document();
}

TEST_F(NewBookKeys, enter_on_the_button_makes_the_book) {
  screen_->press("alt+k");
  ASSERT_TRUE(focus_comes_to("Kind 0")) << window_->focused();
  screen_->press("shift+Tab");  // round to Cancel
  screen_->press("shift+Tab");
  ASSERT_TRUE(focus_comes_to(make_button)) << window_->focused();
  screen_->press("Return");
  EXPECT_TRUE(dialog_closes());
  new_document();
}

}  // namespace
}  // namespace shimwright::tests
