// SPDX-License-Identifier: MPL-2.0
#include "core/service/shown_table.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

TEST(ShownTable, a_piece_is_known_by_its_column_and_row) {
  const ShownTable table{{"valve", "gap"}, {{"1 EX", "0.20"}, {"1 IN", "0.12"}}};
  EXPECT_EQ(table.at("gap", 2), "0.12");
  EXPECT_EQ(table.at("valve"), "1 EX");
}

TEST(ShownTable, where_there_is_no_piece_nothing_is_shown) {
  const ShownTable table{{"gap"}, {{"0.20"}}};
  EXPECT_EQ(table.at("shim"), "");
  EXPECT_EQ(table.at("gap", 2), "");
  EXPECT_EQ(table.at("gap", 0), "");
  EXPECT_EQ(ShownTable().at("gap"), "");
}

TEST(ShownTable, putting_a_piece_makes_its_column_and_the_rows_before_it) {
  ShownTable table;
  table.put("gap", 3) = "0.20";
  table.put("shim") = "2.70";
  EXPECT_EQ(table, (ShownTable{{"gap", "shim"}, {{"", "2.70"}, {"", ""}, {"0.20", ""}}}));
}

TEST(ShownTable, comes_back_from_its_text_as_it_was) {
  const ShownTable tables[] = {
      {},
      {{"one"}, {}},
      {{"valve", "note"},
       {{"1 EX", "two lines\nof text"}, {"", ""}, {"\u25bc tight", "0,16\u20130,22; \"quoted\""}}},
  };
  for (const ShownTable& table : tables) EXPECT_EQ(table_in(as_text(table)), table);
}

// As XML keeps neither control characters nor runs of white space.
TEST(ShownTable, its_text_survives_a_file) {
  const std::string text = as_text(ShownTable{{"note"}, {{"a\nb"}}});
  for (const char c : text) EXPECT_GE(static_cast<unsigned char>(c), 0x20);
}

TEST(ShownTable, any_other_text_is_a_table_without_columns) {
  for (const char* text : {"", "gap", "#NAME?", "gap;0.20"})
    EXPECT_TRUE(table_in(text).columns.empty()) << text;
}

TEST(ShownTable, rows_that_a_cell_has_no_room_for_are_left_out_at_the_end) {
  ShownTable table{{"words"}, {}};
  for (int i = 0; i < 1000; ++i) table.rows.push_back({std::string(100, 'a' + i % 26)});
  const std::string text = as_text(table);
  EXPECT_LE(text.size(), longest_answer);
  const ShownTable back = table_in(text);
  ASSERT_GT(back.rows.size(), 250U);
  for (std::size_t i = 0; i < back.rows.size(); ++i) EXPECT_EQ(back.rows[i], table.rows[i]);
}

}  // namespace
}  // namespace shimwright
