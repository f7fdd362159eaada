// SPDX-License-Identifier: MPL-2.0
#include "core/values/palette.hpp"

namespace shimwright {
namespace {

constexpr Rgb rgb(std::uint32_t hex) {
  return {static_cast<std::uint8_t>(hex >> 16), static_cast<std::uint8_t>(hex >> 8),
          static_cast<std::uint8_t>(hex)};
}

// Aubergine and orchid for tight, copper and brass for loose, calm teal for good, bare paper for
// what is not yet read. The dangerous side is the darkest, so it stands out of a page of teal.
// A doubtful state is the paler kin of its sure one, with the same triangle, hollow. The nearest
// fills are 16.8 apart (CIEDE2000; loose? and tight? under tritanopia), 24.1 in normal sight and
// 10.3 in grey print; the weakest text stands 4.9 to 1 on its fill.
constexpr StateLook unread{rgb(0xFCF7E8), rgb(0x4A4436), rgb(0xA89F88), "\u25cb"};
constexpr StateLook tight{rgb(0x592356), rgb(0xFFF3FB), rgb(0x2E0B2C), "\u25bc"};
constexpr StateLook tight_doubtful{rgb(0x9671A6), rgb(0x12061A), rgb(0x57356A), "\u25bd"};
constexpr StateLook good{rgb(0x88D1D9), rgb(0x0B2B30), rgb(0x2F7F8A), "\u25cf"};
constexpr StateLook loose_doubtful{rgb(0xC7984B), rgb(0x241703), rgb(0x85581A), "\u25b3"};
constexpr StateLook loose{rgb(0x97441F), rgb(0xFFF6EE), rgb(0x561F08), "\u25b2"};

}  // namespace

const StateLook& look_of(State state) {
  switch (state) {
    case State::unread:
      return unread;
    case State::tight:
      return tight;
    case State::tight_doubtful:
      return tight_doubtful;
    case State::good:
      return good;
    case State::loose_doubtful:
      return loose_doubtful;
    case State::loose:
      return loose;
  }
  return unread;
}

}  // namespace shimwright
