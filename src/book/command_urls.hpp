// SPDX-License-Identifier: MPL-2.0
//
// By which URLs buttons and the menu run the commands (src/commands, Addons.xcu).
#pragma once

#include <string_view>

namespace shimwright::book::command {

inline constexpr std::string_view new_book = "vnd.org.shimwright:new-book";
inline constexpr std::string_view measuring_sheet = "vnd.org.shimwright:measuring-sheet";
inline constexpr std::string_view order_placed = "vnd.org.shimwright:order-placed";
inline constexpr std::string_view take_to_bench = "vnd.org.shimwright:take-to-bench";
inline constexpr std::string_view clear_bench = "vnd.org.shimwright:clear-bench";
inline constexpr std::string_view close_check = "vnd.org.shimwright:close-check";
inline constexpr std::string_view bring_in_log = "vnd.org.shimwright:bring-in-log";
inline constexpr std::string_view draw_drift = "vnd.org.shimwright:draw-drift";

}  // namespace shimwright::book::command
