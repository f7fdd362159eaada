// SPDX-License-Identifier: MPL-2.0
#pragma once

#include <string_view>

namespace shimwright::bench {

inline constexpr std::string_view builder_name = "org.shimwright.bench.Builder";

}  // namespace shimwright::bench
