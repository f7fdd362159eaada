// SPDX-License-Identifier: MPL-2.0
//
// The shims that were ordered, and those that came. Each has a row of its own, so that each has its
// own verdict: an order of two of a size is two rows, and a shim that nobody ordered is a row
// without an ordered size. What is on order is stock that is paid for; what has arrived is stock of
// the size that it measures, which is not always the size that was ordered; what is not coming is
// no stock. The plan is made over that stock anew with each entry.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/fitting/steps.hpp"
#include "core/service/findings.hpp"

namespace shimwright {

// By `arrived`: blank is on order, `no` is not coming, any other mark (x, yes, a date) is arrived.
// A row with a mark or a micrometer reading has arrived even where that is blank: nobody reads a
// shim that is not there. A row that nobody ordered is blank until something of that is entered.
ArrivalState arrival_state(const Service::ArrivalEntries& row);

// The row, read. `one_series` stands for a series left out. Its size is as ordered while it is on
// order; once it has arrived, by micrometer, else by its mark, else as ordered. A reading or mark
// that makes no sense leaves it without a size, and so out of the stock.
ArrivalFindings arrival_in(const Service& service, const Service::ArrivalEntries& row,
                           const std::string& one_series);

// Which valve gets which row's shim by the plan, where several are of one size: spares of the
// drawer go first, then what has arrived, then what is on order. Expects the plans of all valves;
// sets `valve` of the rows and `arrival` of the plans.
void give_arrivals_to_valves(Findings& found);

// A shim that is on order and not in the plan cannot stand in for another at the bench.
void leave_out_what_has_not_come(FittingQuestion& question, const Findings& found);

enum class ArrivalVerdict {
  none,        // a blank row
  on_order,    // and a valve waits for it
  not_needed,  // on order, but no valve gets it
  as_ordered,  // has arrived, and a valve gets it
  will_do,     // in another size than ordered, or not ordered at all, but a valve gets it
  send_back,   // has arrived, and no valve gets it
  unmeasured,  // has arrived, and nobody knows its size
  not_coming,
  unsettled  // has arrived, and it is not known yet whether a valve gets it
};

// By Findings::allowed a shim may differ from its size as ordered, ends included, and still be as
// ordered.
ArrivalVerdict arrival_verdict(const ArrivalFindings& shim, const Findings& found);

// It has arrived, and its mark says another size than it measures, by more than `allowed`
// (trust_in).
bool differs_from_its_mark(const ArrivalFindings& shim, Length allowed);

// Something stands on Arrivals.
bool is_anything_ordered(const Findings& found);

// The rows of that verdict, as numbered on the sheet.
std::vector<std::string> arrivals_with(ArrivalVerdict verdict, const Service& service,
                                       const Findings& found);

// What the shims to be sent back cost.
Money money_to_send_back(const Findings& found);

// The rows that have arrived and get a valve, but by mark or order alone.
std::vector<std::string> arrivals_to_measure(const Service& service, const Findings& found);

// A valve whose new shim, bought, is not in hand.
struct MissingShim {
  std::size_t valve = 0;  // index
  Length size;
  bool on_order = false;  // else it is still to be ordered
};

// In the order of the valves. None where nothing stands on Arrivals: such an owner keeps no list of
// what has come.
std::vector<MissingShim> shims_not_in_hand(const Findings& found);

// The row, counted from 0, of each shim that is in a valve by the ticks of the bench list and was
// bought. A shim that was measured only after the list was taken is known by what the list calls
// it, its mark or its size as ordered.
struct FittedArrival {
  std::string valve;
  std::size_t row = 0;
};
std::vector<FittedArrival> arrivals_fitted(const Service& service, const Findings& found);

}  // namespace shimwright
