// SPDX-License-Identifier: MPL-2.0
//
// What the measuring sheet shows.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/service/measuring.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

using testing::ElementsAre;
using testing::StartsWith;

std::vector<std::string> column(const View& view, std::string_view name) {
  std::vector<std::string> texts;
  const ShownTable& table = view["measure"];
  for (std::size_t row = 1; row <= table.rows.size(); ++row) texts.push_back(table.at(name, row));
  return texts;
}

// By hand: an inline four, 1-3-4-2, is measured at cylinder 1's and at cylinder 4's TDC.
TEST(MeasuringSheet, lists_the_valves_of_a_side_together_stop_by_stop) {
  const View view = ServiceEntries().view();
  EXPECT_THAT(column(view, "name 1"), ElementsAre("1 EX L", "1 IN L", "2 IN L", "3 EX L", "2 EX L",
                                                  "3 IN L", "4 EX L", "4 IN L"));
  EXPECT_THAT(column(view, "name 2"), ElementsAre("1 EX R", "1 IN R", "2 IN R", "3 EX R", "2 EX R",
                                                  "3 IN R", "4 EX R", "4 IN R"));
  EXPECT_THAT(column(view, "name 3"), testing::Each(""));
  EXPECT_THAT(column(view, "stop"), ElementsAre("1", "", "", "", "2", "", "", ""));
  EXPECT_THAT(column(view, "look"),
              ElementsAre("first", "row", "row", "row", "first", "row", "row", "row"));
  EXPECT_EQ(column(view, "box 1"), column(view, "look"));
  EXPECT_EQ(column(view, "box 2"), column(view, "look"));
  EXPECT_THAT(column(view, "box 3"), testing::Each(""));
}

TEST(MeasuringSheet, says_how_to_come_to_each_stop_from_the_one_before) {
  ServiceEntries book;
  book.set("box", "measure", 0, 94.0).set("box", "measure", 1, 4.0);
  EXPECT_THAT(column(book.view(), "come"),
              ElementsAre("Stop 1: turn the crank forwards to TDC on compression of cylinder 1.",
                          "Stop 2: turn the crank forwards to TDC on compression of cylinder 4, "
                          "360\u00b0 on from stop 1.",
                          "These stops assume usual valve timing where Engine leaves it blank.", "",
                          "", "", "", ""));
  EXPECT_THAT(column(book.view(), "come look"), ElementsAre("", "", "note", "", "", "", "", ""));
  for (const char* side : {"exhaust", "inlet"})
    book.set("side", side, 4, 40.0).set("side", side, 5, 40.0);
  EXPECT_EQ(book.view()["measure"].at("come", 3), "") << "the timing is the engine's own";
}

TEST(MeasuringSheet, tells_as_many_stops_as_it_has_lines) {
  ServiceEntries book;
  book.setting("margin", 150.0);
  const std::size_t stops = book.view()["stops"].rows.size();
  ASSERT_GE(stops, 3U);
  const auto lines = static_cast<double>(stops);
  const auto come =
      column(book.set("box", "measure", 0, 94.0).set("box", "measure", 1, lines).view(), "come");
  for (std::size_t i = 1; i < stops; ++i) {
    EXPECT_THAT(come[i], StartsWith("Stop " + std::to_string(i + 1) + ": "));
    EXPECT_THAT(come[i], testing::EndsWith(" on from stop " + std::to_string(i) + "."));
  }
}

// Long cams and a wide margin: four stops or more.
TEST(MeasuringSheet, counts_the_stops_it_has_no_room_for) {
  ServiceEntries book;
  book.setting("margin", 150.0);
  book.set("box", "measure", 0, 94.0).set("box", "measure", 1, 2.0);
  const View view = book.view();
  const std::size_t stops = view["stops"].rows.size();
  ASSERT_GE(stops, 4U);
  const auto come = column(view, "come");
  EXPECT_THAT(come[0], StartsWith("Stop 1: "));
  EXPECT_EQ(come[1], std::to_string(stops - 1) + " more stops: all stand on Head.");
  EXPECT_EQ(come[2], "");
  EXPECT_EQ(column(view, "name 1").size(), 8U) << "no valve is left out";
}

TEST(MeasuringSheet, without_stops_says_why_and_lists_every_valve) {
  ServiceEntries book;
  book.setting("firing", "");
  const View view = book.view();
  EXPECT_THAT(column(view, "come")[0], StartsWith("Firing order: not entered."));
  EXPECT_THAT(column(view, "name 1"), ElementsAre("1 EX L", "1 IN L", "2 EX L", "2 IN L", "3 EX L",
                                                  "3 IN L", "4 EX L", "4 IN L"));
  EXPECT_THAT(column(view, "stop"), testing::Each(""));
  EXPECT_THAT(column(view, "look"),
              ElementsAre("first", "row", "row", "row", "row", "row", "row", "row"));
}

TEST(MeasuringSheet, tells_the_limits_and_the_shim_that_is_known) {
  ServiceEntries book;
  book.limits(0.16, 0.22).mark("1 EX L", 270.0);
  book.mark("1 EX R", 275.0).micrometer("1 EX R", 2.741);
  const View view = book.view();
  EXPECT_EQ(view["measure"].at("limits"), "0.16\u20130.22");
  EXPECT_EQ(view["measure"].at("shim 1"), "2.700") << "as marked, where it was not measured";
  EXPECT_EQ(view["measure"].at("shim 2"), "2.741");
  EXPECT_EQ(view["measure"].at("shim 1", 2), "");
}

TEST(MeasuringSheet, does_not_print_a_gap_that_is_to_be_measured) {
  ServiceEntries book;
  book.gap("1 EX L", 0.123);
  const View view = book.view();
  for (const auto& row : view["measure"].rows)
    for (const std::string& text : row) EXPECT_EQ(text.find("0.123"), std::string::npos) << text;
}

// Three inlet valves stand beside each other; a fourth begins another row.
TEST(MeasuringSheet, has_up_to_three_valves_in_a_row) {
  std::vector<std::vector<Entry>> rows{{"setting", "firing", "1"}};
  for (const char* valve : {"A", "B", "C", "D"})
    rows.push_back({"valve", valve, "", "", "", "", 1.0, "inlet"});
  const View view = view_of(service_of(rows));
  EXPECT_THAT(column(view, "name 1"), ElementsAre("A", "D"));
  EXPECT_THAT(column(view, "name 3"), ElementsAre("C", ""));
  EXPECT_THAT(column(view, "box 3"), ElementsAre("first", ""));
}

}  // namespace
}  // namespace shimwright::tests
