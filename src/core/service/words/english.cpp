// SPDX-License-Identifier: MPL-2.0
#include <array>

#include "core/service/words/teller.hpp"

namespace shimwright {
namespace {

constexpr std::array texts{
    // Remarks on entries, any table.
    Text{Say::text_where_number_due, "{0}: {1} is text where a number is due: not counted"},
    Text{Say::error_in_entry, "{0} holds an error: mend or clear that cell"},
    // Cells that take entries, on any sheet.
    Text{Say::entry_refused, "{0} Nothing was kept: go back to {1}."},
    Text{Say::number_refused,
         "{0} Type the number alone, with the same decimal mark as the other cells (0.24). Nothing "
         "was kept: go back to {1}."},
    Text{Say::choice_due, "Enter {0}, or choose from the list."},
    Text{Say::add_in_missing,
         "The Shimwright add-in is missing: figures are those of the last calculation, and nothing "
         "is worked out anew. Install it, then open this book again."},
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
    Text{Say::engine_exhaust, "exhaust"},
    Text{Say::engine_inlet, "inlet"},
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
         "Any word. A shim fits only valves of its own series. If every shim fits every valve, "
         "enter the same word for both sides."},
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
    Text{Say::engine_allowed_help,
         "A shim further from its mark than this is told to be thinner or thicker. Blank: 0.015 mm "
         "(0.0006 in)."},
    Text{Say::engine_scheme, "Marks on shims are in"},
    Text{Say::engine_scheme_help,
         "How the marks on your shims are to be read. auto: 275 and 2.75 are 2.75 mm, 2755 is "
         "2.755 mm."},
    Text{Say::engine_plan, "What the plan may do"},
    Text{Say::engine_clear, "Stay clear of the limits by the doubt"},
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
         "Fit the shims step by step, in this order and no other. Tick each step as you go."},
    Text{Say::step_again,
         "Turn the crank by hand through two full turns and measure every gap again. In a copy of "
         "this book, clear the ticks on Fit and enter the new gaps, each with the mark and the "
         "size of the shim now in that valve. On Shims, remove the spares that went in and add the "
         "shims left over."},
    Text{Say::read_me_stops, "Where to stop the crank"},
    Text{Say::read_me_tdc,
         "TDC on compression: the piston at the top with all its cylinder\u2019s valves shut."},
    Text{Say::read_me_progress, "Progress"},
    Text{Say::read_me_gaps, "gaps measured"},
    Text{Say::read_me_shims, "needed shims known"},
    Text{Say::read_me_done, "steps done"},
    Text{Say::read_me_result, "What the plan comes to"},
    Text{Say::read_me_remarks, "remarks on the entries"},
};

}  // namespace

std::span<const Text> english_texts() { return texts; }

}  // namespace shimwright
