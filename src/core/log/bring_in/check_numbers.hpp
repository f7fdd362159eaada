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

}  // namespace shimwright
