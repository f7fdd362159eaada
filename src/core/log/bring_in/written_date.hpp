// SPDX-License-Identifier: MPL-2.0
//
// A date as people write it: 2019-05-04, 4.5.2019, 04/05/19, 4 May 2019. Which of two numbers is
// the day depends on where its writer lives, and one date often does not tell; a column of them
// may.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shimwright {

enum class DateOrder { day_first, month_first };

// Days since 30 December 1899, as the office counts them. None where there is no such day, or it
// lies outside 1900 to 2199.
std::optional<double> day_number(int year, int month, int day);

// `2019-05-04`; what is less than a day is dropped. Empty for a number beyond those years.
std::string iso_day(double number);

// What a text stands for in either order; one of them is none where there is no such day.
struct WrittenDate {
  std::optional<double> day_first;
  std::optional<double> month_first;

  std::optional<double> in(DateOrder order) const {
    return order == DateOrder::day_first ? day_first : month_first;
  }
};

// A year of two figures is 1970 to 2069; a time of day behind the date is dropped. None where the
// text is no date in either order.
std::optional<WrittenDate> date_written(std::string_view text);

struct OrderGuess {
  DateOrder order = DateOrder::day_first;
  bool asked = false;  // some date could be read either way, and no other one settles it
};

// Of a column's texts, in their order; what is no date is passed over. A date that can be read in
// one way only settles it; else points between the numbers mean the day first (common practice, no
// source); else the order in which the dates run on rather than to and fro.
OrderGuess order_of(const std::vector<std::string>& texts);

}  // namespace shimwright
