// SPDX-License-Identifier: MPL-2.0
//
// The colours of the six states. A state is always told three ways (word, sign, colour with its
// border), and the colours stay apart for readers who see two primaries only and in grey print;
// the palette's test computes that.
#pragma once

#include <cstdint>
#include <string_view>

#include "core/values/verdict.hpp"

namespace shimwright {

struct Rgb {
  std::uint8_t red = 0;
  std::uint8_t green = 0;
  std::uint8_t blue = 0;
};

struct StateLook {
  Rgb fill;
  Rgb text;
  Rgb border;
  std::string_view sign;  // one character, UTF-8, before the word
};

const StateLook& look_of(State state);

}  // namespace shimwright
