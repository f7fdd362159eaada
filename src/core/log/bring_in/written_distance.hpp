// SPDX-License-Identifier: MPL-2.0
//
// A distance or hours as people write them: `12 500`, `12,500 km`, `12.500`, `7 800 mi`, `310.5 h`.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shimwright {

enum class DistanceUnit { km, miles, hours };

// `km`, `miles`, `hours` and the usual short forms, in any case; none for anything else.
std::optional<DistanceUnit> distance_unit_named(std::string_view word);

struct WrittenDistance {
  double count = 0;
  std::optional<DistanceUnit> unit;  // where one stands behind the number
};

// The mark that is followed, somewhere in these texts, by other than three figures, so that it
// stands before decimals and not between thousands: `.` or `,`; 0 where none tells.
char decimal_mark_in(const std::vector<std::string>& texts);

// `decimal_mark` as above: with 0, a mark before exactly three figures stands between thousands.
// None where the text is something else.
std::optional<WrittenDistance> distance_written(std::string_view text, char decimal_mark = 0);

// None where hours and a distance would have to become each other. 1 mile is 1.609344 km exactly
// (NIST SP 811, appendix B.8).
std::optional<double> converted(double count, DistanceUnit from, DistanceUnit to);

}  // namespace shimwright
