// SPDX-License-Identifier: MPL-2.0
//
// The Workings sheet: what was entered, gathered into the tables that the functions take (all in
// mm), and their answers, one call over the whole engine for each column. Every other sheet only
// shows cells of this one, in the unit chosen on Engine.
#pragma once

#include <string>

#include "book/area.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"

namespace shimwright::book {

class WorkingsMap {
 public:
  // A row for each valve. To `locked` the columns are those of the functions' table `valves`.
  enum Valve {
    name,
    series,
    clearance,
    shim,
    min,
    max,
    aim,
    doubt,
    locked,
    marked,
    measured,
    trust,
    now,        // the state
    now_told,   // with its sign
    plan_name,  // from here to `cost`: the columns of the plan
    action,
    from,
    size,
    after,
    then,  // the state afterwards
    margin,
    cost,
    then_told,
    to_do,   // in words
    source,  // where the shim comes from, or what size would serve
    thinnest,
    thickest,
    mark_trouble,
    limits_told,
    then_known,  // `then`, but `again` where the gap now is only known to be below every blade
    apart,       // micrometer and mark too far apart, as a sentence
    kept,        // the state of a valve that keeps a shim nobody need know; else blank
    // The plan as the sheets tell it: with such valves kept, which to the function are unread.
    told_action,
    told_after,
    told_margin,
    left_outside,  // the state of a valve left alone though it reads outside its limits; else blank
    as_text,       // numbers of its entries that are text, with its name
    valve_columns
  };
  // The columns of the answer of SHIM.CHECK; of a size on sale, which row of sizes it is of, and
  // the column; the sentence with its place, blank where it is told already; that in the book's
  // unit, one more length at each step. `told` is the last step.
  static constexpr int lengths_told = 3;
  enum Trouble {
    table,
    row,
    column,
    words,
    of_sizes,
    placed,
    told = placed + lengths_told,
    trouble_columns
  };
  enum Order { order_series, order_size, order_count, order_price, order_cost, order_columns };
  enum Surplus { surplus_series, surplus_size, surplus_count };
  enum Ladder {
    ladder_series,
    ladder_from,
    ladder_to,
    ladder_step,
    ladder_price,
    sizes,
    start,
    ladder_trouble
  };
  // To `price` the columns are those of the functions' table `shims`. The last three are of the
  // rows of sizes: which row it is listed from, and, though another has it cheaper, row and size.
  enum Stock {
    kind,
    stock_series,
    stock_size,
    count,
    price,
    which_ladder,
    raw_ladder,
    raw_size,
    stock_columns
  };

  static constexpr int engine_trouble_rows = 10;
  static constexpr int sale_rows = 240;  // sizes that the rows of sizes on sale may come to
  static constexpr int stock_rows = shims_place::spares + shims_place::singles + sale_rows;

  explicit WorkingsMap(int valves) : valves_(valves) {}

  At at(int valve, Valve column) const { return {column, first_valve + valve}; }
  Area all(Valve column) const { return {at(0, column), at(valves_ - 1, column)}; }
  Area valves() const { return {at(0, name), at(valves_ - 1, locked)}; }

  // Rows `exhaust`, `inlet`, shaped as the table `valves` with nothing read.
  At limit(Side side, Valve column) const {
    return {column, limits_row() + (side == Side::exhaust ? 0 : 1)};
  }
  Area limits() const { return {limit(Side::exhaust, name), limit(Side::inlet, locked)}; }
  static constexpr Valve limit_trouble = marked;  // beside that table
  Area rules() const { return block({0, limits_row() + 4}, 2, 4); }
  // What is said once for the whole book, a row each beside the rules.
  enum Fact {
    unit,
    mm_each,   // mm in one of that unit
    decimals,  // of a length in that unit
    scheme,
    allowed,
    book_doubt,
    tool_there,
    plan_stands,
    sales,            // sizes that the rows of sizes on sale come to
    one_series,       // the series, where both sides take the same
    opens_good,       // may good valves be opened too?
    plan_doubt,       // the doubt that the plan stays clear of the limits by, in mm
    stays_told,       // the valves that stay outside their limits
    plan_box,         // these, and what is amiss anywhere
    near_told,        // the valves that come out near a limit though no doubt is entered
    unmeasured_told,  // the valves whose shim goes into another by its mark alone
    apart_told,       // the shims whose micrometer and mark are far apart
    nothing_listed,   // neither spares nor sizes on sale
    to_list,          // is a shim wanted while nothing is listed? Nobody knows yet whether one fits
    head_grave,       // is it Head, or Shims, that keeps the plan from standing?
    shims_grave,
    troubles_found,  // rows of each of these answers
    engine_troubles_found,
    order_rows,
    surplus_rows,
    facts
  };
  At fact(Fact which) const { return {5, limits_row() + 4 + which}; }

  At blank() const { return {7, limits_row() + 4}; }  // stays so

  // Of the whole engine; what is wrong with a limit stands there once for each valve.
  Area troubles(Trouble column) const { return block({column, troubles_row()}, 1, trouble_rows()); }
  // Of the limits and the rules alone.
  enum EngineTrouble { engine_column, engine_words, engine_told = engine_words + lengths_told };
  Area engine_troubles(EngineTrouble column) const {
    return block({trouble_columns + 1 + column, troubles_row()}, 1, engine_trouble_rows);
  }
  // A line for each sentence about that sheet, or about all.
  enum Box { head_box, shims_box, engine_box, all_box, all_count };
  At trouble_lines(Box which) const {
    return {trouble_columns + 1 + engine_told + 2, troubles_row() + which};
  }
  // The first three as that sheet shows them: where the plan waits for another sheet, it is named.
  At box_lines(Box which) const { return right_of(trouble_lines(which)); }
  Area order(int column) const { return block({column, order_row()}, 1, valves_); }
  Area surplus(int column) const {
    return block({order_columns + 1 + column, order_row()}, 1, valves_);
  }
  At ladder(int index, Ladder column) const { return {column, ladders_row() + index}; }
  Area stock() const { return block({kind, stock_row()}, 5, stock_rows); }
  At spare(int index, Stock column) const { return {column, stock_row() + index}; }
  At single(int index, Stock column) const { return spare(shims_place::spares + index, column); }
  At sale(int index, Stock column) const { return single(shims_place::singles + index, column); }
  int last_row() const { return stock_row() + stock_rows - 1; }

 private:
  static constexpr int first_valve = 4;
  int limits_row() const { return first_valve + valves_ + 2; }
  int troubles_row() const { return limits_row() + 4 + facts + 2; }
  int trouble_rows() const { return 5 * valves_ + 60; }
  int order_row() const { return troubles_row() + trouble_rows() + 2; }
  int ladders_row() const { return order_row() + valves_ + 2; }
  int stock_row() const { return ladders_row() + shims_place::ladders + 2; }

  int valves_;
};

// `$'Workings'.$C$5`.
std::string in_workings(const Area& area);

void make_workings(Sheet& sheet, const Places& places);

}  // namespace shimwright::book
