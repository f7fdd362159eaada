// SPDX-License-Identifier: MPL-2.0
//
// Every text that the book and the functions say, by what it means. The texts themselves stand in
// one file a language; a text has blanks for what it is about, which are filled in order
// (teller.hpp). What fills them stands beside each meaning here.
#pragma once

namespace shimwright {

enum class Say {
  // ---- States, actions, trust.
  exhaust,
  inlet,
  unread,
  tight,
  tight_doubtful,
  good,
  loose_doubtful,
  loose,
  limits_unknown,
  shim_unknown,
  state_with_sign,  // sign, word
  state_counted,    // sign, word, how many
  then_state,       // the state with its sign
  measure_again,
  measure_first,
  keep,
  move,
  spare,
  buy,
  none_fits,
  list_shims,
  measure,
  measure_shim,
  measure_gap,
  stays,            // state
  action_and_size,  // action, size
  // ---- Cards and rows of valves.
  limits_span,  // both, as one text
  gap_at_stop,  // number of the stop
  gap,
  as_marked,
  thinner_than_marked,  // by how much
  thicker_than_marked,  // by how much
  unmarked,
  unmeasured,
  left_alone_as_entered,
  no_need_to_measure,
  no_need_on_card,
  from_valve,          // name
  from_valve_measure,  // name
  from_spares,
  to_order,
  no_size_serves,
  needs_span,  // both sizes, as one text
  after,
  spares,
  order,
  measure_it,  // name of the valve it comes from
  nearest,
  leaves_too_tight,  // gap, how far outside
  leaves_too_loose,  // gap, how far outside
  nearest_of,        // valve, size, what it leaves
  // ---- Crank.
  turn_to_tdc,         // cylinders
  turn_past_tdc,       // degrees, cylinder
  turn_on_from,        // degrees, stop
  cylinder_and_sides,  // cylinder, sides
  stop_line,           // number, how to turn, what to measure
  manual_first,
  usual_timing,
  firing_missing,
  firing_unreadable,
  firing_other_engine,  // cylinders
  timing_not_number,
  timing_impossible,
  // ---- Steps of fitting.
  step_turn,        // stop
  step_turn_words,  // how to turn
  step_turn_further,
  step_finish,
  step_finish_camshafts,
  step_leave_empty,
  step_keep_for,  // valve
  step_back_to_spares,
  step_left_over,
  step_stand_in_spare,      // stop at which it comes out
  step_stand_in_out_of,     // valve, stop
  step_stand_in_meant_for,  // valve, stop
  step_borrow,              // size, valves
  step_borrow_series,       // size, series, valves
  steps_maybe_fewer,
  bought,
  stand_in,
  mend_entries,
  gap_unknown,
  // ---- Said once for the book.
  valve_service,
  title_of_sheet,  // engine, sheet
  mm,
  inches,
  lengths_in,  // unit
  sizes_in,    // unit
  doubt_hint,  // the usual doubt
  usual_doubt_mm,
  usual_doubt_inch,
  allowed_note,  // the usual difference
  marks_note_mm,
  marks_note_inch,
  list_shims_first,
  total,
  total_in,      // currency
  plan_heading,  // unit
  plan_heading_mend,
  order_heading,
  order_heading_in,  // currency
  done_of,           // done, all
  no_remarks,
  all_remarks,
  valves_that_want,
  valves_left_outside,
  shims_changed,
  shims_to_change,
  shims_bought,
  shims_to_buy,
  caution_crank,
  caution_camshafts,
  fit_heading,            // unit
  fit_heading_camshafts,  // unit
  nothing,
  // ---- Rows of sizes on sale.
  offers,          // how many, from, to, step
  offers_one,      // size
  offers_cheaper,  // how many
  sizes_counted,   // how many
  sizes_none,
  sizes_beyond,
  // ---- Sheets.
  sheet_engine,
  sheet_head,
  sheet_measure,
  sheet_shims,
  sheet_plan,
  go_on_to,  // sheet
  sheet_arrivals,
  sheet_fit,
  sheet_recheck,
  sheet_log,
  sheet_drift,
  // ---- What the entries are called in a remark.
  exhaust_side,
  inlet_side,
  name_of_engine,
  name_of_unit,
  name_of_language,
  name_of_doubt,
  name_of_allowed,
  name_of_marks,
  name_of_stay_clear,
  name_of_touch_good,
  name_of_first,
  name_of_work,
  name_of_nearest,
  name_of_currency,
  name_of_firing,
  name_of_margin,
  name_of_camshafts,
  name_of_min,
  name_of_max,
  name_of_bias,
  name_of_series,
  name_of_opens,
  name_of_closes,
  name_on_side,  // name, side
  name_of_gap,
  name_of_mark,
  name_of_micrometer,
  name_of_exception,
  name_on_valve,         // valve, name
  name_of_row,           // number
  name_of_row_of_sizes,  // number
  // ---- Remarks of the book: Engine.
  unit_unknown,
  bias_wrong,      // side
  limits_missing,  // side
  entry_failed,    // which entry
  // ---- Head.
  marks_unknown,       // valves with their marks
  far_apart,           // valve, micrometer, mark, difference
  far_apart_scheme,    // likewise, and the scheme by which they would agree
  far_apart_likewise,  // valves
  numbers_as_text,     // where
  exception_unclear,   // valve, the text
  // ---- Shims.
  sizes_give_none,    // row
  sizes_too_many,     // row, most
  sizes_narrow_both,  // width, step, share of a hundred
  sizes_narrow,       // side, width, step, share of a hundred
  led_by,             // place, sentence
  on_shims,           // sentence
  on_arrivals,        // sentence
  // ---- Boxes.
  mend_first,  // sheet
  begin_here,
  begin_on_engine,
  no_faults,
  more_remarks,          // how many
  more_on_drift,         // how many
  arrivals_at_the_edge,  // row, valve, its gap then, state
  bullet,                // sentence
  // ---- Plan.
  valves_counted,     // how many
  stays_left_alone,   // valves
  stays_none_serves,  // valves
  stays_nearest,      // valves
  nearest_listed,     // valves with what the nearest size leaves, as texts
  list_first,
  near_a_limit,   // how many, how near
  known_by_mark,  // valves
  // ---- Arrivals.
  on_order,
  arrived,
  arrival_not_needed,
  arrival_as_ordered,
  arrival_will_do,  // valve
  arrival_send_back,
  arrival_unmeasured,
  arrival_not_coming,
  arrivals_heading,      // unit
  arrivals_tally,        // arrived, all; of what was ordered
  arrivals_not_coming,   // count
  arrivals_unordered,    // count
  arrivals_tallies,      // the one, the other
  arrival_mark_differs,  // row, micrometer, mark, difference
  arrivals_none,
  arrivals_back,        // rows
  arrivals_back_money,  // rows, sum
  arrivals_not_needed,  // rows
  arrivals_to_measure,  // rows
  arrivals_to_come,     // shims with their valves
  arrivals_to_order,    // shims with their valves
  arrivals_complete,
  shim_for_valve,  // size, valve
  shims_counted,   // how many
  shims_missing,   // shims with their valves
  arrivals_note,
  arrivals_ordered,
  arrivals_when,
  arrivals_arrived,
  arrivals_for,
  arrivals_verdict,
  arrivals_row,  // number
  arrivals_arrived_title,
  arrivals_arrived_help,
  arrivals_arrived_due,
  arrivals_mark_title,
  arrivals_micrometer_title,
  // ---- The command Order placed.
  order_placed,
  order_no_sheet,
  order_no_plan,
  order_nothing,
  order_nothing_more,  // shims with their rows
  order_no_room,       // room, shims
  order_row,           // size, row
  order_size,          // how many, size
  order_again,         // shims with their rows, the order
  order_written,       // the order, how many
  // ---- The command Bring in a log.
  bring_in,
  bring_temperature,
  bring_left_out,
  bring_km,
  bring_miles,
  bring_hours,
  bring_unit_none,
  bring_unit_mm,
  bring_unit_hundredths,
  bring_unit_inch,
  bring_unit_thou,
  bring_unit_mark,
  bring_row_a_valve,
  bring_row_a_check,
  bring_no_heading,
  bring_one_heading,
  bring_two_headings,
  bring_day_first,
  bring_month_first,
  bring_no_valve_chosen,
  bring_no_valve,
  bring_valve_unknown,       // the text
  bring_valve_unclear,       // the text, the valves
  bring_valve_unclear_more,  // the text, the first of the valves
  bring_no_date,
  bring_date_unreadable,       // the text
  bring_date_not_day_first,    // the text
  bring_date_not_month_first,  // the text
  bring_distance_unreadable,   // the text
  bring_distance_other,        // the owner's unit, the book's
  bring_length_unreadable,     // of which column, the text
  bring_length_impossible,     // of which column, the number
  bring_length_a_date,         // of which column, the date
  bring_mark_unknown,          // of which column, the text
  bring_failed,                // of which column
  bring_no_reading,
  bring_heading_again,
  bring_in_log_already,
  bring_twice,          // the earlier row
  bring_part_left_out,  // of which column, the text
  bring_column_twice,   // of which column
  bring_numbers_taken,
  bring_numbers_unclear,
  bring_older,
  bring_row,            // its number
  bring_row_at,         // its number, the column's letters
  bring_held_as,        // what, unit
  bring_valve_held_as,  // valve, what
  bring_all_rows,
  bring_rows_left_out,
  bring_taken,  // rows, checks
  bring_nothing_taken,
  bring_refused,       // rows
  bring_have_already,  // rows
  bring_have_twice,    // rows
  bring_unticked,      // rows
  bring_ask_order,
  bring_no_range,
  bring_no_book,
  bring_many_books,
  bring_old_book,
  bring_too_many,  // rows, most
  bring_own_log,
  bring_head_heading,
  bring_head_values,
  bring_head_holds,
  bring_head_place,
  bring_head_remark,
  bring_column,  // its letters
  bring_from,    // the range, its file, the book
  bring_done,    // rows, checks
  // Gaps that can hardly be right.
  bring_gap_large,      // of which column, the largest allowed
  bring_gap_small,      // of which column, the smallest allowed
  bring_have_unlikely,  // rows
  // ---- Fit.
  bench_no_plan,
  bench_no_stop,
  bench_ring,
  bench_nothing,
  bench_nothing_yet,     // valves still to measure
  bench_ready,           // steps
  bench_read_remarks,    // how many
  bench_keep_all,        // what is still to measure
  bench_valve_empty,     // valves
  bench_empty_go_on,     // valves, step
  bench_spoiled,         // valves
  bench_to_have,         // shims, with their valves
  bench_no_gap,          // valves, as below
  bench_no_gap_of,       // valve, span of sizes
  bench_outside,         // valves
  bench_left_out_first,  // what is wrong with the ticks
  bench_left_out,        // step
  bench_left_out_stop,   // step, stop
  bench_changed_idle,
  bench_changed,
  bench_done,
  bench_go_on,
  bench_taken,       // when
  bench_done_count,  // done, all
  // ---- The commands of the bench.
  bench_take,
  bench_clear,
  bench_no_book,
  bench_read_only,
  bench_locked,        // sheet
  bench_nothing_done,  // the reason
  bench_replace,       // done, all
  bench_too_long,      // steps, rows
  bench_empty,
  bench_clear_ask,
  bench_clear_unsure,
  bench_better_closed,
  bench_enter_shims,
  bench_spares_out,
  bench_left_over,
  bench_half_done,      // steps ticked, of
  bench_shim_in_valve,  // valve, size
  bench_all_the_same,
  bench_missing,          // what is missing
  bench_clears_arrivals,  // rows
  // ---- The command Close this check.
  close_check,
  close_another_round,
  close_distance_in,  // unit
  close_no_log,
  close_nothing,
  close_round_of_nothing,
  close_bench_unfinished,    // done, all
  close_unreadable,          // valves
  close_not_measured,        // valves
  close_not_measured_again,  // valves
  close_off,                 // valves
  close_outside,             // valves
  close_say_why,
  close_round_or_say_why,
  close_arrival_unmeasured,   // rows
  close_no_room,              // shims
  close_date_missing,         // today
  close_date_unclear,         // the text, today
  close_date_ahead,           // the day
  close_date_back,            // the day, the latest in the log
  close_distance_missing,     // unit
  close_distance_unclear,     // the text
  close_distance_back,        // the distance, the longest in the log, unit
  close_distance_leap,        // the distance, the longest in the log, unit
  close_temperature_unclear,  // the text
  close_temperature_beyond,   // degrees
  close_ask,                  // what is to be asked
  close_not_yet,
  close_will_do,
  close_to_think_of,
  close_rows,          // rows, check, round, day
  close_at_distance,   // distance, unit
  close_shims,         // valves with both sizes
  close_shim_changed,  // valve, shim found, shim fitted
  close_none_changed,
  close_out_of_drawer,    // sizes
  close_into_drawer,      // sizes with their valves
  close_came_out_of,      // size, valve
  close_not_listed,       // sizes with their valves
  close_is_in,            // size, valve
  close_unused,           // sizes with their rows
  close_on_row,           // size, row
  close_still_on_order,   // rows
  close_in_doubt,         // valves, as below
  close_in_doubt_as,      // valve, state
  close_left_open,        // valves
  close_gaps_lost,        // valves
  close_measure_first,    // valves
  close_shim_differs,     // shims, as below
  close_shim_differs_as,  // valve, size on Head, size by the list
  close_clears,
  close_begins_round,   // round, check
  close_out_of_valve,   // valve, day
  close_bought_unused,  // day
  close_marked,         // size by mark, note
  close_mark_differs,   // shims, as below
  close_marked_as,      // size, size by mark
  done_heading,
  bench_done_title,
  bench_done_help,
  bench_done_due,
  bench_row,  // number of the step
  bench_turn,
  bench_step,
  bench_stop,
  bench_valve,
  bench_out,
  bench_in,
  bench_from,
  bench_note,
  // ---- Recheck.
  recheck_heading,   // unit
  recheck_tally,     // measured again, all
  recheck_round,     // round, check
  recheck_note,      // doubt of both readings, of each
  recheck_no_doubt,  // doubt taken of each, of both
  recheck_caution,
  recheck_as_predicted,
  recheck_off_by,  // by how much
  recheck_due,
  recheck_asked,
  recheck_unpredicted,
  recheck_more,  // by how much
  recheck_less,  // by how much
  recheck_fit_first,
  recheck_nothing,
  recheck_not_yet,     // steps done, all
  recheck_outside,     // valves
  recheck_off,         // valves
  recheck_left,        // valves
  recheck_to_measure,  // valves
  recheck_also,        // valves
  recheck_in_order,
  recheck_again,
  recheck_gap_found,
  recheck_shim_found,
  recheck_shim_fitted,
  recheck_predicted,
  recheck_new_gap,
  recheck_differs,
  recheck_state,
  recheck_why,
  recheck_gap_place,  // valve
  recheck_why_title,
  recheck_why_help,
  recheck_why_due,
  recheck_why_place,  // valve
  check_close,
  head_as_found,
  gaps_changed_on_head,  // valves with the gap of then
  gap_was,               // valve, gap
  gap_was_blank,         // valve
  bench_measured,
  bench_take_ask,
  new_gaps_cleared,  // valves
  new_gaps_entered,  // valves
  // ---- Readings that were off in the last round.
  reading_off_of,    // valve, by how much
  readings_off,      // valves, as above
  readings_off_ask,  // valves, as above
  next_off,          // valves
  next_as_fit_says,  // what Fit says
  // ---- What of the log cannot serve the drift.
  drift_slip,            // row, valve, gap, the largest allowed
  drift_slips_likewise,  // rows, count
  drift_wrong_gap,
  drift_lacks_gap,
  drift_lacks_distance,
  drift_lacks_shim,
  // ---- How the next check is put off.
  drift_longer_thinner,  // valves
  drift_longer_thicker,  // valves
  close_too_soon,        // how, end of the limits to aim nearer to
  close_too_soon_round,  // as above
  close_off_last_round,  // valves
  // ---- The stage of the check, and its next step.
  stage_label,
  stage_next,
  stage_measuring,
  stage_waiting,
  stage_bench,    // steps done, all
  stage_recheck,  // gaps measured again, all
  stage_record,
  stage_not_in_order,
  next_limits,
  next_mend,
  next_measure,            // valves
  next_measure_shims,      // valves
  next_measure_and_shims,  // valves without a gap, valves without a shim
  next_list,
  next_order,
  next_take,
  next_no_steps,
  next_none_serves,
  next_arrivals,
  next_step,     // number
  next_recheck,  // valves
  next_round,    // valves
  next_close,

