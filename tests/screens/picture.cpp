// SPDX-License-Identifier: MPL-2.0
#include "picture.hpp"

#include <fstream>
#include <stdexcept>
#include <string>

namespace shimwright::tests {

Picture Picture::read(const std::filesystem::path& ppm) {
  std::ifstream file(ppm, std::ios::binary);
  std::string kind;
  int most = 0;
  Picture picture;
  file >> kind >> picture.width_ >> picture.height_ >> most;
  file.get();
  if (!file || kind != "P6" || (most != 255 && most != 65535))
    throw std::runtime_error("no plain picture: " + ppm.string());
  const std::size_t wide = most == 255 ? 1 : 2;  // bytes a value, the high one first
  std::vector<std::uint8_t> all(wide * 3 * static_cast<std::size_t>(picture.width_) *
                                static_cast<std::size_t>(picture.height_));
  file.read(reinterpret_cast<char*>(all.data()), static_cast<std::streamsize>(all.size()));
  if (!file) throw std::runtime_error("half a picture: " + ppm.string());
  for (std::size_t i = 0; i < all.size(); i += wide) picture.bytes_.push_back(all[i]);
  return picture;
}

std::size_t Picture::count(const Rgb& colour) const {
  std::size_t found = 0;
  for (std::size_t i = 0; i < bytes_.size(); i += 3)
    found +=
        bytes_[i] == colour.red && bytes_[i + 1] == colour.green && bytes_[i + 2] == colour.blue
            ? 1
            : 0;
  return found;
}

}  // namespace shimwright::tests
