// SPDX-License-Identifier: MPL-2.0
#include "commands/entries.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <set>
#include <string>

#include "typed_entries.hpp"

namespace shimwright::commands {
namespace {

TEST(Entries, a_usual_engine_fills_in_how_it_lies_and_fires) {
  NewBookEntries entries = first_entries();
  type(entries, Field::engine, "flat four");
  EXPECT_EQ(entries[Field::arrangement], "flat");
  EXPECT_EQ(entries[Field::cylinders], "4");
  EXPECT_EQ(entries[Field::banks], "right 1-3 / left 2-4");
  EXPECT_EQ(entries[Field::firing], "1-3-2-4");
}

TEST(Entries, own_layout_chosen_changes_nothing_else) {
  NewBookEntries entries = first_entries();
  const std::string banks = entries[Field::banks];
  type(entries, Field::engine, own_layout);
  EXPECT_EQ(entries[Field::banks], banks);
  EXPECT_EQ(entries[Field::engine], own_layout);
}

TEST(Entries, another_number_of_cylinders_lies_in_the_usual_way) {
  NewBookEntries entries = first_entries();
  type(entries, Field::cylinders, "5");
  EXPECT_EQ(entries[Field::banks], "1-2-3-4-5");
  EXPECT_EQ(entries[Field::engine], own_layout);
}

TEST(Entries, a_number_half_typed_changes_no_banks) {
  NewBookEntries entries = first_entries();
  for (const char* typed : {"", "0", "99", "x", "1.5"}) {
    type(entries, Field::cylinders, typed);
    EXPECT_EQ(entries[Field::banks], "1-2-3-4") << typed;
  }
}

TEST(Entries, an_engine_that_comes_to_be_a_usual_one_is_called_so) {
  NewBookEntries entries = first_entries();
  type(entries, Field::cylinders, "6");
  EXPECT_EQ(entries[Field::engine], "inline six");
}

TEST(Entries, a_usual_engine_that_fires_otherwise_keeps_its_name) {
  NewBookEntries entries = first_entries();
  type(entries, Field::firing, "1-2-4-3");
  EXPECT_EQ(entries[Field::engine], "inline four");
  EXPECT_EQ(entries[Field::firing], "1-2-4-3");
}

TEST(Entries, a_flat_engine_may_have_its_odd_cylinders_on_the_left) {
  NewBookEntries entries = first_entries();
  type(entries, Field::engine, "flat four");
  type(entries, Field::banks, "right 2-4 / left 1-3");
  EXPECT_EQ(entries[Field::banks], "right 2-4 / left 1-3");
  EXPECT_EQ(entries[Field::engine], own_layout);
}

NewBookEntries on_sale_from(const char* inlet, const char* exhaust) {
  NewBookEntries entries = first_entries();
  entries[Field::inlet_from] = inlet;
  entries[Field::exhaust_from] = exhaust;
  return entries;
}

TEST(Entries, of_one_series_the_exhaust_shows_the_inlets_sizes) {
  NewBookEntries entries = on_sale_from("2.20", "");
  entries[Field::inlet_to] = "3.20";
  entries[Field::inlet_step] = "0.05";
  entries[Field::inlet_price] = "6.90";
  const NewBookEntries seen = as_seen(entries);
  EXPECT_EQ(seen[Field::exhaust_from], "2.20");
  EXPECT_EQ(seen[Field::exhaust_to], "3.20");
  EXPECT_EQ(seen[Field::exhaust_step], "0.05");
  EXPECT_EQ(seen[Field::exhaust_price], "6.90");
  entries[Field::exhaust_series] = "B";
  EXPECT_EQ(as_seen(entries), entries);
}

TEST(Entries, a_series_of_its_own_begins_with_the_inlets_sizes) {
  NewBookEntries entries = on_sale_from("2.20", "");
  type(entries, Field::exhaust_series, "B");
  EXPECT_EQ(entries[Field::exhaust_from], "2.20");
  type(entries, Field::inlet_from, "2.30");
  EXPECT_EQ(as_seen(entries)[Field::exhaust_from], "2.20");
}

TEST(Entries, sizes_of_a_series_of_its_own_outlast_a_name_half_typed) {
  NewBookEntries entries = on_sale_from("2.20", "");
  type(entries, Field::exhaust_series, "B");
  type(entries, Field::exhaust_from, "1.50");
  type(entries, Field::exhaust_series, "A");  // on the way to A2
  EXPECT_EQ(as_seen(entries)[Field::exhaust_from], "2.20");
  type(entries, Field::exhaust_series, "A2");
  EXPECT_EQ(as_seen(entries)[Field::exhaust_from], "1.50");
}

TEST(Entries, a_start_never_changed_is_made_anew_from_the_inlets_sizes) {
  NewBookEntries entries = on_sale_from("2.20", "");
  type(entries, Field::exhaust_series, "");
  type(entries, Field::exhaust_series, "A");
  type(entries, Field::inlet_from, "1.80");
  type(entries, Field::exhaust_series, "B");
  EXPECT_EQ(entries[Field::exhaust_from], "1.80");
}

TEST(Entries, sizes_that_were_not_seen_do_not_come_back_in_the_next_dialog) {
  EXPECT_EQ(without_unseen(on_sale_from("2.20", "1.50"))[Field::exhaust_from], "");
  NewBookEntries apart = on_sale_from("2.20", "1.50");
  apart[Field::exhaust_series] = "B";
  EXPECT_EQ(without_unseen(apart), apart);
}

TEST(Entries, each_field_is_remembered_under_a_name_of_its_own) {
  std::set<std::string_view> keys;
  for (std::size_t i = 0; i < field_count; ++i) keys.insert(key_of(static_cast<Field>(i)));
  EXPECT_EQ(keys.size(), field_count);
  EXPECT_FALSE(keys.contains(""));
}

TEST(Entries, the_configuration_has_room_for_every_field) {
  std::ifstream file(SCHEMA);
  const std::string schema(std::istreambuf_iterator<char>(file), {});
  ASSERT_FALSE(schema.empty());
  for (std::size_t i = 0; i < field_count; ++i) {
    const std::string key(key_of(static_cast<Field>(i)));
    EXPECT_NE(schema.find("<prop oor:name=\"" + key + "\" oor:type=\"xs:string\"/>"),
              std::string::npos)
        << key;
  }
}

}  // namespace
}  // namespace shimwright::commands