  // Cells that take entries, on any sheet.
  entry_refused,
  number_refused,  // what is due, where to go back to, a number with this office's mark
  either_decimal_mark,
  choice_due,
  add_in_missing,

  // The hidden sheet that gathers the entries.
  entries_title,
  entries_note,

  // Engine.
  engine_this,
  engine_name,
  engine_name_note,
  engine_name_help,
  engine_name_due,
  engine_unit,
  engine_unit_note,
  engine_unit_help,
  engine_layout,
  engine_single,
  engine_in_line,
  engine_vee,
  engine_flat,
  engine_valves,
  engine_valves_told,
  engine_numbering,
  engine_left_to_right,
  engine_bank,
  engine_limits,
  engine_of_side,
  engine_min,
  engine_max,
  engine_limit_note,
  engine_limit_help,
  engine_limit_due,
  engine_bias,
  engine_bias_note,
  engine_bias_help,
  engine_bias_due,
  engine_aim,
  engine_aim_note,
  engine_series,
  engine_series_note,
  engine_series_help,
  engine_series_due,
  engine_readings,
  engine_doubt,
  engine_doubt_note,
  engine_doubt_help,
  engine_small_length_due,
  engine_allowed,
  engine_allowed_title,
  engine_allowed_help,
  engine_scheme,
  engine_scheme_help,
  engine_plan,
  engine_clear,
  engine_clear_title,
  engine_clear_note,
  engine_clear_help,
  engine_touch,
  engine_touch_note,
  engine_touch_help,
  engine_first,
  engine_first_note,
  engine_first_help,
  engine_nearest,
  engine_nearest_note,
  engine_nearest_help,
  engine_work,
  engine_work_note,
  engine_work_help,
  engine_money_due,
  engine_currency,
  engine_currency_note,
  engine_currency_help,
  engine_currency_due,
  engine_crank,
  engine_firing,
  engine_firing_note,
  engine_firing_help,
  engine_firing_due,
  engine_opens,
  engine_opens_note,
  engine_closes,
  engine_closes_note,
  engine_timing_title,
  engine_timing_help,
  engine_timing_due,
  engine_margin,
  engine_margin_note,
  engine_margin_help,
  engine_margin_due,
  engine_opened,
  engine_opened_note,
  engine_opened_help,
  engine_distance,
  engine_distance_unit,
  engine_distance_unit_note,
  engine_distance_unit_help,
  engine_interval,
  engine_interval_note,
  engine_interval_help,
  engine_interval_due,
  engine_earlier,
  engine_earlier_title,
  engine_earlier_note,
  engine_earlier_help,
  engine_earlier_due,

