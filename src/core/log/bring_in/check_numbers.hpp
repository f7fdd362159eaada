// SPDX-License-Identifier: MPL-2.0
//
// Which numbers the checks of an owner's log get in ours.
#pragma once

#include "core/log/bring_in/preview.hpp"

namespace shimwright {

// Whether the owner's own numbers can be kept: each has one date, they are no mere count of the
// rows, and none is another check's in the log. Where there are some and they cannot, that is added
// to the preview's notes.
bool settle_own_numbers(Preview& preview, const BringInBook& book);

// Whether the log holds a later check with a smaller number than one of these rows has.
bool is_any_older_than_its_number(const std::vector<LogRow>& rows, const std::vector<LogRow>& log);

}  // namespace shimwright
