// SPDX-License-Identifier: MPL-2.0
//
// What an owner's log comes to under a mapping: the rows that would be taken, and those that make
// no sense, each with its reason. Nothing is counted twice and nothing lost: every row that is not
// blank (of a row a check: every valve in it that has anything) is one reading here.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/log/bring_in/mapping.hpp"
#include "core/service/words/told.hpp"

namespace shimwright {

enum class Standing {
  sound,
  unlikely,  // a gap that can hardly be right beside the limits of its valve
  in_log,    // a row of the same valve and date stands in the log
  twice,     // an earlier row of the owner's has the same valve and date
  refused    // makes no sense: it cannot be taken
};

struct Reading {
  int source_row = 0;      // as the owner's sheet counts it
  int source_column = -1;  // of the valve's first column, where a row is a check
  LogRow row;              // check is the owner's number, or 0
  Standing standing = Standing::sound;
  std::vector<Told> why;    // it is not sound, or hardly right
  std::vector<Told> notes;  // of a part that is left out, though the row is taken

  bool can_be_taken() const { return standing != Standing::refused; }
};

struct Preview {
  std::vector<Reading> readings;  // in the owner's order
  std::vector<Told> notes;        // on all of it
  bool own_numbers = false;       // the owner's numbers of checks are kept
};

// Never throws for what the table holds. Time grows with the cells times the logarithm of the log.
Preview previewed(const OwnerTable& table, const Mapping& mapping, const BringInBook& book);

// The readings ticked, as they are to stand in the log: in the order of their checks. A check that
// the log has (by its date, and by its distance where it has no date) keeps its number there;
// others are numbered after the largest one in the log, by date, then distance, unless the owner's
// own numbers are kept. `ticks`: as many as readings; what cannot be taken is passed over.
std::vector<LogRow> rows_taken(const Preview& preview, const std::vector<bool>& ticks,
                               const BringInBook& book);

// Sound readings are ticked, all others not.
std::vector<bool> usual_ticks(const Preview& preview);

}  // namespace shimwright
