// SPDX-License-Identifier: MPL-2.0
//
// An engine's cylinders count 1, 2, 3 and so on, as its manual numbers them. What lists them, such
// as a firing order or the banks, names each of them once and no others.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace shimwright {

enum class Grammar { singular, plural };

// `list` is what is being read, for the sentence: `the firing order`, `the banks`. Without
// `cylinders` the engine has as many as the highest number named. Throws BadInput.
void check_each_named_once(std::string_view list, Grammar grammar, std::span<const int> named,
                           std::optional<int> cylinders);

}  // namespace shimwright
