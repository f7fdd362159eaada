// SPDX-License-Identifier: MPL-2.0
//
// A book tells some tables of its entries but for the gaps: they may hang on none.
#include <gtest/gtest.h>

#include "core/service/bench_commands.hpp"
#include "core/service/view_parts.hpp"
#include "made_up_service.hpp"

namespace shimwright::tests {
namespace {

TEST(ToldWithoutGaps, says_the_same_whatever_gaps_are_entered) {
  int changed = 0;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    MadeUpService made(seed);
    if (made.chance(0.5) &&
        !rows_for_bench(made.book.service(), findings_in(made.book.service())).empty()) {
      made.book.take_to_bench();
      made.work(made.chance(0.5) ? 1 : 0.5);
    }
    const Service with = made.book.service();
    Service others = with;
    for (auto& valve : others.valves)
      valve.gap = made.chance(0.2)   ? Entry(made.chance(0.5) ? "abc" : std::string(failed_entry))
                  : made.chance(0.5) ? Entry()
                                     : Entry(0.01 * made.whole(0, 60));
    const View view = view_of(with);
    const View other = view_of(others);
    for (const ViewPart& part : view_parts)
      if (is_told_without_gaps(part.name)) {
        EXPECT_EQ(view[part.name], other[part.name]) << part.name << ", seed " << seed;
      }
    if (view["valves"] != other["valves"]) ++changed;
  }
  EXPECT_GE(changed, 290) << "the gaps must matter to what is told of them";
}

TEST(ToldWithoutGaps, is_neither_the_plan_nor_what_is_told_of_a_log) {
  for (const char* table : {"valves", "order", "steps", "picture", "boxes", "drift", "no such"})
    EXPECT_FALSE(is_told_without_gaps(table)) << table;
  EXPECT_TRUE(is_told_without_gaps("measure"));
}

TEST(Gaps, may_stand_in_rows_of_their_own_below_the_valves) {
  const Service service = service_of({{"valve", "1 EX", "", 270.0, "", "", 1.0, "exhaust"},
                                      {"valve", "1 IN", 0.2, 275.0, "", "", 1.0, "inlet"},
                                      {"gap", "1 EX", 0.15},
                                      {"gap", "9 EX", 0.4}});
  ASSERT_EQ(service.valves.size(), 2U);
  EXPECT_EQ(service.valves[0].gap, Entry(0.15));
  EXPECT_EQ(service.valves[1].gap, Entry(0.2)) << "as its own row says";
}

}  // namespace
}  // namespace shimwright::tests
