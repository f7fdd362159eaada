// SPDX-License-Identifier: MPL-2.0
//
// What the dialog that brings in a log shows, in words: a line a column, a line a row, and what
// comes of it all. Lines have columns of their own, for letters of equal width.
#pragma once

#include <string>
#include <vector>

#include "core/log/bring_in/preview.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

// `B   Odometer     12 500, 14 200   distance, km`.
std::string column_line(const OwnerTable& table, const Mapping& mapping, std::size_t column,
                        const BringInBook& book, const Teller& teller);

// What stands over such lines.
std::string columns_heading(const Teller& teller);
std::string readings_heading(const Teller& teller);

// `☑ row 12    2019-05-04  12500  1 EX L  gap 0.15  shim 2.70 > 2.65`, or the reason why it is not
// taken.
std::string reading_line(const Reading& reading, bool tick, const Teller& teller);

// How many rows are taken and how many are not, and why; what is to be looked at before that.
std::string outcome_in_words(const Preview& preview, const std::vector<bool>& ticks,
                             const Mapping& mapping, const BringInBook& book, const Teller& teller);

std::string in_words(std::optional<LogColumn> what, const Teller& teller);
std::string in_words(ColumnUnit unit, const Teller& teller);

}  // namespace shimwright
