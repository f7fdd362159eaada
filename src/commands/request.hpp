// SPDX-License-Identifier: MPL-2.0
//
// From the dialog's texts to the service book that is wanted, or to the one sentence that tells
// what stands in its way. No office is needed.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "commands/entries.hpp"
#include "core/engine/layout.hpp"
#include "core/values/length.hpp"

namespace shimwright::commands {

// What goes into the book's cells, as a person would type it there; all of it has been checked.
struct SideRequest {
  std::string min;  // blank, both or neither: still to be looked up
  std::string max;
  std::string series;
};

struct LadderRequest {
  std::string series;
  std::string from;
  std::string to;
  std::string step;
  std::string price;  // may be blank
};

struct BookRequest {
  EngineLayout layout;
  std::string title;
  std::string shims_changed;  // with the camshafts in place or out, as the Engine sheet says it
  std::string unit;           // `mm` or `inch`
  SideRequest inlet;
  SideRequest exhaust;
  // One where both sides take shims of the same series; none of those still to be looked up.
  std::vector<LadderRequest> ladders;
  std::string currency;  // may be blank
};

struct Refusal {
  Field field;           // where the trouble is
  std::string sentence;  // what it is
  bool missing = false;  // nothing is wrong so far: something has yet to be filled in
};

// For messages, in the unit of the form: `0.30 mm`, `0.0787 inch`.
std::string told_in(Unit unit, Length length);

// The first trouble in the order of the fields; what is wrong comes before what is missing.
std::variant<BookRequest, Refusal> read_request(const NewBookEntries& entries);

}  // namespace shimwright::commands
