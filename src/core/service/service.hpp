// SPDX-License-Identifier: MPL-2.0
//
// One service of an engine as its book holds it: everything a person enters, as plain data and as
// typed, lengths in the book's unit. What it comes to is the View (view.hpp).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/engine/side.hpp"
#include "core/entries/entries.hpp"

namespace shimwright {

// A formula typed into an entry cell that came to an error is handed on as this text.
inline constexpr std::string_view failed_entry = "#error";

struct Service {
  struct SideEntries {
    Entry min;
    Entry max;
    Entry bias;    // where to aim between them
    Entry series;  // of shims
    Entry opens;   // degrees of crank before dead centre
    Entry closes;  // degrees after
  };
  struct ValveEntries {
    std::string name;
    int cylinder = 0;
    Side side = Side::exhaust;
    Entry gap;
    Entry mark;
    Entry micrometer;
    Entry exception;  // `leave` (also `yes`): it keeps its shim; `nearest`: it may take the nearest
  };
  // A row of spares, or of single sizes on sale; `row` is the number that stands before it.
  struct ShimEntries {
    int row = 0;
    Entry series;
    Entry size;
    Entry count;
    Entry price;  // of sizes on sale
  };
  struct SizesEntries {  // a row of sizes on sale
    int row = 0;
    Entry series;
    Entry from;
    Entry to;
    Entry step;
    Entry price;
  };
  // A step on the bench list, as `Take to the bench` wrote it, and its tick.
  struct BenchEntries {
    std::string kind;  // word_for(Step::Kind)
    Entry stop;
    std::string valve;
    Entry out;
    Entry in;
    std::string from;
    Entry done;
  };

  // A row of Arrivals: one shim, as `Order placed` wrote it and as it came. One that nobody ordered
  // has no ordered size.
  struct ArrivalEntries {
    int row = 0;
    Entry series;
    Entry ordered;  // its size
    Entry price;
    Entry when;     // it was ordered
    Entry arrived;  // any mark; `no`: it is not coming
    Entry mark;
    Entry micrometer;
  };

  // Recheck: a valve's gap after fitting, and why it may be left as it is.
  struct RecheckEntries {
    std::string valve;
    Entry gap;
    Entry left;  // any words: the check may be closed though the valve is not in order
  };

  Entry engine;    // its name
  Entry unit;      // `mm` or `inch`
  Entry language;  // `en`
  Entry half;      // a half as the office writes it: `0.5` or `0,5`
  Entry currency;
  Entry doubt;
  Entry allowed_difference;  // between mark and micrometer
  Entry marks;               // the scheme of marks
  Entry stay_clear;          // plan inside the guard band
  Entry touch_good;
  Entry first;  // `cost` or `aim`
  Entry work;
  Entry nearest;  // every valve may take the nearest shim where none serves
  Entry firing;
  Entry margin;
  Entry camshafts_out;  // `yes`, or `no`
  Entry distance_unit;  // `km`, `miles` or `hours`
  Entry interval;       // between checks, by the manual, in that unit
  Entry earlier;        // what a replaced instrument had counted, to be added to what is read now
  Entry check_number;   // of the check that is under way, once a further round of it was begun
  Entry round;          // of that check
  // What the round before it left in doubt (readings_off.hpp); none: an earlier version made the
  // book, and it has no cell for that.
  std::optional<Entry> readings_off;
  SideEntries exhaust;
  SideEntries inlet;
  std::vector<ValveEntries> valves;
  std::vector<ShimEntries> spares;
  std::map<int, Entry> spare_notes;  // by the row of the spare
  std::vector<SizesEntries> sizes;
  std::vector<ShimEntries> singles;
  std::vector<ArrivalEntries> arrivals;  // every row of the sheet, blank ones too
  std::vector<RecheckEntries> recheck;
  std::vector<BenchEntries> bench;
  std::string drawn;        // what the charts of Drift were drawn from (drift_findings.hpp)
  std::string bench_taken;  // when, as the command wrote it; empty: nothing is on the bench
  std::string gaps_taken;   // the gaps on Head then (gaps_taken.hpp)

  // How much room the sheets' boxes have for remarks.
  struct Room {
    int letters = 100;  // on a line
    int lines = 6;
  };
  std::map<std::string, Room> boxes;  // by the sheet's name in lower case

  const SideEntries& of(Side side) const { return side == Side::exhaust ? exhaust : inlet; }
  SideEntries& of(Side side) { return side == Side::exhaust ? exhaust : inlet; }
};

// The book's protocol: rows {kind, name, value, value, ...}, known by their words in any order.
// Rows and values that this version does not know are passed over; those that are missing are not
// given, so that a book of one version is read by the next.
//
//   setting | engine, unit, language, half, currency, doubt, allowed difference, marks, stay clear,
//             touch good, first, work, nearest, firing, margin, camshafts out, distance unit,
//             interval, earlier distance, check, round, readings off | value
//   side    | exhaust or inlet | min | max | bias | series | opens | closes
//   valve   | 1 EX L | gap | mark | micrometer | leave or nearest | cylinder | exhaust or inlet
//   spare   | 1 | series | size | count
//   note    | 1 | words beside that spare
//   sizes   | 1 | series | from | to | step | price
//   single  | 21 | series | size | count | price
//   arrival | 1 | series | size ordered | price | ordered on | arrived | mark | micrometer
//   recheck | 1 EX L | gap after fitting | why it may stay as it is
//   bench   | 1 | kind | stop | valve | out | in | from | done
//   taken   | list | when | gaps on Head then
//   drawn   | drift | what from
//   box     | head | letters | lines
Service service_of(const EntryTable& entries);

}  // namespace shimwright
