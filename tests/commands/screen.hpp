// SPDX-License-Identifier: MPL-2.0
//
// A screen of one's own without a monitor (Xvfb) and with a window manager, on which an office's
// windows can be looked at and typed into.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "office/process.hpp"

namespace shimwright::tests {

class Screen {
 public:
  // In pixels. Throws std::runtime_error where one of the two cannot be started.
  explicit Screen(int width = 1280, int height = 860);

  const std::string& display() const { return display_; }  // such as `:99`

  // What is on it now, in the format that the file's name ends in.
  void picture(const std::filesystem::path& file) const;

  // The file in which the server keeps its pixels, always as they are now (XWD).
  std::filesystem::path pixels() const { return folder_ / "Xvfb_screen0"; }

  // Keys as xdotool calls them (`alt+l`, `Tab`, `Return`), to the window that has the focus.
  void press(const std::string& keys) const;
  void type(const std::string& text) const;
  void double_click(int x, int y) const;
  // The window whose title holds these words: gives it the focus; fills the screen with it.
  void focus(const std::string& title) const;
  void maximize(const std::string& title) const;
  // Blank where that window is just going.
  std::string title_of_focused() const;

 private:
  void start();
  bool manages_windows() const;
  std::string run(const std::vector<std::string>& command) const;

  int width_;
  int height_;
  std::filesystem::path folder_;
  std::optional<office::Process> server_;
  std::optional<office::Process> manager_;
  std::string display_;

 public:
  Screen(const Screen&) = delete;
  Screen& operator=(const Screen&) = delete;
  ~Screen();
};

}  // namespace shimwright::tests
