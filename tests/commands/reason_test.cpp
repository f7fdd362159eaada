// SPDX-License-Identifier: MPL-2.0
#include "commands/reason.hpp"

#include <gtest/gtest.h>

namespace shimwright::commands {
namespace {

// As LibreOffice 7.4.7 words them.
TEST(Reason, a_line_of_source_is_none) {
  EXPECT_EQ(reason_in("at ./sc/source/ui/unoobj/docuno.cxx:3682"), "LibreOffice gave no reason.");
  EXPECT_EQ(reason_in(""), "LibreOffice gave no reason.");
  EXPECT_EQ(reason_in(" \n"), "LibreOffice gave no reason.");
}

TEST(Reason, words_before_a_line_of_source_are_one) {
  EXPECT_EQ(reason_in("Binary URP bridge already disposed at ./binaryurp/source/bridge.cxx:1048"),
            "Binary URP bridge already disposed.");
  EXPECT_EQ(reason_in("disk full\nat /build/include/rtl/string.hxx:12"), "disk full.");
}

TEST(Reason, words_with_no_line_of_source_stay) {
  EXPECT_EQ(reason_in("there is no room at present"), "there is no room at present.");
  EXPECT_EQ(reason_in("stopped at line 12"), "stopped at line 12.");
  EXPECT_EQ(reason_in("No room left!"), "No room left!");
  EXPECT_EQ(reason_in("The book is full."), "The book is full.");
}

}  // namespace
}  // namespace shimwright::commands
