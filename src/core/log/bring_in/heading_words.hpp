// SPDX-License-Identifier: MPL-2.0
//
// What a column's heading says of it: `Date`, `Odometer (miles)`, `New shim`, `1 EX L gap`.
#pragma once

#include <optional>
#include <string_view>

#include "core/log/bring_in/mapping.hpp"
#include "core/log/bring_in/valve_words.hpp"

namespace shimwright {

struct HeadingWords {
  std::optional<LogColumn> what;
  std::optional<std::size_t> valve;  // the one valve that it names
  ColumnUnit unit = ColumnUnit::none;
  bool after = false;  // the state that the work left: `new`, `after`
};

HeadingWords heading_words_in(std::string_view heading, const ValveNames& names);

}  // namespace shimwright
