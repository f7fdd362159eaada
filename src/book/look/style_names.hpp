// SPDX-License-Identifier: MPL-2.0
//
// The names of the styles that cells and pages wear. What each looks like: styles.cpp,
// card_styles.cpp, page_styles.cpp.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/values/verdict.hpp"

namespace shimwright::book::style {

inline constexpr std::string_view page = "Book page";  // all others derive from it
inline constexpr std::string_view far_edge = "Book far edge";
inline constexpr std::string_view title = "Book title";
inline constexpr std::string_view subtitle = "Book subtitle";
inline constexpr std::string_view aside = "Book aside";    // small, to the right
inline constexpr std::string_view banner = "Book banner";  // which add-in is there
inline constexpr std::string_view banner_line = "Book banner line";
inline constexpr std::string_view heading = "Book heading";
inline constexpr std::string_view heading_tally = "Book heading tally";
inline constexpr std::string_view label = "Book label";
inline constexpr std::string_view text = "Book text";  // a paragraph, wrapped
inline constexpr std::string_view note = "Book note";
inline constexpr std::string_view list = "Book list";      // a note that may be long
inline constexpr std::string_view number = "Book number";  // of a step
inline constexpr std::string_view link = "Book link";
inline constexpr std::string_view next_sheet = "Book next sheet";  // a link that stays off paper
inline constexpr std::string_view next_sheet_right = "Book next sheet right";
inline constexpr std::string_view caution = "Book caution";
inline constexpr std::string_view fact = "Book fact";
inline constexpr std::string_view bar = "Book bar";  // of progress
inline constexpr std::string_view tally = "Book tally";
inline constexpr std::string_view answer = "Book answer";
inline constexpr std::string_view figure = "Book figure";  // what one asks for first, large
inline constexpr std::string_view figure_money = "Book figure money";

// What a person fills in: tinted, with an inset border, unlocked.
inline constexpr std::string_view entry = "Entry";  // all other entries derive from it
inline constexpr std::string_view entry_text = "Entry text";
inline constexpr std::string_view entry_choice = "Entry choice";
inline constexpr std::string_view entry_words = "Entry words";  // never taken for a date
inline constexpr std::string_view entry_length = "Entry length";
inline constexpr std::string_view entry_note = "Entry note";  // small, wrapped
inline constexpr std::string_view entry_mark = "Entry mark";  // as etched
inline constexpr std::string_view entry_count = "Entry count";
inline constexpr std::string_view entry_money = "Entry money";
inline constexpr std::string_view entry_factor = "Entry factor";

inline constexpr std::string_view table_head = "Table head";
inline constexpr std::string_view table_head_left = "Table head left";
inline constexpr std::string_view table_text = "Table text";
inline constexpr std::string_view table_strong = "Table strong";
inline constexpr std::string_view table_head_centre = "Table head centre";
inline constexpr std::string_view table_strong_centre = "Table strong centre";
inline constexpr std::string_view no_row = "Table no row";  // laid over a row without an entry
inline constexpr std::string_view table_tally = "Table tally";
inline constexpr std::string_view row_number = "Table row number";
inline constexpr std::string_view table_centre = "Table centre";
inline constexpr std::string_view table_length = "Table length";
inline constexpr std::string_view table_verdict = "Table verdict";  // a sentence, wrapped
inline constexpr std::string_view table_count = "Table count";
inline constexpr std::string_view table_money = "Table money";
// Rows of the log: unlocked, as the whole sheet is.
inline constexpr std::string_view log_head_left = "Log head left";
inline constexpr std::string_view log_text = "Log text";
inline constexpr std::string_view log_strong = "Log strong";
inline constexpr std::string_view log_centre = "Log centre";
inline constexpr std::string_view log_date = "Log date";
inline constexpr std::string_view log_number = "Log number";  // as many decimals as it has
inline constexpr std::string_view log_length = "Log length";
inline constexpr std::string_view total_text = "Total text";
inline constexpr std::string_view total_money = "Total money";

// Laid over the rows of steps.
inline constexpr std::string_view fit_turn = "Fit turn";  // of the crank
inline constexpr std::string_view fit_done = "Fit done";
inline constexpr std::string_view fit_done_inches = "Fit done in inches";
inline constexpr std::string_view fit_borrow = "Fit borrow";  // a stand-in that is not there
inline constexpr std::string_view fit_stand_in = "Fit stand-in";
inline constexpr std::string_view fit_row = "Fit row";  // a step to be done: its line
inline constexpr std::string_view fit_row_inches = "Fit row in inches";
inline constexpr std::string_view fit_tick = "Fit tick";  // where it is ticked
// Below these: rows of the bench list, without lines while they are blank.
inline constexpr std::string_view bench_kind = "Bench kind";  // seen by nobody
inline constexpr std::string_view bench_text = "Bench text";
inline constexpr std::string_view bench_strong = "Bench strong";
inline constexpr std::string_view bench_centre = "Bench centre";
inline constexpr std::string_view bench_size = "Bench size";
inline constexpr std::string_view bench_note = "Bench note";
inline constexpr std::string_view bench_tick = "Bench tick";  // unlocked

// The measuring sheet, for a hand that writes.
inline constexpr std::string_view measure_come = "Measure come";  // how to come to a stop
inline constexpr std::string_view measure_stop = "Measure stop";  // its number
inline constexpr std::string_view measure_valve = "Measure valve";
inline constexpr std::string_view measure_known = "Measure known";  // limits, the shim of last time
inline constexpr std::string_view measure_row = "Measure row";      // nothing to be written there
inline constexpr std::string_view measure_field = "Measure field";  // a box with its name in it
inline constexpr std::string_view measure_blank = "Measure blank";  // a line to write on
inline constexpr std::string_view measure_box = "Measure box";      // laid over: to write into
// Laid over the first row of a stop.
inline constexpr std::string_view measure_first = "Measure first";
inline constexpr std::string_view measure_box_first = "Measure box first";

inline constexpr std::string_view remark_box = "Remark box";        // what is amiss, or calm words
inline constexpr std::string_view remark_told = "Remark told";      // laid over it: a remark
inline constexpr std::string_view remark_loud = "Remark loud";      // laid over it: mend this first
inline constexpr std::string_view trouble_found = "Trouble found";  // laid over the box
inline constexpr std::string_view remark_found = "Remark found";    // what is to be seen to
inline constexpr std::string_view figure_outside = "Figure outside";  // dark, apart from the next

inline constexpr std::string_view deck = "Deck";            // the head between the cards
inline constexpr std::string_view deck_seen = "Deck seen";  // where to stand
inline constexpr std::string_view deck_heading = "Deck heading";
inline constexpr std::string_view deck_side = "Deck side";
inline constexpr std::string_view deck_strip = "Deck strip";
inline constexpr std::string_view card_name = "Card name";
inline constexpr std::string_view card_banner = "Card banner";
inline constexpr std::string_view card_label = "Card label";
inline constexpr std::string_view card_aside = "Card aside";
inline constexpr std::string_view card_length = "Card length";
inline constexpr std::string_view card_entry_length = "Card entry length";
inline constexpr std::string_view card_entry_mark = "Card entry mark";
inline constexpr std::string_view card_entry_choice = "Card entry choice";
inline constexpr std::string_view card_do = "Card what to do";
inline constexpr std::string_view card_source = "Card source";
inline constexpr std::string_view card_foot = "Card foot";

inline constexpr std::string_view working = "Working";
inline constexpr std::string_view working_head = "Working head";
inline constexpr std::string_view faint = "Faint";          // laid over what asks for nothing
inline constexpr std::string_view in_inches = "In inches";  // laid over lengths: four decimals

// Laid over a cell for a state. A style laid over another replaces its borders as a whole, hence
// one for each place on a card: `crown`, the filled top; `banner` and `foot`, filled likewise
// further down; `left`, `right` and `sides` of the frame; `well`, an entry at the frame's right;
// `well_inches`, with the decimals of inches; `sides_odd`, what must not be overlooked there.
// `told`: fill and text, for a cell anywhere.
enum class Wear { crown, banner, left, right, well, well_inches, sides, sides_odd, foot, told };
std::string worn(Wear wear, State state);

// A cell that always tells of this state: its count, its colour, its sign.
std::string legend(State state);

inline constexpr std::int32_t bar_colour = 0x27425F;
inline constexpr std::int32_t outline_colour = 0x8A9099;  // of the drawn head, of axes
inline constexpr std::int32_t band_colour = 0xE6E1D2;     // of limits in a chart
inline constexpr std::int32_t grid_colour = 0xE3E5E8;

inline constexpr std::string_view portrait = "Book portrait";
inline constexpr std::string_view portrait_long = "Book portrait long";      // on two pages
inline constexpr std::string_view portrait_parted = "Book portrait parted";  // where the sheet says
inline constexpr std::string_view portrait_charts = "Book portrait charts";  // where the sheet says
inline constexpr std::string_view landscape = "Book landscape";
inline constexpr std::string_view landscape_long = "Book landscape long";  // as many as it takes
inline constexpr std::string_view landscape_parted =
    "Book landscape parted";  // where the sheet says

}  // namespace shimwright::book::style
