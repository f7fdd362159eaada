// SPDX-License-Identifier: MPL-2.0
#include "core/crank/cylinders.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::string in_words(const std::set<int>& cylinders) {
  std::vector<std::string> names;
  for (const int cylinder : cylinders) names.push_back(std::to_string(cylinder));
  return (names.size() == 1 ? "cylinder " : "cylinders ") + shortened(listed(names));
}

std::string all_of(int cylinders) {
  if (cylinders == 1) return "cylinder 1 only";
  return std::string("cylinders 1 ") + (cylinders == 2 ? "and " : "to ") +
         std::to_string(cylinders);
}

}  // namespace

void check_each_named_once(std::string_view list, Grammar grammar, std::span<const int> named,
                           std::optional<int> cylinders) {
  const int last = cylinders ? *cylinders : named.empty() ? 0 : std::ranges::max(named);
  std::set<int> others;
  std::set<int> twice;
  std::set<int> left_out;
  for (const int cylinder : named)
    if (cylinder < 1 || cylinder > last) others.insert(cylinder);
  for (int cylinder = 1; cylinder <= last; ++cylinder) {
    const auto times = std::ranges::count(named, cylinder);
    if (times == 0) left_out.insert(cylinder);
    if (times > 1) twice.insert(cylinder);
  }
  const std::string ending = grammar == Grammar::singular ? "s" : "";
  std::vector<std::string> troubles;
  if (!others.empty()) troubles.push_back("name" + ending + " " + in_words(others));
  if (!twice.empty())
    troubles.push_back("name" + ending + " " + in_words(twice) + " more than once");
  if (!left_out.empty()) troubles.push_back("leave" + ending + " out " + in_words(left_out));
  if (troubles.empty()) return;
  throw BadInput(std::string(list) + " " + listed(troubles) +
                 (others.empty() ? "" : ": the engine has " + all_of(last)));
}

}  // namespace shimwright