  // Log.
  log_note,
  log_check,
  log_round,
  log_date,
  log_distance,
  log_valve,
  log_gap_found,
  log_state,
  log_shim_found,
  log_shim_fitted,
  log_gap_left,
  log_predicted,
  log_temperature,
  log_who,
  log_remark,

  // What is odd in the log, and Drift.
  log_odd_unknown,      // name, rows, count
  log_odd_no_valve,     // rows, count
  log_odd_no_distance,  // rows, count
  log_odd_no_date,      // rows, count
  log_odd_day,          // heading, rows, count
  log_odd_text,         // heading, rows, count
  log_odd_gap,          // rows, count
  log_odd_shim,         // rows, count
  log_odd_backwards,    // day, distance, the larger, its day
  log_odd_one_day,      // day, checks
  log_odd_twice,        // valve, rows
  drift_odd_still,      // valves
  drift_heading,        // unit, unit of distance
  drift_tally,          // checks, distance, unit
  drift_next,
  drift_next_line,  // when, why
  drift_at,         // distance, unit
  drift_at_once,
  drift_not_known,
  drift_why_tight,   // valve, distance, unit
  drift_why_loose,   // valve, distance, unit
  drift_why_now,     // valves
  drift_why_manual,  // interval, unit, distance
  drift_why_empty,
  drift_why_no_interval,
  drift_why_few,  // checks
  drift_why_steady,
  drift_closing,
  drift_opening,
  drift_steady,
  drift_checks_of,  // checks
  drift_rate,       // rate, its error
  drift_tight_at,   // distance
  drift_loose_at,   // distance
  drift_no_check,
  drift_one_check,
  drift_two_checks,  // how far
  drift_no_limits,
  drift_no_shim,
  drift_still,
  drift_now_tight,
  drift_now_loose,
  drift_means_closing,
  drift_means_opening,
  drift_means_steady,
  drift_unlike_closing,
  drift_unlike_opening,
  drift_box_now,     // valves
  drift_box_unlike,  // valves
  drift_changed,
  drift_undrawn,
  drift_calm,
  drift_empty,
  drift_column_course,
  drift_column_rate,
  drift_column_meets,
  drift_column_cautious,
  drift_column_words,
  drift_about,
  drift_draw,
  drift_nothing_to_draw,
  drift_no_sheet,
  drift_chart_title,  // cylinder, unit, unit of distance
  drift_chart_band_exhaust,
  drift_chart_band_inlet,
  drift_chart_line,
  drift_chart_cautious,
  drift_chart_changed,

