// SPDX-License-Identifier: MPL-2.0
//
// The sheets of a book, as tests name where they look.
#pragma once

#include "book/places.hpp"

namespace shimwright::tests {

inline constexpr auto on_read_me = book::sheet_name::read_me;
inline constexpr auto on_engine = book::sheet_name::engine;
inline constexpr auto on_head = book::sheet_name::head;
inline constexpr auto on_shims = book::sheet_name::shims;
inline constexpr auto on_plan = book::sheet_name::plan;
inline constexpr auto on_arrivals = book::sheet_name::arrivals;
inline constexpr auto on_fit = book::sheet_name::fit;
inline constexpr auto on_recheck = book::sheet_name::recheck;
inline constexpr auto on_log = book::sheet_name::log;
inline constexpr auto on_drift = book::sheet_name::drift;

}  // namespace shimwright::tests
