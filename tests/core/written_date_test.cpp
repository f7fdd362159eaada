// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/written_date.hpp"

#include <gtest/gtest.h>

namespace shimwright {
namespace {

TEST(WrittenDate, day_numbers_are_those_of_the_office) {
  EXPECT_EQ(day_number(1900, 1, 1), 2);
  EXPECT_EQ(day_number(2019, 5, 4), 43589);
  EXPECT_EQ(day_number(2000, 2, 29), 36585);
  EXPECT_EQ(day_number(2019, 2, 29), std::nullopt);
  EXPECT_EQ(day_number(2019, 13, 1), std::nullopt);
  EXPECT_EQ(day_number(1899, 12, 31), std::nullopt);
  EXPECT_EQ(iso_day(43589.73), "2019-05-04");
  EXPECT_EQ(iso_day(-1), "");
}

TEST(WrittenDate, is_read_in_the_ways_that_people_write_it) {
  const auto may_4 = day_number(2019, 5, 4);
  for (const char* text : {"2019-05-04", "2019/5/4", "2019.05.04", "20190504", " 2019-05-04 17:40",
                           "2019-05-04T17:40", "4 May 2019", "4. May 2019", "4th May 2019",
                           "May 4, 2019", "Sat 4 May 2019", "4-may-19", "2019 May 4"}) {
    const auto date = date_written(text);
    ASSERT_TRUE(date.has_value()) << text;
    EXPECT_EQ(date->day_first, may_4) << text;
    EXPECT_EQ(date->month_first, may_4) << text;
  }
  for (const char* text : {"4.5.2019", "04/05/2019", "4-5-19", "04.05.19", "4/5/2019 8:15"}) {
    const auto date = date_written(text);
    ASSERT_TRUE(date.has_value()) << text;
    EXPECT_EQ(date->day_first, may_4) << text;
    EXPECT_EQ(date->month_first, day_number(2019, 4, 5)) << text;
  }
  EXPECT_EQ(date_written("13/05/2019")->month_first, std::nullopt);
  EXPECT_EQ(date_written("1/2/70")->day_first, day_number(1970, 2, 1));
  EXPECT_EQ(date_written("1/2/69")->day_first, day_number(2069, 2, 1));
}

TEST(WrittenDate, is_none_where_it_says_no_day) {
  for (const char* text :
       {"", "spring 2019", "May 2019", "05/2019", "2019", "31.4.2019", "0.15", "1/2/3",
        "1.2.2019 or so", "1 EX L", "12/31", "14/13/2019", "99999999999/1/1", "1/2/201"})
    EXPECT_EQ(date_written(text).has_value(), false) << text;
}

TEST(WrittenDate, one_row_that_reads_one_way_only_settles_the_column) {
  EXPECT_EQ(order_of({"04/05/2019", "13/06/2019"}).order, DateOrder::day_first);
  EXPECT_FALSE(order_of({"04/05/2019", "13/06/2019"}).asked);
  EXPECT_EQ(order_of({"04/05/2019", "06/13/2019"}).order, DateOrder::month_first);
  EXPECT_FALSE(order_of({"04/05/2019", "06/13/2019"}).asked);
}

TEST(WrittenDate, a_column_that_does_not_tell_is_guessed_and_asked_about) {
  const OrderGuess points = order_of({"04.05.2019", "06.07.2020"});
  EXPECT_EQ(points.order, DateOrder::day_first);
  EXPECT_TRUE(points.asked);
  // With the day first the second would come before the first.
  const OrderGuess runs_on = order_of({"04/05/2019", "05/03/2019", "06/01/2019"});
  EXPECT_EQ(runs_on.order, DateOrder::month_first);
  EXPECT_TRUE(runs_on.asked);
  EXPECT_TRUE(order_of({"13/05/2019", "05/13/2019", "04/05/2019"}).asked) << "both ways are there";
  EXPECT_FALSE(order_of({"2019-05-04", "05/05/2019"}).asked) << "nothing to tell apart";
  EXPECT_FALSE(order_of({}).asked);
}

}  // namespace
}  // namespace shimwright
