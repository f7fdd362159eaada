// SPDX-License-Identifier: MPL-2.0
#include "core/service/entries_text.hpp"

#include <gtest/gtest.h>

#include <limits>

namespace shimwright {
namespace {

using Row = std::vector<Entry>;

TEST(EntriesText, gives_back_every_entry_as_it_was) {
  const EntryTable entries{
      Row{"setting", "unit", "mm"}, Row{"valve", "1 EX L", 0.1, Entry(), "12", -0.0, 1.0 / 3},
      Row{}, Row{"", "two\nlines", "275"},
      Row{std::numeric_limits<double>::max(), std::numeric_limits<double>::denorm_min(), "\u00b5m",
          "\ue000\u4e00"}};
  EXPECT_EQ(entries_in(as_text(entries)), entries);
  EXPECT_EQ(as_text(EntryTable()), "");
  EXPECT_EQ(entries_in(""), EntryTable());
}

TEST(EntriesText, leaves_out_blanks_at_the_end_of_a_row) {
  EXPECT_EQ(entries_in(as_text({Row{"taken", "list", Entry(), Entry()}})),
            (EntryTable{Row{"taken", "list"}}));
}

TEST(EntriesText, its_own_marks_in_an_entry_do_no_harm) {
  EXPECT_EQ(entries_in(as_text({Row{"a\ue001b\ue002c\ue004d", 2.0}})),
            (EntryTable{Row{"abcd", 2.0}}));
}

TEST(EntriesText, of_any_text_something_is_made) {
  for (const char* text : {"abc", "1.5", "\ue001\ue001\ue002", "\ue004", "1e999\ue001", "\xee"})
    EXPECT_LE(entries_in(text).size(), 1U) << text;
}

}  // namespace
}  // namespace shimwright
