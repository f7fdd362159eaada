// SPDX-License-Identifier: MPL-2.0
//
// What parts the cells and rows of a table that is handed over as one text: private-use characters,
// as files of XML hold them where control characters would not survive.
#pragma once

#include <string_view>

namespace shimwright {

inline constexpr std::string_view cell_end = "\ue001";
inline constexpr std::string_view row_end = "\ue002";

}  // namespace shimwright
