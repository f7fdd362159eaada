// SPDX-License-Identifier: MPL-2.0
#include "office/process.hpp"

#include <fcntl.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <thread>

namespace shimwright::office {
namespace {

std::vector<char*> pointers_to(std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  for (std::string& text : texts) pointers.push_back(text.data());
  pointers.push_back(nullptr);
  return pointers;
}

std::vector<std::string> environment_with(const std::map<std::string, std::string>& changes) {
  std::vector<std::string> all;
  for (char** entry = environ; *entry != nullptr; ++entry) {
    const std::string text(*entry);
    if (!changes.contains(text.substr(0, text.find('=')))) all.push_back(text);
  }
  for (const auto& [name, value] : changes)
    if (!value.empty()) all.push_back(name + "=" + value);
  return all;
}

}  // namespace

Process::Process(const std::vector<std::string>& command,
                 const std::map<std::string, std::string>& environment,
                 const std::filesystem::path& output)
    : output_(output) {
  // Everything is laid out beforehand: between fork and exec nothing may ask for memory.
  std::vector<std::string> words = command;
  std::vector<std::string> settings = environment_with(environment);
  const std::vector<char*> arguments = pointers_to(words);
  const std::vector<char*> variables = pointers_to(settings);
  const int file = open(output.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
  if (file < 0) throw std::runtime_error("cannot write " + output.string());
  id_ = fork();
  if (id_ == 0) {
    setpgid(0, 0);
    signal(SIGPIPE, SIG_DFL);
    prctl(PR_SET_PDEATHSIG, SIGTERM);
    dup2(file, STDOUT_FILENO);
    dup2(file, STDERR_FILENO);
    execvpe(arguments.front(), arguments.data(), variables.data());
    _exit(127);
  }
  close(file);
  if (id_ < 0) throw std::runtime_error("cannot start " + command.front());
  setpgid(id_, id_);  // on both sides, so that it holds whichever runs first
}

Process::~Process() {
  if (code_) return;
  kill(-id_, SIGKILL);
  // Those of the group that are children of this process, or have come to be.
  while (waitpid(-id_, nullptr, 0) > 0) {
  }
}

std::optional<int> Process::wait_for(std::chrono::milliseconds time) {
  const auto deadline = std::chrono::steady_clock::now() + time;
  while (!code_) {
    int status = 0;
    if (waitpid(id_, &status, WNOHANG) == id_)
      code_ = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    else if (std::chrono::steady_clock::now() >= deadline)
      break;
    else
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
  }
  return code_;
}

std::string Process::output() const {
  constexpr std::size_t enough = 2000;
  std::ifstream file(output_);
  const std::string all(std::istreambuf_iterator<char>(file), {});
  return all.size() <= enough ? all : "..." + all.substr(all.size() - enough);
}

}  // namespace shimwright::office
