// SPDX-License-Identifier: MPL-2.0
#include "picture.hpp"

#include <algorithm>
#include <array>
#include <fstream>
#include <stdexcept>
#include <string>

namespace shimwright::tests {

// The format is that of X11's XWDFile.h: a head of 32-bit numbers, high byte first, then colours of
// 12 bytes each, then the pixels, each 32 bits as the machine keeps them.
Picture Picture::read(const std::filesystem::path& xwd) {
  enum Field {
    head_size,
    version,
    format,
    depth,
    width,
    height,
    bits = 11,
    line = 12,
    colours = 19
  };
  std::ifstream file(xwd, std::ios::binary);
  std::array<std::uint32_t, 25> head{};
  for (std::uint32_t& field : head)
    for (int i = 0; i < 4; ++i) field = field << 8 | static_cast<std::uint8_t>(file.get());
  if (!file || head[version] != 7 || head[bits] != 32 || head[line] != 4 * head[width])
    throw std::runtime_error("no plain picture: " + xwd.string());
  Picture picture;
  picture.width_ = static_cast<int>(head[width]);
  picture.height_ = static_cast<int>(head[height]);
  picture.pixels_.resize(static_cast<std::size_t>(head[width]) * head[height]);
  file.seekg(static_cast<std::streamoff>(head[head_size]) + 12L * head[colours]);
  file.read(reinterpret_cast<char*>(picture.pixels_.data()),
            static_cast<std::streamsize>(4 * picture.pixels_.size()));
  if (!file) throw std::runtime_error("half a picture: " + xwd.string());
  return picture;
}

std::size_t Picture::count(const Rgb& colour) const {
  const std::uint32_t sought = static_cast<std::uint32_t>(colour.red) << 16 |
                               static_cast<std::uint32_t>(colour.green) << 8 | colour.blue;
  constexpr std::uint32_t all_colours = 0xffffff;
  return static_cast<std::size_t>(std::ranges::count_if(
      pixels_, [sought](std::uint32_t pixel) { return (pixel & all_colours) == sought; }));
}

}  // namespace shimwright::tests
