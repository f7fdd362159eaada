// SPDX-License-Identifier: MPL-2.0
//
// Recheck in the office: after the list is ticked the new gaps are typed there, and each has its
// verdict. Which verdict when: core/recheck_test.cpp.
#include <gtest/gtest.h>

#include <optional>

#include "box_lines.hpp"
#include "fit_cells.hpp"
#include "on_sheets.hpp"

namespace shimwright::tests {
namespace {

namespace in_recheck = book::recheck_place;
using in_recheck::Column;

class RecheckInBook : public ::testing::Test {
 protected:
  std::string shown(int row, Column column) const {
    return demo.shown(on_recheck, in_recheck::at(row, column));
  }
  std::string shown(std::string_view sheet, At at) const { return demo.shown(sheet, at); }
  void fit_all() {
    ASSERT_GT(take_to_bench(demo), 2);
    tick_throughout(demo);
  }
  static int row_of(std::string_view valve) {
    const auto& valves = the_places().valves;
    const auto known = std::ranges::find_if(
        valves, [valve](const ValveId& one) { return name_of(one, the_places().layout) == valve; });
    return static_cast<int>(known - valves.begin());
  }
  // The first valve that was opened, as the list has it.
  int first_opened() const {
    for (int row = 0; row < the_places().count(); ++row)
      if (shown(row, Column::verdict) == "measure it again") return row;
    throw std::runtime_error("no valve was opened");
  }
  void type(int row, double gap) {
    demo.type(on_recheck, in_recheck::at(row, Column::gap), gap);
    demo.recalculate();
  }
  double predicted(int row) const { return std::stod(shown(row, Column::predicted)); }

  OpenBook demo{the_office(), demo_file()};
};

TEST_F(RecheckInBook, is_blank_and_says_fit_first_until_something_is_on_the_bench) {
  for (int row = 0; row < the_places().count(); ++row)
    for (int column = Column::gap_found; column <= Column::left; ++column)
      EXPECT_EQ(shown(row, static_cast<Column>(column)), "");
  EXPECT_TRUE(told_by_box(demo, on_recheck).starts_with("Fit first."));
  EXPECT_TRUE(demo.tells(book::sheet_name::read_me, "Measuring and planning"));
}

TEST_F(RecheckInBook, judges_new_gaps_as_they_are_typed) {
  fit_all();
  const int row = first_opened();
  const std::string gap =
      shown(on_head, the_places().head.cards[static_cast<std::size_t>(row)].value(book::card::gap));
  EXPECT_EQ(shown(row, Column::gap_found), gap);
  EXPECT_NEAR(predicted(row),
              std::stod(gap) + std::stod(shown(row, Column::shim_found)) -
                  std::stod(shown(row, Column::shim_fitted)),
              1e-9);
  type(row, predicted(row));
  EXPECT_EQ(shown(row, Column::verdict), "as predicted");
  EXPECT_EQ(shown(row, Column::state), "\u25cf good");
  EXPECT_EQ(shown(row, Column::difference), "0.000");
  type(row, predicted(row) + 0.05);
  EXPECT_EQ(shown(row, Column::verdict),
            "off by 0.05: not seated, another shim, or a slip of the gauge? measure again");
  EXPECT_EQ(shown(row, Column::difference), "+0.050");
  type(row, 0.60);
  EXPECT_EQ(shown(row, Column::state), "\u25b2 loose");
  EXPECT_TRUE(told_by_box(demo, on_recheck).starts_with("\u2022 Do not call "))
      << told_by_box(demo, on_recheck);
  demo.type(on_recheck, in_recheck::at(row, Column::left), "parts come in May");
  demo.recalculate();
  EXPECT_TRUE(demo.tells(on_recheck, "Left as it is, by what you entered"));
  EXPECT_TRUE(demo.tells(on_recheck, "1 of 16 measured again"));
  EXPECT_TRUE(demo.tells(book::sheet_name::read_me, "On Recheck, ") ||
              demo.tells(book::sheet_name::read_me, "Then measure "));
}

TEST_F(RecheckInBook, tells_of_a_new_gap_that_was_typed_on_head) {
  ASSERT_GT(take_to_bench(demo), 2);
  tick_throughout(demo);
  EXPECT_TRUE(demo.tells(on_head, "Gaps and shims as found. New gaps belong on Recheck."));
  const At gap =
      the_places().head.cards[static_cast<std::size_t>(first_opened())].value(book::card::gap);
  const double before = demo.number(on_head, gap);
  demo.type(on_head, gap, before + 0.03);
  demo.recalculate();
  for (const std::string_view sheet : {on_head, on_fit, on_recheck, book::sheet_name::plan})
    EXPECT_TRUE(demo.tells(sheet, "Enter no new gap on Head")) << sheet;
  demo.type(on_head, gap, before);
  demo.recalculate();
  for (const std::string_view sheet : {on_head, on_fit, on_recheck, book::sheet_name::plan})
    EXPECT_FALSE(demo.tells(sheet, "Enter no new gap on Head")) << sheet;
}

TEST_F(RecheckInBook, takes_new_gaps_and_reasons_and_nothing_else) {
  for (int column = Column::valve; column <= Column::left; ++column) {
    const bool is_entry = column == Column::gap || column == Column::left;
    EXPECT_EQ(demo.locked(on_recheck, in_recheck::at(0, static_cast<Column>(column))), !is_entry)
        << column;
  }
  EXPECT_TRUE(demo.locked(on_recheck, in_recheck::check));
  EXPECT_TRUE(demo.locked(on_recheck, in_recheck::round));
}

}  // namespace
}  // namespace shimwright::tests
