// SPDX-License-Identifier: MPL-2.0
//
// A cell in which nothing stands.
#pragma once

#include "core/entries/entries.hpp"

namespace shimwright {

inline const Entry blank;

}  // namespace shimwright
