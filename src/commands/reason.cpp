// SPDX-License-Identifier: MPL-2.0
#include "commands/reason.hpp"

#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

constexpr std::string_view place_begins = "at ";  // `at ./sc/source/ui/docuno.cxx:3682`

// Whether the words name a line of a source file, and nothing else.
bool is_place(std::string_view words) {
  const std::size_t line = words.find_last_not_of(all_figures);
  return line != std::string_view::npos && line + 1 < words.size() &&
         words.substr(0, line + 1).ends_with("xx:") &&
         words.find_first_of(" \n", place_begins.size()) == std::string_view::npos;
}

}  // namespace

std::string reason_in(std::string_view message) {
  std::string_view words = trimmed(message);
  const std::size_t place = words.rfind(place_begins);
  if (place != std::string_view::npos && is_place(words.substr(place)))
    words = trimmed(words.substr(0, place));
  if (words.empty()) return "LibreOffice gave no reason.";
  return std::string(words) + (words.ends_with('.') || words.ends_with('!') ? "" : ".");
}

}  // namespace shimwright::commands