  // Head.
  head_seen,               // side
  head_seen_from_left,     // side, cylinder
  head_seen_banks,         // bank far off, bank near
  head_seen_far_at_left,   // bank far off, bank near
  head_seen_near_at_left,  // bank near, bank far off
  head_bank,               // name
  head_cylinders,          // numbers
  head_cylinder,           // number
  head_continued,          // bank
  head_only_continued,
  head_side,       // side
  head_gap_title,  // valve, here and below
  head_gap_help,
  head_gap_due,
  head_gap_place,
  head_mark_title,
  head_mark_help,
  head_mark_due,
  head_mark_place,
  head_micrometer_title,
  head_micrometer_help,
  head_micrometer_due,
  head_micrometer_place,
  head_exception_title,
  head_exception_help,
  head_exception_due,
  head_exception_place,
  head_caution,

  // Shims.
  shims_paste,
  shims_spares,
  shims_series,
  shims_size,
  shims_count,
  shims_note,
  shims_from,
  shims_to,
  shims_step,
  shims_price,
  shims_comes_to,
  shims_sizes,
  shims_singles,
  shims_spare_row,
  shims_sizes_row,
  shims_single_row,
  shims_series_title,
  shims_series_help,
  shims_series_due,
  shims_size_title,
  shims_size_help,
  shims_size_due,
  shims_from_help,
  shims_to_help,
  shims_step_title,
  shims_step_help,
  shims_step_due,
  shims_count_title,
  shims_spare_count_help,
  shims_single_count_help,
  shims_count_due,
  shims_price_title,
  shims_price_help,
  shims_note_title,
  shims_note_help,
  shims_note_due,
  shims_about_counts,

