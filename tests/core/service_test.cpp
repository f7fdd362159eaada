// SPDX-License-Identifier: MPL-2.0
//
// The protocol between a book and the add-in: rows known by their words.
#include "core/service/service.hpp"

#include <gtest/gtest.h>

#include "core/service/view.hpp"

namespace shimwright {
namespace {

using Row = std::vector<Entry>;

TEST(Protocol, rows_are_known_by_their_words_in_any_order_and_case) {
  const Service service = service_of(
      {Row{"valve", "1 EX", 0.2, 270.0, 2.701, "yes", 1.0, "exhaust"},
       Row{"SIDE", "Inlet", 0.16, 0.22, 0.5, "28", 10.0, 50.0}, Row{"setting", "unit", "inch"},
       Row{"spare", 3.0, "28", 2.65, 2.0}, Row{"sizes", 1.0, "28", 2.2, 3.2, 0.05, 6.9},
       Row{"single", 21.0, "28", 2.625, 1.0, 4.5},
       Row{"bench", 1.0, "change", 1.0, "1 EX", 2.7, 2.65, "spare", "x"},
       Row{"recheck", "1 EX", 0.19, "as agreed"}, Row{"setting", "interval", 12000.0},
       Row{"setting", "round", 2.0}, Row{"taken", "list", "today"}, Row{"box", "Head", 80.0, 5.0}});
  EXPECT_EQ(service.unit, Entry("inch"));
  EXPECT_EQ(service.inlet.min, Entry(0.16));
  EXPECT_EQ(service.inlet.closes, Entry(50.0));
  ASSERT_EQ(service.valves.size(), 1U);
  EXPECT_EQ(service.valves[0].name, "1 EX");
  EXPECT_EQ(service.valves[0].micrometer, Entry(2.701));
  EXPECT_EQ(service.valves[0].cylinder, 1);
  EXPECT_EQ(service.valves[0].side, Side::exhaust);
  ASSERT_EQ(service.spares.size(), 1U);
  EXPECT_EQ(service.spares[0].row, 3);
  EXPECT_EQ(service.spares[0].count, Entry(2.0));
  ASSERT_EQ(service.sizes.size(), 1U);
  EXPECT_EQ(service.sizes[0].price, Entry(6.9));
  ASSERT_EQ(service.singles.size(), 1U);
  EXPECT_EQ(service.singles[0].price, Entry(4.5));
  ASSERT_EQ(service.bench.size(), 1U);
  EXPECT_EQ(service.bench[0].done, Entry("x"));
  EXPECT_EQ(service.bench_taken, "today");
  ASSERT_EQ(service.recheck.size(), 1U);
  EXPECT_EQ(service.recheck[0].gap, Entry(0.19));
  EXPECT_EQ(service.recheck[0].left, Entry("as agreed"));
  EXPECT_EQ(service.interval, Entry(12000.0));
  EXPECT_EQ(service.round, Entry(2.0));
  EXPECT_EQ(service.boxes.at("head").lines, 5);
}

// So that a book of one version is read by the next, and the other way round.
TEST(Protocol, unknown_rows_and_values_are_passed_over_and_missing_ones_are_not_given) {
  const Service service = service_of(
      {Row{"arrival", 1.0, 2.0}, Row{"setting", "colour", "blue"}, Row{"setting"}, Row{},
       Row{"", "", ""}, Row{"valve", "1 EX", 0.2}, Row{"setting", "doubt", 0.01, "and more"}});
  ASSERT_EQ(service.valves.size(), 1U);
  EXPECT_EQ(service.valves[0].micrometer, Entry());
  EXPECT_EQ(service.doubt, Entry(0.01));
}

TEST(Protocol, a_blank_row_of_the_bench_is_none) {
  EXPECT_TRUE(service_of({Row{"bench", 1.0, "", "", "", "", "", "", ""}}).bench.empty());
}

// Whatever stands in the cells, a View comes of it, and every text of it has room in a cell.
TEST(Protocol, a_view_comes_of_anything) {
  const Entry strange[] = {Entry(),       Entry("abc"), Entry(std::string(failed_entry)),
                           Entry(-1.0),   Entry(0.0),   Entry(1e300),
                           Entry(2755.0), Entry("0,2"), Entry(std::string(5000, '"')),
                           Entry(0.2)};
  const char* kinds[] = {"setting", "side", "valve", "spare", "sizes", "single", "bench", "box"};
  const char* names[] = {"unit", "exhaust", "1 EX L", "1", "doubt", "firing", "head", "first"};
  std::size_t dice = 1;
  const auto next = [&dice](std::size_t sides) {
    dice = dice * 6364136223846793005U + 1442695040888963407U;
    return (dice >> 33) % sides;
  };
  for (int round = 0; round < 2000; ++round) {
    EntryTable entries;
    for (std::size_t rows = next(12); rows > 0; --rows) {
      Row row{std::string(kinds[next(std::size(kinds))]),
              std::string(names[next(std::size(names))])};
      for (std::size_t values = next(8); values > 0; --values)
        row.push_back(strange[next(std::size(strange))]);
      entries.push_back(std::move(row));
    }
    const View view = view_of(service_of(entries));
    for (const char* name : {"book", "valves", "order", "left over", "steps", "bench", "stops",
                             "sizes", "boxes", "remarks"}) {
      ASSERT_NE(view.table(name), nullptr) << name;
      EXPECT_LE(as_text(*view.table(name)).size(), longest_answer);
    }
  }
}

TEST(Protocol, a_table_is_known_by_its_name_alone) {
  EXPECT_EQ(View().table("arrivals"), nullptr);
  EXPECT_EQ(View().table(""), nullptr);
}

}  // namespace
}  // namespace shimwright
