// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/written_distance.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

TEST(WrittenDistance, is_read_with_any_mark_between_thousands) {
  for (const char* text : {"12500", "12 500", "12,500", "12.500", "12'500", "12\u202f500",
                           "12\u00a0500", " 12 500 ", "12.500,0", "12,500.0", "+12500"}) {
    const auto read = distance_written(text);
    ASSERT_TRUE(read.has_value()) << text;
    EXPECT_EQ(read->count, 12500) << text;
    EXPECT_EQ(read->unit, std::nullopt) << text;
  }
  EXPECT_EQ(distance_written("1.250.000")->count, 1250000);
  EXPECT_EQ(distance_written("310.5")->count, 310.5);
  EXPECT_EQ(distance_written("310,25")->count, 310.25);
  EXPECT_EQ(distance_written("0.125")->count, 0.125);
  EXPECT_EQ(distance_written("1234.567")->count, 1234.567) << "four figures before it";
}

TEST(WrittenDistance, has_its_unit_behind_it) {
  EXPECT_EQ(distance_written("12500 km")->unit, DistanceUnit::km);
  EXPECT_EQ(distance_written("7 800 mi")->unit, DistanceUnit::miles);
  EXPECT_EQ(distance_written("7 800 mi")->count, 7800);
  EXPECT_EQ(distance_written("310 h")->unit, DistanceUnit::hours);
  EXPECT_EQ(distance_written("310hrs")->unit, DistanceUnit::hours);
}

TEST(WrittenDistance, is_none_where_it_is_something_else) {
  for (const char* text : {"", "km", "12 50", "12.5.0", "1,25,000", "12-500", "12500 kg", "abc",
                           "4.5.2019", "--5", ".", "12 500 500,,1", "1e5"})
    EXPECT_FALSE(distance_written(text).has_value()) << text;
}

TEST(WrittenDistance, a_column_tells_what_a_point_means_in_it) {
  EXPECT_EQ(decimal_mark_in({"12.500", "310.5"}), '.');
  EXPECT_EQ(decimal_mark_in({"12.500", "7.800"}), 0);
  EXPECT_EQ(decimal_mark_in({"1.250,5"}), ',');
  EXPECT_EQ(distance_written("12.500", '.')->count, 12.5);
  EXPECT_EQ(distance_written("12,500", '.')->count, 12500);
}

TEST(WrittenDistance, miles_become_km_and_hours_become_neither) {
  EXPECT_DOUBLE_EQ(*converted(1000, DistanceUnit::miles, DistanceUnit::km), 1609.344);
  EXPECT_DOUBLE_EQ(*converted(1609.344, DistanceUnit::km, DistanceUnit::miles), 1000);
  EXPECT_EQ(converted(310, DistanceUnit::hours, DistanceUnit::hours), 310);
  EXPECT_EQ(converted(310, DistanceUnit::hours, DistanceUnit::km), std::nullopt);
  EXPECT_EQ(converted(310, DistanceUnit::miles, DistanceUnit::hours), std::nullopt);
}

}  // namespace
}  // namespace shimwright
