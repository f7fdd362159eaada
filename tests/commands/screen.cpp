// SPDX-License-Identifier: MPL-2.0
#include "screen.hpp"

#include <stdlib.h>

#include <cctype>
#include <chrono>
#include <sstream>
#include <stdexcept>
#include <thread>

namespace shimwright::tests {
namespace {

using std::chrono_literals::operator""ms;
using std::chrono_literals::operator""s;

// The line with the display's number and nothing else; empty until it is there.
std::string display_in(const std::string& output) {
  std::istringstream lines(output);
  for (std::string line; std::getline(lines, line) && !lines.eof();)
    if (!line.empty() && line.find_first_not_of("0123456789") == std::string::npos)
      return ":" + line;
  return {};
}

}  // namespace

Screen::Screen(int width, int height) : width_(width), height_(height) {
  std::string name = (std::filesystem::temp_directory_path() / "shimwright-screen-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("cannot make a folder");
  folder_ = name;
  // Servers that are started at once may reach for one number, and one of them goes.
  constexpr int attempts = 3;
  for (int attempt = 1;; ++attempt) try {
      start();
      return;
    } catch (const std::runtime_error&) {
      manager_.reset();
      server_.reset();
      if (attempt == attempts) throw;
    }
}

void Screen::start() {
  const std::string size = std::to_string(width_) + "x" + std::to_string(height_) + "x24";
  server_.emplace(std::vector<std::string>{"Xvfb", "-displayfd", "1", "-screen", "0", size,
                                           "-nolisten", "tcp", "-fbdir", folder_.string()},
                  std::map<std::string, std::string>{}, folder_ / "server.log");
  const auto deadline = std::chrono::steady_clock::now() + 20s;
  for (;;) {
    const std::string output = server_->output();
    display_ = display_in(output);
    if (!display_.empty()) break;
    if (server_->wait_for(50ms) || std::chrono::steady_clock::now() > deadline)
      throw std::runtime_error("no screen: " + output);
  }
  manager_.emplace(std::vector<std::string>{"openbox", "--sm-disable"},
                   std::map<std::string, std::string>{{"DISPLAY", display_}},
                   folder_ / "manager.log");
  while (!manages_windows()) {
    if (manager_->wait_for(50ms) || std::chrono::steady_clock::now() > deadline)
      throw std::runtime_error("no window manager: " + manager_->output());
  }
  // Else these are another test's, at whose end they would go.
  if (server_->wait_for(300ms) || manager_->wait_for(0ms))
    throw std::runtime_error("no screen of one's own: " + server_->output());
}

Screen::~Screen() {
  manager_.reset();
  server_.reset();
  std::error_code ignored;
  std::filesystem::remove_all(folder_, ignored);
}

// Only a window manager tells how many desktops there are.
bool Screen::manages_windows() const {
  office::Process asked({"xdotool", "get_num_desktops"}, {{"DISPLAY", display_}},
                        folder_ / "tool.log");
  return asked.wait_for(5s) == 0;
}

std::string Screen::run(const std::vector<std::string>& command) const {
  office::Process process(command, {{"DISPLAY", display_}}, folder_ / "tool.log");
  const auto code = process.wait_for(20s);
  if (!code || *code != 0)
    throw std::runtime_error(command.front() + " failed: " + process.output());
  return process.output();
}

void Screen::picture(const std::filesystem::path& file) const {
  std::filesystem::create_directories(file.parent_path());
  // Of PNG's ways to write the same picture one that is quick.
  run({"import", "-window", "root", "-quality", "10", file.string()});
}

void Screen::press(const std::string& keys) const {
  run({"xdotool", "key", "--clearmodifiers", keys});
}

void Screen::type(const std::string& text) const { run({"xdotool", "type", "--", text}); }

void Screen::double_click(int x, int y) const {
  run({"xdotool", "mousemove", std::to_string(x), std::to_string(y), "click", "--repeat", "2",
       "--delay", "80", "1"});
}

void Screen::focus(const std::string& title) const {
  run({"xdotool", "search", "--onlyvisible", "--name", title, "windowfocus", "--sync"});
}

std::string Screen::title_of_focused() const {
  office::Process asked({"xdotool", "getwindowfocus", "getwindowname"}, {{"DISPLAY", display_}},
                        folder_ / "tool.log");
  if (asked.wait_for(20s) != 0) return {};  // it went while it was asked
  // The log keeps what every tool said: the title is its last line.
  const std::string said = asked.output();
  const std::size_t end = said.find_last_not_of('\n') + 1;
  const std::size_t before = said.substr(0, end).rfind('\n');
  const std::size_t begin = before == std::string::npos ? 0 : before + 1;
  return said.substr(begin, end - begin);
}

void Screen::maximize(const std::string& title) const {
  run({"xdotool", "search", "--onlyvisible", "--name", title, "windowmove", "0", "0", "windowsize",
       std::to_string(width_), std::to_string(height_)});
}

}  // namespace shimwright::tests
