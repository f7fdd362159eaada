// SPDX-License-Identifier: MPL-2.0
//
// The tables as a person fills them in, and everything in them that makes no sense (trouble.hpp).
// The plan refuses a question with grave trouble; the check lists all trouble, grave or not.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/entries/trouble.hpp"
#include "core/plan/plan.hpp"

namespace shimwright {

// What a cell holds: nothing, a number, or text.
using Entry = std::variant<std::monostate, double, std::string>;

// Rows of equal length; none at all where the table was not given.
using EntryTable = std::vector<std::vector<Entry>>;

struct Entries {
  PlanQuestion question;
  // For each row given below a heading: the valve's index in question.valves, or none where the
  // row is blank. Blank rows at the end are left off.
  std::vector<std::optional<std::size_t>> valve_rows;
  std::vector<Trouble> troubles;  // in order of table, row, column
};

// valves: {name, series, clearance, shim, min, max, aim, doubt, locked, nearest}, at least to max.
// shims:  {kind, series, size, count, price}, at least to size.
// rules:  {name, value}: `touch good`, `work`, `doubt`, `first`, `nearest`.
// Lengths in mm. A first row is a heading, and skipped, where each of clearance, shim, min and max
// (size, and count and price where the table has them) holds text that is no length, and no kind of
// shim stands before them; any other is data. Text where a number is due and blanks count as not
// given; from aim on a blank takes its default. A word under locked that is neither yes nor no
// counts as yes, one under nearest as no.
//
// A number that cannot be is a grave trouble among valves and rules. A row of shims in which
// something cannot be is left out and told, and so is one of a series that no valve takes, once for
// all rows of that series: the plan can do without them. More than 1 000 valves or 20 000 rows of
// shims are a grave trouble; no more are read. Never throws for what the tables hold. Time grows
// with the rows times the logarithm of their number.
Entries read_entries(const EntryTable& valves, const EntryTable& shims, const EntryTable& rules);

// The question, or BadInput with the first grave trouble and its place.
const PlanQuestion& sound_question(const Entries& entries);

// `yes`, `no`, `x`, TRUE and FALSE as text or as 1 and 0, blank (no), in any case; empty for
// anything else.
std::optional<bool> yes_or_no(const Entry& entry);

}  // namespace shimwright
