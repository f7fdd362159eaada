// SPDX-License-Identifier: MPL-2.0
//
// The valves of which something holds, by name, as a sentence lists them.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/service/service.hpp"

namespace shimwright {

// `each` is what is known of the valves, in their order; it may be empty where nothing is.
template <class Known, class Condition>
std::vector<std::string> names_where(const Service& service, const std::vector<Known>& each,
                                     Condition condition) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < each.size(); ++i)
    if (condition(each[i])) names.push_back(service.valves[i].name);
  return names;
}

}  // namespace shimwright
