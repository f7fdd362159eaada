// SPDX-License-Identifier: MPL-2.0
//
// A length as a command keeps it in a hidden cell: whole nanometres, `-` where there is none. It is
// read back exactly, whatever the unit of the book is by then.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/values/length.hpp"

namespace shimwright {

inline constexpr std::string_view kept_none = "-";

std::string kept(const std::optional<Length>& length);

// False, with no length, where the word is not what kept() writes.
bool read_kept(std::string_view word, std::optional<Length>& length);

}  // namespace shimwright
