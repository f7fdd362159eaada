// SPDX-License-Identifier: MPL-2.0
#include "office_clock.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

namespace shimwright::bench {

// The office's own process is a child of the program that was started; both name the profile.
clockid_t clock_of(const office::Office& office) {
  const std::string profile = office.profile().argument();
  for (const auto& entry : std::filesystem::directory_iterator("/proc")) {
    std::ifstream file(entry.path() / "cmdline", std::ios::binary);
    const std::string line{std::istreambuf_iterator<char>(file), {}};
    const std::string program = line.substr(0, line.find('\0'));
    clockid_t clock{};
    if (program.ends_with("soffice.bin") && line.find(profile) != std::string::npos &&
        clock_getcpuclockid(std::stoi(entry.path().filename()), &clock) == 0)
      return clock;
  }
  throw std::runtime_error("the office's process is not found");
}

}  // namespace shimwright::bench
