// SPDX-License-Identifier: MPL-2.0
#include "core/service/words/teller.hpp"

namespace shimwright {
namespace {

constexpr Text texts[]{
    // no std::array: clang 14 deduces none of so many
    // ---- States, actions, trust.
    Text{Say::exhaust, "exhaust"},
    Text{Say::inlet, "inlet"},
    Text{Say::unread, "unread"},
    Text{Say::tight, "tight"},
    Text{Say::tight_doubtful, "tight?"},
    Text{Say::good, "good"},
    Text{Say::loose_doubtful, "loose?"},
    Text{Say::loose, "loose"},
    Text{Say::limits_unknown, "limits?"},
    Text{Say::state_with_sign, "{0} {1}"},
    Text{Say::state_counted, "{0} {1} {2}"},
    Text{Say::then_state, "then {0}"},
    Text{Say::measure_again, "measure again"},
    Text{Say::keep, "keep"},
    Text{Say::move, "move"},
    Text{Say::spare, "spare"},
    Text{Say::buy, "buy"},
    Text{Say::none_fits, "none fits"},
    Text{Say::list_shims, "list shims"},
    Text{Say::measure, "measure"},
    Text{Say::measure_shim, "measure shim"},
    Text{Say::measure_gap, "measure gap"},
    Text{Say::stays, "stays {0}"},
    Text{Say::action_and_size, "{0} {1}"},
    // ---- Cards and rows of valves.
    Text{Say::limits_span, "limits {0}"},
    Text{Say::gap_at_stop, "gap, stop {0}"},
    Text{Say::gap, "gap"},
    Text{Say::as_marked, "shim is as marked"},
    Text{Say::thinner_than_marked, "{0} thinner than marked"},
    Text{Say::thicker_than_marked, "{0} thicker than marked"},
    Text{Say::unmarked, "shim has no mark"},
    Text{Say::unmeasured, "shim not measured"},
    Text{Say::left_alone_as_entered, "left alone, as entered"},
    Text{Say::no_need_to_measure, "no need to measure this shim"},
    Text{Say::no_need_on_card, "no need to measure"},
    Text{Say::from_valve, "from {0}"},
    Text{Say::from_valve_measure, "from {0}, measure it"},
    Text{Say::from_spares, "from the spares"},
    Text{Say::to_order, "to order"},
    Text{Say::no_size_serves, "no size serves"},
    Text{Say::needs_span, "needs {0}"},
    Text{Say::after, "after"},
    Text{Say::spares, "spares"},
    Text{Say::order, "order"},
    Text{Say::measure_it, "{0}, measure it"},
    // ---- Crank.
    Text{Say::turn_to_tdc,
         "turn the crank forwards to TDC on compression of {0?cylinder|cylinders} {0}"},
    Text{Say::turn_past_tdc,
         "turn the crank forwards to {0}\u00b0 past TDC on compression of cylinder {1}"},
    Text{Say::turn_on_from, ", {0}\u00b0 on from stop {1}"},
    Text{Say::cylinder_and_sides, "cylinder {0}: {1}"},
    Text{Say::stop_line, "Stop {0}: {1}; measure here: {2}."},
    Text{Say::manual_first, "The manual\u2019s procedure comes first."},
    Text{Say::usual_timing, "These stops assume usual valve timing where Engine leaves it blank."},
    Text{Say::firing_missing,
         "Firing order: not entered. Without it nothing tells where to stop the crank."},
    Text{Say::firing_unreadable,
         "Firing order: name each cylinder once, such as 1-3-4-2; or give the degrees at which "
         "each fires, from 0 to below 720, such as 1 at 0, 2 at 270."},
    Text{Say::firing_other_engine,
         "Firing order: this engine has {0} {0?cylinder|cylinders}, the order names another "
         "number."},
    Text{Say::timing_not_number,
         "Valve timing: degrees are numbers from \u2212180 to 180. Until then the usual ones are "
         "taken."},
    Text{Say::timing_impossible,
         "Valve timing: with these degrees a valve never opens, or its lobe is never clear of "
         "it."},
    // ---- Steps of fitting.
    Text{Say::step_turn,
         "See that every valve has a shim. Then turn the crank by hand, forwards only, to stop "
         "{0}."},
    Text{Say::step_turn_words, "Every valve has its shim? By hand, {0}."},
    Text{Say::step_finish,
         "See that every valve has a shim. Then turn the crank by hand, forwards only, through two "
         "full turns; if it binds, stop. Then measure every gap again."},
    Text{Say::step_finish_camshafts,
         "See that every valve has a shim and put the camshafts back as the manual says. Then turn "
         "the crank by hand, forwards only, through two full turns; if it binds, stop. Then "
         "measure every gap again."},
    Text{Say::step_leave_empty, "Leave this valve empty for the moment."},
    Text{Say::step_keep_for, "Set the shim taken out aside for {0}."},
    Text{Say::step_back_to_spares, "Put the shim taken out back with the spares."},
    Text{Say::step_left_over, "The shim taken out is left over."},
    Text{Say::step_stand_in_spare, "Stand-in: a spare. It comes out again at stop {0}."},
    Text{Say::step_stand_in_out_of,
         "Stand-in: the shim out of {0}. It comes out again at stop {1}."},
    Text{Say::step_stand_in_meant_for,
         "Stand-in: the shim meant for {0}. It comes out again at stop {1}."},
    Text{Say::step_borrow,
         "No stand-in is there: borrow or buy a shim no thicker than {0}. Until then {1} "
         "{1?keeps its shim|keep their shims}."},
    Text{Say::step_borrow_series,
         "No stand-in is there: borrow or buy a shim no thicker than {0}, series {1}. Until then "
         "{2} {2?keeps its shim|keep their shims}."},
    Text{Say::steps_maybe_fewer,
         "(These steps are safe, but there may be a way with fewer turns.)"},
    Text{Say::bought, "bought"},
    Text{Say::stand_in, "stand-in"},
    Text{Say::mend_entries, "correct entries"},
    Text{Say::gap_unknown, "gap?"},
    // ---- Said once for the book.
    Text{Say::valve_service, "Valve service"},
    Text{Say::title_of_sheet, "{0} \u00b7 {1}"},
    Text{Say::mm, "mm"},
    Text{Say::inches, "inches"},
    Text{Say::lengths_in, "Lengths in {0}."},
    Text{Say::sizes_in, "All sizes in {0}."},
    Text{Say::doubt_hint,
         "No feeler reading is exact. Enter its doubt below ({0} is common practice): a gap too "
         "near a limit to be sure of is then marked with a question mark, and the plan keeps that "
         "much further inside the limits."},
    Text{Say::usual_doubt_mm, "0.01 to 0.02 mm"},
    Text{Say::usual_doubt_inch, "0.0004 to 0.0008 in"},
    Text{Say::allowed_note, "Blank: {0}."},
    Text{Say::marks_note_mm, "auto: 275 and 2.75 are 2.75 mm, 2755 is 2.755 mm."},
    Text{Say::marks_note_inch, "auto: .108 is 0.108 in; 275 is 2.75 mm, 2755 is 2.755 mm."},
    Text{Say::list_shims_first, "list shims first"},
    Text{Say::total, "total"},
    Text{Say::total_in, "total, {0}"},
    Text{Say::plan_heading, "Valve by valve; lengths in {0}"},
    Text{Say::plan_heading_mend, "Correct the entries first: no plan can be trusted until then"},
    Text{Say::order_heading, "To order"},
    Text{Say::order_heading_in, "To order; sums in {0}"},
    Text{Say::done_of, "{0} of {1}"},
    Text{Say::no_remarks, "No remarks on the entries"},
    Text{Say::all_remarks, "Remarks on the entries, all of them"},
    Text{Say::valves_that_want, "valves that want a shim"},
    Text{Say::valves_left_outside, "valves still out of limits"},
    Text{Say::shims_changed, "shims changed"},
    Text{Say::shims_to_change, "shims to change"},
    Text{Say::shims_bought, "of these bought"},
    Text{Say::shims_to_buy, "shims to buy"},
    Text{Say::caution_crank,
         "Never turn the crank while a valve is without its shim. Turn it by hand only, and only "
         "the way the engine runs. The engine\u2019s own manual comes first."},
    Text{Say::caution_camshafts,
         "Do not turn the crank while the camshafts are out. Take them out as the engine\u2019s "
         "own manual says: crank position, timing marks, chain or belt, order of the bolts."},
    Text{Say::fit_heading, "Valve by valve, cams in place; sizes in {0}"},
    Text{Say::fit_heading_camshafts, "With the camshafts out; sizes in {0}"},
    Text{Say::nothing, "nothing"},
    // ---- Rows of sizes on sale.
    Text{Say::offers, "{0} sizes, {1} to {2} by {3}"},
    Text{Say::offers_one, "1 size, {0}"},
    Text{Say::offers_cheaper, "; {0} cheaper in another row"},
    Text{Say::sizes_counted, "{0} {0?size|sizes}"},
    Text{Say::sizes_none, "gives no size: from, to and step"},
    Text{Say::sizes_beyond, "too many sizes"},
    // ---- Sheets.
    Text{Say::sheet_engine, "Engine"},
    Text{Say::sheet_head, "Head"},
    Text{Say::sheet_shims, "Shims"},
    Text{Say::sheet_plan, "Plan"},
    Text{Say::sheet_fit, "Fit"},
    // ---- What the entries are called in a remark.
    Text{Say::exhaust_side, "Exhaust side"},
    Text{Say::inlet_side, "Inlet side"},
    Text{Say::name_of_engine, "Name of the engine"},
    Text{Say::name_of_unit, "Unit"},
    Text{Say::name_of_language, "Language"},
    Text{Say::name_of_doubt, "Doubt of a reading"},
    Text{Say::name_of_allowed, "Mark and micrometer may differ by"},
    Text{Say::name_of_marks, "Marks on shims are in"},
    Text{Say::name_of_stay_clear, "Stay clear of the limits by the doubt"},
    Text{Say::name_of_touch_good, "Change shims of good valves too"},
    Text{Say::name_of_first, "Put first"},
    Text{Say::name_of_work, "Work for each shim changed"},
    Text{Say::name_of_currency, "Currency"},
    Text{Say::name_of_firing, "Firing order"},
    Text{Say::name_of_margin, "Clear of the lobe by"},
    Text{Say::name_of_camshafts, "How shims are changed"},
    Text{Say::name_of_min, "Smallest gap allowed"},
    Text{Say::name_of_max, "Largest gap allowed"},
    Text{Say::name_of_bias, "Where to aim"},
    Text{Say::name_of_series, "Shim series"},
    Text{Say::name_of_opens, "Opens, degrees before dead centre"},
    Text{Say::name_of_closes, "Closes, degrees after dead centre"},
    Text{Say::name_on_side, "{0}, {1} side"},
    Text{Say::name_of_gap, "gap"},
    Text{Say::name_of_mark, "mark"},
    Text{Say::name_of_micrometer, "micrometer"},
    Text{Say::name_of_alone, "leave alone"},
    Text{Say::name_on_valve, "{0}, {1}"},
    Text{Say::name_of_row, "Row {0}"},
    Text{Say::name_of_row_of_sizes, "Row of sizes {0}"},
    // ---- Remarks of the book: Engine.
    Text{Say::unit_unknown, "Unit: enter mm or inch. Until then every length is taken in mm."},
    Text{Say::bias_wrong,
         "Where to aim, {0} side: enter a number from 0 to 1. Until then 0.75 is taken."},
    Text{Say::limits_missing, "Enter the smallest and the largest gap allowed, {0} side."},
    Text{Say::entry_failed, "{0}: the cell holds an error. Correct or clear it."},
    // ---- Head.
    Text{Say::marks_unknown, "Marks that stand for no size: {0}."},
    Text{Say::far_apart,
         "{0}: micrometer {1} and mark {2} are {3} apart. Measure this shim again."},
    Text{Say::far_apart_scheme,
         "{0}: micrometer {1} and mark {2} are {3} apart. With marks in {4} they would agree: "
         "choose that on Engine."},
    Text{Say::far_apart_likewise, "Likewise {0}."},
    Text{Say::numbers_as_text,
         "Numbers that are text: {0}. They are read, but type them again, with the same decimal "
         "mark as the other cells: Calc completes other numbers of the column from text."},
    // ---- Shims.
    Text{Say::sizes_give_none, "Row of sizes {0}: from, to and step give no size."},
    Text{Say::sizes_too_many,
         "Row of sizes {0}: all rows together may come to {1} sizes; the rest are left out."},
    Text{Say::sizes_narrow_both,
         "The limits leave {0} and the sizes on sale step by {1}: about {2} gaps in 100 can be "
         "served."},
    Text{Say::sizes_narrow,
         "The {0} limits leave {1} and the sizes on sale step by {2}: about {3} gaps in 100 can be "
         "served."},
    Text{Say::led_by, "{0}: {1}"},
    Text{Say::on_shims, "Shims, {0}"},
    // ---- Boxes.
    Text{Say::mend_first, "{0} has entries to be corrected first."},
    Text{Say::begin_here, "Begin here: enter the smallest and the largest gap allowed."},
    Text{Say::begin_on_engine, "Begin on Engine: the limits are not entered yet."},
    Text{Say::no_faults, "Entries checked: no faults found."},
    Text{Say::more_remarks, "{0} more {0?line|lines}: all stand on Read me first."},
    Text{Say::bullet, "\u2022 {0}"},
    // ---- Plan.
    Text{Say::valves_counted, "{0} {0?valve|valves}"},
    Text{Say::stays_left_alone, "Still out of limits: {0}, left alone, as entered on Head."},
    Text{Say::stays_none_serves,
         "Still out of limits: {0}, no size listed on Shims serves. The size needed stands in the "
         "valve\u2019s row: find one and list it."},
    Text{Say::list_first,
         "Some gaps are out of limits: list the spares and the sizes on sale on Shims first."},
    Text{Say::near_a_limit,
         "{0} {0?gap comes|gaps come} out nearer than {1} to a limit, and no doubt of the readings "
         "is entered. Enter the doubt on Engine, or set Put first to aim there."},
    Text{Say::known_by_mark,
         "Known by the mark alone: the shim of {0}. Measure it when it comes out, before it goes "
         "into another valve."},
    // ---- Fit.
    Text{Say::bench_no_plan, "No steps yet: correct the entries first, as Plan says."},
    Text{Say::bench_no_stop,
         "No steps: a valve whose shim is to be changed is clear of its lobe at none of the "
         "stops."},
    Text{Say::bench_ring,
         "Some shims change places in a ring and need a stand-in that is not there: see the "
         "framed row."},
    Text{Say::bench_nothing, "Nothing to fit: the plan changes no shim."},
    Text{Say::bench_nothing_yet, "Nothing to fit yet: {0} still to be measured."},
    Text{Say::bench_ready,
         "{0} {0?step is|steps are} ready. Take to the bench writes them here as a list that "
         "stands still while you work."},
    Text{Say::bench_read_remarks,
         "{0} {0?remark|remarks} on the entries: read {0?it|them} on Plan before you fit."},
    Text{Say::bench_keep_all,
         "Still to be measured: {0}. They may want a shim that comes out here: keep them all until "
         "then."},
    Text{Say::bench_valve_empty,
         "Do not turn the crank, refit camshafts or clear ticks yet. First fill {0} with a shim no "
         "thicker than the one that came out."},
    Text{Say::bench_empty_go_on,
         "{0} {0?stands|stand} empty: do not turn the crank. Go on with step {1}."},
    Text{Say::bench_spoiled,
         "Do not finish this list: by the gaps entered now, its shims would leave {0} out of "
         "limits. See that every valve has a shim, then clear the bench and take the new steps."},
    Text{Say::bench_left_out_first, "{0}\n\nUntil then no shims are entered on Head."},
    Text{
        Say::bench_left_out,
        "Step {0} is not ticked and a later one is. If it is done, tick it. If not, stop: see that "
        "every valve has a shim, and do that step before you go on."},
    Text{
        Say::bench_left_out_stop,
        "Step {0} is not ticked and a later one is. If it is done, tick it. If not, stop: see that "
        "every valve has a shim, turn the crank forwards to stop {1} again, and do that step "
        "before you go on."},
    Text{Say::bench_changed_idle,
         "The plan has changed since this list was taken to the bench, and nothing of it is done: "
         "clear the bench and take the new steps."},
    Text{Say::bench_changed,
         "The plan has changed since this list was taken to the bench. The list stands: finish it, "
         "measure every gap again, then clear the bench."},
    Text{Say::bench_done,
         "All steps are done. Clear the bench, which can enter the new shims on Head. Then measure "
         "every gap again and enter it there."},
    Text{Say::bench_go_on,
         "Tick each step when it is done: x, yes or the date. The list stands still, whatever is "
         "entered on other sheets."},
    Text{Say::bench_taken, "taken {0}"},
    Text{Say::bench_done_count, "{0} of {1} done"},
    // ---- The commands of the bench.
    Text{Say::bench_take, "Take to the bench"},
    Text{Say::bench_clear, "Clear the bench"},
    Text{Say::bench_no_book,
         "This document is no service book. Valve service, New service book makes one."},
    Text{Say::bench_read_only, "This document is open for reading only. Nothing was changed."},
    Text{Say::bench_locked, "The sheet {0} is protected by a password. Nothing was changed."},
    Text{Say::bench_nothing_done, "Nothing was changed: {0}"},
    Text{Say::bench_replace,
         "{0} of {1} steps on the bench are ticked. Put the steps of the present plan in their "
         "place? The ticks are lost. Where new shims are in, clear the bench first: that can enter "
         "them on Head."},
    Text{Say::bench_too_long,
         "The plan takes {0} steps, and Fit has room for {1}. Nothing was changed. With the "
         "camshafts out it takes fewer: see How shims are changed on Engine."},
    Text{Say::bench_empty, "Nothing is on the bench."},
    Text{Say::bench_clear_unsure,
         "Clear the bench? Enter the shims that are in on Head yourself, with their gaps."},
    Text{Say::bench_clear_ask, "No step with a new shim is ticked. Clear the bench?"},
    Text{Say::bench_enter_shims,
         "By the ticks {0} {0?has a new shim|have new shims}: enter {0?it|them} on Head?\n\nYes: "
         "enter the new {0?shim|shims} on Head, remove the {0?gap|gaps} entered there for "
         "{0?this valve|these valves} (enter {0?it|them} again, measured over the new "
         "{0?shim|shims}), and clear the bench.\nNo: clear the bench only."
         "\n\nThen bring the spares on Shims up to date: remove those that went in, add those "
         "left over."},
    Text{Say::bench_shim_in_valve, "{0} ({1})"},
    Text{Say::bench_all_the_same, "Go on only if that is done, or if the ticks are wrong. Go on?"},
    Text{Say::done_heading, "done"},
    Text{Say::bench_done_title, "Done"},
    Text{Say::bench_done_help, "Tick the step when it is done: x, yes or the date."},
    Text{Say::bench_done_due, "A tick is any mark of up to 20 letters."},
    Text{Say::bench_row, "step {0}"},
    Text{Say::bench_turn, "turn"},
    Text{Say::bench_step, "step"},
    Text{Say::bench_stop, "stop"},
    Text{Say::bench_valve, "valve"},
    Text{Say::bench_out, "take out"},
    Text{Say::bench_in, "put in"},
    Text{Say::bench_from, "from"},
    Text{Say::bench_note, "note"},
    // Remarks on entries, any table.
    // Cells that take entries, on any sheet.
    Text{Say::entry_refused, "{0} Nothing was kept: go back to {1}."},
    Text{Say::number_refused,
         "{0} Type the number alone, with your office\u2019s decimal mark (0.24 or 0,24). Nothing "
         "was "
         "kept: go back to {1}."},
    Text{Say::choice_due, "Enter {0}, or choose from the list."},
    Text{Say::add_in_missing,
         "The Shimwright add-in is missing: figures are those of the last calculation, and blank "
         "once an entry is changed. Install it, then open this book again."},
    // The hidden sheet that gathers the entries.
    Text{Say::entries_title, "Entries"},
    Text{Say::entries_note,
         "What every sheet takes, and what the add-in answers. Nothing is entered here."},
    // Engine.
    Text{Say::engine_this, "This engine"},
    Text{Say::engine_name, "Name of the engine"},
    Text{Say::engine_name_note, "Shown at the top of every sheet."},
    Text{Say::engine_name_help, "Any words, up to 60 letters."},
    Text{Say::engine_name_due, "A name has up to 60 letters."},
    Text{Say::engine_unit, "Unit"},
    Text{Say::engine_unit_note,
         "Of every length in this book. Choose it first: lengths already entered are not "
         "converted."},
    Text{Say::engine_unit_help,
         "The unit of every length that you enter. Lengths already entered are not converted."},
    Text{Say::engine_layout, "Layout"},
    Text{Say::engine_single, "single cylinder"},
    Text{Say::engine_in_line, "in line, {0} cylinders"},
    Text{Say::engine_vee, "V, {0} cylinders"},
    Text{Say::engine_flat, "flat, {0} cylinders"},
    Text{Say::engine_valves, "Valves per cylinder"},
    Text{Say::engine_valves_told, "{0} inlet and {1} exhaust; {2} valves in all"},
    Text{Say::engine_numbering, "Cylinders as drawn on Head"},
    Text{Say::engine_left_to_right, "from left to right: {0}"},
    Text{Say::engine_bank, "{0} bank: {1}"},
    Text{Say::engine_limits, "Valve clearance, engine cold"},
    Text{Say::engine_of_side, "{0}, {1} side"},
    Text{Say::engine_min, "Smallest gap allowed"},
    Text{Say::engine_max, "Largest gap allowed"},
    Text{Say::engine_limit_note, "From the engine\u2019s own manual."},
    Text{Say::engine_limit_help,
         "From the engine\u2019s own manual, for the cold engine: 0 to 5 mm (0.197 in), in the "
         "unit chosen above."},
    Text{Say::engine_limit_due,
         "A gap allowed is a number from 0 to 5 mm (0.197 in), in the unit chosen above."},
    Text{Say::engine_bias, "Where to aim"},
    Text{Say::engine_bias_note,
         "0 is the smallest gap, 1 the largest. Gaps mostly close up with use, hence 0.75."},
    Text{Say::engine_bias_help,
         "From 0, the smallest gap allowed, to 1, the largest. 0.5 is the middle."},
    Text{Say::engine_bias_due, "Where to aim is a number from 0 to 1."},
    Text{Say::engine_aim, "Gap aimed at"},
    Text{Say::engine_aim_note, "What that comes to."},
    Text{Say::engine_series, "Shim series"},
    Text{Say::engine_series_note,
         "Any word. The same for both sides if every shim fits every valve."},
    Text{Say::engine_series_help,
         "A word for the shims that fit this side, such as their diameter. Enter the same word for "
         "both sides if every shim fits every valve."},
    Text{Say::engine_series_due, "A series has up to 20 letters."},
    Text{Say::engine_readings, "Readings"},
    Text{Say::engine_doubt, "Doubt of a reading (U)"},
    Text{Say::engine_doubt_note,
         "The true gap is taken to lie within this much either side of the reading. Blank: exact."},
    Text{Say::engine_doubt_help,
         "How far a feeler reading may be off, either way. 0.01 to 0.02 mm (0.0004 to 0.0008 in) "
         "is common practice. Blank: readings count as exact."},
    Text{Say::engine_small_length_due,
         "This is a number from 0 to 0.2 mm (0.008 in), in the unit chosen above."},
    Text{Say::engine_allowed, "Mark and micrometer may differ by"},
    Text{Say::engine_allowed_title, "Mark and micrometer"},
    Text{Say::engine_allowed_help,
         "A shim further from its mark than this is told to be thinner or thicker. Blank: 0.015 mm "
         "(0.0006 in)."},
    Text{Say::engine_scheme, "Marks on shims are in"},
    Text{Say::engine_scheme_help,
         "How the marks on your shims are to be read. auto: 275 and 2.75 are 2.75 mm, 2755 is "
         "2.755 mm."},
    Text{Say::engine_plan, "What the plan may do"},
    Text{Say::engine_clear, "Stay clear of the limits by the doubt"},
    Text{Say::engine_clear_title, "Clear of the limits"},
    Text{Say::engine_clear_note, "yes: a gap must come out good even if the reading is off by U."},
    Text{Say::engine_clear_help,
         "yes: the plan keeps every gap inside its limits by the doubt of a reading. no: it uses "
         "the limits as they are."},
    Text{Say::engine_touch, "Change shims of good valves too"},
    Text{Say::engine_touch_note, "yes: a good valve may give its shim to another."},
    Text{Say::engine_touch_help,
         "no: a valve with a good gap keeps its shim, and that shim need not be measured."},
    Text{Say::engine_first, "Put first"},
    Text{Say::engine_first_note,
         "cost: least money. aim: gaps nearest the aim, whatever they cost."},
    Text{Say::engine_first_help,
         "cost: the cheapest plan, then the gaps nearest the aim. aim: the gaps nearest the aim, "
         "then the cheapest plan."},
    Text{Say::engine_work, "Work for each shim changed"},
    Text{Say::engine_work_note, "A sum of money. Blank: none."},
    Text{Say::engine_work_help,
         "What opening one valve costs. The plan weighs it against the price of shims. Blank: "
         "none."},
    Text{Say::engine_money_due, "A sum of money is a number from 0 to a million."},
    Text{Say::engine_currency, "Currency"},
    Text{Say::engine_currency_note, "A word or sign, shown with sums."},
    Text{Say::engine_currency_help, "A word or sign of up to 8 letters, shown with sums."},
    Text{Say::engine_currency_due, "A currency has up to 8 letters."},
    Text{Say::engine_crank, "Turning the crank"},
    Text{Say::engine_firing, "Firing order"},
    Text{Say::engine_firing_note,
         "From the manual. For uneven firing give degrees: 1 at 0, 2 at 270."},
    Text{Say::engine_firing_help,
         "Each cylinder once, in the order of firing, such as 1-3-4-2. For uneven firing give the "
         "degrees of the crank at which each fires, from 0 to below 720: 1 at 0, 2 at 270."},
    Text{Say::engine_firing_due, "A firing order has up to 200 letters."},
    Text{Say::engine_opens, "Opens, degrees before dead centre"},
    Text{Say::engine_opens_note, "Inlet before TDC, exhaust before BDC. Blank: 20 and 60."},
    Text{Say::engine_closes, "Closes, degrees after dead centre"},
    Text{Say::engine_closes_note, "Inlet after BDC, exhaust after TDC. Blank: 60 and 20."},
    Text{Say::engine_timing_title, "Valve timing"},
    Text{Say::engine_timing_help,
         "Degrees of the crank, from the manual: -180 to 180. Leave it blank for usual timing."},
    Text{Say::engine_timing_due, "This is a number of degrees from -180 to 180."},
    Text{Say::engine_margin, "Clear of the lobe by, degrees"},
    Text{Say::engine_margin_note,
         "At both ends of the lobe, as the crank is set by eye. Blank: 10."},
    Text{Say::engine_margin_help,
         "How far a valve must be off its lobe before its gap is measured, in degrees of the "
         "crank: 0 to 180. Blank: 10."},
    Text{Say::engine_margin_due, "This is a number of degrees from 0 to 180."},
    Text{Say::engine_opened, "How shims are changed"},
    Text{Say::engine_opened_note, "With the camshafts out every shim can be reached at once."},
    Text{Say::engine_opened_help,
         "Valve by valve: the steps on Fit say when to turn the crank. Camshafts out: all shims "
         "are changed at once."},
    // Head.
    Text{Say::head_seen, "Seen from above, {0} side away from you."},
    Text{Say::head_seen_from_left,
         "Seen from above, {0} side away from you, cylinder {1} at your left."},
    Text{Say::head_seen_banks, "Seen from above, {0} away from you, {1} near you."},
    Text{Say::head_seen_far_at_left,
         "Seen from above. Drawn at the left: {0}, away from you; at the right: {1}, near you."},
    Text{Say::head_seen_near_at_left,
         "Seen from above. Drawn at the left: {0}, near you; at the right: {1}, away from you."},
    Text{Say::head_bank, "{0} bank"},
    Text{Say::head_cylinders, "{0?cylinder|cylinders} {0}"},
    Text{Say::head_cylinder, "cylinder {0}"},
    Text{Say::head_continued, "{0}, continued"},
    Text{Say::head_only_continued, "continued"},
    Text{Say::head_side, "{0} side"},
    Text{Say::head_gap_title, "Gap of {0}"},
    Text{Say::head_gap_help,
         "The gap at this valve with the engine cold and the lobe away from it: 0 (no blade goes) "
         "to 5 mm (0.197 in), in the unit chosen on Engine."},
    Text{Say::head_gap_due,
         "A gap is 0 (no blade goes) to 5 mm (0.197 in), in the unit chosen on Engine."},
    Text{Say::head_gap_place, "the gap of {0}"},
    Text{Say::head_mark_title, "Mark on the shim of {0}"},
    Text{Say::head_mark_help,
         "The number on the shim, such as 275; 3.00 mm is typed as 300. Engine says how marks are "
         "read. Leave it blank where the mark is worn off."},
    Text{Say::head_mark_due,
         "A mark is a number, such as 275. Where the shim has none, leave this blank and measure "
         "it."},
    Text{Say::head_mark_place, "the mark of {0}"},
    Text{Say::head_micrometer_title, "Micrometer, shim of {0}"},
    Text{Say::head_micrometer_help,
         "The shim\u2019s thickness by micrometer: 0.3 to 20 mm (0.012 to 0.787 in), in the unit "
         "chosen on Engine. It counts before the mark: shims wear thin."},
    Text{Say::head_micrometer_due,
         "A shim is 0.3 to 20 mm thick (0.012 to 0.787 in). 275 is a mark: its size is 2.75 mm."},
    Text{Say::head_micrometer_place, "the micrometer reading of {0}"},
    Text{Say::head_alone_title, "Leave {0} alone"},
    Text{Say::head_alone_help,
         "yes: this valve keeps its shim, whatever its gap. Blank: the plan may change the shim."},
    Text{Say::head_alone_due, "Enter yes, or leave the cell blank."},
    Text{Say::head_alone_place, "leave alone of {0}"},
    Text{Say::head_caution,
         "Turn the crank by hand only, and only the way the engine runs. Never turn it while a "
         "valve is without its shim."},
    // Shims.
    Text{Say::shims_paste,
         "Paste spares from another sheet with Ctrl+Shift+V, then Values Only. Plain Ctrl+V "
         "overwrites formats and entry checks; Undo restores them."},
    Text{Say::shims_spares, "Spares at hand"},
    Text{Say::shims_series, "series"},
    Text{Say::shims_size, "size"},
    Text{Say::shims_count, "quantity"},
    Text{Say::shims_note, "note"},
    Text{Say::shims_from, "from"},
    Text{Say::shims_to, "to"},
    Text{Say::shims_step, "step"},
    Text{Say::shims_price, "price each"},
    Text{Say::shims_comes_to, "comes to"},
    Text{Say::shims_sizes, "On sale, as rows of sizes"},
    Text{Say::shims_singles, "On sale singly, used ones too; numbered on from the spares"},
    Text{Say::shims_spare_row, "row {0} of the spares"},
    Text{Say::shims_sizes_row, "row {0} of the sizes on sale"},
    Text{Say::shims_single_row, "row {0} of the single sizes"},
    Text{Say::shims_series_title, "Shim series"},
    Text{Say::shims_series_help,
         "One of the series named on Engine. Leave it blank where both sides take the same."},
    Text{Say::shims_series_due,
         "A series is one of those named on Engine, or blank where both sides take the same."},
    Text{Say::shims_size_title, "Thickness"},
    Text{Say::shims_size_help,
         "The measured thickness, 0.3 to 20 mm (0.012 to 0.787 in), in the unit chosen on Engine. "
         "275 is a mark: its size is 2.75 mm."},
    Text{Say::shims_size_due,
         "A shim is 0.3 to 20 mm thick (0.012 to 0.787 in). 275 is a mark: its size is 2.75 mm."},
    Text{Say::shims_from_help,
         "The thinnest size of the row, 0.3 to 20 mm (0.012 to 0.787 in), in the unit chosen on "
         "Engine."},
    Text{Say::shims_to_help,
         "The thickest size of the row, 0.3 to 20 mm (0.012 to 0.787 in), in the unit chosen on "
         "Engine."},
    Text{Say::shims_step_title, "Step"},
    Text{Say::shims_step_help,
         "From one size to the next, such as 0.05 mm (0.002 in), in the unit chosen on Engine."},
    Text{Say::shims_step_due, "A step is 0.001 to 5 mm (0.197 in), in the unit chosen on Engine."},
    Text{Say::shims_count_title, "Quantity"},
    Text{Say::shims_spare_count_help, "How many of this size are in the drawer. Blank: one."},
    Text{Say::shims_single_count_help,
         "How many of this size can be bought. Blank: as many as you like."},
    Text{Say::shims_count_due, "A quantity is a whole number from 0 to 1000."},
    Text{Say::shims_price_title, "Price each"},
    Text{Say::shims_price_help,
         "The price of one shim. Leave it blank everywhere and the plan buys as few as it can."},
    Text{Say::shims_note_title, "Note"},
    Text{Say::shims_note_help, "Any words, such as where the shim lies. Up to 80 letters."},
    Text{Say::shims_note_due, "A note has up to 80 letters."},
    Text{Say::shims_about_counts,
         "Quantity: a blank means one for a spare, and as many as you like for a size on sale. "
         "Leave prices blank everywhere and the plan buys as few shims as it can."},
    // Plan.
    Text{Say::plan_valve, "valve"},
    Text{Say::plan_shim_now, "shim now"},
    Text{Say::plan_action, "action"},
    Text{Say::plan_from, "from"},
    Text{Say::plan_new_shim, "new shim"},
    Text{Say::plan_gap_after, "gap after"},
    Text{Say::plan_margin, "inside limits by"},
    Text{Say::plan_result, "result"},
    Text{Say::plan_cost, "cost"},
    Text{Say::plan_qty, "qty"},
    Text{Say::plan_left_over, "Left over"},
    Text{Say::plan_outside, "left outside"},
    Text{Say::plan_to_measure, "to measure"},
    Text{Say::plan_to_pay, "to pay"},
    Text{Say::plan_caution,
         "The engine\u2019s own manual comes first. Never turn the crank while a valve is without "
         "its shim. After fitting, turn it by hand through two full turns and measure every gap "
         "again."},
    // Read me first.
    Text{Say::read_me_purpose,
         "From feeler gauge to order list: enter what you measure, and this book tells which "
         "valves are tight, good or loose, which shims to keep and move, and which few to buy."},
    Text{Say::read_me_before, "Before you begin"},
    Text{Say::caution_manual,
         "The engine\u2019s own manual, the local rules and a licensed mechanic come first. "
         "Nothing here replaces them."},
    Text{Say::caution_cold, "Engine cold, best left overnight. Ignition off, spark plugs out."},
    Text{Say::caution_by_hand,
         "Turn the crank only by hand, and only in the direction in which the engine runs."},
    Text{Say::caution_shim,
         "Never turn it while a valve is without its shim or a cam is not bolted down as the "
         "manual says."},
    Text{Say::caution_clean,
         "Keep shims clean and each in its marked place. Oil every shim before it goes in."},
    Text{Say::caution_after,
         "After fitting, turn the crank by hand through two full turns and measure every gap "
         "again."},
    Text{Say::read_me_steps, "The steps"},
    Text{Say::step_engine,
         "Name the engine, choose the unit, and enter the limits from its own manual. Check the "
         "shim series there too, and the firing order and angles: the crank stops follow from "
         "these."},
    Text{Say::step_gaps,
         "With the engine cold, measure the gap at every valve with the cam\u2019s lobe away from "
         "it, and enter it on the valve\u2019s card."},
    Text{Say::step_shims,
         "Take out the shims, one valve at a time, and put each back before you turn the crank. "
         "Enter the mark, measure the shim with the micrometer and enter that too: marks wear off, "
         "and shims wear thin. The shim of a good valve may stay in and unread, unless Engine has "
         "shims of good valves changed too."},
    Text{Say::step_spares, "List the spares in the drawer and the sizes you can buy."},
    Text{
        Say::step_plan,
        "Read what to keep, move, fit or buy. If a dark box appears, correct what it names first."},
    Text{Say::step_order,
         "Order what it says. Measure every shim that comes before you trust its mark. Enter one "
         "of another size on Shims as a spare, and read the plan again."},
    Text{Say::step_fit,
         "Take the steps to the bench, where they stand still. Fit the shims in this order and no "
         "other, and tick each step as you go."},
    Text{Say::step_again,
         "Turn the crank by hand through two full turns and measure every gap again. In a copy of "
         "this book, clear the bench, which can enter the new shims on Head, and enter the new "
         "gaps. On Shims, remove the spares that went in and add the shims left over."},
    Text{Say::read_me_stops, "Where to stop the crank"},
    Text{Say::read_me_tdc,
         "TDC on compression: the piston at the top with all its cylinder\u2019s valves shut."},
    Text{Say::read_me_progress, "Progress"},
    Text{Say::read_me_gaps, "gaps measured"},
    Text{Say::read_me_shims, "needed shims known"},
    Text{Say::read_me_done, "steps done"},
    Text{Say::read_me_result, "What the plan comes to"},
    Text{Say::read_me_remarks, "remarks on the entries"},

    Text{Say::and_last, "{0} and {1}"},

    // ---- Numbers that are entered, as a sentence calls them.
    Text{Say::the_clearance, "the clearance||the gap"},
    Text{Say::the_shim, "the shim"},
    Text{Say::the_min, "the minimum clearance||the smallest gap allowed"},
    Text{Say::the_max, "the maximum clearance||the largest gap allowed"},
    Text{Say::the_aim, "the aim"},
    Text{Say::the_doubt, "the doubt"},
    Text{Say::the_size, "the size"},
    Text{Say::the_count, "the count||the quantity"},
    Text{Say::the_price, "the price||the price each"},
    Text{Say::the_work, "the price of work"},

    // ---- What a sentence is about, and where.
    Text{Say::told_of, "{0}: {1}"},
    Text{Say::told_of_row, "{0}, row {1}: {2}"},
    Text{Say::told_of_cell, "{0}, row {1}, {2}: {3}"},
    Text{Say::valve_named, "valve {0}||Valve {0}"},
    Text{Say::spare_of, "spare {0}"},
    Text{Say::sale_of, "sale {0}"},
    Text{Say::shim_of, "shim {0}"},
    Text{Say::rule_touch_good, "rule \"touch good\"||Change shims of good valves too"},
    Text{Say::rule_doubt, "rule \"doubt\"||Stay clear of the limits by the doubt"},
    Text{Say::rule_work, "rule \"work\"||Work for each shim changed"},
    Text{Say::rule_first, "rule \"first\"||Put first"},
    Text{Say::rule_named, "rule \"{0}\""},

    // ---- Remarks on entries, any table.
    Text{Say::too_few_columns, "the table has {0} {0?column|columns}; at least {1} are due: {2}"},
    Text{Say::text_where_number_due,
         "{0}, \"{1}\", is text where a number is due: it does not count"},
    Text{Say::not_finite, "{0} is no number that can be"},
    Text{Say::negative, "{0}, {1}, is negative"},
    Text{Say::too_large, "{0}, {1}, is too large to be true: check the unit and the decimal mark"},
    Text{Say::unlikely, "{0}, {1}, is unlikely: are unit and decimal mark right?"},
    Text{Say::no_shim_size, "{0} is no shim size: check the unit and the decimal mark"},
    Text{Say::no_shim_size_but_mark, "{0} is no shim size. Did you mean {1}?"},
    Text{Say::more_than_a_million, "{0}, {1}, is more than a million"},
    Text{Say::not_whole, "{0}, {1}, is not a whole number"},
    Text{Say::neither_yes_nor_no, "\"{0}\" is neither yes nor no"},

    // ---- Remarks on valves.
    Text{Say::valve_without_name, "the valve has no name: give it one of its own"},
    Text{Say::name_twice, "the name stands in row {0} too: give each valve a name of its own"},
    Text{Say::reading_without_min,
         "it is measured, but has no minimum clearance to be judged by||"
         "it is measured, but has no smallest gap allowed to be judged by"},
    Text{Say::reading_without_max,
         "it is measured, but has no maximum clearance to be judged by||"
         "it is measured, but has no largest gap allowed to be judged by"},
    Text{Say::min_above_max,
         "the minimum clearance, {0}, is above the maximum, {1}||"
         "the smallest gap allowed, {0}, is above the largest, {1}"},
    Text{Say::aim_outside, "the aim, {0}, is outside the limits {1} to {2}"},
    Text{Say::clearance_zero,
         "the clearance is 0, no blade goes: the valve may even be held open, so the clearance "
         "after fitting is only the most it can be||"
         "the gap is 0, no blade goes: the valve may even be held open, so the gap after fitting "
         "is only the most it can be"},
    Text{Say::clearance_twice_max,
         "the clearance, {0}, is at least twice the largest allowed, {1}: measure it again||"
         "the gap, {0}, is at least twice the largest allowed, {1}: measure it again"},
    Text{Say::clearance_fifth_min,
         "the clearance, {0}, is at most a fifth of the smallest allowed, {1}: measure it again||"
         "the gap, {0}, is at most a fifth of the smallest allowed, {1}: measure it again"},
    Text{Say::doubt_leaves_no_room,
         "a doubt of {0} either way is too much for limits only {1} apart: no reading can prove "
         "the clearance good||"
         "a doubt of {0} either way is too much for limits only {1} apart: no reading can prove "
         "the gap good"},

    // ---- Remarks on shims.
    Text{Say::too_many_valves, "there are more than {0} valves: ask for one engine at a time"},
    Text{Say::too_many_rows, "there are more than {0} rows: leave out sizes that cannot serve"},
    Text{Say::size_missing, "no size is given: the row does not count"},
    Text{Say::kind_missing, "the kind is missing: enter spare or sale"},
    Text{Say::neither_spare_nor_sale, "\"{0}\" is neither spare nor sale"},
    Text{Say::series_missing, "no series is given: the valves have {0}"},
    Text{Say::series_unknown, "no valve takes series \"{0}\": the valves have {1}"},
    Text{Say::no_series, "no series"},
    Text{Say::other_series, "others"},
    Text{Say::spare_twice, "it stands in row {0} too: counted as one more"},
    Text{Say::sale_twice, "it is on sale in row {0} already"},
    Text{Say::price_missing, "no price is given: counted as free"},
    Text{Say::prices_missing, "no price is given here and in {0} more: counted as free"},

    // ---- Remarks on rules.
    Text{Say::rule_missing, "there is a value without a rule: the rules are {0}"},
    Text{Say::rule_unknown, "it is not known: the rules are {0}"},
    Text{Say::rule_twice, "it stands in row {0} too"},
    Text{Say::neither_cost_nor_aim, "\"{0}\" is neither cost nor aim"},

    // ---- Remarks on firing angles and on the stops of valves.
    Text{Say::entry_missing, "it is missing"},
    Text{Say::not_a_number, "\"{0}\" is not a number"},
    Text{Say::not_a_stop, "\"{0}\" is not the number of a stop"},
    Text{Say::not_a_stops_number, "{0} is not the number of a stop: stops count 1, 2, 3 and so on"},
    Text{Say::stop_without_valve, "there is a stop without a valve"},
    Text{Say::none_of_the_valves, "\"{0}\" is none of the valves"},
};

}  // namespace

std::span<const Text> english_texts() { return texts; }

}  // namespace shimwright
