// SPDX-License-Identifier: MPL-2.0
#include <gtest/gtest.h>

#include "core/log/day.hpp"

namespace shimwright {
namespace {

// As Calc shows them: 1 January 1900 is 2, 26 November 2026 is 46 352.
TEST(Day, is_counted_as_the_office_counts) {
  EXPECT_EQ(day_written("1900-01-01"), 2.0);
  EXPECT_EQ(day_written("2026-11-26"), 46352.0);
  EXPECT_EQ(day_written("2000-02-29"), 36585.0);
}

TEST(Day, is_read_as_people_write_it_where_it_can_be_only_one) {
  EXPECT_EQ(day_written(" 26.11.2026 "), 46352.0);
  EXPECT_EQ(day_written("2026-1-2"), day_written("2.1.2026"));
  for (const char* text :
       {"", "26/11/2026", "11/26/2026", "26.11.", "26.11.26", "2026-11", "2026-11-26x",
        "2026-13-01", "2026-02-30", "2026--2-3", "1800-01-01", "yesterday", "46352", "2026-257-01",
        "2026-01-257", "2026-11-26 17:40", "20261-01-01", "+2026-01-01"})
    EXPECT_EQ(day_written(text), std::nullopt) << text;
}

TEST(Day, is_told_in_figures_that_are_read_alike_everywhere) {
  EXPECT_EQ(day_in_figures(46352), "2026-11-26");
  EXPECT_EQ(day_in_figures(46352.7), "2026-11-26");
  for (double day = 2; day < 60000; day += 97) EXPECT_EQ(day_written(day_in_figures(day)), day);
}

}  // namespace
}  // namespace shimwright
