// SPDX-License-Identifier: MPL-2.0
//
// Which value of a row of Arrivals an entry is (core/service/entry_value.hpp), by one word.
#pragma once

namespace shimwright::tests {

enum ArrivalValue { series, ordered, price, when, arrived, mark, micrometer };

}  // namespace shimwright::tests
