// SPDX-License-Identifier: MPL-2.0
#include "core/log/log_row.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

TEST(LogRow, has_a_cell_for_each_column_with_lengths_in_the_books_unit) {
  LogRow row{.check = 3,
             .round = 1,
             .date = 44000.0,
             .distance = 61500.0,
             .valve = "1 EX L",
             .gap_found = 0.254_mm,
             .shim_fitted = 2.54_mm,
             .note = "cold"};
  const std::vector<Entry> cells = cells_of(row, Unit::inch);
  ASSERT_EQ(cells.size(), static_cast<std::size_t>(log_columns));
  const auto at = [&cells](LogColumn column) { return cells[static_cast<std::size_t>(column)]; };
  EXPECT_EQ(at(LogColumn::check), Entry(3.0));
  EXPECT_EQ(at(LogColumn::gap_found), Entry(0.01));
  EXPECT_EQ(at(LogColumn::shim_fitted), Entry(0.1));
  EXPECT_EQ(at(LogColumn::shim_found), Entry());
  EXPECT_EQ(at(LogColumn::note), Entry("cold"));
}

}  // namespace
}  // namespace shimwright
