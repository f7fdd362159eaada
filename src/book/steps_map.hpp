// SPDX-License-Identifier: MPL-2.0
//
// Where the stops of the crank and the steps of fitting stand on the Workings sheet, below its
// other tables.
#pragma once

#include "book/area.hpp"
#include "book/places.hpp"

namespace shimwright::book {

class StepsMap {
 public:
  explicit StepsMap(const Places& places);

  // What is said once for the whole engine.
  enum Fact {
    firing,
    inlet_opens,  // from here to `exhaust_closes`: the timing, in the order of the function
    inlet_closes,
    exhaust_opens,
    exhaust_closes,
    margin,
    cams_out,
    stop_rows,     // of the answer of CRANK.STOPS
    stops_said,    // each stop in words, a line each
    crank_wrong,   // what is amiss with the entries about the crank, in a sentence
    step_rows,     // of the answer of SHIM.STEPS
    steps_count,   // steps in it
    list_sum,      // another one as soon as any of the steps is another
    list_code,     // the same in a few letters
    steps_ticked,  // of these, by their own words
    all_ticked,    // is it all of them?
    ticks_astray,  // ticks of another list of steps, or of another row
    first_tick,    // the first one that there is
    done_before,   // are the ticks those of all steps of another list?
    emptied,       // the valves that by the ticks are without a shim now, with that which came out
    left_out,      // the first step that is not ticked
    ticks_wrong,   // what is amiss with the ticks
    unread,        // valves still to be measured, which may yet change the steps
    unread_told,   // `1 EX L is still to be measured`
    steps_wrong,   // why there are no steps, or what they lack
    steps_noted,   // what is worth knowing of them
    fit_loud,      // all that must not be overlooked on Fit, a line each
    fit_next,      // what comes next, where all is well
    facts
  };
  At fact(Fact which) const { return {1, first_ + which}; }
  Area timing() const { return {fact(inlet_opens), fact(exhaust_closes)}; }

  // The answer of CRANK.STOPS.
  enum Stops { stop, angle, cylinder, side, words, stops_columns };
  Area stops(Stops column) const { return block({column, stops_row()}, 1, stops_rows()); }

  // A row for each stop.
  enum StopLine { line_stop, line_words, stop_line_columns };
  At stop_line(int index, StopLine column) const {
    return {stops_columns + 1 + column, stops_row() + index};
  }
  Area stop_lines(StopLine column) const {
    return {stop_line(0, column), stop_line(most_stops_ - 1, column)};
  }
  int most_stops() const { return most_stops_; }

  // Rows of valve and stop, as SHIM.STEPS takes them, stop by stop; blank where the valve is not
  // open at that stop.
  Area open_at() const { return block({0, open_row()}, 2, most_stops_ * valves_); }
  At open_at(int valve, int stop_index) const {
    return {1, open_row() + stop_index * valves_ + valve};
  }
  // The first stop at which the valve is open to the gauge.
  At first_stop(int valve) const { return {6, open_row() + valve}; }

  // The answer of SHIM.STEPS; beside it the words that tick each step as done, with the code of the
  // list, the same without it, and all that the code is made of.
  enum Steps {
    step,
    step_stop,
    step_valve,
    out,
    in,
    from,
    note,
    tick,
    brief,
    whole,
    steps_columns
  };
  Area steps(Steps column) const { return block({column, steps_row()}, 1, most_steps()); }
  At step_at(int index, Steps column) const { return below(steps(column).from, index); }
  int most_steps() const { return 3 * valves_ + 2 * most_stops_; }

  int first_row() const { return first_ - 1; }
  int last_row() const { return steps_row() + most_steps() - 1; }

 private:
  int stops_row() const { return first_ + facts + 2; }
  int stops_rows() const { return 8 * cylinders_; }
  int open_row() const { return stops_row() + stops_rows() + 2; }
  int steps_row() const { return open_row() + most_stops_ * valves_ + 2; }

  int first_;
  int valves_;
  int cylinders_;
  int most_stops_;
};

}  // namespace shimwright::book