  // Plan.
  plan_valve,
  plan_shim_now,
  plan_action,
  plan_from,
  plan_new_shim,
  plan_gap_after,
  plan_margin,
  plan_result,
  plan_cost,
  plan_qty,
  plan_left_over,
  plan_outside,
  plan_to_measure,
  plan_to_pay,
  ways_heading,
  ways_note,
  way_as_chosen,
  way_nearest_the_aim,
  way_nothing_bought,
  way_good_valves_opened,
  way_nearest_shims,
  ways_way,
  ways_outside,
  ways_in_doubt,
  ways_changed,
  ways_bought,
  ways_money,
  ways_from_aim,
  picture_heading,
  picture_note,
  picture_gap,
  plan_caution,

  // Measure.
  measure_caution,
  measure_stop,        // number, how to turn
  measure_more_stops,  // how many
  measure_date,
  measure_distance,
  measure_who,
  measure_limits,
  measure_notes,
  measure_hint,
  measure_command,
  measure_no_sheet,

  // Read me first.
  read_me_purpose,
  read_me_before,
  caution_manual,
  caution_cold,
  caution_by_hand,
  caution_shim,
  caution_clean,
  caution_after,
  read_me_steps,
  step_engine,
  step_gaps,
  step_shims,
  step_spares,
  step_plan,
  step_order,
  step_fit,
  step_recheck,
  step_close,
  read_me_stops,
  read_me_tdc,
  read_me_progress,
  read_me_gaps,
  read_me_shims,
  read_me_done,
  read_me_result,
  read_me_remarks,
  // ---- How a list of names ends.
  and_last,  // all but the last, the last

