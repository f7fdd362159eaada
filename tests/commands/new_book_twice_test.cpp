// SPDX-License-Identifier: MPL-2.0
//
// New service book asked for while its dialog is open: there is never a second one.
#include <gtest/gtest.h>

#include <string>

#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

class NewBookTwice : public NewBook {
 protected:
  void SetUp() override { ask().enter("Currency", 0, "beads"); }

  static void expect_one_dialog_with_its_entries() {
    EXPECT_EQ(dialog().entry("Currency"), "beads");
    dialog().press("Cancel");
    EXPECT_TRUE(dialog_closes());
    wait_for_turn();
  }
};

TEST_F(NewBookTwice, over_the_bridge_leaves_the_dialog_as_it_is) {
  dispatch();
  wait_for_turn();
  expect_one_dialog_with_its_entries();
  // It can be asked for again.
  EXPECT_EQ(ask().entry("Currency"), "");
}

TEST_F(NewBookTwice, from_another_window_brings_the_dialog_to_the_front) {
  const std::string other = title_of(open_sheet(*office_));
  screen_->maximize(other);
  screen_->focus(other);
  screen_->press("alt+l");
  screen_->press("n");
  wait_for_turn();
  // In the other window alt+e would open a menu, which keeps the dialog from coming to the front.
  EXPECT_TRUE(comes_true(
      [&other] {
        const std::string title = screen_->title_of_focused();
        return !title.empty() && title.find(other) == std::string::npos;
      },
      std::chrono::seconds(10)));
  screen_->press("alt+e");  // to whatever has the keyboard
  EXPECT_TRUE(
      comes_true([] { return dialog().focused() == "Currency 0"; }, std::chrono::seconds(5)));
  screen_->picture(PICTURES "/dialog-twice.png");
  expect_one_dialog_with_its_entries();
}

}  // namespace
}  // namespace shimwright::tests
