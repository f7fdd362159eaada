// SPDX-License-Identifier: MPL-2.0
//
// New service book by keys from beginning to end, seen from outside: windows by their titles on the
// screen, the book by its cells. It asks no window for its controls, whose interfaces differ from
// one version of the office to the next, so it runs in any of them.
#include <gtest/gtest.h>

#include <chrono>
#include <string>

#include "book/places.hpp"
#include "core/engine/layout.hpp"
#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

class MenuByKeys : public NewBook {
 protected:
  void TearDown() override {
    for (const Document& document : new_documents()) close(document);
  }

  static bool focus_comes_to(const std::string& title) {
    return comes_true([&] { return screen_->title_of_focused().find(title) != std::string::npos; });
  }
};

TEST_F(MenuByKeys, makes_a_book_that_answers) {
  dispatch();
  ASSERT_TRUE(focus_comes_to(dialog_title)) << screen_->title_of_focused();
  const struct {
    const char* field;
    std::initializer_list<const char*> entries;  // from one field to the next
  } typed[] = {
      {"alt+s", {"0.16", "0.22"}}, {"alt+l", {"0.22", "0.28"}}, {"alt+h", {"A", "A"}},
      {"alt+r", {"2.20"}},         {"alt+t", {"3.20"}},         {"alt+p", {"0.05"}},
  };
  // Twice: a window just come up may not have the keyboard yet.
  for (int round = 0; round < 2; ++round)
    for (const auto& [field, entries] : typed) {
      screen_->press(field);
      for (const char* entry : entries) {
        screen_->press("ctrl+a");
        screen_->type(entry);
        screen_->press("Tab");
      }
    }
  screen_->picture(std::string(PICTURES) + "/menu_by_keys.png");
  screen_->press("Return");
  const Document book = new_document();
  screen_->picture(std::string(PICTURES) + "/menu_by_keys_book.png");

  namespace engine = book::engine_place;
  EXPECT_EQ(text_in(book, book::sheet_name::engine, engine::of(Side::inlet, engine::min_row)),
            "0.160");
  const book::Places places(inline_four());
  const book::Card& card = places.head.cards.front();
  ASSERT_TRUE(focus_comes_to(title_of(book))) << screen_->title_of_focused();
  EXPECT_TRUE(comes_true([&] {
    return text_in(book, book::sheet_name::head, card.at(book::card::limits)) ==
           "limits 0.22\u20130.28";
  })) << text_in(book, book::sheet_name::head, card.at(book::card::limits));
}

}  // namespace
}  // namespace shimwright::tests