  // ---- Numbers that are entered, as a sentence calls them.
  the_clearance,
  the_shim,
  the_min,
  the_max,
  the_aim,
  the_doubt,
  the_size,
  the_count,
  the_price,
  the_work,

  // ---- What a sentence is about, and where.
  told_of,       // what, the sentence
  told_of_row,   // table, row, the sentence
  told_of_cell,  // table, row, column, the sentence
  left_out,      // what, the sentence
  row_left_out,  // the sentence
  valve_named,   // its name
  spare_of,      // size
  sale_of,       // size
  shim_of,       // size
  rule_touch_good,
  rule_doubt,
  rule_work,
  rule_first,
  rule_nearest,
  rule_named,  // its name, known to nobody

  // ---- Remarks on entries, any table.
  too_few_columns,        // how many, how many are due, their names
  text_where_number_due,  // name of the field, the text
  not_finite,             // name of the field
  negative,               // name of the field, the number
  too_large,              // name of the field, the length
  unlikely,               // name of the field, the length
  no_shim_size,           // the length
  no_shim_size_but_mark,  // the length, the size it is the mark for
  more_than_a_million,    // name of the field, the number
  not_whole,              // name of the field, the number
  neither_yes_nor_no,     // the text

  // ---- Remarks on valves.
  valve_without_name,
  name_twice,  // the earlier row
  reading_without_min,
  reading_without_max,
  min_above_max,    // min, max
  aim_outside,      // aim, min, max
  locked_unclear,   // the text
  nearest_unclear,  // the text
  clearance_zero,
  clearance_twice_max,   // clearance, max
  clearance_fifth_min,   // clearance, min
  doubt_leaves_no_room,  // doubt, what lies between the limits

  // ---- Remarks on shims.
  too_many_valves,  // most
  too_many_rows,    // how many are taken
  size_missing,
  kind_missing,
  neither_spare_nor_sale,  // the text
  series_missing,          // those of the valves
  series_missing_more,     // those of the valves, how many more rows
  series_unknown,          // series, those of the valves
  series_unknown_more,     // series, those of the valves, how many more rows
  no_series,               // in such a list
  other_series,            // at its end
  spare_twice,             // the earlier row
  sale_twice,              // the earlier row
  price_missing,
  prices_missing,  // in how many more rows

  // ---- Remarks on rules.
  rule_missing,          // those known
  rule_unknown,          // those known
  rule_twice,            // the earlier row
  neither_cost_nor_aim,  // the text

  // ---- Remarks on firing angles and on the stops of valves.
  entry_missing,
  not_a_number,        // the text
  not_a_stop,          // the text
  not_a_stops_number,  // the number
  stop_without_valve,
  none_of_the_valves,  // the text

  count  // of them all: keep it last
};

}  // namespace shimwright
