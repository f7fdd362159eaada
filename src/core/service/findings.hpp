// SPDX-License-Identifier: MPL-2.0
//
// What a service comes to, still as values: each entry read, the plan, the steps of fitting, where
// the crank stops, and every remark. The View puts it into words.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/crank/crank.hpp"
#include "core/fitting/steps.hpp"
#include "core/plan/plan.hpp"
#include "core/service/service.hpp"
#include "core/service/words/told.hpp"
#include "core/values/mark.hpp"
#include "core/values/verdict.hpp"

namespace shimwright {

// The sheet on which an entry stands.
enum class Page { engine, head, shims, arrivals };

// What is to be told of an entry. `grave`: no plan can be trusted until it is mended.
struct Remark {
  Page page = Page::engine;
  std::variant<Told, Trouble> said;
  std::optional<Told> lead = {};  // `Row 3: `, told before it
  bool grave = false;
};

struct SideFindings {
  std::optional<Limits> limits;  // where both are given and sound
  std::optional<Length> aim;
  std::string series;
};

struct ValveFindings {
  std::optional<Length> gap;
  std::optional<Length> marked;    // what its mark stands for
  std::optional<Length> measured;  // by micrometer
  std::optional<Length> shim;      // as measured, else as marked
  std::optional<Trust> trust;      // none where neither is given
  bool alone = false;              // to be left alone
  bool nearest = false;            // may take the nearest shim where none serves
  std::optional<State> now;        // none where there is a gap but no sound limits
  // By how much that reading was off what the last round predicted (readings_off.hpp).
  std::optional<Length> off;
};

// A row of sizes on sale.
struct SizesFindings {
  int row = 0;
  std::string series;
  std::vector<Length> sizes;  // as listed
  std::size_t cheaper = 0;    // of these, sizes that another row has for less
  Length step;
  bool entered = false;
  bool too_many = false;
};

// Where a shim of Arrivals is; `none`: its row is blank.
enum class ArrivalState { none, on_order, arrived, not_coming };

// A row of Arrivals: one shim.
struct ArrivalFindings {
  ArrivalState state = ArrivalState::none;
  std::string series;
  std::optional<Length> ordered;
  std::optional<Length> marked;    // what its mark stands for
  std::optional<Length> measured;  // by micrometer
  std::optional<Length> size;      // by which it is in stock; none: it is no stock
  Money price;
  std::optional<std::size_t> valve;  // that gets it by the plan: the index
};

// What happens to a valve, as the sheets tell it.
struct ValvePlan {
  Action action = Action::unread;
  std::optional<std::size_t> from;     // the giving valve's index
  std::optional<std::size_t> arrival;  // the row of Arrivals, from 0, whose shim it gets
  std::optional<Length> size;          // of the shim afterwards
  std::optional<Length> after;         // the gap afterwards
  std::optional<Length> margin;        // of `after`
  State then = State::unread;
  bool measure_again = false;   // no blade goes now, so `after` is only the most it can be
  bool unseen = false;          // it keeps its shim, whatever that is
  bool left_outside = false;    // it is left alone though it reads outside its limits
  bool fitted_outside = false;  // it gets the nearest shim, and is outside its limits even so
  Money cost;
  std::optional<Length> thinnest;  // that would serve, where no listed size does
  std::optional<Length> thickest;
  // The listed size that would come nearest, where none serves and it keeps its shim, and the gap
  // that it would leave.
  std::optional<Length> nearest;
  std::optional<Length> nearest_after;
};

// What the list on the bench comes to for a valve, by the entries of now (listed_gaps.hpp).
struct ListedGap {
  std::size_t valve = 0;  // index
  // gap + shim - new shim, the shims as Head and Arrivals have them now, else as listed.
  Length predicted;
  bool is_in = false;    // the new shim, by the ticks
  bool outside = false;  // beyond a limit, and no valve that may stay so with the nearest shim
};

struct Findings {
  Teller teller;
  Length doubt;
  bool doubt_given = false;
  Length allowed = default_allowed_difference;
  SideFindings exhaust;
  SideFindings inlet;
  std::string one_series;  // where both sides take the same
  std::vector<ValveFindings> valves;
  std::vector<SizesFindings> sizes;
  bool nothing_listed = true;             // neither spares nor sizes on sale
  std::vector<ArrivalFindings> arrivals;  // as many as rows

  PlanQuestion question;
  std::optional<Plan> plan;            // none until the entries are sound
  std::vector<ValvePlan> valve_plans;  // as many as valves; empty without a plan

  std::optional<Firing> firing;
  ValveTiming timing;
  CrankAngle margin = usual_margin;
  std::vector<CrankStop> stops;      // the fewest, at which every valve is measured
  std::vector<CrankStop> all_stops;  // and after them those at which shims alone are changed
  bool usual_timing = false;         // some of the timing is taken as usual
  std::vector<std::optional<int>> measured_at;  // each valve's stop: where it is clear by most
  bool camshafts_out = false;
  std::optional<FittingSteps> steps;  // none without a plan, or where a valve is at no stop
  bool no_stop_for_work = false;

  // Of the valves that get a shim by the list on the bench and whose gap is known, in their order.
  std::vector<ListedGap> listed_gaps;

  std::vector<Remark> remarks;       // engine, head, shims, arrivals
  std::vector<Told> notes_on_shims;  // worth knowing there, with nothing to be mended

  const SideFindings& of(Side side) const { return side == Side::exhaust ? exhaust : inlet; }
  bool any_grave(Page page) const;
  std::size_t remarks_on(Page page) const;
  // Why there are no stops; none where there are.
  const Told* crank_trouble() const;
};

Findings findings_in(const Service& service);

// The unit of the book: that chosen, mm for any other word.
Unit unit_of(const Service& service);

// The size that a mark stands for by the book's scheme. Where the scheme is left to the book and
// the book is in inches, a mark with a decimal mark is in inches too.
std::optional<Length> size_marked(const Service& service, const Entry& mark);

}  // namespace shimwright
