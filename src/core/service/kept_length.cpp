// SPDX-License-Identifier: MPL-2.0
#include "core/service/kept_length.hpp"

#include <charconv>
#include <cstdint>

namespace shimwright {

std::string kept(const std::optional<Length>& length) {
  return length ? std::to_string(length->nanometres()) : std::string(kept_none);
}

bool read_kept(std::string_view word, std::optional<Length>& length) {
  length.reset();
  if (word == kept_none) return true;
  std::int64_t nanometres = 0;
  const auto end = std::from_chars(word.data(), word.data() + word.size(), nanometres);
  if (end.ec != std::errc() || end.ptr != word.data() + word.size()) return false;
  length = Length::nanometres(nanometres);
  return true;
}

}  // namespace shimwright
