// SPDX-License-Identifier: MPL-2.0
//
// What is on a screen, as pixels that can be counted.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <vector>

#include "core/values/palette.hpp"

namespace shimwright::tests {

class Picture {
 public:
  // Reads what a screen shows from the file that its server keeps it in (XWD, 32 bits a pixel).
  // Throws std::runtime_error for anything else.
  static Picture read(const std::filesystem::path& xwd);

  int width() const { return width_; }
  int height() const { return height_; }
  // Of exactly this colour.
  std::size_t count(const Rgb& colour) const;
  bool operator==(const Picture&) const = default;

 private:
  int width_ = 0;
  int height_ = 0;
  std::vector<std::uint32_t> pixels_;  // row by row
};

}  // namespace shimwright::tests
