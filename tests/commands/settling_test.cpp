// SPDX-License-Identifier: MPL-2.0
#include "commands/settling.hpp"

#include <gtest/gtest.h>

#include <com/sun/star/uno/RuntimeException.hpp>
#include <stdexcept>
#include <string>

#include "book/office/uno.hpp"

namespace shimwright::commands {
namespace {

TEST(Settling, that_goes_well_has_no_trouble) {
  Settling settling;
  bool done = false;
  EXPECT_EQ(settling.trouble_in([&] { done = true; }), std::nullopt);
  EXPECT_TRUE(done);
}

TEST(Settling, passes_over_the_changes_it_makes_itself) {
  Settling settling;
  int times = 0;
  settling.trouble_in([&] {
    ++times;
    settling.trouble_in([&] { ++times; });
  });
  EXPECT_EQ(times, 1);
}

TEST(Settling, that_throws_tells_why_and_the_next_change_is_settled) {
  Settling settling;
  EXPECT_EQ(settling.trouble_in([] { throw std::runtime_error("no such field"); }),
            "no such field.");
  EXPECT_EQ(settling.trouble_in([] {
    throw com::sun::star::uno::RuntimeException(book::to_office("no list at ./vcl/list.cxx:12"));
  }),
            "no list.");
  EXPECT_EQ(settling.trouble_in([] { throw 1; }), "LibreOffice gave no reason.");
  bool done = false;
  EXPECT_EQ(settling.trouble_in([&] { done = true; }), std::nullopt);
  EXPECT_TRUE(done);
}

}  // namespace
}  // namespace shimwright::commands
