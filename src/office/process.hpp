// SPDX-License-Identifier: MPL-2.0
//
// A child process in a group of its own, so that it can be ended together with its children. What
// it prints goes to a file, to be shown when it fails.
#pragma once

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace shimwright::office {

class Process {
 public:
  // Starts command[0] with the rest as its arguments. `environment` is set on top of the present
  // one; an empty value takes the variable away. Throws std::runtime_error where nothing can be
  // started. The child is asked to end when this process dies.
  Process(const std::vector<std::string>& command,
          const std::map<std::string, std::string>& environment,
          const std::filesystem::path& output);
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;
  // Kills the whole group where it still runs.
  ~Process();

  // The exit code, 128 + the signal where one ended it, or empty while it still runs after `time`.
  std::optional<int> wait_for(std::chrono::milliseconds time);

  // The end of what it printed so far.
  std::string output() const;

 private:
  pid_t id_ = 0;
  std::optional<int> code_;
  std::filesystem::path output_;
};

}  // namespace shimwright::office
