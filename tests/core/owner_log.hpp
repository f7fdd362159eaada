// SPDX-License-Identifier: MPL-2.0
//
// Old logs as owners keep them, and a book to bring them into, for the tests.
#pragma once

#include <initializer_list>
#include <string>
#include <variant>
#include <vector>

#include "core/log/bring_in/mapping.hpp"

namespace shimwright {

// A cell as one types it: text, a number, or a date.
struct Typed {
  OwnerCell cell;
  Typed(const char* text)  // NOLINT
      : cell{*text == '\0' ? Entry() : Entry(std::string(text)), false} {}
  Typed(const std::string& text)  // NOLINT
      : cell{text.empty() ? Entry() : Entry(text), false} {}
  Typed(double number) : cell{number, false} {}                    // NOLINT
  Typed(int number) : cell{static_cast<double>(number), false} {}  // NOLINT
};

Typed day(int year, int month, int date);

OwnerTable sheet(std::initializer_list<std::initializer_list<Typed>> rows);

// Of an inline four with sixteen valves, in mm and km, with nothing in its log.
BringInBook invented_log_book();

// Some years of checks of all its valves, as Log holds them.
std::vector<LogRow> invented_log();

}  // namespace shimwright
